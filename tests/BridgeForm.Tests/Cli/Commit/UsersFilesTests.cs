using System.Text.Json;
using BridgeForm.Cli.Files.Commit;
using BridgeForm.Cli.Streams;

namespace BridgeForm.Tests.Cli.Commit;

/// <summary>What the user has in or beside a folder of results stays, whatever is made there.</summary>
public sealed class UsersFilesTests : IDisposable
{
    private readonly CommandRun _run = new();

    public void Dispose() => _run.Dispose();

    [Fact]
    public void The_manifest_lists_every_file_by_its_bytes()
    {
        var file = _run.Write("bridge.yaml", Bridges.Garden);
        Make(file);
        using var manifest = JsonDocument.Parse(File.ReadAllText(_run.Path("bridge-out/manifest.json")));
        var listed = manifest.RootElement.GetProperty("files").EnumerateArray().ToList();
        var names = listed.Select(f => f.GetProperty("name").GetString()!).ToList();
        Assert.Equal(names.Order(StringComparer.Ordinal), names);
        Assert.Equal(
            Directory.EnumerateFiles(_run.Path("bridge-out"), "*", SearchOption.AllDirectories)
                .Select(f => Path.GetRelativePath(_run.Path("bridge-out"), f))
                .Order(StringComparer.Ordinal),
            names.Append("manifest.json").Order(StringComparer.Ordinal));
        Assert.Equal(
            "profiles",
            listed.First(f => f.GetProperty("name").GetString() is "profiles/P1.dxf" or "profiles/P1L.dxf")
                .GetProperty("kind")
                .GetString());
        Assert.All(listed, f => Assert.Equal(
            Convert.ToHexStringLower(
                System.Security.Cryptography.SHA256
                    .HashData(File.ReadAllBytes(_run.Path("bridge-out/" + f.GetProperty("name").GetString())))),
            f.GetProperty("sha256").GetString()));
        using var report = JsonDocument.Parse(File.ReadAllText(_run.Path("bridge-out/report.json")));
        Assert.Equal(
            names.Append("manifest.json").Order(StringComparer.Ordinal),
            report.RootElement.GetProperty("files").EnumerateArray().Select(f => f.GetString()!));
    }

    [Fact]
    public void A_second_run_with_only_keeps_what_it_does_not_make_in_the_manifest()
    {
        var file = _run.Write("bridge.yaml", Bridges.Garden);
        Make(file, "--only", "tables,report");
        var first = File.ReadAllText(_run.Path("bridge-out/manifest.json"));
        Make(file, "--only", "tables");
        Assert.Equal(first, File.ReadAllText(_run.Path("bridge-out/manifest.json")));
        _run.Write("bridge-out/mine.txt", "mine");
        Make(file, "--only", "tables");
        Assert.Equal(first, File.ReadAllText(_run.Path("bridge-out/manifest.json")));
    }

