using System.CommandLine;
using BridgeForm.Cli.Commands;
using BridgeForm.Cli.Streams;
using BridgeForm.Materials;
using BridgeForm.Project.Files;
using BridgeForm.Proposals;

namespace BridgeForm.Tests.Cli;

/// <summary><c>propose</c>: what it prints, and that it never writes over anything unasked.</summary>
public sealed class ProposeTests : IDisposable
{
    private const string Failing = """
        # A remark that stays.
        name: Failing (invented)
        site: { span: 20 ft }
        frames: { post: { section: 2x4 } }   # too thin
        """;

    private readonly CommandRun _run = new();

    public void Dispose() => _run.Dispose();

    [Fact]
    public void Ways_are_printed_side_by_side_in_a_hundred_columns()
    {
        var file = _run.Write("bridge.yaml", Failing);
        var (code, text, error) = CommandRun.Run("propose", file);
        Assert.Equal((ExitCode.Done, ""), (code, error));
        Assert.Contains("1 fewest changes", text, StringComparison.Ordinal);
        Assert.Contains("weight, ropes included", text, StringComparison.Ordinal);
        Assert.Contains("settings of the saw", text, StringComparison.Ordinal);
        Assert.Contains("frames.", text, StringComparison.Ordinal);
        Assert.Contains("People stand on this bridge", text.ReplaceLineEndings(" "), StringComparison.Ordinal);
        Assert.All(text.Replace(file, "bridge.yaml", StringComparison.Ordinal).Split('\n'), l => Assert.InRange(l.Length, 0, 100));
        Assert.Equal([file], Directory.GetFiles(_run.Folder));
    }

    [Fact]
    public void A_way_is_written_into_a_new_file_that_passes()
    {
        var file = _run.Write("bridge.yaml", Failing);
        var target = _run.Path("better.yaml");
        Assert.Equal(ExitCode.Done, CommandRun.Run("propose", file, "--write", "1", target).Code);
        Assert.Equal(Failing, File.ReadAllText(file));
        Assert.StartsWith("# A remark that stays.\nname: Failing (invented)\n", File.ReadAllText(target), StringComparison.Ordinal);
        Assert.Equal(ExitCode.Done, CommandRun.Run("check", target).Code);
        Assert.Equal(ExitCode.CheckFails, CommandRun.Run("check", file).Code);
    }

    [Fact]
    public void In_place_the_old_file_is_kept_beside_and_no_older_one_is_lost()
    {
        var file = _run.Write("bridge.yaml", Failing);
        _run.Write("bridge.yaml.bak", "older");
        Assert.Equal(ExitCode.Done, CommandRun.Run("propose", file, "--write", "1", "--in-place").Code);
        Assert.Equal("older", File.ReadAllText(_run.Path("bridge.yaml.bak")));
        Assert.Equal(Failing, File.ReadAllText(_run.Path("bridge.yaml.bak2")));
        Assert.Equal(ExitCode.Done, CommandRun.Run("check", file).Code);
    }

    // Somebody saves the file in an editor while the search runs.
    [Fact]
    public void A_file_that_has_changed_meanwhile_is_not_written()
    {
        var file = _run.Write("bridge.yaml", Failing);
        var write = new WayOptions();
        var command = new Command("propose");
        write.AddTo(command);
        var reading = ProjectReader.Read(Failing, file, RopeTable.Catalogue);
        var result = Search.Propose(reading, null, new SearchAsk { Free = ["frames.post.section"] });
        Assert.NotEmpty(result.Proposals);
        var parsed = command.Parse(["--write", "1", "--in-place"]);
        var stop = Assert.Throws<Stop>(() => write.Write(null!, parsed, file, Failing + "# before", result));
        Assert.Equal(ExitCode.FileTrouble, stop.Code);
        Assert.Equal([file], Directory.GetFiles(_run.Folder));
        Assert.Equal(Failing, File.ReadAllText(file));
    }

    [Fact]
    public void Nothing_is_written_over()
    {
        var file = _run.Write("bridge.yaml", Failing);
        var other = _run.Write("other.yaml", "mine");
        Assert.Equal(ExitCode.FileTrouble, CommandRun.Run("propose", file, "--write", "1", other).Code);
        Assert.Equal(ExitCode.WrongInput, CommandRun.Run("propose", file, "--write", "1", file).Code);
        Assert.Equal(ExitCode.WrongInput, CommandRun.Run("propose", file, "--write", "1").Code);
        Assert.Equal(ExitCode.WrongInput, CommandRun.Run("propose", file, "--in-place").Code);
        Assert.Equal(("mine", Failing), (File.ReadAllText(other), File.ReadAllText(file)));
    }

    [Theory]
    [InlineData("ropes.sagg", "did you mean ropes.sag?")]
    [InlineData("name", "nothing that a search can move")]
    public void A_key_that_cannot_move_is_told(string key, string hint)
    {
        var (code, _, error) = CommandRun.Run("propose", _run.Write("bridge.yaml", Failing), "--free", key);
        Assert.Equal(ExitCode.WrongInput, code);
        Assert.Contains(hint, error, StringComparison.Ordinal);
    }

    [Fact]
    public void Where_nothing_passes_the_check_is_named()
    {
        var (code, text, _) = CommandRun.Run("propose", _run.Write("bridge.yaml", Failing), "--free", "ropes.sag");
        Assert.Equal(ExitCode.CheckFails, code);
        Assert.Contains("NOTHING FOUND", text, StringComparison.Ordinal);
        var line = text.ReplaceLineEndings(" ").Replace("   ", " ", StringComparison.Ordinal);
        Assert.Contains("it may not move what may help: frames.post.section", line, StringComparison.Ordinal);
    }
}
