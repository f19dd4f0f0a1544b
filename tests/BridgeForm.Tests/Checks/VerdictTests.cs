using BridgeForm.Checks;
using BridgeForm.Checks.Codes;
using BridgeForm.Checks.Geometry;
using BridgeForm.Checks.Register;
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
            var checks = AllChecks.Run(context);
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
        // The sweep lets pass what lies a micrometre beyond the tolerance: parts laid out to it exactly come out so.
        const double seated = BridgeForm.Quantities.Tolerances.Seating + 0.9e-6;
        var context = Contexts.Of(Bridges.Garden);
        var found = context.Contacts with
        {
            DeepestOverlap = seated,
            OverlapCount = 0,
            Overlaps = [],
            WidestGap = seated,
            GapCount = 0,
            Gaps = [],
            DeepestRope = seated,
            RopeContactCount = 0,
            RopeContacts = [],
        };
        var checks = ContactChecks.Check(context with { Contacts = found }).ToList();
        Assert.Equal(3, checks.Count);
        Assert.All(checks, check => Assert.Equal((CheckStatus.Pass, 1.0), (check.Status, check.Ratio)));
        AllAgree(checks, "seated");
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
    [InlineData(9999.0, CheckStatus.Fail, "9999.00")]
    [InlineData(9999.01, CheckStatus.Fail, "> 9999")]
    public void No_ratio_reads_as_the_other_verdict(double ratio, CheckStatus status, string expected) =>
        Assert.Equal(expected, RatioText.Of(new CheckResult("an-id", "A check", status, ratio, 1, "1", ratio, "a source", "")));

    private static void AllAgree(IEnumerable<CheckResult> checks, string where) =>
        Assert.All(checks, check => Assert.True(Fault(check) is null, $"{where}: {check.Id} {check.Status} {check.Demand} / "
            + $"{check.Capacity} = {check.Ratio}: {Fault(check)}"));

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
