using BridgeForm.Project.Files;

namespace BridgeForm.Tests.Project;

/// <summary>What is said of a joint that cannot be made is true, and what is advised works.</summary>
public sealed class JointRuleTests
{
    private const string Head = """
        name: Braces far out (invented)
        site: { span: 30 ft }
        ropes: { spacing: 46 in }
        frames:
          base: { section: 4x6, length: 76 in }
          post: { section: 4x4, length: 40 in, lean: 8 deg, foot: 18-1/2 in }
          brace: { section: 4x4, lean: 18 deg, foot: 33 in }
        joints:

        """;

    private const string Brace = "brace-foot: { bolt: 3/8 in, count: 3, spacing: 3 in, ";

    [Theory]
    [InlineData("brace-foot: { bolt: 0.4 in, carrier: { depth: 3-1/2 in } }", "the nearest is 3/8 in", "bolt: 0.4 in", "bolt: 3/8 in")]
    [InlineData("brace-foot: { bolt: 1/2 in, carrier: { depth: 3-1/2 in } }", "write at most 3/8 in", "bolt: 1/2 in", "bolt: 3/8 in")]
    [InlineData(Brace + "end: 1 in, carrier: { depth: 3-1/2 in } }", "needs at least 1-5/16 in", "end: 1 in", "end: 1-5/16 in")]
    [InlineData(
        Brace + "carrier: { depth: 3-1/2 in, spacing: 1 in } }", "write at least 1-7/8 in between", "spacing: 1 in", "spacing: 1-7/8 in")]
    [InlineData(
        "brace-foot: { bolt: 3/8 in, lines: 2, carrier: { depth: 3-1/2 in } }", "apart: two lines of bolts of 3/8 in lie at least 1-1/8 in",
        "bolt: 3/8 in, lines: 2", "bolt: 5/16 in, lines: 2, end: 2-1/2 in")]
    [InlineData(
        "brace-foot: { bolt: 1/4 in, lines: 2, apart: 2 in, carrier: { depth: 3-1/2 in } }", "write at most 1-1/2 in, or lines: 1",
        "apart: 2 in", "apart: 1-1/2 in")]
    [InlineData(
        Brace + "carrier: { lines: 2, apart: 4 in, depth: 3-1/2 in } }",
        "find no place in the base, 5-1/2 in deep; write at most 3-7/16 in",
        "apart: 4 in, depth: 3-1/2 in", "apart: 2 in, depth: 2-3/4 in")]
    [InlineData(
        Brace + "carrier: { bolt: 0.3 in, depth: 3-1/2 in } }", "the nearest is 5/16 in", "bolt: 0.3 in", "bolt: 5/16 in")]
    [InlineData(
        "brace-foot: { bolt: 1/4 in, count: 3, lines: 2, end: 15/16 in, carrier: { depth: 3-1/2 in } }",
        "write at least 1-1/8 in", "end: 15/16 in", "end: 1-1/8 in")]
    [InlineData(Brace + "carrier: { depth: 1 in } }", "lie 1-1/2 in to 4-15/16 in", "depth: 1 in", "depth: 1-1/2 in")]
    [InlineData(Brace + "carrier: { depth: 4-3/4 in } }", "below the base", "depth: 4-3/4 in", "depth: 3-1/2 in")]
    [InlineData(
        Brace + "carrier: { depth: 3-1/2 in }, plate: { length: 6 in } }", "ask for at least 1", "plate: { length: 6 in }",
        "plate: { thickness: 1/4 in }")]
    [InlineData(
        Brace + "carrier: { depth: 3-1/2 in, shift: 4 in } }", "3.5 diameters; shift the row inward", "shift: 4 in", "shift: 1 in")]
    [InlineData(
        "brace-head: { bolt: 3/8 in, spacing: 2 in, carrier: { shift: -3 in, spacing: 2 in }, plate: { width: 8 in } }",
        "inward over the post's inner face", "width: 8 in", "thickness: 1/4 in")]
    [InlineData(
        "post-foot: { bolt: 3/8 in, carrier: { depth: 4 in, shift: 2-1/2 in } }", "over the rope's channel", "depth: 4 in",
        "depth: 2-7/8 in")]
    [InlineData(
        Brace + "capacity: { uplift: 1 kN, shear: 1 kN, source: me }, carrier: { depth: 3-1/2 in } }", "write kind: bracket",
        "capacity: { uplift: 1 kN, shear: 1 kN, source: me }, ", "")]
    [InlineData("brace-foot: { kind: bracket }", "needs its maker's figures", "kind: bracket", "kind: bracket, capacity: "
        + "{ uplift: 1500 lbf, shear: 900 lbf, source: maker's sheet }")]
    [InlineData(
        "brace-head: { bolt: 3/8 in, spacing: 2 in, end: 2-5/8 in, carrier: { shift: -3 in, spacing: 2 in } }",
        "square to the slanting cut, an edge towards which it pulls, and needs 1-1/2 in, 4 diameters; write at least 3-7/16 in",
        "end: 2-5/8 in", "end: 3-7/16 in")]
    [InlineData(
        "brace-foot: { bolt: 1/4 in, count: 3, carrier: { lines: 2, apart: 3-1/2 in, depth: 3 in } }",
        "want half the distance of two lines to either edge of the base; write at most 2-1/2 in", "apart: 3-1/2 in", "apart: 2-1/2 in")]
    [InlineData("rail: { screw: no10, length: 1-3/4 in }", "write at least 2-3/16 in", "length: 1-3/4 in", "length: 2-3/16 in")]
    [InlineData("rail: { screw: no10, length: 5 in }", "other side; write at most 4-1/2 in", "length: 5 in", "length: 4 in")]
    [InlineData("rail: { screw: no14, count: 6 }", "closer than 4 diameters", "count: 6", "count: 2")]
    [InlineData(
        "rail: { capacity: { uplift: 1 kN, shear: 1 kN, source: me } }", "write kind: bracket", "capacity: { uplift: 1 kN, shear: 1 kN, "
            + "source: me }", "count: 3")]
    [InlineData("cap: { kind: screws }", "end grain, which never counts; write kind: bracket", "kind: screws", "kind: bracket, capacity: "
        + "{ uplift: 400 lbf, shear: 300 lbf, source: maker's sheet }")]
    [InlineData("cap: { kind: bracket }", "a bracket needs its maker's figures", "kind: bracket", "capacity: "
        + "{ uplift: 400 lbf, shear: 300 lbf, source: maker's sheet }")]
    public void Each_fault_has_its_cure(string joint, string says, string from, string to)
    {
        Assert.Contains(Faults(joint), f => f.Contains(says, StringComparison.Ordinal));
        Assert.Empty(Faults(joint.Replace(from, to, StringComparison.Ordinal)));
    }

