using BridgeForm.Loads;
using BridgeForm.Quantities;

namespace BridgeForm.Output.Tables;

/// <summary>
/// <c>hoisting.csv</c>: what a crew sets the ropes by, for each stage and temperature: sag at mid-span, the mark for a line
/// of sight below the rope's point at each support, and the pull. Rows for rope that has yet to stretch follow.
/// </summary>
public static class HoistingSheet
{
    private static readonly string[] Head =
    [
        "Stage", "Rope", "Temperature", "Temperature (C)", "Sag at mid-span", "Sag at mid-span (mm)",
        "Sight line below the rope at A and at B", "Sight line below the rope at A and at B (mm)",
        "Sight line at A, height", "Sight line at A, height (mm)", "Sight line at B, height", "Sight line at B, height (mm)",
        "Horizontal pull of one rope", "Horizontal pull of one rope (kN)", "Largest pull of one rope", "Largest pull of one rope (kN)",
    ];

    /// <summary>The table as text; heights from support A's rope axis.</summary>
    /// <param name="model">The bridge.</param>
    /// <param name="units">Sizes in inches and sixteenths, or millimetres.</param>
    /// <param name="temperature">Text of a temperature in °C.</param>
    public static string Csv(BridgeModel model, PeopleUnits units, Func<double, string> temperature)
    {
        var rise = model.Rope.Nodes[^1].Y;
        var plain = model.Hoisting.Select(r => Row(r, "set to the plain marks", rise, units, temperature));
        var stretched = model.Ropework.Stretch.SelectMany(s => s.Hoisting.Rows.Select(r =>
            Row(r, $"new, set short by {Numbers.Fixed(s.Share * 100, 2)} % of stretch to come", rise, units, temperature)));
        return CsvText.Of(Head, [.. plain, .. stretched]);
    }

    private static IReadOnlyList<string> Row(
        HoistingRow row, string rope, double rise, PeopleUnits units, Func<double, string> temperature) =>
    [
        row.Stage,
        rope,
        temperature(row.Temperature),
        Numbers.Fixed(row.Temperature, 1),
        .. Both(row.Sag, units),
        .. Both(row.Sight, units),
        .. Both(-row.Sight, units),
        .. Both(rise - row.Sight, units),
        .. Pull(row.Horizontal, units),
        .. Pull(row.MaxTension, units),
    ];

    private static IReadOnlyList<string> Pull(double newtons, PeopleUnits units) =>
        [new QuantityText(units.System).Force(newtons), Numbers.Fixed(newtons / 1000, 3)];

    private static IReadOnlyList<string> Both(double metres, PeopleUnits units) =>
        [units.Length(metres), Numbers.Fixed(metres * 1000, 1)];
}
