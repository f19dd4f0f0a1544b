using System.Collections.Immutable;
using System.Globalization;
using BridgeForm.Output.Drawing;
using BridgeForm.Output.Templates;

namespace BridgeForm.Output.ShopSheets;

/// <summary><c>saw-setups.pdf</c>: one table a setting of the saw.</summary>
public static class SawSheet
{
    /// <summary>The sheet; its table as text is <see cref="Csv"/>.</summary>
    public static SheetBook Draw(BridgeModel model, DisplayUnits units)
    {
        var paper = Paper.Named(model.Parameters.Shop.Paper);
        var words = SheetWords.For(model, "Saw set-ups");
        var pages = new TablePages(new PageFrame(words, paper.Width, paper.IsRoll ? paper.Width * Math.Sqrt(2) : paper.Height));
        pages.AddText(
        [
            "Every setting is the same hand: handle swung to the RIGHT by the mitre, blade leaning to the LEFT by the bevel. "
                + "Opposite hands "
                + "and other ends come out right by how the piece lies: the columns say which side is up, which edge touches the fence and "
                + "where the near end points. Edge 1 and edge 2 are named on the templates; face up is the face that the profiles show.",
            "Stop: along the fence from the cut's line on the upper side of the work, at the fence, to the stop. First ends are cut "
                + "without a stop, taking off no more than is needed; second ends with the first against the stop. On a wedge the "
                + "stop stands "
                + "on the wedge's slope.",
            string.Join(' ', WedgeBlock.Cautions),
        ]);
        var tables = SawSetup.List(model).Select(setup => Table(setup, units)).ToList();
        ImmutableArray<ImmutableArray<string>> all = [.. tables.SelectMany(t => t.Rows)];
        foreach (var table in tables)
        {
            pages.Add(table with { Sizing = all });
        }

        return pages.Book(words.Title);
    }

    /// <summary><c>saw-setups.csv</c>.</summary>
    public static string Csv(BridgeModel model, DisplayUnits units) => SawSetup.Csv(model, units);

    /// <summary>How many settings of the saw a bridge asks for.</summary>
    public static int Settings(BridgeModel model) => SawSetup.List(model).Length;

    private static PageTable Table(SawSetup setup, DisplayUnits units)
    {
        var lead = setup.Lead;
        var setting = !lead.InReach
            ? $"mitre {Numbers.DegreeText(lead.Mitre + lead.Wedge)}, bevel {Numbers.DegreeText(lead.Bevel)}: beyond the saw, by template "
                + "and hand saw"
            : $"mitre {Numbers.DegreeText(lead.Mitre)}, bevel {Numbers.DegreeText(lead.Bevel)}"
                + (lead.Wedge > 0 ? $", with the wedge of {Numbers.DegreeText(lead.Wedge)}" : string.Empty);
        return new PageTable(
            FormattableString.Invariant($"{setup.Number}. {lead.Piece.Stock} {lead.Piece.Section}: {setting}; {setup.Count} cuts"),
            lead.Wedge > 0 && lead.InReach
                ? ["Wedge between fence and work, thick end to the right; work and wedge clamped."]
                : [],
            ["Mark", "Quantity", "End", "Cut", "Up", "At the fence", "Near end points", "Piece and stop", "Stop"],
            [.. setup.Cuts.Select(c => Row(c, units))]);
    }

    private static ImmutableArray<string> Row(SawCut cut, DisplayUnits units) =>
    [
        cut.Piece.Mark,
        FormattableString.Invariant($"{cut.Piece.Occurrences.Length}"),
        SawSetup.EndName(cut),
        cut.Order == 1 ? "first" : "second",
        SawSetup.Up(cut),
        SawSetup.Fence(cut),
        SawSetup.Near(cut),
        "at the " + SawSetup.PieceSide(cut),
        cut.Stop is { } stop ? units.Length(stop) : "none",
    ];
}

/// <summary>One setting of the saw and every cut made with it.</summary>
/// <param name="Number">Counted from 1, in the order to work in.</param>
/// <param name="Cuts">Cuts, first ends before second ones, by stop length.</param>
internal sealed record SawSetup(int Number, ImmutableArray<SawCut> Cuts)
{
    /// <summary>A cut whose angles stand for the setting.</summary>
    public SawCut Lead => Cuts[0];

