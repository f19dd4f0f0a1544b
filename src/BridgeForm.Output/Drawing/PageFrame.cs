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
    public static SheetWords Of(BridgeModel model, string title) => new(
        model.Parameters.Name,
        title,
        [.. model.Checks.Where(c => c.Status == Checks.CheckStatus.Fail).Select(c => c.Id)]);
}

/// <summary>A page's frame: title above, check bars, caution and failing checks below, and the body between.</summary>
internal sealed class PageFrame
{
    private const double HeaderHeight = 0.010;
    private const double Gap = 0.002;

    private readonly SheetWords _words;
    private readonly ImmutableArray<string> _caution;
    private readonly ImmutableArray<string> _failing;
    private readonly double _footer;

    /// <summary>A frame for a page of that size, metres.</summary>
    public PageFrame(SheetWords words, double width, double height)
    {
        _words = words;
        (Width, Height) = (width, height);
        var inner = width - (2 * Paper.Margin);
        _caution = PageText.Wrapped(Caution.Text, inner, PageText.Small);
        _failing = words.FailingChecks.IsEmpty
            ? []
            : PageText.Wrapped("Checks that do not hold: " + string.Join(", ", words.FailingChecks) + ".", inner, PageText.Small, bold: true);
        _footer = CheckBars.Height + Gap + PageText.HeightOf(_caution.Length + _failing.Length, PageText.Small);
        Body = new SheetBox(
            Paper.Margin, Paper.Margin + _footer + Gap, width - Paper.Margin, height - Paper.Margin - HeaderHeight);
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
        var under = top - HeaderHeight + Gap;
        var foot = Paper.Margin + _footer;
        var words = foot - CheckBars.Height;
        ImmutableArray<SheetEntity> entities =
        [
            PageText.Left(left, top - PageText.Large, _words.Title, PageText.Large, bold: true),
            PageText.Right(right, top - PageText.Large, FormattableString.Invariant($"Page {number} of {count}")),
            PageText.Right(
                right - PageText.Width("Page 0000 of 0000", PageText.Normal) - Gap, top - PageText.Large, _words.Project),
            Line(under, left, right),
            .. content,
            Line(foot + (Gap / 2), left, right),
            .. CheckBars.Of(left, foot - (Gap / 2), right - left),
            .. PageText.Column(left, words, _caution, PageText.Small),
            .. PageText.Column(
                left, words - PageText.HeightOf(_caution.Length, PageText.Small), _failing, PageText.Small, bold: true, PageLayers.Accent),
        ];
        return new SheetPage(Width, Height, new Sheet(_words.Title, PageLayers.All, entities));
    }

    private static SheetLine Line(double y, double left, double right) =>
        new(PageLayers.Frame, new SheetPoint(left, y), new SheetPoint(right, y));
}
