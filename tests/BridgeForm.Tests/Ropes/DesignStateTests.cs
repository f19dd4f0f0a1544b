using System.Collections.Immutable;
using BridgeForm.Project;
using BridgeForm.Ropes;
using CsCheck;
using MathNet.Numerics;

namespace BridgeForm.Tests.Ropes;

public sealed class DesignStateTests
{
    // Promised: a nanometre on a garden bridge; generous against round-off, strict against any real error.
    private const double Nanometre = 1e-9;

    [Fact]
    public void Ends_sag_and_steps_are_met() => RopeSamples.AnyBridge.Sample(request =>
    {
        var shape = DesignState.Find(request);
        Assert.Equal(request.Span, shape.Nodes[^1].X, Nanometre);
        Assert.Equal(request.Rise, shape.Nodes[^1].Y, Nanometre);
        Assert.Equal(request.Sag, shape.Sag, Nanometre);
        Assert.Equal(request.Sag, (request.Rise / 2) - shape.HeightAt(request.Span / 2), Nanometre);
        var steps = shape.Nodes.Zip(shape.Nodes.Skip(1), Step).ToArray();
        Assert.Equal(request.Bays, steps.Length);
        Assert.Equal(steps.Min(), steps.Max(), Nanometre);

        double Step(RopePoint a, RopePoint b) =>
            request.Step == FrameStep.Plan ? b.X - a.X : RopeSamples.Distance(a, b);
    });

    /// <summary>Every corner of the promised range, with even loads and with all loads on the first quarter.</summary>
    [Theory]
    [InlineData(1)]
    [InlineData(2)]
    [InlineData(3)]
    [InlineData(11)]
    [InlineData(400)]
    public void Corners_of_the_range_have_a_shape(int bays)
    {
        foreach (var (rise, sag, step, lopsided) in Corners())
        {
            var request = RopeSamples.Footbridge with
            {
                Rise = rise * 12,
                Sag = sag * 12,
                Step = step,
                Bays = bays,
                NodeLoads = n => [.. n.Select((_, i) => !lopsided || i < n.Length / 4 ? 1000 : 0.1)],
            };
            var shape = DesignState.Find(request);
            Assert.Equal(12, shape.Nodes[^1].X, Nanometre);
            Assert.Equal(request.Rise, shape.Nodes[^1].Y, Nanometre);
            Assert.Equal(request.Sag, shape.Sag, Nanometre);
        }
    }

    /// <summary>General cable theorem: H times the drop below the chord is the moment of a simple beam.</summary>
    [Fact]
    public void Drop_below_the_chord_is_a_beams_moment() => RopeSamples.AnyBridge.Sample(request =>
    {
        var shape = DesignState.Find(request with { WeightPerLength = 0, NodeLoads = n => [.. request.NodeLoads(n).Select(p => p + 1)] });
        foreach (var node in shape.Nodes)
        {
            var moment = shape.Nodes.Zip(shape.Loads).Sum(l =>
                l.Second * Math.Min(l.First.X, node.X) * (request.Span - Math.Max(l.First.X, node.X)) / request.Span);
            var drop = (request.Rise * node.X / request.Span) - node.Y;
            Assert.Equal(moment / shape.Horizontal, drop, 1e-8 * request.Span);
        }
    });

    [Fact]
    public void Reactions_carry_all_loads() => RopeSamples.AnyBridge.Sample(request =>
    {
        var shape = DesignState.Find(request);
        var (a, b) = shape.Reactions();
        RopeSamples.Close(shape.TotalLoad(), -(a.Y + b.Y), 1e-11);
        RopeSamples.Close(shape.Horizontal, a.X, 1e-15);
        RopeSamples.Close(shape.Horizontal, -b.X, 1e-15);
        Assert.Equal(0, shape.Loads[0]);
        Assert.Equal(0, shape.Loads[^1]);
    });

