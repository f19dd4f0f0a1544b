namespace BridgeForm.Mutation;

/// <summary>Runs the tests against changed places, two at a time.</summary>
internal static class Judge
{
    // Processor time: several times what the tests take unchanged, and what a start and a first compilation take.
    private const double Patience = 4;
    private const double Start = 30;

    /// <summary>
    /// Every class that reaches the place, until a test fails; only the first of them where there are so many seconds for each
    /// place.
    /// </summary>
    public static Result ByMap(string folder, CoverageMap map, Killers killers, double within, int number, Site site, Listed? listed)
    {
        var reaching = First(killers.First(map.Reaching(number, site), site), within);
        var killed = reaching.Count == 0
            ? null
            : Verdict(folder, number, (reaching.Sum(r => r.Seconds) * Patience) + Start, reaching.Select(r => r.Name));
        killers.Remember(site, killed);
        return new(number, site, listed, killed, reaching.Count);
    }

    private static IReadOnlyList<(string Name, double Seconds)> First(IReadOnlyList<(string Name, double Seconds)> classes, double within)
    {
        var taken = 0.0;
        return [.. classes.TakeWhile((c, i) => (taken += c.Seconds) <= within || i == 0)];
    }

    /// <summary>Only the tests the list names.</summary>
    public static Result ByList(string folder, int number, Site site, Listed listed) =>
        new(number, site, listed, Verdict(folder, number, Patience * Start, Tests(listed)), listed.KilledBy.Length);

    /// <summary>The named tests with nothing changed: the first that fails, null when all pass.</summary>
    public static string? Control(string folder, IEnumerable<Listed> listed) =>
        Verdict(folder, 0, double.PositiveInfinity, listed.SelectMany(Tests).Distinct(StringComparer.Ordinal));

    public static IEnumerable<Result> All<T>(IEnumerable<T> work, Func<T, Result> judge) => work
        .AsParallel().AsOrdered().WithDegreeOfParallelism(2).WithMergeOptions(ParallelMergeOptions.NotBuffered)
        .Select(w => judge(w));

    private static IEnumerable<string> Tests(Listed listed) => listed.KilledBy.Select(t =>
    {
        var arguments = t.IndexOf('(', StringComparison.Ordinal);
        var dot = t.LastIndexOf('.', arguments < 0 ? t.Length - 1 : arguments);
        return $"{t[..dot]}::{t[(dot + 1)..]}";
    });

    private static string? Verdict(string folder, int number, double seconds, IEnumerable<string> tests)
    {
        var (code, lines) = Child.Start(number, seconds, ["run", folder, .. tests]);
        return code switch
        {
            0 => null,
            null => "time-out",
            Child.Killed =>
                lines.FirstOrDefault(l => l.StartsWith("failed\t", StringComparison.Ordinal))?["failed\t".Length..] ?? "failure",
            _ => $"crash ({code})",
        };
    }
}
