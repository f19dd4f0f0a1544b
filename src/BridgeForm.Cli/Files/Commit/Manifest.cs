using System.Collections.Immutable;
using System.Security.Cryptography;
using System.Text.Json;

namespace BridgeForm.Cli.Files.Commit;

/// <summary>A file that a run made.</summary>
/// <param name="Name">Relative to the folder, with forward slashes.</param>
/// <param name="Kind">The word of <c>--only</c> that makes it.</param>
/// <param name="Hash">SHA-256 of its bytes, in lower-case hexadecimal digits.</param>
internal sealed record ListedFile(string Name, string Kind, string Hash);

/// <summary><c>manifest.json</c>: it alone says which files in a folder earlier runs made.</summary>
/// <param name="Files">Sorted by name; the manifest itself is not among them.</param>
internal sealed record Manifest(ImmutableArray<ListedFile> Files)
{
    /// <summary>Its name in the folder.</summary>
    public const string FileName = "manifest.json";

    private const string Format = "bridgeform-manifest";
    private const int Version = 1;

    /// <summary>SHA-256 of a file's bytes.</summary>
    public static string HashOf(string path)
    {
        using var stream = new FileStream(path, FileMode.Open, FileAccess.Read, FileShare.ReadWrite | FileShare.Delete, 1);
        return Convert.ToHexStringLower(SHA256.HashData(stream));
    }

    /// <summary>Writes it.</summary>
    public void Write(Stream stream)
    {
        using var json = new Utf8JsonWriter(stream, new JsonWriterOptions { Indented = true, NewLine = "\n" });
        json.WriteStartObject();
        json.WriteString("format", Format);
        json.WriteNumber("version", Version);
        json.WriteStartArray("files");
        foreach (var file in Files.OrderBy(f => f.Name, StringComparer.Ordinal))
        {
            json.WriteStartObject();
            json.WriteString("name", file.Name);
            json.WriteString("kind", file.Kind);
            json.WriteString("sha256", file.Hash);
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.WriteEndObject();
        json.Flush();
        stream.WriteByte((byte)'\n');
    }

    /// <summary>The manifest of a folder; null when there is none, or one that another program wrote.</summary>
    public static Manifest? Read(string folder)
    {
        var path = Path.Combine(folder, FileName);
        if (Place.At(path) is not PlaceKind.File)
        {
            return null;
        }

        try
        {
            using var json = JsonDocument.Parse(File.ReadAllBytes(path));
            return Read(json.RootElement);
        }
        catch (Exception foreign) when (foreign is JsonException or InvalidOperationException or KeyNotFoundException or FormatException)
        {
            return null;
        }
    }

    private static Manifest? Read(JsonElement root)
    {
        if (root.GetProperty("format").GetString() is not Format || root.GetProperty("version").GetInt32() != Version)
        {
            return null;
        }

        ImmutableArray<ListedFile> files =
        [
            .. root.GetProperty("files").EnumerateArray().Select(f => new ListedFile(
                f.GetProperty("name").GetString()!, f.GetProperty("kind").GetString()!, f.GetProperty("sha256").GetString()!)),
        ];
        return files.All(f => IsInside(f.Name) && f.Kind is not null && f.Hash is not null)
            && files.DistinctBy(f => f.Name, StringComparer.Ordinal).Count() == files.Length
            ? new Manifest(files)
            : null;
    }

    /// <summary>A name that leads nowhere but into the folder.</summary>
    private static bool IsInside(string? name) =>
        name is { Length: > 0 } and not FileName
        && !name.Any(c => char.IsControl(c) || c is '\\' or ':')
        && name.Split('/').All(s => s.Length > 0 && s[0] is not '.');
}
