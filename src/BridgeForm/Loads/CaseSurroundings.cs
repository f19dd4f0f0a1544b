using System.Collections.Immutable;
using BridgeForm.Frames;
using BridgeForm.Project;
using BridgeForm.Quantities;
using BridgeForm.Ropes;

namespace BridgeForm.Loads;

/// <summary>What a load case means for deck, ground and water.</summary>
internal static class CaseSurroundings
{
    /// <summary>The case with the slope of its deck and its clearances.</summary>
    public static LoadCaseResult Look(BridgeParameters parameters, LoadCaseResult result) => result.Shape is { } shape
        ? Underside.Of(parameters).Look(result) with { SteepestDeck = Steepest(parameters, shape) }
        : result;

    /// <summary>Cases with their clearances alone.</summary>
    public static ImmutableArray<LoadCaseResult> InAll(BridgeParameters parameters, ImmutableArray<LoadCaseResult> cases)
    {
        var underside = Underside.Of(parameters);
        return [.. cases.Select(underside.Look)];
    }

    /// <summary>Frames stand on the moved ropes as they stood on the ropes of the design state.</summary>
    private static double Steepest(BridgeParameters parameters, RopeShape shape)
    {
        var deck = BridgeLayout.Lay(parameters, shape.Nodes).Deck;
        return RopeCurve.Steepest([.. deck.Points.Select(p => new RopePoint(p.X, p.Y))]);
    }
}

/// <summary>
/// The lowest parts of a bridge, and what they must stay clear of: the undersides of both ropes all along, and at the interior
/// frames the bases, which tilt with the ropes. Metres.
/// </summary>
/// <param name="Site">Ground and water.</param>
/// <param name="Frames">How bases sit on the ropes.</param>
/// <param name="Radius">Of a rope.</param>
/// <param name="Spacing">Between the ropes' axes.</param>
internal sealed record Underside(SiteParameters Site, FrameParameters Frames, double Radius, double Spacing)
{
    /// <summary>Of a bridge.</summary>
    public static Underside Of(BridgeParameters parameters) =>
        new(parameters.Site, parameters.Frames, parameters.Ropes.Rope.Radius, parameters.Ropes.Spacing);

    /// <summary>There is ground or water to stay clear of.</summary>
    public bool IsAsked => !Site.Ground.IsEmpty || Site.Water is not null;

    /// <summary>How far a base's end lies beyond the rope.</summary>
    public double Overhang => (Frames.Base.Length - Spacing) / 2;

    private double HalfAlong => Frames.Base.Along / 2;

    /// <summary>The case with its clearances.</summary>
    public LoadCaseResult Look(LoadCaseResult result)
    {
        if (!IsAsked || result.Shape is not { } shape)
        {
            return result;
        }

        // Where the frames tilt to one side here and to the other there, each rope is the lower one somewhere.
        var other = result.Lighter ?? shape;
        RopeShape[] ropes = ReferenceEquals(other, shape) ? [shape] : [shape, other];
        var ends = LowerEnds(shape, other).ToList();
        return result with
        {
            OverGround = Least([
                .. ropes.Select(r => Clearance.OverGround(r, Site.Ground, Radius, HalfAlong)),
                .. ends.Select(e => Clearance.OverGround(e.A, e.B, Site.Ground)),
            ]),
            OverWater = Site.Water is { } water
                ? Least([
                    .. ropes.Select(r => (double?)Clearance.OverWater(r, water, Radius)),
                    .. ends.Select(e => (double?)(Math.Min(e.A.Y, e.B.Y) - water)),
                ])
                : null,
        };
    }

    /// <summary>
    /// How near a case comes to the ground, or to the water, from the first interior frame to the last, and the frame next to that
    /// place. Beside the end bases there is little that a load brings down, and the ground may rise to the landings there.
    /// </summary>
    public (int Frame, double Room) Nearest(LoadCaseResult result, bool toWater)
    {
        var (one, other) = (result.Shape!, result.Lighter ?? result.Shape!);
        var ends = LowerEnds(one, other).ToList();
        var frames = Enumerable.Range(1, ends.Count).ToList();
        if (toWater)
        {
            return Ties.FirstLeast(frames.Select(i => (i, Lowest(one.Nodes[i].Y, other.Nodes[i].Y, ends[i - 1]))), f => f.Item2);
        }

        var rooms = frames.Select(i => (Frame: i, Room: Clearance.OverGround(ends[i - 1].A, ends[i - 1].B, Site.Ground)))
            .Concat(frames.Select(i => (Frame: i, Room: OverGround(one.Nodes[i].X))))
            .Concat(Site.Ground
                .Where(g => g.X > one.Nodes[1].X && g.X < one.Nodes[^2].X)
                .Select(g => (Frame: NodeLoads.Nearest(one.Nodes, g.X)!.Value, Room: OverGround(g.X))));
        return Ties.FirstLeast(rooms.Select(r => (r.Frame, Room: r.Room ?? double.PositiveInfinity)), r => r.Room);

        double Lowest(double left, double right, (RopePoint A, RopePoint B) end) =>
            Math.Min(Math.Min(left, right) - Radius, Math.Min(end.A.Y, end.B.Y)) - Site.Water!.Value;

        double? OverGround(double x) => x < Site.Ground[0].X || x > Site.Ground[^1].X
            ? null
            : Math.Min(one.HeightAt(x), other.HeightAt(x)) - Radius - Clearance.Height(Site.Ground, x);
    }

    /// <summary>
    /// Underside of the lower end of each interior frame's base, from its face towards A to that towards B. The base lies along
    /// the line through both ropes' axes: its end lies lower than the lower rope by what overhangs it × sin θ, its underside by
    /// what it reaches below the axis × cos θ; on a slope one of its two lower edges lies lower than the other.
    /// </summary>
    /// <param name="one">Either rope.</param>
    /// <param name="other">The other; the same where both hang alike.</param>
    public IEnumerable<(RopePoint A, RopePoint B)> LowerEnds(RopeShape one, RopeShape other)
    {
        var poses = FramePoses.Stand(one.Nodes, Frames.Stance);
        var others = ReferenceEquals(one, other) ? poses : FramePoses.Stand(other.Nodes, Frames.Stance);
        for (var i = 1; i + 1 < poses.Length; i++)
        {
            var lower = others[i].Node.Y < poses[i].Node.Y ? others[i] : poses[i];
            yield return LowerEnd(lower, Elementary.Atan(Math.Abs(poses[i].Node.Y - others[i].Node.Y) / Spacing));
        }
    }

    private (RopePoint A, RopePoint B) LowerEnd(FramePose lower, double tilt)
    {
        var bottom = BaseLevels.Find(Frames, Radius, lower, Frames.Stance).Bottom * Elementary.Cos(tilt);
        var (a, b) = (lower.At(-HalfAlong, bottom, 0), lower.At(HalfAlong, bottom, 0));
        var drop = Overhang * Elementary.Sin(tilt);
        return (new(a.X, a.Y - drop), new(b.X, b.Y - drop));
    }

    private static double? Least(ReadOnlySpan<double?> rooms)
    {
        double? least = null;
        foreach (var room in rooms)
        {
            least = room is { } own && !(own >= least) ? own : least;
        }

        return least;
    }
}
