using BridgeForm.Checks;
using BridgeForm.Cli;
using BridgeForm.Cli.Text;

namespace BridgeForm.Tests.Cli;

public sealed class CheckTextTests
{
    [Theory]
    [InlineData(Bridges.Garden)]
    [InlineData(Bridges.Inclined)]
    public void Columns_fit_100_characters(string text)
    {
        var lines = Printed(text, quiet: false);
        Assert.All(lines, line => Assert.True(line.Length <= 100, line));
        Assert.All(lines, line => Assert.Equal(line.TrimEnd(), line));
        foreach (var part in (string[])["SHAPE", "LOAD CASES", "HOISTING", "ROPE MARKS", "CHECKS"])
        {
            Assert.Contains(lines, line => line.StartsWith(part, StringComparison.Ordinal));
        }
    }

    [Fact]
    public void The_worst_come_first()
    {
        var checks = Printed(Bridges.Garden, quiet: false)
            .SkipWhile(l => !l.StartsWith("CHECKS", StringComparison.Ordinal))
            .Skip(1)
            .TakeWhile(l => !l.StartsWith("WHAT", StringComparison.Ordinal) && !l.StartsWith("WITH", StringComparison.Ordinal))
            .Where(l => l.Length > 0 && l[0] != ' ')
            .Select(l => l.Split(' ')[0])
            .ToList();
        Assert.Equal(Bridges.Build(Bridges.Garden).Checks.Length, checks.Count);
        string[] order = ["FAILS", "look", "engineer", "holds"];
        Assert.Equal(checks.OrderBy(c => Array.IndexOf(order, c)), checks);
        Assert.Contains("FAILS", checks);
    }

    [Fact]
    public void Quiet_prints_only_what_fails()
    {
        var failing = Bridges.Build(Bridges.Garden).Checks.Where(c => c.Status == CheckStatus.Fail).ToList();
        var titles = Printed(Bridges.Garden, quiet: true).Where(l => l.StartsWith("FAILS", StringComparison.Ordinal)).ToList();
        Assert.Equal(failing.Count, titles.Count);
    }

    [Fact]
    public void Long_words_are_not_broken_and_nothing_is_lost()
    {
        using var output = new StringWriter();
        var text = string.Join(' ', Enumerable.Range(0, 60).Select(i => new string('w', (i * 7 % 23) + 1)).Append(new string('x', 130)));
        Columns.Wrapped(output, text, "   ");
        Assert.Equal(text.Split(' '), output.ToString().Split([' ', '\r', '\n'], StringSplitOptions.RemoveEmptyEntries));
    }

    [Fact]
    public void A_fall_is_told_as_a_fall()
    {
        var lines = Printed(Bridges.Inclined.Replace("rise: 2 m", "rise: -500 mm", StringComparison.Ordinal), quiet: false);
        Assert.Contains(lines, line => line.EndsWith("12000 mm, B 500 mm lower than A", StringComparison.Ordinal));
        Assert.DoesNotContain(lines, line => line.Contains("-500", StringComparison.Ordinal));
    }

    private static List<string> Printed(string text, bool quiet)
    {
        using var output = new StringWriter();
        CheckText.Write(output, Bridges.Build(text), quiet);
        return [.. output.ToString().ReplaceLineEndings("\n").Split('\n')];
    }
}
