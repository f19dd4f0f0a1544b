using System.Globalization;
using BridgeForm.Pieces;
using BridgeForm.Quantities;
using BridgeForm.Stocking;

namespace BridgeForm.Output.Tables;

/// <summary><c>treatment.csv</c>: cuts to brush with field preservative, what to buy for them, and the cautions.</summary>
public static class TreatmentTable
{
    private const double SquareMetresPerSquareFoot = Quantities.Units.MetresPerFoot * Quantities.Units.MetresPerFoot;
    private const double CubicMetresPerFluidOunce = Units.CubicMetresPerGallon / 128;

    private static readonly string[] Head =
    [
        "Row", "Mark", "Quantity", "Stock", "Cut area each", "Cut area each (cm2)", "Cut area in all", "Cut area in all (cm2)",
        "Preservative", "Preservative (l)", "Note",
    ];

    /// <summary>The table as text.</summary>
    public static string Csv(BridgeModel model, DisplayUnits units)
    {
        var plan = TreatmentPlan.Plan(model.Pieces, model.Parameters);
        IEnumerable<IReadOnlyList<string>> rows =
        [
            .. plan.Pieces.Select(p => Piece(p, plan, units)),
            Sum(plan, units),
            .. plan.LeftOut.Select(s => LeftOut(s)),
            Note("source", TreatmentPlan.Source),
            Note("coverage", Coverage(plan, units)),
            .. TreatmentPlan.Cautions.Select(c => Note("caution", c)),
        ];
        return CsvText.Write(Head, rows);
    }

    private static IReadOnlyList<string> Piece(TreatedPiece piece, TreatmentPlan plan, DisplayUnits units) =>
    [
        "piece",
        piece.Mark,
        piece.Quantity.ToString(CultureInfo.InvariantCulture),
        CsvText.Users(piece.Stock),
        new QuantityText(units.System).Area(piece.Area),
        SquareCentimetres(piece.Area),
        .. AreaAndVolume(piece.Area * piece.Quantity, plan, units),
    ];

    private static IReadOnlyList<string> Sum(TreatmentPlan plan, DisplayUnits units) =>
    [
        "sum",
        string.Empty,
        plan.Pieces.Sum(p => p.Quantity).ToString(CultureInfo.InvariantCulture),
        .. Enumerable.Repeat(string.Empty, 3),
        .. AreaAndVolume(plan.Area, plan, units),
        "area x coats / coverage",
    ];

    private static IReadOnlyList<string> AreaAndVolume(double area, TreatmentPlan plan, DisplayUnits units) =>
    [
        new QuantityText(units.System).Area(area),
        SquareCentimetres(area),
        Volume(plan.Of(area), units),
        Numbers.Fixed(plan.Of(area) * Units.LitresPerCubicMetre, 3),
    ];

    private static string Volume(double volume, DisplayUnits units) =>
        units.System == UnitSystem.Metric ? Numbers.Fixed(volume * Units.LitresPerCubicMetre, 2) + " l"
        : volume >= Units.CubicMetresPerGallon ? Numbers.Fixed(volume / Units.CubicMetresPerGallon, 2) + " gal"
        : Numbers.Fixed(volume / CubicMetresPerFluidOunce, 1) + " fl oz";

    private static IReadOnlyList<string> LeftOut(UntreatedStock stock) =>
    [
        "left out", string.Empty, string.Empty, CsvText.Users(stock.Stock), .. Enumerable.Repeat(string.Empty, 6),
        stock.Durable
            ? "naturally durable heartwood, not treated: its cuts need no field preservative"
            : "not treated and not naturally durable: field preservative on its cuts does not make it fit for outdoors",
    ];

    private static string Coverage(TreatmentPlan plan, DisplayUnits units)
    {
        var coverage = units.System == UnitSystem.Imperial
            ? NumberText.Rounded(plan.Coverage * Units.CubicMetresPerGallon / SquareMetresPerSquareFoot, 0) + " ft2/gal"
            : NumberText.Rounded(plan.Coverage / Units.LitresPerCubicMetre, 2) + " m2/l";
        return string.Create(CultureInfo.InvariantCulture, $"{plan.Coats} coats at {coverage}, ")
            + (plan.IsDefault ? TreatmentPlan.CoverageSource : "from the project file");
    }

    private static IReadOnlyList<string> Note(string row, string text) =>
        [row, .. Enumerable.Repeat(string.Empty, 9), text];

    private static string SquareCentimetres(double area) => Numbers.Fixed(area * 1e4, 1);
}
