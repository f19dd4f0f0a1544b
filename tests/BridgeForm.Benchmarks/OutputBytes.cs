using System.Globalization;
using BridgeForm.Benchmarks.Fuzz;
using BridgeForm.Cli;

namespace BridgeForm.Benchmarks;

/// <summary>
/// Hashes of every file that the samples and some random bridges make, and of what is said about them: written before a
/// change that must not change anything, and compared after it.
/// </summary>
internal static class OutputBytes
{
    private const int Seeds = 100;
    private const int MostBays = 24;

    /// <summary>Writes one line a file to <paramref name="list"/>: hash, case, name; sorted.</summary>
    public static void Record(string list)
    {
        var folder = Directory.CreateTempSubdirectory("bridgeform-bytes-").FullName;
        try
        {
            File.WriteAllLines(list, Cases().SelectMany(c => Lines(folder, c.Name, c.Text)));
        }
        finally
        {
            Directory.Delete(folder, recursive: true);
        }
    }

    private static IEnumerable<(string Name, string Text)> Cases()
    {
        foreach (var sample in Directory.EnumerateDirectories("viewer-samples").Order(StringComparer.Ordinal))
        {
            yield return (Path.GetFileName(sample), File.ReadAllText(Path.Combine(sample, "project.yaml")));
        }

        for (var seed = 1; seed <= Seeds; seed++)
        {
            yield return (string.Create(CultureInfo.InvariantCulture, $"seed-{seed:000}"), RandomProject.Of(seed, MostBays));
        }
    }

    private static List<string> Lines(string folder, string name, string text)
    {
        var file = Path.Combine(folder, "project.yaml");
        File.WriteAllText(file, text);
        var (made, output) = (Path.Combine(folder, "made"), Path.Combine(folder, "said"));
        var said = Said(folder, "check", file) + Said(folder, "make", file, "-o", made);
        File.WriteAllText(output, said);
        List<string> lines = [Line("project.yaml", file), Line("(said)", output)];
        if (Directory.Exists(made))
        {
            lines.AddRange(Directory.EnumerateFiles(made, "*", SearchOption.AllDirectories)
                .Select(path => Line(Path.GetRelativePath(made, path).Replace('\\', '/'), path))
                .OrderBy(line => line[65..], StringComparer.Ordinal));
            Directory.Delete(made, recursive: true);
        }

        return lines;

        string Line(string of, string path) =>
            $"{Convert.ToHexStringLower(System.Security.Cryptography.SHA256.HashData(File.ReadAllBytes(path)))} {name} {of}";
    }

    private static string Said(string folder, params string[] arguments)
    {
        using var text = new StringWriter(CultureInfo.InvariantCulture) { NewLine = "\n" };
        var code = Application.Run(arguments, text, text);
        return $"{text.ToString().Replace(folder, "", StringComparison.Ordinal)}exit code {code}\n";
    }
}
