using System.Collections.Immutable;
using System.IO.Compression;

namespace BridgeForm.Output.Kinds;

/// <summary>Where files go: a folder, memory, a zip archive. Kinds that are made side by side write into one at a time.</summary>
public interface IOutputSink
{
    /// <summary>Takes one file.</summary>
    /// <param name="name">Relative, with forward slashes.</param>
    /// <param name="write">Writes its bytes; called once, before this returns.</param>
    void Write(string name, Action<Stream> write);
}

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

/// <summary>Files as entries of a zip archive, which is finished when this is disposed. The same files give the same bytes.</summary>
public sealed class ZipSink : IOutputSink, IDisposable
{
    // The first day that the format knows: an archive says nothing about when it was made.
    private static readonly DateTimeOffset s_noTime = new(1980, 1, 1, 0, 0, 0, TimeSpan.Zero);

    private readonly ZipArchive _archive;

    /// <summary>Begins an archive.</summary>
    /// <param name="stream">Where it goes; stays open.</param>
    public ZipSink(Stream stream) => _archive = new ZipArchive(stream, ZipArchiveMode.Create, leaveOpen: true);

    /// <inheritdoc/>
    public void Write(string name, Action<Stream> write)
    {
        var entry = _archive.CreateEntry(name, CompressionLevel.Optimal);
        entry.LastWriteTime = s_noTime;
        using var stream = entry.Open();
        write(stream);
    }

    /// <summary>Writes the list of entries, without which it is no archive.</summary>
    public void Dispose() => _archive.Dispose();
}
