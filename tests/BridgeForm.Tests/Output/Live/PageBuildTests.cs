using System.IO.Compression;
using BridgeForm.Output.Kinds;
using BridgeForm.Output.Live;
using BridgeForm.Project.Files;
using BridgeForm.Tests.Cli;
using BridgeForm.Tests.Samples;

namespace BridgeForm.Tests.Output.Live;

/// <summary>The page's files are those of the command line, byte for byte.</summary>
public sealed class PageBuildTests
{
    private const string Manifest = "manifest.json";

    // Every board of the sample's sections on sale.
    private const string Prices = """
        stock,section,length,price
        treated,2x4,8 ft,5
        treated,2x6,8 ft,8
        treated,3x4,8 ft,9
        treated,3x6,10 ft,15
        cedar,2x4,8 ft,7
        cedar,2x6,8 ft,11
        """;

    public static TheoryData<string> Samples => [.. Sample.Names];

    [Theory]
    [MemberData(nameof(Samples))]
    public void Every_kind_gives_the_files_that_make_writes(string name)
    {
        var text = File.ReadAllText(new Sample(name).FileOf("project.yaml"));
        var build = Taken(text, prices: null);
        AssertSame(Made(text), AllKinds(build), build);
    }

    [Fact]
    public void A_price_list_counts_as_the_one_beside_the_file()
    {
        var text = File.ReadAllText(new Sample("alder-dell").FileOf("project.yaml")) + "prices: prices.csv\n";
        var build = Taken(text, Prices);
        var files = AllKinds(build);
        AssertSame(Made(text), files, build);
        Assert.Contains("15.00", System.Text.Encoding.UTF8.GetString(build.File("stock-plan.csv")), StringComparison.Ordinal);
    }

    /// <summary>In whatever order, after the steps or before them; a kind is made once until the file changes.</summary>
    [Fact]
    public void Kinds_come_in_the_order_they_are_asked_for()
    {
        var build = Taken(Bridges.Garden, prices: null);
        while (Told.Read(build.Step()).GetProperty("more").GetBoolean())
        {
        }

        Assert.Equal(["report.json"], build.Make("report"));
        Assert.Equal(["manifest.json", "report.json"], Told.Read(build.File("report.json")).Texts("files"));
        Assert.Equal(["model.glb", "report.json"], build.Make("model"));
        Assert.Equal(build.Glb(), build.File("model.glb"));
        Assert.Equal(["model.glb", "report.json"], build.Make("model"));
        var before = build.File("model.glb");
        build.Take(Read(Bridges.Garden.Replace("sag: 6 %", "sag: 7 %", StringComparison.Ordinal)), prices: null);
        Assert.Equal(["model.glb"], build.Make("model"));
        Assert.NotEqual(before, build.File("model.glb"));
        Assert.Throws<KeyNotFoundException>(() => build.File("report.json"));
        build.Make("report");
        Assert.Equal(["manifest.json", "model.glb", "report.json"], Told.Read(build.File("report.json")).Texts("files"));
    }

    [Fact]
    public void Of_no_bridge_there_are_no_files()
    {
        var build = new PageBuild();
        Assert.Throws<InvalidOperationException>(() => build.Make("model"));
        Assert.Throws<InvalidOperationException>(() => build.Model);
        build.Take(Read("name: a\nsite: { span: 30 }\n"), prices: null);
        Assert.Throws<InvalidOperationException>(() => build.Make("model"));
        build.Take(Read(Project.FaultFiles.Impossible.First().Value), prices: null);
        Assert.Throws<InvalidOperationException>(() => build.Make("model"));
        Assert.Throws<InvalidOperationException>(() => Taken(Bridges.Garden, prices: null).Make("pictures"));
    }

    private static ProjectReading Read(string text) => ProjectReader.Read(text, "project.yaml", Bridges.Catalogue);

    private static PageBuild Taken(string text, string? prices)
    {
        var build = new PageBuild();
        Assert.Empty(build.Take(Read(text), prices));
        return build;
    }

    private static string[] AllKinds(PageBuild build)
    {
        string[] files = [];
        foreach (var word in OutputKinds.Usual)
        {
            files = build.Make(word);
        }

        return files;
    }

    // What the command line writes into an empty folder.
    private static Dictionary<string, byte[]> Made(string text)
    {
        using var run = new CommandRun();
        run.Write("prices.csv", Prices);
        Assert.Equal(0, CommandRun.Run("make", run.Write("bridge.yaml", text), "-o", run.Path("out"), "--quiet").Code);
        return run.Snapshot().Where(f => f.Key.StartsWith("out", StringComparison.Ordinal))
            .ToDictionary(f => f.Key[4..].Replace('\\', '/'), f => f.Value, StringComparer.Ordinal);
    }

    private static void AssertSame(Dictionary<string, byte[]> made, string[] files, PageBuild build)
    {
        Assert.True(made.Remove(Manifest));
        Assert.Equal(made.Keys.Order(StringComparer.Ordinal), files.Order(StringComparer.Ordinal));
        Assert.All(made, f => Assert.True(f.Value.AsSpan().SequenceEqual(build.File(f.Key)), f.Key));
        using var zip = new ZipArchive(new MemoryStream(build.Zip()));
        Assert.Equal(made.Keys.Order(StringComparer.Ordinal), zip.Entries.Select(e => e.FullName).Order(StringComparer.Ordinal));
        Assert.All(zip.Entries, e => Assert.True(made[e.FullName].AsSpan().SequenceEqual(Bytes(e)), e.FullName));
    }

    private static byte[] Bytes(ZipArchiveEntry entry)
    {
        using var from = entry.Open();
        using var to = new MemoryStream();
        from.CopyTo(to);
        return to.ToArray();
    }
}
