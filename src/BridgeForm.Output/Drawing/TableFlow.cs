using BridgeForm.Quantities;

namespace BridgeForm.Output.Drawing;

/// <summary>Sets tables one after the other: down the page, then in a next column where there is room, then on a next page.</summary>
internal sealed class TableFlow(SheetBox body)
{
    private const double Between = 0.008;

    private readonly List<Canvas> _pages = [];
    private double _x;
    private double _top;
    private double _columnWidth;

    /// <summary>Pages so far.</summary>
    public IReadOnlyList<Canvas> Pages => _pages;

    /// <summary>Takes height off the top of a fresh page for a drawing across it.</summary>
    public Canvas Fresh(double height)
    {
        NewPage();
        _top -= height;
        _start = _top;
        return _pages[^1];
    }

    /// <summary>Sets a whole table.</summary>
    public void Add(FlowTable table)
    {
        if (_pages.Count == 0)
        {
            NewPage();
        }

        table = table.Within(body.MaxX - body.MinX, (_pages.Count > 0 ? _start : body.MaxY) - body.MinY);
        var width = table.Widths().Sum();
        if (width > body.MaxX - body.MinX + Tolerances.ColumnWidth)
        {
            throw new InvalidOperationException("A table is wider than a page.");
        }

        var height = table.Height();
        if (_top < _start && height > _top - body.MinY && height <= _start - body.MinY)
        {
            NextColumn(width, hopeless: false);
        }

        for (var next = 0; next < table.Rows.Length;)
        {
            var fits = _x + width <= body.MaxX + Tolerances.ColumnWidth;
            var (before, from) = (next, _top);
            if (fits)
            {
                (next, _top) = table.Set(_pages[^1], _x, _top, body.MinY, next);
                _columnWidth = next > before ? Math.Max(_columnWidth, width) : _columnWidth;
            }

            if (next < table.Rows.Length)
            {
                NextColumn(width, fits && next == before && from >= _start && _x <= body.MinX);
            }
        }
    }

    private double _start;

    private void NextColumn(double width, bool hopeless)
    {
        if (hopeless)
        {
            throw new InvalidOperationException("A row of a table is higher than a page.");
        }

        _x += _columnWidth + Between;
        (_top, _columnWidth) = (_start, 0);
        if (_x + width > body.MaxX + Tolerances.ColumnWidth)
        {
            NewPage();
        }
    }

    private void NewPage()
    {
        _pages.Add(new Canvas(body));
        (_x, _top, _columnWidth) = (body.MinX, body.MaxY, 0);
        _start = _top;
    }
}
