using System.Text.RegularExpressions;
using BridgeForm.Checks;
using BridgeForm.Materials;
using BridgeForm.Project;
using BridgeForm.Project.Files;
using BridgeForm.Quantities;
using BridgeForm.Tests.Checks;
using BridgeForm.Trials;

namespace BridgeForm.Tests.Trials;

/// <summary>Plates that are told pass when they are written, with all other checks.</summary>
public sealed partial class JointRemedyTests
{
    private static readonly JointPlace[] s_all = Enum.GetValues<JointPlace>();

    /// <summary>The starter's joints are what the list finds for its bridge, and without them that is told.</summary>
    [Theory]
    [InlineData(UnitSystem.Imperial)]
    [InlineData(UnitSystem.Metric)]
    public void The_starter_has_the_lightest_that_pass(UnitSystem units)
    {
        var starter = Read(Starter.Text(units));
        var bare = Read(Starter.Text(units).Split("\njoints:")[0] + "\ntreatment: { fasteners: hot-dip-galvanized }\n");
        var context = Contexts.Of(bare);
        var found = JointRemedies.Choose(context.Layout, context.Ropework, bare, s_all);
        Assert.Equal(
            starter.Frames.Joints.Select(j => JointRemedies.Written(j.Plates!, units)),
            found.Select(j => JointRemedies.Written(j.Plates!, units)));
    }

    /// <summary>A joint that fails, and two that the file leaves out: written as told, all pass, and nothing else fails.</summary>
    [Fact]
    public void What_is_told_passes()
    {
        var text = Starter.Text(UnitSystem.Imperial).Split("\njoints:")[0] + "\ntreatment: { fasteners: hot-dip-galvanized }\njoints:\n";
        var model = Build(text + "  brace-foot: { bolt: 3/8 in, carrier: { depth: 3 in, shift: -1 in } }\n");
        Assert.Equal(CheckStatus.Fail, Status(model, JointPlace.BraceFoot));
        Assert.Equal(CheckStatus.Engineer, Status(model, JointPlace.PostFoot));
        var told = model.JointsThatPass();
        Assert.Contains(model.Remedies, r => r.CheckId == Id(JointPlace.BraceFoot));
        var cures = s_all.Select(p => told.Single(r => r.CheckId == Id(p)).Write).ToList();
        var lines = cures.Select(c => Cure().Match(c)).Select(m => $"  {m.Groups["joint"].Value}: {m.Groups["keys"].Value}\n");
        var cured = Build(text + string.Concat(lines));
        Assert.All(s_all, p => Assert.Equal(CheckStatus.Pass, Status(cured, p)));
        Assert.True(Verdict.IsClear(cured.Checks));
        Assert.DoesNotContain(cured.Remedies, r => r.CheckId.StartsWith("guard-joint", StringComparison.Ordinal));
    }

    /// <summary>Braces thinner than the base take no plates: thicker ones, further out, are tried, and pass as told.</summary>
    [Fact]
    public void Thin_braces_are_told_of_thicker_ones()
    {
        const string Text = "name: Thin (invented)\nsite: { span: 30 ft }\n";
        var model = Build(Text);
        var told = model.JointsThatPass();
        var write = told.Single(r => r.CheckId == Id(JointPlace.BraceFoot)).Write;
        Assert.StartsWith("frames.brace.section 4x4, frames.brace.foot ", write, StringComparison.Ordinal);
        var foot = write.Split("frames.brace.foot ")[1].Split(',')[0];
        var lines = s_all.Select(p => Cure().Match(told.Single(r => r.CheckId == Id(p)).Write))
            .Select(m => $"  {m.Groups["joint"].Value}: {m.Groups["keys"].Value}\n");
        var cured = Build(
            Text + $"frames: {{ brace: {{ section: 4x4, foot: {foot} }} }}\njoints:\n" + string.Concat(lines));
        Assert.All(s_all, p => Assert.Equal(CheckStatus.Pass, Status(cured, p)));
        Assert.True(Verdict.IsClear(cured.Checks));
    }

    private static BridgeModel Build(string text) => Bridges.Build(Read(text));

    private static BridgeParameters Read(string text)
    {
        var reading = ProjectReader.Read(text, "test.yaml", RopeTable.Catalogue);
        Assert.Empty(reading.Lines);
        return reading.Parameters!;
    }

    [GeneratedRegex("joints\\.(?<joint>[a-z-]+) (?<keys>.*)$", RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex Cure();

    private static string Id(JointPlace place) => place switch
    {
        JointPlace.PostFoot => "guard-joint-post-foot",
        JointPlace.BraceFoot => "guard-joint-brace-foot",
        _ => "guard-joint-brace-head",
    };

    private static CheckStatus Status(BridgeModel model, JointPlace place) => model.Checks.Single(c => c.Id == Id(place)).Status;
}
