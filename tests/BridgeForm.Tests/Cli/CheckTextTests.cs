using BridgeForm.Checks;
using BridgeForm.Cli.Text;

namespace BridgeForm.Tests.Cli;

public sealed class CheckTextTests
{
    private const string Wet =
        "name: Wet (invented)\nsite: { span: 120 ft, water: -25 ft, freeboard: 2 ft, ground: [[0 ft, -1 ft], [60 ft, -30 ft], [120 ft, "
            + "-1 ft]] }\n"
        + "ropes: { sag: 8 %, marking_tension: 900 lbf }\n";

    [Theory]
    [InlineData(Bridges.Garden)]
    [InlineData(Bridges.Inclined)]
    [InlineData(Wet)]
    public void Columns_fit_100_characters(string text)
    {
        var lines = Printed(text, quiet: false);
        Assert.All(lines, line => Assert.True(line.Length <= 100, line));
        Assert.All(lines, line => Assert.Equal(line.TrimEnd(), line));
        string[] parts = ["SHAPE", "LOAD CASES", "WORST CASES, of ", "HOISTING", "ROPE MARKS", "CHECKS", "WIND ACROSS IT: "];
        foreach (var part in parts)
        {
            Assert.Contains(lines, line => line.StartsWith(part, StringComparison.Ordinal));
        }
    }

    [Fact]
    public void The_worst_come_first()
    {
        var checks = Printed(Bridges.Garden, quiet: false)
            .SkipWhile(l => !l.StartsWith("CHECKS", StringComparison.Ordinal))
            .SkipWhile(l => l.Length > 0)
            .TakeWhile(l => !l.StartsWith("WHAT", StringComparison.Ordinal) && !l.StartsWith("WITH", StringComparison.Ordinal))
            .Where(l => l.Length > 0 && l[0] != ' ')
            .Select(l => l.Split(' ')[0])
            .ToList();
        Assert.Equal(Bridges.Build(Bridges.Garden).Checks.Length, checks.Count);
        string[] order = ["FAILS", "review", "engineer", "holds"];
        Assert.Equal(checks.OrderBy(c => Array.IndexOf(order, c)), checks);
        Assert.Contains("FAILS", checks);
    }

    /// <summary>What does not fit beside the others follows below; marks are all there, for new rope that will stretch too.</summary>
    [Fact]
    public void Nothing_is_left_out_of_wide_and_long_tables()
    {
        var model = Bridges.Build(Wet);
        var lines = Printed(Wet, quiet: false);
        Assert.Equal(2, lines.Count(l => l.StartsWith("dead ", StringComparison.Ordinal)));
        Assert.Contains(
            lines, l => l.StartsWith("case ", StringComparison.Ordinal) && l.EndsWith("water clearance", StringComparison.Ordinal));
        Assert.All(model.Frames, f => Assert.Contains(lines, l => l.StartsWith(f.Name + " ", StringComparison.Ordinal)));
        var words = new BridgeForm.Quantities.QuantityText(model.Parameters.Units);
        // The tape's readings come after the marks.
        var last = lines.First(l => l.StartsWith(model.Frames[^1].Name + " ", StringComparison.Ordinal));
        Assert.EndsWith(words.Length(model.Ropework.Stretch[1].Marks[^1].Unstressed), last, StringComparison.Ordinal);
        Assert.Contains(lines, l => l.Contains(words.Size(model.Ropework.Stretch[0].Hoisting.Rows[0].Sag), StringComparison.Ordinal));
    }

    [Fact]
    public void Quiet_prints_only_what_fails()
    {
        var failing = Bridges.Build(Bridges.Garden).Checks.Where(c => c.Status == CheckStatus.Fail).ToList();
        var titles = Printed(Bridges.Garden, quiet: true).Where(l => l.StartsWith("FAILS", StringComparison.Ordinal)).ToList();
        Assert.Equal(failing.Count, titles.Count);
        // Nothing but these, and what a push on a guard does: each with its indented figures and source, and no word of what would pass.
        Assert.All(
            Printed(Bridges.Garden, quiet: true).Where(l => l.Length > 0 && l[0] != ' '),
            l => Assert.Matches("^(FAILS|PUSHED ON A GUARD: )", l));
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
