using System.Collections.Immutable;
using BridgeForm.Project;
using BridgeForm.Ropes;
using BridgeForm.Ropes.Pairs;

namespace BridgeForm.Tests.Ropes.Pairs;

/// <summary>Pairs of ropes that the tests share. Metres and newtons.</summary>
internal static class PairSamples
{
    /// <summary>Weight of the whole bridge a metre.</summary>
    public const double PerMetre = 3000;

    /// <summary>Height of all weights.</summary>
    public const double High = 0.95;

    public const double Spacing = 1.1;

    /// <summary>A level bridge of equal plan steps under a load all along, of ropes without weight of their own.</summary>
    public static (LoadCaseRequest Rope, PairLoads Loads) Even(int bays, double span, double sag, double stiffness, Backstays? stays = null)
    {
        var design = DesignState.Find(new DesignRequest
        {
            Span = span,
            Rise = 0,
            Sag = sag,
            Step = FrameStep.Plan,
            Bays = bays,
            WeightPerLength = 0,
            AxialStiffness = stiffness,
            NodeLoads = nodes => [.. nodes.Select(_ => PerMetre / 2 * span / bays)],
        });
        return (LoadCaseRequest.At(design, 0, stays ?? Backstays.None), Loads(design, 0, High));
    }

    /// <summary>The design's own weights on both ropes, all at one height and one distance from the middle.</summary>
    public static PairLoads Loads(RopeShape design, double fromMiddle, double height) => new(
        [.. design.Loads.Select(p => 2 * p)],
        [.. design.Loads.Select(p => 2 * p * fromMiddle)],
        [.. design.Loads.Select(p => 2 * p * height)]);

    public static PairShape Find(LoadCaseRequest rope, PairLoads loads, double spacing = Spacing)
    {
        Assert.True(
            PairSolver.TryFind(
                rope, spacing, loads, LoadCaseSolver.DefaultAccuracy, LoadCaseSolver.DefaultMaxIterations, out var pair, out var failure),
            failure);
        return pair!;
    }

    public static PairLoads HeightsTimes(PairLoads loads, double factor) =>
        loads with { HeightMoments = [.. loads.HeightMoments.Select(m => m * factor)] };

    public static PairLoads ToSide(PairLoads loads, double fromMiddle) =>
        loads with { Moments = [.. loads.Weights.Select(w => w * fromMiddle)] };

    public static ImmutableArray<double> All(PairLoads loads, double value) => [.. loads.Weights.Select(_ => value)];
}
