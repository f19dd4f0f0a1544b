using System.Collections.Immutable;
using BridgeForm.Output.Drawing;
using BridgeForm.Project;
using BridgeForm.Quantities;

namespace BridgeForm.Output.ShopSheets;

/// <summary>
/// <c>survey.pdf</c>: what to measure on site and how, with a form whose readings are typed into <c>site.survey</c>; where the file has
/// them they stand in the form, with what they come to.
/// </summary>
public static class SurveySheet
{
    private const string AtA = "mark at A";
    private const int MostBlankRows = 16;

    // Rows of the blank form besides those of the ground: its heading and the marks.
    private const int OtherRows = 5;
    private const double RowHeight = 0.0075;
    private const double FigureHeight = 0.042;
    private const double Pad = 0.0015;

    private static ImmutableArray<string> How(QuantityText words) =>
    [
        "1. Choose where each rope will bear: a mark at support A and one at support B, the left and the right rope's points level with "
            + "each other. Everything is measured from mark to mark. Keep away from edges that break off; nobody leans over the drop: who "
            + "works there is tied to something that holds.",
        "2. Tape: draw a steel tape tight from mark to mark along the slope, at the pull that is printed on it, and read it twice, the "
            + "second time with its ends exchanged. A long tape sags: support it, or measure in parts with a plumb line.",
        "3. Out: set up a level about half way. Hold the rod on the mark at A and read it; then on the ground wherever it bends, on the "
            + "highest stone, at the water's highest mark; last on the mark at B. To each reading belongs the level distance from A. The "
            + "rod reads more where the point lies lower.",
        "4. Back: set the level up anew at another height, and read the rod on B and then on A. Both rises should agree within "
            + $"{words.Either("1/4 in", "6 mm")}; more than {words.Either("1/2 in", "13 mm")} is a wrong reading.",
        "5. Type the readings into the project file, as the lines at the foot show. They become site.span, site.rise and site.ground; the "
            + "misclosure is told. What contradicts itself is told with both values, and nothing is guessed.",
    ];

    /// <summary>The sheet of a bridge.</summary>
    public static SheetBook Draw(BridgeModel model) =>
        Draw(
            SheetWords.For(model, "Survey"), Paper.Named(model.Parameters.Shop.Paper), model.Parameters.Units,
            model.Parameters.Site.Survey);

    /// <summary>The blank sheet, before there is a bridge.</summary>
    /// <param name="units">In which the form is filled in.</param>
    public static SheetBook Blank(UnitSystem units) => Draw(
        new SheetWords("Site ______________________", "Survey", []), Paper.Named(units == UnitSystem.Metric ? "a4" : "letter"), units,
        survey: null);

    private static SheetBook Draw(SheetWords words, Paper paper, UnitSystem units, SurveyParameters? survey)
    {
        var frame = PageFrame.On(paper, words);
        var (body, left) = (frame.Body, frame.Body.MinX);
        ImmutableArray<string> how =
            [.. How(new QuantityText(units)).SelectMany(s => PageText.Wrapped(s, body.MaxX - body.MinX, PageText.Small))];
        ImmutableArray<string> foot =
            [.. Foot(units, survey).SelectMany(s => PageText.Wrapped(s, body.MaxX - body.MinX, PageText.Small))];
        var entities = new List<SheetEntity>(PageText.Column(left, body.MaxY, how, PageText.Small));
        var top = body.MaxY - PageText.HeightOf(how.Length, PageText.Small) - Pad;
        entities.AddRange(Figure(left, top, body.MaxX - body.MinX));
        top -= FigureHeight;
        var pages = new List<List<SheetEntity>> { entities };
        var footHeight = PageText.HeightOf(foot.Length, PageText.Small) + Pad;
        // The blank form is one page to hold.
        var room = (int)((top - body.MinY - footHeight) / RowHeight) - OtherRows;
        Put(Heading);
        foreach (var row in Rows(units, survey, Math.Clamp(room, 1, MostBlankRows)))
        {
            if (top - RowHeight < body.MinY + footHeight)
            {
                pages.Add([]);
                top = body.MaxY;
                Put(Heading);
            }

            Put(row);
        }

        pages[^1].AddRange(PageText.Column(left, top - Pad, foot, PageText.Small));
        return new SheetBook(words.Title, [.. pages.Select((p, i) => frame.Page(p, i + 1, pages.Count))]);

        void Put(ImmutableArray<string> row)
        {
            pages[^1].AddRange(Row(row, left, top, body.MaxX - body.MinX));
            top -= RowHeight;
        }
    }

    private static ImmutableArray<string> Heading { get; } = ["Reading on", "Level distance from A", "Rod", "Height above the mark at A"];

