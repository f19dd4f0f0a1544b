using System.Collections.Immutable;
using System.Globalization;
using BridgeForm.Output.Drawing;
using BridgeForm.Quantities;
using BridgeForm.Roles;

namespace BridgeForm.Output.DrawingSet;

/// <summary>Border and title block: a strip along the foot of every sheet.</summary>
internal sealed class TitleBlock
{
    private const double Pad = 0.0018;
    private const double NumberWidth = 0.036;
    private const double TitleWidth = 0.092;
    private const double ProjectWidth = 0.078;
    private const double ViewWidth = 0.058;
    private const double LeastHeight = 0.0205;
    private const double NumberHeight = 0.0060;

    private readonly SheetSize _size;
    private readonly SheetWords _words;
    private readonly DrawingText _text;
    private readonly ImmutableArray<string> _caution;
    private readonly ImmutableArray<string> _failing;
    private readonly double _height;

    /// <summary>A title block for sheets of that size.</summary>
    public TitleBlock(SheetSize size, SheetWords words, DrawingText text)
    {
        (_size, _words, _text) = (size, words, text);
        var width = Right - Left - NumberWidth - TitleWidth - ProjectWidth - ViewWidth - (2 * Pad);
        _caution = PageText.Wrapped(Caution.Text, width, PageText.Small);
        _failing = words.Verdict is { Length: > 0 } verdict ? PageText.Wrapped(verdict, width, PageText.Small, bold: true) : [];
        _height = Math.Max(LeastHeight, PageText.HeightOf(_caution.Length + _failing.Length, PageText.Small) + (2 * Pad));
    }

    /// <summary>Room for drawing above the strip.</summary>
    public SheetBox Body
    {
        get
        {
            const double inset = 0.004;
            return new SheetBox(Left + inset, Bottom + _height + inset, Right - inset, Top - inset);
        }
    }

    private static double Left => Paper.Margin;

    private static double Bottom => Paper.Margin;

    private double Right => _size.Width - Paper.Margin;

    private double Top => _size.Height - Paper.Margin;

    /// <summary>The finished page.</summary>
    public SheetPage Page(DrawnPage page, string number, int sheet, int sheets)
    {
        ImmutableArray<SheetEntity> entities = [.. page.Content, .. Border(), .. Words(page, number, sheet, sheets)];
        return new SheetPage(_size.Width, _size.Height, new Sheet($"{number} {page.Title}", PageLayers.All, entities));
    }

    private IEnumerable<SheetEntity> Border()
    {
        yield return new SheetPolyline(
            PageLayers.Cut, [new(Left, Bottom), new(Right, Bottom), new(Right, Top), new(Left, Top)], Closed: true);
        yield return new SheetLine(PageLayers.Cut, new(Left, Bottom + _height), new(Right, Bottom + _height));
        foreach (var x in Columns())
        {
            yield return new SheetLine(PageLayers.Frame, new(x, Bottom), new(x, Bottom + _height));
        }
    }

    /// <summary>Left edges of the cells after the caution's.</summary>
    private double[] Columns()
    {
        var number = Right - NumberWidth;
        var title = number - TitleWidth;
        var project = title - ProjectWidth;
        return [project - ViewWidth, project, title, number];
    }

    private IEnumerable<SheetEntity> Words(DrawnPage page, string number, int sheet, int sheets)
    {
        var top = Bottom + _height - Pad;
        var columns = Columns();
        var count = string.Create(CultureInfo.InvariantCulture, $"sheet {sheet} of {sheets}");
        return
        [
            .. PageText.Column(Left + Pad, top, _caution, PageText.Small),
            .. PageText.Column(
                Left + Pad, top - PageText.HeightOf(_caution.Length, PageText.Small), _failing, PageText.Small, bold: true,
                PageLayers.Accent),
            .. Cell(columns[0], top, ViewWidth, "View", page.Direction, bold: false),
            .. Cell(columns[1], top, ProjectWidth, "Bridge", _words.Project, bold: true),
            PageText.Left(columns[1] + Pad, Bottom + Pad, UnitsLine(), PageText.Small),
            .. Cell(columns[2], top, TitleWidth, "Drawing", page.Title, bold: true),
            PageText.Left(columns[2] + Pad, Bottom + Pad, "Preliminary, not for construction approval", PageText.Small),
            PageText.Left(columns[3] + Pad, top - PageText.Small, "Number", PageText.Small),
            PageText.Left(columns[3] + Pad, Bottom + Pad + 0.0055, number, NumberHeight, bold: true, PageLayers.Accent),
            PageText.Left(columns[3] + Pad, Bottom + Pad, count, PageText.Small),
        ];
    }

    private string UnitsLine() => _text.Imperial ? "Feet, inches; " + _size.Name : "Millimetres; " + _size.Name;

