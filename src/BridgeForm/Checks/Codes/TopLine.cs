using BridgeForm.Checks.Geometry;
using BridgeForm.Frames;
using BridgeForm.Roles;
using BridgeForm.Solids;

namespace BridgeForm.Checks.Codes;

/// <summary>Top of a part that runs from frame to frame: one straight piece a bay, heights vertical. Metres.</summary>
internal sealed class TopLine
{
    private readonly (Vector3d From, Vector3d To)[] _bays;

    private TopLine((Vector3d From, Vector3d To)[] bays) => _bays = bays;

    /// <summary>The deck's surface at its middle line.</summary>
    public static TopLine Deck(BridgeLayout layout) => On(layout, layout.Deck, layout.Parameters.Deck.Thickness);

    /// <summary>The cap's top.</summary>
    public static TopLine Cap(BridgeLayout layout) => On(layout, layout.Caps, layout.Parameters.Guard.Cap.Thickness);

    /// <summary>Highest edges of the rails of the right side, lowest rail first; ends in the frames' mid-planes.</summary>
    public static IEnumerable<TopLine> Rails(CheckContext context) =>
        Of(context, bay => GuardRails.Lay(context.Layout, bay, Side.Right));

    /// <summary>Highest edge of the handrail of the right side; none where there is none.</summary>
    public static IEnumerable<TopLine> Handrail(CheckContext context) =>
        Of(context, bay => GuardHandrails.Lay(context.Layout, bay, Side.Right));

    private static IEnumerable<TopLine> Of(CheckContext context, Func<int, IEnumerable<Member>> parts)
    {
        var layout = context.Layout;
        var bays = context.Bays
            .Select(bay => parts(bay).Select(rail => (Top(layout, rail, bay - 1), Top(layout, rail, bay))).ToList())
            .ToList();
        return Enumerable.Range(0, bays[0].Count).Select(k => new TopLine([.. bays.Select(rails => rails[k])]));
    }

    /// <summary>Heights above another line at every end of a part of either and at every frame.</summary>
    public IEnumerable<GuardPlace> Above(TopLine other, BridgeLayout layout)
    {
        for (var i = 0; i <= layout.Bays; i++)
        {
            foreach (var x in (double[])[.. other.At(i).Select(p => p.X), .. At(i).Select(p => p.X), .. Frame(layout, i)])
            {
                yield return new(x, other.HeightAt(x), HeightAt(x), layout.Poses[i].Name);
            }
        }
    }

    /// <summary>A frame's own place, and at the ends the posts' outer faces, to which the parts run on.</summary>
    private static double[] Frame(BridgeLayout layout, int frame)
    {
        var x = layout.Poses[frame].Node.X;
        var outward = frame == 0 ? -1 : 1;
        return layout.Poses[frame].IsEnd ? [x, x + (outward * layout.Parameters.Frames.Post.Section.Thickness / 2)] : [x];
    }

    private static Vector3d Top(BridgeLayout layout, Member rail, int frame)
    {
        var pose = layout.Poses[frame];
        return CrossSections.Furthest(rail, Plane.Through(pose.Node, pose.Along), Vector3d.UnitY);
    }

    /// <summary>Upper faces of parts of a thickness on a line; as the parts, they end in the frames' mid-planes.</summary>
    private static TopLine On(BridgeLayout layout, BearingLine line, double thickness)
    {
        var parts = new (Vector3d From, Vector3d To)[line.Points.Length - 1];
        for (var bay = 1; bay <= parts.Length; bay++)
        {
            var along = line.Direction(bay);
            var top = line.Points[bay - 1] + (thickness * Vector3d.UnitZ.Cross(along));
            parts[bay - 1] = (InMidPlane(bay - 1), InMidPlane(bay));

            Vector3d InMidPlane(int frame) =>
                top + (Plane.Through(layout.Poses[frame].Node, layout.Poses[frame].Along).LineParameter(top, along) * along);
        }

        return new TopLine(parts);
    }

    private Vector3d[] At(int frame)
    {
        if (frame == 0)
        {
            return [_bays[0].From];
        }

        return frame == _bays.Length ? [_bays[^1].To] : [_bays[frame - 1].To, _bays[frame].From];
    }

    /// <summary>Height at a place along the bridge; the first and last part go on beyond their ends.</summary>
    private double HeightAt(double x)
    {
        int low = 0, high = _bays.Length - 1;
        while (low < high)
        {
            var middle = (low + high) / 2;
            (low, high) = _bays[middle].To.X < x ? (middle + 1, high) : (low, middle);
        }

        var (from, to) = _bays[low];
        return from.Y + ((x - from.X) / (to.X - from.X) * (to.Y - from.Y));
    }
}
