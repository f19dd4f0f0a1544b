using System.Globalization;
using BridgeForm.Project;
using BridgeForm.Quantities;

namespace BridgeForm.Proposals;

/// <summary>Values as people write them into a project file, rounded to what a builder sets.</summary>
internal static class Written
{
    private const double Inch = Units.MetresPerInch;

    /// <summary>A thousandth of the span: what a sag is written to.</summary>
    public const double SagStep = 0.001;

    /// <summary>Step of distances between ropes and of bases' lengths, metres: 1 in or 10 mm.</summary>
    public static double Coarse(UnitSystem units) => units == UnitSystem.Metric ? 0.01 : Inch;

    /// <summary>Step of distances between frames, and of what stands on them, metres: 1/4 in or 5 mm.</summary>
    public static double Fine(UnitSystem units) => units == UnitSystem.Metric ? 0.005 : Inch / 4;

    /// <summary>Step of channels, metres: 1/16 in or 1 mm.</summary>
    public static double Finest(UnitSystem units) => Rounding.Step(units);

    /// <summary>A length that is a whole number of steps already, in inches or millimetres.</summary>
    public static string Length(UnitSystem units, double metres) => new QuantityText(units).Size(metres);

    /// <summary>A sag in metres as a share of the span, to the step above.</summary>
    public static string Sag(BridgeParameters parameters, double metres) => QuantityText.Share(
        Rounding.Steps(metres / parameters.Site.Span, SagStep) * SagStep);

    /// <summary>A whole number.</summary>
    public static string Count(int count) => count.ToString(CultureInfo.InvariantCulture);
}
