using System.Diagnostics;
using System.Text;

namespace BridgeForm.Tests.Project;

/// <summary>Files that are no project files, or that try to overwhelm the reader, end in faults and quickly.</summary>
public sealed class HardeningTests
{
    /// <summary>A tenth of a second's work on an idle machine; work that grows with the square of the file takes minutes.</summary>
    private static readonly TimeSpan Quick = TimeSpan.FromSeconds(20);

    [Theory]
    [InlineData("", "not nothing", 1, 1)]
    [InlineData("# only a comment\n", "not nothing", 1, 1)]
    [InlineData("- a\n- b\n", "not a list", 1, 1)]
    [InlineData("just words", "not a single value", 1, 1)]
    [InlineData("name: a\nsite: &s { span: 30 ft }\n", "anchor &s is not allowed", 2, 7)]
    [InlineData("name: !str a\nsite: { span: 30 ft }\n", "is not allowed in a project file", 1, 7)]
    [InlineData("name: a\nsite: !!map { span: 30 ft }\n", "is not allowed in a project file", 2, 7)]
    [InlineData("name: a\nsite: { span: 30 ft }\n---\nname: b\n", "a second document begins here", 3, 1)]
    [InlineData("name: a\n? [b, c]\n: d\nsite: { span: 30 ft }\n", "a key must be a word, not a list", 2, 3)]
    [InlineData("name: a\nsite: { span: 30 ft\n", "this is not YAML", null, null)]
    [InlineData("name: a\n\tsite: 1\n", "this is not YAML", null, null)]
    [InlineData("name: 'a\n", "this is not YAML", null, null)]
    [InlineData("name: \"\\q\"\n", "this is not YAML", null, null)]
    [InlineData("name: \"\\UFFFFFFFF\"\n", "this is not YAML", null, null)]
    [InlineData("%YAML 9.9\n---\nname: a\n", "this is not YAML", null, null)]
    [InlineData("name: a\0b\n", "character U+0000 does not belong in a project file", 1, 8)]
    [InlineData("name: a\nuse: \u001Bprivate\n", "character U+001B", 2, 6)]
    public void Refused(string text, string says, int? line, int? column)
    {
        var faults = Examples.Read(text).Faults;
        Assert.NotEmpty(faults);
        Assert.Contains(says, faults[0].Message, StringComparison.Ordinal);
        if (line is not null)
        {
            Assert.Equal((line, column), (faults[0].Line, faults[0].Column));
        }
    }

    [Theory]
    [InlineData("[")]
    [InlineData("{a: ")]
    [InlineData("- ")]
    [InlineData("? ")]
    [InlineData("[{a: ")]
    public void Deep_nesting_is_refused_quickly(string opening)
    {
        var faults = Timed(string.Concat(Enumerable.Repeat(opening, 100_000)));
        Assert.Contains("nested more than 16 levels deep", Assert.Single(faults).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Half_a_surrogate_pair_is_no_text()
    {
        var fault = Assert.Single(Examples.Read("name: \uD800\n").Faults);
        Assert.Contains("character U+D800", fault.Message, StringComparison.Ordinal);
        Assert.Equal((1, 7), (fault.Line, fault.Column));
    }

    [Fact]
    public void Deep_block_nesting_is_refused()
    {
        var text = new StringBuilder();
        for (var i = 0; i < 100; i++)
        {
            text.Append(' ', i).Append("a:\n");
        }

        var fault = Assert.Single(Examples.Read(text.ToString()).Faults);
        Assert.Contains("nested more than 16 levels deep", fault.Message, StringComparison.Ordinal);
        Assert.Equal(16, fault.Line); // its key is the node of level 17
    }

    [Fact]
    public void An_alias_bomb_does_not_go_off()
    {
        var text = new StringBuilder("name: a\nsite: { span: 30 ft }\na0: &a0 [x, x, x, x, x, x, x, x, x, x]\n");
        for (var i = 1; i < 30; i++)
        {
            text.Append(System.Globalization.CultureInfo.InvariantCulture, $"a{i}: &a{i} [")
                .AppendJoin(", ", Enumerable.Repeat($"*a{i - 1}", 10))
                .Append("]\n");
        }

        Assert.All(Timed(text.ToString()), f => Assert.Matches("anchor|alias|is not a key", f.Message));
    }

    [Fact]
    public void An_oversized_file_is_refused()
    {
        var fault = Assert.Single(Timed("name: a\n#" + new string('x', 1_000_000)));
        Assert.Contains("larger than 1 MB", fault.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_hundred_thousand_unknown_keys_are_told_in_part_and_quickly()
    {
        var text = new StringBuilder();
        for (var i = 0; i < 100_000; i++)
        {
            text.Append(System.Globalization.CultureInfo.InvariantCulture, $"k{i:x}: 1\n");
        }

        Assert.InRange(Timed(text.ToString()).Count, 2, 200);
    }

    [Fact]
    public void One_huge_value_is_told_in_brief()
    {
        var faults = Timed("name: a\nsite: { span: " + new string('7', 900_000) + " ft }\n");
        Assert.True(Assert.Single(faults).Message.Length < 300);
    }

    [Fact]
    public void Byte_order_mark_and_carriage_returns_are_fine()
    {
        var text = "\uFEFF" + Examples.Contract.ReplaceLineEndings("\r\n");
        Assert.Empty(Examples.Read(text).Lines);
        var fault = Assert.Single(Examples.Read(text.Replace("span: 30 ft", "span: 30", StringComparison.Ordinal)).Faults);
        Assert.Equal((5, 9), (fault.Line, fault.Column));
    }

    [Fact]
    public void A_fault_in_the_first_line_after_a_byte_order_mark_has_its_true_column()
    {
        var fault = Examples.Read("\uFEFFnames: a\nsite: { span: 30 ft }\n").Faults[0];
        Assert.Equal((1, 1), (fault.Line, fault.Column));
    }

    [Fact]
    public void A_document_marker_alone_is_fine() =>
        Assert.Empty(Examples.Read("---\n" + Examples.Contract + "\n...\n").Lines);

    private static List<BridgeForm.Project.Reading.ProjectFault> Timed(string text)
    {
        var watch = Stopwatch.StartNew();
        var faults = Examples.Read(text).Faults;
        Assert.True(watch.Elapsed < Quick, $"took {watch.Elapsed}");
        Assert.NotEmpty(faults);
        return [.. faults];
    }
}
