using System.Collections.Immutable;

namespace BridgeForm.Quantities;

/// <summary>
/// Every unit that people may write. Definitions: international yard and pound agreement (1959), exact: 1 in = 25.4 mm,
/// 1 lb = 0.45359237 kg; standard gravity 9.80665 m/s² (ISO 80000-4), exact; gallon of 231 in³.
/// </summary>
public static class Units
{
    /// <summary>Standard acceleration of free fall, m/s² (3rd General Conference on Weights and Measures, 1901; ISO 80000-3).</summary>
    public const double StandardGravity = 9.80665;

    /// <summary>Newtons in a pound-force.</summary>
    public const double PoundForce = KilogramsPerPound * StandardGravity;

    /// <summary>The inch, in metres: the one place where it stands.</summary>
    public const double MetresPerInch = 0.0254;

    /// <summary>The foot, in metres; written out, since twelve inches of binary fractions are not quite it.</summary>
    public const double MetresPerFoot = 0.3048;

    /// <summary>The gallon of 231 in³, in cubic metres; written out for the same reason.</summary>
    public const double CubicMetresPerGallon = 0.003785411784;

    /// <summary>Litres in a cubic metre.</summary>
    public const double LitresPerCubicMetre = 1000;

    /// <summary>The pound, in kilograms.</summary>
    public const double KilogramsPerPound = 0.45359237;

    private const double SquareInch = MetresPerInch * MetresPerInch;
    private const double SquareFoot = MetresPerFoot * MetresPerFoot;
    private const double CubicFoot = MetresPerFoot * MetresPerFoot * MetresPerFoot;
    private const double Gallon = 231 * MetresPerInch * MetresPerInch * MetresPerInch;

    /// <summary>25.4 mm.</summary>
    public static readonly Unit Inch = new("in", 254, 10000, ["inch", "inches", "in.", "\""]);

    /// <summary>304.8 mm.</summary>
    public static readonly Unit Foot = new("ft", 3048, 10000, ["foot", "feet", "ft.", "'"]);

    private static readonly ImmutableArray<UnitSet> All =
    [
        new(
            QuantityKind.Length,
            "a length",
            [
                Inch, Foot, new("mm", 1, 1000, Plural("millimetre", "millimeter")), new("cm", 1, 100, Plural("centimetre", "centimeter")),
                new("m", 1, 1, Plural("metre", "meter")),
            ],
            "36 ft, 37 ft 6-1/2 in, 5/8 in, 1219 mm or 1.2 m"),
        new(
            QuantityKind.Angle,
            "an angle",
            [new("deg", Math.PI, 180, [.. Plural("degree"), "°", "degs"]), new("rad", 1, 1, Plural("radian"))],
            "10 deg"),
        new(QuantityKind.Share, "a share", [new("%", 1, 100, ["percent", "per cent", "pct"])], "80 %"),
        new(
            QuantityKind.Force,
            "a force",
            [
                new("lbf", PoundForce, 1, ["lb", "lbs", .. Plural("pound")]), new("kN", 1000, 1, Plural("kilonewton")),
                new("N", 1, 1, Plural("newton")), new("kip", 1000 * PoundForce, 1, ["kips"]),
            ],
            "300 lbf or 1.3 kN"),
        new(QuantityKind.Pressure, "a pressure", [Psf, KiloPascal, Pascal, Psi], "60 psf or 2.9 kPa"),
        new(
            QuantityKind.Stress, "a strength or modulus", [GigaPascal, MegaPascal, Ksi, Psi, KiloPascal, Pascal],
            "1600000 psi, 15000 ksi or 100 GPa"),
        new(
            QuantityKind.Mass,
            "a mass",
            [
                new("lb", 45359237, 100000000, ["lbs", "lbm", .. Plural("pound")]), new("kg", 1, 1, Plural("kilogram")),
                new("g", 1, 1000, Plural("gram")),
            ],
            "3 lb or 1.4 kg"),
        new(
            QuantityKind.MassPerLength,
            "a mass per length",
            [new("kg/m", 1, 1, []), new("lb/ft", KilogramsPerPound, MetresPerFoot, ["lbs/ft", "plf"]), new("g/m", 1, 1000, [])],
            "1.04 lb/ft or 1.55 kg/m"),
        new(
            QuantityKind.MassPerArea,
            "a mass per area",
            [
                new("kg/m2", 1, 1, ["kg/m²", "kg/m^2"]), new("lb/ft2", KilogramsPerPound, SquareFoot, ["lb/ft²", "lb/ft^2", "psf"]),
                new("g/m2", 1, 1000, ["g/m²", "g/m^2", "gsm"]),
            ],
            "0.1 lb/ft2 or 0.5 kg/m2"),
        new(
            QuantityKind.Area,
            "an area",
            [
                new("mm2", 1, 1000000, ["mm²", "mm^2", "sq mm"]), new("in2", SquareInch, 1, ["in²", "in^2", "sq in"]),
                new("cm2", 1, 10000, ["cm²", "cm^2"]),
            ],
            "0.27 in2 or 175 mm2"),
        new(
            QuantityKind.Density,
            "a density",
            [new("kg/m3", 1, 1, ["kg/m³", "kg/m^3"]), new("lb/ft3", KilogramsPerPound, CubicFoot, ["lb/ft³", "lb/ft^3", "pcf"])],
            "35 lb/ft3 or 560 kg/m3"),
        new(
            QuantityKind.Coverage,
            "a coverage",
            [new("ft2/gal", SquareFoot, Gallon, ["ft²/gal", "sq ft/gal"]), new("m2/l", 1000, 1, ["m²/l", "m2/L"])],
            "200 ft2/gal or 5 m2/l"),
        new(
            QuantityKind.Temperature,
            "a temperature",
            [new("F", 5, 9, ["°F", "deg F", "degF"], Zero: 32), new("C", 1, 1, ["°C", "deg C", "degC"])],
            "60 F or 15 C"),
    ];

