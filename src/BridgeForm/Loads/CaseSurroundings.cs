using System.Collections.Immutable;
using BridgeForm.Frames;
using BridgeForm.Project;
using BridgeForm.Ropes;

namespace BridgeForm.Loads;

/// <summary>What a load case means for deck, ground and water.</summary>
internal static class CaseSurroundings
{
    /// <summary>The case with the slope of its deck and its clearances.</summary>
    public static LoadCaseResult Of(BridgeParameters parameters, LoadCaseResult result)
    {
        if (result.Shape is not { } shape)
            return result;
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
        var deck = BridgeLayout.Of(parameters, shape.Nodes).Deck;
        return RopeCurve.Steepest([.. deck.Points.Select(p => new RopePoint(p.X, p.Y))]);
    }
}
