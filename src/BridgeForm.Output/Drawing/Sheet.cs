using System.Collections.Immutable;

namespace BridgeForm.Output.Drawing;

/// <summary>What lines on a layer mean; writers choose colours and pens by it.</summary>
public enum LayerPurpose
{
    /// <summary>Cut through, square to the face.</summary>
    Cut,

    /// <summary>An edge on the far side.</summary>
    FarEdge,

    /// <summary>Cut to a depth.</summary>
    Pocket,

    /// <summary>Drilled.</summary>
    Drill,

    /// <summary>Drawn on the work, not cut.</summary>
    Layout,

    /// <summary>Words.</summary>
    Note,

    /// <summary>Dimensions.</summary>
    Dimension,

    /// <summary>Where paper or work is folded or turned.</summary>
    Fold,

    /// <summary>Frames of pages and tables.</summary>
    Frame,

    /// <summary>What the eye must find first; drawn in the accent colour.</summary>
    Emphasis,

    /// <summary>Wood as it lies, not cut.</summary>
    Wood,

    /// <summary>Scratched into the face that is up.</summary>
    Engraving,

    /// <summary>Dimensions and inner edges on drawing sheets, whose lines are all of one group.</summary>
    Narrow,
}

/// <summary>A layer.</summary>
/// <param name="Name">Upper-case ASCII name.</param>
/// <param name="Purpose">What its lines mean.</param>
public sealed record SheetLayer(string Name, LayerPurpose Purpose);

/// <summary>A drawing in the plane, at true size in metres; knows nothing of what it shows and nothing of file formats.</summary>
/// <param name="Title">One line that names it.</param>
/// <param name="Layers">Every layer its entities may lie on.</param>
/// <param name="Entities">What is drawn, in order.</param>
public sealed record Sheet(string Title, ImmutableArray<SheetLayer> Layers, ImmutableArray<SheetEntity> Entities)
{
    /// <summary>Lines for whoever opens the file in a text editor, at its head where the format has a place for them.</summary>
    public ImmutableArray<string> Remarks { get; init; } = [];

    /// <summary>The smallest upright box around everything drawn; texts count with the largest width they may take.</summary>
    public SheetBox Extents() =>
        Entities.Aggregate(SheetBox.Empty, (box, entity) => box.Union(EntityBox.Of(entity)));
}

/// <summary>One page of paper with a drawing on it at true size.</summary>
/// <param name="Width">Width of the paper, metres.</param>
/// <param name="Height">Height of the paper, metres.</param>
/// <param name="Content">What is drawn; the paper's lower left corner is the origin.</param>
public sealed record SheetPage(double Width, double Height, Sheet Content);

/// <summary>Pages bound together.</summary>
/// <param name="Title">One line that names it; shown by readers as the window's title.</param>
/// <param name="Pages">One or more pages, of any sizes.</param>
public sealed record SheetBook(string Title, ImmutableArray<SheetPage> Pages);

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
    /// thinnest that office printers draw without breaks (common practice, no source). Drawing sheets keep to the line group 0.35 of
    /// ISO 128-24, wide 0.35 and narrow 0.18 mm, with 0.25 mm for frames and signs (from memory).
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
        LayerPurpose.Wood => Full(0.18),
        LayerPurpose.Engraving => Full(0.25),
        LayerPurpose.Narrow => Full(0.18),
        _ => throw new ArgumentOutOfRangeException(nameof(purpose), purpose, "No such purpose."),
    };

    private static LayerStyle Full(double millimetres) => new(Millimetres(millimetres), [], false);

    private static ImmutableArray<double> Dashed(params double[] millimetres) => [.. millimetres.Select(Millimetres)];

    private static double Millimetres(double value) => value / 1000;
}
