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
        var mean = lines.Low.Inward + lines.High.Inward;
        var onFaces = Leaning(foot, head, mean);
        var (low, high) = Entering(pickets, onFaces, lines);
        var placement = Math.Abs(Math.Max(0, low) - Math.Max(0, high)) > Tolerances.Seating
            ? Settled(pickets, lines, foot, head, mean)
            : onFaces with { Origin = onFaces.Origin + (Math.Max(0, Math.Max(low, high) - Tolerances.Seating) * onFaces.Z) };
        placement = placement with { Origin = placement.Origin + (pickets.Section.Thickness / 2 * placement.Z) };
        return new Member(
            id,
            layout.Parameters.StockOf(Role.Picket),
            pickets.Section.Name,
            placement,
            LongPart.Shape(pickets.Section, placement, lines.Low.Edge(-1), lines.High.Edge(1)));
    }

    /// <summary>
    /// Where it touches both rails, which lean so unlike that lying on one it would stand clear of the other: it leans off each by as
    /// much as it would enter that.
    /// </summary>
    private static Placement Settled(
        PicketParameters pickets, (RailLine Low, RailLine High) lines, Vector3d foot, Vector3d head, Vector3d mean)
    {
        var at = Leaning(foot, head, mean);
        for (var i = 0; i < Settlings; i++)
        {
            var (low, high) = Entering(pickets, at, lines);
            (foot, head) = (foot + (low * at.Z), head + (high * at.Z));
            at = Leaning(foot, head, mean);
        }

        return at with { Origin = at.Origin - (Tolerances.Seating * at.Z) };
    }

    // Each leaves the square of the angle that it turns by: a few are as good as many.
    private const int Settlings = 4;

    private static Placement Leaning(Vector3d foot, Vector3d head, Vector3d mean)
    {
        var axis = (head - foot).Normalized();
        return Placement.FromLengthAndThickness(foot, axis, (mean - (mean.Dot(axis) * axis)).Normalized());
    }

    /// <summary>How far a picket's outer face enters each rail, metres; below 0 where it stands clear of one.</summary>
    private static (double Low, double High) Entering(
        PicketParameters pickets, Placement picket, (RailLine Low, RailLine High) lines) =>
        (Entering(pickets, picket, lines.Low), Entering(pickets, picket, lines.High));

    // Corners of the face that it has with a rail: along the rail's edges, which slope where the bay does.
    private static double Entering(PicketParameters pickets, Placement picket, RailLine rail)
    {
        var deepest = double.NegativeInfinity;
        foreach (var y in (ReadOnlySpan<double>)[-pickets.Section.Width / 2, pickets.Section.Width / 2])
        {
            var side = picket.ToWorld(new Vector3d(0, y, 0));
            foreach (var edge in (ReadOnlySpan<int>)[-1, 1])
            {
                var corner = side + (rail.Edge(edge).LineParameter(side, picket.X) * picket.X);
                deepest = Math.Max(deepest, -rail.Inward.Dot(corner - rail.From));
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
