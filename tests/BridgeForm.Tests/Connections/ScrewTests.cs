using BridgeForm.Connections;
using BridgeForm.Quantities;

namespace BridgeForm.Tests.Connections;

/// <summary>Screws pulled out of side grain, against published values.</summary>
public sealed class ScrewTests
{
    private const double Inch = 0.0254;
    private const double Pound = Units.PoundForce;

    // AWC, Structural Wood Design Solved Example Problems, E2.3: lag screw 1/2 in, 4 in long through 1-1/2 in into southern pine, tip
    // 5/16 in: 437 lbf/in on 2.1875 in.
    [Fact]
    public void A_lag_screw_of_a_worked_example() =>
        Assert.Equal(955, ScrewPull.Out(ScrewSizes.Named("lag-1/2"), 0.55, 2.1875 * Inch) / Pound, 0.5);

    // NDS 2018 eq. 12.2-2 with a published number: G 0.45, No. 10, 109 lbf an inch (a handbook of engineering tables).
    [Fact]
    public void A_wood_screw_of_a_handbook() =>
        Assert.InRange(ScrewPull.Out(ScrewSizes.Named("no10"), 0.45, Inch) / Pound, 109, 110);

    // NDS 2018 Table L2: thread of lag screws of 3, 4 and 6 in is 2, 2-1/2 and 3-1/2 in with its tip; two thirds of a wood screw.
    [Theory]
    [InlineData("lag-1/2", 3, 2 - 0.3125)]
    [InlineData("lag-1/2", 4, 2.5 - 0.3125)]
    [InlineData("lag-1/4", 6, 3.5 - 0.15625)]
    [InlineData("no10", 3, 2)]
    public void Thread(string size, double length, double thread) =>
        Assert.Equal(thread * Inch, ScrewSizes.Named(size).Thread(length * Inch), 1e-9);

    // NDS 2018 Table I1: Fyb by diameter; the lag screws of Table 12J.
    [Theory]
    [InlineData("no8", 90_000)]
    [InlineData("no10", 80_000)]
    [InlineData("no14", 70_000)]
    [InlineData("lag-1/4", 70_000)]
    [InlineData("lag-5/16", 60_000)]
    [InlineData("lag-3/8", 45_000)]
    public void Yields(string size, double psi) => Assert.Equal(psi * DowelBearing.Psi, ScrewSizes.Named(size).Yield, 1);
}
