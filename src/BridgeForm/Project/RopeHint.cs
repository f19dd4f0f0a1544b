using System.Collections.Immutable;
using BridgeForm.Materials;
using BridgeForm.Quantities;

namespace BridgeForm.Project;

/// <summary>
/// Which rope was probably meant. Never one of another diameter than the text names, and none where nothing is near: a thinner rope
/// taken unseen is a danger.
/// </summary>
internal static class RopeHint
{
    private const string Own =
        "a rope of your own is a mapping with diameter, mass_per_length, breaking_strength, metallic_area and modulus";

    private const double Millimetre = 1e-3;

    // Shorter beginnings than this are the beginning of anything.
    private const int ShortestBeginning = 3;

    /// <summary>The whole message.</summary>
    /// <param name="text">What stands in the file.</param>
    /// <param name="catalogue">The table.</param>
    public static string Message(string text, RopeCatalogue catalogue)
    {
        var ropes = catalogue.Keys.Select(k => catalogue.Find(k)).OfType<RopeProperties>().ToImmutableArray();
        var hint = RopeSizeText.Find(text) is { } size
            ? Misspelt(text, ropes.Where(r => Named(r, size.Diameter))) ?? OfDiameter(size, Sized(size, ropes))
            : Make(text, catalogue.Keys) ?? $"{ListedBy.Ropes}; {Own}";
        return $"{QuantityReader.Quote(text)} is not a rope of the built-in table; {hint}";
    }

    // Who writes inches is told of ropes in inches alone: 16 mm is no 5/8 in, however near they are.
    private static ImmutableArray<RopeProperties> Sized(RopeSize size, ImmutableArray<RopeProperties> ropes) =>
        !size.IsMetric && ropes.RemoveAll(IsMetric) is { IsEmpty: false } inches ? inches : ropes;

    private static bool IsMetric(RopeProperties rope) =>
        Math.Abs(rope.Diameter - (Rounding.Steps(rope.Diameter, Millimetre) * Millimetre)) <= Tolerances.RoundOff;

    private static bool Named(RopeProperties rope, double diameter) => Math.Abs(rope.Diameter - diameter) <= Tolerances.NamedDiameter;

    private static string? Misspelt(string text, IEnumerable<RopeProperties> ropes) =>
        NearestWord.Nearest(text, ropes.Select(r => r.Name)) is { IsEmpty: false } near
            ? $"did you mean {Alternatives.Text(near)}? {ListedBy.Ropes}"
            : null;

    // A key that ends before its size, or earlier.
    private static string? Make(string text, ImmutableArray<string> keys)
    {
        var sizes = keys.Where(k => RopeSizeText.Find(k) is not null)
            .Select(k => (Make: k[..RopeSizeText.Find(k)!.Value.Start], Size: k[RopeSizeText.Find(k)!.Value.Start..]))
            .ToLookup(s => s.Make.TrimEnd('-'), s => s.Size, StringComparer.Ordinal);
        var makes = sizes.Select(s => s.Key).ToList();
        var near = NearestWord.Nearest(text.TrimEnd('-'), makes);
        var meant = near.IsEmpty && text.Length >= ShortestBeginning
            ? [.. makes.Where(m => m.StartsWith(text, StringComparison.OrdinalIgnoreCase))]
            : near;
        return meant.IsEmpty ? null
            : $"it wants a size: {string.Join(", ", meant.Select(m => $"{m}-SIZE from {sizes[m].First()} to {sizes[m].Last()}"))}; "
                + ListedBy.Ropes;
    }

    private static string OfDiameter(RopeSize size, ImmutableArray<RopeProperties> ropes)
    {
        var (thinner, thicker) = (
            ropes.Where(r => r.Diameter <= size.Diameter + Tolerances.NamedDiameter).MaxBy(r => r.Diameter),
            ropes.Where(r => r.Diameter > size.Diameter + Tolerances.NamedDiameter).MinBy(r => r.Diameter));
        if (thinner is not null && Named(thinner, size.Diameter))
        {
            return $"of {size.Words(thinner.Diameter)} there are {Keys(thinner.Diameter, ropes)}; {ListedBy.Ropes}";
        }

        var next = ((RopeProperties?[])[thinner, thicker]).OfType<RopeProperties>()
            .Select(r => $"of {size.Words(r.Diameter)} {Keys(r.Diameter, ropes)}");
        return $"there is none of {size.Words(size.Diameter)}, but {string.Join(", and ", next)}; {ListedBy.Ropes}; {Own}";
    }

    // Of each kind, weakest first, those that are zinc coated, for they hang in the rain; all where none is.
    private static string Keys(double diameter, ImmutableArray<RopeProperties> ropes) => string.Join(
        ", ",
        ropes.Where(r => Math.Abs(r.Diameter - diameter) <= Tolerances.RoundOff)
            .GroupBy(r => (r.Kind, r.Modulus))
            .OrderBy(g => g.Key.Kind)
            .SelectMany(g => g.Where(r => r.Galvanized || g.All(other => !other.Galvanized)).OrderBy(r => r.BreakingStrength))
            .Select(r => r.Name));
}

/// <summary>A diameter that a text names.</summary>
/// <param name="Diameter">Metres.</param>
/// <param name="Start">Where in the text it begins.</param>
/// <param name="IsMetric">It was written in metric units.</param>
internal readonly record struct RopeSize(double Diameter, int Start, bool IsMetric)
{
    /// <summary>A diameter in both units, that of the text first.</summary>
    public string Words(double diameter)
    {
        var (inches, millimetres) = (LengthText.InchFigure(diameter) + " in", LengthText.Millimetres(diameter));
        return IsMetric ? $"{millimetres} ({inches})" : $"{inches} ({millimetres})";
    }
}

/// <summary>Finds the diameter that a text names.</summary>
internal static class RopeSizeText
{
    // Nobody writes a bare number of inches beyond the thickest rope that a file takes, nor of millimetres for one so thin.
    private const double MostInches = 6;

    // What is larger is no diameter: the 1770 in rope-6x19-iwrc-1770 is a grade.
    private const double Thickest = MostInches * Units.MetresPerInch;

    /// <summary>
    /// The first number that stands at the end or before a unit of length, in metres; null for none. A bare number is inches up to 6,
    /// and millimetres above.
    /// </summary>
    /// <param name="text">Such as <c>5/8 in</c>, <c>16mm cable</c>, <c>strand-ehs-3/8</c>.</param>
    public static RopeSize? Find(string text)
    {
        for (var start = 0; start < text.Length; start++)
        {
            if ((start == 0 || text[start - 1] is ' ' or '-') && At(text.AsSpan(start), start) is { } size)
            {
                return size;
            }
        }

        return null;
    }

    private static RopeSize? At(ReadOnlySpan<char> text, int start)
    {
        var length = NumberScanner.Scan(text, out var number);
        if (length == 0 || number <= 0 || !double.IsFinite(number))
        {
            return null;
        }

        // A key has a dash between number and unit: 16-mm.
        var rest = text[length..].Trim().TrimStart('-');
        var end = rest.IndexOfAny(' ', '-', ',');
        var unit = rest.IsEmpty
            ? number <= MostInches ? Units.Inch : Units.Of(QuantityKind.Length).Find("mm")
            : Units.Of(QuantityKind.Length).Find((end < 0 ? rest : rest[..end]).ToString());
        return unit is null || unit.ToSi(number) > Thickest
            ? null
            : new(unit.ToSi(number), start, unit != Units.Inch && unit != Units.Foot);
    }
}
