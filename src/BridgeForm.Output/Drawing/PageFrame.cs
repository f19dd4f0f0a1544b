using System.Collections.Immutable;
using BridgeForm.Roles;

namespace BridgeForm.Output.Drawing;

/// <summary>What stands on every sheet besides its content.</summary>
/// <param name="Project">Name of the bridge.</param>
/// <param name="Title">What the file is.</param>
/// <param name="FailingChecks">Names of checks that do not hold; printed on every sheet.</param>
public sealed record SheetWords(string Project, string Title, ImmutableArray<string> FailingChecks)
{
    /// <summary>The same for a model.</summary>
    public static SheetWords For(BridgeModel model, string title) => new(
        model.Parameters.Name,
        title,
        [.. model.Checks.Where(c => c.Status == Checks.CheckStatus.Fail).Select(c => c.Id)])
    {
        NotChecked = Checks.Verdict.NotChecked(model.Checks),
        Issue = IssueOf(model.Parameters.Sheets),
    };

    /// <summary>Number and issue of the drawing set that the sheet belongs to; empty where the project file gives neither.</summary>
    public string Issue { get; init; } = "";

    private static string IssueOf(Project.SheetParameters sheets)
    {
        var (index, date) = sheets.Revisions.LastOrDefault() is { } last ? ("rev. " + last.Index, last.Date) : ("", sheets.Issued);
        return string.Join(", ", ((string[])[sheets.Number, index, date]).Where(s => s.Length > 0));
    }

    /// <summary>Wood that no table has values for; printed on every sheet.</summary>
    public ImmutableArray<string> NotChecked { get; init; } = [];

    /// <summary>What of both a sheet says; empty for neither.</summary>
    public string Verdict => Checks.Verdict.SheetText(FailingChecks, NotChecked);
}

/// <summary>A page's frame: title above, check bars, caution and failing checks below, and the body between.</summary>
internal sealed class PageFrame
{
    private const double HeaderHeight = 0.010;
    private const double IssueHeight = 0.003;
    private const double Gap = 0.002;

    private readonly SheetWords _words;
    private readonly ImmutableArray<string> _caution;
    private readonly ImmutableArray<string> _failing;
    private readonly double _footer;
    private readonly double _header;
    private readonly double _bars;

    /// <summary>A frame for a whole sheet; of a roll a piece is cut in the proportions of ISO 216.</summary>
    /// <param name="bars">Bars to check a printer's scale by: not where nothing is measured.</param>
    public static PageFrame On(Paper paper, SheetWords words, bool bars = true) =>
        new(words, paper.Width, paper.IsRoll ? paper.Width * Math.Sqrt(2) : paper.Height, bars);

    /// <summary>A frame for a page of that size, metres.</summary>
    public PageFrame(SheetWords words, double width, double height, bool bars = true)
    {
        _bars = bars ? CheckBars.Height + Gap : 0;
        _words = words;
        (Width, Height) = (width, height);
        var inner = width - (2 * Paper.Margin);
        _caution = PageText.Wrapped(Caution.Text, inner, PageText.Small);
        _failing = words.Verdict is { Length: > 0 } verdict ? PageText.Wrapped(verdict, inner, PageText.Small, bold: true) : [];
        _footer = _bars + PageText.HeightOf(_caution.Length + _failing.Length, PageText.Small);
        _header = HeaderHeight + (words.Issue.Length > 0 ? IssueHeight : 0);
        Body = new SheetBox(Paper.Margin, Paper.Margin + _footer + Gap, width - Paper.Margin, height - Paper.Margin - _header);
    }

    /// <summary>Width of the paper.</summary>
    public double Width { get; }

    /// <summary>Height of the paper.</summary>
    public double Height { get; }

    /// <summary>Room for the content.</summary>
    public SheetBox Body { get; }

    /// <summary>The page with its content, numbered.</summary>
    public SheetPage Page(IEnumerable<SheetEntity> content, int number, int count)
    {
        var (left, right, top) = (Paper.Margin, Width - Paper.Margin, Height - Paper.Margin);
        var under = top - _header + Gap;
        var foot = Paper.Margin + _footer;
        var words = foot - Math.Max(Gap, _bars - Gap);
        ImmutableArray<SheetEntity> entities =
        [
            PageText.Left(left, top - PageText.Large, _words.Title, PageText.Large, bold: true),
            PageText.Right(right, top - PageText.Large, FormattableString.Invariant($"Page {number} of {count}")),
            PageText.Right(
                right - PageText.Width("Page 0000 of 0000", PageText.Normal) - Gap, top - PageText.Large, _words.Project),
            .. _words.Issue.Length > 0
                ? [PageText.Right(right, under + (Gap / 2), _words.Issue, PageText.Small)]
                : ImmutableArray<SheetEntity>.Empty,
            Line(under, left, right),
            .. content,
            Line(foot + (Gap / 2), left, right),
            .. _bars > 0 ? CheckBars.Draw(left, foot - (Gap / 2), right - left) : [],
            .. PageText.Column(left, words, _caution, PageText.Small),
            .. PageText.Column(
                left, words - PageText.HeightOf(_caution.Length, PageText.Small), _failing, PageText.Small, bold: true, PageLayers.Accent),
        ];
        return new SheetPage(Width, Height, new Sheet(_words.Title, PageLayers.All, entities));
    }

    private static SheetLine Line(double y, double left, double right) =>
        new(PageLayers.Frame, new SheetPoint(left, y), new SheetPoint(right, y));
}

/// <summary>Two bars of known length, to see whether a printer kept the scale.</summary>
internal static class CheckBars
{
    /// <summary>The metric bar, metres.</summary>
    public const double Metric = 0.100;

    /// <summary>The bar in inches, metres.</summary>
    public const double Inches = 4 * Quantities.Units.MetresPerInch;

    /// <summary>Room they take, metres.</summary>
    public const double Height = 0.0125;

    /// <summary>What to do with them.</summary>
    public const string Sentence =
        "Measure both bars before cutting: 100 mm and 4 in from end line to end line. If either is off, print again at 100 % "
        + "(actual size, not fit to page).";

    private const double Tick = 0.0016;

    /// <summary>Both bars and the sentence beside them.</summary>
    /// <param name="x">Left end.</param>
    /// <param name="top">Upper edge.</param>
    /// <param name="width">Width of all.</param>
    public static IEnumerable<SheetEntity> Draw(double x, double top, double width)
    {
        const double gap = 0.005;
        return
        [
            .. Bar(x, top - 0.0027, Metric, 10, "100 mm"),
            .. Bar(x, top - 0.0078, Inches, 4, "4 in"),
            .. PageText.Column(
                x + Inches + gap,
                top - 0.001,
                PageText.Wrapped(Sentence, width - Inches - gap, PageText.Small, bold: true),
                PageText.Small,
                bold: true),
        ];
    }

    private static IEnumerable<SheetEntity> Bar(double x, double y, double length, int parts, string name)
    {
        yield return new SheetLine(PageLayers.Cut, new SheetPoint(x, y), new SheetPoint(x + length, y));
        for (var i = 0; i <= parts; i++)
        {
            var half = i == 0 || i == parts ? Tick : Tick / 2;
            var at = x + (i * length / parts);
            yield return new SheetLine(PageLayers.Dim, new SheetPoint(at, y - half), new SheetPoint(at, y + half));
        }

        yield return PageText.Centered(x + (length / 2) + 0.006, y + 0.0011, name, PageText.Small);
    }
}
