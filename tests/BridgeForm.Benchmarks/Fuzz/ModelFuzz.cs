using System.Globalization;

namespace BridgeForm.Benchmarks.Fuzz;

/// <summary>Random valid bridges: built, audited, written in six kinds.</summary>
internal static class ModelFuzz
{
    /// <summary>Bays of most bridges.</summary>
    public const int MostBays = 400;

    private const int LongestBays = 2000;
    private const int OneInLong = 20;
    private const double ModelAtP99 = 0.5;
    private const double ModelAtMost = 5;

    /// <summary>The file of a seed: one in twenty has up to 2,000 bays.</summary>
    public static string Project(int seed) => RandomProject.Of(seed, seed % OneInLong == 0 ? LongestBays : MostBays);

    /// <summary>Runs until the time or the count is used up; 1 when something was found.</summary>
    public static int Run(FuzzRun run)
    {
        if (run.Show)
        {
            Console.Write(Project(run.Seed));
            return 0;
        }

        ModelCase.Of(Project(0), written: true); // the first one compiles
        var (told, found) = (0, 0);
        List<(int Bays, double Cost, int Seed)> costs = [];
        foreach (var seed in run.Seeds())
        {
            var done = ModelCase.Of(Project(seed), written: Environment.GetEnvironmentVariable("FUZZ_DRY") is null);
            told += done.Fault is null ? 0 : 1;
            if (done.Fault is null)
            {
                costs.Add((done.Bays, done.Model, seed));
            }

            foreach (var finding in done.Findings)
            {
                found++;
                Console.WriteLine($"seed {seed}: {finding}");
            }
        }

        var usual = costs.Where(c => c.Bays <= MostBays).Select(c => c.Cost).Order().ToList();
        var p99 = usual.Count == 0 ? 0 : usual[(int)(0.99 * (usual.Count - 1))];
        var slowest = costs.Count == 0 ? default : costs.MaxBy(c => c.Cost);
        Say($"fuzz model, seed {run.Seed}: {costs.Count + told} valid files, {costs.Count} modelled and written, {told} told that they cannot be built, {found} findings");
        Say($"bays {costs.Min(c => c.Bays)} to {costs.Max(c => c.Bays)}, {costs.Count(c => c.Bays > MostBays)} above {MostBays}");
        Say($"processor time of the model up to {MostBays} bays: p99 {p99:0.00} s (wanted: at most {ModelAtP99:0.0}); of all at most {slowest.Cost:0.00} s (seed {slowest.Seed}, {slowest.Bays} bays; wanted: at most {ModelAtMost:0})");
        return found == 0 && p99 <= ModelAtP99 && slowest.Cost <= ModelAtMost ? 0 : 1;
    }

    private static void Say(FormattableString line) => Console.WriteLine(line.ToString(CultureInfo.InvariantCulture));
}
