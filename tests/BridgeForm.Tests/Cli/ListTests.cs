using System.Text.RegularExpressions;
using BridgeForm.Output.Lists;
using BridgeForm.Tests.Output.Preview;

namespace BridgeForm.Tests.Cli;

/// <summary><c>list WHAT</c>: on the terminal, and what messages say of it.</summary>
public sealed partial class ListTests
{
    private static readonly string[] s_commands = ["start", "make", "check", "list"];

    public static TheoryData<string> Words => [.. AllLists.Words];

    [Fact]
    public void These_can_be_listed() => Assert.Equal("ropes species grades lumber checks papers joints", string.Join(' ', AllLists.Words));

    [Theory]
    [MemberData(nameof(Words))]
    public void Every_row_is_printed_once_in_at_most_100_columns(string word)
    {
        var (code, text, error) = CommandRun.Run("list", word);
        Assert.Equal((0, ""), (code, error));
        var lines = text.Split('\n');
        Assert.All(lines, line => Assert.True(line.Length <= 100, line));
        Assert.All(lines, line => Assert.Equal(line.TrimEnd(), line));
        foreach (var row in AllLists.Kinds.Single(k => k.Word == word).Make().Tables.SelectMany(t => t.Rows))
        {
            Assert.Single(lines, line => Holds(line, row));
        }
    }

    [Theory]
    [MemberData(nameof(Words))]
    public void Quiet_and_in_another_order_it_prints_the_same(string word)
    {
        var plain = CommandRun.Run("list", word);
        Assert.Equal(plain, CommandRun.Run("--quiet", "list", word));
        Assert.Equal(plain, CommandRun.Run("list", word, "--quiet"));
    }

    [Theory]
    [InlineData("rope", "did you mean ropes? there are ropes, species, grades, lumber, checks, papers")]
    [InlineData("screws", "list: 'screws' is nothing that can be listed; there are ropes, species, grades, lumber, checks, papers, joints")]
    [InlineData("", "there are ropes, species, grades, lumber, checks, papers")]
    [InlineData("Ropes", "did you mean ropes?")]
    public void An_unknown_word_is_told_with_the_words(string word, string says)
    {
        var (code, text, error) = CommandRun.Run("list", word);
        Assert.Equal((2, ""), (code, text));
        Assert.StartsWith("bridgeform: error: ", error, StringComparison.Ordinal);
        Assert.Contains(says, error, StringComparison.Ordinal);
    }

    [Fact]
    public void No_word_is_told_with_the_words()
    {
        var (code, text, error) = CommandRun.Run("list");
        Assert.Equal((2, ""), (code, text));
        Assert.Contains("list what? There are ropes, species, grades, lumber, checks, papers", error, StringComparison.Ordinal);
    }

    [Fact]
    public void Two_words_are_one_too_many()
    {
        var (code, text, error) = CommandRun.Run("list", "ropes", "species");
        Assert.Equal((2, ""), (code, text));
        Assert.Contains("'species'", error, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("[suggest:2]", "li", "list")]
    [InlineData("[suggest:7]", "list gr", "grades")]
    public void Completion_offers_it(string place, string line, string offered) =>
        Assert.Contains(offered, CommandRun.Run(place, line).Out.Split(Environment.NewLine), StringComparer.Ordinal);

    /// <summary>Whatever the program says to run is a command of the installed program.</summary>
    [Fact]
    public void Messages_name_commands_that_there_are()
    {
        var named = Directory.EnumerateFiles(Path.Combine(Tool.Repository, "src"), "*.cs", SearchOption.AllDirectories)
            .Where(f => !f.Split(Path.DirectorySeparatorChar).Any(part => part is "obj" or "bin" or "node_modules"))
            .SelectMany(f => Named().Matches(File.ReadAllText(f)))
            .ToList();
        Assert.Contains(named, m => m.Groups["command"].Value is "list");
        Assert.All(named, m => Assert.Contains(m.Groups["command"].Value, s_commands, StringComparer.Ordinal));
        Assert.All(
            named.Where(m => m.Groups["command"].Value is "list" && m.Groups["word"].Value is not ("" or "WORD")),
            m => Assert.Contains(m.Groups["word"].Value, AllLists.Words, StringComparer.Ordinal));
        Assert.All(s_commands, c => Assert.Equal(0, CommandRun.Run(c, "--help").Code));
    }

    // Cells of a line stand two spaces apart; the last one may go on below.
    private static bool Holds(string line, IReadOnlyList<string> row)
    {
        var lead = string.Join(" {2,}", row.Where(cell => cell.Length > 0).SkipLast(1).Select(Regex.Escape));
        var last = row.Last(cell => cell.Length > 0);
        var match = Regex.Match(line, $"^{lead} {{2,}}(?<last>.+)$", RegexOptions.ExplicitCapture, TimeSpan.FromSeconds(1));
        return match.Success && (last + " ").StartsWith(match.Groups["last"].Value + " ", StringComparison.Ordinal);
    }

    [GeneratedRegex("(?<=['`]|then: )bridgeform (?<command>[a-z]+)( (?<word>[A-Za-z]+))?", RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex Named();
}
