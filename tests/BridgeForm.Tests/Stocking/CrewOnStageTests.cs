using BridgeForm.Output.Drawing;
using BridgeForm.Output.ShopSheets;
using BridgeForm.Project;
using BridgeForm.Ropes;
using BridgeForm.Stocking;

namespace BridgeForm.Tests.Stocking;

public class CrewOnStageTests
{
    // 250 lbf each, 4.4482216 N a pound force (NIST SP 811); people's weight 1 m over the deck.
    private const double Both = 500 * 4.4482216;
    private const double OverDeck = 1;
    private const double Gravity = 9.80665;

    // Both beside one guard, each rope solved by itself: one carries ½ ± (e + h·tan θ)/s of what hangs at a frame, and tan θ is how much
    // lower it hangs than the other over s; taken again and again until that stays.
    [Theory]
    [InlineData(2)]
    [InlineData(5)]
    public void Beside_one_guard_they_tilt_the_stage_as_two_ropes_have_it(int frame)
    {
        var model = Bridges.Build(Bridges.Garden + "\nerection: one-end\n");
        var crew = model.Stages().Single(s => s.Crew is { } c && c.Frames[0] == frame).Crew!;
        var (s, aside) = (
            model.Parameters.Ropes.Spacing, (DeckWidth.BetweenPosts(model.Parameters) / 2) - model.Parameters.Loads.PointEdge);
        var (weights, heights) = Hung(model, frame);
        var standing = model.Ropework.Standing!;
        weights[frame] += Both;
        heights[frame] += Both * (standing.DeckHeights[frame] + OverDeck);
        var tilts = new double[weights.Length];
        for (var round = 0; round < 60; round++)
        {
            var (left, right) = (One(+1), One(-1));
            for (var i = 1; i < tilts.Length - 1; i++)
            {
                tilts[i] = (right.Nodes[i].Y - left.Nodes[i].Y) / s;
            }
        }

        Assert.InRange(crew.Tilt!.Value, 0.01, 0.2);
        Assert.Equal(tilts.Take(frame + 1).Max(Math.Abs), crew.Tilt.Value, 1e-5);

        RopeShape One(int side)
        {
            double[] loads = [.. weights.Select((w, i) =>
                (w / 2) + (side * ((i == frame ? Both * aside : 0) + (heights[i] * tilts[i])) / s))];
            var request = LoadCaseRequest.At(model.Rope, 0, Backstays.Of(model.Parameters.Site)) with { Loads = [.. loads] };
            Assert.True(LoadCaseSolver.TryFind(
                request, LoadCaseSolver.DefaultAccuracy, LoadCaseSolver.DefaultMaxIterations, out var shape, out _));
            return shape!;
        }
    }

    // Parts of F01 to the frame with hardware, and the deck of the bays between; newtons, and N·m over the ropes.
    private static (double[] Weights, double[] Heights) Hung(BridgeModel model, int frame)
    {
        var masses = model.Pieces.SelectMany(p => p.Occurrences.Select(o => (o.Id, p.Mass)))
            .ToDictionary(p => p.Id, p => p.Mass, StringComparer.Ordinal);
        double Of(string group) => Gravity * model.Groups.Single(g => g.Name == group).MemberIds
            .Where(id => !id.Contains("/rail", StringComparison.Ordinal) && !id.Contains("/cap", StringComparison.Ordinal))
            .Sum(id => masses[id]);
        var standing = model.Ropework.Standing!;
        var (weights, heights) = (new double[model.Frames.Length], new double[model.Frames.Length]);
        for (var i = 1; i <= frame; i++)
        {
            var bays = (Of($"B{i:00}") + (i < frame ? Of($"B{i + 1:00}") : 0)) / 2;
            weights[i] = Of($"F{i:00}") + (Gravity * model.Parameters.Frames.HardwareMass) + bays;
            var deck = standing.Moments[i] - standing.FrameMoments[i] - standing.GuardMoments[i];
            heights[i] = standing.FrameMoments[i] + (deck * (i < frame ? 1 : 0.5));
        }

        return (weights, heights);
    }

    // The demo's first stages tilt by 15 degrees and more, its last by 2: bold where a bridge in use may not.
    [Fact]
    public void What_tilts_more_than_a_bridge_in_use_may_stands_out()
    {
        var model = Bridges.Build(Bridges.Garden + "\nerection: both-ends\n");
        var most = BridgeForm.Checks.Codes.Limits.CrossSlope(model.Parameters.Use, model.Parameters.Limits).Most;
        var texts = ErectionSheet.Draw(model).Pages.SelectMany(p => p.Content.Entities.OfType<SheetText>()).ToList();
        foreach (var crew in model.Stages().Select(s => s.Crew).OfType<CrewOnStage>())
        {
            var text = texts.First(t => t.Text == AssemblyWords.Tilt(crew));
            Assert.Equal(Math.Atan(crew.Tilt!.Value) > most, text.Bold);
        }

        Assert.Contains(model.Stages(), s => s.Crew is { } crew && Math.Atan(crew.Tilt!.Value) > most);
        Assert.Contains(model.Stages(), s => s.Crew is { } crew && Math.Atan(crew.Tilt!.Value) < most);
    }

