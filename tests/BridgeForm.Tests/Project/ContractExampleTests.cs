using BridgeForm.Project;
using BridgeForm.Quantities;

namespace BridgeForm.Tests.Project;

/// <summary>The example of the outside contract, against SI values converted by hand (1 in = 25.4 mm, 1 lbf = 4.44822 N).</summary>
public sealed class ContractExampleTests
{
    private const int Digits = 9;

    private readonly BridgeParameters p = Examples.Good(Examples.Contract);

    [Fact]
    public void Site_and_ropes_are_read()
    {
        Assert.Equal("Alder Dell (invented)", p.Name);
        Assert.Equal(UnitSystem.Imperial, p.Units);
        Assert.Equal(BridgeUse.Private, p.Use);
        Assert.Equal(9.144, p.Site.Span, Digits);
        Assert.Equal(0, p.Site.Rise, Digits);
        Assert.Equal(15.555555556, p.Site.ReferenceTemperature, Digits);
        Assert.Equal([-6.666666667, 37.777777778], p.Site.Temperatures.Select(t => Math.Round(t, Digits)));
        Assert.Equal("rope-6x19-iwrc-eips-galvanized-3/4", p.Ropes.Rope.Name);
        Assert.Equal(1.1176, p.Ropes.Spacing, Digits);
        Assert.Equal(0.54864, p.Ropes.Sag, Digits);
        Assert.Equal(0.8, p.Ropes.TerminationEfficiency!.Value, Digits);
        Assert.Equal(5, p.Ropes.SafetyFactor, Digits);
    }

    [Fact]
    public void Frames_are_read()
    {
        var f = p.Frames;
        Assert.Equal(0.9144, f.Spacing, Digits);
        Assert.Equal((FrameStep.Rope, Stance.Square), (f.Step, f.Stance));
        Assert.Equal(0.0889, f.Base.Depth, Digits);
        Assert.Equal(0.0889, f.Base.Along, Digits);
        Assert.Equal(1.4224, f.Base.Length, Digits);
        Assert.Equal(0.022225, f.Channel.Width, Digits); // 3/4 in + 1/8 in
        Assert.Equal(0.015875, f.Channel.Depth, Digits);
        Assert.Equal(0.01905, f.Channel.EndDepth, Digits);
        Assert.Equal(1.016, f.Post.Length, Digits);
        Assert.Equal(0.139626340, f.Post.Lean, Digits);
        Assert.Equal(0.45085, f.Post.Foot, Digits);
        Assert.Equal(0.6985, f.Brace.Foot, Digits);
        Assert.Equal(0.0635, f.Keeper.Spread, Digits);
        Assert.Equal(1.36077711, f.HardwareMass, Digits);
    }

    // n_o = (27.5 − 17.75 − 3.5 / cos 8°) / (tan 8° + tan 12°), long edge n_o / cos 12°: worked apart with a calculator.
    [Fact]
    public void Length_of_the_brace_follows_from_its_foot() => Assert.Equal(0.457107250, p.Frames.Brace.Length, Digits);

    [Fact]
    public void Deck_guard_loads_stock_and_shop_are_read()
    {
        Assert.Null(p.Deck.Count);
        Assert.Null(p.Deck.Stringer);
        Assert.Equal(0.1397, p.Deck.Board.Width, Digits);
        Assert.Equal(0.00635, p.Deck.Gap, Digits);
        Assert.Equal(6, p.Guard.RailCount);
        Assert.Equal(0.01905, p.Guard.Rail.Thickness, Digits);
        Assert.Equal(2872.815539, p.Loads.Live, 6);
        Assert.Equal(1334.466485, p.Loads.PointForce, 6);
        Assert.Equal(0.6, p.Loads.Eccentricity, Digits);
        Assert.Equal("treated, cedar", string.Join(", ", p.Stock.Select(s => s.Name)));
        Assert.Equal([2.4384, 3.048, 3.6576, 4.8768], p.StockNamed("treated").Lengths.Select(l => Math.Round(l, Digits)));
        Assert.True(p.StockNamed("cedar").Durable);
        Assert.Equal(0.872664626, p.Shop.MitreLimit, Digits);
        Assert.Equal(0.0005, p.Shop.Tolerance, Digits);
        Assert.Equal("letter", p.Shop.Paper);
        Assert.Equal("prices.csv", p.Prices);
    }
}
