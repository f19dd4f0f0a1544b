using BridgeForm.Ropes;
using MathNet.Numerics;

namespace BridgeForm.Loads;

/// <summary>What the bridge does when the ground gives way a little.</summary>
public static class SupportMove
{
    /// <summary>The move that is always looked at, metres (1 in).</summary>
    public const double Standard = Quantities.Units.MetresPerInch;

    /// <summary>The fall of <see cref="TryFallOfMiddle"/>; throws when a moved rope has no shape.</summary>
    /// <param name="design">The design state.</param>
    /// <param name="stays">Ropes behind the supports; an anchor moves with its support.</param>
    /// <param name="move">Metres; shorter than the span.</param>
    /// <exception cref="NonConvergenceException">No solution; the message says why.</exception>
    public static double FallOfMiddle(RopeShape design, Backstays stays, double move) =>
        TryFallOfMiddle(design, stays, move, out var fall, out var failure) ? fall : throw new NonConvergenceException(failure);

    /// <summary>
    /// How far the rope at half the span falls, metres, when one support moves: the worst of either support moving
    /// towards the other or straight down, under the design state's loads.
    /// </summary>
    /// <param name="design">The design state.</param>
    /// <param name="stays">Ropes behind the supports; an anchor moves with its support.</param>
    /// <param name="move">Metres; shorter than the span.</param>
    /// <param name="fall">Metres.</param>
    /// <param name="failure">Why a moved rope has no shape, as a sentence.</param>
    public static bool TryFallOfMiddle(RopeShape design, Backstays stays, double move, out double fall, out string? failure)
    {
        var (span, rise, middle) = (design.Nodes[^1].X, design.Nodes[^1].Y, design.Nodes[^1].X / 2);
        fall = double.NaN;
        if (!TryMove(design, stays, span - move, rise, out var towards, out failure)
            || !TryMove(design, stays, span, rise - move, out var lowerB, out failure)
            || !TryMove(design, stays, span, rise + move, out var lowerA, out failure))
        {
            return false;
        }

        // A shape is told from its own support A: where A moves, so do the axes.
        double[] after =
        [
            towards!.HeightAt(middle),
            towards!.HeightAt(middle - move),
            lowerB!.HeightAt(middle),
            lowerA!.HeightAt(middle) - move,
        ];
        fall = design.HeightAt(middle) - after.Min();
        return true;
    }

    private static bool TryMove(RopeShape design, Backstays stays, double span, double rise, out RopeShape? moved, out string? failure) =>
        LoadCaseSolver.TryFind(
            LoadCaseRequest.At(design, 0, stays) with { Span = span, Rise = rise },
            LoadCaseSolver.DefaultAccuracy,
            LoadCaseSolver.DefaultMaxIterations,
            out moved,
            out failure);
}