    // From both ends, two at each, on opposite sides: by each rope for itself again, and more than at one end alone.
    [Fact]
    public void At_both_ends_on_opposite_sides_they_tilt_it_most()
    {
        var both = Bridges.Build(Bridges.Garden + "\nerection: both-ends\n").Stages();
        var one = Bridges.Build(Bridges.Garden + "\nerection: one-end\n").Stages();
        var (first, alone) = (both.First(s => s.Crew is not null).Crew!, one.First(s => s.Crew is not null).Crew!);
        Assert.Equal<int>([1, 10], first.Frames);
        Assert.True(first.Tilt > 2 * alone.Tilt, $"{first.Tilt} against {alone.Tilt}");
    }

    // One crew alone at its end lets the rope's slack run there: steeper than two that balance. One rope with half of all, by itself.
    [Fact]
    public void Steepest_is_with_one_crew_at_one_end_alone()
    {
        var model = Bridges.Build(Bridges.Garden + "\nerection: both-ends\n");
        var crew = model.Stages().First(s => s.Crew is not null).Crew!;
        var masses = model.Pieces.SelectMany(p => p.Occurrences.Select(o => (o.Id, p.Mass)))
            .ToDictionary(p => p.Id, p => p.Mass, StringComparer.Ordinal);
        double Of(string group) => Gravity * model.Groups.Single(g => g.Name == group).MemberIds
            .Where(id => !id.Contains("/rail", StringComparison.Ordinal) && !id.Contains("/cap", StringComparison.Ordinal))
            .Sum(id => masses[id]);
        var hardware = Gravity * model.Parameters.Frames.HardwareMass;
        var weights = new double[model.Frames.Length];
        weights[1] = Of("F01") + hardware + (Of("B01") / 2);
        weights[10] = Of("F10") + hardware + (Of("B11") / 2);
        var (one, both) = (Math.Max(Steepest(1), Steepest(10)), Steepest(1, 10));
        Assert.True(one > 1.05 * both, $"{one} against {both}");
        Assert.Equal(one, crew.Steepest!.Value, 1e-6);

        double Steepest(params int[] at)
        {
            double[] loads = [.. weights.Select((w, i) => (w + (at.Contains(i) ? Both : 0)) / 2)];
            var request = LoadCaseRequest.At(model.Rope, 0, Backstays.Of(model.Parameters.Site)) with { Loads = [.. loads] };
            Assert.True(LoadCaseSolver.TryFind(
                request, LoadCaseSolver.DefaultAccuracy, LoadCaseSolver.DefaultMaxIterations, out var shape, out _));
            return shape!.Nodes.Zip(shape.Nodes.Skip(1), (a, b) => Math.Abs((b.Y - a.Y) / (b.X - a.X))).Max();
        }
    }

    // Long and high over ropes that few frames pull tight: two beside a guard turn it over, and the steps stop there; a short bridge they
    // do not, and the steps go on.
    [Fact]
    public void Where_they_turn_it_over_nothing_goes_on_without_side_stays()
    {
        var model = Bridges.Build(Bridges.Garden.Replace("span: 30 ft", "span: 400 ft", StringComparison.Ordinal));
        var stages = model.Stages();
        var fallen = stages.Where(s => s.Crew is { Tilt: null }).Select(s => s.Stage).ToList();
        Assert.NotEmpty(fallen);
        var held = model.Erection().Where(s => s.IsHold && s.Text.StartsWith("side stays hold it", StringComparison.Ordinal)).ToList();
        Assert.Equal(fallen, held.Where(s => !s.Text.Contains("not worked out", StringComparison.Ordinal)).Select(s => s.Stage!.Value));
        var texts = ErectionSheet.Draw(model).Pages.SelectMany(p => p.Content.Entities.OfType<SheetText>()).Select(t => t.Text);
        Assert.Equal(fallen.Count, texts.Count(t => t.StartsWith("IT TURNS OVER", StringComparison.Ordinal)));
        Assert.DoesNotContain(
            Bridges.Build(Bridges.Garden).Erection(), s => s.Text.StartsWith("side stays hold it", StringComparison.Ordinal));
    }

    // On a long bridge not every stage is solved: one beside a stage that is turned over is held like it, the others go on.
    [Fact]
    public void A_stage_that_is_not_worked_out_is_held_like_its_neighbor()
    {
        var model = Bridges.Build(Bridges.Garden + "\nerection: one-end\n");
        var stages = model.Stages();
        var crewed = stages.Where(s => s.Crew is not null).ToList();
        var turned = crewed[3] with { Crew = crewed[3].Crew! with { Tilt = null } };
        var left = stages.Remove(crewed[2]).Remove(crewed[6]).Replace(crewed[3], turned);
        var held = model.Erection(left).Where(s => s.IsHold && s.Text.StartsWith("side stays hold it", StringComparison.Ordinal)).ToList();
        Assert.Equal<int?>([crewed[2].Stage, turned.Stage], held.Select(s => s.Stage));
        Assert.Contains($"at stage {turned.Stage} beside it", held[0].Text, StringComparison.Ordinal);
    }

    [Fact]
    public void Only_where_a_frame_is_hung_the_crew_stands_on_it()
    {
        var stages = Bridges.Build(Bridges.Garden + "\nerection: one-end\n").Stages();
        Assert.Equal([.. Enumerable.Range(1, 10)], stages.Where(s => s.Crew is not null).Select(s => Assert.Single(s.Crew!.Frames)));
        Assert.Null(stages[0].Crew);
        Assert.All(stages.Where(s => s.Crew is not null), s => Assert.True(s.Crew!.Tension > s.Tension));
    }
}