    [Fact]
    public void Mirrored_bridge_is_the_mirror_image() => RopeSamples.AnyBridge.Sample(request =>
    {
        var shape = DesignState.Find(request);
        var mirrored = DesignState.Find(request with { Rise = -request.Rise, NodeLoads = n => [.. request.NodeLoads(n).Reverse()] });
        RopeSamples.Close(shape.Horizontal, mirrored.Horizontal, 1e-8);
        foreach (var (p, q) in shape.Nodes.Zip(mirrored.Nodes.Reverse()))
        {
            Assert.Equal(p.X, request.Span - q.X, Nanometre);
            Assert.Equal(p.Y, q.Y + request.Rise, Nanometre);
        }
    });

    [Fact]
    public void Doubled_loads_weight_and_stiffness_leave_the_shape() => RopeSamples.AnyBridge.Sample(request =>
    {
        var shape = DesignState.Find(request);
        var doubled = DesignState.Find(request with
        {
            WeightPerLength = 2 * request.WeightPerLength,
            AxialStiffness = 2 * request.AxialStiffness,
            NodeLoads = n => [.. request.NodeLoads(n).Select(p => 2 * p)],
        });
        Assert.Equal(0, RopeSamples.Distance(shape, doubled), Nanometre);
        RopeSamples.Close(2 * shape.Horizontal, doubled.Horizontal, 1e-8);
    });

    /// <summary>
    /// Shapes have no unit of force: weight, loads and stiffness a billionth, a model bridge of thread, change nothing. Rope under
    /// loads on its first quarter is far from the estimate, so that steps are cut on the way.
    /// </summary>
    [Theory]
    [InlineData(11)]
    [InlineData(40)]
    public void Unit_of_force_does_not_matter(int bays)
    {
        const double Billionth = 1e-9;
        foreach (var (rise, sag, step, lopsided) in Corners())
        {
            var request = RopeSamples.Footbridge with
            {
                Rise = rise * 12,
                Sag = sag * 12,
                Step = step,
                Bays = bays,
                NodeLoads = n => Loads(n.Length, 1),
            };
            var shape = DesignState.Find(request);
            var thread = DesignState.Find(request with
            {
                WeightPerLength = Billionth * request.WeightPerLength,
                AxialStiffness = Billionth * request.AxialStiffness,
                NodeLoads = n => Loads(n.Length, Billionth),
            });
            Assert.Equal(0, RopeSamples.Distance(shape, thread), Nanometre);
            RopeSamples.Close(Billionth * shape.Horizontal, thread.Horizontal, 1e-8);

            ImmutableArray<double> Loads(int count, double unit) =>
                [.. Enumerable.Range(0, count).Select(i => unit * (!lopsided || i < count / 4 ? 1000 : 0.1))];
        }
    }

    [Fact]
    public void Scaled_bridge_is_the_same_bridge() => RopeSamples.AnyBridge.Sample(request =>
    {
        // Three times as long, the same forces: weight per metre a third.
        var shape = DesignState.Find(request);
        var large = DesignState.Find(request with
        {
            Span = 3 * request.Span,
            Rise = 3 * request.Rise,
            Sag = 3 * request.Sag,
            WeightPerLength = request.WeightPerLength / 3,
        });
        foreach (var (p, q) in shape.Nodes.Zip(large.Nodes))
        {
            Assert.Equal(0, RopeSamples.Distance(new RopePoint(3 * p.X, 3 * p.Y), q), 3 * Nanometre);
        }
    });

    [Theory]
    [InlineData(FrameStep.Plan, 12, 0.9, 14)]
    [InlineData(FrameStep.Plan, 12, 1.2, 10)]
    [InlineData(FrameStep.Plan, 3, 0.1, 30)]
    [InlineData(FrameStep.Plan, 12, 100, 1)]
    public void Fewest_plan_steps_within_the_spacing(FrameStep step, double span, double spacing, int bays)
    {
        var shape = DesignState.Find(RopeSamples.Footbridge with { Step = step, Span = span, Spacing = spacing });
        Assert.Equal(bays, shape.Segments.Length);
    }

