namespace BridgeForm.Solids;

/// <summary>Volume of a cut stick in closed form, for the many parts whose solid is never built.</summary>
public static class CutStockVolume
{
    /// <summary>
    /// Volume in m³ of a stick that two end planes cut, less its channels and holes: section × length along the middle line
    /// (exact for planes that do not meet inside the section), channels and holes as boxes and cylinders. Holes must meet
    /// neither channels nor each other.
    /// </summary>
    public static double Prism(CutStock stock)
    {
        var volume = stock.Width * stock.Thickness * (stock.Far.XAt(0, 0) - stock.Near.XAt(0, 0));
        foreach (var channel in stock.Channels)
        {
            var across = channel.Face == StockFace.MinusY ? stock.Thickness : stock.Width;
            volume -= channel.Width * channel.Depth * across;
        }

        foreach (var hole in stock.Holes)
        {
            var depth = hole.Depth ?? (hole.Face is StockFace.MinusY or StockFace.PlusY ? stock.Width : stock.Thickness);
            volume -= Math.PI / 4 * hole.Diameter * hole.Diameter * depth;
        }

        return volume;
    }
}
