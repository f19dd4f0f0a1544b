using BridgeForm.Checks;
using BridgeForm.Tests.Samples;

namespace BridgeForm.Tests.Cli;

/// <summary>The verdict is what <c>make</c> and <c>check</c> end with; what is dangerous is told to whoever asked for quiet too.</summary>
public sealed class VerdictTextTests : IDisposable
{
    // Ropes 12 in apart under a bridge 58 in wide: it rolls over, and whoever pushes its guard turns it over.
    private static readonly string s_narrow = Bridges.Garden.Replace("spacing: 46 in", "spacing: 12 in", StringComparison.Ordinal);

    private readonly CommandRun _run = new();

    public void Dispose() => _run.Dispose();

    [Fact]
    public void Make_ends_with_it_and_tells_dangers_once_on_standard_error()
    {
        var file = _run.Write("narrow.yaml", s_narrow);
        var (code, said, error) = CommandRun.Run("make", file, "--only", "report");
        Assert.Equal(0, code);
        Assert.Matches(@"\nVERDICT: \d+ do not hold, \d+ to review, \d+ for an engineer, \d+ hold\.\nNOT LOOKED AT: ", Plain(said));
        string[] dangers = ["NOT UPRIGHT: it rolls over in ", "PUSHED ON A GUARD: ", "IT MUST NOT BE BUILT SO: "];
        foreach (var danger in dangers)
        {
            Assert.Single(Lines(said + error), l => l.StartsWith(danger, StringComparison.Ordinal));
            Assert.Single(Lines(error), l => l.StartsWith(danger, StringComparison.Ordinal));
        }

        Assert.StartsWith("IT MUST NOT BE BUILT SO: ", Lines(error)[^1], StringComparison.Ordinal);
    }

    [Fact]
    public void Quiet_make_tells_dangers_and_nothing_else()
    {
        var file = _run.Write("narrow.yaml", s_narrow);
        var (code, said, error) = CommandRun.Run("make", file, "--only", "report", "--quiet");
        Assert.Equal((0, ""), (code, said));
        Assert.Single(Lines(error), l => l.StartsWith("NOT UPRIGHT: ", StringComparison.Ordinal));
        Assert.Single(Lines(error), l => l.StartsWith("PUSHED ON A GUARD: ", StringComparison.Ordinal));
        Assert.Contains(Lines(error), l => l.StartsWith("check fails: roll: ", StringComparison.Ordinal));
        Assert.DoesNotContain("VERDICT", error, StringComparison.Ordinal);
    }

    // A bridge that passes turns over in some wind all the same: said, but no danger to those who asked for quiet.
    [Fact]
    public void Of_a_bridge_that_passes_make_tells_the_wind_and_quiet_make_nothing()
    {
        var sample = new Sample("alder-dell");
        Assert.DoesNotContain(sample.Build().Checks, c => c.Status == CheckStatus.Fail);
        var file = _run.Write("sound.yaml", File.ReadAllText(sample.FileOf("project.yaml")));
        var (_, said, error) = CommandRun.Run("make", file, "--only", "report");
        Assert.Equal("", error);
        var last = Lines(said)[Lines(said).FindIndex(l => l.StartsWith("VERDICT: ", StringComparison.Ordinal))..];
        Assert.DoesNotContain("not hold", last[0], StringComparison.Ordinal);
        Assert.StartsWith("WIND ACROSS IT: without side stays it turns over between ", last[1], StringComparison.Ordinal);
        Assert.Equal(
            ["VERDICT", "WIND ACROSS IT", "PUSHED ON A GUARD", "NOT LOOKED AT"],
            last.Where(l => l[0] != ' ').Select(l => l.Split(':')[0]));
        Assert.Equal((0, "", ""), CommandRun.Run("make", file, "--only", "report", "--quiet"));
    }

    [Fact]
    public void Check_says_it_again_in_its_last_lines()
    {
        var (_, said, _) = CommandRun.Run("check", _run.Write("narrow.yaml", s_narrow), "--all");
        var lines = Lines(said);
        var last = lines[lines.FindLastIndex(l => l.StartsWith("VERDICT: ", StringComparison.Ordinal))..];
        Assert.InRange(last.Count, 6, 14);
        Assert.All(last, l => Assert.InRange(l.Length, 1, 100));
        Assert.Equal(
            ["VERDICT:", "NOT UPRIGHT:", "WIND ACROSS IT:", "PUSHED ON A GUARD:", "NOT LOOKED AT:", "IT MUST NOT BE BUILT SO:"],
            last.Where(l => l[0] != ' ').Select(l => l[..(l.IndexOf(':', StringComparison.Ordinal) + 1)]));
        Assert.Equal(2, lines.Count(l => l.StartsWith("NOT UPRIGHT: ", StringComparison.Ordinal)));
    }

    [Fact]
    public void Quiet_check_tells_dangers_before_what_fails()
    {
        var (code, said, _) = CommandRun.Run("check", _run.Write("narrow.yaml", s_narrow), "--quiet");
        Assert.Equal(1, code);
        Assert.StartsWith("NOT UPRIGHT: ", said, StringComparison.Ordinal);
        Assert.Contains("\nPUSHED ON A GUARD: ", Plain(said), StringComparison.Ordinal);
        Assert.DoesNotContain("VERDICT", said, StringComparison.Ordinal);
    }

    private static string Plain(string text) => text.ReplaceLineEndings("\n");

    private static List<string> Lines(string text) => [.. Plain(text).TrimEnd('\n').Split('\n')];
}