    /// <summary>How many cuts.</summary>
    public int Count => Cuts.Sum(c => c.Piece.Occurrences.Length);

    /// <summary>
    /// All set-ups: by stock and section, then square cuts first, then by angle; cuts on a wedge and cuts beyond the saw come last.
    /// Angles alike to a tenth of a degree are one setting.
    /// </summary>
    public static ImmutableArray<SawSetup> List(BridgeModel model)
    {
        return
        [
            .. model.Pieces
                .SelectMany(SawCut.List)
                .GroupBy(KeyOf)
                .OrderBy(g => g.Key.Stock, StringComparer.Ordinal)
                .ThenBy(g => g.Key.Section, StringComparer.Ordinal)
                .ThenBy(g => !g.Key.InReach)
                .ThenBy(g => g.Key.Wedge)
                .ThenBy(g => g.Key.Mitre)
                .ThenBy(g => g.Key.Bevel)
                .Select((g, i) => new SawSetup(i + 1, [.. g.OrderBy(c => c.Order).ThenBy(c => c.Stop ?? 0)])),
        ];
    }

    /// <summary>The table as text: one row a cut.</summary>
    public static string Csv(BridgeModel model, DisplayUnits units) => CsvText.Write(
        [
            "Set-up", "Stock", "Section", "Saw mitre (deg)", "Saw bevel (deg)", "Wedge (deg)", "Made by",
            "Mark", "Quantity", "End", "Cut order", "Up", "Against the fence", "Near end points", "Piece and stop lie", "Stop", "Stop (mm)",
        ],
        List(model).SelectMany(s => s.Cuts.Select(c => s.Row(c, units))));

    private IReadOnlyList<string> Row(SawCut cut, DisplayUnits units) =>
    [
        Number.ToString(CultureInfo.InvariantCulture),
        CsvText.Users(cut.Piece.Stock),
        cut.Piece.Section,
        CutKeys.Tenths(cut.Mitre),
        CutKeys.Tenths(cut.Bevel),
        CutKeys.Tenths(cut.Wedge),
        Maker(cut),
        cut.Piece.Mark,
        cut.Piece.Occurrences.Length.ToString(CultureInfo.InvariantCulture),
        EndName(cut),
        cut.Order == 1 ? "first" : "second",
        Up(cut),
        Fence(cut),
        Near(cut),
        PieceSide(cut),
        cut.Stop is { } s ? units.Length(s) : string.Empty,
        cut.Stop is { } m ? Numbers.Fixed(m * 1000, 1) : string.Empty,
    ];

    /// <summary>Words for what makes the cut.</summary>
    public static string Maker(SawCut cut) => !cut.InReach ? "template" : cut.Wedge > 0 ? "saw and wedge" : "saw";

    /// <summary>Words for the end.</summary>
    public static string EndName(SawCut cut) => cut.End == PieceEnd.Near ? "near" : "far";

    /// <summary>Words for the side that is up.</summary>
    public static string Up(SawCut cut) => cut.Position.FaceUp ? "face up" : "face down";

    /// <summary>Words for the edge at the fence.</summary>
    public static string Fence(SawCut cut) => cut.Position.Edge1AtFence ? "edge 1" : "edge 2";

    /// <summary>Words for where the near end points.</summary>
    public static string Near(SawCut cut) => cut.Position.NearLeft ? "left" : "right";

    /// <summary>Words for the side of the blade that the piece lies on.</summary>
    public static string PieceSide(SawCut cut) => cut.PieceAtRight ? "right" : "left";

    private static SettingKey KeyOf(SawCut cut) => new(
        cut.Piece.Stock, cut.Piece.Section, cut.InReach, Printed(cut.Wedge), Printed(cut.Mitre), Printed(cut.Bevel));

    private sealed record SettingKey(string Stock, string Section, bool InReach, double Wedge, double Mitre, double Bevel);

    private static double Printed(double radians) => Numbers.Rounded(Numbers.Degrees(radians), 1);
}
