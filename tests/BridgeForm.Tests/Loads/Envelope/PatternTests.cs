using System.Collections.Immutable;
using BridgeForm.Loads;
using BridgeForm.Project;
using BridgeForm.Ropes;
using BridgeForm.Tests.Ropes;

namespace BridgeForm.Tests.Loads.Envelope;

/// <summary>Live load on parts of the deck and the point load frame by frame, by hand.</summary>
public sealed class PatternTests
{
    private const double Live = 3000;
    private const double Wide = 0.9;
    private const double Apart = 1.1;

    private static readonly LoadCaseInput Level = Input(Footbridge(12, 12, 0.72, 1.63e7));
    private static readonly ImmutableArray<LoadCaseResult> Cases = LoadCases.All(Level);

    // Pressure × clear width × 60 % × a quarter of the span; what lies beyond the middle of the end bays rests on the landings.
    [Theory]
    [InlineData("live-quarter-1", 3 - 0.5)]
    [InlineData("live-quarter-2", 3)]
    [InlineData("live-quarter-3", 3)]
    [InlineData("live-quarter-4", 3 - 0.5)]
    public void Quarters_add_up(string id, double length) =>
        RopeSamples.Close(Live * Wide * 0.6 * length, Added(Case(id).Shape!).Sum(), 1e-9);

    // Half the width, its resultant a quarter of the width aside: the near rope carries ½ + (W/4)/s of it, the other the rest.
    [Fact]
    public void Right_of_one_half_and_left_of_the_other_are_shared_by_statics()
    {
        var (near, far) = (0.5 + (Wide / 4 / Apart), 0.5 - (Wide / 4 / Apart));
        var a = Live * Wide / 2 * 1;
        var cross = Case("live-cross").Pair!.Shape;
        var (left, right) = (Added(cross.Left), Added(cross.Right));
        for (var i = 1; i < 12; i++)
        {
            // At the middle frame half a bay of either side.
            var (ofLeft, ofRight) = i < 6 ? (far, near) : i > 6 ? (near, far) : (0.5, 0.5);
            Assert.Equal(a * ofLeft, left[i], 1e-6);
            Assert.Equal(a * ofRight, right[i], 1e-6);
        }
    }

    [Fact]
    public void The_point_load_stands_at_every_frame_in_the_middle_and_at_the_edge()
    {
        var edge = 0.5 + ((0.45 - 0.15) / Apart);
        for (var i = 1; i < 12; i++)
        {
            var middle = Cases.Single(c => At(c, i, aside: false));
            var aside = Cases.Single(c => At(c, i, aside: true));
            Assert.Equal(1300 * 0.5, Added(middle.Shape!)[i], 1e-6);
            Assert.Equal(1300 * edge, Added(aside.Shape!)[i], 1e-6);
            Assert.Equal(1300 * edge, Added(aside.Shape!).Sum(), 1e-6);
        }

        static bool At(LoadCaseResult c, int frame, bool aside) => c.Loading!.On is [var load]
            && c.Id.StartsWith("point", StringComparison.Ordinal) && load.Weights[frame] > 0 && load.FromMiddle > 0 == aside;
    }

