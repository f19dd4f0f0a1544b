using System.Collections.Immutable;
using BridgeForm.Project;
using BridgeForm.Quantities;

namespace BridgeForm.Loads;

/// <summary>
/// The cases that tilt and steepen the deck most, solved once more on ropes grown by the high end of their stretch with nothing
/// taken up, at the highest temperature: they hang deeper, and what tilts them tilts them further.
/// </summary>
internal static class GrownCases
{
    // The worst as marked need not be the worst there.
    private const int OfEach = 2;

    /// <summary>Empty where the rope does not stretch.</summary>
    /// <param name="parameters">Ground, water and limits to look at.</param>
    /// <param name="input">What the cases were made from.</param>
    /// <param name="cases">The cases as they were solved.</param>
    /// <param name="token">Asked before each case.</param>
    public static ImmutableArray<LoadCaseResult> Solve(
        BridgeParameters parameters, LoadCaseInput input, ImmutableArray<LoadCaseResult> cases, CancellationToken token)
    {
        if (!(Input(parameters, input).Stretch > 0))
        {
            return [];
        }

        var standing = cases.Where(c => c is { Shape: not null, RollsOver: false, Loading: not null, Pair.Loads.IsEven: false }).ToList();
        var worst = Most(standing, c => c.CrossSlope ?? 0).Concat(Most(standing, c => c.SteepestDeck)).Distinct();
        var loadings = worst.Select(c => c.Loading! with { Temperature = input.Hottest });
        return [.. LoadCases.Solved(Input(parameters, input), loadings, token).Select(c => CaseSurroundings.Look(parameters, c))];
    }

    /// <summary>The same bridge on ropes that have grown so.</summary>
    public static LoadCaseInput Input(BridgeParameters parameters, LoadCaseInput input) =>
        input with { Stretch = StretchRange.Most(parameters.Ropes) };

    private static List<LoadCaseResult> Most(IEnumerable<LoadCaseResult> of, Func<LoadCaseResult, double> figure)
    {
        var (left, most) = (of.ToList(), new List<LoadCaseResult>());
        while (most.Count < OfEach && left.Count > 0)
        {
            var next = Ties.FirstLargest(left, figure)!;
            left.Remove(next);
            most.Add(next);
        }

        return most;
    }
}
