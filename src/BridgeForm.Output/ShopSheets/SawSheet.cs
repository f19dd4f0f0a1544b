using System.Collections.Immutable;
using System.Globalization;
using BridgeForm.Output.Drawing;
using BridgeForm.Output.Templates;
using BridgeForm.Pieces;
using BridgeForm.Project;
using BridgeForm.Quantities;

namespace BridgeForm.Output.ShopSheets;

/// <summary><c>saw-setups.pdf</c>: one page a setting of the saw, with a picture of its first cut.</summary>
public static class SawSheet
{
    /// <summary>The sheet; its table as text is <see cref="Csv"/>.</summary>
    public static SheetBook Draw(BridgeModel model, DisplayUnits units)
    {
        var paper = Paper.Named(model.Parameters.Shop.Paper);
        var words = SheetWords.For(model, "Saw set-ups");
        var pages = new TablePages(PageFrame.On(paper, words));
        pages.AddText(
        [
            "Every setting is the same hand: handle swung to the RIGHT by the miter, blade leaning to the LEFT by the bevel. "
                + "Opposite hands "
                + "and other ends come out right by how the piece lies: the columns say which side is up, which edge touches the fence and "
                + "where the arrow points. Before anything is cut each stick gets its way mark: an arrowhead over the arris of the face "
                + "that is up (the one that the profiles show) and edge 1, at the near end, its tip towards the far end. Where another "
                + "edge lies at the fence it is edge 2; face down, the mark is on the underside. \"Edge 1 up\" or \"edge 2 up\": the stick "
                + "is rolled a quarter turn and stands on its other edge, its marked face or its back against the fence."
                + (model.Pieces.Any(p => p.Shape.IsRound) ? " " + TurnWords.Round : ""),
            "Stop: along the fence from the cut's line on the upper side of the work, at the fence, to the stop's nose there. The "
                + "stop is a "
                + "block at the fence, as high as the work, its face cut back by 45° so that nothing off the fence touches it: the "
                + "finished end meets it with its point at the fence, even where a point further out is the farther one. First ends "
                + "are cut "
                + "without a stop, taking off no more than is needed; second ends with the first against the stop. On a wedge it is "
                + "measured along the work's edge, and stands off the fence as its page says.",
            "Gap: what a setting that like cuts share opens at the joint, of the "
                + $"{Numbers.Gap(model.Parameters.Shop.JointGap, units)} that shop.joint_gap allows two ends together; "
                + $"{Numbers.Gap(SawSettings.LoadedGap, units)} under posts and braces. \"free\": the end meets no other, at an end frame, "
                + $"and is out of its plane by that much, {Numbers.Gap(SawSettings.FreeGap, units)} at most.",
            "Hold: \"two from\" a blank of that length, parted last, where one piece is too short to clamp; \"from\" a length: cut "
                + "square to exactly that before any other cut, since on a wedge a longer stick would run into the fence.",
            string.Join(' ', WedgeBlock.Cautions(units.System)),
        ]);
        var setups = SawSetup.List(model);
        var tables = setups.Select(setup => Table(setup, model.Parameters.Shop, units)).ToList();
        ImmutableArray<ImmutableArray<string>> all = [.. tables.SelectMany(t => t.Rows)];
        for (var i = 0; i < tables.Count; i++)
        {
            if (i > 0)
            {
                pages.BeginPage();
            }

            pages.AddPicture(setups[i].Lead.Way is CutWay.Saw or CutWay.SawWithBlock
                ? SetupPicture.Draw(setups[i].Shown, model.Parameters.Shop, units)
                : BenchPicture.Draw(setups[i].Lead, model.Parameters.Shop, units));

            pages.Add(tables[i] with { Sizing = all });
        }

        StripSheet.Add(pages, model);
        DrillSheet.Add(pages, model);
        return pages.Book(words.Title);
    }

    /// <summary><c>saw-setups.csv</c>.</summary>
    public static string Csv(BridgeModel model, DisplayUnits units) => SawSetup.Csv(model, units);

    /// <summary>How many settings of the saw a bridge asks for.</summary>
    public static int Settings(BridgeModel model) => SawSetup.List(model).Length;

