using BridgeForm.Checks;
using BridgeForm.Checks.Register;
using BridgeForm.Proposals;

namespace BridgeForm.Tests.Proposals;

/// <summary>Every check that can fail has values that may help it, or a sentence that says why none does.</summary>
public sealed class CureTests
{
    public static TheoryData<string> Failing =>
        [.. AllChecks.Declared.Where(d => d.Statuses.Contains(CheckStatus.Fail)).Select(d => d.Id)];

    [Theory]
    [MemberData(nameof(Failing))]
    public void A_check_that_can_fail_has_a_way_out(string check) =>
        Assert.True(Cures.Of(check).Length > 0 ^ Cures.Sentence(check) is not null, check);

    [Theory]
    [MemberData(nameof(Failing))]
    public void What_helps_can_be_moved(string check) =>
        Assert.Empty(Cures.Of(check).Select(c => c.Key).Except(Levers.Keys, StringComparer.Ordinal));

    [Fact]
    public void Every_key_has_its_lever() => Assert.Equal(
        Levers.Keys.Order(StringComparer.Ordinal),
        new Levers(SearchTests.Read("name: Levers (invented)\nsite: { span: 20 ft }"), []).All.Select(l => l.Key)
            .Order(StringComparer.Ordinal));

    [Fact]
    public void What_is_said_of_a_check_names_the_key_to_write()
    {
        Assert.Contains("ropes.safety_factor", Search.Help("safety-factor"), StringComparison.Ordinal);
        Assert.Contains("guard.rails.section, frames.spacing", Search.Help("rail-bending"), StringComparison.Ordinal);
        Assert.Contains("read its numbers", Search.Help("no-such-check"), StringComparison.Ordinal);
    }

    /// <summary>A handrail that fails in bending is made thicker; a bridge without one is given one that a hand closes around.</summary>
    [Theory]
    [InlineData("", "guard.handrail.height", "guard.handrail.diameter 2 in, guard.handrail.height 35 in")]
    [InlineData("guard: { handrail: { diameter: 1-1/2 in } }", "guard.handrail.diameter", "guard.handrail.diameter 2 in")]
    [InlineData("guard: { handrail: { height: 34 in } }", "guard.handrail.height", "guard.handrail.height 35 in")]
    [InlineData("guard: { pickets: { section: 2x2 } }", "guard.pickets.gap", "")]
    public void Handrails_and_pickets_have_levers(string guard, string key, string writes)
    {
        var reading = SearchTests.Read("name: Levers (invented)\nsite: { span: 20 ft }\n" + guard);
        var lever = new Levers(reading, []).All.Single(l => l.Key == key);
        var steps = lever.Steps(reading.Parameters!, Way.More, 1);
        Assert.Equal(
            writes, string.Join("; ", steps.Select(s => string.Join(", ", s.Select(c => $"{c.Path} {c.Text}")))));
    }

    [Fact]
    public void A_gap_that_lets_a_ball_through_is_written_smaller()
    {
        var reading = SearchTests.Read("name: L (invented)\nsite: { span: 20 ft }\nguard: { pickets: { gap: 5 in } }");
        var change = Assert.Single(Assert.Single(
            new Levers(reading, []).All.Single(l => l.Key == "guard.pickets.gap").Steps(reading.Parameters!, Way.Less, 1)));
        Assert.Equal("3-1/2 in", change.Text);
    }
}
