using System.Collections.Immutable;
using BridgeForm.Checks.Timber;
using BridgeForm.Materials;
using BridgeForm.Project;
using BridgeForm.Quantities;

namespace BridgeForm.Checks.Codes;

/// <summary>A rope of the user's own that no rope of the built-in table comes near.</summary>
internal static class StrongRope
{
    // Makers' ropes lie above the tables of their standards, but not by more (own figure).
    private const double Usual = 1.15;

    private static readonly ImmutableArray<RopeProperties> s_table = [.. RopeTable.Keys.Select(k => RopeTable.Catalogue.Find(k)!)];

    /// <summary>What is high in it.</summary>
    public static IEnumerable<string> Find(RopeProperties rope, CheckWords words)
    {
        if (rope.Kind != RopeKind.Custom)
        {
            yield break;
        }

        var (own, most) = (Strength(rope), s_table.Max(Strength));
        if (own > Usual * most * (1 + Tolerances.SameLimit))
        {
            yield return $"ropes.type.breaking_strength {words.Pounds(rope.BreakingStrength)} / diameter² = {words.Stress(own)}, highest "
                + $"of the built-in table {words.Stress(most)}";
        }

        // Strand is stiffer than wire rope and cord, and wires fill more of it.
        var isStrand = s_table.MinBy(r => Math.Abs(Filled(r) - Filled(rope)))!.Kind == RopeKind.Strand;
        var stiffest = s_table.Where(r => r.Kind == RopeKind.Strand == isStrand).Max(r => r.Modulus);
        if (rope.Modulus > Usual * stiffest * (1 + Tolerances.SameLimit))
        {
            yield return $"ropes.type.modulus {words.Elastic(rope.Modulus)}, highest of the built-in ropes that wires fill alike "
                + words.Elastic(stiffest);
        }
    }

    private static double Strength(RopeProperties rope) => rope.BreakingStrength / (rope.Diameter * rope.Diameter);

    private static double Filled(RopeProperties rope) => rope.MetallicArea / (rope.Diameter * rope.Diameter);
}

/// <summary>Design values of the user's own that no lumber of the built-in tables comes near.</summary>
internal static class StrongWood
{
    /// <summary>A grading agency's tables differ from year to year by less (own figure).</summary>
    public const double Usual = 1.15;

    // Hardwoods and machine-graded lumber lie above the tables' softwoods, but not by more. Nor does a size factor, which the values
    // of a section include and those of a whole class do not: at most 1.5 (NDS Supplement Table 4A).
    private const double UsualOfAnother = 1.5;

    private static readonly ImmutableArray<(string Key, Func<DesignValue, double> Of, bool BySize)> s_strengths =
    [
        ("bending", v => v.Bending, true),
        ("tension", v => v.Tension, true),
        ("shear", v => v.Shear, false),
        ("compression_across", v => v.CompressionAcross, false),
        ("compression", v => v.Compression, true),
        ("modulus", v => v.Modulus, false),
        ("modulus_min", v => v.ModulusMin ?? 0, false),
    ];

    /// <summary>Each row with what is high in it, and each that is said to hold for wet service.</summary>
    public static IEnumerable<string> Find(ImmutableArray<DesignValue> own, CheckWords words)
    {
        foreach (var row in own)
        {
            var high = High(row, words).ToList();
            if (high.Count > 0)
            {
                yield return $"values for {Name(row)}: {string.Join(", ", high)}; see their source again";
            }

            if (row.Wet)
            {
                yield return $"values for {Name(row)}, wet: true: no factor for wet service is taken of them; tables print dry values";
            }
        }
    }

    private static string Name(DesignValue row) => $"{row.Species} {row.Grade}, {row.Size}";

    private static IEnumerable<string> High(DesignValue row, CheckWords words)
    {
        var same = Same(row);
        var (table, which) = same.IsEmpty
            ? (Species(row), "highest of the built-in tables")
            : (same, "highest built-in of species, grade and size");
        var hasFactor = !same.IsEmpty && SectionReader.Read(row.Size).Section is not null && IsSame(same[0].Size, SizeClass.Dimension);
        return
            from strength in s_strengths
            let most = table.Max(strength.Of)
            let usual = same.IsEmpty || (hasFactor && strength.BySize) ? UsualOfAnother : Usual
            where strength.Of(row) > usual * most * (1 + Tolerances.SameLimit)
            select $"{strength.Key} {words.Stress(strength.Of(row))}, {which} {words.Stress(most)}";
    }

    /// <summary>Built-in rows of the same species, grade and size; of dimension lumber as a class, those of all its sizes.</summary>
    private static ImmutableArray<DesignValue> Same(DesignValue row)
    {
        if (SectionReader.Read(row.Size).Section is { } section)
        {
            return DesignValues.Find(DesignValues.All, row.Species, row.Grade, section) is { } found ? [found] : [];
        }

        return
        [
            .. DesignValues.All.Where(v => IsSame(v.Species, row.Species) && IsSame(v.Grade, row.Grade)
                && (IsSame(v.Size, row.Size) || (IsSame(row.Size, SizeClass.Dimension) && SectionReader.Read(v.Size).Section is not null))),
        ];
    }

