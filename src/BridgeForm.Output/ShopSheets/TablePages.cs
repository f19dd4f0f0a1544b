using System.Collections.Immutable;
using BridgeForm.Output.Drawing;

namespace BridgeForm.Output.ShopSheets;

/// <summary>A table with its heading; columns are as wide as their widest entry.</summary>
/// <param name="Title">Heading.</param>
/// <param name="Notes">Sentences below the heading.</param>
/// <param name="Head">Names of the columns.</param>
/// <param name="Rows">Entries, as many a row as columns.</param>
internal sealed record PageTable(
    string Title, ImmutableArray<string> Notes, ImmutableArray<string> Head, ImmutableArray<ImmutableArray<string>> Rows)
{
    /// <summary>Rows that the columns must be wide enough for; several tables that share them line up.</summary>
    public ImmutableArray<ImmutableArray<string>> Sizing { get; init; } = Rows;
}

/// <summary>Sets tables on pages one below the other; a table that is cut by the page's end repeats its head.</summary>
internal sealed class TablePages(PageFrame frame)
{
    private const double RowPitch = 0.0045;
    private const double Pad = 0.0015;
    private const double Space = 0.004;

    // More than half the widest line, metres.
    private const double LineRoom = 0.0004;

    private readonly List<List<SheetEntity>> _pages = [];
    private double _top;

    private double Left => frame.Body.MinX;

    private double Width => frame.Body.MaxX - frame.Body.MinX;

    /// <summary>Pages with all that was added, numbered.</summary>
    public SheetBook Book(string title) =>
        new(title, [.. _pages.Select((p, i) => frame.Page(p, i + 1, _pages.Count))]);

    /// <summary>What follows stands on a page of its own.</summary>
    public void BeginPage() => NewPage();

    /// <summary>A picture at the left of the page.</summary>
    public void AddPicture(ImmutableArray<SheetEntity> picture)
    {
        var box = PageBox.Of(picture);
        var room = new SheetBox(box.MinX - LineRoom, box.MinY - LineRoom, box.MaxX + LineRoom, box.MaxY + LineRoom);
        Demand(room.MaxY - room.MinY);
        _pages[^1].Add(new SheetWindow(
            PageLayers.Note,
            new Sheet(string.Empty, PageLayers.All, picture),
            room,
            new SheetPoint(Left, _top - (room.MaxY - room.MinY))));
        _top -= room.MaxY - room.MinY + Space;
    }

    /// <summary>Sentences across the page.</summary>
    public void AddText(IEnumerable<string> sentences)
    {
        ImmutableArray<string> lines = [.. sentences.SelectMany(s => PageText.Wrapped(s, Width, PageText.Small))];
        Demand(PageText.HeightOf(lines.Length, PageText.Small));
        _pages[^1].AddRange(PageText.Column(Left, _top, lines, PageText.Small));
        _top -= PageText.HeightOf(lines.Length, PageText.Small) + Space;
    }

    /// <summary>A table.</summary>
    public void Add(PageTable table)
    {
        ImmutableArray<string> notes = [.. table.Notes.SelectMany(n => PageText.Wrapped(n, Width, PageText.Small))];
        Demand(HeadingHeight(notes.Length) + (RowPitch * Math.Min(3, table.Rows.Length + 1)));
        Heading(table.Title, notes);
        var columns = Columns(table);
        Head(table.Head, columns);
        foreach (var row in table.Rows)
        {
            if (_top - RowPitch < frame.Body.MinY)
            {
                NewPage();
                Heading(table.Title + ", continued", []);
                Head(table.Head, columns);
            }

            Row(row, columns, bold: false);
            _pages[^1].Add(new SheetLine(PageLayers.Dim, new SheetPoint(Left, _top), new SheetPoint(columns[^1], _top)));
        }

        _top -= Space;
    }

    private static double HeadingHeight(int notes) =>
        PageText.HeightOf(1, PageText.Normal) + PageText.HeightOf(notes, PageText.Small);

    private void Heading(string title, ImmutableArray<string> notes)
    {
        _pages[^1].AddRange(PageText.Heading(Left, _top, [title], title));
        _pages[^1].AddRange(PageText.Column(Left, _top - PageText.HeightOf(1, PageText.Normal), notes, PageText.Small));
        _top -= HeadingHeight(notes.Length);
    }

    private void Head(ImmutableArray<string> head, double[] columns)
    {
        _pages[^1].Add(new SheetArea(
            PageLayers.Note,
            [
                new(Left, _top), new(columns[^1], _top), new(columns[^1], _top - RowPitch), new(Left, _top - RowPitch),
            ],
            0.12));
        Row(head, columns, bold: true);
    }

    private void Row(ImmutableArray<string> row, double[] columns, bool bold)
    {
        _top -= RowPitch;
        for (var i = 0; i < row.Length; i++)
        {
            if (row[i].Length == 0)
            {
                continue;
            }

            _pages[^1].Add(PageText.Left(columns[i] + Pad, _top + ((RowPitch - PageText.Small) / 2), row[i], PageText.Small, bold));
        }
    }

    /// <summary>Left edges of the columns, and the right edge of the last.</summary>
    private double[] Columns(PageTable table)
    {
        var edges = new double[table.Head.Length + 1];
        edges[0] = Left;
        for (var i = 0; i < table.Head.Length; i++)
        {
            var widest = table.Sizing.Select(r => PageText.Width(r[i], PageText.Small))
                .Append(PageText.Width(table.Head[i], PageText.Small, bold: true)).Max();
            edges[i + 1] = edges[i] + widest + (2 * Pad);
        }

        return edges;
    }

    private void Demand(double height)
    {
        if (_pages.Count == 0 || _top - height < frame.Body.MinY)
        {
            NewPage();
        }
    }

    private void NewPage()
    {
        _pages.Add([]);
        _top = frame.Body.MaxY;
    }
}
