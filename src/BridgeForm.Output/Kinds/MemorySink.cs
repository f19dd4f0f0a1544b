using System.Collections.Immutable;

namespace BridgeForm.Output.Kinds;

/// <summary>Files in memory, for whoever shows or sends them on.</summary>
public sealed class MemorySink : IOutputSink
{
    private readonly SortedDictionary<string, byte[]> _files = new(StringComparer.Ordinal);

    /// <summary>What has come so far, by name.</summary>
    public ImmutableSortedDictionary<string, byte[]> Files => _files.ToImmutableSortedDictionary(StringComparer.Ordinal);

    /// <inheritdoc/>
    public void Write(string name, Action<Stream> write)
    {
        using var stream = new MemoryStream();
        write(stream);
        _files.Add(name, stream.ToArray());
    }
}
