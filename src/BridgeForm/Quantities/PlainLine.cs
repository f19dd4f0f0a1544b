using System.Globalization;
using System.Text;

namespace BridgeForm.Quantities;

/// <summary>
/// Text of others as part of a line for people: nothing in it can move a terminal's cursor, end the line, or turn the text
/// around it back to front. Such characters are shown by their number, as a YAML text in double quotes would write them.
/// </summary>
public static class PlainLine
{
    /// <summary>The text with every control and format character, line separator and half surrogate pair as <c>\u001B</c>.</summary>
    public static string Of(string text) => IsPlain(text) ? text : Shown(text, keepLineFeeds: false);

    /// <summary>The same for text of several lines that the program itself has put together.</summary>
    public static string Lines(string text) => IsPlain(text) ? text : Shown(text, keepLineFeeds: true);

    /// <summary>Whether a character has a place on the page and no effect beyond it.</summary>
    internal static bool IsPlain(Rune rune) => Rune.GetUnicodeCategory(rune) is not
        (
            UnicodeCategory.Control or UnicodeCategory.Format or UnicodeCategory.LineSeparator or UnicodeCategory.ParagraphSeparator
                or UnicodeCategory.Surrogate);

    /// <summary>
    /// Whether a text can go into titles and tables as it is: one line without control characters, characters that turn text
    /// around (UAX #9, 2), or ones that no text may hold. Joiners and other marks that scripts need may stand in it.
    /// </summary>
    internal static bool IsText(string text)
    {
        for (var rest = text.AsSpan(); !rest.IsEmpty;)
        {
            if (Rune.DecodeFromUtf16(rest, out var rune, out var length) != System.Buffers.OperationStatus.Done
                || (!IsPlain(rune) && Rune.GetUnicodeCategory(rune) != UnicodeCategory.Format)
                || rune.Value is (>= 0x202A and <= 0x202E) or (>= 0x2066 and <= 0x2069) or 0xFEFF
                || (rune.Value & 0xFFFE) == 0xFFFE)
            {
                return false;
            }

            rest = rest[length..];
        }

        return true;
    }

    private static bool IsPlain(string text)
    {
        foreach (var c in text)
        {
            // Beyond ASCII the slower way decides.
            if (c is < ' ' or > '~')
            {
                return false;
            }
        }

        return true;
    }

    private static string Shown(string text, bool keepLineFeeds)
    {
        var shown = new StringBuilder(text.Length);
        for (var rest = text.AsSpan(); !rest.IsEmpty;)
        {
            var isWhole = Rune.DecodeFromUtf16(rest, out var rune, out var length) == System.Buffers.OperationStatus.Done;
            if (!isWhole)
            {
                shown.Append(CultureInfo.InvariantCulture, $"\\u{(int)rest[0]:X4}");
            }
            else if (IsPlain(rune) || (keepLineFeeds && rune.Value == '\n'))
            {
                shown.Append(rest[..length]);
            }
            else
            {
                shown.Append(rune.IsBmp ? "\\u" : "\\U").Append(
                    rune.Value.ToString(rune.IsBmp ? "X4" : "X8", CultureInfo.InvariantCulture));
            }

            rest = rest[length..];
        }

        return shown.ToString();
    }
}
