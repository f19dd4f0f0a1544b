using BridgeForm.Checks;
using BridgeForm.Project;

namespace BridgeForm.Tests.Trials;

/// <summary>What is told to pass where something lies too short or is too thin passes, tried as a whole bridge.</summary>
public sealed class BearingRemedyTests
{
    private const string Across = """
        name: Across (invented)
        units: imperial
        site: { span: 16 ft }
        ropes: { type: rope-6x19-iwrc-eips-galvanized-5/8, spacing: 46 in, sag: 5 % }
        frames: { spacing: 32 in, base: { section: 3x6, length: 62 in }, post: { foot: 18-1/4 in }, brace: { foot: 30 in } }
        deck: { layout: across, board: { section: 2x4 }, stringer: { section: 2x4, count: 3 } }
        guard: { rails: { section: 1x4, count: 6 } }
        """;

    // Two stringers of 1-1/2 in and 1/8 in between them (IRC R502.6); no word of spans, which mend nothing here.
    [Fact]
    public void Stringers_lie_on_a_base_of_that_size()
    {
        var parameters = Bridges.Read(Across);
        var model = Bridges.Build(parameters);
        var remedy = Assert.Single(model.Remedies, r => r.CheckId is "stringer-bearing-length");
        Assert.Equal(3.125 * 0.0254, remedy.Length!.Value, 12);
        Assert.DoesNotContain("frames.spacing", remedy.Text, StringComparison.Ordinal);
        Assert.Equal(CheckStatus.Pass, Status(Base(parameters, remedy.Length.Value), "stringer-bearing-length"));
        Assert.Equal(CheckStatus.Fail, Status(Base(parameters, remedy.Length.Value - (0.0254 / 16)), "stringer-bearing-length"));
    }

    [Fact]
    public void Rails_of_that_section_pass()
    {
        var remedy = Assert.Single(Bridges.Build(Across).Remedies, r => r.CheckId is "rail-bending");
        var section = remedy.Text.Split("rails of ")[1].Split(' ')[0];
        Assert.Contains(section, (string[])["5/4x4", "2x4"]);
        Assert.Equal(
            CheckStatus.Pass,
            Status(
                Bridges.Read(Across.Replace("rails: { section: 1x4", "rails: { section: " + section, StringComparison.Ordinal)),
                "rail-bending"));
    }

    // Ropes 51 in apart: 4 × 5/8 in beyond their axes are 2.5 in, so the base is 56 in long.
    [Fact]
    public void A_base_of_that_length_passes()
    {
        var text = Across.Replace("spacing: 46 in", "spacing: 51 in", StringComparison.Ordinal)
            .Replace(
                "length: 62 in }, post: { foot: 18-1/4 in }, brace: { foot: 30 in }",
                "length: 55 in }, post: { foot: 18-1/4 in }, brace: { foot: 27 in }", StringComparison.Ordinal);
        var remedy = Assert.Single(Bridges.Build(text).Remedies, r => r.CheckId is "base-end-distance");
        Assert.Equal(56 * 0.0254, remedy.Length!.Value, 12);
        Assert.Equal(
            CheckStatus.Pass,
            Status(Bridges.Read(text.Replace("length: 55 in", "length: 56 in", StringComparison.Ordinal)), "base-end-distance"));
    }

    private static BridgeParameters Base(BridgeParameters parameters, double along) => parameters with
    {
        Frames = parameters.Frames with
        {
            Base = parameters.Frames.Base with { Section = parameters.Frames.Base.Section with { Thickness = along } },
        },
    };

    private static CheckStatus Status(BridgeParameters parameters, string id) =>
        Bridges.Build(parameters).Checks.Single(c => c.Id == id).Status;
}
