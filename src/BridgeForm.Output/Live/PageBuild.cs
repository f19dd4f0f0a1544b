using System.Collections.Immutable;
using BridgeForm.Output.Gltf;
using BridgeForm.Output.Kinds;
using BridgeForm.Project;
using BridgeForm.Project.Files;
using BridgeForm.Project.Reading;

namespace BridgeForm.Output.Live;

/// <summary>
/// The bridge behind the live page: taken up again from what is finished whenever the file changes, a step at a time. Not for several
/// threads at once.
/// </summary>
public sealed class PageBuild
{
    // What the command line lists beside the files themselves.
    private const string ListOfFiles = "manifest.json";

    private readonly Rebuild _rebuild = new();
    private readonly HashSet<string> _made = new(StringComparer.Ordinal);
    private ProjectReading? _reading;
    private BridgeParameters? _parameters;
    private IEnumerator<BuildStep>? _steps;
    private BridgeModel? _model;
    private BridgeModel? _answer;
    private BridgeModel? _whole;
    private MemorySink _files = new();

    /// <summary>The model that the last step brought.</summary>
    /// <exception cref="InvalidOperationException">None has: the page asked too early.</exception>
    public BridgeModel Model => _model ?? throw new InvalidOperationException("No step has brought a model yet.");

    /// <summary>Takes a reading, with a price list's text or null; what is wrong with that list is returned.</summary>
    public ImmutableArray<ProjectFault> Take(ProjectReading reading, string? prices)
    {
        _steps?.Dispose();
        (_steps, _answer, _whole, _parameters, _reading) = (null, null, null, reading.Parameters, reading);
        _files = new MemorySink();
        _made.Clear();
        if (_parameters is null)
        {
            return [];
        }

        var list = prices is null ? null : PriceReader.Read(prices, "prices", _parameters.Stock);
        _parameters = _parameters with { PriceList = list?.List };
        _steps = _rebuild.Steps(_parameters).GetEnumerator();
        return list?.Faults ?? [];
    }

    /// <summary>
    /// Takes a step: <c>{ stage, more, draws, done, faults: [{ line, column, code, message }] }</c>; <c>draws</c> when there is a model
    /// to draw, <c>done</c> when its checks are made.
    /// </summary>
    public byte[] Step()
    {
        if (_steps is null || !_steps.MoveNext())
        {
            return PageJson.Object(json => json.WriteBoolean("more", false));
        }

        var step = _steps.Current;
        _model = step.Model ?? _model;
        _answer = step is { Stage: Stage.Checks, Model: { } whole } ? whole : null;
        return PageJson.Object(json =>
        {
            json.WriteString("stage", step.Stage.ToString().ToLowerInvariant());
            json.WriteBoolean("more", step.Fault is null && _answer is null);
            json.WriteBoolean("draws", step is { Stage: Stage.Pieces, Model: not null });
            json.WriteBoolean("done", _answer is not null);
            PageJson.Objects(json, "faults", Faults(step.Fault), fault => PageState.Fault(json, fault));
        });
    }

    /// <summary>model.glb of the model.</summary>
    public byte[] Glb()
    {
        using var stream = new MemoryStream();
        GltfWriter.Write(Model, solid => solid.Triangulate(), stream);
        return stream.ToArray();
    }

    /// <summary>
    /// Makes the files of a kind, as the command line does, and keeps them until the file changes; the report lists those made before.
    /// </summary>
    /// <param name="word">Word of the kind.</param>
    /// <returns>Names of all files made so far.</returns>
    /// <exception cref="InvalidOperationException">The file cannot be built: the page asked too early.</exception>
    public string[] Make(string word)
    {
        if (_whole is null && (_parameters is null || !_rebuild.TryWhole(_parameters, CancellationToken.None, out _whole, out _)))
        {
            throw new InvalidOperationException("There is no bridge to make files of.");
        }

        if (_made.Add(word))
        {
            OutputKinds.Listing(Listed).Single(k => string.Equals(k.Word, word, StringComparison.Ordinal)).Make(_whole, _files);
        }

        return [.. _files.Files.Keys];
    }

    /// <summary>A file that was made.</summary>
    public byte[] File(string name) => _files.Files[name];

    /// <summary>All files that were made, in a zip archive.</summary>
    public byte[] Zip()
    {
        using var stream = new MemoryStream();
        using (var zip = new ZipSink(stream))
        {
            foreach (var (name, bytes) in _files.Files)
            {
                zip.Write(name, s => s.Write(bytes));
            }
        }

        return stream.ToArray();
    }

    private string[] Listed() =>
        [.. _files.Files.Keys.Append(OutputKinds.ReportFile).Append(ListOfFiles).Order(StringComparer.Ordinal)];

    private ImmutableArray<ProjectFault> Faults(BridgeFault? fault) => fault is null ? []
        : fault.Misfits.IsEmpty ? [new ProjectFault(1, 1, fault.Code, fault.Message)]
        : [.. FitFaults.Tell(_reading!, fault.Misfits)];
}
