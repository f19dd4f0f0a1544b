using BridgeForm.Materials;
using BridgeForm.Project;
using BridgeForm.Project.Definition;
using BridgeForm.Project.Files;

namespace BridgeForm.Benchmarks.Fuzz;

/// <summary>A project with one key after another written anew, anywhere in its range; every change is one that the reader takes.</summary>
internal static class RandomChanges
{
    private const string Start = """
        name: Changes (invented)
        site: { span: 15 ft, ground: [[0 ft, -6 ft], [15 ft, -7 ft]] }
        frames: { spacing: 3 ft }
        loads: { snow: 10 psf }
        """;

    private static readonly (string Path, KeySpec Spec)[] s_leaves =
        [.. Below(ProjectKeys.Root, "").Where(l => l.Spec.Shape == KeyShape.Value)];

    /// <summary>Parameters in turn, and the key that differs from the start.</summary>
    public static IEnumerable<(string Key, BridgeParameters Parameters)> Of(int seed)
    {
        var text = new RandomText(new Random(seed));
        var reading = ProjectReader.Read(Start, "changes.yaml", RopeTable.Catalogue);
        while (true)
        {
            var (path, spec) = text.OneOf(s_leaves);
            if (reading.Values!.Find(path) is not null && reading.With(path, text.Of(spec)) is { } parameters
                && parameters.Site.Span / parameters.Frames.Spacing < 30)
            {
                yield return (path, parameters);
            }
        }
    }

    private static IEnumerable<(string Path, KeySpec Spec)> Below(KeySpec map, string above) => map.Keys.SelectMany(key =>
    {
        var path = above.Length == 0 ? key.Name : above + "." + key.Name;
        return key.Shape == KeyShape.Map ? Below(key, path) : [(path, key)];
    });
}
