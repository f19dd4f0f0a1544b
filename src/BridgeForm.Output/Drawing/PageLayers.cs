using System.Collections.Immutable;

namespace BridgeForm.Output.Drawing;

/// <summary>Layers of printed pages: one a purpose.</summary>
public static class PageLayers
{
    /// <summary>What is cut.</summary>
    public const string Cut = "CUT";

    /// <summary>Hidden edges.</summary>
    public const string Hidden = "HIDDEN";

    /// <summary>Pockets.</summary>
    public const string Pocket = "POCKET";

    /// <summary>Holes.</summary>
    public const string Drill = "DRILL";

    /// <summary>Centre lines and knife lines.</summary>
    public const string Layout = "LAYOUT";

    /// <summary>Words.</summary>
    public const string Note = "NOTE";

    /// <summary>Dimensions.</summary>
    public const string Dim = "DIM";

    /// <summary>Fold lines.</summary>
    public const string Fold = "FOLD";

    /// <summary>Frames of pages and tables.</summary>
    public const string Frame = "FRAME";

    /// <summary>What the eye must find first.</summary>
    public const string Accent = "ACCENT";

    /// <summary>All of them.</summary>
    public static ImmutableArray<SheetLayer> All { get; } =
    [
        new(Cut, LayerPurpose.Cut),
        new(Hidden, LayerPurpose.FarEdge),
        new(Pocket, LayerPurpose.Pocket),
        new(Drill, LayerPurpose.Drill),
        new(Layout, LayerPurpose.Layout),
        new(Note, LayerPurpose.Note),
        new(Dim, LayerPurpose.Dimension),
        new(Fold, LayerPurpose.Fold),
        new(Frame, LayerPurpose.Frame),
        new(Accent, LayerPurpose.Emphasis),
    ];

    /// <summary>The same on drawing sheets, where dimensions have a width of the sheets' line group.</summary>
    public static ImmutableArray<SheetLayer> OnDrawings { get; } =
        [.. All.Select(l => l.Purpose == LayerPurpose.Dimension ? l with { Purpose = LayerPurpose.Narrow } : l)];
}
