using System.Collections.Concurrent;
using BridgeForm.Output.Gltf;
using BridgeForm.Output.Preview;
using BridgeForm.Output.Report;

namespace BridgeForm.Tests.Samples;

/// <summary>A sample as the program makes it now: model, page and report in a temporary folder, made once for all tests.</summary>
internal sealed class MadeSample
{
    private static readonly ConcurrentDictionary<string, Lazy<MadeSample>> s_made = new(StringComparer.Ordinal);

    private static readonly Lazy<string> s_folder = new(NewFolder);

    private MadeSample(string name)
    {
        Model = new Sample(name).Build();
        Path = System.IO.Path.Combine(s_folder.Value, name);
        Directory.CreateDirectory(Path);
        Write("model.glb", s => GltfWriter.Write(Model, solid => solid.Triangulate(), s));
        Write("preview.html", s => PreviewWriter.Write(Model, solid => solid.Triangulate(), s));
        Write("report.json", s => ReportWriter.Write(Model, () => [], s));
    }

    public BridgeModel Model { get; }

    /// <summary>The folder with its files.</summary>
    public string Path { get; }

    /// <summary>The folder with a folder for every sample, all made.</summary>
    public static string All()
    {
        Assert.All(Sample.Names, name => Of(name));
        return s_folder.Value;
    }

    public static MadeSample Of(string name) => s_made.GetOrAdd(name, n => new(() => new MadeSample(n))).Value;

    public string FileOf(string name) => System.IO.Path.Combine(Path, name);

    private static string NewFolder()
    {
        var folder = Directory.CreateTempSubdirectory("bridgeform-samples-").FullName;
        AppDomain.CurrentDomain.ProcessExit += (_, _) => Directory.Delete(folder, recursive: true);
        return folder;
    }

    private void Write(string name, Action<Stream> write)
    {
        using var stream = File.Create(FileOf(name));
        write(stream);
    }
}
