using System.Globalization;
using BridgeForm.Checks;
using BridgeForm.Output.Drawing;
using BridgeForm.Pieces;
using BridgeForm.Roles;
using BridgeForm.Solids;

namespace BridgeForm.Output.DrawingSet;

/// <summary>Checks with their sources, and the cut list.</summary>
internal static class CheckLists
{
    /// <summary>The sheets.</summary>
    public static IEnumerable<DrawnPage> Draw(DrawingContext context) =>
    [
        .. Pages(context, "Checks", Checks(context)),
        .. Pages(context, "Cut list", [Cuts(context)]),
    ];

    private static IEnumerable<DrawnPage> Pages(DrawingContext context, string title, IEnumerable<FlowTable> tables)
    {
        var flow = new TableFlow(context.Body);
        foreach (var table in tables)
        {
            flow.Add(table);
        }

        return flow.Pages.Select(c => new DrawnPage(DocumentType.List, title, "tables", c.Entities));
    }

    /// <summary>
    /// With their figures those that fail or are to be reviewed; of the others the ratio. Every figure and source of all of them
    /// stands in the calculations.
    /// </summary>
    private static IEnumerable<FlowTable> Checks(DrawingContext context)
    {
        var groups = CheckOrder.WorstFirst(context.Model.Checks).ToLookup(c => c.Status switch
        {
            CheckStatus.Fail or CheckStatus.Warn => 0,
            CheckStatus.Engineer => 1,
            _ => 2,
        });
        const string more = "Figures and sources: calculations.pdf.";
        if (groups[0].Any())
        {
            yield return new FlowTable(
                "Checks that fail, and checks to review",
                "Ratio: what the bridge asks over what it may be; above 1 is too much. Values for preliminary work. Sources: "
                    + "calculations.pdf.",
                [new("Outcome"), new("Ratio", Figures: true), new("Check", 0.056), new("Figures", 0.172)],
                [.. groups[0].Select(c => new FlowRow(
                    [CheckTables.Outcome(c), RatioText.Of(c), CheckTables.Name(c), c.Detail], c.Status == CheckStatus.Fail))]);
        }

        foreach (var (group, title) in ((int, string)[])[(1, "Checks for a licensed engineer"), (2, "Checks that hold")])
        {
            if (groups[group].Any())
            {
                yield return new FlowTable(
                    title, more, [new("Ratio", Figures: true) { Least = 0.010 }, new("Check", 0.066) { Least = 0.066 }],
                    [.. groups[group].Select(c => new FlowRow([RatioText.Of(c), CheckTables.Name(c)]))]);
            }
        }
    }

    private static FlowTable Cuts(DrawingContext context)
    {
        var rows = context.Model.Pieces.Select(p => new FlowRow(
        [
            p.Mark,
            p.Occurrences.Length.ToString(CultureInfo.InvariantCulture),
            RoleTable.Of(p.Role).Printed,
            p.Stock,
            p.Section,
            context.Text.Words.Size(p.BlankLength),
            PartTable.Cut(p.Near),
            PartTable.Cut(p.Far),
            Remarks(p, context.Text),
            OccurrenceRanges.Write(p.Occurrences.Select(o => o.Id))
                + Named(". Turned, ", TurnWords.Turned(p)) + Named(". Rolled over, ", TurnWords.Rolled(p)),
        ]));
        return new FlowTable(
            "Cut list",
            "Cuts: miter / bevel in degrees from square, signed as in the saw set-ups. Near end: at A, at the foot, or at the left, and "
                + "the drawn face as the piece's own drawing says; where a piece stands turned or rolled over, as told.",
            [
                new("Mark"), new("Qty", Figures: true), new("Part"), new("Stock"), new("Section", 0.030), new("Blank", Figures: true),
                new("Near", Figures: true), new("Far", Figures: true), new("Remarks", 0.085), new("Where", 0.135),
            ],
            [.. rows]);
    }

