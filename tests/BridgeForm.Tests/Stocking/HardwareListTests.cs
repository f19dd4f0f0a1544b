using System.Collections.Immutable;
using BridgeForm.Frames;
using BridgeForm.Stocking;

namespace BridgeForm.Tests.Stocking;

public class HardwareListTests
{
    private static readonly Lazy<BridgeModel> s_garden = new(() => Bridges.Build(Bridges.Garden));

    [Fact]
    public void Joints_are_those_of_the_parts()
    {
        var model = s_garden.Value;
        var frames = model.Frames.Length;
        var bays = frames - 1;
        var joints = Joints.Of(model.Pieces).ToDictionary(j => j.Name, j => j.Count);
        Assert.Equal(2 * frames, joints["keeper"]);
        Assert.Equal(2 * frames, joints["post-foot"]);
        Assert.Equal(2 * frames, joints["brace-foot"]);
        Assert.Equal(2 * frames, joints["brace-head"]);
        Assert.Equal(2 * 2 * bays, joints["cap"]);
        Assert.Equal(2 * 2 * bays * model.Parameters.Guard.RailCount, joints["rail"]);
        Assert.DoesNotContain("tread", joints.Keys);
    }

    [Fact]
    public void Every_tread_is_fixed_to_every_stringer()
    {
        var model = Bridges.Build(Bridges.Garden + "\n" + "deck: { layout: across, board: { section: 2x6 }, stringer: { section: 2x6, count: 3 } }\n");
        var treads = model.Pieces.Where(p => p.Role == Role.Tread).Sum(p => p.Occurrences.Length);
        Assert.Equal(3 * treads, Joints.Of(model.Pieces).Single(j => j.Name is "tread").Count);
    }

    [Fact]
    public void Fasteners_are_counts_of_the_file_times_joints()
    {
        var model = s_garden.Value;
        var given = ImmutableSortedDictionary<string, int>.Empty.Add("post_foot", 4).Add("spire", 2);
        var list = HardwareList.Of(model with { Parameters = model.Parameters with { Fasteners = given } });
        Assert.Equal(4 * 2 * model.Frames.Length, list.Single(i => i.Item is "Fasteners, post-foot").Quantity);
        Assert.Null(list.Single(i => i.Item is "Fasteners, cap").Quantity);
        Assert.Contains("no such joint", list.Single(i => i.Item is "Fasteners, spire").Where, StringComparison.Ordinal);
    }

    // California 8 CCR 8497, table 1: 3/4 in takes 4 clips; four rope ends.
    [Fact]
    public void Clips_and_thimbles_for_four_rope_ends()
    {
        var list = HardwareList.Of(s_garden.Value);
        Assert.Equal(16, list.Single(i => i.Item is "Rope clips").Quantity);
        Assert.Equal(4, list.Single(i => i.Item is "Thimbles").Quantity);
    }

    // NAVEDTRA 14026: n = 3 D + 1 rounded up, D in inches, is never above the table by more than the one clip that old editions add.
    [Fact]
    public void Clip_table_rises_with_the_rope()
    {
        Assert.All(RopeClips.Rows.Zip(RopeClips.Rows.Skip(1)), p =>
        {
            Assert.True(p.First.Diameter < p.Second.Diameter);
            Assert.True(p.First.Count <= p.Second.Count && p.First.TurnBack <= p.Second.TurnBack && p.First.Torque <= p.Second.Torque);
        });
        Assert.All(RopeClips.Rows, r => Assert.InRange(r.Count, Math.Ceiling((3 * r.Diameter) + 1) - 1, Math.Ceiling((3 * r.Diameter) + 1) + 2));
        Assert.Equal(3.0 / 16, RopeClips.For(5.0 / 32 * 0.0254)!.Diameter);
        Assert.Equal(0.75, RopeClips.For(0.75 * 0.0254)!.Diameter);
        Assert.Null(RopeClips.For(0.05));
    }

    [Fact]
    public void Other_rope_ends_get_no_clips()
    {
        var model = s_garden.Value;
        var sockets = model with { Parameters = model.Parameters with { Ropes = model.Parameters.Ropes with { TerminationKind = "poured-socket" } } };
        Assert.DoesNotContain(HardwareList.Of(sockets), i => i.Item is "Rope clips" or "Thimbles");
        Assert.Contains(HardwareList.Of(sockets), i => i.Item is "Rope ends, poured-socket" && i.Quantity == 4);
    }
}
