using System.Globalization;
using BridgeForm.Materials;
using BridgeForm.Project;
using BridgeForm.Project.Definition;
using BridgeForm.Project.Files;

namespace BridgeForm.Tests.Project;

/// <summary>Defaults that follow other values: each by hand, given values before them, and what they look at.</summary>
public sealed class DefaultRuleTests
{
    /// <summary>
    /// By hand: 49 + 0.3 · 20 = 55 in and 49 + 0.3 · 50 = 64 in; base 14 in more; sag 3.06 / 55 = 5.56 % and 3.06 / 64 = 4.78 %. In
    /// metres 1245 + 25 · 6 = 1395 mm and 1245 + 25 · 15 = 1620 mm; base 350 mm more, to 10 mm; 77.7 / 1400 = 5.55 %, 77.7 / 1620 =
    /// 4.80 %.
    /// </summary>
    [Theory]
    [InlineData("site: { span: 20 ft }", "55 in", "69 in", "5.6 %")]
    [InlineData("site: { span: 50 ft }", "64 in", "78 in", "4.8 %")]
    [InlineData("site: { span: 6 m }\nunits: metric", "1400 mm", "1750 mm", "5.6 %")]
    [InlineData("site: { span: 15 m }\nunits: metric", "1620 mm", "1970 mm", "4.8 %")]
    public void Ropes_follow_the_span_base_and_sag_follow_the_ropes(string file, string spacing, string length, string sag)
    {
        var chosen = Chosen(file);
        Assert.Equal((spacing, length, sag), (chosen["ropes.spacing"], chosen["frames.base.length"], chosen["ropes.sag"]));
    }

    /// <summary>
    /// Short of 13 ft the braces' feet decide: outer faces at 28-1/4 in, a 2x4 at 12° is 3.5 / cos 12° = 3.578 in wide at its foot, so
    /// 2 · (28.25 − 1.789) = 52.9 in. With posts 4 in further out the feet are too: 60.9 in.
    /// </summary>
    [Theory]
    [InlineData("site: { span: 10 ft }", "28-1/4 in", "53 in")]
    [InlineData("site: { span: 12 ft }", "28-1/4 in", "53 in")]
    [InlineData("site: { span: 10 ft }\nframes: { post: { foot: 22-1/2 in } }", "32-1/4 in", "61 in")]
    [InlineData("site: { span: 300 ft }", "28-1/4 in", "96 in")]
    [InlineData("site: { span: 30 ft }\nuse: public", "28-1/4 in", "61 in")]
    public void Ropes_lie_under_the_braces_or_outside_and_not_endlessly_far(string file, string foot, string spacing)
    {
        var chosen = Chosen(file);
        Assert.Equal((foot, spacing), (chosen["frames.brace.foot"], chosen["ropes.spacing"]));
    }

    /// <summary>
    /// The spacing in force counts, not the one that would have been chosen: 3.06 / 44 = 6.95 %, 3.06 / 30 = 10.2 %, above 8 %.
    /// </summary>
    [Theory]
    [InlineData("44 in", "7 %", "58 in")]
    [InlineData("30 in", "8 %", "58 in")]
    [InlineData("80 in", "3.8 %", "94 in")]
    [InlineData("120 in", "3 %", "134 in")]
    public void A_given_spacing_wins_and_narrower_ropes_hang_deeper(string spacing, string sag, string length)
    {
        var chosen = Chosen($"site: {{ span: 30 ft }}\nropes: {{ spacing: {spacing} }}");
        Assert.DoesNotContain("ropes.spacing", chosen.Keys);
        Assert.Equal((sag, length), (chosen["ropes.sag"], chosen["frames.base.length"]));
    }

    /// <summary>A base that is given bounds the ropes: 14 in less; a very short one to three quarters of it.</summary>
    [Theory]
    [InlineData("60 in", "46 in")]
    [InlineData("40 in", "30 in")]
    [InlineData("100 in", "58 in")]
    public void Ropes_keep_within_a_base_that_is_given(string length, string spacing) =>
        Assert.Equal(
            spacing,
            Chosen($"site: {{ span: 30 ft }}\nframes: {{ base: {{ length: {length} }}, post: {{ foot: 8 in }}, brace: {{ foot: 17 in }} }}")
                ["ropes.spacing"]);

    /// <summary>Every given value stands, and nothing is chosen in its place.</summary>
    [Fact]
    public void Given_values_are_not_chosen()
    {
        var p = Read("""
            site: { span: 30 ft }
            ropes: { spacing: 60 in, sag: 6 %, type: rope-6x19-iwrc-eips-galvanized-1 }
            frames:
              base: { length: 80 in }
              channel: { depth: 1/2 in, end_depth: 9/16 in }
              post: { length: 41 in }
              brace: { foot: 29 in }
            guard: { rails: { count: 5 } }
            """);
        Assert.Empty(p.Chosen);
        Assert.Equal(5, p.Guard.RailCount);
        Assert.Equal(60 * 0.0254, p.Ropes.Spacing, 12);
        Assert.Equal(29 * 0.0254, p.Frames.Brace.Foot, 12);
    }

