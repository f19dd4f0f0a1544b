using System.Text.Json;
using BridgeForm.Pieces;
using BridgeForm.Solids;

namespace BridgeForm.Output.Gltf;

/// <summary>
/// The node tree: bridge / frames / F03 / post-left, bridge / bays / B03 / board-2, bridge / ropes / left. Every node's
/// index is known before it is written, because each group's members follow it directly.
/// </summary>
internal static class SceneNodes
{
    private const int Bridge = 0;
    private const int Frames = 1;
    private const int Bays = 2;
    private const int Ropes = 3;
    private const int FirstGroup = 4;

    /// <summary>A tenth of a micrometre: decimals of a translation in metres.</summary>
    private const int PlaceDecimals = 7;

    /// <summary>Keeps a corner five metres from the piece's origin within a hundredth of a micrometre.</summary>
    private const int TurnDecimals = 9;

    /// <summary>The JSON text is handed on to the buffer whenever this much has gathered.</summary>
    private const int FlushBytes = 1 << 15;

    /// <summary>Writes the scene and its nodes. Meshes of pieces come first in the store, then those of ropes.</summary>
    public static void Write(Utf8JsonWriter json, BridgeModel model)
    {
        var frames = model.Frames.Select(f => f.Name).ToHashSet(StringComparer.Ordinal);
        var places = Places(model);
        var starts = Starts(model);
        json.WriteNumber("scene", 0);
        json.WriteStartArray("scenes");
        json.WriteStartObject();
        json.WriteString("name", model.Parameters.Name);
        Children(json, [Bridge]);
        json.WriteStartObject("extras");
        json.WriteString("caution", Caution.Text);
        json.WriteEndObject();
        json.WriteEndObject();
        json.WriteEndArray();

        json.WriteStartArray("nodes");
        Parent(json, "bridge", [Frames, Bays, Ropes]);
        Parent(json, "frames", Enumerable.Range(0, starts.Count - 1).Where(g => frames.Contains(model.Groups[g].Name)).Select(g => starts[g]));
        Parent(json, "bays", Enumerable.Range(0, starts.Count - 1).Where(g => !frames.Contains(model.Groups[g].Name)).Select(g => starts[g]));
        Parent(json, "ropes", Enumerable.Range(starts[^1], model.RopeLines.Length));
        for (var g = 0; g < model.Groups.Length; g++)
        {
            Group(json, model, model.Groups[g], starts[g], frames.Contains(model.Groups[g].Name) ? "frame" : "bay", places);
        }

        for (var r = 0; r < model.RopeLines.Length; r++)
        {
            json.WriteStartObject();
            json.WriteString("name", model.RopeLines[r].Name);
            json.WriteNumber("mesh", model.Pieces.Length + r);
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }

    /// <summary>Index of each group's node, and after them that of the first rope.</summary>
    private static List<int> Starts(BridgeModel model)
    {
        var starts = new List<int>(model.Groups.Length + 1) { FirstGroup };
        starts.AddRange(model.Groups.Select(g => g.MemberIds.Length + 1));
        for (var i = 1; i < starts.Count; i++)
        {
            starts[i] += starts[i - 1];
        }

        return starts;
    }

    private static Dictionary<string, (int Piece, Placement Placement)> Places(BridgeModel model)
    {
        var places = new Dictionary<string, (int, Placement)>(StringComparer.Ordinal);
        for (var p = 0; p < model.Pieces.Length; p++)
        {
            foreach (var occurrence in model.Pieces[p].Occurrences)
            {
                places.Add(occurrence.Id, (p, occurrence.Placement));
            }
        }

        return places;
    }

    private static void Group(
        Utf8JsonWriter json,
        BridgeModel model,
        GroupIds group,
        int start,
        string kind,
        Dictionary<string, (int Piece, Placement Placement)> places)
    {
        Parent(json, group.Name, Enumerable.Range(start + 1, group.MemberIds.Length));
        foreach (var id in group.MemberIds)
        {
            var (piece, placement) = places[id];
            json.WriteStartObject();
            json.WriteString("name", id.AsSpan(id.IndexOf('/', StringComparison.Ordinal) + 1));
            json.WriteNumber("mesh", piece);
            Place(json, placement);
            Extras(json, model.Pieces[piece], kind, group.Name);
            json.WriteEndObject();
        }

        if (json.BytesPending > FlushBytes)
        {
            json.Flush();
        }
    }

    private static void Place(Utf8JsonWriter json, Placement placement)
    {
        var (r, o) = (Rotation.Of(placement), placement.Origin);
        GltfJson.Array(json, "rotation", Turn(r.X), Turn(r.Y), Turn(r.Z), Turn(r.W));
        GltfJson.Array(json, "translation", Distance(o.X), Distance(o.Y), Distance(o.Z));

        static double Turn(double x) => Numbers.Rounded(x, TurnDecimals);
        static double Distance(double x) => Numbers.Rounded(x, PlaceDecimals);
    }

    private static void Extras(Utf8JsonWriter json, Piece piece, string kind, string owner)
    {
        json.WriteStartObject("extras");
        json.WriteString("mark", piece.Mark);
        json.WriteString("role", RoleName.Of(piece.Role));
        json.WriteString("stock", piece.Stock);
        json.WriteString(kind, owner);
        json.WriteEndObject();
    }

    private static void Parent(Utf8JsonWriter json, string name, IEnumerable<int> children)
    {
        json.WriteStartObject();
        json.WriteString("name", name);
        Children(json, [.. children], "children");
        json.WriteEndObject();
    }

    /// <summary>A list of nodes; the format wants none rather than an empty one.</summary>
    private static void Children(Utf8JsonWriter json, int[] children, string name = "nodes")
    {
        if (children.Length == 0)
        {
            return;
        }

        json.WriteStartArray(name);
        foreach (var child in children)
        {
            json.WriteNumberValue(child);
        }

        json.WriteEndArray();
    }
}
