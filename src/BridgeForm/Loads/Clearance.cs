using System.Collections.Immutable;
using BridgeForm.Frames;
using BridgeForm.Project;
using BridgeForm.Ropes;

namespace BridgeForm.Loads;

/// <summary>What a load case means for deck, ground and water.</summary>
internal static class CaseSurroundings
{
    /// <summary>The case with the slope of its deck and its clearances.</summary>
    public static LoadCaseResult Look(BridgeParameters parameters, LoadCaseResult result)
    {
        if (result.Shape is not { } shape)
        {
            return result;
        }

        return Cleared(parameters, result, shape) with { SteepestDeck = Steepest(parameters, shape) };
    }

    /// <summary>There is ground or water to stay clear of.</summary>
    public static bool Asked(SiteParameters site) => !site.Ground.IsEmpty || site.Water is not null;

    /// <summary>Cases with their clearances alone.</summary>
    public static ImmutableArray<LoadCaseResult> InAll(BridgeParameters parameters, ImmutableArray<LoadCaseResult> cases) =>
        [.. cases.Select(c => c.Shape is { } shape ? Cleared(parameters, c, shape) : c)];

    private static LoadCaseResult Cleared(BridgeParameters parameters, LoadCaseResult result, RopeShape shape)
    {
        var (ground, water) = Clearances(parameters, shape);

        // Where the frames tilt to one side here and to the other there, each rope is the lower one somewhere.
        if (result.Lighter is { } other && !ReferenceEquals(other, shape))
        {
            var (too, deep) = Clearances(parameters, other);
            (ground, water) = (Less(ground, too), Less(water, deep));
        }

        return result with { OverGround = ground, OverWater = water };
    }

    private static double? Less(double? a, double? b) => a is { } one && b is { } other ? Math.Min(one, other) : a ?? b;

    /// <summary>Clearances of one shape of the ropes over ground and water, metres.</summary>
    private static (double? Ground, double? Water) Clearances(BridgeParameters parameters, RopeShape shape)
    {
        var site = parameters.Site;
        var below = Below(parameters);
        return (
            Clearance.OverGround(shape, site.Ground, below, DeckEnd.Beyond(parameters)),
            site.Water is { } water ? Clearance.OverWater(shape, water, below) : null);
    }

    /// <summary>How far the lowest part lies below the rope axis: the rope's underside, or the bases' where they are lower.</summary>
    private static double Below(BridgeParameters parameters)
    {
        var (rope, channel) = (parameters.Ropes.Rope, parameters.Frames.Channel);
        return Math.Max(rope.Radius, channel.Depth - rope.Radius - channel.Liner);
    }

    /// <summary>Frames stand on the moved ropes as they stood on the ropes of the design state.</summary>
    private static double Steepest(BridgeParameters parameters, RopeShape shape)
    {
        var deck = BridgeLayout.Lay(parameters, shape.Nodes).Deck;
        return RopeCurve.Steepest([.. deck.Points.Select(p => new RopePoint(p.X, p.Y))]);
    }
}

/// <summary>How far a rope and what hangs from it stay above ground and water. Metres, vertical.</summary>
public static class Clearance
{
    // Points a bay at which the rope is looked at: a bay's own sag is a millimetre or two, a quarter of it a sixteenth.
    private const int SamplesPerBay = 4;

    /// <summary>
    /// Least height of the underside over the ground line from one end base's inner face to the other's; null where the two
    /// do not lie over each other. Over the end bases themselves the ground may rise to the landing they stand on.
    /// </summary>
    /// <param name="shape">The rope.</param>
    /// <param name="ground">Ground line, world axes, x growing; empty for none.</param>
    /// <param name="below">How far the lowest part lies below the rope axis.</param>
    /// <param name="skipped">From each support to its end base's inner face.</param>
    public static double? OverGround(RopeShape shape, ImmutableArray<GroundPoint> ground, double below, double skipped)
    {
        if (ground.Length < 2)
        {
            return null;
        }

        var from = Math.Max(ground[0].X, shape.Nodes[0].X + skipped);
        var to = Math.Min(ground[^1].X, shape.Nodes[^1].X - skipped);
        if (to < from)
        {
            return null;
        }

        var atRope = shape.Curve(SamplesPerBay)
            .Where(p => p.X >= from && p.X <= to)
            .Select(p => p.Y - Height(ground, p.X));
        // Where the ground bends, and at both ends of the open span: rope and ground are straightest apart from these.
        var atGround = ground
            .Select(p => p.X)
            .Where(x => x > from && x < to)
            .Append(from)
            .Append(to)
            .Select(x => shape.HeightAt(x) - Height(ground, x));
        return atRope.Concat(atGround).Min() - below;
    }

    /// <summary>Least height of the underside over still water; negative when the water reaches it.</summary>
    /// <param name="shape">The rope.</param>
    /// <param name="water">Level of the water, world y.</param>
    /// <param name="below">How far the lowest part lies below the rope axis.</param>
    public static double OverWater(RopeShape shape, double water, double below) =>
        shape.TouchedBy(0).Y - below - water;

    /// <summary>Height of the ground line at a world x, metres.</summary>
    internal static double Height(ImmutableArray<GroundPoint> ground, double x)
    {
        var (low, high) = (0, ground.Length - 1);
        while (high - low > 1)
        {
            var middle = (low + high) / 2;
            (low, high) = ground[middle].X <= x ? (middle, high) : (low, middle);
        }

        var run = ground[high].X - ground[low].X;
        return ground[low].Y + ((ground[high].Y - ground[low].Y) * (x - ground[low].X) / run);
    }
}
