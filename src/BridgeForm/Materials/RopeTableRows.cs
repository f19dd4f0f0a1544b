using System.Collections.Immutable;

namespace BridgeForm.Materials;

/// <summary>One size of one make of rope, in the units its source prints.</summary>
/// <param name="Size">Diameter in inches as people write it, such as <c>3/4</c>.</param>
/// <param name="PoundsPerFoot">lb/ft.</param>
/// <param name="PoundsForce">Minimum breaking strength, lbf.</param>
/// <param name="SquareInches">Metallic area, in².</param>
/// <param name="Source">Where strength, weight and area come from.</param>
internal sealed record RopeTableRow(
    string Size, double PoundsPerFoot, double PoundsForce, double SquareInches, string Source);

/// <summary>One make of rope.</summary>
/// <param name="Key">Key without the size.</param>
/// <param name="Words">How it is made, for people.</param>
/// <param name="Kind">How it is made.</param>
/// <param name="Galvanized">Its rows hold for zinc-coated rope.</param>
/// <param name="AlsoGalvanized">A key with <c>-galvanized</c> exists.</param>
/// <param name="Ksi">Modulus of the rope, ksi.</param>
/// <param name="ModulusSource">Where the modulus comes from.</param>
/// <param name="Rows">Its sizes, smallest first.</param>
internal sealed record RopeMake(
    string Key,
    string Words,
    RopeKind Kind,
    bool Galvanized,
    bool AlsoGalvanized,
    double Ksi,
    string ModulusSource,
    ImmutableArray<RopeTableRow> Rows);

/// <summary>The data of the built-in table. Sizes between rows do not exist.</summary>
internal static class RopeTableRows
{
    private const string SmallStrand =
        "ASTM A475 zinc-coated strand, extra high strength, 7-wire: weight and strength as a maker prints them; area 7·π/4·wire² from the "
            + "printed wire diameter";

    private const string MediumStrand =
        "ASTM A475 zinc-coated strand, extra high strength, 7-wire: weight and strength from memory; area 7·π/4·wire², wire diameter "
            + "from memory";

    private const string LargeStrand =
        "ASTM A475 zinc-coated strand, extra high strength, 7-wire: weight and strength from memory; area 0.596·d², from memory";

    private const string ManyWireStrand =
        "ASTM A475 zinc-coated strand, extra high strength, 19-wire: weight and strength from memory; area 0.58·d², from memory";

    private const string WireRope =
        "6x19 class IWRC, RR-W-410 and ASTM A1023: strength and weight from memory; area 0.483·d² (6x25 filler wire), from memory";

    private const string Cord =
        "MIL-DTL-83420 composition A, zinc-coated 7x19: strength as FAA AC 43.13-1B table 7-3 prints it; weight from memory; area from "
            + "weight, steel density and 1.1 for lay";

    // Wires lie at an angle and carry lubricant: a metre of cord weighs about a tenth more than its metal's cross-section.
    private const double CordLay = 1.1;

    // Weight of one square inch of steel a foot long at 7850 kg/m³, lb.
    private const double PoundsPerFootPerSquareInch = 3.4032;

    /// <summary>All makes.</summary>
    public static ImmutableArray<RopeMake> Makes { get; } =
    [
        new("strand-ehs", "strand of 7 wires, of 19 from 3/4 in, extra high strength", RopeKind.Strand, Galvanized: true,
            AlsoGalvanized: true, 23_000,
            "modulus 23 000 ksi, the lower end of 23 000 to 24 000 commonly taken for such strand (from memory)",
            [.. Strand(), .. ThickStrand()]),
        new("rope-6x19-iwrc-ips", "wire rope 6x19 with a steel core, improved plow steel", RopeKind.WireRope, Galvanized: false,
            AlsoGalvanized: true, 13_500, RopeModulus,
            [.. WireRopeSizes(improvedOnly: true)]),
        new("rope-6x19-iwrc-eips", "wire rope 6x19 with a steel core, extra improved plow steel", RopeKind.WireRope, Galvanized: false,
            AlsoGalvanized: true, 13_500, RopeModulus,
            [.. WireRopeSizes(improvedOnly: false)]),
        new("cord-7x19", "cord 7x19", RopeKind.Cord, Galvanized: true, AlsoGalvanized: false, 13_000,
            "modulus 13 000 ksi, the lower end of 13 000 to 15 000 (from memory)",
            [.. CordSizes()]),
    ];

