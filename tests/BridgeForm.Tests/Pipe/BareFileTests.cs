using BridgeForm.Checks;
using BridgeForm.Materials;
using BridgeForm.Project;
using BridgeForm.Project.Files;
using BridgeForm.Quantities;

namespace BridgeForm.Tests.Pipe;

/// <summary>Files with a name and a span, and the file that <c>start</c> writes, through the whole pipe.</summary>
public sealed class BareFileTests
{
    private static readonly string[] s_gone =
    [
        "copper-on-zinc", "landing-step", "landing-gap", "deck-grip", "handrail-height", "fasteners-in-treated-wood", "keeper-strap-reach",
    ];

    [Theory]
    [InlineData("10 ft")]
    [InlineData("12.5 ft")]
    [InlineData("17 ft")]
    [InlineData("23 ft")]
    [InlineData("31 ft")]
    [InlineData("38 ft")]
    [InlineData("47 ft")]
    [InlineData("55 ft")]
    [InlineData("60 ft")]
    public void A_name_and_a_span_make_a_bridge_without_a_failing_check(string span) => Assert.Empty(Failing(Bare(span, "imperial")));

    [Theory]
    [InlineData("3 m")]
    [InlineData("4.2 m")]
    [InlineData("6 m")]
    [InlineData("9 m")]
    [InlineData("11.3 m")]
    [InlineData("15 m")]
    [InlineData("18 m")]
    public void So_they_do_in_metres(string span) => Assert.Empty(Failing(Bare(span, "metric")));

    [Theory]
    [InlineData("10 ft", "imperial")]
    [InlineData("33 ft", "imperial")]
    [InlineData("60 ft", "imperial")]
    [InlineData("3 m", "metric")]
    [InlineData("15 m", "metric")]
    [InlineData("18 m", "metric")]
    public void A_public_one_has_none_either(string span, string units) =>
        Assert.Empty(Failing(Read($"name: Bare\nunits: {units}\nuse: public\nsite: {{ span: {span} }}\n")));

    // Where the rope leaves the end base steeply it needs a deeper channel there; a shallower one, as on a level bridge, fails.
    [Theory]
    [InlineData("20 ft", "2.5 ft", "imperial")]
    [InlineData("40 ft", "-6 ft", "imperial")]
    [InlineData("9 m", "-1.8 m", "metric")]
    [InlineData("15 m", "2 m", "metric")]
    public void A_rise_deepens_the_channels_at_the_ends(string span, string rise, string units)
    {
        var steep = Read($"name: Bare\nunits: {units}\nsite: {{ span: {span}, rise: {rise} }}\n");
        var level = Bare(span, units);
        Assert.DoesNotContain("channel-shallow-mouth-end", Failing(steep));
        var shallow = steep.Frames.Channel with { EndDepth = level.Frames.Channel.EndDepth };
        Assert.Contains("channel-shallow-mouth-end", Failing(steep with { Frames = steep.Frames with { Channel = shallow } }));
    }

    /// <summary>The looks that a file can do away with are not there, but for what only the builder can say.</summary>
    [Theory]
    [InlineData("10 ft", "imperial")]
    [InlineData("60 ft", "imperial")]
    [InlineData("3 m", "metric")]
    [InlineData("18 m", "metric")]
    public void Of_its_looks_only_those_stay_that_defaults_cannot_answer(string span, string units) =>
        Assert.Equal(
            ["deck-grip", "fasteners-in-treated-wood", "landing-step"],
            Looks(Bridges.Build(Bare(span, units))).Intersect(s_gone, StringComparer.Ordinal).Order(StringComparer.Ordinal));

    /// <summary>A rule that is broken on purpose is told: ropes of the short bridge's spacing and rope fail the long one.</summary>
    [Fact]
    public void What_the_rules_choose_for_a_short_bridge_fails_a_long_one()
    {
        var (shorter, longer) = (Bare("20 ft", "imperial"), Bare("60 ft", "imperial"));
        Assert.Contains("rope-strength", Failing(longer with { Ropes = longer.Ropes with { Rope = shorter.Ropes.Rope } }));
        Assert.Contains("roll", Failing(longer with { Ropes = longer.Ropes with { Spacing = 44 * 0.0254 } }));
    }

