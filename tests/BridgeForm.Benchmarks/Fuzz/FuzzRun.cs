using System.Diagnostics;
using System.Globalization;

namespace BridgeForm.Benchmarks.Fuzz;

/// <summary>How long a run of random input goes on, and from which seed: case i of a run has the seed <see cref="Seed"/> + i.</summary>
/// <param name="Minutes">Ends after so many minutes; null for no such end.</param>
/// <param name="Count">Ends after so many cases; null for no such end.</param>
/// <param name="Seed">Seed of the first case.</param>
/// <param name="Show">Prints the input of that seed instead.</param>
internal sealed record FuzzRun(double? Minutes, int? Count, int Seed, bool Show = false)
{
    private const double DefaultMinutes = 1;

    private readonly Stopwatch _watch = Stopwatch.StartNew();

    /// <summary>Seeds of the cases, in order, until the time or the count is used up.</summary>
    public IEnumerable<int> Seeds()
    {
        for (var done = 0; done < (Count ?? int.MaxValue) && (Minutes is not { } most || _watch.Elapsed.TotalMinutes < most); done++)
        {
            yield return unchecked(Seed + done);
        }
    }

    /// <summary>Reads <c>--minutes</c>, <c>--count</c>, <c>--seed</c> and <c>--show</c>; null when something else is written.</summary>
    public static FuzzRun? Parse(ReadOnlySpan<string> arguments)
    {
        var run = new FuzzRun(null, null, 1);
        for (var i = 0; i < arguments.Length; i += 2)
        {
            if (i + 1 == arguments.Length
                || !double.TryParse(arguments[i + 1], NumberStyles.Float, CultureInfo.InvariantCulture, out var number))
            {
                return null;
            }

            FuzzRun? next = arguments[i] switch
            {
                "--minutes" => run with { Minutes = number },
                "--count" => run with { Count = (int)number },
                "--seed" => run with { Seed = (int)number },
                "--show" => run with { Seed = (int)number, Show = true },
                _ => null,
            };
            if (next is null)
            {
                return null;
            }

            run = next;
        }

        return run is { Minutes: null, Count: null } ? run with { Minutes = DefaultMinutes } : run;
    }
}
