using System.Globalization;

namespace BridgeForm.Output;

/// <summary>Many names of members, shortened: <c>F01/post-left</c> … <c>F11/post-left</c> become <c>F01-F11/post-left</c>.</summary>
internal static class OccurrenceRanges
{
    /// <summary>Names by member, each with the runs of its frames or bays; in order of first appearance.</summary>
    public static string Write(IEnumerable<string> ids)
    {
        var groups = ids.Select(Split).GroupBy(id => id.Member, id => id.Owner, StringComparer.Ordinal);
        return string.Join("; ", groups.Select(g => string.Join(' ', Runs([.. g])) + "/" + g.Key));
    }

    private static (string Owner, string Member) Split(string id)
    {
        var slash = id.IndexOf('/', StringComparison.Ordinal);
        return (id[..slash], id[(slash + 1)..]);
    }

    private static IEnumerable<string> Runs(List<string> owners)
    {
        for (var first = 0; first < owners.Count;)
        {
            var last = first;
            while (last + 1 < owners.Count && Follows(owners[last], owners[last + 1]))
            {
                last++;
            }

            yield return first == last ? owners[first] : owners[first] + "-" + owners[last];
            first = last + 1;
        }
    }

    private static bool Follows(string a, string b) => a[0] == b[0] && Number(b) == Number(a) + 1;

    private static int Number(string owner) => int.Parse(owner.AsSpan(1), NumberStyles.None, CultureInfo.InvariantCulture);
}
