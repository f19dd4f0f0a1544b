using System.Diagnostics;
using System.Text;
using BridgeForm.Cli.Files;
using BridgeForm.Cli.Streams;
using BridgeForm.Project.Files;

namespace BridgeForm.Tests.Cli;

public sealed class BadInputTests : IDisposable
{
    // "Quickly" for a person: hostile files must not keep anybody waiting, whatever else the machine does.
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(20);

    private readonly CommandRun _run = new();

    public void Dispose() => _run.Dispose();

    /// <summary>Wherever it stands on the line, and whatever stands beside it; nothing is read or written.</summary>
    [Theory]
    [InlineData("--version")]
    [InlineData("--version", "--quiet")]
    [InlineData("start", "--version")]
    [InlineData("make", "--version")]
    [InlineData("check", "no-such.yaml", "--version")]
    public void Version_is_told_everywhere(params string[] arguments)
    {
        var (code, text, error) = CommandRun.Run(arguments);
        Assert.Equal((0, ""), (code, error));
        Assert.Matches(@"^\d+\.\d+\.\d+\S*\r?\n$", text);
        Assert.False(File.Exists("--version"));
    }

    // A word near to a command is asked after; a word that is near to none is not, nor a mistake behind a good command.
    [Theory]
    [InlineData(" check'?", "chek", "bridge.yaml")]
    [InlineData(" propose'?", "proposal")]
    [InlineData(null, "xyzzy")]
    [InlineData(null, "check", "a.yaml", "mak")]
    public void A_command_that_was_meant(string? says, params string[] arguments)
    {
        var (code, _, error) = CommandRun.Run(arguments);
        Assert.Equal(2, code);
        if (says is null)
        {
            Assert.DoesNotContain("did you mean", error, StringComparison.Ordinal);
        }
        else
        {
            Assert.Contains(says, error, StringComparison.Ordinal);
        }
    }

    [Fact]
    public void A_folder_that_is_not_there_or_is_a_file_is_named()
    {
        var file = _run.Write("a.yaml", Bridges.Garden);
        (string[] Arguments, string Says)[] wrong =
        [
            (["start", _run.Path("none/b.yaml")], "there is no folder"),
            (["check", file, "--json", _run.Path("none/r.json")], "there is no folder"),
            (["make", file, "--only", "report", "-o", file], "this is a file"),
        ];
        foreach (var (arguments, says) in wrong)
        {
            var (code, _, error) = CommandRun.Run(arguments);
            Assert.Equal(3, code);
            Assert.Contains(says, error, StringComparison.Ordinal);
            Assert.DoesNotMatch(@"/\.[^/]*yaml|/\.[^/]*json", error);
        }
    }

    [Fact]
    public void A_place_that_takes_no_file_is_told_in_peoples_words()
    {
        var file = _run.Write("a.yaml", Bridges.Garden);
        var tooLong = _run.Path(new string('a', 300));
        var closed = _run.Path("link-to-nowhere");
        File.CreateSymbolicLink(closed, _run.Path("none/r.json"));
        List<(string[] Arguments, string Place, string Says)> wrong =
        [
            (["check", file, "--json", _run.Folder], _run.Folder, "this is a folder; name a file to write"),
            (["start", _run.Folder, "--force"], _run.Folder, "this is a folder; name a file to write"),
            (["check", file, "--json", closed], closed, "there is no folder"),
            (["check", file, "--json", tooLong], tooLong, "the path, or a name in it, is longer than the system takes; name a shorter one"),
            (["make", file, "--only", "tables", "-o", tooLong], tooLong, "the path, or a name in it, is longer than the system takes; name "
                + "a shorter one"),
            (["make", file, "--only", "tables", "-o", file + "/sub"], file + "/sub", "the folder it would lie in is not there, or takes no "
                + "files; name another place"),
        ];
        if (OperatingSystem.IsLinux())
        {
            wrong.AddRange(
            [
                (["make", file, "--only", "tables", "-o", "/proc/x"], "/proc/x", "the folder it would lie in is not there, or takes no "
                    + "files; name another place"),
                (["check", file, "--json", "/proc/x"], "/proc/x", "the folder it would lie in is not there, or takes no files; name "
                    + "another place"),
                (["start", "/proc/x"], "/proc/x", "the folder it would lie in is not there, or takes no files; name another place"),
                (["check", file, "--json", "/dev/full"], "/dev/full", "the medium is full; make room on it, or name a place on another"),
                (["check", "/proc/self/mem"], "/proc/self/mem", "the system cannot read or write here"),
            ]);
        }

        foreach (var (arguments, place, says) in wrong)
        {
            var (code, _, error) = CommandRun.Run(arguments);
            Assert.Equal(3, code);
            Assert.StartsWith($"{place}: error: {says}", error, StringComparison.Ordinal);
            Assert.Equal(1, error.Count(c => c is '\n'));
        }
    }

