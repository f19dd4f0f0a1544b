namespace BridgeForm.Output.Drawing;

/// <summary>
/// Half of the way mark (docs/bridge.md, which way round): a triangle whose long side lies on the arris between the face that is up
/// and edge 1, its tip towards the far end. The other half lies on the other side of the arris.
/// </summary>
internal static class WayMark
{
    /// <summary>Length along the arris at true size, metres.</summary>
    public const double Length = 0.020;

    /// <summary>From the arris, at true size, metres; on a narrow face a fifth of it at most.</summary>
    public static double Height(double face) => Math.Min(0.008, face / 5);

    /// <summary>The triangle.</summary>
    /// <param name="layer">Layer.</param>
    /// <param name="tail">On the arris, towards the near end.</param>
    /// <param name="tip">On the arris, towards the far end.</param>
    /// <param name="foot">Beside the tail, on the face.</param>
    public static SheetPolyline Draw(string layer, SheetPoint tail, SheetPoint tip, SheetPoint foot) =>
        new(layer, [new(tail.X, tail.Y), new(tip.X, tip.Y), new(foot.X, foot.Y)], Closed: true);
}