    /// <summary>A key in the place of another leaves nothing to choose: a brace by its length, rails by their heights.</summary>
    [Fact]
    public void A_key_in_anothers_place_leaves_nothing_to_choose()
    {
        var chosen = Chosen("site: { span: 30 ft }\nframes: { brace: { length: 18 in } }\nguard: { rails: { heights: [10 in, 20 in] } }");
        Assert.DoesNotContain("frames.brace.foot", chosen.Keys);
        Assert.DoesNotContain("guard.rails.count", chosen.Keys);
    }

    /// <summary>
    /// Posts: (36 + 3.5 + 1.5 − 1.5) / cos 8° = 39.89 in, in public (42 + 3.5) / cos 8° = 45.95 in; with treads of 2x6 on stringers of
    /// 5-1/2 in (36 + 3.5 + 7 − 1.5) / cos 8° = 45.44 in. Rails of 5-1/2 in in 40 − 1.515 = 38.485 in: four leave 16.485 / 5 = 3.30 in,
    /// three 5.50 in; in 46 − 1.515 five leave 2.83 in, four 4.50 in. Rails of 3-1/2 in: five leave 3.50 in, four 4.90 in.
    /// </summary>
    [Theory]
    [InlineData("use: private", "40 in", "4")]
    [InlineData("use: public", "46 in", "5")]
    [InlineData("deck: { layout: across }", "45-1/2 in", "4")]
    [InlineData("guard: { rails: { section: 1x4 } }", "40 in", "5")]
    public void Posts_and_rails_follow_the_use(string key, string length, string count)
    {
        var chosen = Chosen("site: { span: 30 ft }\n" + key);
        Assert.Equal((length, count), (chosen["frames.post.length"], chosen["guard.rails.count"]));
    }

    /// <summary>
    /// A channel is no deeper than rope and liner: 3/8 + 1/16 = 7/16 in; 3/4 + 1/16 = 13/16 in is more than the usual 5/8 and 3/4. At the
    /// ends it holds a quarter of the rope at its shallow mouth: half of a base of 3-1/2 in and the first of the bays, 34 in or less, of
    /// a sag of 5.3 %: 3/32 + 1.75 · 1.11 · 4 · 0.053 · (1 − 34/360) = 0.467 in for the thinnest.
    /// </summary>
    [Theory]
    [InlineData("3/8", "7/16 in", "1/2 in")]
    [InlineData("5/8", "5/8 in", "11/16 in")]
    [InlineData("3/4", "5/8 in", "3/4 in")]
    public void Channels_follow_the_rope(string size, string depth, string end)
    {
        var chosen = Chosen($"site: {{ span: 30 ft }}\nropes: {{ type: rope-6x19-iwrc-eips-galvanized-{size} }}");
        Assert.Equal((depth, end), (chosen["frames.channel.depth"], chosen["frames.channel.end_depth"]));
    }

    /// <summary>
    /// A parabola that neither stretches nor shrinks, by hand: 30 ft = 9.144 m, sag 5.3 %, 800 N/m empty and 3000 N/m loaded: T =
    /// 3000 · 9.144² / (8 · 0.48463) · √(1 + (4 · 0.053)²) = 64 698 · 1.0222 = 66 135 N. The rope here is so stiff that it stretches
    /// by nothing; a soft one hangs deeper and is pulled less.
    /// </summary>
    [Fact]
    public void The_estimate_is_a_parabolas()
    {
        var estimate = new RopeEstimate(9.144, 0, 0.053 * 9.144, Dead: 800, Wet: 1000, Live: 2000, Colder: 0, Factor: 6.25);
        var rope = Thin with { MassPerLength = 1e-9, Modulus = 1e20 };
        Assert.Equal(66_135, estimate.Tension(rope), 40.0);
        Assert.True(estimate.Tension(rope with { Modulus = 100e9 }) < 66_000);
        Assert.True((estimate with { Colder = 40 }).Tension(rope) > 66_200);
        Assert.True((estimate with { Rise = 2 }).Tension(rope) > 66_200);
    }

    /// <summary>Heavier loads, weaker ends, a larger factor and a wider deck each ask for a thicker rope than 7/8 in at 30 ft.</summary>
    [Theory]
    [InlineData("")]
    [InlineData("loads: { live: 100 psf }")]
    [InlineData("loads: { snow: 100 psf }")]
    [InlineData("loads: { eccentricity: 90 % }")]
    [InlineData("use: public")]
    [InlineData("ropes: { sag: 3.5 % }")]
    [InlineData("ropes: { safety_factor: 7 }")]
    [InlineData("ropes: { termination: { kind: other, efficiency: 50 %, source: made up } }")]
    [InlineData("frames: { post: { foot: 28 in } }")]
    [InlineData("ropes: { on_sale: [rope-6x19-iwrc-ips-1/2, rope-6x19-iwrc-ips-1, rope-6x19-iwrc-ips-1-1/8] }")]
    public void The_rope_follows_what_pulls_it(string key)
    {
        var rope = RopeOf(Read("site: { span: 30 ft }\n" + key));
        Assert.Equal(key.Length == 0 ? 0.875 : Math.Max(0.9, rope), rope, 1e-9);
    }

