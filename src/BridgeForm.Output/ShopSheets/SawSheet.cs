using System.Collections.Immutable;
using BridgeForm.Output.Drawing;
using BridgeForm.Output.Templates;

namespace BridgeForm.Output.ShopSheets;

/// <summary><c>saw-setups.pdf</c>: one table a setting of the saw.</summary>
public static class SawSheet
{
    /// <summary>The sheet; its table as text is <see cref="Csv"/>.</summary>
    public static SheetBook Of(BridgeModel model, PeopleUnits units)
    {
        var paper = Paper.Of(model.Parameters.Shop.Paper);
        var words = SheetWords.Of(model, "Saw set-ups");
        var pages = new TablePages(new PageFrame(words, paper.Width, paper.IsRoll ? paper.Width * Math.Sqrt(2) : paper.Height));
        pages.AddText(
        [
            "Every setting is the same hand: handle swung to the RIGHT by the mitre, blade leaning to the LEFT by the bevel. Opposite hands "
                + "and other ends come out right by how the piece lies: the columns say which side is up, which edge touches the fence and "
                + "where the near end points. Edge 1 and edge 2 are named on the templates; face up is the face that the profiles show.",
            "Stop: along the fence from the cut's line on the upper side of the work, at the fence, to the stop. First ends are cut "
                + "without a stop, taking off no more than is needed; second ends with the first against the stop. On a wedge the stop stands "
                + "on the wedge's slope.",
            string.Join(' ', WedgeBlock.Cautions),
        ]);
        var tables = SawSetup.Of(model).Select(setup => Table(setup, units)).ToList();
        ImmutableArray<ImmutableArray<string>> all = [.. tables.SelectMany(t => t.Rows)];
        foreach (var table in tables)
        {
            pages.Add(table with { Sizing = all });
        }

        return pages.Book(words.Title);
    }

    /// <summary><c>saw-setups.csv</c>.</summary>
    public static string Csv(BridgeModel model, PeopleUnits units) => SawSetup.Csv(model, units);

    private static PageTable Table(SawSetup setup, PeopleUnits units)
    {
        var lead = setup.Lead;
        var setting = !lead.InReach
            ? $"mitre {Numbers.DegreeText(lead.Mitre + lead.Wedge)}, bevel {Numbers.DegreeText(lead.Bevel)}: beyond the saw, by template and hand saw"
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

    private static ImmutableArray<string> Row(SawCut cut, PeopleUnits units) =>
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
