namespace BridgeForm.Ropes;

/// <summary>What the bridge does when the ground gives way a little.</summary>
public static class SupportMove
{
    /// <summary>The move that is always looked at, metres (1 in).</summary>
    public const double Standard = 0.0254;

    /// <summary>
    /// How far the rope at half the span falls, metres, when one support moves: the worst of either support moving
    /// towards the other or straight down, under the design state's loads.
    /// </summary>
    /// <param name="design">The design state.</param>
    /// <param name="move">Metres; shorter than the span.</param>
    public static double FallOfMiddle(RopeShape design, double move)
    {
        var (span, rise) = (design.Nodes[^1].X, design.Nodes[^1].Y);
        var before = design.HeightAt(span / 2);
        // A shape is told from its own support A: where A moves, so do the axes.
        var towards = Moved(design, span - move, rise);
        double[] after =
        [
            towards.HeightAt(span / 2),
            towards.HeightAt((span / 2) - move),
            Moved(design, span, rise - move).HeightAt(span / 2),
            Moved(design, span, rise + move).HeightAt(span / 2) - move,
        ];
        return before - after.Min();
    }

    private static RopeShape Moved(RopeShape design, double span, double rise) =>
        LoadCaseSolver.Find(LoadCaseRequest.At(design, 0) with { Span = span, Rise = rise });
}
