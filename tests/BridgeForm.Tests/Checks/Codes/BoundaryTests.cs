using BridgeForm.Checks;
using BridgeForm.Checks.Codes;
using BridgeForm.Project;

namespace BridgeForm.Tests.Checks.Codes;

/// <summary>Each limit from just below and just at it.</summary>
public sealed class BoundaryTests
{
    private const double Inch = 0.0254;

    // IRC R312.1.2: 36 in. The post's length is solved for a bridge whose guard is that high at its lowest place.
    [Theory]
    [InlineData(BridgeUse.Private, 35.99, CheckStatus.Fail)]
    [InlineData(BridgeUse.Private, 36.00, CheckStatus.Pass)]
    [InlineData(BridgeUse.Public, 41.99, CheckStatus.Fail)]
    [InlineData(BridgeUse.Public, 42.00, CheckStatus.Pass)]
    public void Guard_height(BridgeUse use, double inches, CheckStatus expected)
    {
        var parameters = Bridges.Read(Bridges.Garden) with { Use = use };
        double length = parameters.Frames.Post.Length, wanted = inches * Inch;
        for (var i = 0; i < 6; i++)
        {
            length += wanted - GuardPlace.Least(Contexts.Of(WithPost(parameters, length)).Layout).Height;
        }

        var context = Contexts.Of(WithPost(parameters, length));
        Assert.Equal(wanted, GuardPlace.Least(context.Layout).Height, 1e-6);
        Assert.Equal(expected, GuardHeight.Check(Contexts.Of(WithPost(parameters, length + 1e-9))).Status);
    }

    // IRC R312.1.3: no 4 in sphere.
    [Theory]
    [InlineData(3.99, CheckStatus.Pass)]
    [InlineData(4.00, CheckStatus.Fail)]
    public void Sphere(double inches, CheckStatus expected) =>
        Assert.Equal(expected, GuardOpenings.Status(inches * Inch, Limits.Opening(BridgeUse.Private, 0).Sphere));

    // The same on the geometry: rails moved apart until the opening under the second one is so wide.
    [Theory]
    [InlineData(3.99, CheckStatus.Pass)]
    [InlineData(4.01, CheckStatus.Fail)]
    public void Opening_between_rails(double inches, CheckStatus expected)
    {
        var start = 3.25;
        string Heights(double gap) => string.Join(", ", Enumerable.Range(0, 6).Select(i =>
            FormattableString.Invariant($"{start + 1.75 + (i == 0 ? 0 : gap + 3.5 + ((i - 1) * 6.2)):0.####} in")));
        var check = Contexts.Check(
            Bridges.Garden + $"\nguard: {{ rails: {{ section: 1x4, heights: [{Heights(inches)}] }} }}\n", "guard-openings");
        Assert.Contains("under rail-right-2", check.Detail, StringComparison.Ordinal);
        Assert.Equal(inches * Inch, check.Demand, 0.004 * Inch);
        Assert.Equal(expected, check.Status);
    }

    // From 100 bays on, names of bays have three figures.
    [Fact]
    public void Openings_are_named_in_full_on_a_long_bridge()
    {
        var text = Bridges.Garden
            .Replace("span: 30 ft", "span: 90 ft", StringComparison.Ordinal)
            .Replace("spacing: 3 ft", "spacing: 10 in", StringComparison.Ordinal) + "\nguard: { rails: { section: 1x4, count: 2 } }\n";
        var check = Contexts.Check(text, "guard-openings");
        Assert.Matches("B[0-9]{3} under (rail|cap)-right", check.Detail);
    }

    // ADA 303: 1/2 in.
    [Theory]
    [InlineData(0.49, CheckStatus.Pass)]
    [InlineData(0.51, CheckStatus.Fail)]
    public void Step_at_the_landing(double inches, CheckStatus expected)
    {
        var flush = Contexts.Check(
            Bridges.Garden.Replace("span: 30 ft", "span: 30 ft, a: { landing: { level: 0 in } }", StringComparison.Ordinal),
            "landing-step");
        var level = FormattableString.Invariant($"level: {(flush.Demand / Inch) + inches:0.########} in");
        var text = $"span: 30 ft, a: {{ landing: {{ {level}, gap: 1/4 in }} }}, b: {{ landing: {{ {level}, gap: 1/4 in }} }}";
        var context = Contexts.Of(Bridges.Garden.Replace("span: 30 ft", text, StringComparison.Ordinal));
        Assert.Equal(expected, Contexts.Check(context, "landing-step").Status);
        Assert.Equal(CheckStatus.Pass, Contexts.Check(context, "landing-gap").Status);
    }

    // A gap of 1/4 in at A and none told at B: nothing is known of B, so nothing holds; beyond 1/2 in the ratio is told as ever.
    [Theory]
    [InlineData("1/4 in", null)]
    [InlineData("1 in", 2.0)]
    public void A_landing_without_a_gap_is_not_looked_at_and_says_so(string gap, double? ratio)
    {
        var check = Contexts.Check(
            Bridges.Garden.Replace("span: 30 ft", "span: 30 ft, a: { landing: { gap: " + gap + " } }", StringComparison.Ordinal),
            "landing-gap");
        Assert.Equal(CheckStatus.Warn, check.Status);
        Assert.Equal(ratio is null, check.Ratio is null);
        Assert.Equal(ratio ?? 0, check.Ratio ?? 0, 1e-9);
        Assert.Contains("at B not looked at: no site.b.landing.gap is given", check.Detail, StringComparison.Ordinal);
    }

