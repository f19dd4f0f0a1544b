using System.Collections.Immutable;
using System.Text.Json;
using BridgeForm.Frames;
using BridgeForm.Pieces;
using BridgeForm.Roles;
using BridgeForm.Ropes;
using BridgeForm.Solids;

namespace BridgeForm.Output.Gltf;

/// <summary>
/// The node tree: bridge / frames / F03 / post-left, bridge / bays / B03 / board-2, bridge / ropes / left, bridge / camera,
/// bridge / joints, bridge / landings, bridge / nets. Every node's index is known before it is written, because each group's members
/// follow it directly.
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

    /// <summary>Writes the scene and its nodes. Meshes of pieces come first in the store, then ropes, steel, landings, nets.</summary>
    public static void Write(Utf8JsonWriter json, BridgeModel model)
    {
        Scene(json, model.Parameters.Name);
        var frames = model.Frames.Select(f => f.Name).ToHashSet(StringComparer.Ordinal);
        var places = Places(model);
        var starts = Starts(model);
        var groups = Enumerable.Range(0, model.Groups.Length).ToLookup(g => frames.Contains(model.Groups[g].Name));

        json.WriteStartArray("nodes");
        var camera = starts[^1] + model.RopeLines.Length;
        var (steel, landings, nets) = (model.Steel(), model.Landings(), model.Nets());
        var afterSteel = camera + 1 + (steel.IsEmpty ? 0 : 1 + steel.Sum(p => p.Places.Length));
        Parent(
            json,
            "bridge",
            [
                Frames, Bays, Ropes, camera, .. steel.IsEmpty ? Array.Empty<int>() : [camera + 1],
                .. landings.IsEmpty ? Array.Empty<int>() : [afterSteel],
                .. nets.IsEmpty ? Array.Empty<int>() : [afterSteel + Nodes(landings)],
            ]);
        Parent(json, "frames", groups[true].Select(g => starts[g]));
        Parent(json, "bays", groups[false].Select(g => starts[g]));
        Parent(json, RopeIds.Group, Enumerable.Range(starts[^1], model.RopeLines.Length));
        for (var g = 0; g < model.Groups.Length; g++)
        {
            var kind = frames.Contains(model.Groups[g].Name) ? "frame" : "bay";
            Group(json, model, model.Groups[g], starts[g], kind, places);
        }

        for (var r = 0; r < model.RopeLines.Length; r++)
        {
            Rope(json, model.RopeLines[r], model.Pieces.Length + r);
        }

        Camera(json, model);
        Steel(json, steel, camera + 2, model.Pieces.Length + model.RopeLines.Length);
        var mesh = model.Pieces.Length + model.RopeLines.Length + steel.Length;
        Shown(json, StandIns.Landings, landings, afterSteel + 1, mesh);
        Shown(json, StandIns.Nets, nets, afterSteel + Nodes(landings) + 1, mesh + landings.Length);
        json.WriteEndArray();
    }

    /// <summary>bridge / joints / F03/plate-post-foot-right-b; nothing where no joint has steel.</summary>
    private static void Steel(Utf8JsonWriter json, ImmutableArray<SteelPart> steel, int first, int mesh)
    {
        if (steel.IsEmpty)
        {
            return;
        }

        Parent(json, "joints", Enumerable.Range(first, steel.Sum(p => p.Places.Length)));
        for (var i = 0; i < steel.Length; i++)
        {
            foreach (var (id, place) in steel[i].Places)
            {
                json.WriteStartObject();
                json.WriteString("name", id);
                json.WriteNumber("mesh", mesh + i);
                Place(json, place);
                json.WriteEndObject();
            }
        }
    }

    // With their parent.
    private static int Nodes(ImmutableArray<StandIn> parts) => parts.IsEmpty ? 0 : parts.Length + 1;

    /// <summary>bridge / landings / a/sill, bridge / nets / B03/net-left; nothing where there are none.</summary>
    private static void Shown(Utf8JsonWriter json, string name, ImmutableArray<StandIn> parts, int first, int mesh)
    {
        if (parts.IsEmpty)
        {
            return;
        }

        Parent(json, name, Enumerable.Range(first, parts.Length));
        for (var i = 0; i < parts.Length; i++)
        {
            json.WriteStartObject();
            json.WriteString("name", parts[i].Id);
            json.WriteNumber("mesh", mesh + i);
            Place(json, parts[i].Place);
            json.WriteEndObject();
        }
    }

    private static void Scene(Utf8JsonWriter json, string name)
    {
        json.WriteNumber("scene", 0);
        json.WriteStartArray("scenes");
        json.WriteStartObject();
        json.WriteString("name", name);
        Children(json, [Bridge]);
        json.WriteStartObject("extras");
        json.WriteString("caution", Caution.Text);
        json.WriteEndObject();
        json.WriteEndObject();
        json.WriteEndArray();
    }

    private static void Rope(Utf8JsonWriter json, RopeLine rope, int mesh)
    {
        json.WriteStartObject();
        json.WriteString("name", rope.Name);
        json.WriteNumber("mesh", mesh);
        json.WriteEndObject();
    }

    private static void Camera(Utf8JsonWriter json, BridgeModel model)
    {
        json.WriteStartObject();
        json.WriteString("name", "camera");
        json.WriteNumber("camera", 0);
        Place(json, SceneCamera.Placement(model));
        json.WriteEndObject();
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

    /// <summary>By name of the member: index of its piece, and of its occurrence in that piece.</summary>
    private static Dictionary<string, (int Piece, int Occurrence)> Places(BridgeModel model)
    {
        var count = model.Pieces.Sum(p => p.Occurrences.Length);
        var places = new Dictionary<string, (int, int)>(count, StringComparer.Ordinal);
        for (var p = 0; p < model.Pieces.Length; p++)
        {
            for (var o = 0; o < model.Pieces[p].Occurrences.Length; o++)
            {
                places.Add(model.Pieces[p].Occurrences[o].Id, (p, o));
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
        Dictionary<string, (int Piece, int Occurrence)> places)
    {
        Parent(json, group.Name, Enumerable.Range(start + 1, group.MemberIds.Length));
        foreach (var id in group.MemberIds)
        {
            var (piece, occurrence) = places[id];
            json.WriteStartObject();
            json.WriteString("name", id.AsSpan(id.IndexOf('/', StringComparison.Ordinal) + 1));
            json.WriteNumber("mesh", piece);
            Place(json, model.Pieces[piece].Occurrences[occurrence].Placement);
            Extras(json, model.Pieces[piece], model.Pieces[piece].Occurrences[occurrence], kind, group.Name);
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

    private static void Extras(Utf8JsonWriter json, Piece piece, Occurrence place, string kind, string owner)
    {
        json.WriteStartObject("extras");
        json.WriteString("mark", piece.Mark);
        json.WriteString("role", RoleTable.Of(piece.Role).Name);
        json.WriteString("stock", piece.Stock);
        json.WriteString(kind, owner);
        json.WriteString("arrow", TurnWords.Arrow(piece, place));
        json.WriteBoolean("turned", place.Turned);
        json.WriteBoolean("rolled", place.Turn.IsRolled);
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
