using BridgeForm.Frames;
using BridgeForm.Loads;
using BridgeForm.Project.Files;

namespace BridgeForm.Tests.Loads;

/// <summary>A wind across whole bridges: by hand, and what comes out at which end.</summary>
public sealed class WindWorkTests
{
    private const double Psf = 47.88025898;

    private static WindWork Of(string text, string more = "")
    {
        var parameters = Bridges.Read(text + Environment.NewLine + more);
        Assert.True(Bridge.TryShape(parameters, out var rope, out var fault), fault?.Message);
        var layout = BridgeLayout.Lay(parameters, rope);
        return WindWork.Work(layout, rope, BridgeMasses.Weigh(layout), StandingWeights.Weigh(layout));
    }

    // A wind on the windward guard alone, ropes 44 in apart: six rails 1x4 (3.5 in), a cap 1.5 in and posts of 2x4 every 33 in or
    // so stand 26 in high on average over the base's top, 5.25 in over the ropes; boards, bases and guards weigh some 15 lb a foot
    // dry. Moments about the leeward rope: 0.6 × 15 × 44/2 / (1.96 ft² a foot × 28 in) = 3.6 … the exact figures below. The whole
    // outline takes it at half of that or so.
    [Fact]
    public void Some_nine_psf_on_one_guard_overcome_the_bridge()
    {
        var text = Bridges.Garden.Replace("spacing: 46 in", "spacing: 44 in", StringComparison.Ordinal);
        var parameters = Bridges.Read(text);
        Assert.True(Bridge.TryShape(parameters, out var rope, out _));
        var layout = BridgeLayout.Lay(parameters, rope);
        var weight = 0.6 * StandingWeights.Weigh(layout).Light[5] / 4.4482216152605;

        // One bay of one guard by hand, inches: chord × (6 × (3.5·cos 8° + 0.75·sin 8°) + 1.5), and the post between them.
        var (cos, sin) = (Math.Cos(8 * Math.PI / 180), Math.Sin(8 * Math.PI / 180));
        var chord = (layout.Poses[6].Node - layout.Poses[5].Node).Length / 0.0254;
        var rail = (3.5 * cos) + (0.75 * sin);
        var rails = chord * 6 * rail;
        var cap = chord * 1.5;
        var post = 1.5 * ((40 * cos) - (6 * rail) - 1.5);
        var top = 0.375 - 0.625 + 5.5;

        // Rails lie evenly between deck and head: their middle lies midway.
        var height = ((rails * (top + ((1.5 + (40 * cos)) / 2))) + (cap * (top + (40 * cos) + 0.75)) + (post * (top + (20 * cos))))
            / (rails + cap + post);
        var psf = weight * 44 / 2 / ((rails + cap + post) / 144 * height);
        Assert.InRange(psf, 7, 11);

        // Both guards, deck edge and base: the whole outline by the program, half as strong a wind.
        var found = Of(text);
        Assert.InRange(found.LiftsAt!.Value / Psf, 0.4 * psf, 0.5 * psf);
        var sure = found.Done(WindWork.Sure)!;
        Assert.False(sure.Stands);
        Assert.InRange(sure.StandsTo!.Value / Psf, 0.35 * psf, 0.55 * psf);
    }

    // Whatever the shape, the supports hold all the wind there is between them, and the ropes do so at both ends.
    [Theory]
    [InlineData("2 psf")]
    [InlineData("3 psf")]
    public void The_supports_hold_all_of_the_wind(string pressure)
    {
        var wind = Of(Bridges.Inclined, $"loads: {{ wind: {{ pressure: {pressure}, source: invented }} }}");
        Assert.All(wind.States, s => Assert.InRange((s.Ends!.A + s.Ends.B) / s.Force, 1 - 1e-6, 1 + 1e-6));
        var done = wind.Done(WindWork.All)!;
        Assert.True(done.Stands);
        Assert.True(done.Sideways > 0);
        Assert.True(wind.Done(WindWork.Sure)!.Sideways > done.Sideways);
        Assert.Equal(8, wind.States.Length);
    }

    // Twice the pressure, twice the force; and a light wind swings twice as far.
    [Fact]
    public void A_light_wind_goes_in_step_with_its_pressure()
    {
        var (once, twice) = (At(0.1), At(0.2));
        Assert.InRange(twice.Done(WindWork.All)!.Force / once.Done(WindWork.All)!.Force, 2 - 1e-9, 2 + 1e-9);
        Assert.InRange(twice.Done(WindWork.All)!.Sideways / once.Done(WindWork.All)!.Sideways, 1.98, 2.001);

        // No file may ask for so little.
        static WindWork At(double psf)
        {
            var parameters = Bridges.Read(Bridges.Garden);
            parameters = parameters with { Loads = parameters.Loads with { Wind = psf * Psf } };
            Assert.True(Bridge.TryShape(parameters, out var rope, out _));
            var layout = BridgeLayout.Lay(parameters, rope);
            return WindWork.Work(layout, rope, BridgeMasses.Weigh(layout), StandingWeights.Weigh(layout));
        }
    }

    // A single bay has no frame on the ropes: the bare ropes alone are told, and nothing falls over itself.
    [Fact]
    public void One_bay_has_bare_ropes_alone()
    {
        var wind = Of(Bridges.Garden.Replace("spacing: 3 ft", "spacing: 72.5 in", StringComparison.Ordinal)
            .Replace("span: 30 ft", "span: 6 ft", StringComparison.Ordinal));
        Assert.Equal([Hoisting.Bare, Hoisting.Bare], wind.States.Select(s => s.Stage));
        Assert.Null(wind.LiftsAt);
        Assert.Null(wind.Upright);
    }

    [Fact]
    public void Wind_is_what_the_file_says_or_twenty_psf()
    {
        var left = Bridges.Read(Bridges.Garden).Loads;
        Assert.Equal(20 * Psf, left.Wind, 1e-4);
        Assert.Contains("not a site's wind", left.WindSource, StringComparison.Ordinal);
        Assert.Equal(960, Bridges.Read(Bridges.Inclined).Loads.Wind, 1e-9);
        var given = Bridges.Read(Bridges.Garden + Environment.NewLine + "loads: { wind: { pressure: 200 psf, source: letter } }").Loads;
        Assert.Equal((200 * Psf, "letter"), (Math.Round(given.Wind, 3), given.WindSource), EqualityComparer<(double, string)>.Create(
            (a, b) => Math.Abs(a.Item1 - b.Item1) < 1e-2 && string.Equals(a.Item2, b.Item2, StringComparison.Ordinal)));
    }

    [Theory]
    [InlineData("{ pressure: 0.9 psf, source: x }")]
    [InlineData("{ pressure: 201 psf, source: x }")]
    [InlineData("{ pressure: 20 psf }")]
    [InlineData("{ source: x }")]
    [InlineData("20 psf")]
    public void A_wind_out_of_range_or_without_a_source_is_refused(string wind) => Assert.NotEmpty(
        ProjectReader.Read(
            Bridges.Garden + Environment.NewLine + $"loads: {{ wind: {wind} }}", "test.yaml", Bridges.Catalogue).Faults);
}
