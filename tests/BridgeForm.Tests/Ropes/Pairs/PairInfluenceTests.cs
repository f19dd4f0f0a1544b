using BridgeForm.Ropes;
using BridgeForm.Ropes.Pairs;

namespace BridgeForm.Tests.Ropes.Pairs;

/// <summary>
/// What a newton does, against the pair solved with ten newtons more and ten less: the difference over twenty, which leaves an
/// error of the load's square.
/// </summary>
public sealed class PairInfluenceTests
{
    private const double Little = 10;

    private static readonly (LoadCaseRequest Rope, PairLoads Loads) Level = PairSamples.Even(8, 7.2, 0.43, 1.7e7);

    public static TheoryData<int, int> FramesAndLoads => new() { { 1, 1 }, { 2, 5 }, { 4, 4 }, { 7, 2 }, { 3, 6 } };

    [Theory]
    [MemberData(nameof(FramesAndLoads))]
    public void Fall_and_tilt_are_those_of_a_little_more_load(int read, int loaded)
    {
        var (influence, more, less) = Around(loaded);
        Near(more.Left.Nodes[read].Y - less.Left.Nodes[read].Y, -influence.OfFall(read).Left[loaded]);
        Near(more.Tilts[read] - less.Tilts[read], influence.OfTilt(read).Left[loaded]);
    }

    [Theory]
    [InlineData(0, 1)]
    [InlineData(0, 4)]
    [InlineData(3, 3)]
    [InlineData(5, 2)]
    [InlineData(7, 6)]
    public void Slope_is_that_of_a_little_more_load(int bay, int loaded)
    {
        var (influence, more, less) = Around(loaded);
        Near(Slope(more.Left, bay) - Slope(less.Left, bay), influence.OfSlope(bay).Left[loaded]);
    }

    [Theory]
    [InlineData(false, 1)]
    [InlineData(false, 6)]
    [InlineData(true, 2)]
    [InlineData(true, 7)]
    public void Tension_is_that_of_a_little_more_load(bool atB, int loaded)
    {
        var (influence, more, less) = Around(loaded);
        double At(RopeShape shape) => atB ? shape.EndTensions().B : shape.EndTensions().A;
        Near(At(more.Left) - At(less.Left), influence.OfTension(atB).Left[loaded]);
    }

    [Fact]
    public void At_itself_it_is_the_same_as_frame_by_frame()
    {
        var influence = Influence(Level.Loads);
        var (own, other) = influence.AtItself();
        for (var i = 1; i < 8; i++)
        {
            var line = influence.OfFall(i);
            RopeSamples.Close(line.Left[i], own[i], 1e-9);
            Assert.Equal(line.Right[i], other[i], 1e-9 * own[i]);
        }
    }

    // A load aside is shared by the lever rule: ½ ± e/s.
    [Fact]
    public void A_load_aside_is_shared_by_statics()
    {
        var line = new InfluenceLine([0, 3, 0], [0, 1, 0], 2);
        Assert.Equal([0, 2, 0], line.Aside(0));
        Assert.Equal([0, 2.5, 0], line.Aside(0.5));
        Assert.Equal([0, 1.5, 0], line.Aside(-0.5));
    }

    [Fact]
    public void What_rolls_over_has_none()
    {
        var high = PairSamples.HeightsTimes(Level.Loads, 50);
        Assert.Null(PairInfluence.Of(Level.Rope, PairSamples.Spacing, high, PairSamples.Find(Level.Rope, high)));
    }

    private static (PairInfluence Influence, PairShape More, PairShape Less) Around(int loaded)
    {
        var aside = PairSamples.ToSide(Level.Loads, 0.05);
        return (Influence(aside), PairSamples.Find(Level.Rope, With(aside, loaded, Little)),
            PairSamples.Find(Level.Rope, With(aside, loaded, -Little)));
    }

    private static PairInfluence Influence(PairLoads loads) =>
        PairInfluence.Of(Level.Rope, PairSamples.Spacing, loads, PairSamples.Find(Level.Rope, loads))!;

    // On the left rope alone, and at the ropes' own height.
    private static PairLoads With(PairLoads loads, int frame, double force) => loads with
    {
        Weights = loads.Weights.SetItem(frame, loads.Weights[frame] + force),
        Moments = loads.Moments.SetItem(frame, loads.Moments[frame] + (force * PairSamples.Spacing / 2)),
    };

    private static double Slope(RopeShape rope, int bay) =>
        (rope.Nodes[bay + 1].Y - rope.Nodes[bay].Y) / (rope.Nodes[bay + 1].X - rope.Nodes[bay].X);

    private static void Near(double difference, double line) => RopeSamples.Close(difference / (2 * Little), line, 1e-4);
}
