using System.Globalization;
using BridgeForm.Pieces;
using BridgeForm.Quantities;
using BridgeForm.Roles;
using BridgeForm.Solids;

namespace BridgeForm.Output.Tables;

/// <summary><c>cut-list.csv</c>: one row a piece.</summary>
public static class CutList
{
    private static readonly string[] Head =
    [
        "Mark", "Quantity", "Role", "Stock", "Section", "Blank length", "Blank length (mm)", "Long edge", "Long edge (mm)",
        "Short edge", "Short edge (mm)",
        "Near mitre (deg)", "Near bevel (deg)", "Near edge line (deg)", "Near cut", "Near wedge (deg)",
        "Far mitre (deg)", "Far bevel (deg)", "Far edge line (deg)", "Far cut", "Far wedge (deg)",
        "Taper", "Channels", "Holes", "Mass each", "Mass each (kg)", "Cut area each", "Cut area each (cm2)", "Router", "Occurrences",
        "Arrow", "Turned", "Rolled over",
    ];

    /// <summary>The table as text; degrees to 0.1, signed as the report's.</summary>
    public static string Csv(BridgeModel model, DisplayUnits units) => CsvText.Write(Head, model.Pieces.Select(p => Row(p, units)));

    private static IReadOnlyList<string> Row(Piece piece, DisplayUnits units) =>
    [
        piece.Mark,
        Count(piece.Occurrences.Length),
        RoleTable.Of(piece.Role).Name,
        CsvText.Users(piece.Stock),
        piece.Section,
        units.Length(piece.BlankLength),
        Millimetres(piece.BlankLength),
        .. Edges(piece, units),
        .. End(piece.Near, piece.Shape),
        .. End(piece.Far, piece.Shape),
        TaperText(piece, units),
        Count(piece.Shape.Channels.Length),
        Count(piece.Shape.Holes.Length),
        units.Mass(piece.Mass),
        Numbers.Fixed(piece.Mass, 2),
        new QuantityText(units.System).Area(piece.CutArea),
        Numbers.Fixed(piece.CutArea * 1e4, 1),
        piece.NotRoutable.IsEmpty ? "routable" : "no: " + string.Join(", ", piece.NotRoutable),
        OccurrenceRanges.Write(piece.Occurrences.Select(o => o.Id)),
        TurnWords.Arrow(piece),
        TurnWords.Turned(piece),
        TurnWords.Rolled(piece),
    ];

    private static IReadOnlyList<string> Edges(Piece piece, DisplayUnits units)
    {
        var (least, most) = piece.Shape.EdgeLengths();
        return [units.Length(most), Millimetres(most), units.Length(least), Millimetres(least)];
    }

    private static IReadOnlyList<string> End(EndCut cut, CutStock stock) =>
    [
        Degrees(cut.Mitre),
        Degrees(cut.Bevel),
        Degrees(cut.Edge),
        CutWays.Words(cut, stock),
        Degrees(cut.Wedge),
    ];

    private static string TaperText(Piece piece, DisplayUnits units) => Taper.Measure(piece) is { } taper
        ? $"{units.Length(taper.Thick)} to {units.Length(taper.Thin)} over {units.Length(taper.Width)} ({Degrees(taper.Angle)} deg)"
        : "";

    private static string Count(int n) => n.ToString(CultureInfo.InvariantCulture);

    private static string Degrees(double radians) => Numbers.Fixed(Numbers.Degrees(radians), 1);

    private static string Millimetres(double metres) => Numbers.Fixed(metres * 1000, 1);
}
