using System.IO.Compression;
using BridgeForm.Output.Kinds;
using BridgeForm.Tests.Cli;

namespace BridgeForm.Tests.Output.Kinds;

/// <summary>The same files, wherever they go.</summary>
public sealed class OutputKindsTests
{
    private static readonly Lazy<BridgeModel> s_model = new(() => Bridges.Build(Bridges.Garden));

    [Fact]
    public void Folder_memory_and_zip_take_the_same_files()
    {
        using var run = new CommandRun();
        var file = run.Write("bridge.yaml", Ground.Under(Bridges.Garden));
        Assert.Equal(0, CommandRun.Run("make", file, "-o", run.Path("made"), "--only", "model,tables,profiles").Code);
        var memory = new MemorySink();
        using var bytes = new MemoryStream();
        using (var zip = new ZipSink(bytes))
        {
            foreach (var kind in OutputKinds.Listing(() => []).Where(k => k.Word is "model" or "tables" or "profiles"))
            {
                kind.Make(s_model.Value, memory);
                kind.Make(s_model.Value, zip);
            }
        }

        using var archive = new ZipArchive(new MemoryStream(bytes.ToArray()));
        var entries = archive.Entries.ToDictionary(e => e.FullName, Bytes, StringComparer.Ordinal);
        Assert.True(memory.Files.Count > 20);
        Assert.Equal(memory.Files.Keys, entries.Keys.Order(StringComparer.Ordinal));
        Assert.All(memory.Files, f => Assert.Equal(f.Value, entries[f.Key]));
        Assert.All(memory.Files, f => Assert.Equal(f.Value, File.ReadAllBytes(run.Path("made/" + f.Key))));
        Assert.All(archive.Entries, e => Assert.Equal(1980, e.LastWriteTime.Year));
    }

    [Fact]
    public void The_report_lists_what_it_is_given_and_comes_last()
    {
        var memory = new MemorySink();
        var last = OutputKinds.Listing(() => ["a.txt", "b.txt"])[^1];
        last.Make(s_model.Value, memory);
        Assert.Equal(OutputKinds.Report, last.Word);
        Assert.Contains("\"b.txt\"", System.Text.Encoding.UTF8.GetString(memory.Files[OutputKinds.ReportFile]), StringComparison.Ordinal);
        Assert.Equal(OutputKinds.Words.Distinct(StringComparer.Ordinal), OutputKinds.Words);
    }

    /// <summary>What is only made when it is named is left out where nothing is.</summary>
    [Fact]
    public void Kinds_on_request_are_made_only_by_name()
    {
        Assert.Equal(["usdz", "scale-model"], OutputKinds.Words.Except(OutputKinds.Usual, StringComparer.Ordinal));
        using var run = new CommandRun();
        var file = run.Write("bridge.yaml", Ground.Under(Bridges.Garden));
        Assert.Equal(0, CommandRun.Run("make", file, "-o", run.Path("made"), "--only", "usdz", "--quiet").Code);
        Assert.True(File.Exists(run.Path("made/model.usdz")));
        Assert.False(File.Exists(run.Path("made/scale-model.3mf")));
        Assert.Equal(0, CommandRun.Run("make", file, "-o", run.Path("usual"), "--quiet").Code);
        Assert.True(File.Exists(run.Path("usual/model.step")) && File.Exists(run.Path("usual/model.ifc")));
        Assert.False(File.Exists(run.Path("usual/model.usdz")) || File.Exists(run.Path("usual/scale-model.3mf")));
    }

    private static byte[] Bytes(ZipArchiveEntry entry)
    {
        using var from = entry.Open();
        using var to = new MemoryStream();
        from.CopyTo(to);
        return to.ToArray();
    }
}