    /// <summary>What is wrong with a value is told there, and not once more of what follows from it.</summary>
    [Theory]
    [InlineData("site: { span: 30 }", "not-a-quantity")]
    [InlineData("site: { span: 30 ft }\nropes: { spacing: wide }\nframes: { base: { length: 20 in } }", "not-a-quantity")]
    public void A_faulty_value_is_told_once(string file, string code)
    {
        var reading = ProjectReader.Read("name: a\n" + file + "\n", "a.yaml", RopeTable.Catalogue);
        Assert.Contains(code, reading.Faults.Select(f => f.Code));
        Assert.DoesNotContain(reading.Faults, f => f.Message.StartsWith("sag", StringComparison.Ordinal));
    }

    /// <summary>Whatever a file says within its ranges, what follows is within the ranges of its own key.</summary>
    [Theory]
    [InlineData("frames: { post: { foot: 20 ft } }")]
    [InlineData("frames: { post: { lean: 44.9 deg }, brace: { lean: 75 deg } }")]
    [InlineData("frames: { base: { length: 1 ft } }")]
    [InlineData("ropes: { spacing: 40 ft }")]
    [InlineData("ropes: { spacing: 4 in, sag: 0 in }")]
    [InlineData("deck: { layout: across, stringer: { section: 2x12 }, board: { section: 6x12 } }\nframes: { post: { lean: 44.9 deg } }")]
    [InlineData("ropes: { type: cord-7x19-3/32 }\nframes: { channel: { liner: 0 in } }")]
    public void Extremes_are_read_without_a_throw(string keys)
    {
        var reading = ProjectReader.Read("name: a\nsite: { span: 30 ft }\n" + keys + "\n", "a.yaml", RopeTable.Catalogue);
        Assert.True(reading.Parameters is not null || !reading.Faults.IsEmpty);
    }

    /// <summary>One key written otherwise: what follows from it is chosen anew.</summary>
    [Fact]
    public void With_another_span_the_rules_choose_anew()
    {
        var reading = ProjectReader.Read("name: a\nsite: { span: 20 ft }\n", "a.yaml", RopeTable.Catalogue);
        var longer = reading.With("site.span", "50 ft")!;
        Assert.Equal(64 * 0.0254, longer.Ropes.Spacing, 12);
        Assert.Equal("64 in", longer.Chosen.First(c => c.Path is "ropes.spacing").Text);
        var own = reading.With("ropes.spacing", "60 in")!;
        Assert.Equal(0.051 * 20 * 0.3048, own.Ropes.Sag, 12);
        Assert.DoesNotContain(own.Chosen, c => c.Path is "ropes.spacing");
    }

    /// <summary>The keys that say they have a rule are those that have one, and a rule looks at nothing that is chosen after it.</summary>
    [Fact]
    public void Keys_and_rules_are_the_same_and_no_rule_looks_ahead()
    {
        Assert.Equal(
            ByRule(ProjectKeys.Root, "").Order(StringComparer.Ordinal), DefaultRules.All.Select(r => r.Path).Order(StringComparer.Ordinal));
        for (var i = 0; i < DefaultRules.All.Length; i++)
        {
            // A base's length bounds the ropes only where it is given.
            Assert.Empty(
                DefaultRules.All[i..].Select(r => r.Path)
                    .Intersect(DefaultRules.All[i].From.Where(p => p is not "frames.base.length"), StringComparer.Ordinal));
        }

        Assert.All(DefaultRules.All, r =>
        {
            var spec = ProjectKeys.At(r.Path);
            Assert.True(spec is { Default: null, DefaultNote.Length: > 0, Follows.Length: > 0, Example.Length: > 0 }, r.Path);
        });
    }

    private static RopeProperties Thin => RopeTable.Catalogue.Find("rope-6x19-iwrc-eips-galvanized-3/8")!;

    private static double RopeOf(BridgeParameters p) => p.Ropes.Rope.Diameter / 0.0254;

    private static IEnumerable<string> ByRule(KeySpec spec, string path) => spec.Keys.SelectMany(k =>
    {
        var here = path.Length == 0 ? k.Name : $"{path}.{k.Name}";
        return ByRule(k, here).Concat(k.ByRule ? [here] : []);
    });

    private static Dictionary<string, string> Chosen(string file) =>
        Read(file).Chosen.ToDictionary(c => c.Path, c => c.Text, StringComparer.Ordinal);

    private static BridgeParameters Read(string file)
    {
        var reading = ProjectReader.Read(string.Create(CultureInfo.InvariantCulture, $"name: a\n{file}\n"), "a.yaml", RopeTable.Catalogue);
        Assert.Empty(reading.Lines);
        return reading.Parameters!;
    }
}
