using System.Collections.Immutable;
using BenchmarkDotNet.Attributes;
using BridgeForm.Loads;
using BridgeForm.Project;
using BridgeForm.Ropes;
using BridgeForm.Ropes.Modes;

namespace BridgeForm.Benchmarks;

/// <summary>Ropes of growing bridges. Wanted: cost in step with the bays; all cases of 200 bays within 150 ms.</summary>
[MemoryDiagnoser]
public class RopeBenchmarks
{
    private DesignRequest _request = null!;
    private LoadCaseInput _input = null!;

    [Params(20, 200, 2_000, 20_000)]
    public int Bays { get; set; }

    [GlobalSetup]
    public void Prepare()
    {
        var span = 0.9 * Bays;
        _request = new DesignRequest
        {
            Span = span,
            Rise = 0.05 * span,
            Sag = 0.06 * span,
            Step = FrameStep.Rope,
            Spacing = 0.91,
            WeightPerLength = 15,
            AxialStiffness = 1.7e7,
            NodeLoads = Loads,
        };
        var design = DesignState.Find(_request);
        _input = new LoadCaseInput
        {
            Design = design,
            FrameLoads = [.. design.Loads.Select(p => 0.4 * p)],
            ClearWidth = 0.9,
            RopeSpacing = 1.1,
            ReferenceTemperature = 15,
            Temperatures = [-10, 35],
            Loads = new LoadParameters
            {
                Live = 3000,
                LiveSource = "benchmark",
                PointForce = 1300,
                PointPatch = 0.4,
                PointEdge = 0.15,
                Eccentricity = 0.6,
                Wind = 960,
                WindSource = "test",
                Snow = 1000,
            },
        };
    }

    [Benchmark]
    public RopeShape Design() => DesignState.Find(_request);

    [Benchmark]
    public ImmutableArray<LoadCaseResult> AllCases() => LoadCases.All(_input);

    [Benchmark]
    public ImmutableArray<HoistingRow> HoistingTable() =>
        Hoisting.Table(_input.Design, _input.FrameLoads, _input.ReferenceTemperature, _input.Temperatures, Backstays.None);

    [Benchmark]
    public RopeModes? Modes() => RopeModes.Find("dead", _input.Design);

    // Frames all alike, deck and rails by length: the loads follow the shape.
    private static ImmutableArray<double> Loads(ImmutableArray<RopePoint> nodes)
    {
        var loads = new double[nodes.Length];
        for (var i = 1; i + 1 < nodes.Length; i++)
        {
            var (x, y) = (nodes[i + 1].X - nodes[i - 1].X, nodes[i + 1].Y - nodes[i - 1].Y);
            loads[i] = 250 + (200 * Math.Sqrt((x * x) + (y * y)));
        }

        return ImmutableArray.Create(loads);
    }
}