    /// <summary>The rope is the thinnest that holds: the next thinner one does not.</summary>
    [Theory]
    [InlineData("14 ft")]
    [InlineData("23 ft")]
    [InlineData("38 ft")]
    [InlineData("60 ft")]
    public void A_rope_one_size_thinner_would_fail(string span)
    {
        var p = Bare(span, "imperial");
        var sizes = RopeTable.Catalogue.Keys.Where(k => k.StartsWith("rope-6x19-iwrc-eips-galvanized-", StringComparison.Ordinal)).ToList();
        var thinner = RopeTable.Catalogue.Find(sizes[sizes.IndexOf(p.Ropes.Rope.Name) - 1])!;
        Assert.Contains("rope-strength", Failing(p with { Ropes = p.Ropes with { Rope = thinner } }));
    }

    [Theory]
    [InlineData(UnitSystem.Imperial)]
    [InlineData(UnitSystem.Metric)]
    public void The_starter_has_no_fail_and_none_of_the_looks_that_can_be_helped(UnitSystem units)
    {
        var model = Bridges.Build(Read(Starter.Text(units)));
        Assert.True(Verdict.IsClear(model.Checks), string.Join(' ', Failing(model.Parameters)));
        Assert.Empty(Looks(model).Intersect(s_gone, StringComparer.Ordinal));
        foreach (var id in (string[])["landing-step", "landing-gap", "deck-grip", "fasteners-in-treated-wood", "copper-on-zinc",
            "guard-joint-post-foot", "guard-joint-brace-foot", "guard-joint-brace-head"])
        {
            Assert.Equal(CheckStatus.Pass, model.Checks.Single(c => c.Id == id).Status);
        }
    }

    /// <summary>Whoever changes the span alone has a bridge that passes too: what follows the span is left out.</summary>
    [Theory]
    [InlineData(UnitSystem.Imperial, "30 ft", "12 ft")]
    [InlineData(UnitSystem.Imperial, "30 ft", "58 ft")]
    [InlineData(UnitSystem.Metric, "9 m", "4 m")]
    [InlineData(UnitSystem.Metric, "9 m", "17 m")]
    public void The_starter_holds_at_another_span(UnitSystem units, string old, string span)
    {
        var text = Starter.Text(units);
        Assert.Equal(2, text.Split("span: " + old).Length);
        var model = Bridges.Build(Read(text.Replace("span: " + old, "span: " + span, StringComparison.Ordinal)));
        Assert.Empty(Failing(model.Parameters));
        Assert.Empty(Looks(model).Intersect(s_gone, StringComparer.Ordinal));
    }

    /// <summary>What the starter shows behind a comment sign is what the rules choose for it.</summary>
    [Theory]
    [InlineData(UnitSystem.Imperial)]
    [InlineData(UnitSystem.Metric)]
    public void The_starter_shows_what_rules_choose(UnitSystem units)
    {
        var text = Starter.Text(units);
        var chosen = Read(text).Chosen;
        Assert.Equal(8, chosen.Length);
        Assert.All(chosen, c => Assert.Contains(
            $"# {c.Path[(c.Path.LastIndexOf('.') + 1)..]}: {c.Text} ", text, StringComparison.Ordinal));
        Assert.Contains("People stand on this bridge", text, StringComparison.Ordinal);
    }

    private static BridgeParameters Bare(string span, string units) => Read($"name: Bare\nunits: {units}\nsite: {{ span: {span} }}\n");

    private static BridgeParameters Read(string text)
    {
        var reading = ProjectReader.Read(text, "bare.yaml", RopeTable.Catalogue);
        Assert.Empty(reading.Lines);
        return reading.Parameters!;
    }

    private static IEnumerable<string> Failing(BridgeParameters parameters) =>
        Bridges.Build(parameters).Checks.Where(c => c.Status == CheckStatus.Fail).Select(c => c.Id);

    private static IEnumerable<string> Looks(BridgeModel model) =>
        model.Checks.Where(c => c.Status == CheckStatus.Warn).Select(c => c.Id);
}
