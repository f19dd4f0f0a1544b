using System.Collections.Immutable;
using System.Diagnostics.CodeAnalysis;
using System.Globalization;

namespace BridgeForm.Materials;

/// <summary>Ropes that differ in nothing but their size.</summary>
/// <param name="Words">How they are made, for people.</param>
/// <param name="Ropes">Thinnest first; all of one modulus.</param>
public sealed record RopeGroup(string Words, ImmutableArray<RopeProperties> Ropes);

/// <summary>
/// Built-in ropes by key, such as <c>rope-6x19-iwrc-eips-galvanized-3/4</c> or <c>rope-6x19-iwrc-1770-16-mm</c>. Nothing is interpolated.
/// </summary>
public static class RopeTable
{
    // Strength that zinc coating costs a rope whose source lists it uncoated (from memory).
    private const double GalvanizingLoss = 0.10;

    private const double PoundMass = Quantities.Units.KilogramsPerPound;
    private const double Inch = Quantities.Units.MetresPerInch;
    private const double Foot = 12 * Inch;
    private const double PoundForce = PoundMass * Quantities.Units.StandardGravity;
    private const double Ksi = 1000 * PoundForce / (Inch * Inch);

    /// <summary>Ropes that are made alike, in the order of the table.</summary>
    public static ImmutableArray<RopeGroup> Groups { get; } = [.. RopeTableRows.Makes.SelectMany(Variants), .. MetricRopeClass.Groups];

    private static readonly ImmutableArray<RopeProperties> Ropes = [.. Groups.SelectMany(g => g.Ropes)];

    private static readonly Dictionary<string, RopeProperties> ByKey =
        Ropes.ToDictionary(r => r.Name, StringComparer.Ordinal);

    /// <summary>All keys: make by make, smallest size first.</summary>
    public static ImmutableArray<string> Keys { get; } = [.. Ropes.Select(r => r.Name)];

    /// <summary>The table as the project reader asks for it.</summary>
    public static RopeCatalogue Catalogue { get; } = new(Keys, key => TryFind(key, out var rope) ? rope : null);

    /// <summary>The rope of exactly that key.</summary>
    /// <param name="key">Such as <c>strand-ehs-3/8</c>.</param>
    /// <param name="rope">The rope, in SI units.</param>
    public static bool TryFind(string key, [NotNullWhen(true)] out RopeProperties? rope) =>
        ByKey.TryGetValue(key, out rope);

    /// <summary>Thicker ropes of the same make, thinnest first; none for a rope that is not of this table.</summary>
    /// <param name="rope">Any rope.</param>
    public static IEnumerable<RopeProperties> Thicker(RopeProperties rope)
    {
        var at = Ropes.IndexOf(rope);
        for (var i = at + 1; at >= 0 && i < Ropes.Length && Ropes[i].Diameter > Ropes[i - 1].Diameter; i++)
        {
            yield return Ropes[i];
        }
    }

    private static IEnumerable<RopeGroup> Variants(RopeMake make) =>
        make.AlsoGalvanized ? [Group(make, galvanizedKey: false), Group(make, galvanizedKey: true)] : [Group(make, galvanizedKey: false)];

    private static RopeGroup Group(RopeMake make, bool galvanizedKey) => new(
        make.Words + Coating(make, galvanizedKey),
        [.. make.Rows.Select(row => Rope(make, row, galvanizedKey))]);

    private static string Coating(RopeMake make, bool galvanizedKey) => (make.Galvanized, galvanizedKey) switch
    {
        (true, true) => ", zinc coated; the same ropes by another key",
        (false, false) => ", bare",
        _ => ", zinc coated",
    };

    private static RopeProperties Rope(RopeMake make, RopeTableRow row, bool galvanizedKey)
    {
        var weakened = galvanizedKey && !make.Galvanized;
        return new RopeProperties
        {
            Name = $"{make.Key}{(galvanizedKey ? "-galvanized" : "")}-{row.Size}",
            Kind = make.Kind,
            Diameter = Inches(row.Size) * Inch,
            MassPerLength = row.PoundsPerFoot * PoundMass / Foot,
            BreakingStrength = row.PoundsForce * PoundForce * (weakened ? 1 - GalvanizingLoss : 1),
            MetallicArea = row.SquareInches * Inch * Inch,
            Modulus = make.Ksi * Ksi,
            Galvanized = make.Galvanized || galvanizedKey,
            Source = $"{row.Source}; {make.ModulusSource}"
                + (weakened ? "; strength less 10 % for galvanizing (from memory)" : ""),
        };
    }

    private static double Inches(string size)
    {
        // A whole number, a fraction, or both with a dash between: 1, 3/4, 1-1/8.
        var dash = size.IndexOf('-', StringComparison.Ordinal);
        if (dash > 0)
        {
            return Inches(size[..dash]) + Inches(size[(dash + 1)..]);
        }

        var parts = size.Split('/');
        var whole = double.Parse(parts[0], CultureInfo.InvariantCulture);
        return parts.Length == 1 ? whole : whole / double.Parse(parts[1], CultureInfo.InvariantCulture);
    }
}
