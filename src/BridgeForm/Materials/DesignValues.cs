using System.Collections.Immutable;

namespace BridgeForm.Materials;

/// <summary>
/// Reference design values of the NDS Supplement for a few species and grades, and the classes of EN 338. Rows not seen in print say
/// "from memory";
/// a project's own <c>values</c> go before them.
/// </summary>
public static class DesignValues
{
    private const double PascalsPerPsi = Quantities.Units.PoundForce / (Quantities.Units.MetresPerInch * Quantities.Units.MetresPerInch);
    private const string Table4A = "NDS Supplement Table 4A";
    private const string Table4AMemory = "NDS Supplement Table 4A, from memory";
    private const string PineGuide = "Southern Pine Use Guide (values from June 2013)";
    private const string Table4D = "NDS Supplement Table 4D, figured back from published LRFD values";
    private const string Table4DMemory = "NDS Supplement Table 4D, from memory";

    /// <summary>All rows.</summary>
    public static ImmutableArray<DesignValue> All { get; } =
        [.. Dimension(), .. SouthernPine(), .. Timbers(), .. StrengthClass.All.Select(c => c.Row)];

    /// <summary>
    /// The row for a species, grade and section; null when the table has none. A class of EN 338 is the same whatever the species.
    /// </summary>
    public static DesignValue? Find(IEnumerable<DesignValue> rows, string species, string grade, Section section)
    {
        var sizes = SizesOf(section);
        var fitting = rows.Where(r => Same(r.Species, species) && Same(r.Grade, grade)).ToList();
        return sizes.Append(SizeClass.Any).Select(size => fitting.Find(r => Same(r.Size, size))).FirstOrDefault(r => r is not null)
            ?? rows.FirstOrDefault(r => r.IsCharacteristic && Same(r.Grade, grade) && StrengthClass.Suits(r.Species, species));
    }

    /// <summary>
    /// The row of No. 3 dimension lumber of a species, by which lumber thinner than 2 in is reckoned whatever its grade; null when
    /// the table has none.
    /// </summary>
    public static DesignValue? ForBoard(IEnumerable<DesignValue> rows, string species, Section section)
    {
        string[] sizes = [FormattableString.Invariant($"2x{TableWidth(NominalSize.Of(section).Width)}"), SizeClass.Dimension];
        var fitting = rows.Where(r => Same(r.Species, species) && Same(r.Grade, "no3")).ToList();
        return sizes.Select(size => fitting.Find(r => Same(r.Size, size))).FirstOrDefault(r => r is not null);
    }

    // Tables print 4 in and narrower as one width, then 6, 8, 10 and 12.
    private static double TableWidth(double width) => width <= 4 ? 4 : Math.Ceiling(width / 2) * 2;

    // From the most particular to the most general.
    private static ImmutableArray<string> SizesOf(Section section)
    {
        var size = NominalSize.Of(section);
        var (thickness, width) = size;
        if (size.IsTimber)
        {
            return [section.Name, width - thickness > 2 ? SizeClass.Beams : SizeClass.Posts, SizeClass.Timbers];
        }

        var byWidth = FormattableString.Invariant($"2x{width}");
        return size.IsBoard ? [section.Name] : [section.Name, byWidth, SizeClass.Dimension];
    }

    private static bool Same(string a, string b) => string.Equals(a, b, StringComparison.OrdinalIgnoreCase);

    private static IEnumerable<DesignValue> Dimension() =>
    [
        Row("douglas-fir-larch", "ss", SizeClass.Dimension, 1500, 1000, 180, 625, 1700, 1.9e6, 690e3, Table4AMemory),
        Row("douglas-fir-larch", "no1", SizeClass.Dimension, 1000, 675, 180, 625, 1500, 1.7e6, 620e3, Table4A),
        Row("douglas-fir-larch", "no2", SizeClass.Dimension, 900, 575, 180, 625, 1350, 1.6e6, 580e3, Table4A),
        Row("douglas-fir-larch", "no3", SizeClass.Dimension, 525, 325, 180, 625, 775, 1.4e6, 510e3, Table4AMemory),
        Row("hem-fir", "no1", SizeClass.Dimension, 975, 625, 150, 405, 1350, 1.5e6, 550e3, Table4A),
        Row("hem-fir", "no2", SizeClass.Dimension, 850, 525, 150, 405, 1300, 1.3e6, 470e3, Table4A),
        Row("hem-fir", "no3", SizeClass.Dimension, 500, 300, 150, 405, 725, 1.2e6, 440e3, Table4AMemory),
        Row("spruce-pine-fir", "no1", SizeClass.Dimension, 875, 450, 135, 425, 1150, 1.4e6, 510e3, Table4A),
        Row("spruce-pine-fir", "no2", SizeClass.Dimension, 875, 450, 135, 425, 1150, 1.4e6, 510e3, Table4A),
        Row("spruce-pine-fir", "no3", SizeClass.Dimension, 500, 250, 135, 425, 650, 1.2e6, 440e3, Table4AMemory),
        Row("western-red-cedar", "ss", SizeClass.Dimension, 1000, 600, 155, 425, 1000, 1.1e6, 400e3, Table4AMemory),
        Row("western-red-cedar", "no1", SizeClass.Dimension, 725, 425, 155, 425, 825, 1.0e6, 370e3, Table4A),
        Row("western-red-cedar", "no2", SizeClass.Dimension, 700, 425, 155, 425, 650, 1.0e6, 370e3, Table4A),
        Row("western-red-cedar", "no3", SizeClass.Dimension, 400, 250, 155, 425, 375, 0.9e6, 330e3, Table4AMemory),
    ];

