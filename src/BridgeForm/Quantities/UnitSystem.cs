namespace BridgeForm.Quantities;

/// <summary>Units that people read in printed matter.</summary>
public enum UnitSystem
{
    /// <summary>Feet, inches and sixteenths, pounds.</summary>
    Imperial,

    /// <summary>Millimetres, kilograms, kilonewtons.</summary>
    Metric,
}
