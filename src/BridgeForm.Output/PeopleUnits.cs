using BridgeForm.Quantities;

namespace BridgeForm.Output;

/// <summary>How numbers are written for people in printed matter: in feet and inches, or in millimetres.</summary>
/// <param name="System">Unit system; also decides the unit of DXF coordinates.</param>
/// <param name="Length">Text of a length in metres.</param>
/// <param name="Angle">Text of an angle in radians, with its degree sign.</param>
/// <param name="Mass">Text of a mass in kilograms.</param>
public sealed record PeopleUnits(
    UnitSystem System, Func<double, string> Length, Func<double, string> Angle, Func<double, string> Mass)
{
    /// <summary>The units of a project: sizes of parts in inches and sixteenths, or millimetres.</summary>
    public static PeopleUnits Of(UnitSystem system)
    {
        var text = new QuantityText(system);
        return new PeopleUnits(system, text.Size, QuantityText.Degrees, text.Mass);
    }
}
