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
        var map = Mapping(text, faults);
        var (values, parameters) = map is null ? default : Read(map, ropes, faults, []);
        return new ProjectReading(fileName, faults.Any ? null : parameters, faults.InOrder())
        {
            Values = values,
            Changed = changes => map is null ? new ChangedProject(null, []) : Changed(map, ropes, changes),
            ByRule = paths => map is null ? [] : ByRule(map, ropes, [.. paths]),
        };
    }

    private static ChangedProject Changed(MapNode map, RopeCatalogue ropes, IEnumerable<KeyChange> changes)
    {
        var faults = new FaultList();
        var (_, parameters) = Read(map, ropes, faults, changes);
        return faults.Any ? new ChangedProject(null, faults.InOrder()) : new ChangedProject(parameters, []);
    }

    private static ImmutableArray<KeyChange> ByRule(MapNode map, RopeCatalogue ropes, IReadOnlyList<string> paths)
    {
        var (values, _) = Read(paths.Aggregate(map, (left, path) => Without(left, path.Split('.'))), ropes, new FaultList(), []);
        return [.. paths.Select(p => new KeyChange(p, values.Find(p)?.Text ?? "")).Where(c => c.Text.Length > 0)];
    }

    private static MapNode Without(MapNode map, ReadOnlySpan<string> path)
    {
        var entries = map.Entries.ToBuilder();
        for (var i = entries.Count - 1; i >= 0; i--)
        {
            if (!string.Equals(entries[i].Key, path[0], StringComparison.Ordinal))
            {
                continue;
            }

            if (path.Length > 1 && entries[i].Value is MapNode inner)
            {
                entries[i] = entries[i] with { Value = Without(inner, path[1..]) };
            }
            else
            {
                entries.RemoveAt(i);
            }
        }

        return map with { Entries = entries.ToImmutable() };
    }

    private static MapNode? Mapping(string text, FaultList faults)
    {
        if (YamlText.Checked(text, ProjectKeys.LargestFile, faults) is not { } body || YamlTree.Read(body, faults) is not { } root)
        {
            return null;
        }

        if (root is not MapNode map)
        {
            if (root is not BrokenNode)
            {
                faults.Add(
                    FaultCode.NotAProject, root.Place,
                    $"a project file is a mapping that starts with a line such as name: My footbridge, not {root.Noun}");
            }

            return null;
        }

        return map;
    }

    private static (FileValues Values, BridgeParameters Parameters) Read(
        MapNode map, RopeCatalogue ropes, FaultList faults, IEnumerable<KeyChange> changes)
    {
        var values = new FileValues(UnitsOf(map));
        var walker = new SpecWalker(values, faults);
        walker.Walk(ProjectKeys.Root, map);
        foreach (var (path, written) in changes)
        {
            walker.Rewrite(ProjectKeys.At(path), path, written);
        }

        var surveyed = SurveySection.FillIn(values, walker, faults);
        var chosen = DefaultRules.FillIn(values, walker, ropes);
        var parameters = WholeFile.Read(values, ropes, faults) with { Chosen = [.. surveyed, .. chosen] };
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

    /// <summary>Every single value by its path, whether the file says it or a default stands in; in ordinal order of the paths.</summary>
    public ImmutableArray<ProjectValue> AllValues => Values is null ? [] :
    [
        .. Values.All.Where(v => v.Entry.Items.Count == 0).OrderBy(v => v.Path, StringComparer.Ordinal)
            .Select(v => Single(v.Path, v.Entry)),
    ];

    private static ProjectValue Single(string path, Entry entry) => new(
        path, entry.Faulty ?? entry.Text, entry.Kind is null || entry.Faulty is not null ? null : entry.Number, entry.Given, entry.Good);

    /// <summary>What the file says, key by key, for faults that only the whole bridge shows; null for what is no project file.</summary>
    internal FileValues? Values { get; init; }

    /// <summary>What it comes to when some keys are written otherwise and all others are kept.</summary>
    internal Func<IEnumerable<KeyChange>, ChangedProject> Changed { get; init; } = _ => new ChangedProject(null, []);

    /// <summary>What keys come to when the file leaves them out, those that come to anything.</summary>
    internal Func<IEnumerable<string>, ImmutableArray<KeyChange>> ByRule { get; init; } = _ => [];

    /// <summary>
    /// The parameters when one key is written otherwise and all others are kept; null when the reader finds fault with that.
    /// </summary>
    internal BridgeParameters? With(string path, string value) => Changed([new KeyChange(path, value)]).Parameters;
}

/// <summary>One value of a project file.</summary>
/// <param name="Path">Such as <c>frames.post.section</c>.</param>
/// <param name="Text">As people write it; empty where nothing stands in for a key that is left out.</param>
/// <param name="Number">SI value of a quantity; null for what is none, or cannot be read.</param>
/// <param name="IsGiven">Stands in the file.</param>
/// <param name="IsGood">Was read without a fault.</param>
public readonly record struct ProjectValue(string Path, string Text, double? Number, bool IsGiven, bool IsGood);

/// <summary>A key of the project file and what it says.</summary>
/// <param name="Path">Such as <c>frames.post.section</c>.</param>
/// <param name="Text">The value as people write it.</param>
public readonly record struct KeyChange(string Path, string Text);

/// <summary>A project file of which some keys are written otherwise.</summary>
/// <param name="Parameters">Null when the reader finds fault with it.</param>
/// <param name="Faults">In the order of the file; empty when there are none.</param>
internal sealed record ChangedProject(BridgeParameters? Parameters, ImmutableArray<ProjectFault> Faults);