    [Theory]
    [InlineData(null)]
    [InlineData("bridge-out/mine.txt")]
    public void A_listed_file_that_was_changed_is_named_and_nothing_is_written(string? beside)
    {
        var file = _run.Write("bridge.yaml", Bridges.Garden);
        Make(file, "--only", "tables,report");
        _run.Write("bridge-out/cut-list.csv", "my own remarks");
        if (beside is not null)
        {
            _run.Write(beside, "mine");
        }

        _run.Write("bridge.yaml", Bridges.Garden.Replace("sag: 6 %", "sag: 7 %", StringComparison.Ordinal));
        var before = _run.Snapshot();
        var (code, _, error) = CommandRun.Run("make", file, "--only", "tables,report");
        Assert.Equal(3, code);
        Assert.Contains("bridge-out/cut-list.csv: error: this file was changed after it was made", error, StringComparison.Ordinal);
        DemandSame(before);

        // A run that does not make this kind leaves it alone.
        Make(file, "--only", "report");
        Assert.Equal("my own remarks", File.ReadAllText(_run.Path("bridge-out/cut-list.csv")));
        Assert.Equal(3, CommandRun.Run("make", file, "--only", "tables").Code);
    }

    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public void A_file_in_the_way_is_kept_under_another_name(bool hasManifest)
    {
        var file = _run.Write("bridge.yaml", Bridges.Garden);
        Directory.CreateDirectory(_run.Path("bridge-out"));
        if (hasManifest)
        {
            Make(file, "--only", "report");
        }

        _run.Write("bridge-out/cut-list.csv", "mine");
        _run.Write("bridge-out/cut-list.csv.bak", "mine of old");
        _run.Write("elsewhere.csv", "mine too");
        File.CreateSymbolicLink(_run.Path("bridge-out/hardware.csv"), _run.Path("elsewhere.csv"));
        File.CreateSymbolicLink(_run.Path("bridge-out/keepers.csv"), _run.Path("nowhere.csv"));
        var (code, _, error) = CommandRun.Run("make", file, "--only", "tables", "--quiet");
        Assert.Equal(0, code);
        Assert.Contains("kept as cut-list.csv.bak2", error, StringComparison.Ordinal);
        Assert.Equal("mine of old", File.ReadAllText(_run.Path("bridge-out/cut-list.csv.bak")));
        Assert.Equal("mine", File.ReadAllText(_run.Path("bridge-out/cut-list.csv.bak2")));
        Assert.Equal("mine too", File.ReadAllText(_run.Path("elsewhere.csv")));
        Assert.Equal(_run.Path("elsewhere.csv"), new FileInfo(_run.Path("bridge-out/hardware.csv.bak")).LinkTarget);
        Assert.Equal(_run.Path("nowhere.csv"), new FileInfo(_run.Path("bridge-out/keepers.csv.bak")).LinkTarget);
        Assert.False(File.Exists(_run.Path("nowhere.csv")));
        Assert.StartsWith("Mark,", File.ReadAllText(_run.Path("bridge-out/cut-list.csv")), StringComparison.Ordinal);

        Make(file, "--only", "tables");
        Assert.False(File.Exists(_run.Path("bridge-out/cut-list.csv.bak3")));
    }

    [Fact]
    public void A_manifest_of_another_program_is_kept_too()
    {
        var file = _run.Write("bridge.yaml", Bridges.Garden);
        Directory.CreateDirectory(_run.Path("bridge-out"));
        _run.Write("bridge-out/manifest.json", """{ "name": "a page" }""");
        Make(file, "--only", "report");
        Assert.Equal("""{ "name": "a page" }""", File.ReadAllText(_run.Path("bridge-out/manifest.json.bak")));
    }

    [Theory]
    [InlineData("../outside.txt")]
    [InlineData("/etc/hostname")]
    [InlineData("profiles/../../outside.txt")]
    [InlineData("profiles//P1.dxf")]
    public void A_manifest_that_names_files_outside_is_none_of_ours(string name)
    {
        var outside = _run.Write("outside.txt", "");
        Directory.CreateDirectory(_run.Path("out/profiles"));
        _run.Write("out/manifest.json", $$"""{ "format": "bridgeform-manifest", "version": 1, "files": [ """
            + $$"""{ "name": "{{name}}", "kind": "tables", "sha256": "{{Manifest.HashOf(outside)}}" } ] }""");
        Assert.Null(Manifest.Read(_run.Path("out")));
    }

    [Theory]
    [InlineData("report.json", "")]
    [InlineData("bridge.yaml", "cut-list.csv")]
    public void What_the_bridge_is_read_from_is_never_replaced(string project, string prices)
    {
        var text = Bridges.Garden;
        if (prices.Length > 0)
        {
            text += "\nprices: " + prices + "\n";
            _run.Write(prices, "stock,section,length,price\n");
        }

        var file = _run.Write(project, text);
        var before = _run.Snapshot();
        var (code, _, error) = CommandRun.Run("make", file, "-o", _run.Folder, "--only", "report,tables");
        Assert.Equal(3, code);
        Assert.Contains("the bridge is read from this file", error, StringComparison.Ordinal);
        DemandSame(before);

        // The folder named by another way to it.
        Directory.CreateSymbolicLink(_run.Path("way"), _run.Folder);
        Assert.Equal(3, CommandRun.Run("make", file, "-o", _run.Path("way"), "--only", "report,tables").Code);
        Directory.Delete(_run.Path("way"));
        DemandSame(before);
        var (again, _, _) = CommandRun.Run("check", file, "--json", prices.Length > 0 ? _run.Path(prices) : file);
        Assert.Equal(2, again);
        DemandSame(before);
    }

