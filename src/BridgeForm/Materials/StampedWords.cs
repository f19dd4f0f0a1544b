using System.Collections.Immutable;
using System.Text;

namespace BridgeForm.Materials;

/// <summary>Grades and species as grade stamps spell them, and the words of the built-in tables for them.</summary>
public static class StampedWords
{
    /// <summary>Grades of the built-in tables.</summary>
    public static ImmutableArray<string> Grades { get; } = ["ss", "no1", "no2", "no3"];

    // Seasoning and better grades in a lot say nothing against the grade; dense and nondense are grades of their own.
    private static readonly ImmutableArray<string> s_besides =
        ["andbetter", "&better", "&btr", "andbtr", "prime", "kd19", "kd15", "kdht", "kd", "sdry", "sgrn", "mc15", "ht"];

    // Species by what stamps and yards write for them, letters only (common practice, no source).
    private static readonly ImmutableArray<(string Key, ImmutableArray<string> Words)> s_species =
    [
        ("southern-pine", ["southernyellowpine", "syp", "sp", "spine"]),
        ("douglas-fir-larch", ["douglasfir", "dfirl", "dfl", "df", "dougfirl", "dougfir", "dougfirlarch"]),
        ("hem-fir", ["hf"]),
        ("western-red-cedar", ["westerncedars", "westerncedar", "westcedar", "wrc", "wcedar"]),
        ("spruce-pine-fir", ["spf"]),
        ("redwood", []),
        ("yellow-cedar", ["alaskacedar", "alaskayellowcedar"]),
        ("white-oak", []),
    ];

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

        return word switch
        {
            "ss" or "selectstructural" or "selstr" or "selstruct" or "structuralselect" => "ss",
            "no1" or "number1" or "1" => "no1",
            "no2" or "number2" or "2" => "no2",
            "no3" or "number3" or "3" => "no3",
            _ => null,
        };
    }

    /// <summary>
    /// The built-in key for a species: <c>Southern Pine</c>, <c>SYP</c> and <c>southern-pine</c> are <c>southern-pine</c>; null
    /// for none.
    /// </summary>
    public static string? Species(string written)
    {
        var word = Plain(written, keepAnd: false);
        return s_species
            .Where(
                s => string.Equals(Plain(s.Key, keepAnd: false), word, StringComparison.Ordinal)
                    || s.Words.Contains(word, StringComparer.Ordinal))
            .Select(s => s.Key)
            .FirstOrDefault();
    }

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
}
