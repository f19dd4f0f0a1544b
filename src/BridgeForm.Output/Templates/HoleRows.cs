using System.Globalization;
using BridgeForm.Quantities;
using BridgeForm.Solids;

namespace BridgeForm.Output.Templates;

/// <summary>Where a tape finds the holes of a piece: across a face from the side that the way mark's arris has with it.</summary>
internal static class HoleRows
{
    /// <summary>Across the face from the side that <see cref="EdgeOf"/> names to the hole's middle, metres.</summary>
    public static double FromEdge(CutStock shape, Hole hole) =>
        ((hole.Face is StockFace.PlusZ or StockFace.MinusZ ? shape.Width : shape.Thickness) / 2) - hole.Across;

    /// <summary>The long side of the face that it is measured from.</summary>
    public static string EdgeOf(Hole hole) => hole.Face is StockFace.PlusZ or StockFace.MinusZ ? "edge 1" : "the face up";

    /// <summary>Along the stick, and those side by side from the edge on; face by face.</summary>
    public static IEnumerable<Hole> InOrder(CutStock shape) =>
        shape.Holes.OrderBy(h => h.Face).ThenBy(h => h.X).ThenBy(h => FromEdge(shape, h));

    /// <summary>How many and how wide: <c>6 holes 5/16 in, 4 holes 3/8 in</c>.</summary>
    public static string Counted(CutStock shape, QuantityText words) => string.Join(", ", shape.Holes
        .GroupBy(h => words.Size(h.Diameter), StringComparer.Ordinal)
        .Select(g => string.Create(CultureInfo.InvariantCulture, $"{g.Count()} hole{(g.Count() == 1 ? "" : "s")} {g.Key}")));
}