    [Fact]
    public void The_folder_of_the_project_file_can_be_the_folder_of_results()
    {
        var file = _run.Write("bridge.yaml", Bridges.Garden);
        Make(file, "-o", _run.Folder, "--only", "report,profiles");
        Make(file, "-o", _run.Folder, "--only", "report,profiles");
        Assert.Equal(Bridges.Garden, File.ReadAllText(file));
        Assert.True(File.Exists(_run.Path("profiles/B1.dxf")));
    }

    [Fact]
    public void A_folder_that_is_a_link_leads_out_and_is_refused()
    {
        var file = _run.Write("bridge.yaml", Bridges.Garden);
        Directory.CreateDirectory(_run.Path("elsewhere"));
        Directory.CreateDirectory(_run.Path("bridge-out"));
        Directory.CreateSymbolicLink(_run.Path("bridge-out/profiles"), _run.Path("elsewhere"));
        var (code, _, error) = CommandRun.Run("make", file, "--only", "profiles,report");
        Assert.Equal(3, code);
        Assert.Contains("bridge-out/profiles: error: this is no folder", error, StringComparison.Ordinal);
        Assert.Empty(Directory.EnumerateFileSystemEntries(_run.Path("elsewhere")));
        Assert.Single(Directory.EnumerateFileSystemEntries(_run.Path("bridge-out")));
    }

    [Fact]
    public void A_folder_moved_elsewhere_with_a_link_in_its_place_stays_as_it_is()
    {
        var file = _run.Write("bridge.yaml", Bridges.Garden);
        Make(file, "--only", "profiles,report");
        Directory.Move(_run.Path("bridge-out/profiles"), _run.Path("elsewhere"));
        Directory.CreateSymbolicLink(_run.Path("bridge-out/profiles"), _run.Path("elsewhere"));
        var before = _run.Snapshot();
        Assert.Equal(3, CommandRun.Run("make", file, "--only", "profiles").Code);
        DemandSame(before);
        Make(file, "--only", "report");
        Assert.Equal(before.Keys.Order(StringComparer.Ordinal), _run.Snapshot().Keys.Order(StringComparer.Ordinal));
        Assert.NotNull(new FileInfo(_run.Path("bridge-out/profiles")).LinkTarget);
    }

    [Fact]
    public void Results_go_where_a_linked_folder_points_and_the_link_stays()
    {
        var file = _run.Write("bridge.yaml", Bridges.Garden);
        Directory.CreateDirectory(_run.Path("elsewhere"));
        Directory.CreateSymbolicLink(_run.Path("bridge-out"), _run.Path("elsewhere"));
        Make(file, "--only", "report");
        Make(file, "--only", "report");
        Assert.Equal(_run.Path("elsewhere"), new FileInfo(_run.Path("bridge-out")).LinkTarget);
        Assert.True(File.Exists(_run.Path("elsewhere/report.json")));

        Directory.CreateSymbolicLink(_run.Path("dangling"), _run.Path("nowhere"));
        Assert.Equal(3, CommandRun.Run("make", file, "-o", _run.Path("dangling")).Code);
        Assert.False(Directory.Exists(_run.Path("nowhere")));
    }

    [Fact]
    public void Rights_stay_with_the_names()
    {
        if (OperatingSystem.IsWindows())
        {
            return;
        }

        foreach (var users in (string[])["", "bridge-out/mine.txt"])
        {
            var file = _run.Write("bridge.yaml", Bridges.Garden);
            Make(file, "--only", "report,profiles");
            File.SetUnixFileMode(_run.Path("bridge-out/report.json"), UnixFileMode.UserRead | UnixFileMode.UserWrite);
            File.SetUnixFileMode(_run.Path("bridge-out"), UnixFileMode.UserRead | UnixFileMode.UserWrite | UnixFileMode.UserExecute);
            File.SetUnixFileMode(
                _run.Path("bridge-out/profiles"), UnixFileMode.UserRead | UnixFileMode.UserWrite | UnixFileMode.UserExecute);
            if (users.Length > 0)
            {
                _run.Write(users, "mine");
            }

            Make(file, "--only", "report,profiles");
            Assert.Equal(UnixFileMode.UserRead | UnixFileMode.UserWrite, File.GetUnixFileMode(_run.Path("bridge-out/report.json")));
            Assert.Equal(
                UnixFileMode.UserRead | UnixFileMode.UserWrite | UnixFileMode.UserExecute, File.GetUnixFileMode(_run.Path("bridge-out")));
            Assert.Equal(
                UnixFileMode.UserRead | UnixFileMode.UserWrite | UnixFileMode.UserExecute,
                File.GetUnixFileMode(_run.Path("bridge-out/profiles")));
        }
    }

