using BridgeForm.Materials;
using BridgeForm.Quantities;

namespace BridgeForm.Project.Reading;

/// <summary>
/// All values of a project by path (<c>frames.post.lean</c>, <c>stock.cedar.lengths.0</c>), defaults filled in. Where a
/// value was faulty a harmless one stands in, so that everything else can still be read and checked.
/// </summary>
internal sealed class FileValues(UnitSystem units)
{
    private readonly Dictionary<string, Entry> entries = new(StringComparer.Ordinal);

    public UnitSystem Units => units;

    public IEnumerable<(string Path, Entry Entry)> All => entries.Select(e => (e.Key, e.Value));

    public Entry? Find(string path) => entries.GetValueOrDefault(path);

    public void Set(string path, Entry entry) => entries[path] = entry;

    public double Number(string path) => At(path).Number;

    public double? NumberOrNull(string path) => Find(path) is { Good: true } entry ? entry.Number : null;

    public int Whole(string path) => (int)At(path).Number;

    public bool Flag(string path) => At(path).Number > 0;

    public string Text(string path) => At(path).Text;

    public string? TextOrNull(string path) => Find(path) is { Good: true } entry ? entry.Text : null;

    public Section Section(string path) => At(path).Section!;

    /// <summary>Whether the key stands in the file.</summary>
    public bool Given(string path) => Find(path) is { Given: true };

    /// <summary>Whether every one of the values, and all that it stands under, was read without a fault (or is left out).</summary>
    public bool Good(params ReadOnlySpan<string> paths)
    {
        foreach (var path in paths)
        {
            if (!IsGood(path))
            {
                return false;
            }
        }

        return true;
    }

    /// <summary>Paths of the entries of a list or named mapping, in order; empty when it is left out.</summary>
    public IEnumerable<string> Items(string path) => Names(path).Select(name => path + "." + name);

    /// <summary>Names under a named mapping, in order.</summary>
    public IReadOnlyList<string> Names(string path) => Find(path)?.Items ?? [];

    /// <summary>Where to point for a value: at it, or at the nearest key above it.</summary>
    public Place Place(string path)
    {
        for (var p = path; p.Length > 0; p = Above(p))
        {
            if (Find(p) is { } entry)
            {
                return entry.Place;
            }
        }

        return Reading.Place.Start;
    }

    private static string Above(string path) => path[..Math.Max(0, path.LastIndexOf('.'))];

    private bool IsGood(string path)
    {
        for (var p = path; p.Length > 0; p = Above(p))
        {
            if (Find(p) is { Good: false })
            {
                return false;
            }
        }

        return true;
    }

    private Entry At(string path) => Find(path) ?? throw new KeyNotFoundException(path);
}

/// <summary>One value of the project: read from the file, or its default.</summary>
/// <param name="Place">Of the value; of the nearest key above for one that the file leaves out.</param>
/// <param name="Given">Stands in the file.</param>
/// <param name="Good">Was read without a fault; otherwise the default or an example stands in.</param>
internal sealed record Entry(Place Place, bool Given, bool Good)
{
    /// <summary>As written, or what stands in.</summary>
    public string Text { get; init; } = "";

    /// <summary>What the file says where something stands in for it; null where nothing does, and for what is no single value.</summary>
    public string? Faulty { get; init; }

    /// <summary>SI value, number, or 1 for true.</summary>
    public double Number { get; init; }

    /// <summary>Which kind of quantity was written.</summary>
    public QuantityKind? Kind { get; init; }

    /// <summary>The section that was written.</summary>
    public Section? Section { get; init; }

    /// <summary>Names under a named mapping, or indices of a list's entries.</summary>
    public IReadOnlyList<string> Items { get; init; } = [];
}
