using System.Collections.Immutable;
using BridgeForm.Quantities;
using BridgeForm.Roles;
using BridgeForm.Ropes;

namespace BridgeForm.Loads;

/// <summary>What a load to one side lifts at the other rope: the largest load upward of any frame.</summary>
/// <param name="Case">Id of the load case.</param>
/// <param name="Frame">Name of the frame.</param>
/// <param name="Force">
/// Newtons, 0 where nothing is lifted; null where the section rolls over or the case has no shape with so light a bridge.
/// </param>
public sealed record Lift(string Case, string Frame, double? Force)
{
    /// <summary>On ropes grown by the high end of their stretch with nothing taken up, hottest, instead of as marked.</summary>
    public bool IsGrown { get; init; }

    // A load whose share of one rope stays below this in the case itself leaves the other rope loaded also when the bridge is
    // lighter: its tilt would have to grow by a tenth of the spacing over the height.
    private const double NearlyAll = 0.9;

    /// <summary>
    /// Each case that may lift one, solved again with 0.6 of the bridge's own weight at the low end of its wood's density.
    /// </summary>
    /// <param name="input">What the cases were made from.</param>
    /// <param name="cases">The cases as they were solved.</param>
    /// <param name="names">Names of all frames, supports' included.</param>
    /// <param name="token">Asked before each case.</param>
    public static ImmutableArray<Lift> Find(
        LoadCaseInput input, ImmutableArray<LoadCaseResult> cases, ImmutableArray<string> names, CancellationToken token = default)
    {
        var asked = cases.Where(c => c.LargestShare is null or > NearlyAll && c.Pair?.Loads.IsEven == false).ToList();

        // A point load lifts at its own frame, and of many such cases one lifts most.
        var points = asked.Where(c => LoadCaseIds.IsPoint(c.Id)).ToList();
        var worst = Ties.FirstLeast(points, c => c.LargestShare is null ? double.NegativeInfinity : Left(input, c));
        var loadings = asked.Where(c => !points.Contains(c) || ReferenceEquals(c, worst)).Select(c => c.Loading!);
        return [.. LoadCases.Lifting(input, loadings, token).Select(c => In(c, names))];
    }

    // What is about left on the lighter rope at the frame where the point load stands.
    private static double Left(LoadCaseInput input, LoadCaseResult result)
    {
        var load = result.Loading!.On[0];
        var frame = load.Weights.IndexOf(load.Weights.Max());
        var sure = LoadCases.SureDead * (input.Standing?.Light[frame] ?? 0) / 2;
        return sure - (load.Weights[frame] * (result.LargestShare!.Value - 1));
    }

    private static Lift In(LoadCaseResult result, ImmutableArray<string> names)
    {
        if (result.RollsOver || result.Shape is not { } shape)
        {
            return new Lift(result.Id, "", null);
        }

        var (frame, least) = (1, double.PositiveInfinity);
        foreach (var rope in (RopeShape[])[shape, result.Lighter!])
        {
            for (var i = 1; i + 1 < rope.Loads.Length; i++)
            {
                if (double.IsInfinity(least) || Ties.IsLarger(least, rope.Loads[i]))
                {
                    (frame, least) = (i, rope.Loads[i]);
                }
            }
        }

        return new Lift(result.Id, names[frame], Math.Max(0, -least));
    }
}
