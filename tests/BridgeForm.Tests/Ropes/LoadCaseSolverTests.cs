using BridgeForm.Loads;
using BridgeForm.Materials;
using BridgeForm.Project;
using BridgeForm.Ropes;
using CsCheck;

namespace BridgeForm.Tests.Ropes;

public sealed class LoadCaseSolverTests
{
    // Promised largest residual as a share of the total load on the rope.
    private const double Promised = 1e-9;

    private static readonly RopeShape Design = DesignState.Find(RopeSamples.Footbridge);

    /// <summary>Any rope under any loads, slack to taut, rising loads among them, from any start.</summary>
    private static readonly Gen<LoadCaseRequest> AnyRope = Gen.Select(
        Gen.Double[-0.6, 0.6],
        Gen.Double[-2, 0.4],
        Gen.Double[0.1, 100],
        Gen.Double[5, 9],
        Gen.Double[-500, 5000].Array[1, 30],
        Gen.Double[0.2, 1].Array[31],
        Gen.Double[-3, 3],
        Gen.Double[-1e5, 1e5]).Select(Rope);

    [Fact]
    public void Dead_case_is_the_design_state() => RopeSamples.AnyBridge.Sample(request =>
    {
        var design = DesignState.Find(request);
        var again = LoadCaseSolver.Find(LoadCaseRequest.At(design, 0, Backstays.None) with { Start = null });
        RopeSamples.Close(design.Horizontal, again.Horizontal, 1e-8);
        Assert.Equal(0, RopeSamples.Distance(design, again), 1e-9);
    });

    /// <summary>
    /// Each bay solved by itself from its ends' places and its unstressed length alone; the ends' forces then meet the
    /// loads node by node.
    /// </summary>
    [Fact]
    public void Every_node_is_in_equilibrium() => AnyRope.Sample(request =>
    {
        var shape = LoadCaseSolver.Find(request);
        Assert.Equal(request.Span, shape.Nodes[^1].X, Promised);
        Assert.Equal(request.Rise, shape.Nodes[^1].Y, Promised);
        // A place is known to a unit in its last digit only, which a stiff rope turns into force.
        var digit = 1e-14 * request.Span * request.AxialStiffness / shape.Segments.Min(s => s.UnstressedLength);
        var allowed = (Promised * TotalForce(request)) + digit;
        (double H, double V)? before = null;
        for (var i = 0; i < shape.Segments.Length; i++)
        {
            var (h, start, end) = BayForces(shape, i);
            if (before is { } b)
            {
                Assert.Equal(b.H, h, allowed);
                Assert.Equal(b.V - shape.Loads[i], start, allowed);
            }

            before = (h, end);
        }
    });

    [Fact]
    public void Start_does_not_matter() => AnyRope.Sample(request =>
    {
        var near = LoadCaseSolver.Find(request with { Start = null });
        var far = LoadCaseSolver.Find(request);
        RopeSamples.Close(near.Horizontal, far.Horizontal, 1e-6);
        Assert.Equal(0, RopeSamples.Distance(near, far), 1e-7);
    });

    /// <summary>
    /// A rope as good as inextensible, started ten thousand times too taut: there it gives (V/H)² of what it would have to, and
    /// the whole step would be some ten million times H. By hand the bars of √26 m hang 1 m deep: H = P·5 / (2·1).
    /// </summary>
    [Fact]
    public void Starts_far_too_taut_lead_to_the_rope()
    {
        const double P = 1000, Half = 5;
        var request = new LoadCaseRequest
        {
            Span = 2 * Half,
            Rise = 0,
            UnstressedLengths = [Math.Sqrt(26), Math.Sqrt(26)],
            Loads = [0, P, 0],
            WeightPerLength = 0,
            AxialStiffness = 1e18,
            Start = Design with { Horizontal = 1e4 * P * Half / 2, Segments = [Design.Segments[0] with { VerticalA = P / 2 }] },
        };
        var shape = LoadCaseSolver.Find(request);
        RopeSamples.Close(P * Half / 2, shape.Horizontal, Promised);
        Assert.Equal(-1, shape.Nodes[1].Y, Promised);
    }

