using BridgeForm.Output.Drawing;

namespace BridgeForm.Output.DrawingSet;

/// <summary>From a view's plane at true size to the paper.</summary>
/// <param name="Origin">Where the view's origin lies on paper, metres.</param>
/// <param name="Ratio">True length over length on paper.</param>
internal readonly record struct ViewMap(SheetPoint Origin, double Ratio)
{
    /// <summary>A point of the view on paper.</summary>
    public SheetPoint Of(SheetPoint p) => Of(p.X, p.Y);

    /// <summary>A point of the view on paper.</summary>
    public SheetPoint Of(double x, double y) => new(Origin.X + (x / Ratio), Origin.Y + (y / Ratio));

    /// <summary>The map that puts the lower left corner of a box of the view at a point of the paper.</summary>
    public static ViewMap Placing(SheetBox box, double x, double y, double ratio) =>
        new(new SheetPoint(x - (box.MinX / ratio), y - (box.MinY / ratio)), ratio);
}
