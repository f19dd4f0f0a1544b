using BridgeForm.Checks;
using BridgeForm.Checks.Register;
using BridgeForm.Checks.Timber;
using BridgeForm.Project;
using BridgeForm.Trials;

namespace BridgeForm.Tests.Checks.Timber;

public sealed class TimberCheckTests
{
    private const double Psi = BridgeForm.Quantities.Units.PoundForce / (0.0254 * 0.0254);

    // Keeper holes so near to the channels that they weaken the same section.
    private static string Thin => Bridges.Garden.Replace("section: 4x6", "section: 3x6", StringComparison.Ordinal)
        .Replace("  post:", Near + "  post:", StringComparison.Ordinal);

    private const string Near = "  keeper: { spread: 2-1/2 in }\n";

    // 300 lbf in the middle of one 2x6 on its flat (S = 5.5·1.5²/6 = 2.0625 in³), P·L/4, plus its own weight.
    [Fact]
    public void One_board_under_the_point_load_by_hand()
    {
        var context = Contexts.Of(Thin);
        var check = Contexts.Check(context, "board-bending-point");
        var span = Enumerable.Range(1, context.Layout.Bays)
            .Max(i => (context.Layout.Deck.Points[i] - context.Layout.Deck.Points[i - 1]).Length) / 0.0254;
        var density = context.Parameters.StockNamed("treated").Density.High * 9.80665 / BridgeForm.Quantities.Units.PoundForce * Math
            .Pow(0.0254, 3);
        var moment = (300 * span / 4) + (5.5 * 1.5 * density * span * span / 8);
        Assert.Equal(moment / 2.0625, check.Demand / Psi, 0.01);
        Assert.Equal(1350 * 0.85 * 1.15, check.Capacity!.Value / Psi, 0.01);
        Assert.Equal(CheckStatus.Pass, check.Status);
    }

    // A thick base whose braces stand outside the ropes is notched on its pulled side when somebody pulls the guard inward.
    [Fact]
    public void Each_case_tells_the_face_in_tension()
    {
        var thick = Contexts.Check(Bridges.Garden, "base-channel-notch");
        Assert.Equal(CheckStatus.Fail, thick.Status);
        var sides = thick.Detail.Split("; ");
        Assert.Contains(
            "200 lbf outward", Assert.Single(sides, s => s.StartsWith("top in tension", StringComparison.Ordinal)),
            StringComparison.Ordinal);
        var bottom = Assert.Single(sides, s => s.StartsWith("bottom in tension", StringComparison.Ordinal));
        Assert.Contains("200 lbf inward ", bottom, StringComparison.Ordinal);
        Assert.DoesNotContain("outward", bottom, StringComparison.Ordinal);
        Assert.Equal(CheckStatus.Pass, Contexts.Status(Thin, "base-channel-notch"));
        var under = Bridges.Garden.Replace("spacing: 46 in", "spacing: 54 in", StringComparison.Ordinal)
            .Replace("length: 58 in", "length: 62 in", StringComparison.Ordinal);
        var wide = Contexts.Check(under, "base-channel-notch");
        Assert.Equal(CheckStatus.Pass, wide.Status);
        Assert.DoesNotContain("bottom in tension", wide.Detail, StringComparison.Ordinal);
    }

    [Fact]
    public void The_notch_formula_is_for_the_pulled_side()
    {
        var check = Contexts.Check(Thin, "base-channel-shear");
        Assert.Contains("bottom in tension: (2/3)·Fv'·b·dn·(dn/d)²", check.Detail, StringComparison.Ordinal);

        // 3x6, channel 5/8 in deep, keeper holes of 1/4 in 13/16 in from its walls: (2/3)·175·0.97·1.6 · (2.5 − 0.25) · 4.875 ·
        // (4.875/5.5)² lbf.
        var expected = 2.0 / 3 * 175 * 0.97 * 1.6 * 2.25 * 4.875 * Math.Pow(4.875 / 5.5, 2);
        Assert.Equal(expected, check.Capacity!.Value / BridgeForm.Quantities.Units.PoundForce, 0.01);
    }

    [Fact]
    public void A_thin_rail_is_third_grade_unless_the_builder_brings_values()
    {
        Assert.Contains(
            "No. 3 of the species: 1x lumber is stress-rated only if so stamped", Contexts.Check(Thin, "rail-bending").Detail,
            StringComparison.Ordinal);
        var own = Thin + """

            values:
              - { species: western-red-cedar, grade: no2, size: 1x4, bending: 1200 psi, tension: 400 psi, shear: 150 psi, compression_across: 400 psi, compression: 600 psi, modulus: 1000000 psi, wet: true, size_adjusted: true, source: my own tests }
            """;
        var check = Contexts.Check(own, "rail-bending");
        Assert.Equal(CheckStatus.Pass, check.Status);
        Assert.Equal(1200 * 1.6, check.Capacity!.Value / Psi, 0.01);
        Assert.Contains("my own tests", check.Source, StringComparison.Ordinal);
    }

