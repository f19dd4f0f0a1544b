using System.Collections.Immutable;
using System.Globalization;
using BridgeForm.Output.Drawing;
using BridgeForm.Project;
using BridgeForm.Quantities;
using BridgeForm.Roles;

namespace BridgeForm.Output.DrawingSet;

/// <summary>
/// Border and title block, a strip along the foot of every sheet: caution and failing checks above, then revisions, room for a
/// seal, and the fields that ISO 7200 asks for. Laid out before the page is enlarged. Metres.
/// </summary>
internal sealed class TitleBlock
{
    private const double Pad = 0.0012;
    private const double OwnerWidth = 0.056;
    private const double TitleWidth = 0.066;
    private const double NumberWidth = 0.042;
    private const double MostRevisions = 0.100;
    private const double LeastRow = 0.0085;
    private const int Rows = 3;

    /// <summary>Side of the room for a seal on paper: an embosser's 1-5/8 in, and a hair (common practice, no source).</summary>
    private const double SealSide = 0.042;

    private readonly SheetSize _size;
    private readonly SheetWords _words;
    private readonly DrawingText _text;
    private readonly SheetParameters _fields;
    private readonly ImmutableArray<string> _caution;
    private readonly ImmutableArray<string> _failing;
    private readonly double _row;

    /// <summary>A title block for sheets of that size.</summary>
    public TitleBlock(SheetSize size, SheetWords words, DrawingText text, SheetParameters fields)
    {
        (_size, _words, _text, _fields) = (size, words, text, fields);
        var width = Right - Left - (2 * Pad);
        _row = Math.Max(LeastRow, SealSide / size.Enlargement / Rows);
        _caution = PageText.Wrapped("Preliminary, not for construction approval. " + Caution.Text, width, PageText.Small);
        _failing = words.Verdict is { Length: > 0 } verdict ? PageText.Wrapped(verdict, width, PageText.Small, bold: true) : [];
    }

    /// <summary>Room for drawing above the strip.</summary>
    public SheetBox Body
    {
        get
        {
            const double inset = 0.003;
            return new SheetBox(Left + inset, Foot + Above + inset, Right - inset, Top - inset);
        }
    }

    private double Margin => Paper.Margin / _size.Enlargement;

    private double Left => Margin;

    private double Bottom => Margin;

    private double Right => (_size.Width / _size.Enlargement) - Margin;

    private double Top => (_size.Height / _size.Enlargement) - Margin;

    /// <summary>Upper edge of the boxes.</summary>
    private double Foot => Bottom + (Rows * _row);

    /// <summary>Height of caution and failing checks.</summary>
    private double Above => PageText.HeightOf(_caution.Length + _failing.Length, PageText.Small) + Pad;

    /// <summary>The finished page.</summary>
    public SheetPage Page(DrawnPage page, int sheet, int sheets)
    {
        ImmutableArray<SheetEntity> entities =
            [.. Enlarging.By(_size.Enlargement, [.. page.Content, .. Border(), .. Words(page, sheet, sheets)])];
        var title = string.Create(CultureInfo.InvariantCulture, $"{sheet} {page.Title}");
        return new SheetPage(_size.Width, _size.Height, new Sheet(title, PageLayers.OnDrawings, entities));
    }

    private IEnumerable<SheetEntity> Border()
    {
        yield return new SheetPolyline(
            PageLayers.Cut, [new(Left, Bottom), new(Right, Bottom), new(Right, Top), new(Left, Top)], Closed: true);
        yield return new SheetLine(PageLayers.Cut, new(Left, Foot + Above), new(Right, Foot + Above));
        yield return new SheetLine(PageLayers.Frame, new(Left, Foot), new(Right, Foot));
        foreach (var x in (double[])[Seal, Owner, Title, Number])
        {
            yield return new SheetLine(PageLayers.Frame, new(x, Bottom), new(x, Foot));
        }

        foreach (var (from, to, row) in ((double, double, int)[])
            [(Owner, Right, 1), (Owner, Title, 2), (Number, Right, 2)])
        {
            yield return new SheetLine(PageLayers.Frame, new(from, Bottom + (row * _row)), new(to, Bottom + (row * _row)));
        }

        foreach (var (x, low, high) in ((double, int, int)[])
            [(Owner + (OwnerWidth / 2), 0, 1), (Title + ((Number - Title) / 2), 0, 1), (Number + RevisionAt, 0, 2)])
        {
            yield return new SheetLine(PageLayers.Frame, new(x, Bottom + (low * _row)), new(x, Bottom + (high * _row)));
        }
    }