    /// <summary>Rights bind everybody but an administrator, for whom these files can be removed anyway.</summary>
    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public void A_folder_that_was_closed_to_writing_stays_so_and_locks_nobody_out(bool withUsersFile)
    {
        if (OperatingSystem.IsWindows())
        {
            return;
        }

        const UnixFileMode Closed = UnixFileMode.UserRead | UnixFileMode.UserExecute;
        const UnixFileMode Open = Closed | UnixFileMode.UserWrite;
        var file = _run.Write("bridge.yaml", Bridges.Garden);
        Make(file, "--only", "report,profiles");
        File.SetUnixFileMode(_run.Path("bridge-out/profiles"), Closed);
        if (withUsersFile)
        {
            // Now the files are moved one by one, which their folder forbids.
            _run.Write("bridge-out/mine.txt", "mine");
            Assert.Equal(Environment.IsPrivilegedProcess ? 0 : 3, CommandRun.Run("make", file, "--only", "report,profiles").Code);
        }
        else
        {
            Make(file, "--only", "report,profiles");
        }

        Assert.Equal(Closed, File.GetUnixFileMode(_run.Path("bridge-out/profiles")));
        Assert.DoesNotContain(
            Directory.EnumerateDirectories(_run.Folder, "*", SearchOption.AllDirectories), d => Path.GetFileName(d).StartsWith('.'));
        File.SetUnixFileMode(_run.Path("bridge-out/profiles"), Open);
        Make(file, "--only", "report,profiles");
    }

    [Fact]
    public void A_failed_make_leaves_no_empty_folder()
    {
        var file = _run.Write("bridge.yaml", "name: x");
        Assert.Equal(2, CommandRun.Run("make", file, "-o", _run.Path("a/b/c")).Code);
        Assert.Equal(["bridge.yaml"], Directory.EnumerateFileSystemEntries(_run.Folder).Select(Path.GetFileName));
    }

    [Fact]
    public void A_schema_that_is_there_already_stays()
    {
        var theirs = _run.Write("project-file.schema.json", """{ "type": "object" }""");
        var (code, _, error) = CommandRun.Run("start", _run.Path("bridge.yaml"));
        Assert.Equal(0, code);
        Assert.Contains("left as it is", error, StringComparison.Ordinal);
        Assert.Equal("""{ "type": "object" }""", File.ReadAllText(theirs));
        File.Delete(theirs);
        Assert.DoesNotContain("left as", CommandRun.Run("start", _run.Path("bridge.yaml"), "--force").Error, StringComparison.Ordinal);
        Assert.DoesNotContain("left as", CommandRun.Run("start", _run.Path("bridge.yaml"), "--force").Error, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_second_run_waits_for_the_first()
    {
        using var runs = new TwoRuns();
        var first = runs.Second();
        var stop = Assert.Throws<Stop>(() => FolderEntry.Into(runs.Folder, TimeSpan.Zero));
        Assert.Equal(3, stop.Code);
        Assert.Contains("another run is writing into this folder", stop.Message, StringComparison.Ordinal);
        var second = Task.Run(() =>
        {
            using var output = runs.Second();
            output.Commit();
        });
        await Task.Delay(100);
        Assert.False(second.IsCompleted);
        Assert.Equal(runs.Old, runs.State());
        first.Commit();
        first.Dispose();
        await second;
        Assert.Equal(runs.Whole(), runs.State());
        Assert.Empty(runs.Hidden());
    }

    private static void Make(params string[] arguments)
    {
        var (code, _, error) = CommandRun.Run(["make", .. arguments, "--quiet"]);
        Assert.True(code == 0, error);
    }

    private void DemandSame(Dictionary<string, byte[]> before)
    {
        var after = _run.Snapshot();
        Assert.Equal(before.Keys.Order(StringComparer.Ordinal), after.Keys.Order(StringComparer.Ordinal));
        Assert.All(before, f => Assert.True(f.Value.AsSpan().SequenceEqual(after[f.Key]), f.Key));
    }
}