    [Fact]
    public void Incised_wood_has_four_fifths()
    {
        var incised = Thin + """

            stock:
              treated: { species: southern-pine, grade: no1, treated: true, incised: true, lengths: [8 ft, 16 ft] }
              cedar: { species: western-red-cedar, grade: no2, treated: false, lengths: [8 ft, 12 ft] }
            """;
        foreach (var id in (string[])["board-bending-area", "board-shear", "base-channel-shear"])
        {
            Assert.Equal(0.8 * Contexts.Check(Thin, id).Capacity!.Value, Contexts.Check(incised, id).Capacity!.Value, 1);
        }
    }

    [Fact]
    public void A_stock_without_values_is_for_the_engineer()
    {
        var oak = Thin + """

            stock:
              treated: { species: white-oak, grade: no1, treated: true, lengths: [8 ft, 16 ft] }
              cedar: { species: white-oak, grade: no2, treated: false, lengths: [8 ft, 12 ft] }
            """;
        var checks = AllChecks.Run(Contexts.Of(oak));
        Assert.All(
            checks.Where(c => (c.Id.StartsWith("board-", StringComparison.Ordinal) && c.Id != "board-bearing-length")
                || c.Id is "base-bending" or "base-shear" or "guard-post" or "guard-brace" or "cap-bending-down"
                or "guard-bearing-post-foot"
                or "rope-bearing"),
            c =>
            {
                Assert.Equal(CheckStatus.Engineer, c.Status);
                Assert.EndsWith(
                    c.Id.StartsWith("cap", StringComparison.Ordinal) ? "white-oak no2" : "white-oak no1", c.NotChecked,
                    StringComparison.Ordinal);
            });

        // What only states what an engineer needs lacks no value.
        Assert.All(
            checks.Where(c => c.Id is "guard-joint-post-foot" or "keeper-uplift-guard" or "end-frame-down" or "anchor-a"),
            c => Assert.Null(c.NotChecked));
    }

    [Fact]
    public void Public_guards_bear_the_line_load_by_itself()
    {
        var text = Thin.Replace("use: private", "use: public", StringComparison.Ordinal);
        Assert.DoesNotContain("plf", Contexts.Check(Thin, "guard-joint-post-foot").Detail, StringComparison.Ordinal);
        var check = Contexts.Check(text, "guard-joint-post-foot");
        Assert.Contains("50 plf on", check.Detail, StringComparison.Ordinal);
        Assert.Contains("200 lbf inward", check.Detail, StringComparison.Ordinal);
    }

    // Push × height above the rope / rope spacing, less what lies on one rope: moments about the other rope.
    [Fact]
    public void A_push_lifts_the_far_side_off_its_rope()
    {
        var context = Contexts.Of(Thin);
        var check = Contexts.Check(context, "keeper-uplift-guard");
        var layout = context.Layout;
        var height = GuardFrame.Build(context.Parameters).Top + layout.Levels[1].Top;
        var light = FrameWeights.Lightest(context).Total;
        Assert.Equal((GuardPush.Point * height / (46 * 0.0254)) - (0.6 * light / 2), check.Demand, 1e-6);
        Assert.Equal(CheckStatus.Engineer, check.Status);

        // Frames between ordinary bays are lighter than those beside the end bays, whose rails run on over the landing.
        Assert.True(light < FrameWeights.Weigh(layout, s => s.Density.Low, 1, 1).Total * 0.99);
    }

    [Fact]
    public void Wind_is_looked_at_where_it_is_given()
    {
        Assert.Contains("not given", Contexts.Check(Thin, "keeper-uplift-wind").Detail, StringComparison.Ordinal);
        Assert.True(Contexts.Check(Thin + "\nloads: { uplift: 30 psf }\n", "keeper-uplift-wind").Demand > 0);
    }

