namespace BridgeForm.Mutation;

/// <summary>Draws places by lot, the same number from every area.</summary>
internal static class Lots
{
    public static IEnumerable<Site> Drawn(
        IEnumerable<Site> candidates, IReadOnlyList<string> areas, Options options, IReadOnlyCollection<Site> but)
    {
        var taken = but.Select(s => (s.File, s.Start, s.Original)).ToHashSet();
        var all = candidates
            .Where(c => c.File.StartsWith(options.Under, StringComparison.Ordinal) && !taken.Contains((c.File, c.Start, c.Original)))
            .ToArray();
        var by =
            areas.Select(a => all.Where(c => c.File.StartsWith(a, StringComparison.Ordinal)).ToArray()).Where(a => a.Length > 0).ToArray();
        foreach (var area in by)
        {
            var kinds = area.GroupBy(c => c.Kind, StringComparer.Ordinal).OrderBy(g => g.Key, StringComparer.Ordinal).Select(
                g => $"{g.Count()} {g.Key}");
            Console.WriteLine($"{area[0].Area}: {area.Length} places ({string.Join(", ", kinds)})");
        }

        return by.SelectMany((area, i) => area
            .OrderBy(c => c.Lot(options.Seed))
            .Take((options.Sites / by.Length) + (i < options.Sites % by.Length ? 1 : 0)));
    }
}
