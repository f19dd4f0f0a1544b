using BridgeForm.Project.Definition;
using BridgeForm.Project.Reading;
using BridgeForm.Project.Reading.Faults;
using BridgeForm.Quantities;

namespace BridgeForm.Project;

/// <summary>
/// Limits of the builder's own, stricter than the program's; null where the program's stand. The program's are its own figures.
/// </summary>
public sealed record LimitParameters
{
    /// <summary>Roll factor below which a section fails: twice what theory asks of a perfect bridge.</summary>
    public const double RollFails = 2;

    /// <summary>Tilt of a frame under load above which anybody's bridge fails, radians.</summary>
    public const double PublicTiltFails = 5 * Math.PI / 180;

    /// <summary>Tilt of a frame under load above which a household's bridge fails, radians.</summary>
    public const double PrivateTiltFails = 8 * Math.PI / 180;

    /// <summary>Slope of the deck under load above which it fails, rise over run.</summary>
    public const double SlopeFails = 0.5;

    /// <summary>Least roll factor.</summary>
    public double? Roll { get; init; }

    /// <summary>Largest tilt of a frame under load, radians.</summary>
    public double? CrossSlope { get; init; }

    /// <summary>Steepest deck under load, rise over run.</summary>
    public double? Slope { get; init; }

    /// <summary>Tilt above which a bridge of that use fails, radians.</summary>
    public static double TiltFails(BridgeUse use) => use == BridgeUse.Public ? PublicTiltFails : PrivateTiltFails;
}

/// <summary>Keys under <c>limits</c>, how they are read, what they must agree on: they may only be stricter than the program's.</summary>
internal static class LimitSection
{
    private const string Tilt = "limits.cross_slope";

    public static KeySpec Keys => Define.Map(
        "limits",
        "Limits of your own; they may only be stricter than those of the checks",
        [
            Define.Number("roll", "Least roll factor: how many times as high the weights could stand over the ropes; the check fails below "
                + "2 without it", "2", "100"),
            Define.Quantity(QuantityKind.Angle, "cross_slope", "Largest tilt of the deck to one side under load; the check fails above 8 "
                + "deg (public use: 5 deg) without it", "0.1 deg", "8 deg"),
            Define.Quantity(QuantityKind.Share, "slope", "Steepest deck under load, rise over run (also as 1:12); the check fails above "
                + "50 % (1 : 2) without it", "1 %", "50 %"),
        ]);

    public static LimitParameters Read(FileValues v) => new()
    {
        Roll = v.NumberOrNull("limits.roll"),
        CrossSlope = v.NumberOrNull(Tilt),
        Slope = v.NumberOrNull("limits.slope"),
    };

    /// <summary>What a public bridge may not have, a file cannot allow it.</summary>
    public static void Check(CheckedFile f)
    {
        if (f.Values.Given(Tilt) && f.Good(Tilt) && f.Parameters.Use == BridgeUse.Public
            && f.Parameters.Limits.CrossSlope > LimitParameters.PublicTiltFails + Tolerances.RoundOff)
        {
            f.Stop(FaultCode.LimitLooser, Tilt, $"cross_slope: '{f.Written(Tilt)}' is looser than the limit for public use; at most 5 deg, "
                + "or leave it out");
        }
    }
}