    [Fact]
    public void Stiffer_rope_moves_less_under_more_load() => RopeSamples.AnyBridge.Sample(request =>
    {
        var soft = DesignState.Find(request);
        var stiff = DesignState.Find(request with { AxialStiffness = 3 * request.AxialStiffness });
        Assert.True(Fall(stiff) < Fall(soft));

        double Fall(RopeShape design) => LoadCaseSolver.Find(LoadCaseRequest.At(design, 0, Backstays.None) with
        {
            Loads = [.. design.Loads.Select(p => 2 * p)],
            WeightPerLength = 2 * design.WeightPerLength,
        }).Sag - design.Sag;
    });

    [Fact]
    public void Hotter_rope_hangs_lower_and_pulls_less() => RopeSamples.AnyBridge.Sample(request =>
    {
        var design = DesignState.Find(request with { NodeLoads = n => [.. n.Select(_ => 500.0)] });
        var cold = LoadCaseSolver.Find(LoadCaseRequest.At(design, -40, Backstays.None));
        var hot = LoadCaseSolver.Find(LoadCaseRequest.At(design, 40, Backstays.None));
        Assert.True(cold.Sag < design.Sag && design.Sag < hot.Sag);
        Assert.True(cold.Horizontal > design.Horizontal && design.Horizontal > hot.Horizontal);
        RopeSamples.Close(design.TotalLoad(), hot.TotalLoad(), 1e-12);
    });

    [Fact]
    public void Mirrored_case_is_the_mirror_image() => AnyRope.Sample(request =>
    {
        var shape = LoadCaseSolver.Find(request);
        var mirrored = LoadCaseSolver.Find(request with
        {
            Rise = -request.Rise,
            UnstressedLengths = [.. request.UnstressedLengths.Reverse()],
            Loads = [.. request.Loads.Reverse()],
            Start = null,
        });
        foreach (var (p, q) in shape.Nodes.Zip(mirrored.Nodes.Reverse()))
        {
            Assert.Equal(0, RopeSamples.Distance(p, new RopePoint(request.Span - q.X, q.Y + request.Rise)), 1e-7);
        }
    });

    /// <summary>Civil Engineering Formulas, chapter 10, equation 10.98: without stretch ΔH = H·(added load / dead load).</summary>
    [Fact]
    public void Even_load_on_an_inextensible_parabola_raises_only_the_tension()
    {
        var design = RopeSamples.Parabola(20, 0, 1, 500, bays: 40);
        var loaded = LoadCaseSolver.Find(
            LoadCaseRequest.At(design, 0, Backstays.None) with { Loads = [.. design.Loads.Select(p => 1.7 * p)] });
        RopeSamples.Close(1.7 * design.Horizontal, loaded.Horizontal, 1e-6);
        Assert.Equal(0, RopeSamples.Distance(design, loaded), 1e-6);
    }

    /// <summary>Equations 10.86 and 10.87 there: fall of a parabola's middle for a longer rope, and by temperature.</summary>
    [Theory]
    [InlineData(0.05)]
    [InlineData(0.08)]
    public void Longer_and_warmer_parabola_falls_as_the_handbook_says(double sag)
    {
        const double Span = 30;
        var design = RopeSamples.Parabola(Span, 0, sag * Span, 500, bays: 200);
        var longer = LoadCaseRequest.At(design, 0, Backstays.None);
        const double Added = 1e-3;
        var share = 1 + (Added / design.UnstressedLength());
        var fall =
            LoadCaseSolver.Find(longer with { UnstressedLengths = [.. longer.UnstressedLengths.Select(l => l * share)] }).Sag - design.Sag;
        var printed = 15.0 / 16 / sag * Added / (5 - (24 * sag * sag));
        RopeSamples.Close(printed, fall, 0.02);

        var warm = LoadCaseSolver.Find(LoadCaseRequest.At(design, 20, Backstays.None)).Sag - design.Sag;
        var byHeat = 15.0 / 16 * Span * 11.7e-6 * 20 / (sag * (5 - (24 * sag * sag))) * (1 + (8 / 3.0 * sag * sag));
        RopeSamples.Close(byHeat, warm, 0.02);
    }