    // ASCE 7: of what holds down only six tenths count. Pressure × width × length / 2 − 0.6 × dead / 2.
    [Fact]
    public void Wind_meets_six_tenths_of_the_dead_load()
    {
        var context = Contexts.Of(Thin + "\nloads: { uplift: 30 psf }\n");
        var layout = context.Layout;
        var width = DeckWidth.BetweenPosts(context.Parameters);
        var length = Enumerable.Range(1, layout.Bays).Max(i => (layout.Poses[i].Node - layout.Poses[i - 1].Node).Length);
        var dead = FrameWeights.Lightest(context).Total;
        var pressure = 30 * BridgeForm.Quantities.Units.PoundForce / (0.3048 * 0.3048);
        Assert.Equal((pressure * width * length / 2) - (0.6 * dead / 2), Contexts.Check(context, "keeper-uplift-wind").Demand, 1e-6);
    }

    // A 1-1/2 in hole through every post (2x4, through 1-1/2 in): π/4 · 1.5² · 1.5 in³ each, two posts a frame.
    [Fact]
    public void Weights_know_the_users_holes()
    {
        var drilled = Contexts.Of(Thin + "\nholes: { post: [{ face: wide, from_end: 20 in, diameter: 1-1/2 in }] }\n");
        var plain = Contexts.Of(Thin);
        double Weight(CheckContext c) => FrameWeights.Weigh(c.Layout, s => s.Density.InService, 1, 3).Total;
        var density = plain.Parameters.StockNamed("treated").Density.InService;
        var gone = 2 * Math.PI / 4 * 1.5 * 1.5 * 1.5 * Math.Pow(0.0254, 3) * density * 9.80665;
        Assert.Equal(gone, Weight(plain) - Weight(drilled), 0.02 * gone);
        var bay = BaseCases.Longest(drilled.Layout);
        Assert.Equal(
            (drilled.Masses.Frames[1] + drilled.Masses.Packers[1] + drilled.Masses.Bays[bay - 1]) * 9.80665,
            FrameWeights.Weigh(drilled.Layout, s => s.Density.InService, 1, bay).Total,
            1e-6);
    }

    // Weights of one frame and one bay are what the whole bridge's masses say of them.
    [Fact]
    public void Weights_agree_with_the_bridges_masses()
    {
        var context = Contexts.Of(Thin);
        var bay = BaseCases.Longest(context.Layout);
        var weights = FrameWeights.Weigh(context.Layout, s => s.Density.InService, 1, bay);
        var masses = context.Masses;
        Assert.Equal((masses.Frames[1] + masses.Packers[1] + masses.Bays[bay - 1]) * 9.80665, weights.Total, 1e-6);
    }

    [Fact]
    public void What_would_pass_does_pass_and_a_little_more_does_not()
    {
        var wide = Thin.Replace("spacing: 3 ft", "spacing: 4 ft", StringComparison.Ordinal);
        var context = Contexts.Of(wide);
        var checks = AllChecks.Run(context);
        Assert.Contains(checks, c => c is { Id: "board-bending-point", Status: CheckStatus.Fail });
        var remedy = Assert.Single(TimberRemedies.Find(context, checks, Bridge.ShapeWithin), r => r.CheckId is "board-bending-point");
        var board = Assert.Single(DeckSpan.List(context));
        Assert.All(
            DeckBending.Check(context, board with { Span = (remedy.Length!.Value, "") }), c => Assert.Equal(CheckStatus.Pass, c.Status));
        Assert.Contains(
            DeckBending.Check(context, board with { Span = (remedy.Length!.Value + 0.003, "") }), c => c.Status == CheckStatus.Fail);
        Assert.True(BoardsPass(remedy.Spacing!.Value));
        Assert.False(BoardsPass(remedy.Spacing!.Value + 0.003));

        bool BoardsPass(double spacing) => AllChecks.Run(Contexts.Of(wide.Replace(
            "spacing: 4 ft", FormattableString.Invariant($"spacing: {spacing * 1000:0.0000} mm"), StringComparison.Ordinal)))
            .Where(c => c.Id.StartsWith("board-", StringComparison.Ordinal)).All(c => c.Status != CheckStatus.Fail);
    }

    /// <summary>Treads lie evenly: the fewer there are, the more each carries, whatever least gap the file asks for.</summary>
    [Fact]
    public void Fewer_treads_carry_more()
    {
        static string Across(string count) => Thin + FormattableString.Invariant(
            $"\ndeck: {{ layout: across, count: {count}, board: {{ section: 2x4 }}, stringer: {{ section: 2x6, count: 3 }} }}\n");
        double Tread(string count, string id) => Contexts.Check(Across(count), id).Ratio!.Value;
        Assert.Equal(2, Tread("4", "tread-bending-area") / Tread("8", "tread-bending-area"), 0.15);
        Assert.True(Tread("6", "tread-deflection-area") > Tread("8", "tread-deflection-area"));
        var context = Contexts.Of(Across("4"));
        var tread = DeckSpan.List(context).Single(b => b.Kind is "tread");
        Assert.Equal(3.5 * 0.0254 + Contexts.Check(context, "deck-gaps").Demand, tread.Tributary, 1e-9);
        // 5/8 of w·L beside the middle of three supports.
        var load = DeckLoad.List(context, tread).Single(l => l.Name is "area");
        Assert.Equal(0.625 * 60 * 47.88026 * tread.Tributary * tread.Span.Length, load.Shear.Value, 0.01);
    }