    // A weightless inextensible rope of small sag: its length changes by ∫V²/(2H²) dx, V the shear of a beam under its loads, so
    // H goes as the root of ∫V². Full load w all along: ∫V² = w²L³/12. With w + q on the left half and w on the right one, a
    // beam's shears: V = A − (w + q)·x up to L/2, A = w·L/2 + 3qL/8, and −B + w·(L − x) after it, B = w·L/2 + qL/8.
    // Fall at a quarter: M/H less that of the empty bridge. (Parabolic cable: Irvine, Cable Structures, 1981, §2.)
    [Fact]
    public void Half_load_on_a_parabola_pulls_and_falls_by_hand()
    {
        const int Bays = 200;
        const double Span = 20, Sag = 0.2, W = 900;
        var input = Input(Footbridge(Span, Bays, Sag, RopeSamples.Rigid, W)) with
        {
            Loads = Level.Loads with { Eccentricity = 0.5 },
        };
        var half = LoadCases.All(input).Single(c => c.Id == "live-half-a").Shape!;
        var q = Live * Wide / 2;
        double Squared(double load)
        {
            var (a, b, sum) = ((W * Span / 2) + (3 * load * Span / 8), (W * Span / 2) + (load * Span / 8), 0.0);
            const int Steps = 20_000;
            for (var i = 0; i < Steps; i++)
            {
                var x = (i + 0.5) * Span / Steps;
                var shear = x < Span / 2 ? a - ((W + load) * x) : -b + (W * (Span - x));
                sum += shear * shear * Span / Steps;
            }

            return sum;
        }

        Assert.Equal(W * W * Span * Span * Span / 12, Squared(0), Squared(0) * 1e-6);
        var empty = W * Span * Span / (8 * Sag);
        var pull = empty * Math.Sqrt(Squared(q) / Squared(0));
        RopeSamples.Close(pull, half.Horizontal, 1e-3);
        var moment = (((W * Span / 2) + (3 * q * Span / 8)) * Span / 4) - ((W + q) * Span * Span / 32);
        var fall = (moment / pull) - (W * 3 * Span * Span / 32 / empty);
        Assert.True(fall > 0.015);
        RopeSamples.Close(fall, input.Design.HeightAt(Span / 4) - half.HeightAt(Span / 4), 0.01);
    }

    // A taut string under a point load: P·x·(L − x)/(L·H), H what it is without it. The rope stretches so easily that its pull
    // does not change: λ² = (8f/L)²·EA/H = 0.0041.
    [Theory]
    [InlineData(2)]
    [InlineData(5)]
    public void A_point_load_on_a_taut_string_falls_by_hand(int frame)
    {
        const double Span = 10, Sag = 0.05, W = 400, Stiffness = 250_000;
        var input = Input(Footbridge(Span, 10, Sag, Stiffness, W)) with { Loads = Level.Loads with { PointForce = 2 } };
        var pull = input.Design.Horizontal;
        RopeSamples.Close(W * Span * Span / (8 * Sag), pull, 1e-3);
        var cases = LoadCases.All(input);
        var under = cases.Single(c => c.Loading!.On is [{ FromMiddle: 0 } load] && load.Weights[frame] > 1).Shape!;
        var x = input.Design.Nodes[frame].X;
        var hand = 1 * x * (Span - x) / (Span * pull);
        RopeSamples.Close(hand, input.Design.Nodes[frame].Y - under.Nodes[frame].Y, 0.01);
        RopeSamples.Close(hand, LoadCases.Bounds(input, cases)[frame - 1].Fall, 0.01);
    }

    private static DesignRequest Footbridge(double span, int bays, double sag, double stiffness, double perMetre = 900) => new()
    {
        Span = span,
        Rise = 0,
        Sag = sag,
        Step = FrameStep.Plan,
        Bays = bays,
        WeightPerLength = 0,
        AxialStiffness = stiffness,
        NodeLoads = nodes => [.. nodes.Select(_ => perMetre * span / bays)],
    };

    private static LoadCaseInput Input(DesignRequest request)
    {
        var design = DesignState.Find(request);
        return new LoadCaseInput
        {
            Design = design,
            FrameLoads = [.. design.Loads.Select(p => 0.4 * p)],
            ClearWidth = Wide,
            RopeSpacing = Apart,
            ReferenceTemperature = 15,
            Temperatures = [-10, 35],
            Loads = new LoadParameters
            {
                Live = Live,
                LiveSource = "test",
                PointForce = 1300,
                PointPatch = 0.4,
                PointEdge = 0.15,
                Eccentricity = 0.6,
                Wind = 960,
                WindSource = "test",
            },
        };
    }

    private static LoadCaseResult Case(string id) => Cases.Single(c => string.Equals(c.Id, id, StringComparison.Ordinal));

    private static double[] Added(RopeShape shape) => [.. shape.Loads.Zip(Level.Design.Loads, (p, q) => p - q)];
}
