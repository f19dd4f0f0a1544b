using System.Collections.Immutable;
using BridgeForm.Materials;
using BridgeForm.Project.Reading;
using BridgeForm.Project.Reading.Faults;
using BridgeForm.Quantities;

namespace BridgeForm.Project.Files;

/// <summary>Reads a project file into parameters, or tells everything that is wrong with it.</summary>
public static class ProjectReader
{
    /// <summary>Code of the fault that a file, or a price list, is larger than is read.</summary>
    public static string TooLarge => FaultCode.FileTooLarge.Id();

    /// <summary>
    /// Reads a project file's text. Never throws on any text. Faults of single values and of how they go together are told
    /// in one run; a value with a fault takes part in no check with others.
    /// </summary>
    /// <param name="text">The whole file; YAML, at most <see cref="ProjectKeys.LargestFile"/> characters.</param>
    /// <param name="fileName">Its name, for messages only.</param>
    /// <param name="ropes">The ropes that the file may name.</param>
    public static ProjectReading Read(string text, string fileName, RopeCatalogue ropes)
    {
        var faults = new FaultList();
        var (values, parameters) = Read(text, ropes, faults, change: null);
        return new ProjectReading(fileName, faults.Any ? null : parameters, faults.InOrder())
        {
            Values = values,
            With = (path, value) => Changed(text, ropes, (path, value)),
        };
    }

    private static BridgeParameters? Changed(string text, RopeCatalogue ropes, (string, string) change)
    {
        var faults = new FaultList();
        var (_, parameters) = Read(text, ropes, faults, change);
        return faults.Any ? null : parameters;
    }

    private static (FileValues? Values, BridgeParameters? Parameters) Read(
        string text, RopeCatalogue ropes, FaultList faults, (string Path, string Text)? change)
    {
        if (YamlText.Checked(text, ProjectKeys.LargestFile, faults) is not { } body || YamlTree.Read(body, faults) is not { } root)
        {
            return default;
        }

        if (root is not MapNode map)
        {
            if (root is not BrokenNode)
            {
                faults.Add(
                    FaultCode.NotAProject, root.Place,
                    $"a project file is a mapping that starts with a line such as name: My footbridge, not {root.Noun}");
            }

            return default;
        }

        var values = new FileValues(UnitsOf(map));
        var walker = new SpecWalker(values, faults);
        walker.Walk(ProjectKeys.Root, map);
        if (change is var (path, written))
        {
            walker.Rewrite(ProjectKeys.At(path), path, written);
        }

        var chosen = DefaultRules.FillIn(values, walker, ropes);
        var parameters = WholeFile.Read(values, ropes, faults) with { Chosen = chosen };
        WholeFile.Check(new CheckedFile(values, parameters, faults));
        return (values, parameters);
    }

    // Units decide about defaults and must be known before anything else is read.
    private static UnitSystem UnitsOf(MapNode root) =>
        root.Entries.FirstOrDefault(e => string.Equals(e.Key, "units", StringComparison.Ordinal))?.Value is ScalarNode { Text: "metric" }
            ? UnitSystem.Metric
            : UnitSystem.Imperial;
}

/// <summary>A project file, read: its parameters, or everything that is wrong with it.</summary>
/// <param name="FileName">Name of the file, for messages.</param>
/// <param name="Parameters">Null when there are faults.</param>
/// <param name="Faults">In the order of the file; empty when there are none.</param>
public sealed record ProjectReading(string FileName, BridgeParameters? Parameters, ImmutableArray<ProjectFault> Faults)
{
    /// <summary>One line a fault, as printed on standard error.</summary>
    public IEnumerable<string> Lines => Faults.Select(f => f.In(FileName));

    /// <summary>What the file says, key by key, for faults that only the whole bridge shows; null for what is no project file.</summary>
    internal FileValues? Values { get; init; }

    /// <summary>
    /// The parameters when one key is written otherwise and all others are kept; null when the reader finds fault with that.
    /// </summary>
    internal Func<string, string, BridgeParameters?> With { get; init; } = (_, _) => null;
}
