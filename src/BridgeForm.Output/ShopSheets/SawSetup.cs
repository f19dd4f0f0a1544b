using System.Collections.Immutable;
using System.Globalization;
using BridgeForm.Output.Templates;

namespace BridgeForm.Output.ShopSheets;

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
    public static ImmutableArray<SawSetup> Of(BridgeModel model)
    {
        return
        [
            .. model.Pieces
                .SelectMany(SawCut.Of)
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
    public static string Csv(BridgeModel model, PeopleUnits units) => CsvText.Of(
        [
            "Set-up", "Stock", "Section", "Saw mitre (deg)", "Saw bevel (deg)", "Wedge (deg)", "Made by",
            "Mark", "Quantity", "End", "Cut order", "Up", "Against the fence", "Near end points", "Piece and stop lie", "Stop", "Stop (mm)",
        ],
        Of(model).SelectMany(s => s.Cuts.Select(c => s.Row(c, units))));

    private IReadOnlyList<string> Row(SawCut cut, PeopleUnits units) =>
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