    private static PageTable Table(SawSetup setup, ShopParameters shop, DisplayUnits units)
    {
        var (lead, hold) = (setup.Lead, shop.Hold);
        var setting = !lead.InReach
            ? $"miter {Numbers.DegreeText(lead.Mitre + lead.Wedge)}, bevel {Numbers.DegreeText(lead.Bevel)}: beyond the miter saw, "
                + CutWays.Words(lead.Way)
            : $"miter {Numbers.DegreeText(lead.Mitre)}, bevel {Numbers.DegreeText(lead.Bevel)}"
                + (lead.Wedge > 0 ? $", with the wedge of {Numbers.DegreeText(lead.Wedge)}" : string.Empty);
        return new PageTable(
            FormattableString.Invariant($"{setup.Number}. {setting}; {setup.Count} cuts"),
            lead.Wedge > 0 && lead.InReach
                ? [
                    "Block between fence and work, thick end to the right; work and block clamped, as its plan in templates/ shows.",
                    .. setup.Cuts.Where(c => c.Hold == HoldWay.CutFirst).Select(c => CutFirstWords(c, hold, units)),
                    .. setup.Cuts.Where(c => c.Order == 2).Select(c => WedgeStopWords(c, units)),
                ]
                : lead.InReach ? [.. Between(lead, shop.Saw), .. setup.Cuts.Where(c => c.IsParted).Select(c => PairWords(c, hold, units))]
                : [
                    BenchPicture.Steps(lead.Way, hold, units),
                    .. setup.Cuts.Where(c => c.FromBothFaces).Select(c => BothFacesWords(c, units)),
                ],
            ["Mark", "Section", "Qty", "End", "Cut", "Up", "Fence", "Arrow", "Piece, stop", "Stop", "Gap", "Hold"],
            [.. setup.Cuts.Select(c => Row(c, hold, units))]);
    }

    /// <summary>What a setting that the saw's own scale does not show is set by; nothing where it does.</summary>
    private static IEnumerable<string> Between(SawCut lead, SawParameters saw)
    {
        string[] angles =
        [
            .. SawSetup.IsStep(lead.Mitre, saw.Step) ? [] : (string[])[$"miter {Numbers.DegreeText(lead.Mitre)}"],
            .. SawSetup.IsStep(lead.Bevel, saw.Step) ? [] : (string[])[$"bevel {Numbers.DegreeText(lead.Bevel)}"],
        ];
        if (angles.Length > 0)
        {
            yield return $"Set {string.Join(" and ", angles)} by an angle gauge or a protractor: it lies between the saw's steps of "
                + $"{Numbers.Fixed(Numbers.Degrees(saw.Step), 2)}°, and none of those keeps the joint within its gap.";
        }
    }

    private static string CutFirstWords(SawCut cut, HoldParameters hold, DisplayUnits units) =>
        $"{cut.Piece.Mark}: cut square to exactly {units.Length(cut.Piece.BlankLength)} first, its other end then so that it keeps this "
            + "length: beside the blade a longer stick would run into the fence. Clamp it on its half at the block, "
            + $"{units.Length(hold.Clear)} or more from the blade's path, square to it.";

    private static string PairWords(SawCut cut, HoldParameters hold, DisplayUnits units) =>
        $"{cut.Piece.Mark}: two from a blank of {units.Length(Holding.Pair(cut.Piece, hold))}. First both first ends, at the ends of the "
            + $"blank; then mark {units.Length(cut.Stop!.Value)} from each and part it at that line, without a stop: the clamp holds the "
            + $"{units.Length(Holding.Between(cut.Piece, hold))} between the two, {units.Length(hold.Clear)} from the blade, and "
            + "the piece comes off free.";

    private static string BothFacesWords(SawCut cut, DisplayUnits units) =>
        $"{cut.Piece.Mark}, {SawSetup.EndName(cut)} end: {units.Length(cut.Piece.Shape.Thickness)} is more than the "
            + $"{units.Length(CutWays.CircularDepth)} that a circular saw goes deep: square the line across both edges, mark the other "
            + "face from there, and cut from both faces.";

    /// <summary>How the stop of a cut on a wedge is set: it hangs in the air where the fence has no slope.</summary>
    private static string WedgeStopWords(SawCut cut, DisplayUnits units) => cut.OnWedge is { } at
        ? $"{cut.Piece.Mark}, {SawSetup.EndName(cut)} end: stop {units.Length(cut.Stop!.Value)} from the cut along the work's edge. Screw "
            + $"it, square to the edge, on a straight batten along the block's slope; there it stands {units.Length(at.Along)} along the "
            + $"fence from where the cut meets the edge, and {units.Length(at.Off)} off the fence."
        : $"{cut.Piece.Mark}, {SawSetup.EndName(cut)} end: no stop, since the slope runs into the fence before it; mark the length and "
            + "cut to the line.";

