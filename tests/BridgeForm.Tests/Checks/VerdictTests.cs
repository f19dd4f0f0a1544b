using BridgeForm.Checks;
using BridgeForm.Tests.Samples;

namespace BridgeForm.Tests.Checks;

/// <summary>Demand, capacity, ratio and verdict of one check say the same thing, whatever the bridge.</summary>
public sealed class VerdictTests
{
    /// <summary>Slack in openings and contacts, relative: far above round-off, far below any tool.</summary>
    private const double Alike = 1e-6;

    private const int Seed = 20260731;
    private const int Many = 60;

    // A rope that grazes posts outside the channels, 4.7 mm deep, and lies in no channel's mouth.
    private const string Grazed = """
        name: Ropes against posts (invented)
        units: metric
        site: { span: 3.0959 m, rise: -983.62 mm }
        ropes: { type: cord-7x19-3/8, spacing: 1215.17 mm, sag: 2.459 % }
        frames:
          spacing: 1077.19 mm
          step: plan
          stance: plumb
          base: { section: 2x4, length: 1940.57 mm }
          channel: { clearance: 7.18 mm, depth: 80.6 mm, end_depth: 80.6 mm, liner: 3.84 mm }
          post: { section: 4x6, length: 921.76 mm, lean: 5.8 deg, foot: 544.99 mm }
          brace: { section: 58.6 x 88.9 mm, lean: 9.33 deg, foot: 879.13 mm }
        """;

    // Parts laid out to press in by exactly the seating tolerance.
    private const string Seated = """
        name: Seated to the tolerance (invented)
        units: metric
        site: { span: 920 mm, rise: 11.83 mm }
        ropes: { type: strand-ehs-galvanized-1, spacing: 170.59 mm, sag: 11.67 % }
        frames:
          spacing: 311.59 mm
          step: plan
          stance: plumb
          base: { section: 2x6, flat: true, length: 3.1657 m }
          channel: { clearance: 6.38 mm, depth: 10.89 mm, end_depth: 14.78 mm, liner: 0 mm }
          post: { section: 4x4, length: 1159.69 mm, lean: 11.06 deg, foot: 1083.92 mm }
          brace: { section: 3x4, lean: 19.35 deg, foot: 1522.92 mm }
          keeper: { hole: 3.54 mm, depth: 14.77 mm }
        deck: { layout: across, board: { section: 1x8 }, gap: 5.86 mm, side_gap: 49.66 mm, butt_gap: 2.65 mm, stringer: { section: 2x6, count: 2 } }
        guard: { rails: { section: 2x4, heights: [388.9 mm, 507.86 mm, 773.04 mm, 1051.67 mm] } }
        shop: { tolerance: 0.022 mm }
        """;

    [Theory]
    [InlineData("alder-dell")]
    [InlineData("fern-rise")]
    [InlineData("heron-reach")]
    [InlineData("moss-crossing")]
    [InlineData("wren-landing")]
    public void Of_the_samples(string name) => AllAgree(new Sample(name).Build().Checks, name);

    [Fact]
    public void Of_bridges_by_lot()
    {
        var seen = new HashSet<(string Id, CheckStatus Status)>();
        foreach (var parameters in RandomBridge.Some(Seed, Many))
        {
            if (!Bridge.TryShape(parameters, out _, out _))
            {
                continue;
            }

            var context = Contexts.Of(parameters);
            var checks = AllChecks.Of(context);
            AllAgree(checks, $"span {parameters.Site.Span}, base {parameters.Frames.Base.Section.Name}");
            seen.UnionWith(checks.Select(c => (c.Id, c.Status)));
        }

        Assert.True(seen.Count(s => s.Status == CheckStatus.Fail) >= 20, string.Join(", ", seen.Where(s => s.Status == CheckStatus.Fail)));
    }

    [Fact]
    public void A_rope_against_wood_outside_the_channels_has_no_depth_that_holds()
    {
        var check = Contexts.Check(Grazed, "rope-in-channels");
        Assert.Equal(CheckStatus.Fail, check.Status);
        Assert.Null(check.Ratio);
        Assert.Null(check.Capacity);
        Assert.True(check.Demand > 1e-3, check.Detail);
    }

    [Fact]
    public void What_holds_at_its_tolerance_has_a_ratio_of_one_and_no_more()
    {
        var model = Bridges.Build(Seated);
        foreach (var check in model.Checks.Where(c => c.Id is "parts-overlap" or "parts-bear"))
        {
            Assert.Equal(CheckStatus.Pass, check.Status);
            Assert.InRange(check.Ratio!.Value, 0, 1);
        }
    }

    // A sphere passes an opening of its own size: at the limit it fails, with a ratio that says so.
    [Fact]
    public void A_sphere_passes_an_opening_of_its_own_size()
    {
        Assert.Equal(CheckStatus.Fail, GuardOpenings.Status(0.1016, 0.1016));
        Assert.True(GuardOpenings.Ratio(0.1016, 0.1016) > 1);
        Assert.Equal(CheckStatus.Pass, GuardOpenings.Status(0.10159, 0.1016));
    }

    // 1.004 is more than 1 and must not read as 1.00; 0.996 holds.
    [Theory]
    [InlineData(1.0006, CheckStatus.Fail, "1.0006")]
    [InlineData(1.000000002, CheckStatus.Fail, "1.0001")]
    [InlineData(1.006, CheckStatus.Fail, "1.01")]
    [InlineData(1.0, CheckStatus.Pass, "1.00")]
    [InlineData(0.996, CheckStatus.Pass, "1.00")]
    [InlineData(0.0, CheckStatus.Pass, "0.00")]
    [InlineData(3.11, CheckStatus.Warn, "3.11")]
    public void No_ratio_reads_as_the_other_verdict(double ratio, CheckStatus status, string expected) =>
        Assert.Equal(expected, RatioText.Of(new CheckResult("an-id", "A check", status, ratio, 1, "1", ratio, "a source", "")));

    private static void AllAgree(IEnumerable<CheckResult> checks, string where) =>
        Assert.All(checks, check => Assert.True(Fault(check) is null, $"{where}: {check.Id} {check.Status} {check.Demand} / {check.Capacity} = {check.Ratio}: {Fault(check)}"));

    private static string? Fault(CheckResult check)
    {
        if (check.Ratio is not { } ratio)
        {
            return null;
        }

        var byCapacity = check.Capacity is { } capacity && double.IsFinite(capacity) && capacity > 0
            ? Math.Min(Off(ratio, check.Demand / capacity), Off(ratio, capacity / check.Demand))
            : 0;
        return check.Status == CheckStatus.Fail && ratio <= 1 ? "fails below its limit"
            : check.Status == CheckStatus.Pass && ratio > 1 ? "holds above its limit"
            : byCapacity > Alike ? "ratio is not that of demand and capacity"
            : null;
    }

    private static double Off(double ratio, double other) => Math.Abs(ratio - other) / Math.Max(1, Math.Abs(ratio));
}