    [Theory]
    [InlineData(20, 7)]
    [InlineData(20_000, 12)]
    public void Long_bridges_keep_their_digits(int bays, int loadPattern)
    {
        var design = DesignState.Find(RopeSamples.Footbridge with
        {
            Span = 0.9 * bays,
            Rise = 0.05 * bays,
            Sag = 0.06 * bays,
            Bays = bays,
            Step = FrameStep.Rope,
        });
        var request = LoadCaseRequest.At(design, -20, Backstays.None) with
        {
            Loads = [.. design.Loads.Select((p, i) => p + (i % loadPattern * 100))],
        };
        var shape = LoadCaseSolver.Find(request);
        Assert.Equal(request.Span, shape.Nodes[^1].X, 1e-12 * request.Span);
        Assert.Equal(request.Rise, shape.Nodes[^1].Y, 1e-12 * request.Span);
        var allowed = Promised * TotalForce(request);
        for (var i = 1; i < shape.Segments.Length; i += Math.Max(1, bays / 50))
        {
            var (before, after) = (BayForces(shape, i - 1), BayForces(shape, i));
            Assert.Equal(before.H, after.H, allowed);
            Assert.Equal(before.End - shape.Loads[i], after.Start, allowed);
        }
    }

    [Fact]
    public void Sliding_saddle_passes_rope_until_the_tensions_are_equal()
    {
        var (stayA, stayB) = (new BackstayParameters(9, 0.5, Sliding: true), new BackstayParameters(14, 0.4, Sliding: true));
        var growth = 1 + (SteelRope.ThermalExpansion * 25);
        var request =
            LoadCaseRequest.At(Design, 25, new Backstays(stayA, stayB)) with { Loads = [.. Design.Loads.Select((p, i) => p * i / 3)] };
        var shape = LoadCaseSolver.Find(request);
        var (tensionA, tensionB) = shape.EndTensions();
        var (designA, designB) = Design.EndTensions();
        var ea = Design.AxialStiffness;
        RopeSamples.Close(Whole(Design, designA, designB) * growth, Whole(shape, tensionA, tensionB), 1e-13);
        RopeSamples.Close(
            growth * (Design.Segments[0].UnstressedLength + Stay(9, designA)),
            shape.Segments[0].UnstressedLength + Stay(9, tensionA),
            1e-13);
        RopeSamples.Close(growth * Design.Segments[4].UnstressedLength, shape.Segments[4].UnstressedLength, 1e-14);
        Assert.Equal(request.Span, shape.Nodes[^1].X, Promised);
        Assert.True(shape.Sag > LoadCaseSolver.Find(request with { BackstayA = null, BackstayB = null }).Sag);

        double Stay(double length, double tension) => length / (1 + (tension / ea));
        double Whole(RopeShape rope, double a, double b) => rope.UnstressedLength() + Stay(9, a) + Stay(14, b);
    }

    [Fact]
    public void Sliding_saddles_leave_the_design_state_alone()
    {
        var stay = new BackstayParameters(30, 0.5, Sliding: true);
        var shape = LoadCaseSolver.Find(LoadCaseRequest.At(Design, 0, new Backstays(stay, stay)) with { Start = null });
        Assert.Equal(0, RopeSamples.Distance(Design, shape), Promised);
        var bare = LoadCaseRequest
            .At(Design, 0, new Backstays(stay, stay)) with
        { UnstressedLengths = [Design.UnstressedLength()], Loads = [0, 0] };
        Assert.True(LoadCaseSolver.Find(bare).UnstressedLength() < Design.UnstressedLength());
    }

    /// <summary>
    /// By hand, a weightless rope with a load at its middle, 5 m out and 1 m down: H = P·5 / (2·1), T = P·√26 / 2. The
    /// backstay at 60° is pulled by H / cos 60°; unstressed it is 20 m relieved of 15 kN / cos 60°.
    /// </summary>
    [Fact]
    public void Held_saddle_moves_by_the_stretch_of_its_backstay()
    {
        const double P = 10_000, Ea = 10e6, Angle = Math.PI / 3;
        var (h, tension) = (P * 5 / 2, P * Math.Sqrt(26) / 2);
        var unstressed = 20 / (1 + (15_000 / 0.5 / Ea));
        var move = ((unstressed * (1 + (h / 0.5 / Ea))) - 20) / 0.5;
        Assert.Equal(0.07976, move, 1e-5);
        var bay = Math.Sqrt(26) / (1 + (tension / Ea));
        var shape = LoadCaseSolver.Find(new LoadCaseRequest
        {
            Span = 10 + move,
            Rise = 0,
            UnstressedLengths = [bay, bay],
            Loads = [0, P, 0],
            WeightPerLength = 0,
            AxialStiffness = Ea,
            HeldA = new HeldBackstay(20, unstressed, Angle),
        });
        RopeSamples.Close(h, shape.Horizontal, 1e-10);
        Assert.Equal(move, shape.Nodes[0].X, 1e-9);
        Assert.Equal(move + 5, shape.Nodes[1].X, 1e-9);
        Assert.Equal(-1, shape.Nodes[1].Y, 1e-9);
        Assert.Equal(10 + move, shape.Nodes[2].X, 1e-9);
    }

