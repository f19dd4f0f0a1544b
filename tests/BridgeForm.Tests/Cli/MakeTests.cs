using BridgeForm.Roles;
namespace BridgeForm.Tests.Cli;

public sealed class MakeTests : IDisposable
{
    private readonly CommandRun _run = new();

    public void Dispose() => _run.Dispose();

    [Fact]
    public void Make_writes_beside_the_file_and_says_the_caution()
    {
        var file = _run.Write("bridge.yaml", Bridges.Garden);
        var (code, output, _) = CommandRun.Run("make", file);
        Assert.Equal(0, code);
        Assert.Contains(Caution.Text, output, StringComparison.Ordinal);
        foreach (var name in (string[])["model.glb", "report.json", "cut-list.csv", "rope-marks.csv", "profiles/B1.dxf"])
        {
            Assert.True(File.Exists(_run.Path("bridge-out/" + name)), name);
        }
    }

    [Fact]
    public void The_same_file_gives_the_same_bytes()
    {
        var file = _run.Write("bridge.yaml", Bridges.Inclined);
        CommandRun.Run("make", file, "-o", _run.Path("one"));
        CommandRun.Run("make", file, "-o", _run.Path("two"));
        var all = _run.Snapshot();
        var one = all.Where(f => f.Key.StartsWith("one", StringComparison.Ordinal)).ToArray();
        Assert.NotEmpty(one);
        foreach (var (name, bytes) in one)
        {
            Assert.True(bytes.AsSpan().SequenceEqual(all["two" + name[3..]]), name);
        }
    }

    [Fact]
    public void Only_writes_the_named_kinds_and_leaves_other_files_alone()
    {
        var file = _run.Write("bridge.yaml", Bridges.Garden);
        Directory.CreateDirectory(_run.Path("bridge-out/profiles"));
        _run.Write("bridge-out/mine.txt", "mine");
        _run.Write("bridge-out/profiles/mine.dxf", "mine");
        _run.Write("bridge-out/profiles/Z99L.dxf", "named like a piece's, but no run made it");
        Assert.Equal(0, CommandRun.Run("make", file, "--only", "profiles,report", "--quiet").Code);
        var names = _run.Snapshot().Keys.ToArray();
        Assert.Contains("bridge-out/mine.txt", names);
        Assert.Contains("bridge-out/profiles/mine.dxf", names);
        Assert.Contains("bridge-out/profiles/Z99L.dxf", names);
        Assert.Contains("bridge-out/report.json", names);
        Assert.DoesNotContain("bridge-out/model.glb", names);
        Assert.DoesNotContain(names, n => n.Contains(".bridgeform", StringComparison.Ordinal));
    }

    [Fact]
    public void Templates_that_nobody_needs_come_when_asked_for_by_mark()
    {
        var file = _run.Write("bridge.yaml", Bridges.Garden);
        var (code, _, error) = CommandRun.Run("make", file, "--only", "templates", "--templates", "P2,Z9", "--quiet");
        Assert.Equal(2, code);
        Assert.Contains("no piece of this bridge has the mark 'Z9'; it has B1, ", error, StringComparison.Ordinal);
        Assert.False(Directory.Exists(_run.Path("bridge-out")));

        Assert.Equal(0, CommandRun.Run("make", file, "--only", "templates", "--templates", "P2", "--quiet").Code);
        string[] marks = [.. Directory.GetFiles(_run.Path("bridge-out/templates")).Select(f => Path.GetFileNameWithoutExtension(f)!)];
        Assert.Equal(["B1", "B2", "K1", "P2", "all"], marks.Order(StringComparer.Ordinal));
    }

    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public void A_drawing_of_an_earlier_run_goes_when_this_run_has_none(bool isFolderOurs)
    {
        var out1 = _run.Path("out");
        Write(out1, ["router", "tables"], ("router", "router/Z99.dxf"), ("tables", "a.csv"));
        if (!isFolderOurs)
        {
            _run.Write("out/mine.txt", "mine");
        }

        Write(out1, ["router"]);
        Assert.Equal(
            isFolderOurs ? ["a.csv", "manifest.json"] : ["a.csv", "manifest.json", "mine.txt"],
            Directory.EnumerateFileSystemEntries(out1).Select(Path.GetFileName).Order());
    }

    [Fact]
    public void A_writer_that_fails_midway_leaves_nothing_new()
    {
        _run.Write("kept", "kept");
        Assert.Throws<IOException>(() =>
        {
            using var output = new BridgeForm.Cli.Files.OutputFolder(_run.Path("out/deeper/still"), ["tables"], []);
            output.Write("tables", "whole.txt", stream => stream.WriteByte(1));
            output.Write("tables", "half.txt", stream =>
            {
                stream.WriteByte(1);
                throw new IOException("disk full");
            });
            output.Commit();
        });
        Assert.Equal(["kept"], _run.Snapshot().Keys);
        Assert.False(Directory.Exists(_run.Path("out")));
    }

    [Fact]
    public void A_failed_run_leaves_the_earlier_output_as_it_was()
    {
        var file = _run.Write("bridge.yaml", Bridges.Garden);
        CommandRun.Run("make", file);

        // A folder where a file must go stands for any trouble while files are moved into place.
        File.Delete(_run.Path("bridge-out/rope-marks.csv"));
        Directory.CreateDirectory(_run.Path("bridge-out/rope-marks.csv"));
        _run.Write("bridge-out/rope-marks.csv/inside", "kept");
        var before = _run.Snapshot();
        _run.Write("bridge.yaml", Bridges.Garden.Replace("sag: 6 %", "sag: 7 %", StringComparison.Ordinal));
        var (code, _, error) = CommandRun.Run("make", file);
        Assert.Equal(3, code);
        Assert.Contains("rope-marks.csv", error, StringComparison.Ordinal);
        var after = _run.Snapshot();
        Assert.Equal(before.Keys.Order(StringComparer.Ordinal), after.Keys.Order(StringComparer.Ordinal));
        Assert.All(before.Keys.Where(k => k != "bridge.yaml"), k => Assert.Equal(before[k], after[k]));
    }

    [Fact]
    public void A_folder_that_cannot_be_written_is_file_trouble()
    {
        var file = _run.Write("bridge.yaml", Bridges.Garden);
        var occupied = _run.Write("occupied", "a file where the folder must go");
        Assert.Equal(3, CommandRun.Run("make", file, "-o", occupied).Code);
        Assert.Equal("a file where the folder must go", File.ReadAllText(occupied));
        Assert.Equal(3, CommandRun.Run("make", file, "-o", "/proc/nowhere").Code);
    }

    [Theory]
    [InlineData("make", "--only", "pictures")]
    [InlineData("make", "--only", "")]
    [InlineData("make", "--templates", "")]
    [InlineData("build")]
    [InlineData("make", "a.yaml", "b.yaml")]
    [InlineData("check")]
    [InlineData("check", "")]
    [InlineData("start", " ")]
    [InlineData("make", "")]
    [InlineData("make", "a.yaml", "-o", "")]
    [InlineData("check", "a.yaml", "--json", "")]
    public void A_wrong_command_line_is_2(params string[] arguments)
    {
        var (code, _, error) = CommandRun.Run(arguments);
        Assert.Equal(2, code);
        Assert.NotEmpty(error);
    }

    private static void Write(string folder, string[] kinds, params (string Kind, string Name)[] files)
    {
        using var output = new BridgeForm.Cli.Files.OutputFolder(folder, kinds, []);
        foreach (var (kind, name) in files)
        {
            output.Write(kind, name, stream => stream.WriteByte(0));
        }

        output.Commit();
    }
}
