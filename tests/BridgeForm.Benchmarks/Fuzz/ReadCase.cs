using System.Globalization;
using BridgeForm.Materials;
using BridgeForm.Project.Files;

namespace BridgeForm.Benchmarks.Fuzz;

/// <summary>One spoiled file, read: it must get parameters, or faults with places on plain lines, and never an exception.</summary>
internal static class ReadCase
{
    private const int Sound = 12;
    private const int Bays = 40;

    /// <summary>Whole files to spoil: random ones that the reader takes, so that every key stands in one or another.</summary>
    private static readonly Lazy<string[]> Files = new(() => [.. Enumerable.Range(1, Sound).Select(seed => RandomProject.Of(seed, Bays))]);

    /// <summary>The spoiled file of a seed.</summary>
    public static string Text(int seed) => SpoiledText.Of(Files.Value[(uint)seed % Sound], new Random(seed));

    /// <summary>What is wrong with the answer to the file of a seed; null for nothing.</summary>
    public static string? Of(int seed)
    {
        var text = Text(seed);
        try
        {
            return Wrong(ProjectReader.Read(text, "spoiled.yaml", RopeTable.Catalogue), text) is { } wrong
                ? string.Create(CultureInfo.InvariantCulture, $"seed {seed}: {wrong}")
                : null;
        }
        catch (Exception trouble)
        {
            return string.Create(CultureInfo.InvariantCulture, $"seed {seed}: {trouble}");
        }
    }

    private static string? Wrong(ProjectReading reading, string text)
    {
        var lines = 2 + text.Count(c => c is '\n' or '\r' or '\u0085' or '\u2028' or '\u2029');
        return (reading.Parameters is null) != (reading.Faults.Length > 0) ? "neither parameters nor faults, or both"
            : reading.Faults.FirstOrDefault(f => f.Line < 1 || f.Line > lines || f.Column < 1) is { } lost ? "no such place: " + lost
            : reading.Faults.FirstOrDefault(f => f.Message.Length == 0 || f.Message.Any(char.IsControl)) is { } raw
            ? "not a plain line: " + raw
            : null;
    }
}