    private const double RevisionAt = 0.026;

    private double Number => Right - NumberWidth;

    private double Title => Owner + OwnerWidth;

    private double Owner => Seal + (Rows * _row);

    /// <summary>Left edge of the room for a seal; revisions to the left of it, what they do not need goes to the title.</summary>
    private double Seal => Left + Math.Min(MostRevisions, Number - Left - TitleWidth - OwnerWidth - (Rows * _row));

    private IEnumerable<SheetEntity> Words(DrawnPage page, int sheet, int sheets)
    {
        var top = Foot + Above - Pad;
        var count = string.Create(CultureInfo.InvariantCulture, $"{sheet} of {sheets}");
        var (half, titleHalf) = (OwnerWidth / 2, (Number - Title) / 2);
        return
        [
            .. PageText.Column(Left + Pad, top, _caution, PageText.Small),
            .. PageText.Column(
                Left + Pad, top - PageText.HeightOf(_caution.Length, PageText.Small), _failing, PageText.Small, bold: true,
                PageLayers.Accent),
            .. Revisions(),
            PageText.Left(Seal + Pad, Foot - Pad - PageText.Small, "Seal", PageText.Small),
            .. Cell(Owner, 3, OwnerWidth, "Legal owner", _fields.Owner),
            .. Cell(Owner, 2, OwnerWidth, "Site", _fields.Site),
            .. Cell(Owner, 1, half, "Created by", _fields.Created),
            .. Cell(Owner + half, 1, half, "Approved by", _fields.Approved),
            .. TitleCell(page),
            .. Cell(Title, 1, titleHalf, "Document type", page.Type),
            .. Lined(Title + titleHalf, Bottom + _row - Pad, titleHalf, UnitsLine(), 2, bold: false),
            .. Cell(Number, 3, NumberWidth, "Identification number", _fields.Number),
            .. Cell(Number, 2, RevisionAt, "Date of issue", _fields.Issued),
            .. Cell(Number + RevisionAt, 2, NumberWidth - RevisionAt, "Rev.", _fields.Revisions.LastOrDefault()?.Index ?? ""),
            PageText.Left(Number + Pad, Bottom + _row - Pad - PageText.Small, "Sheet", PageText.Small),
            PageText.Left(Number + Pad, Bottom + Pad, count, PageText.Large, bold: true, PageLayers.Accent),
            .. ProjectionSymbol.Draw(new SheetPoint(Number + ((RevisionAt + NumberWidth) / 2), Bottom + (_row / 2)), _text.Imperial),
        ];
    }

    /// <summary>Bridge, drawing, and the direction of view.</summary>
    private IEnumerable<SheetEntity> TitleCell(DrawnPage page)
    {
        var width = Number - Title;
        var y = Foot - Pad;
        yield return PageText.Left(Title + Pad, y - PageText.Small, "Title", PageText.Small);
        const double indent = 0.008;
        foreach (var entity in Lined(Title + indent, y, width - indent, _words.Project, 1, bold: false))
        {
            yield return entity;
        }

        y -= PageText.HeightOf(1, PageText.Small);
        foreach (var (words, height, most) in ((string, double, int)[])
            [(page.Title, PageText.Normal, 2), (page.Direction, PageText.Small, 2)])
        {
            var room = (int)((y - Bottom - _row) / PageText.HeightOf(1, height));
            var lines = Fitted(words, width - (2 * Pad), height, height > PageText.Small, Math.Min(most, room));
            foreach (var entity in PageText.Column(Title + Pad, y, lines, height, bold: height > PageText.Small))
            {
                yield return entity;
            }

            y -= PageText.HeightOf(lines.Length, height);
        }
    }

    private const double IndexColumn = 0.009;
    private const double DateColumn = 0.019;

    private double RevisionPitch => Rows * _row / 5;

