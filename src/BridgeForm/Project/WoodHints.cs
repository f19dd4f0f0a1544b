using System.Collections.Immutable;
using BridgeForm.Materials;
using BridgeForm.Quantities;

namespace BridgeForm.Project;

/// <summary>What a species that nobody knows was probably meant for.</summary>
internal static class SpeciesHint
{
    // Shorter words on stamps are near to anything.
    private const int ShortestStamp = 5;

    /// <summary>The whole message.</summary>
    /// <param name="written">As in the file.</param>
    /// <param name="known">Keys of species, the file's own among them.</param>
    /// <param name="isMetric">The file is metric: wood of the European strength classes is nearer to it than American species.</param>
    public static string Message(string written, IReadOnlyList<string> known, bool isMetric)
    {
        var graded = isMetric ? Graded(written) : [];
        var meant = graded.IsEmpty ? Meant(written, known) : graded;
        var hint = meant.IsEmpty ? $"known are {string.Join(", ", known)};" : $"did you mean {Alternatives.Text(meant)}?";
        return $"{QuantityReader.Quote(written)} is not a species; {hint} {ListedBy.Species}; your own go under species:";
    }

    private static ImmutableArray<string> Meant(string written, IReadOnlyList<string> known)
    {
        var key = written.Trim().Replace(' ', '-');
        var near = NearestWord.Nearest(key, known);
        return !near.IsEmpty ? near : Stamped(written) is { } stamped ? [stamped] : [.. known.Where(k => Has(k, key))];
    }

    // Spruce is on the stamps of softwood C24, oak on those of hardwood D30.
    private static ImmutableArray<string> Graded(string written) =>
    [
        .. StrengthClass.All.Select(c => c.Species).Distinct(StringComparer.Ordinal).Where(s => StampedWords.OfSpecies(s).Any(
            w => w.Split(' ').Contains(written.Trim(), StringComparer.OrdinalIgnoreCase))),
    ];

    private static string? Stamped(string written)
    {
        var words = SpeciesTable.All.SelectMany(s => StampedWords.OfSpecies(s.Key)).Where(w => w.Length >= ShortestStamp);
        return NearestWord.Nearest(written, words) is { IsEmpty: false } near ? StampedWords.Species(near[0]) : null;
    }

    // All words of what was written: oak is in white-oak, red-oak is not, and does not last outdoors as white oak does.
    private static bool Has(string key, string written) =>
        written.Length > 0 && written.Split('-').All(w => key.Split('-').Contains(w, StringComparer.OrdinalIgnoreCase));
}

/// <summary>What a grade that no table has was probably meant for.</summary>
internal static class GradeHint
{
    /// <summary>The whole message. Of grades as near as each other the lowest is named: no wood is taken for better than it is.</summary>
    /// <param name="written">As in the file.</param>
    public static string Message(string written)
    {
        var words = NotClasses.Reverse().SelectMany(g => StampedWords.OfGrade(g).Prepend(g)).Where(w => w.Length > 1);
        var hint = NearestWord.Nearest(written, words) is { IsEmpty: false } near ? $"did you mean {StampedWords.Grade(near[0])}?"
            : $"there are {string.Join(", ", StampedWords.Grades)};";
        hint = IsClass(written) ? $"of EN 338 there are {string.Join(", ", Classes)}; a lower class may stand in for a higher;" : hint;
        return $"{QuantityReader.Quote(written)} is not a grade of the built-in tables; {hint} {ListedBy.Grades}; values of another grade "
            + "go under values:";
    }

    private static IEnumerable<string> Classes => StrengthClass.All.Select(c => c.Grade).Order(StringComparer.Ordinal);

    private static ImmutableArray<string> NotClasses => [.. StampedWords.Grades.Except(Classes, StringComparer.Ordinal)];

    // C16 is a letter from C18, and weaker: nothing is meant by being near.
    private static bool IsClass(string written) => written.Trim() is { Length: > 1 } text
        && char.ToUpperInvariant(text[0]) is 'C' or 'D' or 'T' && text[1..].All(char.IsAsciiDigit);
}
