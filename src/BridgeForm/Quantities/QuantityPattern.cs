using System.Text;

namespace BridgeForm.Quantities;

/// <summary>Regular expressions (ECMAScript, without flags) for what <see cref="QuantityReader"/> reads.</summary>
public static class QuantityPattern
{
    private const string Dash = "[-\u2010-\u2013\u2212]";
    private const string Space = "[ \u00A0\u2009\u202F]*";
    private const string Vulgar = "[\u00BC-\u00BE\u2150-\u215E]";
    private const string Fraction = "[0-9]+[/\u2044\u2215][0-9]+";
    private const string Decimal = "(?:[0-9]+(?:\\.[0-9]*)?|\\.[0-9]+)(?:[eE][-+]?[0-9]+)?";
    private const string Gap = "[ \u00A0\u2009\u202F]";

    // A dash joins two numbers when it touches the first or stands apart from both; else it is a minus sign.
    private const string Joint = "(?:" + Dash + Space + "|" + Gap + "+" + Dash + Gap + "+|" + Space + ")";
    private const string InchJoint = "(?:" + Joint + "|" + Space + "," + Space + ")";
    private const string Number = "(?:[0-9]+"
        + Joint + "(?:" + Fraction + "|" + Vulgar + ")|" + Fraction + "|" + Vulgar + "|" + Decimal + ")";
    private const string Sign = "(?:" + Dash + "|\\+)?";

    private const string Slope = "1" + Space + ":" + Space + Number;

    // Primes of all sorts for ft and in.
    private const string FootMark = "['\u2032\u2018\u2019\u00B4]";
    private const string InchMark = "(?:[\"\u2033\u201C\u201D]|" + FootMark + FootMark + ")";

    /// <summary>A section: two sizes with an x between them.</summary>
    public static string Section => "^" + Space + Number + Space + LengthUnit() + "?" + Space + "[xX×]" + Space + Number + Space
        + "(?:" + LengthUnit() + "|" + AnyCase("green") + ")?" + Space + "$";

    /// <summary>The expression for a kind of quantity.</summary>
    public static string Of(QuantityKind kind)
    {
        var unit = kind == QuantityKind.Length ? LengthUnit() : Alternatives(Units.Of(kind).Units);
        var more = kind == QuantityKind.Length
            ? "(?:" + InchJoint + Number + Space + OneOf(Units.Inch, InchMark) + ")?"
            : "";
        var one = Number + Space + unit + more;
        return "^" + Space + Sign + Space + (kind == QuantityKind.Share ? $"(?:{one}|{Slope})" : one) + Space + "$";
    }

    private static string LengthUnit() =>
        "(?:" + InchMark + "|" + FootMark + "|" + Alternatives(Units.Of(QuantityKind.Length).Units) + ")";

    private static string OneOf(Unit unit, string mark) => "(?:" + mark + "|" + Alternatives([unit]) + ")";

    private static string Alternatives(IEnumerable<Unit> units) =>
        "(?:" + string.Join('|', units.SelectMany(u => u.Spellings.Prepend(u.Symbol)).Select(AnyCase)) + ")";

    private static string AnyCase(string text)
    {
        var pattern = new StringBuilder();
        foreach (var c in text)
        {
            var (lower, upper) = (char.ToLowerInvariant(c), char.ToUpperInvariant(c));
            _ = lower != upper ? pattern.Append('[').Append(lower).Append(upper).Append(']')
                : c is '^' or '.' or '/' or '$' ? pattern.Append('\\').Append(c)
                : pattern.Append(c);
        }

        return pattern.ToString();
    }
}
