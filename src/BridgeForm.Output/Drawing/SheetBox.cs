namespace BridgeForm.Output.Drawing;

/// <summary>An upright box of the page, metres.</summary>
public readonly record struct SheetBox(double MinX, double MinY, double MaxX, double MaxY)
{
    /// <summary>No box at all: any union with it gives the other.</summary>
    public static SheetBox Empty => new(
        double.PositiveInfinity, double.PositiveInfinity, double.NegativeInfinity, double.NegativeInfinity);

    /// <summary>Contains nothing, not even a point.</summary>
    public bool IsEmpty => MaxX < MinX || MaxY < MinY;

    /// <summary>The smallest box around both.</summary>
    public SheetBox Union(SheetBox other) => new(
        Math.Min(MinX, other.MinX), Math.Min(MinY, other.MinY), Math.Max(MaxX, other.MaxX), Math.Max(MaxY, other.MaxY));

    /// <summary>The smallest box around this and a point.</summary>
    public SheetBox With(double x, double y) => Union(new SheetBox(x, y, x, y));

    /// <summary>The two boxes share more than an edge.</summary>
    public bool Overlaps(SheetBox other) =>
        MinX < other.MaxX && other.MinX < MaxX && MinY < other.MaxY && other.MinY < MaxY;
}
