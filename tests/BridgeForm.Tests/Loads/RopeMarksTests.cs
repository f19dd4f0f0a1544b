using System.Collections.Immutable;
using BridgeForm.Loads;
using BridgeForm.Ropes;
using BridgeForm.Tests.Ropes;

namespace BridgeForm.Tests.Loads;

public sealed class RopeMarksTests
{
    private static readonly RopeShape Design = DesignState.Find(RopeSamples.Footbridge);

    private static readonly ImmutableArray<string> Names = [.. Design.Nodes.Select((_, i) => $"F{i:00}")];

    [Fact]
    public void Marks_add_up_the_unstressed_bays()
    {
        var marks = RopeMarks.Place(Design, Names, 0);
        Assert.Equal(0, marks[0].Unstressed);
        Assert.Equal("F03", marks[3].Frame);
        RopeSamples.Close(Design.UnstressedLength(), marks[^1].Unstressed, 1e-14);
        foreach (var (a, b, segment) in marks.Zip(marks.Skip(1), Design.Segments))
        {
            RopeSamples.Close(segment.UnstressedLength, b.Unstressed - a.Unstressed, 1e-13);
        }

        Assert.All(marks, m => Assert.Equal(m.Unstressed, m.AtMarkingTension));
    }

    /// <summary>Elastic stretch P·L/(A·E): 10 kN on EA = 16.3 MN is 0.613 mm a metre.</summary>
    [Fact]
    public void Marking_tension_stretches_all_alike()
    {
        var marks = RopeMarks.Place(Design, Names, 10_000);
        Assert.All(marks.Skip(1), m => RopeSamples.Close(1 + (10_000 / 1.63e7), m.AtMarkingTension / m.Unstressed, 1e-12));
    }

    [Fact]
    public void Unstressed_rope_is_shorter_than_it_hangs()
    {
        foreach (var segment in Design.Segments)
        {
            var tension = RopeSamples.Hypotenuse(segment.Horizontal, segment.VerticalA);
            RopeSamples.Close(segment.UnstressedLength * (1 + (tension / Design.AxialStiffness)), segment.StretchedLength, 1e-6);
        }
    }
}
