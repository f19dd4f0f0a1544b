using System.Globalization;

namespace BridgeForm.Quantities;

/// <summary>A quantity read from a person's text: its SI value, or what is wrong with the text and what would be right.</summary>
/// <param name="Value">SI value; 0 when there is a problem.</param>
/// <param name="Problem">Null when the text was read.</param>
/// <param name="TooLarge">The text says a quantity, and it is beyond anything that can be reckoned with.</param>
public readonly record struct QuantityReading(double Value, string? Problem, bool TooLarge = false)
{
    /// <summary>Whether the text was read.</summary>
    public bool IsRead => Problem is null;
}

/// <summary>Reads people's lengths, angles, forces and so on into SI values.</summary>
public static class QuantityReader
{
    /// <summary>Nothing in a bridge comes near this in any SI unit; beyond it arithmetic loses its footing.</summary>
    private const double Largest = 1e15;

    /// <summary>Longest text shown back in a message.</summary>
    private const int LongestQuote = 60;

    /// <summary>Reads one quantity. Negative values are read; whether they make sense is for the caller.</summary>
    public static QuantityReading Read(QuantityKind kind, string text)
    {
        var units = Units.Of(kind);
        var plain = PlainText(text);
        var negative = plain.StartsWith('-');
        var body = (negative || plain.StartsWith('+') ? plain[1..] : plain).TrimStart();
        var reading = ReadUnsigned(units, negative ? "-" : "", body, text);
        if (!reading.IsRead)
        {
            return reading;
        }

        // The sign belongs to the number, not to the SI value: −4 F is not −(4 F).
        var value = negative ? Negated(units, body, reading.Value) : reading.Value;
        return double.IsFinite(value) && Math.Abs(value) <= Largest
            ? new(value, null)
            : Wrong($"{Quote(text)} is out of range") with { TooLarge = true };
    }

    /// <summary>A text as it is shown in a message: short, on one line, in quotation marks.</summary>
    public static string Quote(string text)
    {
        if (text.Length <= LongestQuote)
        {
            return $"'{PlainLine.Of(text)}'";
        }

        var cut = char.IsHighSurrogate(text[LongestQuote - 1]) ? LongestQuote - 1 : LongestQuote;
        return $"'{PlainLine.Of(text[..cut])}…'";
    }

    private static double Negated(UnitSet units, string body, double value)
    {
        if (units.Kind != QuantityKind.Temperature)
        {
            return -value;
        }

        var n = NumberScanner.Scan(body, out var number);
        return units.Find(body[n..].Trim())!.ToSi(-number);
    }

    private static QuantityReading ReadUnsigned(UnitSet units, string sign, string body, string text)
    {
        var length = NumberScanner.Scan(body, out var number);
        if (length == 0)
        {
            return Wrong($"{Quote(text)} is not {units.Noun}; write one such as {units.Example}");
        }

        var rest = body[length..];
        if (NumberFaults.Find(units, sign, body, length, text) is { } problem)
        {
            return Wrong(problem);
        }

        if (units.Kind == QuantityKind.Share && InHundred(body[..length], rest) is { } slope)
        {
            return new(slope, null);
        }

        return units.Kind == QuantityKind.Length
            ? LengthTerms.Read(units, number, rest, text)
            : OfUnit(units, number, rest.Trim(), text);
    }

    internal static QuantityReading OfUnit(UnitSet units, double number, string spelling, string text)
    {
        if (spelling.Length == 0)
        {
            return Wrong($"{Quote(text)} has no unit; {units.Noun} is written with {units.Symbols}, as in {units.Example}");
        }

        var unit = units.Find(spelling);
        return unit is null ? Wrong(UnknownUnit(units, spelling, text)) : new(unit.ToSi(number), null);
    }

    internal static QuantityReading Wrong(string problem) => new(0, problem);

    private static string UnknownUnit(UnitSet units, string spelling, string text)
    {
        var known = units.Units.SelectMany(u => u.Spellings.Append(u.Symbol));
        var nearest = NearestWord.Find(spelling, known);
        var hint = nearest is null ? "" : $" (did you mean {units.Find(nearest)!.Symbol}?)";
        return string.Create(
            CultureInfo.InvariantCulture,
            $"{Quote(text)}: {Quote(spelling)} is not a unit of {Bare(units.Noun)}{hint}; write {units.Symbols}");
    }

    // A slope as people say it: 1:12.
    private static double? InHundred(string first, string rest)
    {
        var tail = rest.Trim();
        if (first is not "1" || !tail.StartsWith(':'))
        {
            return null;
        }

        var run = tail[1..].Trim();
        return NumberScanner.Scan(run, out var length) == run.Length && run.Length > 0 && length > 0 ? 1 / length : null;
    }

    private static string Bare(string noun) => noun[(noun.IndexOf(' ', StringComparison.Ordinal) + 1)..];

    // One spelling for each kind of dash, prime, slash and space.
    private static string PlainText(string text)
    {
        var plain = string.Create(text.Length, text, static (span, source) =>
        {
            for (var i = 0; i < source.Length; i++)
            {
                span[i] = Plain(source[i]);
            }
        });
        return plain.Replace("''", "\"", StringComparison.Ordinal).Trim();
    }

    private static char Plain(char c) => c switch
    {
        '\u2032' or '\u2018' or '\u2019' or '\u00B4' => '\'',
        '\u2033' or '\u201C' or '\u201D' => '"',
        '\u2044' or '\u2215' => '/',
        '\u2212' or '\u2010' or '\u2011' or '\u2012' or '\u2013' => '-',
        '\u00A0' or '\u2009' or '\u202F' or '\t' => ' ',
        '\u00BA' => '°',
        _ => c,
    };
}

/// <summary>The part of a length after its first number: a unit, and for feet perhaps inches.</summary>
internal static class LengthTerms
{
    private const double InchesPerFoot = 12;

    public static QuantityReading Read(UnitSet units, double number, string rest, string text)
    {
        var end = UnitEnd(rest);
        var tail = rest[end..];
        var spelling = tail.Length == 0 ? rest.Trim() : rest[..end].TrimEnd('-', ',', ' ').Trim();
        var first = QuantityReader.OfUnit(units, number, spelling, text);
        if (!first.IsRead || tail.Length == 0)
        {
            return first;
        }

        return units.Find(spelling) == Units.Foot
            ? FeetAndInches(units, number, tail, text)
            : QuantityReader.Wrong(
                $"{QuantityReader.Quote(text)} goes on after its unit; only feet are followed by inches, as in 37 ft 6-1/2 in");
    }

    private static QuantityReading FeetAndInches(UnitSet units, double feet, string tail, string text)
    {
        var length = NumberScanner.Scan(tail, out var inches);
        var unit = tail[length..].Trim();
        var reading = QuantityReader.OfUnit(units, inches, unit, text);
        if (!reading.IsRead)
        {
            return reading;
        }

        if (units.Find(unit) != Units.Inch)
        {
            return QuantityReader.Wrong($"{QuantityReader.Quote(text)}: feet are followed by inches only, as in 37 ft 6-1/2 in");
        }

        return inches < InchesPerFoot
            ? new(Units.Inch.ToSi((feet * InchesPerFoot) + inches), null)
            : QuantityReader.Wrong($"{QuantityReader.Quote(text)} has 12 inches or more after its feet; write the whole feet as feet");
    }

    private static int UnitEnd(string rest)
    {
        var i = 0;
        while (i < rest.Length && !NumberScanner.Starts(rest.AsSpan(i)))
        {
            i++;
        }

        return i;
    }
}
