using BridgeForm.Output.Drawing;
using BridgeForm.Output.ShopSheets;
using BridgeForm.Output.Tables;
using BridgeForm.Roles;
using BridgeForm.Ropes;
using BridgeForm.Stocking;
using BridgeForm.Tests.Output.Samples;

namespace BridgeForm.Tests.Stocking;

public sealed class ErectionTests
{
    private const double Gravity = 9.80665;

    public static TheoryData<string> Orders => ["both-ends", "one-end"];

    [Theory]
    [MemberData(nameof(Orders))]
    public void Nothing_is_hung_before_anchors_falls_and_sag_are_seen_to(string order)
    {
        var steps = Built(order).Erection();
        var hung = steps.First(s => s.Text.StartsWith("Hang the frame", StringComparison.Ordinal)).Number;
        foreach (var words in (string[])
            ["signed off by a licensed engineer", "fall protection is planned", "exclusion zone", "at their sag"])
        {
            var hold = steps.First(s => s.IsHold && s.Text.Contains(words, StringComparison.Ordinal));
            Assert.True(hold.Number < hung, words);
        }

        Assert.Equal(Enumerable.Range(1, steps.Length), steps.Select(s => s.Number));
    }

    // Each frame that is hung is held until its keepers are closed, before its deck is laid; each step of the assembly is there once.
    [Theory]
    [MemberData(nameof(Orders))]
    public void Keepers_are_closed_before_anyone_steps_on(string order)
    {
        var model = Built(order);
        var steps = model.Erection();
        var done = steps.Where(s => s is { Stage: > 0, IsHold: false }).ToList();
        Assert.Equal(model.Assembly().Select(s => s.Where), done.Select(s => s.Where));
        Assert.All(
            model.Assembly().Zip(done), p => Assert.StartsWith(AssemblyWords.Of(p.First), p.Second.Text, StringComparison.Ordinal));
        foreach (var frame in model.Frames.Where(f => !f.IsEnd))
        {
            var hang = steps.Single(s => s.Where == frame.Name && s.Text.StartsWith("Hang", StringComparison.Ordinal));
            var hold = steps.First(s => s.IsHold && s.Where.Split(' ').Contains(frame.Name, StringComparer.Ordinal));
            Assert.Contains("keepers", hold.Text, StringComparison.Ordinal);
            Assert.True(hang.Number < hold.Number);
            Assert.DoesNotContain(
                steps, s => s.Number < hold.Number && s.Stage == hold.Stage && s.Text.StartsWith("Lay the deck", StringComparison.Ordinal));
        }

        var guard = steps.Single(s => s.IsHold && s.Text.Contains("rails and caps are closed", StringComparison.Ordinal));
        Assert.True(guard.Number > steps.Last(s => s.Text.StartsWith("Lay the caps", StringComparison.Ordinal)).Number);
    }

    // Two parts are called shim: the words of the step that sets the one under a cap name neither wrongly.
    [Theory]
    [InlineData("F01/shim-left", true)]
    [InlineData("F01/brace-left", false)]
    public void A_frame_with_shims_under_its_cap_says_so(string part, bool says)
    {
        var words = AssemblyWords.Of(new AssemblyStep(1, 1, "F01", AssemblyWork.BuildFrame, ["F01/base", part]));
        Assert.Equal(says, words.Contains("cap shims on the posts' heads", StringComparison.Ordinal));
        Assert.DoesNotContain("tapered shim", words, StringComparison.Ordinal);
        Assert.Equal("cap shim", RoleTable.Of(Role.Shim).Printed);
        Assert.Contains(RoleTable.Of(Role.Shim).Joints, j => j.What == "cap shim to post");
    }

    // By the pieces: base, posts and braces of a frame, and its hardware.
    [Fact]
    public void A_frame_weighs_what_its_pieces_do()
    {
        var model = Built("both-ends");
        var built = model.Assembly().Single(s => s.Where == "F03" && s.Work == AssemblyWork.BuildFrame).Parts;
        // Freshly treated: 55 lb/ft3 (from memory), not as dry as in service.
        var mass = built.Sum(id => model.Pieces.Single(p => p.Occurrences.Any(o => o.Id == id)).Volume) * 55 * 16.01846337;
        var lift = model.Erection().Single(s => s.Where == "F03" && s.Text.StartsWith("Hang", StringComparison.Ordinal));
        Assert.Equal(5, built.Length);
        Assert.Equal(mass + model.Parameters.Frames.HardwareMass, lift.Mass, 1e-6);
        Assert.True(ErectionPlan.Heaviest(model.Erection())!.Mass >= lift.Mass);
    }

    // By its length, at 1.04 lb/ft of 3/4 in IWRC rope (catalog tables of wire rope, from memory).
    [Fact]
    public void A_rope_is_lifted_too()
    {
        var model = Built("both-ends");
        var lift = model.Erection().Single(s => s.Text.StartsWith("Hoist", StringComparison.Ordinal));
        Assert.Equal(1.04 * 0.45359237 / 0.3048 * model.Ropework.Cut!.Length!.Value, lift.Mass, 0.02 * lift.Mass);
        Assert.StartsWith("Hoist both ropes with a pull line and hang their eyes at the supports", lift.Text, StringComparison.Ordinal);
        Assert.Contains(model.Erection(), s => s.IsHold && s.Text.Contains("slot in the landing at A and B", StringComparison.Ordinal));
    }