    [Fact]
    public void A_file_in_the_folder_that_is_in_trouble_is_named_itself()
    {
        var trouble = Assert.Throws<Stop>(() => PlaceTrouble.Writing(
            _run.Folder, () => throw new UnauthorizedAccessException($"Access to the path '{_run.Path("tables.csv")}' is denied.")));
        Assert.Equal((3, _run.Path("tables.csv")), (trouble.Code, trouble.Message.Split(": error: ")[0]));
        trouble = Assert.Throws<Stop>(() => PlaceTrouble.Writing(
            _run.Folder,
            () => throw new UnauthorizedAccessException($"Access to the path '{_run.Path(".hidden/tables.csv")}' is denied.")));
        Assert.Equal(_run.Folder, trouble.Message.Split(": error: ")[0]);
        // Trouble with words of its own keeps them.
        Assert.Equal(
            "mine", Assert.Throws<IOException>(() => PlaceTrouble.Writing(_run.Folder, () => throw new IOException("mine"))).Message);
    }

    [Fact]
    public void A_link_stays_a_link_and_what_it_points_to_is_written()
    {
        var real = _run.Write("real.yaml", "mine");
        var link = _run.Path("link.yaml");
        File.CreateSymbolicLink(link, "real.yaml");
        var (code, _, error) = CommandRun.Run("start", link);
        Assert.Equal((3, "mine"), (code, File.ReadAllText(real)));
        Assert.Contains("--force", error, StringComparison.Ordinal);

        Assert.Equal(0, CommandRun.Run("start", link, "--force", "--quiet").Code);
        Assert.Equal("real.yaml", new FileInfo(link).LinkTarget);
        Assert.Null(new FileInfo(real).LinkTarget);
        Assert.StartsWith("#", File.ReadAllText(real), StringComparison.Ordinal);

        // One that points to nothing is a link that is there all the same.
        var early = _run.Path("early.yaml");
        File.CreateSymbolicLink(early, "late.yaml");
        Assert.Equal(3, CommandRun.Run("start", early, "--quiet").Code);
        Assert.Equal(0, CommandRun.Run("start", early, "--force", "--quiet").Code);
        Assert.Equal("late.yaml", new FileInfo(early).LinkTarget);
        Assert.Equal(File.ReadAllText(real), File.ReadAllText(_run.Path("late.yaml")));
    }

    public static TheoryData<string, string> WrongFiles => new()
    {
        { "binary", "\0\u0001\u0002PK\u0003\u0004\uFFFD\0\0" },
        { "empty", "" },
        { "deep", new string('[', 100_000) },
        { "deep-map", string.Concat(Enumerable.Repeat("{a: ", 50_000)) },
        { "aliases", "a: &a [x, x]\nb: &b [*a, *a]\nc: &c [*b, *b]\nname: *c\n" },
        { "nan", Bridges.Garden.Replace("30 ft", "NaN ft", StringComparison.Ordinal) },
        { "infinite", Bridges.Garden.Replace("30 ft", "Infinity ft", StringComparison.Ordinal) },
        { "huge", Bridges.Garden.Replace("30 ft", "1e300 ft", StringComparison.Ordinal) },
        { "zero", Bridges.Garden.Replace("30 ft", "0 ft", StringComparison.Ordinal) },
        { "negative", Bridges.Garden.Replace("30 ft", "-30 ft", StringComparison.Ordinal) },
        { "frames", Bridges.Garden.Replace("30 ft", "100000 ft", StringComparison.Ordinal) },
        { "tiny-step", Bridges.Garden.Replace("spacing: 3 ft", "spacing: 1/16 in", StringComparison.Ordinal) },
        { "sag", Bridges.Garden.Replace("sag: 6 %", "sag: 60 %", StringComparison.Ordinal) },
    };

