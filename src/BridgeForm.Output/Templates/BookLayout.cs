using System.Collections.Immutable;
using BridgeForm.Output.Drawing;
using BridgeForm.Quantities;

namespace BridgeForm.Output.Templates;

/// <summary>Lays blocks on pages: side by side in rows where they fit, over several sheets where they do not.</summary>
internal static class BookLayout
{
    /// <summary>Clear space between cells, metres.</summary>
    private const double Space = 0.006;

    /// <summary>Headings of small drawings may be this wide, metres.</summary>
    private const double NotesWidth = 0.092;

    /// <summary>How many pages back a cell may still find room: pages stay near the order of the blocks.</summary>
    private const int Back = 8;

    /// <summary>
    /// All blocks as a book of numbered pages, about in order; paper stands upright or lies across, whichever takes fewer
    /// pages.
    /// </summary>
    public static SheetBook Lay(IReadOnlyCollection<TemplateBlock> blocks, Paper paper, SheetWords words)
    {
        var pages = Filled(blocks, paper, words);
        return new SheetBook(words.Title, [.. pages.Select((p, i) => p.Finished(paper, words, i + 1, pages.Count))]);
    }

    /// <summary>The same after an index: a line a page, and what is not printed.</summary>
    public static SheetBook LayWithIndex(
        IReadOnlyCollection<TemplateBlock> blocks, Paper paper, SheetWords words, ImmutableArray<string> notPrinted)
    {
        var pages = Filled(blocks, paper, words);
        var frame = new PageFrame(words, paper.Width, paper.IsRoll ? paper.Width : paper.Height);
        var titles = pages.Select(p => p.Titles).ToList();
        var before = TemplateIndex.Draw(frame, titles, notPrinted, 0).Count;
        var count = before + pages.Count;
        var index = TemplateIndex.Draw(frame, titles, notPrinted, before).Select((content, i) => frame.Page(content, i + 1, count));
        return new SheetBook(
            words.Title, [.. index, .. pages.Select((p, i) => p.Finished(paper, words, before + i + 1, count))]);
    }

    private static List<OpenPage> Filled(IReadOnlyCollection<TemplateBlock> blocks, Paper paper, SheetWords words)
    {
        var upright = new PageFrame(words, paper.Width, paper.Height);
        var across = paper.IsRoll ? upright : new PageFrame(words, paper.Height, paper.Width);
        var pages = Packed(blocks, [upright, across]);
        var other = paper.IsRoll ? pages : Packed(blocks, [across, upright]);
        return other.Count < pages.Count ? other : pages;
    }

    private static List<OpenPage> Packed(IEnumerable<TemplateBlock> blocks, PageFrame[] frames)
    {
        var pages = new List<OpenPage>();
        foreach (var (frame, cell) in blocks.SelectMany(b => Cells(b, frames)))
        {
            if (!pages.Skip(Math.Max(0, pages.Count - Back)).Any(p => p.Frame == frame && p.TryPlace(cell)))
            {
                pages.Add(new OpenPage(frame));
                if (!pages[^1].TryPlace(cell))
                {
                    throw new InvalidOperationException("A drawing does not fit its own sheet.");
                }
            }
        }

        return pages;
    }

    private static IEnumerable<(PageFrame Frame, Cell Cell)> Cells(TemplateBlock block, PageFrame[] frames)
    {
        foreach (var frame in frames)
        {
            var (roomX, roomY) = Room(frame);
            foreach (var notes in (double[])[Math.Min(NotesWidth, roomX), roomX])
            {
                var cell = Cell.Draw(block, notes);
                if (cell.Width <= roomX && cell.Height <= roomY)
                {
                    return [(frame, cell)];
                }
            }
        }

        if (block.Shorter is { } shorter)
        {
            return Cells(shorter, frames);
        }

        var best = Sheets(block, frames[1]) < Sheets(block, frames[0]) ? frames[1] : frames[0];
        var (width, height) = TileRoom(block, best);
        return Tiling.Cut(block, width, height).Select(cell => (best, cell));
    }

    private static (double X, double Y) Room(PageFrame frame) =>
        (frame.Body.MaxX - frame.Body.MinX, frame.Body.MaxY - frame.Body.MinY);

    private static (double X, double Y) TileRoom(TemplateBlock block, PageFrame frame)
    {
        var (x, y) = Room(frame);
        var box = Cell.BoxOf(block);
        var rows = Tiling.Grid(1, box.MaxY - box.MinY, x, y * 0.7).Rows;
        return (x, y - Tiling.HeadingHeight(block, rows));
    }

    /// <summary>Sheets of paper that a tiled block fills: several low tiles share one.</summary>
    private static double Sheets(TemplateBlock block, PageFrame frame)
    {
        var (x, y) = TileRoom(block, frame);
        var box = Cell.BoxOf(block);
        var (columns, rows) = Tiling.Grid(box.MaxX - box.MinX, box.MaxY - box.MinY, x, y);
        var share = rows > 1 ? 1 : Math.Min(1, (box.MaxY - box.MinY + Room(frame).Y - y) / Room(frame).Y);
        return columns * rows * share;
    }

    /// <summary>A page being filled: rows of cells from the top.</summary>
    private sealed class OpenPage(PageFrame frame)
    {
        private readonly List<SheetEntity> _entities = [];
        private double _x = frame.Body.MinX;
        private double _top = frame.Body.MaxY;
        private double _rowHeight;

        public PageFrame Frame => frame;

        /// <summary>What is on it, in order.</summary>
        public List<string> Titles { get; } = [];

        /// <summary>Puts the cell on the page; false when it has no room left.</summary>
        public bool TryPlace(Cell cell)
        {
            var newRow = _x + cell.Width > frame.Body.MaxX + Tolerances.RoundOff;
            var (x, top) = newRow ? (frame.Body.MinX, _top - _rowHeight - Space) : (_x, _top);
            if (x + cell.Width > frame.Body.MaxX + Tolerances.RoundOff || top - cell.Height < frame.Body.MinY - Tolerances.RoundOff)
            {
                return false;
            }

            _entities.AddRange(cell.At(x, top - cell.Height));
            Titles.Add(cell.Title);
            _rowHeight = Math.Max(newRow ? 0 : _rowHeight, cell.Height);
            (_x, _top) = (x + cell.Width + Space, top);
            return true;
        }

        /// <summary>The page; from a roll it is cut to the length it needs.</summary>
        public SheetPage Finished(Paper paper, SheetWords words, int number, int count)
        {
            if (!paper.IsRoll)
            {
                return frame.Page(_entities, number, count);
            }

            var spare = Math.Max(0, _top - _rowHeight - frame.Body.MinY);
            var shorter = new PageFrame(words, frame.Width, frame.Height - spare);
            return shorter.Page(new Cell(0, 0, [.. _entities]).At(0, -spare), number, count);
        }

    }
}
