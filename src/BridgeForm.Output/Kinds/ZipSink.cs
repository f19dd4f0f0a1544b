using System.IO.Compression;

namespace BridgeForm.Output.Kinds;

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
