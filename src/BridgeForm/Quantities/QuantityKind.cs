namespace BridgeForm.Quantities;

/// <summary>What a quantity measures. The SI unit that readings are given in stands with each kind.</summary>
public enum QuantityKind
{
    /// <summary>Metres.</summary>
    Length,

    /// <summary>Radians.</summary>
    Angle,

    /// <summary>A share of a whole, 0.8 for 80 %.</summary>
    Share,

    /// <summary>Newtons.</summary>
    Force,

    /// <summary>Load on an area, pascals.</summary>
    Pressure,

    /// <summary>Strength or modulus, pascals.</summary>
    Stress,

    /// <summary>Kilograms.</summary>
    Mass,

    /// <summary>Kilograms per metre.</summary>
    MassPerLength,

    /// <summary>Kilograms per square metre.</summary>
    MassPerArea,

    /// <summary>Square metres.</summary>
    Area,

    /// <summary>Kilograms per cubic metre.</summary>
    Density,

    /// <summary>Area covered by a volume of liquid, square metres per cubic metre.</summary>
    Coverage,

    /// <summary>Degrees Celsius.</summary>
    Temperature,
}
