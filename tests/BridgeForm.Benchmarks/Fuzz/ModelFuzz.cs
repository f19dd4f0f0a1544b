using System.Globalization;

namespace BridgeForm.Benchmarks.Fuzz;

/// <summary>Random valid bridges, one after another so that each one's processor time is its own: built, audited, written.</summary>
/// <param name="name">Word on the command line.</param>
/// <param name="project">The file of a seed.</param>
/// <param name="written">Whether the bridge of a seed is also written in six kinds.</param>
internal sealed class ModelFuzz(string name, Func<int, string> project, Func<int, bool> written)
{
    /// <summary>Bays of most bridges.</summary>
    private const int MostBays = 400;

    private const int LongestBays = 2000;
    private const int OneInLong = 20;

    // No multiple or part of one in twenty, so that long ones are among those written.
    private const int OneInWritten = 19;

    // Writing costs several times what building does: thousands of bridges are written in the time of a few long ones.
    private const int ShortBays = 16;

    private const double ModelAtP99 = 0.5;
    private const double ModelAtMost = 5;
    private const int CasesALine = 500;
    private const int LongRun = 1000;
    private const int Warming = 150;
    private const int Slowest = 20;

    private readonly List<(int Bays, double Cost, int Seed)> _costs = [];
    private int _told;
    private int _written;
    private int _found;

    /// <summary>Bridges over the whole space: one in twenty has 400 to 2,000 bays; one in nineteen is written.</summary>
    public static int RunWhole(FuzzRun run) => new ModelFuzz("model", Whole, seed => seed % OneInWritten == 0).Run(run);

    /// <summary>Short bridges, every one written.</summary>
    public static int RunWritten(FuzzRun run) => new ModelFuzz("written", Short, _ => true).Run(run);

    /// <summary>The file of a seed, of any length.</summary>
    public static string Whole(int seed) => RandomProject.Of(seed, seed % OneInLong == 0 ? LongestBays : MostBays);

    private static string Short(int seed) => RandomProject.Of(seed, ShortBays);

    /// <summary>Runs until the time or the count is used up; 1 when something was found.</summary>
    private int Run(FuzzRun run)
    {
        if (run.Show)
        {
            Console.Write(project(run.Seed));
            return 0;
        }

        WarmUp(run);
        foreach (var seed in run.Seeds())
        {
            Take(seed, ModelCase.Of(project(seed), written(seed)));
            if ((_costs.Count + _told) % CasesALine == 0)
            {
                Console.Error.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{_costs.Count + _told} files, {_found} findings"));
            }
        }

        return Summed(run);
    }

    // The first bridges of a process also compile the program; of a long run they are others than those measured.
    private void WarmUp(FuzzRun run)
    {
        ModelCase.Of(project(0), written: true);
        for (var k = 1; k <= ((run.Count ?? 0) >= LongRun ? Warming : 0); k++)
        {
            ModelCase.Of(project(int.MaxValue - k), written: k % OneInWritten == 0);
        }
    }

    private void Take(int seed, ModelCase done)
    {
        _told += done.Fault is null ? 0 : 1;
        if (done.Fault is null)
        {
            _costs.Add((done.Bays, done.Model, seed));
            _written += written(seed) ? 1 : 0;
        }

        foreach (var finding in done.Findings)
        {
            Found(seed, finding);
        }

        if (done.Model > ModelAtMost)
        {
            Found(seed, string.Create(CultureInfo.InvariantCulture, $"{done.Model:0.00} s of processor time for {done.Bays} bays"));
        }
    }

    private void Found(int seed, string what)
    {
        _found++;
        Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"seed {seed}: {what}"));
    }

    private int Summed(FuzzRun run)
    {
        Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"fuzz {name}, seed {run.Seed}: {_costs.Count + _told} valid files, "
            + $"{_costs.Count} modelled, {_written} of them written, "
            + $"{_told} told that they cannot be built, {_found} findings"));
        var usual = _costs.Where(c => c.Bays <= MostBays).Select(c => c.Cost).Order().ToList();
        var p99 = usual.Count == 0 ? 0 : usual[(int)(0.99 * (usual.Count - 1))];
        if (_costs.Count > 0)
        {
            var slowest = _costs.MaxBy(c => c.Cost);
            Say($"bays {_costs.Min(c => c.Bays)} to {_costs.Max(c => c.Bays)}, {_costs.Count(c => c.Bays > MostBays)} above {MostBays}");
            Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"processor time of the model up to {MostBays} bays: p99 "
                + $"{p99:0.00} s (wanted: at most {ModelAtP99:0.0}); of all at most "
                + $"{slowest.Cost:0.00} s (seed {slowest.Seed}, {slowest.Bays} bays; wanted: at most {ModelAtMost:0})"));
            var others = _costs.OrderByDescending(c => c.Cost).Take(Slowest)
                .Select(c => FormattableString.Invariant($"{c.Seed} ({c.Bays} bays) {c.Cost:0.00}"));
            Console.WriteLine("slowest seeds, s: " + string.Join(", ", others));
        }

        return _found == 0 && p99 <= ModelAtP99 ? 0 : 1;
    }

    private static void Say(FormattableString line) => Console.WriteLine(line.ToString(CultureInfo.InvariantCulture));
}