    // A ball of 35 mm falls through.
    [Fact]
    public void Wide_gaps_in_the_floor_fail()
    {
        static string Across(string count) => Thin + FormattableString.Invariant(
            $"\ndeck: {{ layout: across, count: {count}, board: {{ section: 2x4 }}, stringer: {{ section: 2x6, count: 3 }} }}\n");
        Assert.Equal(CheckStatus.Fail, Contexts.Status(Across("4"), "deck-gaps"));
        Assert.Equal(CheckStatus.Warn, Contexts.Status(Across("8"), "deck-gaps"));
    }

    // The deeper channel of the end bases counts too: 1-1/2 in for a rope of 3/4 in.
    [Fact]
    public void A_strap_must_reach_the_rope_in_the_end_bases()
    {
        var deep = Contexts.Check(Thin.Replace("end_depth: 3/4 in", "end_depth: 1-1/2 in", StringComparison.Ordinal), "keeper-strap-reach");
        Assert.Equal(CheckStatus.Warn, deep.Status);
        Assert.Equal(2, deep.Ratio!.Value, 1e-9);
    }

    // Snow is given: people and snow together, 0.75 · (60 + 50) = 82.5 psf, more than either.
    [Fact]
    public void People_and_snow_stand_on_the_deck_together()
    {
        var snow = Contexts.Of(Thin + "\nloads: { live: 60 psf, snow: 50 psf }\n");
        var check = Contexts.Check(snow, "board-bending-area");
        Assert.Contains("0.75 live + 0.75 snow 82.5 psf", check.Detail, StringComparison.Ordinal);
        var own = Contexts.Of(Thin + "\nloads: { live: 82.5 psf }\n");

        // As much on both ropes; the tension is not the same, for snow lies lower than people stand and leans less with the frames.
        var (people, both) = (own.Cases.Single(c => c.Id is "live-full"), snow.Cases.Single(c => c.Id is "live-snow"));
        Assert.Equal(people.Shape!.Loads.Sum() + people.Lighter!.Loads.Sum(), both.Shape!.Loads.Sum() + both.Lighter!.Loads.Sum(), 1e-6);
        Assert.True(both.CrossSlope < people.CrossSlope);
        Assert.Equal(people.FirstOrderCrossSlope, both.FirstOrderCrossSlope, 1e-9);
        Assert.DoesNotContain(own.Cases, c => c.Id is "live-snow" or "snow");
    }

    // Table 4D: beams and stringers on the flat 0.86 (select structural), 0.74 (no. 1), 1.00 (no. 2), from memory; the least is taken.
    [Fact]
    public void Timbers_on_the_flat_lose_strength()
    {
        Assert.Equal(0.74, AdjustmentFactors.FlatUse(new BridgeForm.Materials.NominalSize(6, 10)).Value);
        Assert.Equal(1, AdjustmentFactors.FlatUse(new BridgeForm.Materials.NominalSize(6, 8)).Value);
        Assert.Equal(1.15, AdjustmentFactors.FlatUse(new BridgeForm.Materials.NominalSize(2, 6)).Value);
    }

    [Fact]
    public void Stringers_that_carry_the_treads_are_counted()
    {
        string Across(int stringers) => Thin + string.Create(System.Globalization.CultureInfo.InvariantCulture,
            $"\ndeck: {{ layout: across, board: {{ section: 1x6, stock: treated }}, stringer: {{ section: 2x6, count: {stringers} }} "
                + $"}}\nvalues: [{{ species: southern-pine, grade: no1, size: 1x6, bending: 1000 psi, tension: 600 psi, shear: 175 psi, "
                + $"compression_across: 565 psi, compression: 1500 psi, modulus: 1600000 psi, modulus_min: 580000 psi, source: "
                + $"invented }}]\n");
        var context = Contexts.Of(Across(2));
        var remedy = Assert.Single(
            TimberRemedies.Find(context, AllChecks.Run(context), Bridge.ShapeWithin),
            r => r.CheckId.StartsWith("tread-", StringComparison.Ordinal));
        var count = int.Parse(remedy.Text.Split("On ")[1].Split(' ')[0], System.Globalization.CultureInfo.InvariantCulture);
        bool TreadsPass(int n) => AllChecks.Run(Contexts.Of(Across(n)))
            .Where(c => c.Id.StartsWith("tread-", StringComparison.Ordinal)).All(c => c.Status == CheckStatus.Pass);
        Assert.True(TreadsPass(count));
        Assert.False(TreadsPass(count - 1));
    }

