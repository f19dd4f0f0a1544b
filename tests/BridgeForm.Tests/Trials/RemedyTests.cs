using BridgeForm.Checks;
using BridgeForm.Materials;
using BridgeForm.Project;
using BridgeForm.Quantities;
using BridgeForm.Tests.Checks;
using BridgeForm.Trials;

namespace BridgeForm.Tests.Trials;

/// <summary>What is told to pass passes, and what is a step less does not: tried as whole bridges.</summary>
public sealed class RemedyTests
{
    private const string Cows = """
        name: Loads of its own (invented)
        site: { span: 42 ft, rise: 1 ft, temperatures: [0 F, 60 F, 110 F] }
        ropes: { type: rope-6x19-iwrc-eips-galvanized-7/8, spacing: 46 in, sag: 2 ft 4 in }
        frames: { base: { section: 4x6, length: 58 in }, post: { foot: 18-1/4 in }, brace: { foot: 28-1/4 in } }
        deck: { layout: across }
        loads:
          live: 75 psf
          eccentricity: 70 %
          point: { force: 500 lbf, patch: 24 in, edge: 8 in }
          cases: [{ id: cow, force: 1200 lbf, at: 13 ft 5 in }, { id: near-end, force: 800 lbf, at: 6 in }]
        """;

    private const string Metric = """
        name: Metric (invented)
        units: metric
        use: public
        site:
          span: 18 m
          rise: -0.5 m
          a: { backstay: { length: 6 m, angle: 30 deg, saddle: sliding } }
          b: { backstay: { length: 4 m, angle: 40 deg, saddle: fixed } }
        ropes: { type: rope-6x19-iwrc-eips-galvanized-1, spacing: 1300 mm, sag: 5 % }
        frames: { base: { section: 89 x 140 mm, length: 1700 mm }, post: { foot: 500 mm }, brace: { foot: 800 mm } }
        """;

    private const string Steep = """
        name: Steep and upright (invented)
        site: { span: 70 ft, rise: 15 ft }
        ropes: { type: rope-6x19-iwrc-eips-galvanized-7/8, sag: 4 % }
        frames: { stance: plumb, base: { section: 4x6 }, channel: { depth: 1 in, end_depth: 1-1/2 in } }
        deck: { layout: across }
        """;

    [Theory]
    [InlineData(Cows)]
    [InlineData(Metric)]
    [InlineData(Steep)]
    [InlineData(
        "name: s\nsite: { span: 60 ft }\nropes: { type: rope-6x19-iwrc-eips-galvanized-5/8, sag: 3 % }\ndeck: { layout: across }\n")]
    public void The_least_sag_passes_and_one_step_less_does_not(string text)
    {
        var parameters = Bridges.Read(text);
        var sag = Assert.Single(Bridges.Build(parameters).Remedies, r => r.CheckId is "rope-strength" && r.Length is not null);
        var step = parameters.Units == UnitSystem.Metric ? 0.001 : 0.0254 / 16;
        Assert.Equal(Math.Round(sag.Length!.Value / step), sag.Length.Value / step, 1e-6);
        Assert.Contains(new QuantityText(parameters.Units).Length(sag.Length.Value), sag.Text, StringComparison.Ordinal);
        Assert.True(Passes(parameters, sag.Length.Value));
        for (var less = 1; less <= 10; less++)
        {
            Assert.False(Passes(parameters, sag.Length.Value - (less * step)), $"{less} steps less");
        }
    }

    /// <summary>
    /// Below the sag that passes lie three (3-1/4, 3-5/16 and 3-3/8 in) whose shape and loads come close to each other and
    /// never settle.
    /// </summary>
    [Fact]
    public void A_sag_is_told_only_where_the_bridge_has_a_shape()
    {
        var parameters = Bridges.Read("""
            name: Short and heavy (invented)
            site: { span: 1032.128 mm }
            ropes: { type: rope-6x19-iwrc-ips-galvanized-5/16, spacing: 120.902 cm, sag: 2.535 %, safety_factor: 5.4613 }
            frames:
              spacing: 33.011 cm
              base: { length: 299.137 cm }
              post: { length: 58.665 in, lean: 10.256 deg, foot: 2.864 ft }
              brace: { lean: 0.20155 rad, foot: 4.436 ft, stock: treated }
              keeper: { hole: 0.00138 m }
            deck: { board: { section: 3x10 }, count: auto, side_gap: 0.01979 m, butt_gap: 0.00084 in }
            guard: { rails: { section: 97.2 x 236.8 mm, count: 2 } }
            loads: { live: 0.00728 psi }
            """);
        var close = parameters with { Ropes = parameters.Ropes with { Sag = (3 + (5.0 / 16)) * 0.0254 } };
        Assert.False(Bridge.TryShape(close, out _, out _));
        var sag = Assert.Single(Bridges.Build(parameters).Remedies, r => r.CheckId is "rope-strength" && r.Length is not null);
        Assert.True(Passes(parameters, sag.Length!.Value));
    }

