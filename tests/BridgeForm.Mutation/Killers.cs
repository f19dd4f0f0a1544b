namespace BridgeForm.Mutation;

/// <summary>
/// Which class noticed a change the last time: it is asked first the next time, so that a run after a few new tests takes a
/// tenth of the first one. It is asked again, never believed.
/// </summary>
internal sealed class Killers
{
    private readonly string _path;
    private readonly Dictionary<string, string> _classes = new(StringComparer.Ordinal);

    /// <param name="path">File with a line for each change: class, tab, the change.</param>
    public Killers(string path)
    {
        _path = path;
        foreach (var parts in (File.Exists(path) ? File.ReadAllLines(path) : []).Select(l => l.Split('\t', 2)))
        {
            _classes[parts[1]] = parts[0];
        }
    }

    /// <summary>
    /// The classes with the one that is remembered, if it is among them, at the head; the others in their order, those earlier
    /// that have noticed much.
    /// </summary>
    public IReadOnlyList<(string Name, double Seconds)> First(IReadOnlyList<(string Name, double Seconds)> reaching, Site site)
    {
        lock (_classes)
        {
            var known = _classes.GetValueOrDefault(Change(site));
            var noticed = _classes.Values.CountBy(c => c, StringComparer.Ordinal).ToDictionary(StringComparer.Ordinal);
            return
            [
                .. reaching.Index()
                    .OrderBy(r => !string.Equals(r.Item.Name, known, StringComparison.Ordinal))
                    .ThenBy(r => (r.Index + 1.0) / (1 + noticed.GetValueOrDefault(r.Item.Name)))
                    .Select(r => r.Item),
            ];
        }
    }

    /// <summary>Remembers the class of the test that failed; nothing for a change that survives or never ends.</summary>
    public void Remember(Site site, string? test)
    {
        var end = test?.LastIndexOf(
            '.', Math.Max(0, (test.IndexOf('(', StringComparison.Ordinal) is var open and > 0 ? open : test.Length) - 1)) ?? -1;
        if (end < 0)
        {
            return;
        }

        lock (_classes)
        {
            _classes[Change(site)] = test![..end];
            File.WriteAllLines(_path, _classes.OrderBy(c => c.Key, StringComparer.Ordinal).Select(c => $"{c.Value}\t{c.Key}"));
        }
    }

    private static string Change(Site site) =>
        $"{Path.GetFileName(site.File)} {site.Member}: {site.Original} → {Site.Collapsed(site.Mutated)}";
}
