using System.Globalization;
using System.Text;

namespace BridgeForm.Tests.Cli;

/// <summary>Whatever a file, a path or an argument holds, a terminal gets plain text, and no line but the program's own.</summary>
public sealed class PlainOutputTests : IDisposable
{
    private const string Escape = "\u001b[31m";
    private const string Forged = "\nfake.yaml:9:9: error: forged";
    private const string Turned = "\u202Edesrever";

    private readonly CommandRun _run = new();

    public void Dispose() => _run.Dispose();

    [Theory]
    [InlineData("stock: { \"a\\e[31mRED\\nfake.yaml:9:9: error: forged\": { lengths: [8 ft] }, \"\\e]0;t\\a\": 5 }")]
    [InlineData("fasteners: { \"\\e[2J\\nfake.yaml:9:9: error: forged\": x }")]
    [InlineData("species: { \"q\\nfake.yaml:9:9: error: forged\": {} }")]
    [InlineData("\"\\e[31m\\nfake.yaml:9:9: error: forged\": 1")]
    [InlineData("use: \"\\e[31m\\nfake.yaml:9:9: error: forged\"")]
    [InlineData("ropes: { type: \"\\e[31m\\nfake.yaml:9:9: error: forged\" }")]
    [InlineData("deck: { board: { section: \"2x6\\u202E\\nfake.yaml:9:9: error: forged\" } }")]
    [InlineData("loads: { live: \"1\\e\\nfake.yaml:9:9: error: forged\" }")]
    [InlineData("erection: \"\\u2028fake.yaml:9:9: error: forged\\U000E0041\"")]
    [InlineData("prices: \"\\u202Efake.yaml:9:9: error: forged\"")]
    public void A_file_forges_no_line(string keys)
    {
        var file = _run.Write("a.yaml", "name: x\nsite: { span: 8 ft }\n" + keys + "\n");
        var (code, text, error) = CommandRun.Run("check", file, "--all");
        Assert.Equal((2, ""), (code, text));
        Plain(error);
        Assert.All(error.TrimEnd('\n').Split('\n'), line => Assert.StartsWith(file + ":", line, StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("check", Escape + Forged + ".yaml")]
    [InlineData("make", Turned + ".yaml")]
    [InlineData("make", "--only", Escape + Forged)]
    [InlineData("make", "-o", "no\u001bwhere" + Forged, "none.yaml")]
    [InlineData("start", "no" + Escape + "/" + Forged + "/b.yaml")]
    [InlineData(Escape + Forged)]
    [InlineData("check", "a.yaml", "--x" + Escape + Forged)]
    public void An_argument_forges_no_line(params string[] arguments)
    {
        var (code, text, error) = CommandRun.Run(arguments);
        Assert.InRange(code, 2, 3);
        Plain(text + error);
        Assert.DoesNotContain((text + error).Split('\n'), line => line.StartsWith("fake.yaml", StringComparison.Ordinal));
    }

    [Fact]
    public void Paths_are_shown_plain_where_all_is_well()
    {
        var file = _run.Write("a.yaml", Bridges.Garden);
        foreach (
            var arguments in (string[][])[
                ["start", _run.Path("s" + Turned + Forged)], ["make", file, "-o", _run.Path("o" + Escape + Forged), "--only", "report"]])
        {
            var (code, text, error) = CommandRun.Run(arguments);
            Assert.Equal(0, code);
            Plain(text + error);
            Assert.DoesNotContain(text.Split('\n'), line => line.StartsWith("fake.yaml", StringComparison.Ordinal));
        }
    }

    /// <summary>A joiner, which scripts need, may stand in a name; a terminal is shown its number all the same.</summary>
    [Fact]
    public void A_name_with_a_joiner_is_taken_and_shown_plain()
    {
        var file = _run.Write("a.yaml", Bridges.Garden.Replace("A garden bridge", "A\u200Db", StringComparison.Ordinal));
        var (code, text, _) = CommandRun.Run("make", file, "--only", "tables");
        Assert.Equal(0, code);
        Plain(text);
        Assert.StartsWith(@"A\u200Db (invented): ", text, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("\\u202E")]
    [InlineData("\\u2067")]
    [InlineData("\\u2028")]
    [InlineData("\\e")]
    [InlineData("\\uFFFE")]
    [InlineData("\\uFEFF")]
    public void A_name_that_turns_text_around_or_is_none_is_a_fault(string character)
    {
        var (code, _, error) = CommandRun.Run("check", _run.Write("a.yaml", $"name: \"a{character}b\"\nsite: {{ span: 8 ft }}\n"), "--all");
        Assert.Equal(2, code);
        Assert.Contains("a.yaml:1:7: error: name must be one line of at most 200 characters", error, StringComparison.Ordinal);
    }

    private static void Plain(string said) => Assert.All(said.EnumerateRunes(), r => Assert.True(
        r.Value == '\n' || Rune.GetUnicodeCategory(r) is not (
            UnicodeCategory.Control or UnicodeCategory.Format or UnicodeCategory.LineSeparator or UnicodeCategory.ParagraphSeparator),
        FormattableString.Invariant($"U+{r.Value:X4} in {said}")));
}