    /// <summary>
    /// Heat and load together: each saddle comes in by ΔH·L / (EA·cos²) and α·ΔT·L / cos, and the rope between hangs as on
    /// supports there.
    /// </summary>
    [Fact]
    public void Held_saddles_are_springs_that_heat_moves()
    {
        var stays = new Backstays(new BackstayParameters(9, 0.5, Sliding: false), new BackstayParameters(14, 0.4, Sliding: false));
        var request = LoadCaseRequest.At(Design, 25, stays) with { Loads = [.. Design.Loads.Select((p, i) => p * i / 3)] };
        var shape = LoadCaseSolver.Find(request);
        var more = shape.Horizontal - Design.Horizontal;
        double Move(double length, double angle) =>
            (more * length / (Design.AxialStiffness * Math.Pow(Math.Cos(angle), 2))) + (11.7e-6 * 25 * length / Math.Cos(angle));
        // Unstressed and stretched length differ by half a per cent at most.
        RopeSamples.Close(Move(9, 0.5), shape.Nodes[0].X, 0.005);
        RopeSamples.Close(Move(14, 0.4), request.Span - shape.Nodes[^1].X, 0.005);
        var there = LoadCaseSolver.Find(request with { HeldA = null, HeldB = null, Span = shape.Nodes[^1].X - shape.Nodes[0].X });
        RopeSamples.Close(there.Horizontal, shape.Horizontal, 1e-9);
        Assert.Equal(there.Sag, shape.Sag, 1e-9);
    }

    [Fact]
    public void Held_saddles_of_stiff_rope_are_fixed_supports()
    {
        var stiff = DesignState.Find(RopeSamples.Footbridge with { AxialStiffness = 1e15 });
        var stay = new BackstayParameters(30, 0.5, Sliding: false);
        var live = LoadCaseRequest.At(stiff, 0, new Backstays(stay, stay)) with { Loads = [.. stiff.Loads.Select((p, i) => p * i)] };
        var held = LoadCaseSolver.Find(live);
        Assert.Equal(0, RopeSamples.Distance(LoadCaseSolver.Find(live with { HeldA = null, HeldB = null }), held), 1e-6);
        var soft = LoadCaseSolver.Find(LoadCaseRequest.At(Design, 0, new Backstays(stay, stay)) with { Start = null });
        Assert.Equal(0, RopeSamples.Distance(Design, soft), Promised);
    }

    [Fact]
    public void Held_saddle_slides_no_rope()
    {
        var stay = new BackstayParameters(30, 0.5, Sliding: false);
        Assert.Null(LoadCaseRequest.At(Design, 30, new Backstays(stay, stay)).BackstayA);
        Assert.Null(LoadCaseRequest.At(Design, 30, new Backstays(stay, stay)).BackstayB);
    }

    [Fact]
    public void Rope_that_runs_out_over_the_saddle_says_so()
    {
        var request = LoadCaseRequest.At(Design, 0, Backstays.None) with { BackstayA = new SlidingBackstay(10, 8) };
        Fails(request, "slides");
    }

