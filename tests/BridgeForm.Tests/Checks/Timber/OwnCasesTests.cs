using BridgeForm.Checks;
using BridgeForm.Tests.Checks.Catalogue;

namespace BridgeForm.Tests.Checks.Timber;

/// <summary>What the user's own cases and values ask of wood.</summary>
public sealed class OwnCasesTests
{
    // 150 psf on a part of the deck is 150 psf on the boards and bases there, whichever key it stands under.
    [Theory]
    [InlineData("board-bending-area")]
    [InlineData("base-channel-shear")]
    [InlineData("board-bearing")]
    public void Live_load_of_an_own_case_reaches_boards_and_bases(string id)
    {
        var own = Loaded("live: 40 psf, point: { force: 0 lbf }, cases: [{ id: herd, live: 150 psf, from: 2 ft, to: 6 ft }]").Check(id);
        var live = Loaded("live: 150 psf, point: { force: 0 lbf }").Check(id);
        var little = Loaded("live: 40 psf, point: { force: 0 lbf }").Check(id);
        Assert.InRange(own.Ratio!.Value / live.Ratio!.Value, 0.9, 1.001);
        Assert.True(own.Ratio > 1.2 * little.Ratio, $"{own.Ratio} {little.Ratio}");
    }

    // 900 lbf on one board bend it three times as far as 300.
    [Fact]
    public void Point_load_of_an_own_case_reaches_boards()
    {
        var own = Loaded("point: { force: 300 lbf }, cases: [{ id: pony, force: 900 lbf }]").Check("board-deflection-point");
        var usual = Loaded("point: { force: 300 lbf }").Check("board-deflection-point");
        Assert.Equal(3 * usual.Demand, own.Demand, 1e-9);
        Assert.Contains("900 lbf", own.Detail, StringComparison.Ordinal);
    }

    // The user's own row goes first, also where it is for all dimension lumber and the table has one for 2x6.
    [Theory]
    [InlineData("dimension")]
    [InlineData("2x6")]
    public void Own_values_go_before_the_tables(string size)
    {
        var check = (Loaded("point: { force: 300 lbf }") with
        {
            More = $$"""
                loads: { point: { force: 300 lbf } }
                values:
                  - { species: southern-pine, grade: no1, size: {{size}}, bending: 100 psi, tension: 100 psi, shear: 100 psi, compression_across: 300 psi, compression: 500 psi, modulus: 1000 ksi, source: the mill }
                """,
        }).Check("board-bending-point");
        Assert.Equal(CheckStatus.Fail, check.Status);
        Assert.Contains("Fb' = 100 psi", check.Detail, StringComparison.Ordinal);
        Assert.Contains("the mill", check.Source, StringComparison.Ordinal);
    }

    private static TwoBays Loaded(string loads) => new() { More = $"loads: {{ {loads} }}" };
}
