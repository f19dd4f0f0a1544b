using System.Collections.Immutable;
using BridgeForm.Quantities;
using BridgeForm.Roles;
using BridgeForm.Ropes;
using BridgeForm.Ropes.Pairs;

namespace BridgeForm.Loads;

/// <summary>
/// What the frames do when one rope hangs longer than the other: cut, marked or drawn in otherwise, or one anchor that gives.
/// </summary>
/// <param name="Empty">Tilt of the frame that tilts most on the empty bridge, radians; null where none was found.</param>
/// <param name="Case">Id of the case that tilts most with ropes alike.</param>
/// <param name="Alike">Its tilt with ropes alike, radians.</param>
/// <param name="Worst">Its tilt with either rope the longer one, the worse of both, radians; null where it rolls over.</param>
public sealed record RopeSetting(double? Empty, string Case, double Alike, double? Worst)
{
    /// <summary>By how much one rope is longer between the supports, metres (1/4 in).</summary>
    public const double Difference = Units.MetresPerInch / 4;

    /// <summary>Null where nothing tilts: no frame between the supports, or no case with people that stands.</summary>
    /// <param name="input">What the cases were made from.</param>
    /// <param name="cases">The cases as they were solved.</param>
    internal static RopeSetting? Find(LoadCaseInput input, ImmutableArray<LoadCaseResult> cases)
    {
        var (empty, worst) = (
            cases.FirstOrDefault(c => c.Id is LoadCaseIds.Dead)?.Pair,
            Ties.FirstLargest(cases.Where(c => c.Pair is not null), c => c.CrossSlope ?? double.NegativeInfinity));
        if (empty is null || worst is not { CrossSlope: { } alike, Pair: { } pair } || input.Design.Nodes.Length < 3)
        {
            return null;
        }

        double?[] either = [Tilt(pair, Difference, 0), Tilt(pair, 0, Difference)];
        return new RopeSetting(
            Tilt(empty, Difference, 0), worst.Id, alike, either.Contains(null) ? null : either.Max());
    }

    private static double? Tilt(PairCase of, double left, double right) =>
        PairSolver.TryFind(
            (Longer(of.Rope, left), Longer(of.Rope, right)), of.Spacing, of.Loads, LoadCaseSolver.DefaultAccuracy,
            LoadCaseSolver.DefaultMaxIterations, out var pair, out _) && !pair!.RollsOver
            ? PairShape.Largest(pair.Tilts)
            : null;

    // Spread over all bays: what the ropes do hangs on the whole length, wherever it is too long.
    private static LoadCaseRequest Longer(LoadCaseRequest rope, double by)
    {
        var growth = 1 + (by / rope.UnstressedLengths.Sum());
        return rope with { UnstressedLengths = [.. rope.UnstressedLengths.Select(l => l * growth)] };
    }
}
