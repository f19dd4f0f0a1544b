using System.Globalization;

namespace BridgeForm.Mutation;

/// <summary>Which places each class of tests reaches, and how long it takes.</summary>
internal sealed class CoverageMap
{
    // Classes for one process: each is loaded afresh, and nothing of the earlier ones is given back.
    private const int Together = 5;

    private readonly List<(string Name, double Seconds, HashSet<int> Reached)> _classes = [];

    /// <summary>Runs every class that counts once; what an earlier run over the same assemblies found is not run again.</summary>
    public static CoverageMap Of(string folder, string beginning)
    {
        var path = Path.Combine(folder, "map.txt");
        var print = Fingerprint(folder);
        if (!File.Exists(path) || !string.Equals(File.ReadLines(path).FirstOrDefault(), print, StringComparison.Ordinal))
        {
            File.WriteAllLines(path, [print]);
        }

        RunMissing(folder, path, beginning);
        var map = new CoverageMap();
        foreach (var parts in File.ReadLines(path).Skip(1).Order(StringComparer.Ordinal).Select(l => l.Split('\t')))
        {
            if (parts[1].StartsWith(beginning, StringComparison.Ordinal))
            {
                map.Take(parts);
            }
        }

        return map;
    }

    /// <summary>Classes that reach a place: those of its own folder first, then the fastest.</summary>
    public IReadOnlyList<(string Name, double Seconds)> Reaching(int number, Site site)
    {
        var own = "BridgeForm.Tests" + Path.GetDirectoryName(site.File)!
            .Replace("src/BridgeForm.Output", "/Output", StringComparison.Ordinal)
            .Replace("src/BridgeForm.Cli", "/Cli", StringComparison.Ordinal)
            .Replace("src/BridgeForm", "", StringComparison.Ordinal)
            .Replace('/', '.');
        return [.. _classes
            .Where(c => c.Reached.Contains(number))
            .OrderBy(c => c.Seconds * (c.Name.StartsWith(own, StringComparison.Ordinal) ? 0.1 : 1))
            .Select(c => (c.Name, c.Seconds))];
    }

    private static string Fingerprint(string folder) => string.Join(' ', Directory.GetFiles(folder, "BridgeForm*.dll")
        .Order(StringComparer.Ordinal)
        .Select(f => Convert.ToHexString(System.Security.Cryptography.SHA256.HashData(File.ReadAllBytes(f)))[..16]));

    private static void RunMissing(string folder, string path, string beginning)
    {
        var known = File.ReadLines(path).Skip(1).Select(l => l.Split('\t')[1]).ToHashSet(StringComparer.Ordinal);
        using var tests = new TestClasses(folder);
        var names =
            tests.Names.Where(n => n.StartsWith(beginning, StringComparison.Ordinal) && !Left.IsOut(n) && !known.Contains(n)).ToArray();
        var groups = names.Select((name, i) => (name, Group: i % ((names.Length / Together) + 1))).GroupBy(n => n.Group, n => n.name);
        Parallel.ForEach(groups, new ParallelOptions { MaxDegreeOfParallelism = 2 }, group =>
        {
            var (code, lines) = Child.Start(0, double.PositiveInfinity, ["map", folder, .. group]);
            if (code != 0)
            {
                throw new InvalidOperationException($"the tests did not run to their end:\n{string.Join('\n', lines)}");
            }

            lock (names)
            {
                File.AppendAllLines(path, lines.Where(l => l.StartsWith("map\t", StringComparison.Ordinal)));
            }
        });
    }

    private void Take(string[] parts)
    {
        if (parts[3].Length > 0)
        {
            // A class that fails by itself could kill anything.
            Console.WriteLine($"left out, for it fails with nothing changed: {parts[3]}");
            return;
        }

        _classes.Add((
            parts[1],
            double.Parse(parts[2], CultureInfo.InvariantCulture),
            [.. parts[4].Split(',', StringSplitOptions.RemoveEmptyEntries).Select(n => int.Parse(n, CultureInfo.InvariantCulture))]));
    }
}
