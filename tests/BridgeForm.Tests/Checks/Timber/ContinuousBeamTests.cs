using BridgeForm.Checks.Timber;

namespace BridgeForm.Tests.Checks.Timber;

/// <summary>Reactions of beams over several supports, and what they do to the stringers.</summary>
public sealed class ContinuousBeamTests
{
    // Coefficients of w·a over equal spans, in every table of beams: 3/8 10/8 3/8; 0.4 1.1 1.1 0.4; 11/28 32/28 26/28 32/28 11/28.
    [Theory]
    [InlineData(0.5, 0.5)]
    [InlineData(0.375, 1.25, 0.375)]
    [InlineData(0.4, 1.1, 1.1, 0.4)]
    [InlineData(11.0 / 28, 32.0 / 28, 26.0 / 28, 32.0 / 28, 11.0 / 28)]
    public void Even_load_over_equal_spans(params double[] expected)
    {
        var beam = new ContinuousBeam(expected.Length, 0.4);
        var found = beam.Shares(0, beam.Length).Select(s => s * (expected.Length - 1));
        Assert.All(expected.Zip(found), p => Assert.Equal(p.First, p.Second, 1e-9));
    }

    // A point load in the middle of the first of two spans: 13/32, 22/32, −3/32 (the same tables).
    [Fact]
    public void A_point_load_on_two_spans()
    {
        var shares = new ContinuousBeam(3, 1).Shares(0.5, 0.5);
        Assert.Equal(13.0 / 32, shares[0], 1e-5);
        Assert.Equal(22.0 / 32, shares[1], 1e-5);
        Assert.Equal(-3.0 / 32, shares[2], 1e-5);
    }

    // 36 in between the posts' feet of 18.25 in less 1/2 in side gaps: 35.5 in of treads, stringers 1.5 in thick 17 in apart.
    // The middle one carries 1.25 · 17 = 21.25 in of 60 psf: 60/144 · 21.25 = 8.854 lbf/in, w·L²/8.
    [Fact]
    public void The_middle_stringer_of_three_carries_five_quarters()
    {
        const double Inch = 0.0254;
        var text = Bridges.Garden
            + "\ndeck: { layout: across, side_gap: 1/2 in, stringer: { section: 2x6, count: 3 } }\nloads: { live: 60 psf }\n";
        var context = Contexts.Of(text);
        var stringer = DeckSpan.List(context).Single(d => d.Kind == "stringer");
        Assert.Equal(21.25, stringer.Tributary / Inch, 1e-6);
        var load = DeckLoad.List(context, stringer)[0];
        var span = stringer.Span.Length / Inch;
        Assert.Equal(60 / 144.0 * 21.25 * span * span / 8, load.Moment.Value / (BridgeForm.Quantities.Units.PoundForce * Inch), 0.01);
        Assert.Equal(60 / 144.0 * 21.25 * span / 2, load.Shear.Value / BridgeForm.Quantities.Units.PoundForce, 0.01);
    }

    // Three stringers 17 in apart on ropes 46 in apart: of a load W 3/16, 10/16, 3/16 at −17, 0, 17 in. In the middle
    // M = W/2 · 23 − 3/16·W · 17 = 8.3125 W in·lbf; spread over 36.5 in it would be W/8 · (2·46 − 36.5) = 6.94 W.
    [Fact]
    public void A_base_bears_a_deck_of_treads_at_its_stringers()
    {
        const double Inch = 0.0254;
        var text = Bridges.Garden + "\ndeck: { layout: across, side_gap: 1/2 in, stringer: { section: 2x6, count: 3 } }\n";
        var parameters = Bridges.Read(text);
        var foot = parameters.Frames.Post.Foot;
        var beam = new BaseBeam(23 * Inch, [], [], []).WithDeck(parameters, -foot, foot, 1000);
        Assert.Equal(8312.5, beam.Moment(0) / Inch, 0.01);
        Assert.Equal(500, beam.Reactions().Left, 1e-6);
    }

    // Dead 20 psf, live 60 psf (CD 1.0), snow 30 psf (CD 1.15): (20+60)/1.0 = 80 against (20+30)/1.15 = 43 and, both together
    // (ASCE 7 2.4.1 combination 4, from memory), (20 + 0.75·90)/1.15 = 76: live. With snow 68 psf (20 + 96)/1.15 = 101: both.
    [Theory]
    [InlineData(20, 60, 30, "live", "0.75 live + 0.75 snow")]
    [InlineData(20, 60, 8, "live", "live")]
    [InlineData(0, 10, 60, "snow", "snow")]
    [InlineData(20, 60, 68, "0.75 live + 0.75 snow", "0.75 live + 0.75 snow")]
    [InlineData(100, 60, 30, "live", "0.75 live + 0.75 snow")]
    public void Snow_and_people_are_compared_with_the_dead_load(double dead, double live, double snow, string strongest, string heaviest)
    {
        var loads = Bridges.Read(Bridges.Garden).Loads with { Live = live, Snow = snow };
        Assert.Equal(strongest, AreaLoad.Strongest(loads, dead, values: null).Name);
        Assert.Equal(heaviest, AreaLoad.Heaviest(loads).Name);
    }

    [Fact]
    public void Bending_down_is_by_the_heavier_load_and_every_base_case_has_its_own_duration()
    {
        var context = Contexts.Of(Bridges.Garden + "\nloads: { live: 60 psf, snow: 62 psf }\n");
        Assert.Contains("snow", Contexts.Check(context, "board-deflection-area").Detail, StringComparison.Ordinal);
        Assert.Contains("live", Contexts.Check(context, "board-bending-area").Detail, StringComparison.Ordinal);
        var cases = BaseCases.List(context);
        Assert.Equal(1.0, cases.Single(c => c.Name == "live load").Duration.Factor);
        Assert.Equal(1.15, cases.Single(c => c.Name == "snow load").Duration.Factor);
    }
}