    private static ImmutableArray<ImmutableArray<string>> Rows(UnitSystem units, SurveyParameters? survey, int blank)
    {
        var words = new QuantityText(units);
        if (survey is null)
        {
            return
            [
                ["mark at A, out", "0", "", "0"],
                .. Enumerable.Repeat<ImmutableArray<string>>(["ground", "", "", ""], blank),
                ["mark at B, out", "", "", ""],
                ["mark at B, back", "", "", ""],
                ["mark at A, back", "0", "", "0"],
            ];
        }

        var first = survey.Out[0];
        var last = survey.Out.Length - 1;
        return
        [
            .. survey.Out.Select((r, i) => (ImmutableArray<string>)
            [
                i == 0 ? "mark at A, out" : i == last ? "mark at B, out" : "ground",
                words.Length(r.Distance - first.Distance), words.Length(r.Rod), words.Length(first.Rod - r.Rod),
            ]),
            .. survey.Back is { } back
                ? (ImmutableArray<ImmutableArray<string>>)
                [
                    ["mark at B, back", words.Length(survey.Span), words.Length(back.AtB), words.Length(survey.RiseBack!.Value)],
                    ["mark at A, back", words.Length(0), words.Length(back.AtA), words.Length(0)],
                ]
                : [],
        ];
    }

    private static IEnumerable<string> Foot(UnitSystem units, SurveyParameters? survey)
    {
        var words = new QuantityText(units);
        if (survey is null)
        {
            yield return "Tape along the slope, first ______________ second ______________    Rise out (rod at A less rod at B) "
                + "______________ Rise back ______________ Misclosure ______________";
            yield return "Date ______________    Read by ______________    Written by ______________";
            yield return units == UnitSystem.Metric
                ? "site: { survey: { out: [[0 m, 1.38 m], [0.5 m, 1.9 m], [4 m, 2.84 m], [8.5 m, 1.8 m], [9 m, 1.22 m]], "
                    + "back: [1.30 m, 1.46 m], tape: 9.01 m } }"
                : "site: { survey: { out: [[0 ft, 4.52 ft], [2 ft, 6.1 ft], [12 ft, 9.3 ft], [28 ft, 5.9 ft], [30 ft, 4.02 ft]], "
                    + "back: [4.4 ft, 4.91 ft], tape: 30 ft } }";
            yield break;
        }

        yield return $"Span {words.Length(survey.Span)}"
            + (survey.SpanByTape is { } tape ? $", by the tape along the slope {words.Length(tape)}" : ", no tape along the slope")
            + $". Rise {words.Length(survey.Rise)}: out {words.Length(survey.RiseOut)}"
            + (survey.RiseBack is { } back
                ? $", back {words.Length(back)}, misclosure {words.Length(survey.Misclosure!.Value)}."
                : ", not leveled back: a wrong reading shows nowhere.");
    }

    private static IEnumerable<SheetEntity> Row(ImmutableArray<string> entries, double left, double top, double width)
    {
        var column = width / entries.Length;
        for (var i = 0; i < entries.Length; i++)
        {
            yield return PageText.Left(left + (i * column) + Pad, top - RowHeight + (2 * Pad), entries[i], PageText.Normal);
        }

        for (var i = 0; i <= entries.Length; i++)
        {
            yield return Line(left + (i * column), top, left + (i * column), top - RowHeight);
        }

        yield return Line(left, top - RowHeight, left + width, top - RowHeight);
    }

    // A line of sight over a hollow, a rod on each mark and one on the ground: no bridge's, and to no scale.
    private static IEnumerable<SheetEntity> Figure(double left, double top, double width)
    {
        var (right, sight) = (left + width, top - 0.010);
        ImmutableArray<SheetPoint> ground =
        [
            new(left, top - 0.024), new(left + (0.10 * width), top - 0.024), new(left + (0.30 * width), top - 0.034),
            new(left + (0.55 * width), top - 0.037), new(left + (0.85 * width), top - 0.021), new(right, top - 0.021),
        ];
        yield return new SheetPolyline(PageLayers.Cut, [.. ground.Select(p => new SheetVertex(p.X, p.Y))], Closed: false);
        yield return new SheetLine(PageLayers.Layout, new SheetPoint(left, sight), new SheetPoint(right, sight));
        foreach (var (point, name) in ((SheetPoint, string)[])[(ground[1], AtA), (ground[3], "ground"), (ground[4], "mark at B")])
        {
            yield return Line(point.X, point.Y, point.X, sight + 0.004);
            yield return PageText.Left(point.X + Pad, ((point.Y + sight) / 2) - Pad, "rod", PageText.Small);
            // Beside A's point the ground falls away to the right: its name stands to the left of it.
            yield return PageText.Left(
                name is AtA ? left : point.X + Pad, point.Y - 0.0035, name, PageText.Small, bold: true);
        }

        yield return new SheetLine(PageLayers.Accent, ground[1], ground[4]);
        yield return PageText.Left(left + (0.62 * width), top - 0.0205, "tape along the slope", PageText.Small);
        yield return PageText.Left(left + (0.40 * width), sight + 0.0015, "line of sight of the level", PageText.Small);
    }

    private static SheetLine Line(double x1, double y1, double x2, double y2) =>
        new(PageLayers.Dim, new SheetPoint(x1, y1), new SheetPoint(x2, y2));
}