    [Fact]
    public void A_base_that_passes_is_found()
    {
        var context = Contexts.Of(Bridges.Garden);
        var remedy = Assert.Single(
            TimberRemedies.Find(context, AllChecks.Run(context), Bridge.ShapeWithin), r => r.CheckId is "base-channel-notch");
        var name = remedy.Text.Split("a ")[1].Split(' ')[0];
        Assert.Equal(
            CheckStatus.Pass,
            Contexts.Status(Bridges.Garden.Replace("section: 4x6", $"section: {name}", StringComparison.Ordinal), "base-channel-notch"));
    }

    // Channels 1-3/4 in deep in the end bases of a bridge whose other bases pass as a 3x6.
    [Fact]
    public void An_end_base_that_passes_is_found()
    {
        var deep = Contexts.Of(Thin.Replace("end_depth: 3/4 in", "end_depth: 1-3/4 in", StringComparison.Ordinal));
        var checks = AllChecks.Run(deep);
        Assert.Equal(
            "end-base-shear",
            string.Join(" ", checks.Where(c => c.Status == CheckStatus.Fail && c.Id.Contains("base-", StringComparison.Ordinal)).Select(
                c => c.Id)));
        var remedies = TimberRemedies.Find(deep, checks, Bridge.ShapeWithin).Where(r => r.CheckId is "end-base-shear").ToList();
        var (shallower, remedy) = (Assert.Single(remedies, r => r.Length is not null), Assert.Single(remedies, r => r.Length is null));
        Assert.Contains("channel.end_depth ", shallower.Text, StringComparison.Ordinal);
        Assert.Equal(CheckStatus.Pass, Ends(shallower.Length!.Value));
        Assert.Equal(CheckStatus.Fail, Ends(shallower.Length!.Value + (0.0254 / 16)));
        var name = remedy.Text.Split("a ")[1].Split(' ')[0];
        var text = Thin.Replace("end_depth: 3/4 in", "end_depth: 1-3/4 in", StringComparison.Ordinal);
        Assert.Equal(
            CheckStatus.Pass,
            Contexts.Status(text.Replace("section: 3x6", $"section: {name}", StringComparison.Ordinal), "end-base-shear"));

        static CheckStatus Ends(double depth) => Contexts.Status(
            Thin.Replace(
                "end_depth: 3/4 in", FormattableString.Invariant($"end_depth: {depth * 1000:0.0000} mm"), StringComparison.Ordinal),
            "end-base-shear");
    }

    [Fact]
    public void A_deck_across_checks_treads_and_stringers()
    {
        var across = Thin + "\ndeck: { layout: across, stringer: { section: 2x6, count: 3 } }\n";
        var ids = AllChecks.Run(Contexts.Of(across)).Select(c => c.Id).ToList();
        Assert.Contains("tread-bending-point", ids);
        Assert.Contains("stringer-deflection-area", ids);
        Assert.DoesNotContain("board-shear", ids);
    }

    [Fact]
    public void A_deep_mouth_passes_where_the_net_section_does()
    {
        var deep = Thin.Replace("depth: 5/8 in, end_depth: 3/4 in", "depth: 1-1/2 in, end_depth: 1-1/2 in", StringComparison.Ordinal)
            .Replace("spacing: 46 in", "spacing: 54 in", StringComparison.Ordinal)
            .Replace("length: 58 in", "length: 62 in", StringComparison.Ordinal);
        var context = Contexts.Of(deep);
        var mouth = Contexts.Check(context, "channel-deep-mouth");
        // 1-1/2 in and more against a quarter of 5-1/2 in, which is no limit where the net section passes.
        Assert.True(mouth.Demand > 5.5 / 4 * 0.0254);
        Assert.Null(mouth.Ratio);
        Assert.Equal(NetSection.Passes(context) ? CheckStatus.Pass : CheckStatus.Fail, mouth.Status);
        Assert.Contains("the net section passes", mouth.Detail, StringComparison.Ordinal);
        Assert.Equal(CheckStatus.Warn, Contexts.Check(context, "channel-deep-mouth-end").Status);
    }
}
