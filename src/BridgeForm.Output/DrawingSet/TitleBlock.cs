using System.Collections.Immutable;
using System.Globalization;
using BridgeForm.Output.Drawing;
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
        _failing = words.FailingChecks.IsEmpty
            ? []
            : PageText.Wrapped("Checks that do not hold: " + string.Join(", ", words.FailingChecks) + ".", width, PageText.Small, bold: true);
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
                Left + Pad, top - PageText.HeightOf(_caution.Length, PageText.Small), _failing, PageText.Small, bold: true, PageLayers.Accent),
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
