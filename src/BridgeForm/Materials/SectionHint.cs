using System.Collections.Immutable;
using BridgeForm.Quantities;

namespace BridgeForm.Materials;

/// <summary>The nominal size that was probably meant where two numbers name none.</summary>
internal static class SectionHint
{
    private const double Inch = Units.MetresPerInch;

    // Metric boards are named in whole millimetres: 38 x 89 for 38.1 x 88.9.
    private const double NamedMillimetres = 0.6e-3;

    // Sides in decimals of an inch, as 1.56 for 1-9/16.
    private const double NamedInches = 0.005 * Inch;

    // Two numbers beyond every nominal size are millimetres.
    private const double LargestNominal = 16;

    // Farther than this from every size it is no slip of the pen.
    private const double Farthest = 2;

    private static readonly ImmutableArray<Section> s_sizes = [.. Lumber.Names.Select(n => SectionReader.Read(n).Section!)];

    /// <summary>
    /// In words: the size whose actual sides these numbers are, in inches or millimetres; else the same in millimetres, where no size
    /// is so large; else the nearest sizes; null for none.
    /// </summary>
    /// <param name="first">A side, as written.</param>
    /// <param name="second">The other side.</param>
    public static string? Find(double first, double second)
    {
        var (thin, wide) = first <= second ? (first, second) : (second, first);
        if (Actual(thin * Inch, wide * Inch, NamedInches) is { } inches)
        {
            return $"those are the actual inches of {inches.Name}; did you mean {inches.Name}?";
        }

        if (Actual(thin / 1000, wide / 1000, NamedMillimetres) is { } millimetres)
        {
            return $"those are the actual millimeters of {millimetres.Name}; did you mean {millimetres.Name}?";
        }

        if (thin > LargestNominal)
        {
            return $"did you mean {NumberText.Rounded(first, 1)} x {NumberText.Rounded(second, 1)} mm?";
        }

        var least = s_sizes.Min(s => Distance(s, thin, wide));
        return least <= Farthest
            ? $"did you mean {Alternatives.Text([.. s_sizes.Where(s => Distance(s, thin, wide) <= least).Select(s => s.Name)])}?"
            : null;
    }

    private static Section? Actual(double thin, double wide, double within) =>
        s_sizes.FirstOrDefault(s => Math.Abs(s.Thickness - thin) <= within && Math.Abs(s.Width - wide) <= within);

    private static double Distance(Section size, double thin, double wide) =>
        Math.Abs(size.NominalThickness - thin) + Math.Abs(size.NominalWidth - wide);
}
