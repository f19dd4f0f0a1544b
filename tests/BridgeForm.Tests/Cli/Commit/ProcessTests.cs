using System.Diagnostics;
using BridgeForm.Benchmarks.Fuzz;

namespace BridgeForm.Tests.Cli.Commit;

/// <summary>What only a process of its own shows: signals, kills, closed streams. Where there is a shell and its signals.</summary>
public sealed class ProcessTests : IDisposable
{
    private const int Seed = 1;
    private static readonly string s_program = Path.Combine(AppContext.BaseDirectory, "BridgeForm.Cli.dll");

    private readonly CommandRun _run = new();

    private static int Kills => Minutes.Cases(4, 20);

    public void Dispose() => _run.Dispose();

    [Theory]
    [InlineData("INT", 130)]
    [InlineData("TERM", 143)]
    [InlineData("HUP", 129)]
    public void A_signal_ends_the_run_and_leaves_nothing(string signal, int code)
    {
        if (OperatingSystem.IsWindows())
        {
            return;
        }

        // Long enough that the signal comes while files are written.
        var file = _run.Write("bridge.yaml", Bridges.Garden.Replace("span: 30 ft", "span: 120 ft", StringComparison.Ordinal));
        // Who runs the tests in the background may have told the system to ignore these signals; children inherit that.
        var heeding = OperatingSystem.IsLinux() ? "env --default-signal=INT,TERM,HUP " : "";
        using var run = Shell($"exec {heeding}dotnet '{s_program}' make '{file}' -o '{_run.Path("a/b")}'");
        var isWriting = SpinWait.SpinUntil(
            () => run.HasExited || (Directory.Exists(_run.Path("a/b")) && Directory.EnumerateDirectories(_run.Path("a/b")).Any()),
            TimeSpan.FromMinutes(2));
        Assert.True(isWriting && !run.HasExited, "the run ended before the signal");
        using (var kill = Shell($"kill -{signal} {run.Id}"))
        {
            kill.WaitForExit();
        }

        var said = run.StandardError.ReadToEnd();
        run.WaitForExit();
        Assert.Equal("", said);
        Assert.Equal(code, run.ExitCode);
        Assert.Equal(["bridge.yaml"], Directory.EnumerateFileSystemEntries(_run.Folder).Select(Path.GetFileName));
    }

    [Theory]
    [InlineData("--version > /dev/full", 3)]
    [InlineData("--version > /dev/full 2> /dev/full", 3)]
    [InlineData("--version >&-", 3)]
    [InlineData("--version >&- 2>&- <&-", 3)]
    [InlineData("--help > /dev/full 2>&1", 3)]
    [InlineData("nonsense 2> /dev/full", 3)]
    [InlineData("nonsense 2>&-", 3)]
    [InlineData("check 'no-such.yaml' 2> /dev/full", 3)]
    [InlineData("start bridge.yaml --quiet >&- 2>&-", 0)]
    public void What_cannot_be_said_is_3_and_never_a_crash(string line, int code)
    {
        if (!File.Exists("/dev/full"))
        {
            return;
        }

        using var run = Shell($"cd '{_run.Folder}'; exec dotnet '{s_program}' {line}");
        run.StandardError.ReadToEnd();
        run.WaitForExit();
        Assert.Equal(code, run.ExitCode);
    }

    /// <summary>Aimed at calls to the system where strace is there, else by time, which on a busy machine may miss all commits.</summary>
    [Fact]
    public void Killed_runs_leave_a_whole_folder_and_every_file_of_the_users()
    {
        if (OperatingSystem.IsWindows())
        {
            return;
        }

        var random = new Random(Seed);
        var (cut, isCounted) = (0, KillTrial.CanCount());
        foreach (var (ground, kills) in new[] { (KillGround.Ours, Kills / 2), (KillGround.SharedOnly, Kills - (Kills / 2)) })
        {
            using var trial = new KillTrial(ground, isCounted);
            for (var i = 0; i < kills; i++)
            {
                var outcome = trial.Kill(random.NextDouble());
                Assert.True(outcome.IsRight, $"{ground}, kill {i}: {outcome}");
                cut += outcome.IsCut ? 1 : 0;
            }
        }

        Assert.True(cut >= (isCounted ? Kills / 2 : 0), $"{cut} of {Kills} kills came within a commit: they prove little");
    }

    private static Process Shell(string line) =>
        Process.Start(new ProcessStartInfo("sh", ["-c", line]) { RedirectStandardError = true, UseShellExecute = false })!;
}
