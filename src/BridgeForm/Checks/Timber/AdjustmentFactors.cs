using System.Collections.Immutable;
using BridgeForm.Materials;
using BridgeForm.Quantities;

namespace BridgeForm.Checks.Timber;

/// <summary>Adjustment factors of the NDS (ASD) for sawn lumber outdoors; docs/sources.md says where they were read.</summary>
internal static class AdjustmentFactors
{
    private const double Psi = Quantities.Units.PoundForce / (Quantities.Units.MetresPerInch * Quantities.Units.MetresPerInch);

    // Fb·CF and Fc·CF up to which wet service costs nothing.
    private const double BendingUnaffected = 1150 * Psi;
    private const double CompressionUnaffected = 750 * Psi;

    /// <summary>CD.</summary>
    public static Factor Duration(LoadDuration load) => new(
        "CD", load.Factor, $"NDS Table 2.3.2, {load.Name}");

    /// <summary>CM on bending; <paramref name="withSize"/> is Fb·CF.</summary>
    public static Factor WetBending(NominalSize size, double withSize) => size.IsTimber
        ? WetTimber(1)
        : withSize <= BendingUnaffected
            ? new("CM", 1, "wet service, Table 4A: 1.0 where Fb·CF is at most 1150 psi")
            : new("CM", 0.85, "wet service outdoors, Table 4A");

    /// <summary>CM on shear.</summary>
    public static Factor WetShear(NominalSize size) => size.IsTimber ? WetTimber(1) : new("CM", 0.97, "wet service outdoors, Table 4A");

    /// <summary>CM on tension.</summary>
    public static Factor WetTension(NominalSize size) => size.IsTimber ? WetTimber(1) : new("CM", 1, "wet service, Table 4A");

    /// <summary>CM on compression along the grain; <paramref name="withSize"/> is Fc·CF.</summary>
    public static Factor WetCompression(NominalSize size, double withSize) => size.IsTimber
        ? WetTimber(0.91)
        : withSize <= CompressionUnaffected
            ? new("CM", 1, "wet service, Table 4A: 1.0 where Fc·CF is at most 750 psi")
            : new("CM", 0.8, "wet service outdoors, Table 4A");

    /// <summary>CM on compression across the grain.</summary>
    public static Factor WetAcross(NominalSize size) => size.IsTimber ? WetTimber(0.67) : new("CM", 0.67, "wet service outdoors, Table 4A");

    /// <summary>CM on E and Emin.</summary>
    public static Factor WetModulus(NominalSize size) => size.IsTimber ? WetTimber(1) : new("CM", 0.9, "wet service outdoors, Table 4A");

    /// <summary>A row that holds for wet service already.</summary>
    public static Factor WetInTable => new("CM", 1, "values of the table are for wet service");

    /// <summary>CF on bending.</summary>
    public static Factor SizeBending(NominalSize size, DesignValue row, double depth)
    {
        if (row.SizeAdjusted)
        {
            return new("CF", 1, "values of the table include the size");
        }

        return size.IsTimber
            ? new("CF", Math.Min(1, Elementary.Pow(12 * Units.MetresPerInch / depth, 1.0 / 9)), "(12 in / d)^(1/9) for timbers deeper "
                + "than 12 in, NDS 4.3.6.2")
            : size.IsBoard
                ? new("CF", 1, "no size factor below 2 in thick")
                : new("CF", BendingByWidth(size), "Table 4A, size factor of bending");
    }

    /// <summary>CF on tension.</summary>
    public static Factor SizeTension(NominalSize size, DesignValue row) => Plain(size, row) ?? new(
        "CF", size.Width switch { <= 4 => 1.5, <= 5 => 1.4, <= 6 => 1.3, <= 8 => 1.2, <= 10 => 1.1, <= 12 => 1, _ => 0.9 },
        "Table 4A, size factor of tension");

    /// <summary>CF on compression along the grain.</summary>
    public static Factor SizeCompression(NominalSize size, DesignValue row) => Plain(size, row) ?? new(
        "CF", size.Width switch { <= 4 => 1.15, <= 6 => 1.1, <= 8 => 1.05, <= 12 => 1, _ => 0.9 }, "Table 4A, size factor of compression");

