using System.Collections.Immutable;
using System.Globalization;

namespace BridgeForm.Materials;

/// <summary>
/// Dressed sizes of softwood lumber by nominal size, voluntary product standard PS 20 (sizes as published in trade
/// tables; the standard itself was not seen). Dry sizes are meant unless a name ends in <c>green</c>.
/// </summary>
public static class Lumber
{
    /// <summary>Where the sizes come from.</summary>
    public const string Source = "PS 20, as published in trade tables; green widths of boards and of lumber 2 to 4 in thick from memory";

    private const double MetresPerInch = Quantities.Units.MetresPerInch;
    private const double InchesPerFoot = 12;
    private const double MetresPerFoot = Quantities.Units.MetresPerFoot;

    private static readonly ImmutableArray<double> Thicknesses = [1, 1.25, 2, 3, 4, 5, 6, 8, 10, 12, 14, 16];
    private static readonly ImmutableArray<double> Widths = [2, 3, 4, 5, 6, 8, 10, 12, 14, 16];

    /// <summary>Names of the nominal sizes, thinnest first: <c>1x2</c> … <c>5/4x6</c> … <c>16x16</c>.</summary>
    public static ImmutableArray<string> Names { get; } =
        [.. Thicknesses.SelectMany(t => Widths.Where(w => w >= t).Select(w => NominalName(t, w)))];

    /// <summary>The dressed section of a nominal size in inches (1.25 for 5/4), or null when the standard has none.</summary>
    public static Section? Nominal(double thickness, double width, bool green)
    {
        var (thin, wide) = thickness <= width ? (thickness, width) : (width, thickness);
        if (!Thicknesses.Contains(thin) || !Widths.Contains(wide))
        {
            return null;
        }

        return new Section(
            NominalName(thin, wide) + (green ? " green" : ""),
            DressedWidth(thin, wide, green) * MetresPerInch,
            DressedThickness(thin, green) * MetresPerInch)
        {
            NominalThickness = thin,
            NominalWidth = wide,
        };
    }

    /// <summary>
    /// Board feet in a length: nominal thickness × width in inches × feet / 12, a thickness below 1 in counting as 1 in.
    /// A section without nominal sizes is counted by its dressed ones.
    /// </summary>
    public static double BoardFeet(Section section, double metres)
    {
        var thickness = section.NominalThickness > 0 ? section.NominalThickness : section.Thickness / MetresPerInch;
        var width = section.NominalWidth > 0 ? section.NominalWidth : section.Width / MetresPerInch;
        return Math.Max(thickness, 1) * width / InchesPerFoot * (metres / MetresPerFoot);
    }

    private static string NominalName(double thickness, double width) => string.Create(
        CultureInfo.InvariantCulture, $"{(thickness is > 1 and < 2 ? "5/4" : thickness)}x{width}");

    private static double DressedThickness(double nominal, bool green) => nominal switch
    {
        1 when green => 25.0 / 32,
        1 => 0.75,
        < 2 when green => 1 + (1.0 / 32),
        < 2 => 1,
        < 5 when green => nominal - 0.5 + (1.0 / 16),
        < 5 => nominal - 0.5,
        _ => Timber(nominal, green),
    };

    private static double DressedWidth(double thickness, double nominal, bool green) =>
        thickness >= 5 ? Timber(nominal, green) : DimensionWidth(nominal, green);

    // Green widths of boards and dimension lumber are from memory.
    private static double DimensionWidth(double nominal, bool green) => nominal switch
    {
        < 5 => nominal - 0.5 + (green ? 1.0 / 16 : 0),
        < 7 => nominal - 0.5 + (green ? 1.0 / 8 : 0),
        _ => nominal - (green ? 0.5 : 0.75),
    };

    // Dry timbers since the 2010 edition: 1/2 in less up to 6, 3/4 in above, 1 in from 16 on. Green timbers: 1/2 in less.
    private static double Timber(double nominal, bool green) => nominal switch
    {
        _ when green => nominal - 0.5,
        < 7 => nominal - 0.5,
        < 16 => nominal - 0.75,
        _ => nominal - 1,
    };
}
