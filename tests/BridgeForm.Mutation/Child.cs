using System.Diagnostics;
using System.Globalization;

namespace BridgeForm.Mutation;

/// <summary>What runs in a process of its own: the tests, with one place on or none.</summary>
internal static class Child
{
    public const int Killed = 1;

    /// <summary>Runs classes, each loaded afresh, and prints which places each reaches.</summary>
    public static int Map(string folder, IEnumerable<string> classes)
    {
        foreach (var name in classes)
        {
            var before = Environment.CpuUsage.TotalTime;
            using var tests = new TestClasses(folder);
            var (run, failed) = tests.Run(name);
            var seconds = (Environment.CpuUsage.TotalTime - before).TotalSeconds;
            var reached = Enumerable.Range(0, tests.Reached.Length).Where(i => tests.Reached[i]);
            Console.WriteLine(
                string.Create(CultureInfo.InvariantCulture, $"map\t{name}\t{seconds:0.00}\t{failed}\t{string.Join(',', reached)}"));
        }

        return 0;
    }

    /// <summary>Runs classes, or tests written Class::Method, in their order until a test fails, and prints that one.</summary>
    public static int Run(string folder, IEnumerable<string> wanted)
    {
        var tests = new TestClasses(folder);
        foreach (var name in wanted)
        {
            var parts = name.Split("::");
            var (run, failed) = tests.Run(parts[0], parts.ElementAtOrDefault(1) ?? "");
            if (failed is not null || (run == 0 && parts.Length > 1))
            {
                Console.WriteLine("failed\t" + (failed ?? $"{name}: there is no such test"));
                return Killed;
            }
        }

        return 0;
    }

    /// <summary>Starts this program again with a place on.</summary>
    /// <param name="mutant">Number of the place; 0 for none.</param>
    /// <param name="seconds">Processor time after which it is ended: a loop that never ends is a failure too.</param>
    /// <param name="arguments">Command and its arguments.</param>
    /// <returns>Exit code, null when it was ended; what it printed.</returns>
    public static (int? Code, string[] Lines) Start(int mutant, double seconds, params IEnumerable<string> arguments)
    {
        var start = new ProcessStartInfo("dotnet", [Environment.GetCommandLineArgs()[0], .. arguments])
        {
            UseShellExecute = false,
            RedirectStandardOutput = true,
            RedirectStandardError = true,
        };
        start.Environment[Switch.Variable] = mutant.ToString(CultureInfo.InvariantCulture);
        start.Environment["CsCheck_Threads"] = "1";
        // 2 GiB: a loop that only fills memory ends as well.
        start.Environment["DOTNET_GCHeapHardLimit"] = "80000000";
        // Runs are short: what the compiler could learn from them would not be used.
        start.Environment["DOTNET_TieredPGO"] = "0";
        start.Environment.Remove("BRIDGEFORM_UPDATE");
        using var process = Process.Start(start)!;
        var output = process.StandardOutput.ReadToEndAsync();
        var errors = process.StandardError.ReadToEndAsync();
        var ended = false;
        while (!process.WaitForExit(200))
        {
            if (!ended && Used(process) > seconds)
            {
                ended = true;
                process.Kill(entireProcessTree: true);
            }
        }

        errors.Wait();
        return (ended ? null : process.ExitCode, output.Result.Split('\n'));
    }

    /// <summary>Processor time in seconds; 0 for a process that has just gone.</summary>
    private static double Used(Process process)
    {
        try
        {
            return process.TotalProcessorTime.TotalSeconds;
        }
        catch (Exception e) when (e is InvalidOperationException or System.ComponentModel.Win32Exception)
        {
            return 0;
        }
    }
}
