using System.Collections.Immutable;
using BridgeForm.Project.Definition;
using BridgeForm.Quantities;

namespace BridgeForm.Project.Editing;

/// <summary>The way from the root of the file to one key: each name, and what stands under it.</summary>
internal sealed record KeyWay(ImmutableArray<string> Names, ImmutableArray<KeySpec> Specs)
{
    /// <summary>What stands under the last name.</summary>
    public KeySpec Last => Specs[^1];

    /// <summary>The way of a path such as <c>guard.rails.heights.0</c>, or null with a problem.</summary>
    public static KeyWay? Of(string path, out string? problem)
    {
        ImmutableArray<string> names = [.. path.Split('.')];
        var specs = ImmutableArray.CreateBuilder<KeySpec>();
        var above = ProjectKeys.Root;
        foreach (var name in names)
        {
            var spec = Below(above, name);
            if (spec is null)
            {
                problem = $"{QuantityReader.Quote(path)} is not a key of a project file";
                return null;
            }

            specs.Add(spec);
            above = spec;
        }

        problem = null;
        return new KeyWay(names, specs.ToImmutable());
    }

    /// <summary>Path of the first names.</summary>
    public string Path(int count) => string.Join('.', Names.Take(count));

    /// <summary>Keys that exclude the one at a depth.</summary>
    public IEnumerable<string> Excluded(int depth)
    {
        var oneOf = Above(depth).OneOf;
        return oneOf.Contains(Names[depth], StringComparer.Ordinal)
            ? oneOf.Where(k => !string.Equals(k, Names[depth], StringComparison.Ordinal))
            : [];
    }

    /// <summary>Whether the name at a depth is the number of a list's entry.</summary>
    public bool IsEntry(int depth) => Above(depth).Shape == KeyShape.List;

    private KeySpec Above(int depth) => depth == 0 ? ProjectKeys.Root : Specs[depth - 1];

    private static KeySpec? Below(KeySpec above, string name) => above.Shape switch
    {
        KeyShape.List => int.TryParse(name, System.Globalization.NumberStyles.None, null, out _) ? above.Item : null,
        KeyShape.Named => string.IsNullOrWhiteSpace(name) || !PlainLine.IsText(name) ? null : above.Item,
        _ => above.Keys.FirstOrDefault(k => string.Equals(k.Name, name, StringComparison.Ordinal)),
    };
}
