using BridgeForm.Project.Reading;

namespace BridgeForm.Project.Editing;

/// <summary>
/// Every single value of a file by its path: what an edit is held to, so that a text which reads otherwise than it was meant
/// never leaves the program.
/// </summary>
internal static class Leaves
{
    /// <summary>Values by path; null for a text that the reader does not take.</summary>
    public static SortedDictionary<string, string>? Of(string text)
    {
        var faults = new FaultList();
        var root = YamlTree.Read(text, faults);
        if (root is null || faults.Any)
        {
            return null;
        }

        var leaves = new SortedDictionary<string, string>(StringComparer.Ordinal);
        Add(leaves, "", root);
        return leaves;
    }

    /// <summary>Whether two files say the same, but for what stands under some paths; mappings without keys say nothing.</summary>
    public static bool AreSame(SortedDictionary<string, string> one, SortedDictionary<string, string> other, IReadOnlyList<string> but) =>
        Rest(one, but).SequenceEqual(Rest(other, but));

    /// <summary>The path under which a list's number of entries is kept.</summary>
    public static string CountOf(string list) => list + ".#";

    /// <summary>What stands under a path, by paths from there.</summary>
    public static SortedDictionary<string, string> Under(SortedDictionary<string, string> leaves, string path) => new(
        leaves.Where(l => IsUnder(l.Key, path)).ToDictionary(l => l.Key[path.Length..], l => l.Value, StringComparer.Ordinal),
        StringComparer.Ordinal);

    /// <summary>Whether anything stands under a path.</summary>
    public static bool Has(SortedDictionary<string, string> leaves, string path) => leaves.Keys.Any(k => IsUnder(k, path));

    private static IEnumerable<KeyValuePair<string, string>> Rest(SortedDictionary<string, string> leaves, IReadOnlyList<string> but) =>
        leaves.Where(l => !but.Any(b => IsUnder(l.Key, b)));

    private static bool IsUnder(string path, string above) =>
        path.StartsWith(above, StringComparison.Ordinal) && (path.Length == above.Length || path[above.Length] == '.');

    private static void Add(SortedDictionary<string, string> leaves, string path, FileNode node)
    {
        switch (node)
        {
            case MapNode map:
                foreach (var entry in map.Entries)
                {
                    Add(leaves, path.Length == 0 ? entry.Key : path + "." + entry.Key, entry.Value);
                }

                break;
            case ListNode list:
                leaves[CountOf(path)] = FormattableString.Invariant($"{list.Items.Length}");
                for (var i = 0; i < list.Items.Length; i++)
                {
                    Add(leaves, FormattableString.Invariant($"{path}.{i}"), list.Items[i]);
                }

                break;
            case ScalarNode scalar:
                leaves[path] = scalar.Text;
                break;
        }
    }
}
