using BridgeForm.Project;
using BridgeForm.Quantities;
using BridgeForm.Roles;
using BridgeForm.Solids;

namespace BridgeForm.Frames;

/// <summary>
/// Pickets on the inner faces of the two rails, from the lower one's lower edge to the upper one's upper edge and cut along these. They
/// turn evenly from one frame's lean to the next one's. X upwards, Z the inward face.
/// </summary>
internal static class GuardPickets
{
    /// <summary>Pickets of one side of a bay, from A on; none where the file asks for none.</summary>
    public static IEnumerable<Member> Lay(BridgeLayout layout, int bay, Side side)
    {
        if (layout.Parameters.Guard.Pickets is not { } pickets)
        {
            yield break;
        }

        var lines = Lines(layout, bay, side);
        var count = layout.Steps.Pickets[bay - 1];
        for (var i = 0; i < count; i++)
        {
            var id = new PartId(FramePoses.BayName(bay, layout.Bays), Role.Picket, side, i + 1);
            yield return Picket(layout, pickets, lines, (i + 0.5) / count, id);
        }
    }

    /// <summary>As few as leave no gap wider than asked for, where the rails of a bay are longest.</summary>
    public static int Count(BridgeLayout layout, int bay, PicketParameters pickets)
    {
        var (low, high) = Lines(layout, bay, Side.Right);
        var longest = Math.Max((low.To - low.From).Length, (high.To - high.From).Length);
        return Math.Max(1, (int)Math.Ceiling((longest / (pickets.Gap + pickets.Section.Width)) - Tolerances.RoundOff));
    }

    /// <summary>What stands between posts and a handrail, square to the posts' faces, metres.</summary>
    public static double Behind(GuardParameters guard) =>
        (guard.RailCount > 0 ? guard.Rail.Thickness : 0) + (guard.Pickets?.Section.Thickness ?? 0);

    private static Member Picket(
        BridgeLayout layout, PicketParameters pickets, (RailLine Low, RailLine High) lines, double share, PartId id)
    {
        var (foot, head) = (lines.Low.At(share), lines.High.At(share));
        var axis = (head - foot).Normalized();
        var mean = lines.Low.Inward + lines.High.Inward;
        var inward = (mean - (mean.Dot(axis) * axis)).Normalized();
        var onFaces = Placement.FromLengthAndThickness(foot, axis, inward);
        var enters = Math.Max(Entering(pickets, onFaces, lines.Low, 0), Entering(pickets, onFaces, lines.High, (head - foot).Length));
        var off = Math.Max(0, enters - Tolerances.Seating) + (pickets.Section.Thickness / 2);
        var placement = onFaces with { Origin = foot + (off * inward) };
        return new Member(
            id,
            layout.Parameters.StockOf(Role.Picket),
            pickets.Section.Name,
            placement,
            LongPart.Shape(pickets.Section, placement, lines.Low.Edge(-1), lines.High.Edge(1)));
    }

    /// <summary>How far a picket laid on both rails enters one of them, metres; 0 when it does not.</summary>
    private static double Entering(PicketParameters pickets, Placement picket, RailLine rail, double along)
    {
        var deepest = 0.0;
        foreach (var x in (ReadOnlySpan<double>)[along - (rail.Width / 2), along + (rail.Width / 2)])
        {
            foreach (var y in (ReadOnlySpan<double>)[-pickets.Section.Width / 2, pickets.Section.Width / 2])
            {
                deepest = Math.Max(deepest, -rail.Inward.Dot(picket.ToWorld(new Vector3d(x, y, 0)) - rail.From));
            }
        }

        return deepest;
    }

    private static (RailLine Low, RailLine High) Lines(BridgeLayout layout, int bay, Side side)
    {
        Member[] rails = [.. GuardRails.Lay(layout, bay, side)];
        return (Line(rails[0]), Line(rails[^1]));

        RailLine Line(Member rail)
        {
            var at = rail.Placement;
            var face = at.Origin + (rail.Shape.Thickness / 2 * at.Z);
            return new RailLine(InMidPlane(bay - 1), InMidPlane(bay), at.Z, at.Y.Y < 0 ? -at.Y : at.Y, rail.Shape.Width);

            Vector3d InMidPlane(int frame) =>
                face + (Plane.Through(layout.Poses[frame].Node, layout.Poses[frame].Along).LineParameter(face, at.X) * at.X);
        }
    }

    /// <summary>The middle line of a rail's inner face, from mid-plane to mid-plane.</summary>
    private readonly record struct RailLine(Vector3d From, Vector3d To, Vector3d Inward, Vector3d Up, double Width)
    {
        public Vector3d At(double share) => From + (share * (To - From));

        /// <summary>Its lower (−1) or upper (1) edge as a plane, out of the rail.</summary>
        public Plane Edge(int sign) => Plane.Through(From + (sign * Width / 2 * Up), sign * Up);
    }
}
