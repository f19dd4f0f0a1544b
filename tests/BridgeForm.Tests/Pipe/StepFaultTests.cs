using BridgeForm.Project;
using BridgeForm.Project.Files;
using BridgeForm.Project.Reading.Faults;
using BridgeForm.Roles;
using BridgeForm.Tests.Project;

namespace BridgeForm.Tests.Pipe;

/// <summary>What cannot be built is told in the step that finds it, in the words of one call, and no step follows.</summary>
public sealed class StepFaultTests
{
    public static TheoryData<string> Impossible => [.. FaultFiles.Impossible.Keys.Select(c => c.ToString())];

    [Theory]
    [MemberData(nameof(Impossible))]
    public void A_part_that_does_not_fit_ends_it_at_the_layout(string code)
    {
        var text = FaultFiles.Impossible[Enum.Parse<FaultCode>(code)];
        var parameters = ProjectReader.Read(text, "bridge.yaml", Bridges.Catalogue).Parameters!;
        var step = Assert.Single(new Rebuild().Steps(parameters));
        AssertTold(parameters, step, Stage.Layout);
        Assert.NotEmpty(step.Fault!.Misfits);
    }

    [Fact]
    public void Ropes_without_a_shape_end_it_at_the_layout()
    {
        var garden = Bridges.Read(Bridges.Garden);
        var slack = garden with { Ropes = garden.Ropes with { Sag = 0 } };
        AssertTold(slack, Assert.Single(new Rebuild().Steps(slack)), Stage.Layout);
    }

    // A hole wider than the brace is long, which no file may ask for: nothing is left of it.
    [Fact]
    public void A_piece_that_cannot_be_cut_ends_it_at_the_pieces()
    {
        var garden = Bridges.Read(Bridges.Garden);
        var hole = new HoleParameters(Role.Brace, DrilledFace.Wide, 0.3, FromFarEnd: false, Across: 0, Diameter: 3, Depth: null);
        var gone = garden with { Frames = garden.Frames with { Holes = [hole] } };
        var steps = new Rebuild().Steps(gone).ToList();
        Assert.Equal([Stage.Layout, Stage.Pieces], steps.Select(s => s.Stage));
        Assert.Null(steps[0].Fault);
        AssertTold(gone, steps[1], Stage.Pieces);
        Assert.Equal(FaultCode.PieceNotCut.Id(), steps[1].Fault!.Code);
    }

    [Fact]
    public void After_a_fault_the_next_bridge_is_built_as_ever()
    {
        var (rebuild, garden) = (new Rebuild(), Bridges.Read(Bridges.Garden));
        var before = Files.Of(rebuild.Steps(garden).Last().Model!);
        Assert.NotNull(rebuild.Steps(garden with { Ropes = garden.Ropes with { Sag = 0 } }).Last().Fault);
        Assert.Equal(before, Files.Of(rebuild.Steps(garden).Last().Model!));
    }

    private static void AssertTold(BridgeParameters parameters, BuildStep step, Stage stage)
    {
        Assert.False(new Rebuild().TryAnswer(parameters, CancellationToken.None, out _, out var fault));
        Assert.Equal((stage, null), (step.Stage, step.Model));
        Assert.Equal((fault!.Kind, fault.Code, fault.Message), (step.Fault!.Kind, step.Fault.Code, step.Fault.Message));
        Assert.Equal(fault.Misfits.Select(m => (m.Key, m.Code, m.What)), step.Fault.Misfits.Select(m => (m.Key, m.Code, m.What)));
    }
}
