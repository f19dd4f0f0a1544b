namespace BridgeForm.Benchmarks.Fuzz;

/// <summary>
/// <c>-- fuzz KIND [--minutes N] [--count N] [--seed S] [--show S]</c>: random input for as long as wanted, then a few lines
/// for docs/fuzz.md.
/// </summary>
internal static class FuzzCommand
{
    // One line a kind: its word on the command line, and what runs it and returns an exit code (0 nothing found, 1 something).
    private static readonly Dictionary<string, Func<FuzzRun, int>> Kinds = new(StringComparer.Ordinal)
    {
        ["model"] = ModelFuzz.RunWhole,
        ["written"] = ModelFuzz.RunWritten,
        ["kill"] = KillFuzz.Run,
        ["read"] = ReadFuzz.Run,
    };

    /// <summary>Runs one kind by its arguments.</summary>
    public static int Run(string[] arguments)
    {
        if (arguments.Length > 0 && Kinds.TryGetValue(arguments[0], out var kind) && FuzzRun.Parse(arguments.AsSpan(1)) is { } run)
        {
            return kind(run);
        }

        Console.Error.WriteLine($"usage: -- fuzz {string.Join('|', Kinds.Keys)} [--minutes N] [--count N] [--seed S] [--show S]");
        return 2;
    }
}
