using BridgeForm.Checks;
using BridgeForm.Loads;
using BridgeForm.Materials;
using BridgeForm.Trials;

namespace BridgeForm.Tests.Checks.Ropes;

public sealed class RopeChecksTests
{
    private const string Rope = "rope-6x19-iwrc-eips-galvanized-3/4";

    /// <summary>By hand: 29.4 short tons less 10 %, 80 %, divided by 5, against the largest tension of all cases.</summary>
    [Fact]
    public void Strength_compares_the_largest_tension_of_all_cases()
    {
        var model = Bridges.Build(Bridges.Garden);
        var check = Check(model, "rope-strength");
        Assert.Equal(58_800 * 0.9 * 0.8 / 5 * 4.4482216152605, check.Capacity!.Value, 1e-6);
        Assert.Equal(model.Cases.Max(c => c.Shape!.LargestTension), check.Demand, 1e-6);
        Assert.Equal(CheckStatus.Pass, check.Status);
        Assert.Contains("8467 lbf", check.Detail, StringComparison.Ordinal);
        Assert.Contains("from memory", check.Source, StringComparison.Ordinal);
        Assert.DoesNotContain(model.Remedies, r => r.CheckId is "rope-strength");
    }

    [Theory]
    [InlineData("strand-ehs-3/4", "clips", "", CheckStatus.Fail)]
    [InlineData(Rope, "clips", "", CheckStatus.Pass)]
    [InlineData(Rope, "wedge-socket", "", CheckStatus.Engineer)]
    [InlineData("strand-ehs-3/4", "socket", ", efficiency: 95 %, source: its maker", CheckStatus.Pass)]
    [InlineData("strand-ehs-3/4", "socket", ", efficiency: 95 %", CheckStatus.Engineer)]
    public void Ends_must_suit_the_rope(string rope, string kind, string more, CheckStatus expected)
    {
        var model = Bridges.Build(Bridges.Garden
            .Replace(Rope, rope, StringComparison.Ordinal)
            .Replace("sag: 6 %", $"sag: 6 %, termination: {{ kind: {kind}{more} }}", StringComparison.Ordinal));
        Assert.Equal(expected, Check(model, "rope-termination").Status);
        // No efficiency, or one that does not hold: clips on strand.
        Assert.Equal(
            more.Length == 0 && expected != CheckStatus.Pass ? CheckStatus.Engineer : CheckStatus.Pass,
            Check(model, "rope-strength").Status);
    }

    /// <summary>Input that once was told to take a thicker strand with clips: clips slip on any, whatever efficiency is written.</summary>
    [Theory]
    [InlineData("")]
    [InlineData(", efficiency: 80 %, source: hearsay")]
    public void No_strand_with_clips_is_recommended(string more)
    {
        var model = Bridges.Build(Bridges.Garden
            .Replace(Rope, "strand-ehs-1/2", StringComparison.Ordinal)
            .Replace("sag: 6 %", $"sag: 6 %, termination: {{ kind: clips{more} }}", StringComparison.Ordinal));
        Assert.Equal(CheckStatus.Fail, Check(model, "rope-termination").Status);
        var strength = Check(model, "rope-strength");

        // Pulled by more than a fifth of 26,900 lbf it fails whatever its ends keep.
        Assert.Equal((CheckStatus.Fail, 5380), (strength.Status, (int)Math.Round(strength.Capacity!.Value / 4.4482216152605)));
        Assert.Contains("clips do not hold a strand", strength.Detail, StringComparison.Ordinal);
        Assert.DoesNotContain("80 %", strength.Source, StringComparison.Ordinal);
        Assert.DoesNotContain(model.Remedies, r => r.CheckId is "rope-strength");
    }

    [Fact]
    public void Clip_text_names_number_spacing_turn_back_and_torque()
    {
        var detail = Check(Bridges.Build(Bridges.Garden), "rope-termination").Detail;
        foreach (var part in new[] { "4 U-bolt clips", "4.5 in", "18 in", "130 ft·lbf" })
        {
            Assert.Contains(part, detail, StringComparison.Ordinal);
        }
    }

    [Theory]
    [InlineData("anchor-a")]
    [InlineData("anchor-b")]
    [InlineData("support-move")]
    [InlineData("keeper-slip")]
    [InlineData("loss-of-one-rope")]
    public void What_only_an_engineer_may_judge(string id)
    {
        var check = Check(Bridges.Build(Bridges.Garden), id);
        Assert.Equal(CheckStatus.Engineer, check.Status);
        Assert.True(check.Demand > 0);
    }

    [Fact]
    public void Too_weak_a_rope_is_told_what_would_pass()
    {
        var model = Bridges.Build(Bridges.Garden.Replace("3/4,", "1/2,", StringComparison.Ordinal));
        Assert.Equal(CheckStatus.Fail, Check(model, "rope-strength").Status);
        var rope = Assert.Single(model.Remedies, r => r.Rope is not null);
        // What is proposed passes as a whole design, and the next smaller does not.
        Assert.Equal(CheckStatus.Pass, Strength(rope.Rope!, "6 %"));
        var sizes = RopeTable.Keys.Where(k => k.StartsWith("rope-6x19-iwrc-eips-galvanized", StringComparison.Ordinal)).ToList();
        Assert.Equal(CheckStatus.Fail, Strength(sizes[sizes.IndexOf(rope.Rope!) - 1], "6 %"));
        var sag = Assert.Single(model.Remedies, r => r.Length is not null).Length!.Value;
        Assert.Equal(Math.Round(sag / 0.0254 * 16), sag / 0.0254 * 16, 1e-9);
        Assert.Equal(CheckStatus.Pass, Strength("rope-6x19-iwrc-eips-galvanized-1/2", Inches(sag)));
        Assert.Equal(CheckStatus.Fail, Strength("rope-6x19-iwrc-eips-galvanized-1/2", Inches(sag - (0.0254 / 16))));
        Assert.All(model.Remedies, r => Assert.StartsWith("Preliminary", r.Text, StringComparison.Ordinal));
    }

