using System.Collections.Immutable;
using System.Globalization;
using BridgeForm.Cli.Streams;
using BridgeForm.Quantities;

namespace BridgeForm.Cli.Files;

/// <summary>A ground line as comma-separated text: a point a line, x and y with their units.</summary>
internal static class GroundLine
{
    /// <summary>Reads it. Stops with every line that is no point.</summary>
    public static ImmutableArray<(string X, string Y)> Read(string path)
    {
        if (!File.Exists(path))
        {
            throw new Stop(ExitCode.FileTrouble, $"{path}: error: there is no such file; write a point x,y a line, as 0 ft,-2 ft");
        }

        var text = PlaceTrouble.Reading(path, () => LimitedText.Read(path))
            ?? throw new Stop(ExitCode.WrongInput, $"{path}: error: this is too long for a ground line");
        var lines = text.ReplaceLineEndings("\n").Split('\n').Select((line, i) => (Text: line.Trim(), Number: i + 1))
            .Where(l => l.Text.Length > 0 && !l.Text.StartsWith('#')).ToList();
        // A heading names the columns.
        var points = lines.Where((l, i) => i > 0 || !l.Text.StartsWith('x')).ToList();
        var faults = points.Select(l => Fault(path, l.Number, l.Text)).OfType<string>().ToList();
        return faults.Count > 0 || points.Count == 0
            ? throw new Stop(
                ExitCode.WrongInput,
                faults.Count > 0 ? faults : [$"{path}: error: no point stands in it; write x,y a line, as 0 ft,-2 ft"])
            : [.. points.Select(l => l.Text.Split(',') is var p ? (p[0].Trim(), p[1].Trim()) : default)];
    }

    private static string? Fault(string path, int number, string text)
    {
        var parts = text.Split(',');
        var problem = parts.Length != 2 ? $"{QuantityReader.Quote(text)} is no point; write x,y, as 4 ft,-2 ft"
            : parts.Select(p => QuantityReader.Read(QuantityKind.Length, p.Trim()).Problem).FirstOrDefault(p => p is not null);
        return problem is null ? null : string.Create(CultureInfo.InvariantCulture, $"{path}:{number}:1: error: {problem}");
    }
}
