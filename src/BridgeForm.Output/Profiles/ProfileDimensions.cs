using System.Collections.Immutable;
using BridgeForm.Output.Drawing;
using BridgeForm.Pieces;

namespace BridgeForm.Output.Profiles;

/// <summary>
/// The distance of every channel and hole from the near end, above the first view, the shortest lowest: plain lines and texts.
/// The near end's witness line is that of the length over all, which stands above them.
/// </summary>
internal static class ProfileDimensions
{
    private const double Height = LabelRows.TextHeight;
    private const double Pitch = 2.2 * Height;
    private const double Half = Height / 4;

    /// <summary>Distances alike to this are one dimension, metres: less than anyone can mark.</summary>
    private const double Alike = 5e-5;

    /// <summary>Dimensions of a piece whose near end is at x = 0 on the page, and the Y above all of them.</summary>
    /// <param name="piece">The piece.</param>
    /// <param name="dx">From the piece's X to the page's.</param>
    /// <param name="top">Y above the view on the page.</param>
    /// <param name="units">How lengths are written.</param>
    public static (ImmutableArray<SheetEntity> Entities, double Top) Of(Piece piece, double dx, double top, PeopleUnits units)
    {
        var distances = Distinct(Features(piece).Select(x => x + dx).Where(d => d > Alike)).ToList();
        return (
            [.. distances.SelectMany((d, i) => One(d, top, top + ((i + 1) * Pitch), units.Length(d)))],
            top + (distances.Count * Pitch));
    }

    private static IEnumerable<double> Features(Piece piece) =>
        piece.Shape.Channels.Select(c => c.Center).Concat(piece.Shape.Holes.Select(h => h.X));

    private static IEnumerable<double> Distinct(IEnumerable<double> distances)
    {
        var last = double.NegativeInfinity;
        foreach (var d in distances.Order())
        {
            if (d - last > Alike)
            {
                yield return d;
                last = d;
            }
        }
    }

    /// <summary>A text too wide for its line stands before the near end, where no witness line passes.</summary>
    private static IEnumerable<SheetEntity> One(double x, double top, double y, string words)
    {
        var width = SheetText.WidthOf(words.Length, Height);
        var fits = width + Height < x;
        yield return Line(x, top + Half, x, y + Half);
        yield return Line(0, y, x, y);
        yield return Line(-Half, y - Half, Half, y + Half);
        yield return Line(x - Half, y - Half, x + Half, y + Half);
        var at = fits ? new SheetPoint((x - width) / 2, y + (Height / 2)) : new SheetPoint(-Height - width, y - (Height / 2));
        yield return new SheetText(ProfileLayers.Dim, at, Height, words);
    }

    private static SheetLine Line(double x1, double y1, double x2, double y2) =>
        new(ProfileLayers.Dim, new SheetPoint(x1, y1), new SheetPoint(x2, y2));
}