    /// <summary>Rows of the latest revisions, as many as have room, and whether a change in them is shortened.</summary>
    private (List<(string Index, string Date, ImmutableArray<string> Lines, double Height)> Rows, bool IsCut) RevisionRows()
    {
        var rows = new List<(string Index, string Date, ImmutableArray<string> Lines, double Height)>();
        var (width, left) = (Seal - Left - IndexColumn - DateColumn - (2 * Pad), (Rows * _row) - RevisionPitch);
        var (count, isCut) = (_fields.Revisions.Length, false);
        foreach (var (revision, i) in _fields.Revisions.Reverse().Select((r, i) => (r, i)))
        {
            var lines = Fitted(revision.Change, width, PageText.Small, bold: false, 3);
            var height = Math.Max(RevisionPitch, PageText.HeightOf(lines.Length, PageText.Small) + Pad);

            // Those that find no room are told of in a row of their own.
            var kept = i + 1 < count ? RevisionPitch : 0;
            if (left - height < kept - Tolerances.ColumnWidth)
            {
                break;
            }

            isCut |= lines.Length > 0 && lines[^1].EndsWith('…');
            rows.Add((revision.Index, revision.Date, lines, height));
            left -= height;
        }

        return (rows, isCut);
    }

    /// <summary>The latest first, as many as there is room for; empty lines to write in where there are none.</summary>
    private IEnumerable<SheetEntity> Revisions()
    {
        var (y, pitch) = (Foot, RevisionPitch);
        double[] columns = [Left, Left + IndexColumn, Left + IndexColumn + DateColumn];
        var rows = RevisionRows().Rows;
        var earlier = _fields.Revisions.Take(_fields.Revisions.Length - rows.Count).ToList();
        (string Index, string Date, ImmutableArray<string> Lines, double Height) head = ("Rev.", "Date", ["Change"], pitch);
        foreach (var row in rows.Prepend(head))
        {
            foreach (var entity in (IEnumerable<SheetEntity>)
                [
                    PageText.Left(columns[0] + Pad, y - Pad - PageText.Small, row.Index, PageText.Small),
                    PageText.Left(columns[1] + Pad, y - Pad - PageText.Small, row.Date, PageText.Small),
                    .. PageText.Column(columns[2] + Pad, y - Pad, row.Lines, PageText.Small),
                ])
            {
                yield return entity;
            }

            y -= row.Height;
            yield return new SheetLine(PageLayers.Dim, new(Left, y), new(Seal, y));
        }

        if (earlier.Count > 0)
        {
            var words = $"{earlier[0].Index}{(earlier.Count > 1 ? $" to {earlier[^1].Index}" : "")}: see the general notes";
            yield return PageText.Left(columns[0] + Pad, y - Pad - PageText.Small, words, PageText.Small);
        }

        for (y -= pitch; y > Bottom + (pitch / 2); y -= pitch)
        {
            yield return new SheetLine(PageLayers.Dim, new(Left, y), new(Seal, y));
        }

        // The lines between the columns end where words run across them.
        var low = earlier.Count > 0 ? Foot - pitch - rows.Sum(r => r.Height) : Bottom;
        yield return new SheetLine(PageLayers.Dim, new(columns[1], low), new(columns[1], Foot));
        yield return new SheetLine(PageLayers.Dim, new(columns[2], low), new(columns[2], Foot));
    }

    private string UnitsLine() => (_text.Imperial ? "Feet, inches; " : "Millimeters; ") + _size.Name + "; scales as noted";

    /// <summary>A field: its name and its value, or room to write.</summary>
    private IEnumerable<SheetEntity> Cell(double x, int row, double width, string label, string value)
    {
        var top = Bottom + (row * _row) - Pad;
        return
        [
            PageText.Left(x + Pad, top - PageText.Small, label, PageText.Small),
            .. Value(x, top, width, label, value),
        ];
    }

    /// <summary>Below its label; what is too long for that begins beside the label and goes on below it.</summary>
    private static IEnumerable<SheetEntity> Value(double x, double top, double width, string label, string value)
    {
        var below = top - PageText.HeightOf(1, PageText.Small);
        if (PageText.Width(value, PageText.Small, bold: true) <= width - (2 * Pad))
        {
            return Lined(x, below, width, value, 1, bold: true);
        }

        var (first, second, _) = Split(label, value, width);
        var indent = PageText.Width(label + "  ", PageText.Small);
        return [.. Lined(x + indent, top, width - indent, first, 1, bold: false), .. Lined(x, below, width, second, 1, bold: false)];
    }

