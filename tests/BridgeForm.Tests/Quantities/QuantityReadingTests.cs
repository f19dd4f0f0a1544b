using BridgeForm.Quantities;

namespace BridgeForm.Tests.Quantities;

/// <summary>Other quantities; factors from NIST SP 811 appendix B, to the digits printed there.</summary>
public sealed class QuantityReadingTests
{
    private const double Printed = 1e-6;

    [Theory]
    [InlineData(QuantityKind.Angle, "10 deg", 0.17453293)]
    [InlineData(QuantityKind.Angle, "10°", 0.17453293)]
    [InlineData(QuantityKind.Angle, "0.2 rad", 0.2)]
    [InlineData(QuantityKind.Angle, "7-1/2 degrees", 0.13089969)]
    [InlineData(QuantityKind.Share, "80 %", 0.8)]
    [InlineData(QuantityKind.Share, "6%", 0.06)]
    [InlineData(QuantityKind.Pressure, "60 psf", 2872.8156)]
    [InlineData(QuantityKind.Pressure, "2.9 kPa", 2900)]
    [InlineData(QuantityKind.Pressure, "100 Pa", 100)]
    [InlineData(QuantityKind.Pressure, "1 psi", 6894.757)]
    [InlineData(QuantityKind.Stress, "15000 ksi", 1.0342136e11)]
    [InlineData(QuantityKind.Stress, "100 GPa", 1e11)]
    [InlineData(QuantityKind.Stress, "1600000 psi", 1.1031612e10)]
    [InlineData(QuantityKind.Force, "300 lbf", 1334.4665)]
    [InlineData(QuantityKind.Force, "300 lb", 1334.4665)]
    [InlineData(QuantityKind.Force, "1.3 kN", 1300)]
    [InlineData(QuantityKind.Force, "-5 N", -5)]
    [InlineData(QuantityKind.Mass, "3 lb", 1.3607771)]
    [InlineData(QuantityKind.Mass, "1.4 kg", 1.4)]
    [InlineData(QuantityKind.MassPerLength, "1.04 lb/ft", 1.5476906)]
    [InlineData(QuantityKind.MassPerLength, "1.55 kg/m", 1.55)]
    [InlineData(QuantityKind.Area, "0.27 in2", 1.741932e-4)]
    [InlineData(QuantityKind.Area, "175 mm²", 1.75e-4)]
    [InlineData(QuantityKind.MassPerArea, "0.1 lb/ft2", 0.48824276)]
    [InlineData(QuantityKind.MassPerArea, "500 g/m2", 0.5)]
    [InlineData(QuantityKind.Density, "35 lb/ft3", 560.64617)]
    [InlineData(QuantityKind.Density, "530 kg/m3", 530)]
    [InlineData(QuantityKind.Coverage, "100 ft2/gal", 2454.2385)]
    [InlineData(QuantityKind.Temperature, "60 F", 15.5555556)]
    [InlineData(QuantityKind.Temperature, "60 °F", 15.5555556)]
    [InlineData(QuantityKind.Temperature, "-40 F", -40)]
    [InlineData(QuantityKind.Temperature, "-4 F", -20)]
    [InlineData(QuantityKind.Temperature, "−5 C", -5)]
    [InlineData(QuantityKind.Temperature, "15 C", 15)]
    [InlineData(QuantityKind.Share, "1:12", 1.0 / 12)]
    [InlineData(QuantityKind.Share, "1 : 8", 0.125)]
    [InlineData(QuantityKind.Share, "1:12.5", 0.08)]
    public void Is_read(QuantityKind kind, string text, double si)
    {
        var reading = QuantityReader.Read(kind, text);
        Assert.Null(reading.Problem);
        Assert.Equal(si, reading.Value, Math.Abs(si) * Printed);
    }

    [Theory]
    [InlineData(QuantityKind.Angle, "10", "an angle is written with deg or rad")]
    [InlineData(QuantityKind.Share, "80", "a share is written with %, as in 80 %")]
    [InlineData(QuantityKind.Pressure, "60 psg", "did you mean psf?")]
    [InlineData(QuantityKind.Share, "2:12", "is not a unit of share; write %")]
    [InlineData(QuantityKind.Share, "1:0", "is not a unit of share; write %")]
    [InlineData(QuantityKind.Share, "1:12 %", "is not a unit of share; write %")]
    [InlineData(QuantityKind.Pressure, "60 kN", "is not a unit of pressure")]
    [InlineData(QuantityKind.Temperature, "60", "a temperature is written with F or C")]
    [InlineData(QuantityKind.Temperature, "60 K", "is not a unit of temperature")]
    [InlineData(QuantityKind.Force, "1e300 kN", "is out of range")]
    [InlineData(QuantityKind.Force, "1,000 lbf", "write the number without, '1000 lbf'")]
    [InlineData(QuantityKind.Force, "52 900 lbf", "write the number without, '52900 lbf'")]
    [InlineData(QuantityKind.Angle, "3 %", "'%' is not a unit of angle; write deg or rad")]
    [InlineData(QuantityKind.Mass, "three lb", "is not a mass")]
    public void Is_refused(QuantityKind kind, string text, string says)
    {
        var reading = QuantityReader.Read(kind, text);
        Assert.NotNull(reading.Problem);
        Assert.Contains(says, reading.Problem, StringComparison.Ordinal);
    }
}
