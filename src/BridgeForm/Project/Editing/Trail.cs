using System.Collections.Immutable;

namespace BridgeForm.Project.Editing;

/// <summary>As much of a way as the file has.</summary>
/// <param name="Spots">The root, then what stands under each name, as far as it is there.</param>
/// <param name="Entries">The entry of each of those names; null for entries of lists.</param>
internal sealed record Trail(ImmutableArray<Spot> Spots, ImmutableArray<SpotEntry?> Entries)
{
    /// <summary>How many names are there.</summary>
    public int Depth => Entries.Length;

    /// <summary>The last thing that is there.</summary>
    public Spot Last => Spots[^1];

    /// <summary>Goes down from the root.</summary>
    public static Trail Follow(Spot root, IEnumerable<string> names)
    {
        var trail = new Trail([root], []);
        foreach (var name in names)
        {
            var (spot, entry) = Below(trail.Last, name);
            if (spot is null)
            {
                break;
            }

            trail = new Trail(trail.Spots.Add(spot), trail.Entries.Add(entry));
        }

        return trail;
    }

    /// <summary>Whether the spot at a depth lies in brackets or braces, its own included.</summary>
    public bool IsFlow(int depth) => Spots.Take(depth + 1).Any(s => s is MapSpot { Flow: true } or ListSpot { Flow: true });

    private static (Spot? Spot, SpotEntry? Entry) Below(Spot spot, string name) => spot switch
    {
        MapSpot map => (map.Find(name)?.Value, map.Find(name)),
        ListSpot list when int.TryParse(name, System.Globalization.NumberStyles.None, null, out var i) && i < list.Items.Length
            => (list.Items[i], null),
        _ => (null, null),
    };
}
