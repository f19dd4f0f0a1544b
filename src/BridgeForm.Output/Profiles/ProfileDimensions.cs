using System.Collections.Immutable;
using BridgeForm.Output.Drawing;
using BridgeForm.Pieces;
using BridgeForm.Quantities;

namespace BridgeForm.Output.Profiles;

/// <summary>
/// The distance of every channel and hole from the near end, above the first view, the longest lowest: plain lines and texts.
/// A text stands to the right of its line, where no witness line of a shorter one passes; the near end's own witness line is that
/// of the length over all, which stands above them.
/// </summary>
internal static class ProfileDimensions
{
    private const double Height = LabelRows.TextHeight;
    private const double Pitch = 2.2 * Height;
    private const double Gap = Height / 2;
    private const double Barb = Height / 2;

    /// <summary>Dimensions of a piece whose near end is at x = 0 on the page, and the Y above all of them.</summary>
    /// <param name="piece">The piece.</param>
    /// <param name="dx">From the piece's X to the page's.</param>
    /// <param name="top">Y above the view on the page.</param>
    /// <param name="units">How lengths are written.</param>
    /// <param name="length">X of the far end on the page.</param>
    public static (ImmutableArray<SheetEntity> Entities, double Top) Draw(
        Piece piece, double dx, double top, double length, DisplayUnits units)
    {
        var distances = Distinct(Features(piece).Select(x => x + dx).Where(d => d > Tolerances.SameDimension)).Reverse().ToList();
        return (
            [.. distances.SelectMany((d, i) => One(d, top, top + ((i + 1) * Pitch), length, units.Length(d)))],
            top + (distances.Count * Pitch));
    }

    private static IEnumerable<double> Features(Piece piece) =>
        piece.Shape.Channels.Select(c => c.Center).Concat(piece.Shape.Holes.Select(h => h.X));

    private static IEnumerable<double> Distinct(IEnumerable<double> distances)
    {
        var last = double.NegativeInfinity;
        foreach (var d in distances.Order())
        {
            if (d - last > Tolerances.SameDimension)
            {
                yield return d;
                last = d;
            }
        }
    }

    /// <summary>A text that would meet the far end's witness line stands beyond it, with a leader.</summary>
    private static IEnumerable<SheetEntity> One(double x, double top, double y, double length, string words)
    {
        var beyond = x + (2 * Gap) + SheetText.WidthOf(words.Length, Height) > length;
        yield return Line(x, top + Gap, x, y + Gap);
        yield return Line(0, y, x, y);
        foreach (var (tip, way) in new[] { (0.0, Barb), (x, -Barb) })
        {
            yield return Line(tip, y, tip + way, y + (Barb / 3));
            yield return Line(tip, y, tip + way, y - (Barb / 3));
        }

        if (beyond)
        {
            yield return Line(x, y, length + Gap, y);
        }

        yield return new SheetText(
            ProfileLayers.Dim, new SheetPoint((beyond ? length + Gap : x) + Gap, y - (Height / 2)), Height, words);
    }

    private static SheetLine Line(double x1, double y1, double x2, double y2) =>
        new(ProfileLayers.Dim, new SheetPoint(x1, y1), new SheetPoint(x2, y2));
}
