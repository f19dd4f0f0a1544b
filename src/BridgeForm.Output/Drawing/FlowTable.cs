using System.Collections.Immutable;
using BridgeForm.Quantities;

namespace BridgeForm.Output.Drawing;

/// <summary>A column of a table.</summary>
/// <param name="Head">Its name.</param>
/// <param name="Limit">Widest it may become, metres; longer entries are broken into lines.</param>
/// <param name="Figures">Entries stand at the right edge.</param>
internal sealed record FlowColumn(string Head, double Limit = 0.05, bool Figures = false)
{
    /// <summary>Width that it has at least, metres.</summary>
    public double Least { get; init; }
}

/// <summary>A row: an entry a column.</summary>
/// <param name="Entries">Texts.</param>
/// <param name="Strong">In bold and in the accent colour.</param>
internal sealed record FlowRow(ImmutableArray<string> Entries, bool Strong = false);

/// <summary>A table with its heading.</summary>
/// <param name="Title">Heading.</param>
/// <param name="Note">A sentence below it; empty for none.</param>
internal sealed record FlowTable(string Title, string Note, ImmutableArray<FlowColumn> Columns, ImmutableArray<FlowRow> Rows)
{
    /// <summary>Height that a row has at least, metres: of a table that is written in by hand.</summary>
    public double LeastRow { get; init; }

    /// <summary>Lines between the columns, for what is written in by hand.</summary>
    public bool Ruled { get; init; }

    private const double Pad = 0.0013;

    /// <summary>A column so wide can be narrower, metres.</summary>
    private const double Wide = 0.03;
    private const double TextHeight = PageText.Small;

    /// <summary>Notes of narrow tables are wrapped no narrower than this, metres.</summary>
    private const double LeastNote = 0.056;

    /// <summary>Width of each column.</summary>
    public ImmutableArray<double> Widths() =>
    [
        .. Columns.Select((c, i) => Math.Min(
            c.Limit,
            Math.Max(c.Least, Rows.Select(r => PageText.Width(r.Entries[i], TextHeight, r.Strong))
                .Append(PageText.Width(c.Head, TextHeight, bold: true)).Max() + (2 * Pad)))),
    ];

    /// <summary>Width with heading and note, metres.</summary>
    public double FullWidth() => Math.Max(
        Math.Max(Widths().Sum(), Note.Length > 0 ? Math.Min(LeastNote, PageText.Width(Note, TextHeight)) : 0),
        PageText.Width(TitleOf(1), PageText.Normal, bold: true));

    /// <summary>
    /// The same table for a page: wide columns give way, each by the same share, and their entries break into more lines; a row that is
    /// higher than the page is set as several.
    /// </summary>
    /// <param name="width">Of the page, metres.</param>
    /// <param name="height">Of the page, metres.</param>
    public FlowTable Within(double width, double height)
    {
        var narrow = NoWider(width);
        var widths = narrow.Widths();
        var lines = (int)((height - narrow.HeadHeight(widths) - RowPitch - Tolerances.ColumnWidth) / PageText.HeightOf(1, TextHeight));
        return lines > 0 && narrow.Rows.Any(r => Lines(r.Entries, widths, r.Strong).Any(e => e.Length > lines))
            ? narrow with { Rows = [.. narrow.Rows.SelectMany(r => Parts(r, widths, lines))] }
            : narrow;
    }

    private static IEnumerable<FlowRow> Parts(FlowRow row, ImmutableArray<double> widths, int lines)
    {
        var entries = Lines(row.Entries, widths, row.Strong).ToList();
        for (var from = 0; from < Math.Max(1, entries.Max(e => e.Length)); from += lines)
        {
            yield return row with { Entries = [.. entries.Select(e => string.Join(' ', e.Skip(from).Take(lines)))] };
        }
    }

    private FlowTable NoWider(double room)
    {
        var widths = Widths();
        var wide = widths.Where(w => w >= Wide).Sum();
        var share = (room - (widths.Sum() - wide)) / wide;
        return widths.Sum() <= room || !(share > 0)
            ? this
            : this with { Columns = [.. Columns.Select((c, i) => widths[i] >= Wide ? c with { Limit = widths[i] * share } : c)] };
    }

