namespace BridgeForm.Quantities;

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
            : QuantityReader.Wrong($"{QuantityReader.Quote(text)} goes on after its unit; only feet are followed by inches, as in 37 ft 6-1/2 in");
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
