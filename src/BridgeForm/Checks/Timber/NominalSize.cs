using BridgeForm.Materials;

namespace BridgeForm.Checks;

/// <summary>Nominal sizes in inches, by which the NDS sorts its factors; dressed sizes are rounded up to them.</summary>
/// <param name="Thickness">The smaller one.</param>
/// <param name="Width">The larger one.</param>
internal readonly record struct NominalSize(double Thickness, double Width)
{
    private const double Inch = 0.0254;

    /// <summary>Of a section, as the table of design values reads it.</summary>
    public static NominalSize Of(Section section) => new(
        section.NominalThickness > 0 ? section.NominalThickness : Math.Ceiling(section.Thickness / Inch),
        section.NominalWidth > 0 ? section.NominalWidth : Math.Ceiling(section.Width / Inch));

    /// <summary>5 in and thicker: Table 4D.</summary>
    public bool IsTimber => Thickness >= 5;

    /// <summary>Thinner than 2 in: no table of the NDS Supplement has values for it.</summary>
    public bool IsBoard => Thickness < 2;
}
