namespace BridgeForm.Tests;

/// <summary>docs/sources.md lists each source once, with what was read and where.</summary>
public sealed class SourcePageTests
{
    private static readonly string s_page = File.ReadAllText(Path.Combine(Samples.Sample.Root, "docs", "sources.md"));

    [Fact]
    public void Each_source_stands_once_with_what_was_read_and_where()
    {
        var rows = s_page.Split('\n').Where(
            l => l.StartsWith("| ", StringComparison.Ordinal) && !l.StartsWith("| source", StringComparison.Ordinal))
            .Select(l => l.Trim('|', ' ').Split(" | ")).ToList();
        Assert.True(rows.Count >= 30, $"{rows.Count} sources");
        Assert.All(rows, r => Assert.True(r.Length == 3 && r.All(cell => cell.Trim().Length > 0), string.Join(" | ", r)));
        Assert.Equal(rows.Count, rows.Select(r => r[0]).Distinct(StringComparer.Ordinal).Count());
    }

    // What a printed source calls read is on the page; what it calls from memory is not among the rows but below them.
    [Theory]
    [InlineData("NDS 2018, Table 2.3.2")]
    [InlineData("Southern Pine Use Guide")]
    [InlineData("WAC 296-24-29401")]
    [InlineData("IRC, R502.6")]
    [InlineData("IRC, R502.8.1")]
    [InlineData("ASCE 7-22, 2.4.1")]
    [InlineData("Constructional stretch")]
    [InlineData("Bend of a rope over a sheave")]
    public void Read(string source) => Assert.Contains($"| {source}", s_page, StringComparison.Ordinal);

    // The demo prints few values from memory: each kind once, whatever how many checks use it.
    [Fact]
    public void The_demo_has_few_values_from_memory()
    {
        var values = new Samples.Sample("alder-dell").Build().Checks
            .SelectMany(c => c.Source.Split("; "))
            .Where(s => s.Contains("from memory", StringComparison.Ordinal))
            .Select(s => s[(s.IndexOf(": ", StringComparison.Ordinal) + 1)..].Trim())
            .Distinct(StringComparer.Ordinal)
            .ToList();
        Assert.True(values.Count <= 10, string.Join(Environment.NewLine, values));
    }
}