    [Fact]
    public void Members_of_unlike_thickness_take_no_plates()
    {
        var text = Head.Replace("brace: { section: 4x4", "brace: { section: 2x4", StringComparison.Ordinal) + "  " + Brace + "}\n";
        var fault = Assert.Single(ProjectReader.Read(text, "test.yaml", Bridges.Catalogue).Lines);
        Assert.Contains("the brace has 1-1/2 in along the bridge and the base 3-1/2 in", fault, StringComparison.Ordinal);
        Assert.EndsWith("[joint-thickness]", fault, StringComparison.Ordinal);
    }

    // The keeper's holes lie 1-5/8 in to either side of a channel in the middle of 23 in, 2 in deep.
    [Fact]
    public void A_bolt_keeps_clear_of_keepers() => Assert.Contains(
        Faults("post-foot: { bolt: 3/8 in, carrier: { depth: 4 in, shift: 2-1/2 in } }"),
        f => f.Contains("meets the keeper's hole", StringComparison.Ordinal));

    // 1/16 in or more of wood is left between the two, less than 1.5 · 3/8 in from the bolt's middle.
    [Fact]
    public void A_bolt_leaves_wood_beside_a_keeper()
    {
        var fault = Assert.Single(
            Faults("post-foot: { bolt: 3/8 in, carrier: { depth: 3-1/8 in, shift: 2-1/2 in } }"),
            f => f.Contains("the keeper's hole", StringComparison.Ordinal));
        Assert.Contains("leaves 3/8 in, less than 1.5 diameters, to the keeper's hole", fault, StringComparison.Ordinal);
    }

    [Fact]
    public void Two_plates_do_not_lie_on_each_other() => Assert.Contains(
        Faults(
            "post-foot: { bolt: 3/8 in, count: 6, spacing: 3 in, carrier: { depth: 3 in } }",
            "brace-foot: { bolt: 3/8 in, count: 5, spacing: 4 in, carrier: { depth: 3-1/2 in } }"),
        f => f.Contains("lie on each other", StringComparison.Ordinal));

    private static IReadOnlyList<string> Faults(params string[] joints) =>
        [.. ProjectReader.Read(Head + string.Concat(joints.Select(j => $"  {j}\n")), "test.yaml", Bridges.Catalogue).Lines];
}