    // One landing flush and the other not given is not a bridge without steps; one that is too far off fails all the same.
    [Fact]
    public void A_landing_without_a_level_is_not_looked_at_and_says_so()
    {
        var none = Contexts.Check(Bridges.Garden, "landing-step");
        Assert.Equal((CheckStatus.Warn, null), (none.Status, none.Ratio));
        Assert.Contains("site.a.landing.level", none.Detail, StringComparison.Ordinal);
        Assert.Contains("site.b.landing.level", none.Detail, StringComparison.Ordinal);
        string With(string level) =>
            Bridges.Garden.Replace("span: 30 ft", $"span: 30 ft, a: {{ landing: {{ level: {level} }} }}", StringComparison.Ordinal);
        var far = Contexts.Check(With("0 in"), "landing-step");
        Assert.Equal(CheckStatus.Fail, far.Status);
        var one = Contexts.Check(With(FormattableString.Invariant($"{far.Demand / Inch:0.########} in")), "landing-step");
        Assert.Equal(CheckStatus.Warn, one.Status);
        Assert.DoesNotContain("site.a.", one.Detail, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("private")]
    [InlineData("public")]
    public void Beyond_the_end_frames_an_engineer_looks(string use)
    {
        var check = Contexts.Check(Bridges.Garden.Replace("use: private", "use: " + use, StringComparison.Ordinal), "guard-at-landing");
        Assert.Equal(CheckStatus.Engineer, check.Status);
        Assert.Contains("guard-at-landing", Contexts.Check(Bridges.Garden, "guard-openings").Detail, StringComparison.Ordinal);
    }

    // Cleats above 1 : 8; a sag of 1.5 % has end slopes near 4·1.5 % = 1 : 16.7, one of 6 % near 1 : 4.2.
    [Fact]
    public void Grip_on_steep_decks()
    {
        Assert.Equal(CheckStatus.Warn, Contexts.Status(Bridges.Garden, "deck-grip"));
        Assert.Equal(
            CheckStatus.Pass, Contexts.Status(Bridges.Garden.Replace("sag: 6 %", "sag: 1.5 %", StringComparison.Ordinal), "deck-grip"));
    }

    [Fact]
    public void Copper_on_zinc()
    {
        Assert.Contains("channel.liner", Contexts.Check(Bridges.Garden, "copper-on-zinc").Detail, StringComparison.Ordinal);
        Assert.Equal(CheckStatus.Warn, Contexts.Status(Bridges.Garden, "copper-on-zinc"));
        Assert.Equal(
            CheckStatus.Pass,
            Contexts.Status(
                Bridges.Garden.Replace("clearance: 1/8 in", "clearance: 1/8 in, liner: 1/8 in", StringComparison.Ordinal),
                "copper-on-zinc"));
        Assert.Equal(
            CheckStatus.Pass,
            Contexts.Status(Bridges.Garden.Replace("eips-galvanized", "eips", StringComparison.Ordinal), "copper-on-zinc"));
    }

    // ADA 505.4: 34 to 38 in, on a public deck steeper than 1 : 20; IRC R311.8.3: on a private one steeper than 1 : 12. A sag
    // of 6 % begins near 1 : 4.2, one of 1.5 % near 1 : 16.7.
    [Theory]
    [InlineData("private", "6 %", CheckStatus.Warn)]
    [InlineData("private", "1.5 %", CheckStatus.Pass)]
    [InlineData("public", "6 %", CheckStatus.Warn)]
    [InlineData("public", "1.5 %", CheckStatus.Pass)]
    public void Handrail_where_it_applies(string use, string sag, CheckStatus expected)
    {
        var low = Bridges.Garden.Replace("use: private", "use: " + use, StringComparison.Ordinal)
            .Replace("sag: 6 %", "sag: " + sag, StringComparison.Ordinal)
            .Replace("length: 40 in", "length: 46 in", StringComparison.Ordinal)
            + "\nguard: { rails: { section: 1x4, heights: [6 in, 12 in, 18 in] } }\n";
        var check = Contexts.Check(low, "handrail-height");
        Assert.Equal(expected, check.Status);
        Assert.Equal(sag is "1.5 %", check.Detail.Contains("not asked for", StringComparison.Ordinal));
        var railed = low.Replace("18 in]", "36.5 in]", StringComparison.Ordinal);
        var high = Contexts.Check(railed, "handrail-height");
        Assert.Equal(CheckStatus.Pass, high.Status);
        Assert.Equal(sag is "6 %", high.Detail.Contains("whether a hand can close around it is not looked at", StringComparison.Ordinal));
    }

    // A cap as handrail is as high at its lowest as the guard.
    [Fact]
    public void A_handrail_is_measured_as_the_guard()
    {
        var context = Contexts.Of(Bridges.Garden.Replace("length: 40 in", "length: 33 in", StringComparison.Ordinal)
            + "\nguard: { rails: { section: 1x4, heights: [6 in, 12 in] } }\n");
        var check = Contexts.Check(context, "handrail-height");
        Assert.StartsWith("cap", check.Detail, StringComparison.Ordinal);
        Assert.Equal(GuardPlace.Least(context.Layout).Height, check.Demand, 1e-9);
    }

    private static BridgeParameters WithPost(BridgeParameters parameters, double length) => parameters with
    {
        Frames = parameters.Frames with { Post = parameters.Frames.Post with { Length = length } },
    };
}
