using System.Collections.Immutable;

namespace BridgeForm.Quantities;

/// <summary>
/// A unit of one kind of quantity: SI value = (number − <paramref name="Zero"/>) · <paramref name="Numerator"/> /
/// <paramref name="Denominator"/>. Numerator and denominator are apart so that 36 in and 914.4 mm give the same bits.
/// </summary>
/// <param name="Symbol">The spelling used in messages.</param>
/// <param name="Numerator">Exact where the unit's definition is exact.</param>
/// <param name="Denominator">Exact where the unit's definition is exact.</param>
/// <param name="Spellings">Further spellings, compared without regard to case.</param>
/// <param name="Zero">The number at which the SI value is zero; for degrees Fahrenheit.</param>
public sealed record Unit(
    string Symbol, double Numerator, double Denominator, ImmutableArray<string> Spellings, double Zero = 0)
{
    /// <summary>The SI value of a number of this unit.</summary>
    public double ToSi(double number) => (number - Zero) * Numerator / Denominator;

    /// <summary>The number of this unit for an SI value.</summary>
    public double FromSi(double si) => (si * Denominator / Numerator) + Zero;

    /// <summary>Whether a person's spelling means this unit.</summary>
    public bool IsSpelled(string text) =>
        string.Equals(text, Symbol, StringComparison.OrdinalIgnoreCase)
        || Spellings.Any(s => string.Equals(s, text, StringComparison.OrdinalIgnoreCase));
}

/// <summary>The units of one kind of quantity.</summary>
/// <param name="Kind">The kind.</param>
/// <param name="Noun">What it is called, with its article: <c>a length</c>.</param>
/// <param name="Units">Units, those to suggest first.</param>
/// <param name="Example">How one is written.</param>
public sealed record UnitSet(QuantityKind Kind, string Noun, ImmutableArray<Unit> Units, string Example)
{
    /// <summary>The unit of that spelling, or null.</summary>
    public Unit? Find(string spelling) => Units.FirstOrDefault(u => u.IsSpelled(spelling));

    /// <summary>Symbols for a message: <c>in, ft, mm, cm or m</c>.</summary>
    public string Symbols => Units.Length == 1
        ? Units[0].Symbol
        : string.Join(", ", Units.Take(Units.Length - 1).Select(u => u.Symbol)) + " or " + Units[^1].Symbol;
}
