using BridgeForm.Quantities;

namespace BridgeForm.Output.Live;

/// <summary>A number from a slider or a handle, as a person would write it on the tape.</summary>
public static class PageQuantity
{
    private const double LongLength = 6 * Units.MetresPerFoot;
    private const double HalfDegree = Math.PI / 360;
    private const double Thousandth = 0.001;

    /// <summary>
    /// Lengths to 1/16 in or 1 mm, in feet and inches from 6 ft on; angles to half a degree; shares to a tenth of a per cent. Empty for
    /// kinds that no slider sets.
    /// </summary>
    /// <param name="kind">Kind of the quantity, in lower case.</param>
    /// <param name="number">In the kind's SI unit.</param>
    /// <param name="isMetric">Units of the file.</param>
    public static string Text(string kind, double number, bool isMetric)
    {
        var units = isMetric ? UnitSystem.Metric : UnitSystem.Imperial;
        return Enum.TryParse<QuantityKind>(kind, ignoreCase: true, out var known)
            ? known switch
            {
                QuantityKind.Length => Length(new QuantityText(units), Rounding.ToTape(number, units)),
                QuantityKind.Angle => QuantityText.Degrees(Rounding.Steps(number, HalfDegree) * HalfDegree),
                QuantityKind.Share => QuantityText.Share(Rounding.Steps(number, Thousandth) * Thousandth),
                _ => "",
            }
            : "";
    }

    private static string Length(QuantityText words, double metres) =>
        Math.Abs(metres) > LongLength - Tolerances.RoundOff ? words.Length(metres) : words.Size(metres);
}
