namespace BridgeForm.Tests.Cli;

/// <summary><c>--quiet</c>: nothing but errors, failing checks and dangers.</summary>
public sealed class QuietTests : IDisposable
{
    private readonly CommandRun _run = new();

    public void Dispose() => _run.Dispose();

    [Fact]
    public void Start_says_nothing()
    {
        var loud = CommandRun.Run("start", _run.Path("loud.yaml"));
        var quiet = CommandRun.Run("start", _run.Path("quiet.yaml"), "--quiet");
        Assert.Contains("loud.yaml written", loud.Out, StringComparison.Ordinal);
        Assert.Equal((0, "", ""), quiet);
        Assert.Equal(File.ReadAllText(_run.Path("loud.yaml")), File.ReadAllText(_run.Path("quiet.yaml")));
    }

    [Fact]
    public void Make_names_failing_checks_and_nothing_else()
    {
        var file = _run.Write("bridge.yaml", Bridges.Garden.Replace("length: 40 in", "length: 36 in", StringComparison.Ordinal));
        var (code, said, error) = CommandRun.Run("make", file, "--only", "report", "--quiet");
        Assert.Equal((0, ""), (code, said));
        Assert.Contains("check fails: guard-height: ", error, StringComparison.Ordinal);
        Assert.All(error.Trim().Split('\n'), line => Assert.Matches("^(check fails|PUSHED ON A GUARD): ", line));
        Assert.Contains("files in", CommandRun.Run("make", file, "--only", "report").Out, StringComparison.Ordinal);
    }
}