    [Theory]
    [InlineData(Cows)]
    [InlineData(Steep)]
    public void The_smallest_rope_passes_and_the_next_smaller_does_not(string text)
    {
        var parameters = Bridges.Read(text);
        var rope = Assert.Single(Bridges.Build(parameters).Remedies, r => r.Rope is not null).Rope!;
        Assert.True(Passes(With(rope)));
        var before = RopeTable.Keys[RopeTable.Keys.IndexOf(rope) - 1];
        Assert.Equal(
            rope[..rope.LastIndexOf("zed-", StringComparison.Ordinal)], before[..before.LastIndexOf("zed-", StringComparison.Ordinal)]);
        Assert.False(Passes(With(before)));

        BridgeParameters With(string key) =>
            Bridges.Read(text.Replace(parameters.Ropes.Rope.Name, key, StringComparison.Ordinal));
    }

    /// <summary>Holes where nothing holds, jumps of the ratio and settings without a shape do not fool the search.</summary>
    [Fact]
    public void The_least_setting_is_found_over_holes_and_jumps()
    {
        // As one over the setting; the same with a jump up at 402 that comes down to 1 only at 411; and yes or no alone.
        Assert.Equal(37, Search(10, 500, n => 36.5 / n));
        Assert.Equal(400, Search(10, 500, n => (n < 402 ? 399.5 : 410.5) / n, n => n < 402 ? 0 : 1));
        Assert.Equal(37, Search(10, 500, n => n < 37 ? 2 : 0.5));
        Assert.Equal(37, Search(10, 500, n => n is < 37 or 72 or 73 ? double.PositiveInfinity : 0.5));
        Assert.Equal(37, Search(10, 500, n => n is >= 45 and < 60 ? double.PositiveInfinity : Math.Pow(36.5 / n, 3), n => n));
        Assert.Equal(11, Search(10, 500, _ => 0.5));
        Assert.Equal(500, Search(10, 500, n => n < 500 ? 3 : 1));
        Assert.Null(Search(10, 500, _ => 1.001));
        Assert.Null(Search(10, 500, _ => double.PositiveInfinity));
        Assert.Null(Search(10, 10, _ => 0.5));
    }

    // A quick trial knows of one case alone: what it finds is looked at in full, and where that fails all is.
    [Theory]
    [InlineData(37, 37, 37)]
    [InlineData(37, 41, 41)]
    [InlineData(41, 37, 41)]
    public void What_a_quick_search_finds_is_tried_in_full(int quick, int full, int found) =>
        Assert.Equal(found, LeastSetting.Checked(From(quick), From(full), () => false, 10, 500));

    [Fact]
    public void Where_a_quick_search_finds_nothing_that_counts_if_it_came_to_its_end()
    {
        Assert.Null(LeastSetting.Checked(From(501), _ => throw new InvalidOperationException(), () => false, 10, 500));
        Assert.Equal(37, LeastSetting.Checked(From(501), From(37), () => true, 10, 500));
    }

    private static Func<int, Trial> From(int least) => n => new Trial(n >= least, (least - 0.5) / n, []);

    [Fact]
    public void Few_trials_are_made()
    {
        foreach (var power in new[] { 0.5, 0.8, 1.0, 1.3 })
        {
            foreach (var limit in Enumerable.Range(0, 40).Select(i => 310.5 + (29 * i)))
            {
                var made = 0;
                Assert.Equal((int?)Math.Ceiling(limit), Search(300, 3000, n => Math.Pow(limit / n, power), count: () => made++));
                Assert.InRange(made, 2, 14);
            }
        }
    }

    private static int? Search(int first, int most, Func<int, double> ratio, Func<int, int>? parts = null, Action? count = null) =>
        new LeastSetting(n =>
        {
            count?.Invoke();
            return new Trial(ratio(n) <= 1, ratio(n), [parts?.Invoke(n) ?? 0]);
        }).Above(first, most);

    private static bool Passes(BridgeParameters parameters, double sag) =>
        Passes(parameters with { Ropes = parameters.Ropes with { Sag = sag } });

    private static bool Passes(BridgeParameters parameters)
    {
        // Strength alone: a rope that holds may carry a section that turns over, which has a check and cures of its own.
        var context = Contexts.Of(parameters);
        return context.Cases.All(c => c.Shape is not null)
            && BridgeForm.Checks.Ropes.RopeStrength.Check(context).Status == CheckStatus.Pass;
    }
}
