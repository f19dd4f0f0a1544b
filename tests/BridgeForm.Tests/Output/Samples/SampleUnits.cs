using System.Globalization;
using BridgeForm.Output;
using BridgeForm.Quantities;

namespace BridgeForm.Tests.Output.Samples;

/// <summary>Plain formats to test the writers with.</summary>
internal static class SampleUnits
{
    public static DisplayUnits Imperial { get; } = new(
        UnitSystem.Imperial,
        m => Text(m / 0.0254, "0.####") + " in",
        a => Text(a * 180 / Math.PI, "0.0") + "°",
        kg => Text(kg / 0.45359237, "0.0") + " lb");

    public static DisplayUnits Metric { get; } = new(
        UnitSystem.Metric,
        m => Text(m * 1000, "0.#") + " mm",
        a => Text(a * 180 / Math.PI, "0.0") + "°",
        kg => Text(kg, "0.0") + " kg");

    private static string Text(double value, string format) => value.ToString(format, CultureInfo.InvariantCulture);
}