    [Fact]
    public void Largest_value_that_holds_is_found_from_below()
    {
        Assert.InRange(Remedies.Largest(v => v * v <= 2, 0, 10, 1e-6)!.Value, Math.Sqrt(2) - 1e-6, Math.Sqrt(2));
        Assert.Null(Remedies.Largest(_ => false, 0, 1, 1e-6));
        Assert.Equal(1, Remedies.Largest(_ => true, 0, 1, 1e-6));
    }

    [Fact]
    public void Ground_and_water_are_checked_when_given()
    {
        Assert.DoesNotContain(Bridges.Build(Bridges.Garden).Checks, c => c.Id is "ground-clearance" or "water-clearance");
        var model = Bridges.Build(Bridges.Garden.Replace(
            "site: { span: 30 ft }", "site: { span: 30 ft, ground: [[0 ft, -8 ft], [30 ft, -8 ft]], water: -2 ft }",
            StringComparison.Ordinal));
        Assert.Equal(CheckStatus.Pass, Check(model, "ground-clearance").Status);
        // Sag 1.8 ft empty; half a foot more under load and stretch.
        Assert.Equal(CheckStatus.Fail, Check(model, "water-clearance").Status);
        Assert.All(model.Cases, c => Assert.NotNull(c.OverGround));
    }

    /// <summary>
    /// A freeboard that the stretched and loaded bridge does not keep fails, and the case is named; without one an engineer
    /// decides.
    /// </summary>
    [Fact]
    public void Freeboard_is_kept_in_every_case_after_the_stretch()
    {
        BridgeModel With(string more) => Bridges.Build(Bridges.Garden.Replace(
            "site: { span: 30 ft }", "site: { span: 30 ft, water: -4 ft" + more + " }", StringComparison.Ordinal));
        var open = With("");
        var check = Check(open, "water-clearance");
        Assert.Equal(CheckStatus.Engineer, check.Status);
        var stretched = open.Ropework.Stretch[^1];
        // Stretch and live load lower the bridge together: more than either by itself.
        var empty = Clearance.OverWater(stretched.Shape!, -4 * 0.3048, open.Parameters.Frames.Channel.Depth);
        Assert.True(stretched.OverWater!.Room < Math.Min(empty, open.Cases.Min(c => c.OverWater!.Value)) - 0.005);
        Assert.Equal(stretched.OverWater.Room, check.Demand, 1e-12);
        Assert.Contains($"case {stretched.OverWater.Case} after 0.5 % of stretch", check.Detail, StringComparison.Ordinal);
        Assert.Equal(open.Cases.Length, LoadCases.All(LoadCaseInput.Gather(
            Bridges.Layout(open.Parameters), open.Rope, BridgeMasses.Weigh(Bridges.Layout(open.Parameters))) with
        { Stretch = 0.005 }).Length);
        var room = check.Demand / 0.0254;
        Assert.Equal(
            CheckStatus.Pass, Check(With(FormattableString.Invariant($", freeboard: {room - 0.1:0.000} in")), "water-clearance").Status);
        Assert.Equal(
            CheckStatus.Fail, Check(With(FormattableString.Invariant($", freeboard: {room + 0.1:0.000} in")), "water-clearance").Status);
    }

    [Fact]
    public void Motion_is_a_warning_at_home_and_an_engineers_question_in_public()
    {
        Assert.Equal(CheckStatus.Warn, Check(Bridges.Build(Bridges.Garden), "bounce-vertical").Status);
        var open = Bridges.Build(Bridges.Garden.Replace("use: private", "use: public", StringComparison.Ordinal));
        Assert.Equal(CheckStatus.Engineer, Check(open, "bounce-vertical").Status);
        Assert.Equal(CheckStatus.Engineer, Check(open, "sway-lateral").Status);
    }

    [Fact]
    public void Ids_are_unique_and_every_check_has_words_and_source()
    {
        var checks = Bridges.Build(Bridges.Inclined).Checks;
        Assert.Equal(checks.Length, checks.Select(c => c.Id).Distinct(StringComparer.Ordinal).Count());
        Assert.All(checks, c => Assert.NotEmpty(c.Detail));
        Assert.All(checks, c => Assert.NotEmpty(c.Source));
    }

    private static CheckStatus Strength(string rope, string sag) => Check(
        Bridges.Build(
            Bridges.Garden.Replace(Rope, rope, StringComparison.Ordinal).Replace("sag: 6 %", "sag: " + sag, StringComparison.Ordinal)),
        "rope-strength").Status;

    private static string Inches(double metres) => FormattableString.Invariant($"{metres / 0.0254:0.0000} in");

    private static CheckResult Check(BridgeModel model, string id) =>
        Assert.Single(model.Checks, c => string.Equals(c.Id, id, StringComparison.Ordinal));
}
