using System.Collections.Immutable;
using BridgeForm.Pieces;
using BridgeForm.Project;

namespace BridgeForm.Stocking;

/// <summary>Cuts to brush with field preservative.</summary>
/// <param name="Mark">Mark of the piece.</param>
/// <param name="Quantity">How many there are.</param>
/// <param name="Stock">Name of the stock.</param>
/// <param name="Area">Area that cuts, channels and holes of one piece lay bare, m².</param>
public sealed record TreatedPiece(string Mark, int Quantity, string Stock, double Area);

/// <summary>
/// Field treatment of cuts in treated wood. Preservative to buy = area × coats / coverage. Advice after AWPA M4 and IRC
/// R317.1.1 (both quoted by the trade, neither seen whole); whether M4 asks for it on southern pine is disputed.
/// </summary>
/// <param name="Coats">Number of coats.</param>
/// <param name="Coverage">Area that a volume covers in one coat, m²/m³.</param>
/// <param name="IsDefault">The project file gives neither.</param>
/// <param name="Pieces">Pieces of treated stock with something to brush, in order.</param>
/// <param name="LeftOut">Stocks in use that are left out.</param>
public sealed record TreatmentPlan(
    int Coats,
    double Coverage,
    bool IsDefault,
    ImmutableArray<TreatedPiece> Pieces,
    ImmutableArray<UntreatedStock> LeftOut)
{
    // Labels of copper naphthenate give about 100 ft² a gallon on rough wood, which sawn ends are, and 225 to 250 on smooth.
    private const double RoughCoverage = 100 * Quantities.Units.MetresPerFoot * Quantities.Units.MetresPerFoot
        / Quantities.Units.CubicMetresPerGallon;
    private const int UsualCoats = 2;

    /// <summary>Where the rule comes from.</summary>
    public const string Source =
        "AWPA M4 and IRC R317.1.1: cuts, notches and holes in treated wood are field treated (as quoted by the trade)";

    /// <summary>Where the default coverage comes from.</summary>
    public const string CoverageSource =
        "product label in public records: about 100 ft2/gal on rough wood, 225 to 250 on smooth, two coats 24 h apart";

    /// <summary>What to use and what to keep away from.</summary>
    public static ImmutableArray<string> Cautions { get; } =
    [
        "Copper naphthenate with 2 % copper (1 % where 2 % is not to be had); follow its label",
        "Gloves and eye protection when brushing; let each coat soak in, the second a day after the first",
        "Wear a dust mask when sawing treated wood, work outdoors, wash hands before eating",
        "Never burn offcuts or sawdust of treated wood; they go to a landfill that takes them",
        "Advice, not law: a published letter holds that M4 does not ask for it on southern pine",
    ];

    /// <summary>Area to brush in all, m².</summary>
    public double Area => Pieces.Sum(p => p.Area * p.Quantity);

    /// <summary>Preservative to buy, m³.</summary>
    public double Volume => Of(Area);

    /// <summary>Preservative for an area, m³.</summary>
    public double Of(double area) => area * Coats / Coverage;

    /// <summary>The plan for a bridge's pieces.</summary>
    public static TreatmentPlan Plan(ImmutableArray<Piece> pieces, BridgeParameters parameters)
    {
        var given = parameters.Treatment;
        return new TreatmentPlan(
            given?.Coats ?? UsualCoats,
            given?.Coverage ?? RoughCoverage,
            given is null,
            [
                .. pieces.Where(p => p.ExposedCutArea > 0)
                    .Select(p => new TreatedPiece(p.Mark, p.Occurrences.Length, p.Stock, p.ExposedCutArea)),
            ],
            UntreatedStock.List(pieces, parameters.Stock));
    }
}
