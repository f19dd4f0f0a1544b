using System.Collections.Immutable;
using System.Globalization;
using BridgeForm.Output.Drawing;

namespace BridgeForm.Output.Templates;

/// <summary>
/// Cuts a drawing that is larger than the page into sheets of equal size that overlap; each carries match lines with crosses,
/// its name (column letter, row number) and a map.
/// </summary>
internal static class Tiling
{
    /// <summary>Neighbouring sheets share a band this wide, metres.</summary>
    public const double Overlap = 0.020;

    private const double MapCell = 0.004;
    private const double LeastMapCell = 0.0015;
    private const double MapWidth = 12 * MapCell;
    private const double HeadingWidth = 0.110;
    private const double CrossArm = 0.003;

    /// <summary>How to put sheets together.</summary>
    private const string Joining =
        "Trim the right or upper sheet on its dashed match line and lay it on the same line of its neighbor, crosses on crosses; tape.";

    /// <summary>How many columns and rows a drawing needs on sheets with that much room.</summary>
    public static (int Columns, int Rows) Grid(double width, double height, double roomX, double roomY) =>
        (Count(width, roomX), Count(height, roomY));

    /// <summary>Room that the heading of a sheet takes, metres.</summary>
    public static double HeadingHeight(TemplateBlock block, int rows) =>
        Math.Max(
            Cell.Heading(block.Title + " · sheet AA99 of 999", Notes(block, 2, first: true), HeadingWidth).Height,
            rows * MapCell) + 0.003;

    /// <summary>The sheets, row by row from below.</summary>
    public static IEnumerable<Cell> Cut(TemplateBlock block, double roomX, double roomY)
    {
        var box = Cell.BoxOf(block);
        var (columns, rows) = Grid(box.MaxX - box.MinX, box.MaxY - box.MinY, roomX, roomY);
        var step = new Steps(box, columns, rows);
        var windows = Enumerable.Range(0, rows)
            .SelectMany(r => Enumerable.Range(0, columns).Select(c => (Column: c, Row: r, Box: step.Window(c, r))))
            .ToList();
        var texts = block.Entities.OfType<SheetText>().Select(t => (Text: t, Box: PageBox.Of(t))).ToList();
        var whole = texts.Where(t => windows.Exists(w => Contains(w.Box, t.Box))).Select(t => t.Text).ToHashSet(
            ReferenceEqualityComparer.Instance);
        ImmutableArray<SheetEntity> lines = [.. block.Entities.Where(e => e is not SheetText), .. step.MatchLines()];
        return windows.Select(w => Sheet(
            block,
            w.Box,
            [
                .. lines,
                .. texts.Where(t => whole.Contains(t.Text) ? Contains(w.Box, t.Box) : t.Box.Overlaps(w.Box)).Select(t => t.Text),
            ],
            (w.Column, w.Row),
            (columns, rows)));
    }

    private static Cell Sheet(
        TemplateBlock block, SheetBox window, ImmutableArray<SheetEntity> entities, (int Column, int Row) at, (int Columns, int Rows) of)
    {
        var (width, height) = (window.MaxX - window.MinX, window.MaxY - window.MinY);
        var wide = Math.Max(width, HeadingWidth + MapWidth);
        var title = FormattableString.Invariant($"{block.Title} · sheet {Name(at)} of {of.Columns * of.Rows}");
        var (texts, _) = Cell.Heading(title, Notes(block, of.Columns * of.Rows, at is (0, 0)), HeadingWidth);
        var full = height + HeadingHeight(block, of.Rows);
        return new Cell(
            wide,
            full,
            [
                .. texts.Select(t => t with { At = new SheetPoint(t.At.X, t.At.Y + full) }),
                .. Map(wide, full, at, of),
                Cell.Window(entities, window, new SheetPoint(0, 0)),
            ])
        {
            Title = title,
        };
    }

    /// <summary>Notes stand on the first sheet only; the others say how they join.</summary>
    private static ImmutableArray<string> Notes(TemplateBlock block, int sheets, bool first) =>
        first ? (sheets > 1 ? [.. block.Notes, Joining] : block.Notes) : [Joining];

