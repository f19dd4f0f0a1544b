using BridgeForm.Output.Drawing;

namespace BridgeForm.Output.Templates;

/// <summary>Lays blocks on pages: side by side in rows where they fit, over several sheets where they do not.</summary>
internal static class BookLayout
{
    /// <summary>Clear space between cells, metres.</summary>
    private const double Space = 0.006;

    /// <summary>Headings of small drawings may be this wide, metres.</summary>
    private const double NotesWidth = 0.092;

    /// <summary>All blocks as a book of numbered pages; in order, upright or across as each needs.</summary>
    public static SheetBook Of(IEnumerable<TemplateBlock> blocks, Paper paper, SheetWords words)
    {
        var upright = new PageFrame(words, paper.Width, paper.Height);
        var across = paper.IsRoll ? upright : new PageFrame(words, paper.Height, paper.Width);
        var pages = new List<OpenPage>();
        foreach (var block in blocks)
        {
            foreach (var (frame, cell) in Cells(block, upright, across))
            {
                if (pages.Count == 0 || pages[^1].Frame != frame || !pages[^1].TryPlace(cell))
                {
                    pages.Add(new OpenPage(frame));
                    _ = pages[^1].TryPlace(cell) ? true : throw new InvalidOperationException($"{block.Title} does not fit its own sheet.");
                }
            }
        }

        return new SheetBook(words.Title, [.. pages.Select((p, i) => p.Finished(paper, words, i + 1, pages.Count))]);
    }

    private static IEnumerable<(PageFrame Frame, Cell Cell)> Cells(TemplateBlock block, PageFrame upright, PageFrame across)
    {
        foreach (var frame in (PageFrame[])[upright, across])
        {
            var (roomX, roomY) = Room(frame);
            var cell = Cell.Of(block, Math.Min(NotesWidth, roomX));
            if (cell.Width <= roomX && cell.Height <= roomY)
            {
                return [(frame, cell)];
            }
        }

        var best = Sheets(block, upright) <= Sheets(block, across) ? upright : across;
        var (width, height) = TileRoom(block, best);
        return Tiling.Of(block, width, height).Select(cell => (best, cell));
    }

    private static (double X, double Y) Room(PageFrame frame) =>
        (frame.Body.MaxX - frame.Body.MinX, frame.Body.MaxY - frame.Body.MinY);

    private static (double X, double Y) TileRoom(TemplateBlock block, PageFrame frame)
    {
        var (x, y) = Room(frame);
        var box = PageBox.Of(block.Entities);
        var rows = Tiling.Grid(1, box.MaxY - box.MinY, x, y * 0.7).Rows;
        return (x, y - Tiling.HeadingHeight(block, rows));
    }

    /// <summary>Sheets of paper that a tiled block fills: several low tiles share one.</summary>
    private static double Sheets(TemplateBlock block, PageFrame frame)
    {
        var (x, y) = TileRoom(block, frame);
        var box = PageBox.Of(block.Entities);
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

        /// <summary>Puts the cell on the page; false when it has no room left.</summary>
        public bool TryPlace(Cell cell)
        {
            if (_x + cell.Width > frame.Body.MaxX + RoundOff)
            {
                _top -= _rowHeight + Space;
                (_x, _rowHeight) = (frame.Body.MinX, 0);
            }

            if (_x + cell.Width > frame.Body.MaxX + RoundOff || _top - cell.Height < frame.Body.MinY - RoundOff)
            {
                return false;
            }

            _entities.AddRange(cell.At(_x, _top - cell.Height));
            _x += cell.Width + Space;
            _rowHeight = Math.Max(_rowHeight, cell.Height);
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

        /// <summary>Sums of widths may exceed the room by rounding, metres.</summary>
        private const double RoundOff = 1e-9;
    }
}