    [Fact]
    public void Fewest_bays_within_the_spacing() => Gen.Select(RopeSamples.AnyBridge, Gen.Double[0.03, 1.5]).Sample((bridge, share) =>
    {
        var request =
            bridge with { Step = FrameStep.Rope, Bays = null, Spacing = share * bridge.Span, NodeLoads = n => [.. n.Select(_ => 100.0)] };
        var shape = DesignState.Find(request);
        Assert.True(Chord(shape) <= request.Spacing * (1 + Nanometre));
        if (shape.Segments.Length > 1)
        {
            Assert.True(Chord(DesignState.Find(request with { Bays = shape.Segments.Length - 1 })) > request.Spacing);
        }
    });

    [Theory]
    [InlineData(1)]
    [InlineData(2)]
    [InlineData(7)]
    [InlineData(11)]
    [InlineData(40)]
    public void Spacing_that_divides_exactly_gives_no_bay_more(int bays)
    {
        var chord = Chord(DesignState.Find(RopeSamples.Footbridge with { Bays = bays }));
        Assert.Equal(bays, DesignState.Find(RopeSamples.Footbridge with { Spacing = chord }).Segments.Length);
        Assert.Equal(bays + 1, DesignState.Find(RopeSamples.Footbridge with { Spacing = chord * (1 - 1e-6) }).Segments.Length);
    }

    [Fact]
    public void Loads_that_follow_the_shape_are_found_with_it()
    {
        var request = RopeSamples.Footbridge with
        {
            NodeLoads = nodes => [.. nodes.Select((p, i) => i == 0 || i == nodes.Length - 1
                ? double.NegativeZero
                : 300 + (400 * RopeSamples.Distance(nodes[i - 1], nodes[i + 1])) - (200 * p.Y))],
        };
        var shape = DesignState.Find(request);
        foreach (var (asked, hung) in request.NodeLoads(shape.Nodes).Zip(shape.Loads))
        {
            Assert.Equal(asked, hung, 1e-9 * shape.TotalLoad());
        }
    }

    [Fact]
    public void Level_even_bridge_is_symmetric()
    {
        var shape = DesignState.Find(RopeSamples.Footbridge with { Rise = 0, NodeLoads = n => [.. n.Select(_ => 500.0)] });
        var (first, last) = shape.EndSlopes();
        Assert.Equal(-first, last, Nanometre);
        foreach (var (p, q) in shape.Nodes.Zip(shape.Nodes.Reverse()))
        {
            Assert.Equal(p.Y, q.Y, Nanometre);
        }
    }

    [Theory]
    [InlineData(20_000, FrameStep.Rope)]
    [InlineData(50_000, FrameStep.Plan)]
    [InlineData(19_999, FrameStep.Rope)]
    public void Very_long_bridges_keep_their_digits(int bays, FrameStep step)
    {
        var request = RopeSamples.Footbridge with
        {
            Span = 0.9 * bays,
            Rise = 0.1 * bays,
            Sag = 0.05 * bays,
            Bays = bays,
            Step = step,
            NodeLoads = n => [.. n.Select((_, i) => 400.0 + (i % 7))],
        };
        var shape = DesignState.Find(request);
        Assert.Equal(request.Span, shape.Nodes[^1].X, 10 * Nanometre);
        Assert.Equal(request.Rise, shape.Nodes[^1].Y, 10 * Nanometre);
        Assert.Equal(request.Sag, shape.Sag, 10 * Nanometre);
    }

    [Fact]
    public void Curve_passes_through_nodes_and_heights_agree()
    {
        var shape = DesignState.Find(RopeSamples.Footbridge);
        var curve = shape.Curve(8);
        Assert.Equal((8 * shape.Segments.Length) + 1, curve.Length);
        foreach (var point in curve)
        {
            Assert.Equal(point.Y, shape.HeightAt(point.X), Nanometre);
        }

        Assert.Equal(shape.Nodes[3], curve[24]);
        Assert.Equal(0, shape.HeightAt(-1), Nanometre);
        Assert.Equal(0.5, shape.HeightAt(13), Nanometre);
        var tangent = shape.TangentAt(4, 0.4);
        Assert.Equal(1, RopeSamples.Hypotenuse(tangent.X, tangent.Y), 1e-14);
        var (before, after) = (shape.PointAt(4, 0.4 - 1e-5), shape.PointAt(4, 0.4 + 1e-5));
        Assert.Equal(tangent.Y / tangent.X, (after.Y - before.Y) / (after.X - before.X), 1e-8);
    }

