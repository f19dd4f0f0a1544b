namespace BridgeForm.Quantities;

/// <summary>Numbers written in ways that could be read wrongly, and their right spelling.</summary>
internal static class NumberFaults
{
    private const int GroupLength = 3;
    private const string Separators = ", '_";
    private const string SignAfterSpace = " -";

    /// <summary>What is wrong with the number, or null.</summary>
    /// <param name="units">What is read; for its example.</param>
    /// <param name="sign">The sign before it, empty when there is none.</param>
    /// <param name="body">The text without its sign.</param>
    /// <param name="length">Characters of the number that was read from the front of it.</param>
    /// <param name="text">The text as written.</param>
    public static string? Find(UnitSet units, string sign, string body, int length, string text)
    {
        if (body.AsSpan(0, length).IndexOfAnyExceptInRange('0', '9') < 0 && Groups(body, length) is var groups and > 0)
        {
            return InGroups(sign, body, length, groups, text);
        }

        if (length + 1 < body.Length && body[length] == ',' && char.IsAsciiDigit(body[length + 1]))
        {
            return $"{QuantityReader.Quote(text)} has a comma in its number; write a decimal point, as in {units.Example}";
        }

        return Minus(body) is var at and >= 0
            ? $"{QuantityReader.Quote(text)} has a minus sign inside; write {QuantityReader.Quote(sign + body.Remove(at + 1, 1))}, or what "
                + "is left when something is taken away"
            : null;
    }

    // How many groups of three digits follow the first digits: one in 1,000.
    private static int Groups(string body, int length)
    {
        var count = 0;
        for (
            var at = length; at < body.Length && Separators.Contains(body[at], StringComparison.Ordinal)
                && body[at] == body[length]; at += 1 + GroupLength)
        {
            var digits = Digits(body.AsSpan(at + 1));
            if (digits.Length == 0)
            {
                break;
            }

            if (digits.Length != GroupLength || digits.IsFollowedBySlash)
            {
                return 0;
            }

            count++;
        }

        return count;
    }

    private static (int Length, bool IsFollowedBySlash) Digits(ReadOnlySpan<char> text)
    {
        var n = text.IndexOfAnyExceptInRange('0', '9');
        return n < 0 ? (text.Length, false) : (n, text[n] == '/');
    }

    // 1,000 may be a thousand, or one with a decimal comma: neither is guessed.
    private static string InGroups(string sign, string body, int length, int groups, string text)
    {
        var end = length + (groups * (1 + GroupLength));
        var rest = body[end..];
        var digits = string.Concat(body[..end].Where(char.IsAsciiDigit));
        var asDecimal = body[length] == ',' && groups == 1 && !rest.StartsWith('.')
            ? $", or {QuantityReader.Quote(sign + body[..end].Replace(',', '.') + rest)} if its comma is a decimal one"
            : "";
        return $"{QuantityReader.Quote(text)} separates thousands; write the number without, "
            + $"{QuantityReader.Quote(sign + digits + rest)}{asDecimal}";
    }

    // After a space and right before a number a dash is a sign: 8 ft -1 in is not 8 ft 1 in. In 8'-1" and 1 - 1/2 it joins.
    private static int Minus(string body)
    {
        var at = body.IndexOf(SignAfterSpace, StringComparison.Ordinal);
        return at >= 0 && NumberScanner.Starts(body.AsSpan(at + SignAfterSpace.Length)) ? at : -1;
    }
}