    private static IEnumerable<DesignValue> SouthernPine() =>
    [
        Pine("ss", "2x4", 2350, 1650, 1900, 1.8e6, 660e3),
        Pine("ss", "2x6", 2100, 1450, 1800, 1.8e6, 660e3),
        Pine("ss", "2x8", 1950, 1350, 1700, 1.8e6, 660e3),
        Pine("ss", "2x10", 1700, 1150, 1650, 1.8e6, 660e3),
        Pine("ss", "2x12", 1600, 1100, 1650, 1.8e6, 660e3),
        Pine("no1", "2x4", 1500, 1000, 1650, 1.6e6, 580e3),
        Pine("no1", "2x6", 1350, 875, 1550, 1.6e6, 580e3),
        Pine("no1", "2x8", 1250, 800, 1500, 1.6e6, 580e3),
        Pine("no1", "2x10", 1050, 700, 1450, 1.6e6, 580e3),
        Pine("no1", "2x12", 1000, 650, 1400, 1.6e6, 580e3),
        Pine("no2", "2x4", 1100, 675, 1450, 1.4e6, 510e3),
        Pine("no2", "2x6", 1000, 600, 1400, 1.4e6, 510e3),
        Pine("no2", "2x8", 925, 550, 1350, 1.4e6, 510e3),
        Pine("no2", "2x10", 800, 475, 1300, 1.4e6, 510e3),
        Pine("no2", "2x12", 750, 450, 1250, 1.4e6, 510e3),
        Pine("no3", "2x4", 650, 400, 850, 1.3e6, 470e3),
        Pine("no3", "2x6", 575, 350, 800, 1.3e6, 470e3),
        Pine("no3", "2x8", 525, 325, 775, 1.3e6, 470e3),
        Pine("no3", "2x10", 475, 275, 750, 1.3e6, 470e3),
        Pine("no3", "2x12", 450, 250, 725, 1.3e6, 470e3),
    ];

    private static IEnumerable<DesignValue> Timbers() =>
    [
        Row("douglas-fir-larch", "no1", SizeClass.Beams, 1350, 675, 170, 625, 925, 1.6e6, null, Table4D),
        Row("douglas-fir-larch", "no1", SizeClass.Posts, 1200, 825, 170, 625, 1000, 1.6e6, null, Table4D),
        Row("western-red-cedar", "no1", SizeClass.Beams, 975, 475, 140, 425, 725, 1.0e6, null, Table4DMemory),
        Row("western-red-cedar", "no1", SizeClass.Posts, 875, 600, 140, 425, 800, 1.0e6, null, Table4DMemory),
        Row("western-red-cedar", "no2", SizeClass.Beams, 625, 325, 140, 425, 475, 0.8e6, null, Table4DMemory),
        Row("western-red-cedar", "no2", SizeClass.Posts, 500, 350, 140, 425, 375, 0.8e6, null, Table4DMemory),
        Row("southern-pine", "no1", SizeClass.Timbers, 1350, 900, 165, 375, 825, 1.5e6, null, Table4DMemory) with { Wet = true },
        Row("southern-pine", "no2", SizeClass.Timbers, 850, 550, 165, 375, 525, 1.2e6, null, Table4DMemory) with { Wet = true },
    ];

    private static DesignValue Pine(string grade, string size, double fb, double ft, double fc, double e, double emin) =>
        Row("southern-pine", grade, size, fb, ft, 175, 565, fc, e, emin, PineGuide) with { SizeAdjusted = true };

    // Arguments in psi.
    private static DesignValue Row(
        string species, string grade, string size, double fb, double ft, double fv, double across, double fc, double e, double? emin,
        string source) => new()
        {
            Species = species,
            Grade = grade,
            Size = size,
            Bending = fb * PascalsPerPsi,
            Tension = ft * PascalsPerPsi,
            Shear = fv * PascalsPerPsi,
            CompressionAcross = across * PascalsPerPsi,
            Compression = fc * PascalsPerPsi,
            Modulus = e * PascalsPerPsi,
            ModulusMin = emin * PascalsPerPsi,
            Source = source,
        };
}