    private static ImmutableArray<string> Row(SawCut cut, HoldParameters hold, DisplayUnits units) =>
    [
        cut.Piece.Mark,
        cut.Piece.Section,
        FormattableString.Invariant($"{cut.Piece.Occurrences.Length}"),
        SawSetup.EndName(cut),
        cut.Order == 1 ? "first" : "second",
        .. SawSetup.Lies(cut, SawSetup.Arrow(cut)),
        cut.HasStop ? units.Length(cut.Stop!.Value)
            : cut is { InReach: true, IsParted: true } ? "line at " + units.Length(cut.Stop!.Value)
            : cut.Order == 2 ? "to the line" : "none",
        SawSetup.GapText(cut, units),
        !cut.InReach ? "" : cut.Hold switch
        {
            HoldWay.Pair => "two from " + units.Length(Holding.Pair(cut.Piece, hold)),
            HoldWay.CutFirst => $"from {units.Length(cut.Piece.BlankLength)}, clamp",
            _ => "clamp",
        },
    ];
}

/// <summary>One setting of the saw and every cut made with it.</summary>
/// <param name="Number">Counted from 1, in the order to work in.</param>
/// <param name="Cuts">Cuts, first ends before second ones, by stop length.</param>
internal sealed record SawSetup(int Number, ImmutableArray<SawCut> Cuts)
{
    /// <summary>A cut whose angles stand for the setting.</summary>
    public SawCut Lead => Cuts[0];

    /// <summary>The cut that is drawn: one with a stop where there is one, for that is what the picture must tell.</summary>
    public SawCut Shown => Cuts.FirstOrDefault(c => c.HasStop) ?? Lead;

    /// <summary>How many cuts.</summary>
    public int Count => Cuts.Sum(c => c.Piece.Occurrences.Length);

    /// <summary>
    /// All set-ups: square cuts first, then by angle; cuts on a block and cuts beyond the saw come last. Within each, first ends before
    /// second ones, by stock, section and stop. Cuts share a setting by <see cref="SawSettings"/>; angles alike to a tenth of a degree
    /// are one.
    /// </summary>
    public static ImmutableArray<SawSetup> List(BridgeModel model)
    {
        return
        [
            .. SawSettings.Share(model.Pieces, model.Parameters.Shop)
                .SelectMany(made => SawCut.List(made, model.Parameters.Shop))
                .GroupBy(KeyOf)
                .OrderBy(g => g.Key.Way)
                .ThenBy(g => g.Key.Wedge)
                .ThenBy(g => g.Key.Mitre)
                .ThenBy(g => g.Key.Bevel)
                .Select((g, i) => new SawSetup(
                    i + 1,
                    [
                        .. g.OrderBy(c => c.Order)
                            .ThenBy(c => c.Piece.Stock, StringComparer.Ordinal)
                            .ThenBy(c => c.Piece.Section, StringComparer.Ordinal)
                            .ThenBy(c => c.Stop ?? 0),
                    ])),
        ];
    }

    /// <summary>The table as text: one row a cut.</summary>
    public static string Csv(BridgeModel model, DisplayUnits units) => CsvText.Write(
        [
            "Set-up", "Stock", "Section", "Saw mitre (deg)", "Saw bevel (deg)", "Wedge (deg)", "Made by",
            "Mark", "Quantity", "End", "Cut order", "Up", "Against the fence", "Near end points", "Piece and stop lie", "Stop", "Stop (mm)",
            "Stop on the block, along the fence (mm)", "Stop on the block, off the fence (mm)",
            "Gap (mm)", "Free", "Set by", "Hold",
        ],
        List(model).SelectMany(s => s.Cuts.Select(c => s.Row(c, model.Parameters.Shop, units))));

