using System.Globalization;

namespace BridgeForm.Quantities;

/// <summary>
/// Reads the number at the front of a text as people write it: <c>6.5</c>, <c>5/8</c>, <c>1-1/2</c>, <c>1 1/2</c>,
/// <c>½</c>, <c>1½</c>, <c>2e3</c>. Unsigned.
/// </summary>
internal static class NumberScanner
{
    /// <summary>Length of the number's text, 0 when there is none.</summary>
    public static int Scan(ReadOnlySpan<char> text, out double number)
    {
        if (text.Length > 0 && IsVulgar(text[0]))
        {
            number = char.GetNumericValue(text[0]);
            return 1;
        }

        var digits = Digits(text);
        if (digits == 0)
        {
            return Decimal(text, 0, out number);
        }

        var fraction = Fraction(text, out number, proper: false);
        if (fraction > 0)
        {
            return fraction;
        }

        var rest = text[digits..];
        var joined = Joiner(rest);
        var part = Part(rest[joined..], out var more);
        if (part == 0)
        {
            return Decimal(text, digits, out number);
        }

        number = double.Parse(text[..digits], NumberStyles.None, CultureInfo.InvariantCulture) + more;
        return digits + joined + part;
    }

    /// <summary>Whether the text starts with something a number can start with.</summary>
    public static bool Starts(ReadOnlySpan<char> text) => Scan(text, out _) > 0;

    private static bool IsVulgar(char c) =>
        char.GetUnicodeCategory(c) == UnicodeCategory.OtherNumber && char.GetNumericValue(c) is > 0 and < 1;

    private static int Digits(ReadOnlySpan<char> text)
    {
        var n = 0;
        while (n < text.Length && char.IsAsciiDigit(text[n]))
        {
            n++;
        }

        return n;
    }

    // Whole number and fraction may touch a hyphen or spaces: 1-1/2, 1 1/2, 1 - 1/2.
    private static int Joiner(ReadOnlySpan<char> text)
    {
        var n = Spaces(text);
        return n < text.Length && text[n] == '-' ? n + 1 + Spaces(text[(n + 1)..]) : n;
    }

    private static int Spaces(ReadOnlySpan<char> text) => text.Length - text.TrimStart(' ').Length;

    private static int Part(ReadOnlySpan<char> text, out double number)
    {
        if (text.Length > 0 && IsVulgar(text[0]))
        {
            number = char.GetNumericValue(text[0]);
            return 1;
        }

        return Fraction(text, out number, proper: true);
    }

    private static int Fraction(ReadOnlySpan<char> text, out double number, bool proper)
    {
        number = 0;
        var top = Digits(text);
        if (top == 0 || top >= text.Length || text[top] != '/')
        {
            return 0;
        }

        var bottom = Digits(text[(top + 1)..]);
        if (bottom == 0)
        {
            return 0;
        }

        var numerator = double.Parse(text[..top], NumberStyles.None, CultureInfo.InvariantCulture);
        var denominator = double.Parse(text.Slice(top + 1, bottom), NumberStyles.None, CultureInfo.InvariantCulture);
        number = numerator / denominator;
        return proper && numerator >= denominator ? 0 : top + 1 + bottom;
    }

    private static int Decimal(ReadOnlySpan<char> text, int digits, out double number)
    {
        var n = digits;
        if (n < text.Length && text[n] == '.')
        {
            var decimals = Digits(text[(n + 1)..]);
            n = digits + decimals == 0 ? 0 : n + 1 + decimals;
        }

        if (n == 0)
        {
            number = 0;
            return 0;
        }

        n += Exponent(text[n..]);
        number = double.Parse(text[..n], NumberStyles.Float, CultureInfo.InvariantCulture);
        return n;
    }

    private static int Exponent(ReadOnlySpan<char> text)
    {
        if (text.Length < 2 || text[0] is not ('e' or 'E'))
        {
            return 0;
        }

        var sign = text[1] is '+' or '-' ? 1 : 0;
        var digits = Digits(text[(1 + sign)..]);
        return digits == 0 ? 0 : 1 + sign + digits;
    }
}
