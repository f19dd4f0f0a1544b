using System.Collections.Immutable;
using System.Text.Json;

namespace BridgeForm.Cli.Files.Commit;

/// <summary>
/// The list of moves, written to the disk before the first of them: as long as it is there the old files count, and whoever
/// finds it puts them back. Taking it away is what makes the new files count.
/// </summary>
internal static class Journal
{
    private const string FileName = "journal";

    /// <summary>Writes the list; it is there whole or not at all.</summary>
    public static void Write(string staging, ImmutableArray<Move> moves)
    {
        var path = Path.Combine(staging, FileName);
        using (var stream = new FileStream(path + "-part", FileMode.Create, FileAccess.Write))
        {
            using var json = new Utf8JsonWriter(stream);
            json.WriteStartArray();
            foreach (var move in moves)
            {
                json.WriteStartArray();
                json.WriteStringValue(move.Kind.ToString());
                json.WriteStringValue(move.Name);
                json.WriteStringValue(move.Mark);
                json.WriteEndArray();
            }

            json.WriteEndArray();
            json.Flush();
            stream.Flush(flushToDisk: true);
        }

        File.Move(path + "-part", path);
    }

    /// <summary>The list is there: moves may have been done that are not to count.</summary>
    public static bool Exists(string staging) => File.Exists(Path.Combine(staging, FileName));

    /// <summary>Takes the list away.</summary>
    public static void Remove(string staging) => File.Delete(Path.Combine(staging, FileName));

    /// <summary>Undoes the moves of a list that is there, last first, and takes it away. May be cut short and begun again.</summary>
    /// <exception cref="IOException">Something is in the way; the list stays.</exception>
    public static void RollBack(string folder, string staging)
    {
        foreach (var step in BackSteps(folder, staging))
        {
            step();
        }
    }

    /// <summary>The way back, step by step; none when there is no list.</summary>
    public static IEnumerable<Action> BackSteps(string folder, string staging) => Read(staging) is { } moves
        ? [.. moves.Reverse().Select(move => (Action)(() => move.Undo(folder, staging))), () => Remove(staging)]
        : [];

    private static ImmutableArray<Move>? Read(string staging)
    {
        var path = Path.Combine(staging, FileName);
        if (!File.Exists(path))
        {
            return null;
        }

        try
        {
            using var json = JsonDocument.Parse(File.ReadAllBytes(path));
            return
            [
                .. json.RootElement.EnumerateArray().Select(m => new Move(
                    Enum.Parse<MoveKind>(m[0].GetString()!), m[1].GetString()!, m[2].GetString()!)),
            ];
        }
        catch (JsonException trouble)
        {
            throw new IOException(
                $"{path} is not as this program wrote it; earlier files lie beside it. Move the folder away, then make again", trouble);
        }
    }
}
