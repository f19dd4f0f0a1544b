using System.Collections.Immutable;

namespace BridgeForm.Output.Drawing;

/// <summary>How the lines of a layer look on paper and on screen: black and one accent.</summary>
/// <param name="Weight">Width of the line, metres.</param>
/// <param name="Dashes">Lengths of strokes and gaps by turns, metres; empty for a full line.</param>
/// <param name="Accent">In the accent colour; black otherwise.</param>
internal sealed record LayerStyle(double Weight, ImmutableArray<double> Dashes, bool Accent)
{
    /// <summary>Red, green and blue of the accent: a red dark enough to read on paper and to print as a strong grey.</summary>
    public static (byte Red, byte Green, byte Blue) AccentColour => (0xB0, 0x2A, 0x1C);

    /// <summary>
    /// Style of a purpose. Weights follow the series of ISO 128 (0.13, 0.18, 0.25, 0.35, 0.5 mm), from memory; 0.13 mm is the
    /// thinnest that office printers draw without breaks (common practice, no source).
    /// </summary>
    public static LayerStyle Of(LayerPurpose purpose) => purpose switch
    {
        LayerPurpose.Cut => Full(0.35),
        LayerPurpose.FarEdge => new(Millimetres(0.18), Dashed(2, 1), false),
        LayerPurpose.Pocket => Full(0.25),
        LayerPurpose.Drill => Full(0.25),
        LayerPurpose.Layout => new(Millimetres(0.18), Dashed(5, 1, 1, 1), true),
        LayerPurpose.Note => Full(0.18),
        LayerPurpose.Dimension => Full(0.13),
        LayerPurpose.Fold => new(Millimetres(0.18), Dashed(4, 2), false),
        LayerPurpose.Frame => Full(0.25),
        LayerPurpose.Emphasis => Full(0.35) with { Accent = true },
        _ => throw new ArgumentOutOfRangeException(nameof(purpose), purpose, "No such purpose."),
    };

    private static LayerStyle Full(double millimetres) => new(Millimetres(millimetres), [], false);

    private static ImmutableArray<double> Dashed(params double[] millimetres) => [.. millimetres.Select(Millimetres)];

    private static double Millimetres(double value) => value / 1000;
}