    [Theory]
    [MemberData(nameof(WrongFiles))]
    public void A_wrong_file_is_2_with_a_place_and_leaves_earlier_output_alone(string name, string text)
    {
        var file = _run.Write(name + ".yaml", text);
        Directory.CreateDirectory(_run.Path(name + "-out"));
        _run.Write(name + "-out/model.glb", "of an earlier run");
        var watch = Stopwatch.StartNew();
        foreach (var command in (string[])["make", "check"])
        {
            var (code, _, error) = CommandRun.Run(command, file);
            Assert.True(code == 2, error);
            Assert.Matches($@"(?m)^{System.Text.RegularExpressions.Regex.Escape(file)}:[0-9]+:[0-9]+: error: .+", error);
        }

        Assert.True(watch.Elapsed < Patience, watch.Elapsed.ToString());
        Assert.Equal("of an earlier run", File.ReadAllText(_run.Path(name + "-out/model.glb")));
    }

    [Fact]
    public void A_missing_file_and_a_folder_are_3()
    {
        Assert.Equal(3, CommandRun.Run("make", _run.Path("nowhere.yaml")).Code);
        Assert.Equal(3, CommandRun.Run("check", _run.Folder).Code);
        Assert.Equal(3, CommandRun.Run("make", _run.Folder).Code);
    }

    [Fact]
    public void A_file_of_100_MB_is_refused_unread()
    {
        var path = _run.Path("big.yaml");
        using (var stream = File.Create(path))
        {
            stream.SetLength(100_000_000);
        }

        var watch = Stopwatch.StartNew();
        Assert.Equal(2, CommandRun.Run("make", path).Code);
        Assert.True(watch.Elapsed < Patience);
    }

    [Fact]
    public void Bytes_that_are_no_text_are_2()
    {
        var path = _run.Path("rubbish.yaml");
        var bytes = new byte[4096];
        new Random(1).NextBytes(bytes);
        File.WriteAllBytes(path, bytes);
        Assert.Equal(2, CommandRun.Run("make", path).Code);
        File.WriteAllBytes(path, Encoding.Unicode.GetBytes(Bridges.Garden).AsSpan(1).ToArray());
        Assert.Equal(2, CommandRun.Run("check", path).Code);
    }

    [Fact]
    public void Start_refuses_to_overwrite_and_writes_what_make_takes()
    {
        var path = _run.Path("mine.yaml");
        Assert.Equal(0, CommandRun.Run("start", path).Code);
        Assert.Equal(ProjectSchema.Json(), File.ReadAllText(_run.Path("project-file.schema.json")));
        var (code, _, error) = CommandRun.Run("start", path);
        Assert.Equal(3, code);
        Assert.Contains("--force", error, StringComparison.Ordinal);
        var narrow = UnixFileMode.UserRead | UnixFileMode.UserWrite;
        if (!OperatingSystem.IsWindows())
        {
            File.SetUnixFileMode(path, narrow);
        }

        Assert.Equal(0, CommandRun.Run("start", path, "--force").Code);
        if (!OperatingSystem.IsWindows())
        {
            // Whoever could not read the file before cannot read it now.
            Assert.Equal(narrow, File.GetUnixFileMode(path));
        }

        Assert.Equal(0, CommandRun.Run("make", path, "--quiet").Code);
    }
}