    [Theory]
    [InlineData(12, 0, "positive")]
    [InlineData(double.NaN, 0.7, "positive")]
    public void Impossible_requests_say_why(double span, double sag, string word) =>
        Fails(RopeSamples.Footbridge with { Span = span, Sag = sag }, word);

    [Fact]
    public void Weightless_rope_without_loads_has_no_shape() =>
        Fails(RopeSamples.Footbridge with { WeightPerLength = 0, NodeLoads = n => [.. n.Select(_ => 0.0)] }, "no shape");

    [Fact]
    public void Too_many_bays_are_refused() => Fails(RopeSamples.Footbridge with { Spacing = 1e-5 }, "more than");

    // 300 m in bays of at most 200 m are two; 12 m of 0.239 mm steps are 50,209, more than 50,000.
    [Theory]
    [InlineData(300, 200, 2)]
    [InlineData(12, 0.239e-3, null)]
    public void Bays_are_counted_before_any_is_solved(double span, double spacing, int? bays)
    {
        var request = RopeSamples.Footbridge with { Step = FrameStep.Plan, Span = span, Sag = 0.06 * span, Spacing = spacing };
        if (bays is null)
        {
            Fails(request, "more than 50000");
        }
        else
        {
            Assert.Equal(bays, DesignState.Find(request).Segments.Length);
        }
    }

    [Fact]
    public void Jumping_loads_are_reported()
    {
        var calls = 0;
        Fails(RopeSamples.Footbridge with { NodeLoads = n => [.. n.Select(_ => 500.0 + (10 * (calls++ / n.Length % 2)))] }, "settle");
    }

    /// <summary>
    /// A number that neither goes with its own shape: with 1 the shape asks for 0, with 0 for 1. The smaller is held, and the
    /// shape is exactly that of its loads.
    /// </summary>
    [Fact]
    public void Numbers_that_chase_the_shape_are_held_at_the_smaller()
    {
        ImmutableArray<double> Loads(int count, int step) =>
            [.. Enumerable.Repeat(500.0, count).Select((p, i) => i == 2 ? p + (5 * step) : p)];
        var level = RopeSamples.Footbridge with { Rise = 0, Spacing = null, Bays = 12 };
        var (low, high) = (Node(0), Node(1));
        var threshold = (low + high) / 2;
        var found = DesignState.Find(level with
        {
            Stepped = (nodes, steps) =>
            {
                // Deeper with the heavier load: that is where it asks for the lighter.
                var own = nodes[2].Y < threshold == high < low ? 0 : 1;
                return new SteppedLoads(Loads(nodes.Length, steps?[0] ?? own), [own]);
            },
        });
        Assert.Equal(0, Assert.Single(found.Steps));
        Assert.Equal(low, found.Nodes[2].Y, 1e-10);

        double Node(int step) => DesignState.Find(level with { NodeLoads = n => Loads(n.Length, step) }).Nodes[2].Y;
    }

    private static IEnumerable<(double Rise, double Sag, FrameStep Step, bool Lopsided)> Corners() =>
        from rise in new[] { -1.0 / 3, 0, 1.0 / 3 }
        from sag in new[] { 0.005, 0.06, 0.3 }
        from step in new[] { FrameStep.Rope, FrameStep.Plan }
        from lopsided in new[] { false, true }
        select (rise, sag, step, lopsided);

    private static void Fails(DesignRequest request, string word)
    {
        Assert.False(DesignState.TryFind(request, DesignState.DefaultAccuracy, 50, out var shape, out var failure));
        Assert.Null(shape);
        Assert.Contains(word, failure, StringComparison.Ordinal);
        Assert.Throws<NonConvergenceException>(() => DesignState.Find(request, maxIterations: 50));
    }

    private static double Chord(RopeShape shape) => RopeSamples.Distance(shape.Nodes[0], shape.Nodes[1]);
}