    private static IEnumerable<SheetEntity> Cell(double x, double top, double width, string label, string value, bool bold) =>
    [
        PageText.Left(x + Pad, top - PageText.Small, label, PageText.Small),
        .. PageText.Column(
            x + Pad,
            top - PageText.HeightOf(1, PageText.Small) - 0.0004,
            PageText.Wrapped(value, width - (2 * Pad), bold ? PageText.Normal : PageText.Small, bold),
            bold ? PageText.Normal : PageText.Small,
            bold),
    ];
}

/// <summary>What stands below a drawing: its name, its scale, and a bar of known length.</summary>
internal static class Captions
{
    /// <summary>Room a caption takes below its top edge, metres.</summary>
    public const double Height = 0.0135;

    private const double LongestBar = 0.050;
    private const double BarHeight = 0.0011;
    private const double Inch = Quantities.Units.MetresPerInch;

    private static readonly double[] InchBars =
        [.. new[] { 1, 2, 3, 6, 12, 24, 36, 72, 120, 240, 360, 600, 1200, 2400, 6000 }.Select(i => i * Inch)];
    private static readonly double[] MetricBars = [0.01, 0.02, 0.05, 0.1, 0.2, 0.5, 1, 2, 5, 10, 20, 50, 100, 200];

    /// <summary>Name, note, and scale bar with the scale in figures, the name's capitals up to <paramref name="top"/>.</summary>
    public static void Caption(this Canvas canvas, double x, double top, string title, string note, DrawingScale scale, DrawingText text)
    {
        canvas.Column(x, top, [title], PageText.Normal, bold: true);
        var y = top - PageText.HeightOf(1, PageText.Normal);
        canvas.Column(x, y, [note], PageText.Small);
        Bar(canvas, x, y - PageText.HeightOf(1, PageText.Small) - 0.0012, scale, text);
    }

    private static void Bar(Canvas canvas, double x, double y, DrawingScale scale, DrawingText text)
    {
        var length = (text.Units == UnitSystem.Imperial ? InchBars : MetricBars).Last(b => b / scale.Ratio <= LongestBar || b <= Inch);
        var paper = length / scale.Ratio;
        const int parts = 4;
        for (var i = 0; i < parts; i++)
        {
            var (from, to) = (x + (paper * i / parts), x + (paper * (i + 1) / parts));
            var bottom = i % 2 == 0 ? y : y - BarHeight;
            canvas.Add(new SheetArea(
                PageLayers.Note, [new(from, bottom), new(to, bottom), new(to, bottom - BarHeight), new(from, bottom - BarHeight)], 1));
        }

        canvas.Add(new SheetPolyline(
            PageLayers.Dim, [new(x, y), new(x + paper, y), new(x + paper, y - (2 * BarHeight)), new(x, y - (2 * BarHeight))],
            Closed: true));
        var words = $"{text.Words.Length(length)}    Scale {scale.Text}";
        canvas.Text(PageText.Left(x + paper + 0.0015, y - (2 * BarHeight), words, PageText.Small));
    }
}

/// <summary>Signs on drawings: supports, direction of walking, north.</summary>
internal static class Markers
{
    /// <summary>Of a letter's circle, metres.</summary>
    public const double Radius = 0.0028;

    /// <summary>Width of the arrow with the rose, metres.</summary>
    public const double DirectionWidth = 0.062;

    /// <summary>A letter in a circle.</summary>
    public static void Marker(this Canvas canvas, SheetPoint at, string name)
    {
        canvas.Add(new SheetCircle(PageLayers.Frame, at, Radius));
        canvas.Text(PageText.Centered(at.X, at.Y - (PageText.Normal / 2), name, PageText.Normal, bold: true));
    }

    /// <summary>An arrow from A to B, and an empty rose for whoever surveys the site.</summary>
    public static void Direction(this Canvas canvas, double x, double y)
    {
        const double length = 0.022;
        canvas.Line(PageLayers.Cut, x, y, x + length, y);
        canvas.Add(
            new SheetArea(
                PageLayers.Note,
                [new(x + length + 0.003, y), new(x + length - 0.001, y + 0.0012), new(x + length - 0.001, y - 0.0012)], 1));
        canvas.Label(PageText.Left(x + 0.001, y + 0.0012, "walking A to B", PageText.Small));
        var rose = new SheetPoint(x + length + 0.014, y);
        canvas.Add(new SheetCircle(PageLayers.Dim, rose, 0.004));
        canvas.Line(PageLayers.Dim, rose.X - 0.004, rose.Y, rose.X + 0.004, rose.Y);
        canvas.Line(PageLayers.Dim, rose.X, rose.Y - 0.004, rose.X, rose.Y + 0.004);
        canvas.Label(PageText.Left(rose.X + 0.0055, y - (PageText.Small / 2), "north: by others", PageText.Small));
    }
}
