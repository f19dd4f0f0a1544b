using System.ComponentModel;
using System.Diagnostics;

namespace BridgeForm.Tests.Output.Preview;

/// <summary>Runs a program of the page's build or of its judges.</summary>
internal static class Tool
{
    /// <summary>A browser that draws in software on a busy machine takes its time.</summary>
    private static readonly TimeSpan Patience = TimeSpan.FromMinutes(15);

    /// <summary>Root of the repository.</summary>
    public static string Repository { get; } = Find();

    /// <summary>What a program printed. Fails the test when it is missing or ends with an error.</summary>
    public static string Run(string program, string folder, string[] arguments)
    {
        var info = new ProcessStartInfo(program, arguments)
        {
            WorkingDirectory = folder,
            UseShellExecute = false,
            RedirectStandardOutput = true,
            RedirectStandardError = true,
        };
        try
        {
            using var process = Process.Start(info)!;
            var error = process.StandardError.ReadToEndAsync();
            var output = process.StandardOutput.ReadToEndAsync();
            if (!process.WaitForExit(Patience))
            {
                process.Kill(entireProcessTree: true);
                Assert.Fail($"{program} did not end within {Patience}.");
            }

            Assert.True(process.ExitCode == 0, $"{program} ended with {process.ExitCode}: {error.GetAwaiter().GetResult()}");
            return output.GetAwaiter().GetResult();
        }
        catch (Win32Exception)
        {
            Assert.Fail($"{program} is not installed: install the package nodejs.");
            throw;
        }
    }

    private static string Find()
    {
        var at = new DirectoryInfo(AppContext.BaseDirectory);
        while (!File.Exists(Path.Combine(at.FullName, "BridgeForm.sln")))
        {
            at = at.Parent ?? throw new DirectoryNotFoundException("Tests run from inside the repository.");
        }

        return at.FullName;
    }
}