    /// <summary>What of a value stands beside its label, what below it, and whether that is all.</summary>
    private static (string First, string Second, bool IsAll) Split(string label, string value, double width)
    {
        var beside = width - (2 * Pad) - PageText.Width(label + "  ", PageText.Small);
        var first = PageText.Wrapped(value, beside, PageText.Small)[0];
        var second = value[first.Length..].TrimStart();
        return (first, second, PageText.Width(second, PageText.Small) <= width - (2 * Pad));
    }

    /// <summary>Fields and revisions all have room as the file gives them.</summary>
    public bool ShowsAll
    {
        get
        {
            var (half, fields) = (OwnerWidth / 2, _fields);
            (string Label, string Value, double Width)[] all =
            [
                ("Legal owner", fields.Owner, OwnerWidth), ("Site", fields.Site, OwnerWidth), ("Created by", fields.Created, half),
                ("Approved by", fields.Approved, half), ("Identification number", fields.Number, NumberWidth),
                ("Date of issue", fields.Issued, RevisionAt),
                ("Rev.", fields.Revisions.LastOrDefault()?.Index ?? "", NumberWidth - RevisionAt),
            ];
            return Array.TrueForAll(
                    all, f => PageText.Width(f.Value, PageText.Small, bold: true) <= f.Width - (2 * Pad)
                        || Split(f.Label, f.Value, f.Width).IsAll)
                && RevisionRows().Rows.Count == fields.Revisions.Length && !RevisionRows().IsCut;
        }
    }

    private static IEnumerable<SheetEntity> Lined(double x, double top, double width, string value, int most, bool bold) =>
        value.Length == 0 ? [] : PageText.Column(
            x + Pad, top, Fitted(value, width - (2 * Pad), PageText.Small, bold, most), PageText.Small, bold);

    /// <summary>So many lines at most, none wider than its box: what is left over ends in dots.</summary>
    private static ImmutableArray<string> Fitted(string text, double width, double height, bool bold, int most)
    {
        var lines = PageText.Wrapped(text, width, height, bold);
        var kept = lines.Take(most).ToArray();
        var isCut = lines.Length > most;
        for (var i = 0; i < kept.Length; i++)
        {
            var line = kept[i];
            var end = isCut && i == most - 1 ? "…" : "";
            while (line.Length > 0 && PageText.Width(line + end, height, bold) > width)
            {
                (line, end) = (line[..^1], "…");
            }

            kept[i] = line + end;
        }

        return [.. kept];
    }
}

/// <summary>The cone of ISO 5456-2 that says how views are arranged (from memory).</summary>
internal static class ProjectionSymbol
{
    /// <summary>
    /// A cone from the side, its thin end to the left, and its view from the left: on the left in the third angle, as views of
    /// sheets in inches are arranged, the plan above; on the right in the first angle, the plan below.
    /// </summary>
    public static IEnumerable<SheetEntity> Draw(SheetPoint middle, bool isThirdAngle)
    {
        const double thin = 0.0011, thick = 0.0021, length = 0.0042, apart = 0.0031;
        var (round, cone) = isThirdAngle ? (-apart, apart) : (apart, -apart);
        var (left, right) = (middle.X + cone - (length / 2), middle.X + cone + (length / 2));
        var (x, y) = (middle.X + round, middle.Y);
        yield return new SheetPolyline(
            PageLayers.Frame,
            [new(left, y - thin), new(right, y - thick), new(right, y + thick), new(left, y + thin)],
            Closed: true);
        yield return new SheetCircle(PageLayers.Frame, new(x, y), thin);
        yield return new SheetCircle(PageLayers.Frame, new(x, y), thick);
        yield return new SheetLine(PageLayers.Layout, new(left - 0.0007, y), new(right + 0.0007, y));
        yield return new SheetLine(PageLayers.Layout, new(x - thick - 0.0007, y), new(x + thick + 0.0007, y));
        yield return new SheetLine(PageLayers.Layout, new(x, y - thick - 0.0007), new(x, y + thick + 0.0007));
    }
}