    // Behind a saddle the clips are far from the frames; at the support they reach 18 in turned back (8 CCR 8497) and the thimble into F01.
    [Fact]
    public void Clips_that_lie_at_a_frame_hold_it_up()
    {
        var near = Bridges.Build(Bridges.Garden.Replace("spacing: 3 ft", "spacing: 22 in", StringComparison.Ordinal));
        Assert.Contains(near.Erection(), s => s is { IsHold: true, Where: "F01" } && s.Text.StartsWith("clips", StringComparison.Ordinal));
        const string Stay = "backstay: { length: 20 ft, angle: 30 deg } }";
        var behind = Bridges.Build(Bridges.Garden.Replace("spacing: 3 ft", "spacing: 22 in", StringComparison.Ordinal)
            .Replace("span: 30 ft", $"span: 30 ft, a: {{ {Stay}, b: {{ {Stay}", StringComparison.Ordinal));
        Assert.DoesNotContain(behind.Erection(), s => s.Text.StartsWith("clips", StringComparison.Ordinal));
    }

    // Stretch is drawn in: 0.5 % of what lies between the middle and the frame next to a support; cut and fixed there only afterwards.
    [Fact]
    public void Where_stretch_is_drawn_in_end_bays_are_fixed_last()
    {
        var model = Built("both-ends");
        var nearer = model.Checks.Single(c => c.Id == "end-bay-room");
        Assert.Equal(BridgeForm.Checks.CheckStatus.Warn, nearer.Status);
        var loose = model.Erection().Where(s => s.Text.Contains("leave all of this bay loose", StringComparison.Ordinal)).ToList();
        Assert.Equal(6, loose.Count);
        Assert.All(loose, s => Assert.Contains(s.Where, new[] { "B01", "B11" }));
        Assert.Single(model.Erection(), s => s.Text.StartsWith("Cut boards, rails and caps of the first", StringComparison.Ordinal));
    }

    // Statics, whatever the ropes' shape: both ends of a rope hold up half of all that hangs, and the rope itself; one end pulls as
    // hard along as the other; the last stage pulls as the finished bridge does.
    [Theory]
    [MemberData(nameof(Orders))]
    public void Reactions_of_each_stage_carry_what_hangs(string order)
    {
        var model = Built(order);
        var masses = model.Pieces.SelectMany(p => p.Occurrences.Select(o => (o.Id, p.Mass)))
            .ToDictionary(p => p.Id, p => p.Mass, StringComparer.Ordinal);
        var own = model.Rope.WeightPerLength * model.Rope.UnstressedLength();
        var onRopes = 0.0;
        var stages = model.Stages();
        foreach (var stage in model.Assembly().GroupBy(s => s.Stage))
        {
            foreach (var step in stage)
            {
                var share = model.Frames.FirstOrDefault(f => f.Name == step.Where) is { } frame
                    ? frame.IsEnd ? 0 : 1
                    : step.Where == "B01" || step.Where == $"B{model.Frames.Length - 1:00}" ? 0.5 : 1;
                onRopes += share * (step.Parts.Sum(p => masses[p])
                    + (step.Work == AssemblyWork.HangFrame ? model.Parameters.Frames.HardwareMass : 0));
            }

            var state = stages.Single(s => s.Stage == stage.Key);
            Assert.Equal((onRopes * Gravity / 2) + own, -(state.ReactionA.Y + state.ReactionB.Y), 0.01);
            Assert.Equal(state.ReactionA.X, -state.ReactionB.X, 1e-6);
        }

        Assert.Equal(model.Rope.LargestTension, stages[^1].Tension, 1e-3 * model.Rope.LargestTension);
    }

    [Fact]
    public void Sheet_and_table_say_where_to_stop_and_no_rope_is_an_anchor_against_falls()
    {
        var model = Built("both-ends");
        var texts = string.Join(
            ' ', ErectionSheet.Draw(model).Pages.SelectMany(p => p.Content.Entities.OfType<SheetText>()).Select(t => t.Text));
        var csv = ErectionTable.Csv(model, SampleUnits.Imperial);
        var holds = model.Erection().Count(s => s.IsHold);
        Assert.Equal(holds, csv.Split("STOP UNTIL").Length - 1);
        Assert.Equal(holds + 1, texts.Split("STOP UNTIL").Length - 1);
        Assert.Contains("Exclusion zone", texts, StringComparison.Ordinal);
        Assert.Contains("The ropes, frames and guards of this bridge are none", texts, StringComparison.Ordinal);
        Assert.Contains(Caution.Text, csv, StringComparison.Ordinal);
    }

    private static BridgeModel Built(string order) => Bridges.Build(Bridges.Garden + "\nerection: " + order + "\n");
}