    private static ImmutableArray<DesignValue> Species(DesignValue row)
    {
        ImmutableArray<DesignValue> own = [.. DesignValues.All.Where(v => IsSame(v.Species, row.Species))];
        return own.IsEmpty ? [.. DesignValues.All.Where(v => !v.IsCharacteristic)] : own;
    }

    private static bool IsSame(string a, string b) => string.Equals(a, b, StringComparison.OrdinalIgnoreCase);
}

/// <summary>
/// Values of the user's own where a piece takes them, with all their factors: a row of a whole class, or one that does not say that its
/// values include the size, may come out far above the built-in row of the same wood in the same section.
/// </summary>
internal static class StrongInUse
{
    /// <summary>Each wood and section once; rows that are named by themselves are not named again.</summary>
    public static IEnumerable<string> Find(CheckContext context, CheckWords words)
    {
        var (of, built) = (context.Parameters, context.Parameters with { Values = [] });
        foreach (var used in context.Pieces.Select(p => (p.Stock, p.Section)).Distinct())
        {
            if (SectionReader.Read(used.Section).Section is { } section
                && LumberValues.Find(of, used.Stock, section) is { } own && of.Values.Contains(own.Row)
                && LumberValues.Find(built, used.Stock, section) is { } table
                && !StrongWood.Find([own.Row], words).Any()
                && Values(own).Zip(Values(table)).FirstOrDefault(v => Exceeds(v.First, v.Second)) is (not null, not null) high)
            {
                yield return $"values for {own.Row.Species} {own.Row.Grade}, {own.Row.Size}: in {section.Name} {high.First.Symbol}' "
                    + $"{words.Stress(high.First.Value)}, by the built-in table {words.Stress(high.Second.Value)}; values that include the "
                    + "size say size_adjusted: true";
            }
        }
    }

    private static bool Exceeds(AdjustedValue own, AdjustedValue table) =>
        own.Value > StrongWood.Usual * table.Value * (1 + Tolerances.SameLimit);

    private static AdjustedValue[] Values(LumberValues of) =>
    [
        of.Bending(LoadDuration.Live, flat: false), of.Tension(LoadDuration.Live), of.Shear(LoadDuration.Live),
        of.Compression(LoadDuration.Live), of.Across(LoadDuration.Live), of.Modulus(), of.ModulusMin(LoadDuration.Live),
    ];
}

/// <summary>Wood of the user's own density that is heavier or lighter than it can be: weight steadies the bridge, and loads it.</summary>
internal static class OddWood
{
    /// <summary>Each stock.</summary>
    public static IEnumerable<string> Find(BridgeParameters of) =>
        from stock in of.Stock
        let species = of.Species.FirstOrDefault(s => string.Equals(s.Key, stock.Species, StringComparison.Ordinal))
            ?? SpeciesTable.Find(stock.Species)
        where species is not null
        let known = ReferenceEquals(species, SpeciesTable.Find(stock.Species)) ? StrengthClass.Find(stock.Species, stock.Grade) : null
        from odd in known is { } wood
            ? Find(stock, wood.DensityLow, WoodDensity.OfClass(wood, treated: false).High, of.Units)
            : Find(
                stock, WoodDensity.At(species.SpecificGravity, 0),
                WoodDensity.At(species.SpecificGravity, WoodDensity.WetMoisture), of.Units)
        select odd;

    private static IEnumerable<string> Find(StockParameters stock, double dry, double wet, UnitSystem units)
    {
        var (density, at) = (stock.Density, $"{stock.Species} at 28 % moisture weighs");
        var wettest = stock.Treated ? Math.Max(WoodDensity.FreshlyTreated, wet) : wet;
        if (Exceeds(density.Low, wet))
        {
            yield return $"stock.{stock.Name}.density.low {Text(units, density.Low)}: {at} {Text(units, wet)}; wood that is lighter than "
                + "said steadies the bridge less";
        }
        else if (Exceeds(density.InService, wet))
        {
            yield return $"stock.{stock.Name}.density.in_service {Text(units, density.InService)}: {at} {Text(units, wet)}; ropes that "
                + "carry less than said hang otherwise and hold the bridge less";
        }

        if (Exceeds(density.High, wettest))
        {
            yield return $"stock.{stock.Name}.density.high {Text(units, density.High)}: "
                + (stock.Treated ? $"freshly treated, {stock.Species} weighs about" : at) + $" {Text(units, wettest)}";
        }

        if (Exceeds(dry, Math.Min(density.Low, Math.Min(density.InService, density.High))))
        {
            yield return $"stock.{stock.Name}.density {Text(units, Math.Min(density.Low, Math.Min(density.InService, density.High)))}: "
                + $"{stock.Species} without any water weighs {Text(units, dry)}; wood that is heavier than said pulls the ropes harder";
        }
    }

    private static bool Exceeds(double density, double limit) => density > limit * (1 + Tolerances.SameLimit);

    private static string Text(UnitSystem units, double density) => units == UnitSystem.Metric
        ? NumberText.By("0", density) + " kg/m3"
        : NumberText.By("0.#", density / Units.KilogramsPerPound * Elementary.Pow(Units.MetresPerFoot, 3)) + " lb/ft3";
}