    private IReadOnlyList<string> Row(SawCut cut, ShopParameters shop, DisplayUnits units) =>
    [
        Number.ToString(CultureInfo.InvariantCulture),
        CsvText.Users(cut.Piece.Stock),
        cut.Piece.Section,
        CutKeys.Tenths(cut.Mitre),
        CutKeys.Tenths(cut.Bevel),
        CutKeys.Tenths(cut.Wedge),
        CutWays.Words(cut.Piece.Cut(cut.End), cut.Piece.Shape),
        cut.Piece.Mark,
        cut.Piece.Occurrences.Length.ToString(CultureInfo.InvariantCulture),
        EndName(cut),
        cut.Order == 1 ? "first" : "second",
        .. Lies(cut, Near(cut)),
        cut.HasStop ? units.Length(cut.Stop!.Value) : string.Empty,
        cut.HasStop ? Numbers.Fixed(cut.Stop!.Value * 1000, 1) : string.Empty,
        cut.OnWedge is { } a ? Numbers.Fixed(a.Along * 1000, 1) : string.Empty,
        cut.OnWedge is { } o ? Numbers.Fixed(o.Off * 1000, 1) : string.Empty,
        Millimetres(cut.Gap),
        cut.IsFree ? "free" : string.Empty,
        cut.Way != CutWay.Saw ? string.Empty
            : IsStep(cut.Mitre, shop.Saw.Step) && IsStep(cut.Bevel, shop.Saw.Step) ? "saw's step" : "angle gauge",
        cut.InReach ? Hold(cut, shop.Hold, units) : string.Empty,
    ];

    /// <summary>How the piece lies on the mitre saw; nothing where another tool makes the cut.</summary>
    /// <param name="cut">The cut.</param>
    /// <param name="end">Where its near end, or its arrow, points.</param>
    public static string[] Lies(SawCut cut, string end) =>
        cut.InReach ? [Up(cut), Fence(cut), end, PieceSide(cut)] : ["", "", "", ""];

    /// <summary>The gap in words; nothing where the cut is exact.</summary>
    public static string GapText(SawCut cut, DisplayUnits units) =>
        cut.Gap > 0 ? Numbers.Gap(cut.Gap, units) + (cut.IsFree ? ", free" : "") : "none";

    /// <summary>Millimetres to a hundredth: a gap is less than any rule shows.</summary>
    public static string Millimetres(double metres) => Numbers.Fixed(metres * 1000, 2);

    /// <summary>How a piece is held: by a clamp, or where none holds it far enough from the blade, as one of two.</summary>
    public static string Hold(SawCut cut, HoldParameters hold, DisplayUnits units) => cut.Hold switch
    {
        HoldWay.Pair => $"too short to hold: two from a blank of {units.Length(Holding.Pair(cut.Piece, hold))}, parted last at a line",
        HoldWay.CutFirst => $"clamp; cut square to exactly {units.Length(cut.Piece.BlankLength)} first",
        _ => "clamp",
    };

    /// <summary>Words for the end.</summary>
    public static string EndName(SawCut cut) => cut.End == PieceEnd.Near ? "near" : "far";

    /// <summary>Words for the side that is up.</summary>
    public static string Up(SawCut cut) => cut.Stick.IsRound ? cut.Position.FaceUp ? "line up" : "line down"
        : cut.Position.OnEdge ? cut.Position.FaceUp ? "edge 1 up" : "edge 2 up"
        : cut.Position.FaceUp ? "face up" : "face down";

    /// <summary>Words for the side at the fence.</summary>
    public static string Fence(SawCut cut) => cut.Stick.IsRound ? "round"
        : cut.Position.OnEdge ? cut.Position.ArrisAtFence ? "marked face" : "back"
        : cut.Position.Edge1AtFence ? "edge 1" : "edge 2";

    /// <summary>An angle that the saw's own steps have, or none.</summary>
    public static bool IsStep(double angle, double step) =>
        Math.Abs((angle / step) - Rounding.Steps(angle, step)) < Tolerances.WholeRatio || Numbers.Rounded(Numbers.Degrees(angle), 1) is 0;

    /// <summary>Where the arrow points, and whether its mark is on the underside.</summary>
    public static string ArrowWords(SawCut cut) =>
        $"arrow to the {Arrow(cut)}" + (cut.Position.FaceUp ? "" : ", on the underside");

    /// <summary>Words for where the near end points.</summary>
    public static string Near(SawCut cut) => cut.Position.NearLeft ? "left" : "right";

    /// <summary>Words for where the arrow of the way mark points: to the far end.</summary>
    public static string Arrow(SawCut cut) => cut.Position.NearLeft ? "right" : "left";

    /// <summary>Words for the side of the blade that the piece lies on.</summary>
    public static string PieceSide(SawCut cut) => cut.PieceAtRight ? "right" : "left";

    private static SettingKey KeyOf(SawCut cut) => new(
        cut.Way, Printed(cut.Wedge), Printed(cut.Mitre), Printed(cut.Bevel));

    private sealed record SettingKey(CutWay Way, double Wedge, double Mitre, double Bevel);

    private static double Printed(double radians) => Numbers.Rounded(Numbers.Degrees(radians), 1);
}
