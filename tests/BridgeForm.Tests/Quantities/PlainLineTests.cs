using System.Globalization;
using System.Text;
using BridgeForm.Quantities;
using CsCheck;

namespace BridgeForm.Tests.Quantities;

/// <summary>Numbers of characters are those of the Unicode Character Database.</summary>
public sealed class PlainLineTests
{
    [Theory]
    [InlineData("Alder Dell, ⌀ 1/2 in · Übung 橋 🌉", "Alder Dell, ⌀ 1/2 in · Übung 橋 🌉")]
    [InlineData("a\u001b[31mb", @"a\u001B[31mb")]
    [InlineData("a\u009b31mb", @"a\u009B31mb")] // begins a command by itself
    [InlineData("a\nb\r\tc\u007f\u0085", @"a\u000Ab\u000D\u0009c\u007F\u0085")]
    [InlineData("a\u202Eb\u2066c\u200Fd", @"a\u202Eb\u2066c\u200Fd")] // turn text around
    [InlineData("a\u2028b\u2029c", @"a\u2028b\u2029c")] // separators of lines and paragraphs
    [InlineData("a\u200Bb\u00ADc\uFEFFd", @"a\u200Bb\u00ADc\uFEFFd")] // not seen
    [InlineData("a\U000E0041b", @"a\U000E0041b")] // tag letters, not seen
    public void What_moves_or_hides_is_shown_by_its_number(string text, string shown) => Assert.Equal(shown, PlainLine.Of(text));

    [Fact]
    public void Half_a_pair_is_shown_by_its_number() =>
        Assert.Equal(@"a\uD800b\uDC00", PlainLine.Of("a" + (char)0xD800 + "b" + (char)0xDC00));

    [Fact]
    public void Only_line_feeds_pass_between_lines_of_our_own() => Assert.Equal("a\nb\\u000Dc\\u001B", PlainLine.Lines("a\nb\rc\u001b"));

    [Fact]
    public void Nothing_gets_through_and_plain_text_stays() => Gen.String.Sample(text =>
    {
        var shown = PlainLine.Of(text);
        Assert.DoesNotContain(shown.EnumerateRunes(), r => Rune.GetUnicodeCategory(r) is UnicodeCategory.Control or UnicodeCategory.Format);
        Assert.Equal(shown, PlainLine.Of(shown));
    });
}