    /// <summary>A to Z, AA …, and the row from below.</summary>
    private static string Name((int Column, int Row) at)
    {
        var letters = string.Empty;
        for (var c = at.Column; c >= 0; c = (c / 26) - 1)
        {
            letters = (char)('A' + (c % 26)) + letters;
        }

        return letters + (at.Row + 1).ToString(CultureInfo.InvariantCulture);
    }

    /// <summary>All sheets as a small grid with this one filled; lines between them only where they can be told apart.</summary>
    private static IEnumerable<SheetEntity> Map(double right, double top, (int Column, int Row) at, (int Columns, int Rows) of)
    {
        var cell = Math.Min(MapCell, MapWidth / of.Columns);
        var (x0, y0) = (right - (of.Columns * cell), top - (of.Rows * cell));
        SheetPoint P(double c, double r) => new(x0 + (c * cell), y0 + (r * cell));
        yield return new SheetArea(
            PageLayers.Accent,
            [P(at.Column, at.Row), P(at.Column + 1, at.Row), P(at.Column + 1, at.Row + 1), P(at.Column, at.Row + 1)],
            0.8);
        for (var c = 0; c <= of.Columns; c += cell < LeastMapCell ? of.Columns : 1)
        {
            yield return new SheetLine(PageLayers.Dim, P(c, 0), P(c, of.Rows));
        }

        for (var r = 0; r <= of.Rows; r++)
        {
            yield return new SheetLine(PageLayers.Dim, P(0, r), P(of.Columns, r));
        }
    }

    private static int Count(double size, double room) =>
        size <= room ? 1 : (int)Math.Ceiling((size - Overlap) / (room - Overlap));

    private static bool Contains(SheetBox outer, SheetBox inner) =>
        outer.MinX <= inner.MinX && outer.MinY <= inner.MinY && outer.MaxX >= inner.MaxX && outer.MaxY >= inner.MaxY;

    /// <summary>Where the sheets of a grid lie in the drawing.</summary>
    private sealed class Steps(SheetBox box, int columns, int rows)
    {
        private readonly double _width = (box.MaxX - box.MinX + ((columns - 1) * Overlap)) / columns;
        private readonly double _height = (box.MaxY - box.MinY + ((rows - 1) * Overlap)) / rows;

        public SheetBox Window(int column, int row)
        {
            var (x, y) = (box.MinX + (column * (_width - Overlap)), box.MinY + (row * (_height - Overlap)));
            return new SheetBox(x, y, x + _width, y + _height);
        }

        /// <summary>Dashed lines in the middle of each shared band, with two crosses on each part between crossings.</summary>
        public IEnumerable<SheetEntity> MatchLines()
        {
            for (var c = 1; c < columns; c++)
            {
                var x = Window(c, 0).MinX + (Overlap / 2);
                yield return new SheetLine(PageLayers.Fold, new SheetPoint(x, box.MinY), new SheetPoint(x, box.MaxY));
                foreach (var cross in Enumerable.Range(0, rows).SelectMany(r => Crosses(Window(c, r), upright: true, x)))
                {
                    yield return cross;
                }
            }

            for (var r = 1; r < rows; r++)
            {
                var y = Window(0, r).MinY + (Overlap / 2);
                yield return new SheetLine(PageLayers.Fold, new SheetPoint(box.MinX, y), new SheetPoint(box.MaxX, y));
                foreach (var cross in Enumerable.Range(0, columns).SelectMany(c => Crosses(Window(c, r), upright: false, y)))
                {
                    yield return cross;
                }
            }
        }

        private static IEnumerable<SheetEntity> Crosses(SheetBox window, bool upright, double at)
        {
            foreach (var share in (double[])[0.15, 0.85])
            {
                var x = upright ? at : window.MinX + (share * (window.MaxX - window.MinX));
                var y = upright ? window.MinY + (share * (window.MaxY - window.MinY)) : at;
                yield return new SheetLine(PageLayers.Accent, new SheetPoint(x - CrossArm, y), new SheetPoint(x + CrossArm, y));
                yield return new SheetLine(PageLayers.Accent, new SheetPoint(x, y - CrossArm), new SheetPoint(x, y + CrossArm));
            }
        }
    }
}
