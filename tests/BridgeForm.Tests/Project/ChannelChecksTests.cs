using BridgeForm.Project.Files;

namespace BridgeForm.Tests.Project;

/// <summary>
/// Channels and keeper holes against the base: each limit from just within and from just beyond, by hand. A rope of 3/4 in and
/// 1/8 in of clearance make a channel of 7/8 in; ropes 46 in apart; a base 3-1/2 × 5-1/2 × 58 in.
/// </summary>
public sealed class ChannelChecksTests
{
    // 58 − 0.875 in; without keeper holes, which reach further.
    [Theory]
    [InlineData("57.12 in", null)]
    [InlineData("57.125 in", "run over the ends of the base; write less than 57-1/8 in")]
    [InlineData("57.13 in", "run over the ends of the base; write less than 57-1/8 in")]
    public void Channels_lie_in_the_base(string spacing, string? says) =>
        Expect(("spacing: 46 in", $"spacing: {spacing}"), "keeper: { hole: 0 in }", says);

    [Theory]
    [InlineData("3.99 in", null)]
    [InlineData("4 in", "run into each other; write more than the channel's width, 4 in")]
    public void Channels_do_not_meet(string width, string? says) =>
        Expect(("spacing: 46 in", "spacing: 4 in"), "keeper: { hole: 0 in }", says, $"width: {width}");

    [Theory]
    [InlineData("width: 0.751 in", null)]
    [InlineData("width: 0.749 in", "is narrower than the rope with its liners; write at least 3/4 in")]
    [InlineData("width: 1.001 in, liner: 1/8 in", null)]
    [InlineData("width: 0.999 in, liner: 1/8 in", "is narrower than the rope with its liners; write at least 1 in")]
    public void Channels_take_the_rope_and_its_liners(string channel, string? says) =>
        Expect(("clearance: 1/8 in", channel), "keeper: { hole: 0 in }", says);

    [Theory]
    [InlineData("5.49 in", null)]
    [InlineData("5.5 in", "cuts through the base, which is 5-1/2 in deep")]
    public void Channels_leave_some_of_the_base(string depth, string? says) =>
        Expect(("end_depth: 3/4 in", $"end_depth: {depth}"), "keeper: { hole: 0 in }", says);

    // Beside the channel: 0.875 + 0.25 in. Over the ends: 58 − 46 − 0.25 in.
    [Theory]
    [InlineData("spread: 1.126 in, hole: 1/4 in", null)]
    [InlineData("spread: 1.124 in, hole: 1/4 in", "into the rope channel; write at least 1-1/8 in")]
    [InlineData("spread: 11.74 in, hole: 1/4 in", null)]
    [InlineData("spread: 11.76 in, hole: 1/4 in", "over the ends of the base; write at most 11-3/4 in")]
    [InlineData("hole: 1/4 in, depth: 5.49 in", null)]
    [InlineData("hole: 1/4 in, depth: 5.5 in", "keeper holes are blind")]
    public void Keeper_holes_lie_beside_the_channel_and_in_the_base(string keeper, string? says) =>
        Expect(("", ""), $"keeper: {{ {keeper} }}", says);

    // Ropes 8 in apart: 8 − 0.25 in.
    [Theory]
    [InlineData("7.74 in", null)]
    [InlineData("7.76 in", "keeper holes of the two ropes meet; write less than 7-3/4 in")]
    public void Keeper_holes_of_two_ropes_do_not_meet(string spread, string? says) =>
        Expect(("spacing: 46 in", "spacing: 8 in"), $"keeper: {{ hole: 1/4 in, spread: {spread} }}", says);

    private static void Expect((string Old, string New) change, string keeper, string? says, string channel = "clearance: 1/8 in")
    {
        var text = Bridges.Garden.Replace("clearance: 1/8 in", channel, StringComparison.Ordinal) + "\n  " + keeper;
        var changed = change.Old.Length == 0 ? text : text.Replace(change.Old, change.New, StringComparison.Ordinal);
        var reading = ProjectReader.Read(Ground.Under(changed), "test.yaml", Bridges.Catalogue);
        if (says is null)
        {
            Assert.Equal([], reading.Faults.Select(f => f.Message));
        }
        else
        {
            Assert.Contains(reading.Faults, f => f.Message.Contains(says, StringComparison.Ordinal));
        }
    }
}
