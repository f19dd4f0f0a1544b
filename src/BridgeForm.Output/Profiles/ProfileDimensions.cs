using System.Collections.Immutable;
using BridgeForm.Output.Drawing;
using BridgeForm.Pieces;

namespace BridgeForm.Output.Profiles;

/// <summary>
/// Dimensions above the first view as plain lines and texts: the distance of every channel and hole from the near end, the
/// shortest lowest, and the length over all on top. The near end's witness line is drawn once.
/// </summary>
internal static class ProfileDimensions
{
    private const double Height = LabelRows.TextHeight;
    private const double Pitch = 2.2 * Height;
    private const double Half = Height / 4;

    /// <summary>Distances alike to this are one dimension, metres: less than anyone can mark.</summary>
    private const double Alike = 5e-5;

    /// <summary>Dimensions of a piece.</summary>
    /// <param name="piece">The piece.</param>
    /// <param name="near">X of the near end's outermost point on the page.</param>
    /// <param name="top">Y of the wood's upper edge on the page.</param>
    /// <param name="units">How lengths are written.</param>
    public static ImmutableArray<SheetEntity> Of(Piece piece, double near, double top, PeopleUnits units)
    {
        var first = piece.Solid.Vertices.Min(v => v.X);
        var over = piece.Solid.Vertices.Max(v => v.X) - first;
        List<double> distances = [.. Distinct(Features(piece).Select(x => x - first).Where(d => d > Alike && d < over - Alike)), over];
        double Row(int i) => top + ((i + 1.5) * Pitch);
        return
        [
            Line(near, top + Half, near, Row(distances.Count - 1) + Half),
            .. distances.SelectMany((d, i) => One(near, d, top, Row(i), units.Length(d))),
        ];
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
    private static IEnumerable<SheetEntity> One(double near, double distance, double top, double y, string words)
    {
        var (x, width) = (near + distance, SheetText.WidthOf(words.Length, Height));
        var fits = width + Height < distance;
        yield return Line(x, top + Half, x, y + Half);
        yield return Line(near, y, x, y);
        yield return Line(near - Half, y - Half, near + Half, y + Half);
        yield return Line(x - Half, y - Half, x + Half, y + Half);
        var at = fits ? new SheetPoint(near + ((distance - width) / 2), y + (Height / 2)) : new SheetPoint(near - Height - width, y - (Height / 2));
        yield return new SheetText(ProfileLayers.Dim, at, Height, words);
    }

    private static SheetLine Line(double x1, double y1, double x2, double y2) =>
        new(ProfileLayers.Dim, new SheetPoint(x1, y1), new SheetPoint(x2, y2));
}
