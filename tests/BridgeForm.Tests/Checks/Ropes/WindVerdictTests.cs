using BridgeForm.Checks;
using BridgeForm.Loads;
using BridgeForm.Quantities;

namespace BridgeForm.Tests.Checks.Ropes;

/// <summary>What stands beside the verdict of the finished bridge in the wind, with 0.6 of its own weight.</summary>
public sealed class WindVerdictTests
{
    private const double Psf = Units.PoundForce / (0.3048 * 0.3048);

    [Fact]
    public void It_turns_over_between_two_pressures() => Assert.Equal(
        "without side stays it turns over between 4 psf and 5 psf, nobody on it; side stays are for a licensed engineer (wind-swing)",
        Verdict.WindText(Of(false, 4 * Psf, 5 * Psf), UnitSystem.Imperial));

    [Fact]
    public void It_stands_in_what_was_asked() => Assert.Equal(
        "stands in 20 psf, nobody on it; for a licensed engineer (wind-swing)",
        Verdict.WindText(Of(true, 20 * Psf, null), UnitSystem.Imperial));

    [Fact]
    public void There_is_no_equilibrium() =>
        Assert.Contains("not even in the calm", Verdict.WindText(Of(false, null, null), UnitSystem.Metric), StringComparison.Ordinal);

    [Fact]
    public void Nothing_was_looked_at() => Assert.Equal("", Verdict.WindText(WindWork.None, UnitSystem.Metric));

    // The other combination and the other stages stand in any wind.
    private static WindWork Of(bool stands, double? least, double? most) => new()
    {
        Pressure = 20 * Psf,
        States =
        [
            State(Hoisting.Frames, WindWork.Sure, true, 20 * Psf, null),
            State(WindWork.Finished, WindWork.All, true, 20 * Psf, null),
            State(WindWork.Finished, WindWork.Sure, stands, least, most),
        ],
    };

    private static WindState State(string stage, string combination, bool stands, double? least, double? most) => new()
    {
        Stage = stage,
        Combination = combination,
        Force = 1000,
        Ends = null,
        StandsTo = least,
        FallsAt = most,
        Stands = stands,
    };
}
