using BenchmarkDotNet.Attributes;
using BridgeForm.Frames;
using BridgeForm.Output.Gltf;
using BridgeForm.Pieces;
using BridgeForm.Project;
using BridgeForm.Ropes;

namespace BridgeForm.Benchmarks;

/// <summary>The pipe by number of bays: its cost a bay must not grow.</summary>
[MemoryDiagnoser]
public class PipelineBenchmarks
{
    private BridgeParameters _parameters = null!;
    private RopeShape _rope = null!;
    private BridgeModel _model = null!;

    /// <summary>Number of bays.</summary>
    [Params(20, 200, 2_000)]
    public int Bays { get; set; }

    /// <summary>What each benchmark starts from.</summary>
    [GlobalSetup]
    public void Prepare()
    {
        _parameters = LongBridges.Of(Bays);
        _rope = Bridge.TryShape(_parameters, out var rope, out var fault) ? rope : throw new InvalidOperationException(fault.Message);
        _model = Model();
    }

    /// <summary>Ropes and weights.</summary>
    [Benchmark]
    public bool Shape() => Bridge.TryShape(_parameters, out _, out _);

    /// <summary>From nodes to pieces.</summary>
    [Benchmark]
    public int Pieces() =>
        PieceSet.TryOf(_parameters, Members.Lay(BridgeLayout.Lay(_parameters, _rope)), out var pieces, out _) ? pieces.Length : 0;

    /// <summary>Everything but the files.</summary>
    [Benchmark]
    public BridgeModel Model() =>
        Bridge.TryBuild(_parameters, out var model, out var fault) ? model : throw new InvalidOperationException(fault.Message);

    /// <summary>The model file.</summary>
    [Benchmark]
    public long Gltf()
    {
        using var stream = new MemoryStream();
        GltfWriter.Write(_model, solid => solid.Triangulate(), stream);
        return stream.Length;
    }
}