    [Fact]
    public void Cases_without_a_solution_say_why()
    {
        var request = LoadCaseRequest.At(Design, 0, Backstays.None);
        Fails(request with { Loads = request.Loads.SetItem(3, double.NaN) }, "load");
        Fails(request with { UnstressedLengths = request.UnstressedLengths.SetItem(2, 0) }, "length");
        Fails(request with { AxialStiffness = 0 }, "stiffness");
        Fails(request with { WeightPerLength = -1 }, "weight");
        Fails(request with { WeightPerLength = 0, Loads = [.. request.Loads.Select(_ => 0.0)] }, "Nothing hangs");
        Assert.Throws<ArgumentException>(() => LoadCaseSolver.Find(request with { Loads = [] }));
    }

    /// <summary>A rigid parabola's middle falls by (15 − 40 r² …)/(16 r (5 − 24 r²)) times what its span loses, r = sag / span.</summary>
    [Fact]
    public void Middle_falls_when_a_support_moves()
    {
        var design = RopeSamples.Parabola(30, 0, 1.5, 500, bays: 200);
        const double Ratio = 0.05;
        // dS = 0 with S = l(1 + 8/3 r² − 32/5 r⁴): df / d(−l) = (1 − 8/3 r² + 96/5 r⁴) / (16/3 r − 128/5 r³).
        var printed =
            (1 - (8 / 3.0 * Ratio * Ratio) + (96 / 5.0 * Math.Pow(Ratio, 4))) / ((16 / 3.0 * Ratio) - (128 / 5.0 * Math.Pow(Ratio, 3)));
        RopeSamples.Close(printed * 1e-3, SupportMove.FallOfMiddle(design, Backstays.None, 1e-3), 0.01);
        var rigid = SupportMove.FallOfMiddle(Design, Backstays.None, SupportMove.Standard);
        Assert.True(rigid > SupportMove.Standard / 2);
        // A rope that comes nearer pulls less: its backstays take some of the fall back.
        var stay = new BackstayParameters(30, 0.5, Sliding: false);
        Assert.InRange(SupportMove.FallOfMiddle(Design, new Backstays(stay, stay), SupportMove.Standard), 0.5 * rigid, 0.999 * rigid);
    }

    private static void Fails(LoadCaseRequest request, string word)
    {
        Assert.False(LoadCaseSolver.TryFind(
            request, LoadCaseSolver.DefaultAccuracy, LoadCaseSolver.DefaultMaxIterations, out var shape, out var failure));
        Assert.Null(shape);
        Assert.Contains(word, failure, StringComparison.Ordinal);
    }

    private static (double H, double Start, double End) BayForces(RopeShape shape, int bay)
    {
        var (a, b) = (shape.Nodes[bay], shape.Nodes[bay + 1]);
        var segment = shape.Segments[bay];
        // A weightless bay could not be solved alone when it is slack; a grain of weight does not show.
        var alone = LoadCaseSolver.Find(new LoadCaseRequest
        {
            Span = b.X - a.X,
            Rise = b.Y - a.Y,
            UnstressedLengths = [segment.UnstressedLength],
            Loads = [0, 0],
            WeightPerLength = shape.WeightPerLength,
            AxialStiffness = shape.AxialStiffness,
        });
        var (atA, atB) = alone.Reactions();
        return (alone.Horizontal, -atA.Y, atB.Y);
    }

    private static double TotalForce(LoadCaseRequest request) =>
        request.Loads.Sum(Math.Abs) + (request.WeightPerLength * request.UnstressedLengths.Sum());

    private static LoadCaseRequest Rope(
        double rise, double slack, double weight, double stiffness, double[] loads, double[] lengths, double startH, double startV)
    {
        // Ten to the power of slack: from one per cent longer than straight to two and a half times more; below −1.7 taut.
        const double Span = 10;
        var excess = slack < -1.7 ? -0.01 : Math.Pow(10, slack);
        var total = Math.Sqrt(1 + (rise * rise)) * Span * (1 + excess);
        var bays = loads.Length + 1;
        var scale = total / lengths.Take(bays).Sum();
        return new LoadCaseRequest
        {
            Span = Span,
            Rise = rise * Span,
            UnstressedLengths = [.. lengths.Take(bays).Select(l => l * scale)],
            Loads = [0, .. loads, 0],
            WeightPerLength = weight,
            AxialStiffness = Math.Pow(10, stiffness),
            Start = Design with
            {
                Horizontal = 1000 * Math.Pow(10, startH),
                Segments = [Design.Segments[0] with { VerticalA = startV }],
            },
        };
    }
}