    /// <summary>Sets as many rows from <paramref name="first"/> on as fit between two heights, with heading and head.</summary>
    /// <returns>The first row that did not fit, and where the next thing may begin.</returns>
    public (int Next, double Top) Set(Canvas canvas, double x, double top, double bottom, int first = 0)
    {
        var widths = Widths();
        var note = Math.Max(widths.Sum(), LeastNote);
        ImmutableArray<string> head = [.. Columns.Select(c => c.Head)];
        var begun = Math.Max(2 * RowPitch, first < Rows.Length ? RowHeight(Rows[first], widths) : 0);
        if (top - HeadingHeight(note, first) - RowHeight(head, widths, bold: true) - begun < bottom)
        {
            return (first, top);
        }

        var y = Heading(canvas, x, top, note, first);
        y = Row(canvas, x, y, new FlowRow(head), widths, head: true);
        var next = first;
        while (next < Rows.Length && y - RowHeight(Rows[next], widths) >= bottom)
        {
            y = Row(canvas, x, y, Rows[next++], widths, head: false);
        }

        return (next, y - 0.004);
    }

    /// <summary>Height of the whole table.</summary>
    public double Height()
    {
        var widths = Widths();
        return HeadHeight(widths) + Rows.Sum(r => RowHeight(r, widths));
    }

    /// <summary>Height in which it can always be begun, and always be continued: heading, head and its highest row.</summary>
    public double Least()
    {
        var widths = Widths();
        return HeadHeight(widths)
            + Rows.Select(r => RowHeight(r, widths)).Append(2 * RowPitch).Max() + Tolerances.ColumnWidth;
    }

    private double HeadHeight(ImmutableArray<double> widths) =>
        HeadingHeight(Math.Max(widths.Sum(), LeastNote), 0) + RowHeight([.. Columns.Select(c => c.Head)], widths, bold: true);

    private static double RowPitch => (PageText.Pitch * TextHeight) + (2 * Pad / 3);

    private string TitleOf(int first) => first > 0 ? Title + ", continued" : Title;

    private ImmutableArray<string> NoteOf(double width, int first) =>
        Note.Length > 0 && first == 0 ? PageText.Wrapped(Note, width, TextHeight) : [];

    private double HeadingHeight(double width, int first) =>
        PageText.HeightOf(1, PageText.Normal) + PageText.HeightOf(NoteOf(width, first).Length, TextHeight) + 0.0005;

    private double Heading(Canvas canvas, double x, double top, double width, int first)
    {
        foreach (var line in PageText.Heading(x, top, [TitleOf(first)], TitleOf(first)))
        {
            canvas.Text(line);
        }

        var y = top - PageText.HeightOf(1, PageText.Normal);
        return canvas.Column(x, y, NoteOf(width, first), TextHeight) - 0.0005;
    }

    private double Row(Canvas canvas, double x, double top, FlowRow row, ImmutableArray<double> widths, bool head)
    {
        var bold = head || row.Strong;
        var height = head ? RowHeight(row.Entries, widths, bold) : RowHeight(row, widths);
        var right = x + widths.Sum();
        if (head)
        {
            canvas.Add(new SheetArea(
                PageLayers.Note, [new(x, top), new(right, top), new(right, top - height), new(x, top - height)], 0.12));
        }

        for (var i = 0; i < widths.Length; i++)
        {
            foreach (var text in Entry(row.Entries[i], x, top, widths[i], Columns[i].Figures, bold, row.Strong))
            {
                canvas.Text(text);
            }

            x += widths[i];
            if (Ruled && !head && i < widths.Length - 1)
            {
                canvas.Line(PageLayers.Dim, x, top, x, top - height);
            }
        }

        canvas.Line(PageLayers.Dim, right - widths.Sum(), top - height, right, top - height);
        return top - height;
    }

    private static IEnumerable<SheetText> Entry(
        string entry, double x, double top, double width, bool figures, bool bold, bool strong)
    {
        var layer = strong ? PageLayers.Accent : PageLayers.Note;
        var lines = PageText.Wrapped(entry, width - (2 * Pad) + Tolerances.ColumnWidth, TextHeight, bold);
        for (var i = 0; i < lines.Length; i++)
        {
            var y = top - (Pad / 1.5) - TextHeight - (i * PageText.Pitch * TextHeight);
            yield return figures
                ? PageText.Right(x + width - Pad, y, lines[i], TextHeight, bold, layer)
                : PageText.Left(x + Pad, y, lines[i], TextHeight, bold, layer);
        }
    }

    private static IEnumerable<ImmutableArray<string>> Lines(ImmutableArray<string> entries, ImmutableArray<double> widths, bool bold) =>
        entries.Select((e, i) => PageText.Wrapped(e, widths[i] - (2 * Pad) + Tolerances.ColumnWidth, TextHeight, bold));

    private double RowHeight(FlowRow row, ImmutableArray<double> widths) =>
        Math.Max(LeastRow, RowHeight(row.Entries, widths, row.Strong));

    private static double RowHeight(ImmutableArray<string> entries, ImmutableArray<double> widths, bool bold) =>
        PageText.HeightOf(Math.Max(1, Lines(entries, widths, bold).Max(l => l.Length)), TextHeight) + (2 * Pad / 3);
}