    private static string Named(string name, string places) => places.Length > 0 ? name + places : "";

    private static string Remarks(Piece piece, DrawingText text) => string.Join("; ", new[]
    {
        End(RoleTable.Of(piece.Role).Ends.ShopNear, piece.Near, piece.Shape),
        End(RoleTable.Of(piece.Role).Ends.ShopFar, piece.Far, piece.Shape),
        TaperText(piece, text),
        piece.Shape.Channels.IsEmpty ? "" : Counted(piece.Shape.Channels.Length, "channel"),
        piece.Shape.Holes.IsEmpty ? "" : Counted(piece.Shape.Holes.Length, "hole"),
    }.Where(r => r.Length > 0));

    private static string TaperText(Piece piece, DrawingText text) => Taper.Measure(piece) is { } t
        ? $"ripped {text.Size(t.Thick)} to {text.Size(t.Thin)} over {text.Size(t.Width)} ({DrawingText.Angle(t.Angle)})"
        : "";

    private static string End(string end, EndCut cut, CutStock stock) => cut.InReach ? cut.OnEdge ? $"{end} sawn on its edge" : ""
        : cut.NeedsTemplate ? $"{end}: {CutWays.Words(cut, stock)}"
        : $"{end} on a block of {DrawingText.Angle(cut.Wedge)}";

    private static string Counted(int count, string what) =>
        string.Create(CultureInfo.InvariantCulture, $"{count} {what}{(count > 1 ? "s" : "")}");
}

/// <summary>Pieces of a group of parts.</summary>
internal static class PartTable
{
    /// <summary>One row a piece, turned ones by themselves, in order of first appearance.</summary>
    public static FlowTable Lay(DrawingContext context, string title, IEnumerable<string> ids, string note = "")
    {
        var turns = TurnWords.ById(context.Model, o => o.Turned);
        var pieces = ids.Select(id => (Piece: context.Shapes.PieceAt(id), Turn: turns.GetValueOrDefault(id, "")))
            .Where(p => p.Piece is not null)
            .GroupBy(p => (p.Piece!.Mark, p.Turn))
            .ToList();
        var turned = pieces.Where(g => g.Key.Turn.Length > 0).Select(g => $" {g.Key.Mark} turned: {g.Key.Turn}.");
        return new FlowTable(
            title,
            "Cuts: miter / bevel in degrees from square. Arrows of the way marks: posts and braces up, what lies across to the right, all "
                + "else towards B." + string.Concat(turned) + note,
            [
                new FlowColumn("Mark"), new FlowColumn("Qty", Figures: true), new FlowColumn("Part"), new FlowColumn("Section"),
                new FlowColumn("Blank", Figures: true), new FlowColumn("Near, foot"), new FlowColumn("Far, head"),
            ],
            [.. pieces.Select(g => Row(context, g.First().Piece!, g.Key.Turn.Length > 0, g.Count()))]);
    }

    /// <summary>What a sheet that stands for its mirror image at B says of that one's marks.</summary>
    public static string OfMirrored(string names) =>
        $" {names}: the mirror image. Marks with L and R change sides there; the cut list names their places and what stands turned.";

    /// <summary>An end cut: mitre / bevel.</summary>
    public static string Cut(EndCut cut) =>
        $"{Numbers.Fixed(Numbers.Degrees(cut.Mitre), 1)} / {Numbers.Fixed(Numbers.Degrees(cut.Bevel), 1)}";

    private static FlowRow Row(DrawingContext context, Piece piece, bool turned, int count) => new(
    [
        turned ? piece.Mark + ", turned" : piece.Mark,
        count.ToString(CultureInfo.InvariantCulture),
        RoleTable.Of(piece.Role).Printed,
        piece.Section,
        context.Text.Words.Size(piece.BlankLength),
        Cut(piece.Near),
        Cut(piece.Far),
    ]);
}
