using System.ComponentModel;
using System.Diagnostics;
using System.Text.Json;

namespace BridgeForm.Tests.Output.Referees;

/// <summary>Runs an outside reader on a file. A missing reader fails the test with a sentence that says what to install.</summary>
internal static class Referee
{
    private static readonly TimeSpan Patience = TimeSpan.FromMinutes(10);

    /// <summary>Runs a script of tests/referees with Node and gives what it printed.</summary>
    public static string Node(string script, params string[] arguments)
    {
        Assert.True(
            Directory.Exists(Path.Combine(Folder, "node_modules")),
            "The npm referees are not installed: run `npm ci` in tests/referees.");
        return Run(
            "node", "Node.js is not installed: the referees in tests/referees need it.", [Path.Combine(Folder, script), .. arguments]);
    }

    /// <summary>Has a script of tests/referees read files of these bytes, and gives the line of JSON that it prints for each.</summary>
    public static List<JsonElement> Lines(string script, string ending, IEnumerable<byte[]> files)
    {
        var folder = Directory.CreateTempSubdirectory("bridgeform-referee-");
        try
        {
            string[] paths = [.. files.Select((bytes, i) =>
            {
                var path = Path.Combine(folder.FullName, i + ending);
                File.WriteAllBytes(path, bytes);
                return path;
            })];
            return [.. Node(script, paths).TrimEnd().Split('\n').Select(l => JsonDocument.Parse(l).RootElement)];
        }
        finally
        {
            folder.Delete(recursive: true);
        }
    }

    /// <summary>Runs a script of tests/referees with the first Python that has ezdxf and gives what it printed.</summary>
    public static string Ezdxf(string script, params string[] arguments)
    {
        Assert.True(Python.Value is not null, "No python3 with ezdxf is installed: install the package python3-ezdxf.");
        return Run(Python.Value!, string.Empty, [Path.Combine(Folder, script), .. arguments]);
    }

    /// <summary>Runs a script of tests/referees with the first Python that has scipy and gives what it printed.</summary>
    public static string Scipy(string script, params string[] arguments)
    {
        Assert.True(PythonWithScipy.Value is not null, "No python3 with scipy is installed: install the package python3-scipy.");
        return Run(PythonWithScipy.Value!, string.Empty, [Path.Combine(Folder, script), .. arguments]);
    }

    /// <summary>Runs ogrinfo of GDAL and gives what it printed.</summary>
    public static string Ogrinfo(params string[] arguments) =>
        Run("ogrinfo", "ogrinfo is not installed: install the package gdal-bin.", arguments);

    /// <summary>Runs assimp and gives what it printed.</summary>
    public static string Assimp(params string[] arguments) =>
        Run("assimp", "assimp is not installed: install the package assimp-utils.", arguments);

    /// <summary>Runs a program of poppler and gives what it printed.</summary>
    public static string Poppler(string program, params string[] arguments) =>
        Run(program, program + " is not installed: install the package poppler-utils.", arguments);

    /// <summary>Calls <paramref name="judge"/> with the path of a file that holds the bytes for as long as the call takes.</summary>
    public static void OnFile(byte[] bytes, string name, Action<string> judge)
    {
        var folder = Directory.CreateTempSubdirectory("bridgeform-referee-");
        try
        {
            var path = Path.Combine(folder.FullName, name);
            File.WriteAllBytes(path, bytes);
            judge(path);
        }
        finally
        {
            folder.Delete(recursive: true);
        }
    }

    /// <summary>A python3 on the path may be another than the system's, to which packages are installed.</summary>
    private static Lazy<string?> Python { get; } = new(() =>
        new[] { "python3", "/usr/bin/python3" }.FirstOrDefault(p => Start(p, ["-c", "import ezdxf"]) is { Code: 0 }));

    private static Lazy<string?> PythonWithScipy { get; } = new(() =>
        new[] { "python3", "/usr/bin/python3" }.FirstOrDefault(
            p => Start(p, ["-c", "import scipy.optimize, scipy.sparse"]) is { Code: 0 }));

    private static string Folder { get; } = FindFolder();

    private static string FindFolder()
    {
        var at = new DirectoryInfo(AppContext.BaseDirectory);
        while (!File.Exists(Path.Combine(at.FullName, "BridgeForm.sln")))
        {
            at = at.Parent ?? throw new DirectoryNotFoundException("Tests run from inside the repository.");
        }

        return Path.Combine(at.FullName, "tests", "referees");
    }

    private static string Run(string program, string missing, string[] arguments)
    {
        var result = Start(program, arguments);
        Assert.True(result is not null, missing);
        Assert.True(result!.Value.Code == 0, $"{program} ended with {result.Value.Code}: {result.Value.Error}");
        return result.Value.Output;
    }

    /// <summary>Null when there is no such program.</summary>
    private static (int Code, string Output, string Error)? Start(string program, string[] arguments)
    {
        var info = new ProcessStartInfo(program, arguments)
        {
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

            return (process.ExitCode, output.GetAwaiter().GetResult(), error.GetAwaiter().GetResult());
        }
        catch (Win32Exception)
        {
            return null;
        }
    }
}
