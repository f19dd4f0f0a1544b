using System.Collections.Immutable;
using BridgeForm.Frames;
using BridgeForm.Loads;
using BridgeForm.Roles;

namespace BridgeForm.Tests.Loads.Envelope;

/// <summary>Where people bring the section nearest to rolling over: against every pattern of a grid, each solved as any case is.</summary>
public sealed class RollLoadsTests
{
    private const int Grid = 16;

    [Theory]
    [InlineData(Bridges.Garden)]
    [InlineData(Bridges.Inclined)]
    public void No_stretches_of_a_grid_turn_it_over_sooner(string text)
    {
        var parameters = Bridges.Read(text);
        Assert.True(Bridge.TryShape(parameters, out var rope, out var fault), fault?.Message);
        var layout = BridgeLayout.Lay(parameters, rope);
        var input = LoadCaseInput.Gather(layout, rope, BridgeMasses.Weigh(layout));
        var found = LoadCases.All(input).Single(c => c.Id is LoadCaseIds.LeastRoll);
        var (patterns, span) = (new LoadPatterns(input), input.Design.Nodes[^1].X);

        // All of both ends of the bridge that stop at grid lines, and begin there as well.
        var least = (
            from a in Enumerable.Range(0, Grid / 4)
            from b in Enumerable.Range(a + 1, (Grid / 2) - a)
            from c in Enumerable.Range(b, Grid - b)
            from d in new[] { Grid - (Grid / 8), Grid }
            where d > c
            let stretches = ImmutableArray.Create<LoadedStretch>(
                new(span * a / Grid, span * b / Grid, DeckPart.Whole), new(span * c / Grid, span * d / Grid, DeckPart.Whole))
            select patterns.OnStretches("tried", "tried", stretches, LoadPatterns.Wood.Dry, input.ReferenceTemperature))
            .Select(loading => LoadCases.Solved(input, [loading], default)[0].Pair!.Roll()!.Value)
            .Min();
        var mine = found.Pair!.Roll()!.Value;
        Assert.InRange(mine, 0, 1.01 * least);
        Assert.InRange(mine, 0, 0.9 * LoadCases.All(input).Single(c => c.Id is LoadCaseIds.LiveFull).Pair!.Roll()!.Value);
    }

    // It is judged hottest and on ropes that have stretched as well, and there by three quarters of what all other states need.
    [Fact]
    public void It_is_among_the_states_that_are_judged()
    {
        var context = Checks.Contexts.Of(Bridges.Read(Bridges.Garden));
        Assert.Equal(2, context.Ropework.Roll.Count(s => s.Case is LoadCaseIds.LeastRoll));
        Assert.Equal(LoadCaseIds.LeastRoll, RollState.Least(context.Ropework.Roll)!.Case);
        var (listed, pattern) = (
            context.Ropework.Roll.Where(s => s.Case is not LoadCaseIds.LeastRoll).Min(s => s.Factor!.Value),
            context.Ropework.Roll.Where(s => s.Case is LoadCaseIds.LeastRoll).Min(s => s.Factor!.Value));
        var check = Checks.Contexts.Check(context, "roll");
        Assert.Equal(Math.Max(2 / listed, 1.5 / pattern), check.Ratio!.Value, 6);
    }
}
