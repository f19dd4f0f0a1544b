using System.Globalization;

namespace BridgeForm.Benchmarks.Fuzz;

/// <summary>Spoiled project files: one kind of answer only, parameters or faults with places.</summary>
internal static class ReadFuzz
{
    private const int MostTold = 20;

    /// <summary>Runs until the time or the count is used up; 1 when something was found.</summary>
    public static int Run(FuzzRun run)
    {
        var (read, found) = (0, 0);
        foreach (var finding in run.Seeds().AsParallel().AsOrdered().Select(ReadCase.Of))
        {
            read++;
            if (finding is not null && ++found <= MostTold)
            {
                Console.WriteLine(finding);
            }
        }

        Console.WriteLine(
            string.Create(CultureInfo.InvariantCulture, $"fuzz read, seed {run.Seed}: {read} spoiled files read, {found} findings"));
        return found == 0 ? 0 : 1;
    }
}
