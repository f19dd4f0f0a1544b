using System.Diagnostics;
using System.Globalization;

namespace BridgeForm.Benchmarks;

/// <summary>Times of the ropes' stages, warm in process, median of several runs: quicker than the full benchmarks.</summary>
internal static class RopeTimes
{
    /// <summary>Prints times for one or more numbers of bays.</summary>
    public static void Print(IEnumerable<int> sizes, int runs)
    {
        foreach (var bays in sizes)
        {
            var ropes = new RopeBenchmarks { Bays = bays };
            ropes.Prepare();
            Print(bays, "design state", runs, () => ropes.Design());
            Print(bays, "all load cases", runs, () => ropes.AllCases());
            Print(bays, "hoisting table", runs, () => ropes.HoistingTable());
            Print(bays, "modes", runs, () => ropes.Modes());
        }
    }

    private static void Print(int bays, string stage, int runs, Action work)
    {
        work();
        var times = Enumerable.Range(0, runs).Select(_ => Milliseconds(work)).Order().ToArray();
        Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{bays,7} bays  {stage,-18}{times[runs / 2],10:0.00} ms"));
    }

    private static double Milliseconds(Action work)
    {
        var watch = Stopwatch.StartNew();
        work();
        return watch.Elapsed.TotalMilliseconds;
    }
}
