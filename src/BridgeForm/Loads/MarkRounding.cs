using BridgeForm.Quantities;

namespace BridgeForm.Loads;

/// <summary>
/// Marks as a tape is read: to 1/16 in or 1 mm. Each is rounded from its own exact place, so that no error adds up along
/// the rope; the step to a neighbour is the difference of two rounded marks.
/// </summary>
public static class MarkRounding
{
    private const double Sixteenth = 0.0254 / 16;
    private const double Millimetre = 0.001;

    /// <summary>The step of the tape, metres.</summary>
    public static double Step(UnitSystem units) => units == UnitSystem.Metric ? Millimetre : Sixteenth;

    /// <summary>The nearest reading of the tape, metres; halves away from zero.</summary>
    public static double Rounded(double metres, UnitSystem units) =>
        Math.Round(metres / Step(units), MidpointRounding.AwayFromZero) * Step(units);
}
