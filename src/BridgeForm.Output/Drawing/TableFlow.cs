using BridgeForm.Quantities;

namespace BridgeForm.Output.Drawing;

/// <summary>
/// Sets tables one after the other: each as high as it finds room for all of it on the last pages, beside and below what stands
/// there; one that is higher than a page goes on in the next column and on the next page.
/// </summary>
internal sealed class TableFlow(SheetBox body)
{
    private const double Between = 0.008;

    /// <summary>A table goes back to room that was left on so many pages: farther back nobody looks for it.</summary>
    private const int OpenPages = 2;

    private readonly List<FlowPage> _pages = [];

    /// <summary>Pages so far.</summary>
    public IReadOnlyList<Canvas> Pages => [.. _pages.Select(p => p.Canvas)];

    /// <summary>Takes height off the top of a fresh page for a drawing across it.</summary>
    public Canvas Fresh(double height)
    {
        _pages.Add(new FlowPage(new Canvas(body), body.MaxY - height, []));
        return _pages[^1].Canvas;
    }

    /// <summary>Sets a whole table.</summary>
    public void Add(FlowTable table)
    {
        if (_pages.Count == 0)
        {
            Fresh(0);
        }

        var fresh = _pages[^1].Taken.Count == 0 ? _pages[^1].Start : body.MaxY;
        table = table.Within(body.MaxX - body.MinX, fresh - body.MinY);
        if (table.Widths().Sum() > body.MaxX - body.MinX + Tolerances.ColumnWidth)
        {
            throw new InvalidOperationException("A table is wider than a page.");
        }

        if (!Whole(table, table.Height()))
        {
            InParts(table);
        }
    }

    /// <summary>Where all of it has room on one of the last pages, or on a fresh one where the last is at least half full.</summary>
    private bool Whole(FlowTable table, double height)
    {
        if (height > body.MaxY - body.MinY)
        {
            return false;
        }

        foreach (var page in _pages.Skip(_pages.Count - OpenPages))
        {
            if (Rooms(page, table).FirstOrDefault(r => r.MaxY - height >= body.MinY) is { MaxX: > 0 } room)
            {
                Set(page, table, room, 0);
                return true;
            }
        }

        // A page that is more than half empty is filled first.
        if (_pages[^1].Taken.Count > 0 && Rooms(_pages[^1], table).Any(r => r.MaxY - body.MinY > (body.MaxY - body.MinY) / 2))
        {
            return false;
        }

        Fresh(0);
        Set(_pages[^1], table, Rooms(_pages[^1], table).First(), 0);
        return true;
    }

    private void InParts(FlowTable table)
    {
        for (var next = 0; next < table.Rows.Length;)
        {
            var before = next;
            foreach (var room in Rooms(_pages[^1], table))
            {
                next = Set(_pages[^1], table, room, next);
                if (next > before)
                {
                    break;
                }
            }

            if (next == before)
            {
                if (_pages[^1].Taken.Count == 0 && _pages[^1].Start >= body.MaxY)
                {
                    throw new InvalidOperationException("A row of a table is higher than a page.");
                }

                Fresh(0);
            }
        }
    }

    private int Set(FlowPage page, FlowTable table, SheetBox room, int first)
    {
        var (next, top) = table.Set(page.Canvas, room.MinX, room.MaxY, body.MinY, first);
        if (next > first)
        {
            page.Taken.Add(room with { MinY = top });
        }

        return next;
    }

    /// <summary>Rooms down to the foot of a page, beside what stands there or below it; the highest first.</summary>
    private IEnumerable<SheetBox> Rooms(FlowPage page, FlowTable table)
    {
        var width = Math.Min(table.FullWidth(), body.MaxX - body.MinX);
        return page.Taken.Select(t => t.MaxX + Between).Append(body.MinX)
            .Where(x => x + width <= body.MaxX + Tolerances.ColumnWidth)
            .Select(x => new SheetBox(
                x, body.MinY, x + width,
                page.Taken.Where(t => t.MinX < x + width + Between && t.MaxX + Between > x + Tolerances.ColumnWidth)
                    .Select(t => t.MinY).Append(page.Start).Min()))
            .OrderByDescending(r => r.MaxY).ThenBy(r => r.MinX);
    }

    /// <summary>A page with what is taken of it.</summary>
    private sealed record FlowPage(Canvas Canvas, double Start, List<SheetBox> Taken);
}
