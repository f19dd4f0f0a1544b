using System.Collections.Immutable;
using System.Text;

namespace BridgeForm.Materials;

/// <summary>Grades and species as grade stamps spell them, and the words of the built-in tables for them.</summary>
public static class StampedWords
{
    // A grade by what stamps write for it (common practice, no source), best first.
    private static readonly ImmutableArray<StampedKey> s_grades =
    [
        new("ss", ["Select Structural", "SS", "Sel Str", "Sel Struct", "Structural Select"]),
        new("no1", ["No. 1", "#1", "Number 1", "1"]),
        new("no2", ["No. 2", "#2", "Number 2", "2"]),
        new("no3", ["No. 3", "#3", "Number 3", "3"]),
        .. StrengthClass.All.Select(
            c => new StampedKey(c.Grade, [c.Grade, "EN 338 " + c.Grade, .. Woods(c).Select(w => $"{w} {c.Grade}")])),
    ];

    // Species by what stamps and yards write for them (common practice, no source).
    private static readonly ImmutableArray<StampedKey> s_species =
    [
        new("southern-pine", ["Southern Pine", "Southern Yellow Pine", "SYP", "SP", "S. Pine"]),
        new(
            "douglas-fir-larch",
            ["Douglas Fir-Larch", "Douglas Fir", "D Fir-L", "DFL", "DF", "Doug Fir-L", "Doug Fir", "Doug Fir-Larch"]),
        new("hem-fir", ["Hem-Fir", "HF"]),
        new("western-red-cedar", ["Western Red Cedar", "Western Cedars", "Western Cedar", "West Cedar", "WRC", "W. Cedar"]),
        new("spruce-pine-fir", ["Spruce-Pine-Fir", "S-P-F"]),
        new("redwood", ["Redwood"]),
        new("yellow-cedar", ["Yellow Cedar", "Alaska Cedar", "Alaska Yellow Cedar"]),
        new("white-oak", ["White Oak"]),
        new(
            StrengthClass.Softwood,
            ["European softwood", "European spruce", "Norway spruce", "Scots pine", .. ClassWords(StrengthClass.Softwood)]),
        new(StrengthClass.Hardwood, ["European hardwood", .. ClassWords(StrengthClass.Hardwood)]),
    ];

    private static readonly ImmutableArray<string> s_besides = [.. Besides.Select(b => Plain(b, keepAnd: true))];

    /// <summary>Grades of the built-in tables, best first.</summary>
    public static ImmutableArray<string> Grades { get; } = [.. s_grades.Select(g => g.Key)];

    /// <summary>
    /// What a stamp may add to a grade. Seasoning and better grades in a lot say nothing against the grade; dense and nondense are
    /// grades of their own.
    /// </summary>
    public static ImmutableArray<string> Besides =>
        ["and Better", "& Better", "& Btr", "and Btr", "Prime", "KD19", "KD15", "KDHT", "KD", "S-Dry", "S-Grn", "MC15", "HT"];

    /// <summary>What is understood as a grade; small and capital letters, spaces and points are alike.</summary>
    /// <param name="key">One of <see cref="Grades"/>.</param>
    public static ImmutableArray<string> OfGrade(string key) => WordsOf(s_grades, key);

    /// <summary>What is understood as a species, its name first; none for a species that no stamp is known of.</summary>
    /// <param name="key">As in the project file.</param>
    public static ImmutableArray<string> OfSpecies(string key) => WordsOf(s_species, key);

    /// <summary>
    /// The table's word for a grade: <c>No. 1</c>, <c>#1</c> and <c>no1</c> are <c>no1</c>; null for a grade that it has not.
    /// </summary>
    public static string? Grade(string written)
    {
        var word = Plain(written, keepAnd: true);
        while (s_besides.FirstOrDefault(b => word.EndsWith(b, StringComparison.Ordinal)) is { } beside)
        {
            word = word[..^beside.Length];
        }

        return KeyOf(s_grades, word);
    }

    /// <summary>
    /// The built-in key for a species: <c>Southern Pine</c>, <c>SYP</c> and <c>southern-pine</c> are <c>southern-pine</c>; null
    /// for none.
    /// </summary>
    public static string? Species(string written) => KeyOf(s_species, Plain(written, keepAnd: false));

    // Spruce C24 names both kind of wood and class; spruce alone may be the American one.
    private static IEnumerable<string> ClassWords(string species) => StrengthClass.All
        .Where(c => string.Equals(c.Species, species, StringComparison.Ordinal))
        .SelectMany(c => Woods(c).Select(w => $"{w} {c.Grade}").Prepend(c.Grade));

    private static string[] Woods(StrengthClass of) =>
        of.Species is StrengthClass.Softwood ? ["softwood", "spruce", "pine", "larch", "fir"] : ["hardwood", "oak"];

    private static string? KeyOf(ImmutableArray<StampedKey> keys, string plain) => keys
        .Where(k => k.Words.Append(k.Key).Any(w => string.Equals(Plain(w, keepAnd: false), plain, StringComparison.Ordinal)))
        .Select(k => k.Key)
        .FirstOrDefault();

    private static ImmutableArray<string> WordsOf(ImmutableArray<StampedKey> keys, string key) => keys
        .Where(k => string.Equals(k.Key, key, StringComparison.Ordinal))
        .Select(k => k.Words)
        .FirstOrDefault([]);

    /// <summary>Small letters and digits alone; <c>#</c> is <c>no</c>.</summary>
    private static string Plain(string written, bool keepAnd)
    {
        var text = new StringBuilder();
        foreach (var c in written.ToLowerInvariant())
        {
            if (c == '#')
            {
                text.Append("no");
            }
            else if (char.IsAsciiLetterOrDigit(c) || (keepAnd && c == '&'))
            {
                text.Append(c);
            }
        }

        return text.ToString();
    }

    private sealed record StampedKey(string Key, ImmutableArray<string> Words);
}