    private static string RopeModulus =>
        "modulus 13 500 ksi, Wire Rope Users Manual, 6x19 IWRC up to a fifth of its strength (from memory)";

    private static RopeTableRow[] Strand() =>
    [
        Seven("1/8", 32, 1_830, 1.04, SmallStrand),
        Seven("5/32", 51, 2_940, 1.32, SmallStrand),
        Seven("3/16", 73, 3_990, 1.57, SmallStrand),
        Seven("7/32", 98, 5_400, 1.83, SmallStrand),
        Seven("1/4", 121, 6_650, 2.03, SmallStrand),
        Seven("9/32", 164, 8_950, 2.36, SmallStrand),
        Seven("5/16", 205, 11_200, 2.64, SmallStrand),
        Seven("3/8", 273, 15_400, 3.05, MediumStrand),
        Seven("7/16", 399, 20_800, 3.68, MediumStrand),
        Seven("1/2", 517, 26_900, 4.19, MediumStrand),
    ];

    private static RopeTableRow[] ThickStrand() =>
    [
        new("9/16", 0.671, 35_000, 0.596 * Square(9.0 / 16), LargeStrand),
        new("5/8", 0.813, 42_400, 0.596 * Square(5.0 / 8), LargeStrand),
        new("3/4", 1.155, 58_300, 0.58 * Square(3.0 / 4), ManyWireStrand),
        new("7/8", 1.581, 79_700, 0.58 * Square(7.0 / 8), ManyWireStrand),
        new("1", 2.073, 104_500, 0.58, ManyWireStrand),
    ];

    private static IEnumerable<RopeTableRow> WireRopeSizes(bool improvedOnly)
    {
        // Size, inches, short tons improved plow steel, short tons extra improved, lb/ft.
        RopeTableRow Row(string size, double inches, double improved, double extra, double weight) =>
            new(size, weight, 2000 * (improvedOnly ? improved : extra), 0.483 * Square(inches), WireRope);
        return
        [
            Row("1/4", 1.0 / 4, 2.94, 3.40, 0.116),
            Row("5/16", 5.0 / 16, 4.58, 5.27, 0.18),
            Row("3/8", 3.0 / 8, 6.56, 7.55, 0.26),
            Row("7/16", 7.0 / 16, 8.89, 10.2, 0.35),
            Row("1/2", 1.0 / 2, 11.5, 13.3, 0.46),
            Row("9/16", 9.0 / 16, 14.5, 16.8, 0.59),
            Row("5/8", 5.0 / 8, 17.9, 20.6, 0.72),
            Row("3/4", 3.0 / 4, 25.6, 29.4, 1.04),
            Row("7/8", 7.0 / 8, 34.6, 39.8, 1.42),
            Row("1", 1, 44.9, 51.7, 1.85),
            Row("1-1/8", 9.0 / 8, 56.5, 65.0, 2.34),
            Row("1-1/4", 5.0 / 4, 69.4, 79.9, 2.89),
            Row("1-3/8", 11.0 / 8, 83.5, 96.0, 3.50),
            Row("1-1/2", 3.0 / 2, 98.9, 114, 4.16),
        ];
    }

    private static IEnumerable<RopeTableRow> CordSizes()
    {
        // Size, lb per 100 ft, lbf.
        static RopeTableRow Row(string size, double weight, double strength) =>
            new(size, weight / 100, strength, weight / 100 / PoundsPerFootPerSquareInch / CordLay, Cord);
        return
        [
            Row("3/32", 1.74, 1_000),
            Row("1/8", 2.9, 2_000),
            Row("5/32", 4.5, 2_800),
            Row("3/16", 6.5, 4_200),
            Row("7/32", 8.6, 5_600),
            Row("1/4", 11.0, 7_000),
            Row("9/32", 13.9, 8_000),
            Row("5/16", 17.3, 9_800),
            Row("3/8", 24.3, 14_400),
        ];
    }

    private static RopeTableRow Seven(string size, double poundsPerThousand, double strength, double wire, string source) =>
        new(size, poundsPerThousand / 1000, strength, 7 * Math.PI / 4 * Square(wire / 25.4), source);

    private static double Square(double v) => v * v;
}