    private static Unit Psf => new("psf", PoundForce, SquareFoot, ["lb/ft2", "lb/ft²", "lbf/ft2", "lbf/ft²"]);

    private static Unit Psi => new("psi", PoundForce, SquareInch, ["lb/in2", "lb/in²", "lbf/in2", "lbf/in²"]);

    private static Unit Ksi => new("ksi", 1000 * PoundForce, SquareInch, []);

    private static Unit Pascal => new("Pa", 1, 1, ["N/m2", "N/m²"]);

    private static Unit KiloPascal => new("kPa", 1000, 1, ["kN/m2", "kN/m²"]);

    private static Unit MegaPascal => new("MPa", 1e6, 1, ["N/mm2", "N/mm²"]);

    private static Unit GigaPascal => new("GPa", 1e9, 1, ["kN/mm2", "kN/mm²"]);

    /// <summary>The units of a kind.</summary>
    public static UnitSet Of(QuantityKind kind) => All.First(s => s.Kind == kind);

    private static ImmutableArray<string> Plural(params string[] words) => [.. words, .. words.Select(w => w + "s")];
}

/// <summary>
/// A unit of one kind of quantity: SI value = (number − <paramref name="Zero"/>) · <paramref name="Numerator"/> /
/// <paramref name="Denominator"/>. Numerator and denominator are apart so that 36 in and 914.4 mm give the same bits.
/// </summary>
/// <param name="Symbol">The spelling used in messages.</param>
/// <param name="Numerator">Exact where the unit's definition is exact.</param>
/// <param name="Denominator">Exact where the unit's definition is exact.</param>
/// <param name="Spellings">Further spellings, compared without regard to case.</param>
/// <param name="Zero">The number at which the SI value is zero; for degrees Fahrenheit.</param>
public sealed record Unit(
    string Symbol, double Numerator, double Denominator, ImmutableArray<string> Spellings, double Zero = 0)
{
    /// <summary>The SI value of a number of this unit.</summary>
    public double ToSi(double number) => (number - Zero) * Numerator / Denominator;

    /// <summary>The number of this unit for an SI value.</summary>
    public double FromSi(double si) => (si * Denominator / Numerator) + Zero;

    /// <summary>Whether a person's spelling means this unit.</summary>
    public bool IsSpelled(string text) =>
        string.Equals(text, Symbol, StringComparison.OrdinalIgnoreCase)
        || Spellings.Any(s => string.Equals(s, text, StringComparison.OrdinalIgnoreCase));
}

/// <summary>The units of one kind of quantity.</summary>
/// <param name="Kind">The kind.</param>
/// <param name="Noun">What it is called, with its article: <c>a length</c>.</param>
/// <param name="Units">Units, those to suggest first.</param>
/// <param name="Example">How one is written.</param>
public sealed record UnitSet(QuantityKind Kind, string Noun, ImmutableArray<Unit> Units, string Example)
{
    /// <summary>The unit of that spelling, or null.</summary>
    public Unit? Find(string spelling) => Units.FirstOrDefault(u => u.IsSpelled(spelling));

    /// <summary>Symbols for a message: <c>in, ft, mm, cm or m</c>.</summary>
    public string Symbols => Units.Length == 1
        ? Units[0].Symbol
        : string.Join(", ", Units.Take(Units.Length - 1).Select(u => u.Symbol)) + " or " + Units[^1].Symbol;
}

/// <summary>Units that people read in printed matter.</summary>
public enum UnitSystem
{
    /// <summary>Feet, inches and sixteenths, pounds.</summary>
    Imperial,

    /// <summary>Millimetres, kilograms, kilonewtons.</summary>
    Metric,
}
