namespace BridgeForm.Materials;

/// <summary>Nominal sizes in inches, by which the NDS sorts its values and factors.</summary>
/// <param name="Thickness">The smaller one.</param>
/// <param name="Width">The larger one.</param>
internal readonly record struct NominalSize(double Thickness, double Width)
{
    private const double Inch = Quantities.Units.MetresPerInch;

    // Dressed sizes in millimetres are rounded from inches: 38 mm is 1-1/2 in.
    private const double Rounding = 0.5e-3;

    // Dimension lumber is dressed to 1-1/2 in at least; what is thinner is a board, whatever inch it rounds up to.
    private const double ThinnestDimension = 0.038 - Rounding;

    /// <summary>
    /// Of a section: as it is named, or its dressed sizes rounded up to whole inches; a dressed thickness below 38 mm counts
    /// as a board of 1 in.
    /// </summary>
    public static NominalSize Of(Section section) => new(
        section.NominalThickness > 0 ? section.NominalThickness : section.Thickness < ThinnestDimension ? 1 : RoundedUp(section.Thickness),
        section.NominalWidth > 0 ? section.NominalWidth : RoundedUp(section.Width));

    /// <summary>5 in and thicker: Table 4D.</summary>
    public bool IsTimber => Thickness >= 5;

    /// <summary>Thinner than 2 in: no table of the NDS Supplement has values for it.</summary>
    public bool IsBoard => Thickness < 2;

    private static double RoundedUp(double dressed) => Math.Ceiling((dressed - Rounding) / Inch);
}