    /// <summary>Cfu, for a load on the wide face of lumber.</summary>
    public static Factor FlatUse(NominalSize size)
    {
        if (size.IsTimber)
        {
            // Select structural 0.86, no. 1 0.74, no. 2 1.00 for beams and stringers: the least of them for all.
            return size.Width - size.Thickness > 2
                ? new("Cfu", 0.74, "Table 4D, beams and stringers loaded on the wide face, the least of its grades (from memory)")
                : new("Cfu", 1, "posts and timbers have no flat use factor, Table 4D (from memory)");
        }

        var value = size.IsBoard
            ? 1
            : (size.Width, size.Thickness < 4) switch
            {
                ( < 4, _) => 1.0,
                (4, true) => 1.1,
                (4, false) => 1.0,
                (5, true) => 1.1,
                ( <= 8, true) => 1.15,
                ( <= 8, false) => 1.05,
                (_, true) => 1.2,
                (_, false) => 1.1,
            };
        return new("Cfu", value, "Table 4A, load on the wide face");
    }

    /// <summary>Ci on strengths.</summary>
    public static Factor IncisedStrength(NominalSize size) =>
        size.IsTimber ? NoIncising : new("Ci", 0.8, "incised, NDS 4.3.8 (from memory)");

    /// <summary>Ci on E and Emin.</summary>
    public static Factor IncisedModulus(NominalSize size) =>
        size.IsTimber ? NoIncising : new("Ci", 0.95, "incised, NDS 4.3.8 (from memory)");

    /// <summary>Cr: none.</summary>
    public static Factor Repetitive => new("Cr", 1, "gapped boards and single members share no load");

    private static Factor NoIncising => new("Ci", 1, "NDS 4.3.8 is for dimension lumber");

    private static Factor WetTimber(double value) => new("CM", value, "wet service outdoors, Table 4D");

    private static Factor? Plain(NominalSize size, DesignValue row) => row.SizeAdjusted
        ? new("CF", 1, "values of the table include the size")
        : size.IsTimber || size.IsBoard ? new("CF", 1, "no size factor") : null;

    // 4 in thick lumber 8 in and wider has a tenth more.
    private static double BendingByWidth(NominalSize size)
    {
        var thick = size.Thickness >= 4 && size.Width >= 8 ? 0.1 : 0;
        return thick + size.Width switch { <= 4 => 1.5, <= 5 => 1.4, <= 6 => 1.3, <= 8 => 1.2, <= 10 => 1.1, <= 12 => 1.0, _ => 0.9 };
    }
}

/// <summary>A factor on a design value.</summary>
/// <param name="Symbol">As in the NDS: <c>CM</c>.</param>
/// <param name="Value">Dimensionless.</param>
/// <param name="Why">Where it comes from.</param>
/// <param name="Slenderness">Slenderness over the greatest one allowed; above 1 the member has no value at all.</param>
internal sealed record Factor(string Symbol, double Value, string Why, double Slenderness = 0);

/// <summary>A reference design value with everything that adjusts it. Pascals.</summary>
/// <param name="Symbol">Of the reference value: <c>Fb</c>.</param>
/// <param name="Reference">From the table.</param>
/// <param name="Factors">Each with where it comes from.</param>
/// <param name="Source">Of the reference value.</param>
internal sealed record AdjustedValue(string Symbol, double Reference, ImmutableArray<Factor> Factors, string Source)
{
    /// <summary>What must be said of the reference value, after a space; empty for nothing.</summary>
    public string Note { get; init; } = "";

    /// <summary>Reference value times its factors.</summary>
    public double Value => Factors.Aggregate(Reference, (value, factor) => value * factor.Value);

    /// <summary>Slenderness over the greatest one allowed, the largest of its factors; above 1 there is no value.</summary>
    public double Slenderness => Factors.Select(f => f.Slenderness).DefaultIfEmpty(0).Max();

    /// <summary>With one more factor.</summary>
    public AdjustedValue Times(Factor factor) => this with { Factors = Factors.Add(factor) };

    /// <summary><c>Fb' = 1350 psi × CD 1.6 × CM 0.85 = 1836 psi</c>.</summary>
    public string Text(CheckWords words) =>
        $"{Symbol}' = {words.Stress(Reference)}"
        + string.Concat(Factors.Select(f => $" × {f.Symbol} {NumberText.By("0.0##", f.Value)}"))
        + $" = {words.Stress(Value)}{Note}";

    /// <summary>Where the value and each of its factors come from.</summary>
    public string Sources => $"{Symbol}: {Source}" + string.Concat(Factors.Select(f => $"; {f.Symbol} {f.Why}"));
}
