using System.Collections.Immutable;

namespace BridgeForm.Quantities;

/// <summary>Finds the known word that a mistyped one most likely stands for.</summary>
public static class NearestWord
{
    private const int LongestDistance = 3;

    // Shorter beginnings than this are the beginning of anything.
    private const int ShortestBeginning = 3;

    /// <summary>The known words at the least edit distance, in their order; none when no word is near.</summary>
    public static ImmutableArray<string> Nearest(string word, IEnumerable<string> known)
    {
        var near = known
            .Where(k => Math.Abs(k.Length - word.Length) <= LongestDistance)
            .Select(k => (Word: k, Distance: Distance(word.ToLowerInvariant(), k.ToLowerInvariant())))
            .Where(p => p.Distance <= Limit(Math.Max(p.Word.Length, word.Length)))
            // A sign of which every character differs is near nothing: % is not ".
            .Where(p => p.Distance < Math.Max(p.Word.Length, word.Length))
            .ToList();
        return [.. near.Where(p => p.Distance == near.Min(n => n.Distance)).Select(p => p.Word)];
    }

    /// <summary>
    /// The nearest known word by edit distance (swapped neighbours count once), else the shortest of which one is the beginning
    /// of the other; null when none is near.
    /// </summary>
    public static string? Find(string word, IEnumerable<string> known)
    {
        return Nearest(word, known).Order(StringComparer.Ordinal).FirstOrDefault() ?? known
            .Where(k => Math.Min(k.Length, word.Length) >= ShortestBeginning
                && (k.StartsWith(word, StringComparison.OrdinalIgnoreCase) || word.StartsWith(k, StringComparison.OrdinalIgnoreCase)))
            .OrderBy(k => k.Length)
            .ThenBy(k => k, StringComparer.Ordinal)
            .FirstOrDefault();
    }

    // Short words are near everything: a third of the letters may differ, at least one.
    private static int Limit(int length) => Math.Clamp(length / 3, 1, LongestDistance);

    /// <summary>Optimal string alignment distance (insert, delete, replace, swap neighbours).</summary>
    public static int Distance(string a, string b)
    {
        var rows = new int[a.Length + 1, b.Length + 1];
        for (var i = 0; i <= a.Length; i++)
        {
            for (var j = 0; j <= b.Length; j++)
            {
                rows[i, j] = Cell(rows, a, b, i, j);
            }
        }

        return rows[a.Length, b.Length];
    }

    private static int Cell(int[,] rows, string a, string b, int i, int j)
    {
        if (i == 0 || j == 0)
        {
            return i + j;
        }

        var replaced = rows[i - 1, j - 1] + (a[i - 1] == b[j - 1] ? 0 : 1);
        var best = Math.Min(replaced, 1 + Math.Min(rows[i - 1, j], rows[i, j - 1]));
        var swapped = i > 1 && j > 1 && a[i - 1] == b[j - 2] && a[i - 2] == b[j - 1];
        return swapped ? Math.Min(best, rows[i - 2, j - 2] + 1) : best;
    }
}
