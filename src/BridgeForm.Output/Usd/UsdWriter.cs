using System.Collections.Immutable;
using BridgeForm.Frames;
using BridgeForm.Output.Gltf;
using BridgeForm.Pieces;
using BridgeForm.Roles;
using BridgeForm.Solids;
using static BridgeForm.Output.Usd.UsdText;

namespace BridgeForm.Output.Usd;

/// <summary>
/// Writes the bridge as USDZ, which telephones show in the garden at its true size: metres, Y up, in the bridge's own axes. The same
/// triangles as model.glb, in its first finish.
/// </summary>
public static class UsdWriter
{
    private const string Root = "Bridge";
    private const string Materials = "Materials";
    private const int NormalDecimals = 6;
    private const int DepthDecimals = 2;

    /// <summary>Writes the file; the stream stays open. Same model, same bytes.</summary>
    public static void Write(BridgeModel model, Stream stream)
    {
        using var layer = new MemoryStream();
        var depth = Numbers.Rounded(Depth(model), DepthDecimals);
        using (var text = new UsdText(layer, Root, $"{Caution.Text} The bridge reaches {Number(depth)} m below its origin, y = 0."))
        {
            text.Thing("Xform", Root, ["kind = \"assembly\""], () => Contents(text, model));
        }

        UsdzPackage.Write(stream, "model.usda", layer.ToArray());
    }

    /// <summary>How deep anything shown reaches below the origin, which stands on the ground where a telephone shows it, metres.</summary>
    internal static double Depth(BridgeModel model)
    {
        var wood = model.Pieces.SelectMany(p => p.Occurrences.SelectMany(o => p.Solid.Vertices.Select(v => o.Placement.ToWorld(v).Y)));
        var ropes = model.RopeLines.SelectMany(r => r.Points.Select(p => p.Y - r.Radius));
        var others = model.Landings().SelectMany(l => l.Body.ToSolid().Value.Vertices.Select(v => l.Place.ToWorld(v).Y));
        return -wood.Concat(ropes).Concat(others).Append(0).Min();
    }

    private static void Contents(UsdText text, BridgeModel model)
    {
        ImmutableArray<int> first =
        [
            GltfMaterials.Treated, GltfMaterials.Durable, GltfMaterials.Rope,
            .. model.Nets().IsEmpty ? Array.Empty<int>() : [GltfMaterials.Netting],
        ];
        text.Thing("Scope", Materials, () =>
        {
            foreach (var material in first)
            {
                Material(text, GltfMaterials.All[material]);
            }
        });
        var places = model.Pieces.Select(p => (Piece: p, Mesh: Mesh(p.Solid.Triangulate(), GltfMaterials.Of(p, model.Parameters))))
            .SelectMany(p => p.Piece.Occurrences.Select(o => (o.Id, o.Placement, p.Piece, p.Mesh)))
            .ToDictionary(p => p.Id, StringComparer.Ordinal);
        foreach (var group in model.Groups)
        {
            text.Thing("Xform", group.Name, () =>
            {
                foreach (var (id, at, piece, mesh) in group.MemberIds.Select(id => places[id]))
                {
                    Part(text, id, piece, at, mesh);
                }
            });
        }

        if (!model.Steel().IsEmpty)
        {
            text.Thing("Xform", "joints", () => Joints(text, model));
        }

        Beside(text, StandIns.Landings, model.Landings(), GltfMaterials.Treated);
        Beside(text, StandIns.Nets, model.Nets(), GltfMaterials.Netting);
        text.Thing("Xform", RopeIds.Group, () =>
        {
            foreach (var rope in model.RopeLines)
            {
                Shown(text, rope.Name, [], Placement.Identity, Mesh(RopeTube.Build(rope), GltfMaterials.Rope));
            }
        });
    }

    /// <summary>What is shown beside the bridge's own parts; nothing where there is none.</summary>
    private static void Beside(UsdText text, string name, ImmutableArray<StandIn> parts, int material)
    {
        if (parts.IsEmpty)
        {
            return;
        }

        text.Thing("Xform", name, () =>
        {
            foreach (var part in parts)
            {
                Shown(
                    text, part.Id, ["customData = {", $"    string id = {Quoted(part.Id)}", "}"], part.Place,
                    Mesh(part.Body.ToSolid().Value.Triangulate(), material));
            }
        });
    }

    /// <summary>Plates and bolts of joints; a bolt's bodies touch, and are one mesh.</summary>
    private static void Joints(UsdText text, BridgeModel model)
    {
        foreach (var steel in model.Steel())
        {
            var mesh = Mesh(Together([.. steel.Bodies.Select(b => b.ToSolid().Value.Triangulate())]), GltfMaterials.Rope);
            foreach (var (id, at) in steel.Places)
            {
                Shown(
                    text, id, ["customData = {", $"    string id = {Quoted(id)}", $"    string mark = {Quoted(steel.Name)}", "}"],
                    at, mesh);
            }
        }
    }

    private static TriangleMesh Together(ImmutableArray<TriangleMesh> meshes)
    {
        var before = 0;
        var indices = ImmutableArray.CreateBuilder<int>();
        foreach (var mesh in meshes)
        {
            indices.AddRange(mesh.Indices.Select(i => i + before));
            before += mesh.Positions.Length;
        }

        return new TriangleMesh(
            [.. meshes.SelectMany(m => m.Positions)], [.. meshes.SelectMany(m => m.Normals)], indices.ToImmutable());
    }

    private static void Part(UsdText text, string id, Piece piece, Placement at, ImmutableArray<string> mesh) => Shown(
        text, id[(id.IndexOf('/', StringComparison.Ordinal) + 1)..],
        ["customData = {", $"    string id = {Quoted(id)}", $"    string mark = {Quoted(piece.Mark)}", "}"], at, mesh);

    private static void Shown(UsdText text, string name, ImmutableArray<string> about, Placement at, ImmutableArray<string> mesh) =>
        text.Thing("Mesh", name, [.. about, "prepend apiSchemas = [\"MaterialBindingAPI\"]"], () =>
        {
            text.Line($"matrix4d xformOp:transform = {Matrix(at)}");
            text.Line("uniform token[] xformOpOrder = [\"xformOp:transform\"]");
            foreach (var line in mesh)
            {
                text.Line(line);
            }
        });

    /// <summary>The lines of a mesh, written once and shown in every place: USD has no use of one mesh that all readers know.</summary>
    private static ImmutableArray<string> Mesh(TriangleMesh mesh, int material) =>
    [
        $"rel material:binding = </{Root}/{Materials}/{Name(GltfMaterials.All[material].Name)}>",
        "uniform token subdivisionScheme = \"none\"",
        $"int[] faceVertexCounts = [{string.Join(", ", Enumerable.Repeat("3", mesh.TriangleCount))}]",
        $"int[] faceVertexIndices = [{string.Join(", ", mesh.Indices)}]",
        $"point3f[] points = [{string.Join(", ", mesh.Positions.Select(p => Vector(p)))}]",
        $"normal3f[] normals = [{string.Join(", ", mesh.Normals.Select(n => Vector(n, NormalDecimals)))}] (",
        "    interpolation = \"vertex\"",
        ")",
    ];

    private static void Material(UsdText text, GltfMaterial material) => text.Thing("Material", material.Name, () =>
    {
        text.Line($"token outputs:surface.connect = </{Root}/{Materials}/{Name(material.Name)}/Surface.outputs:surface>");
        text.Thing("Shader", "Surface", () =>
        {
            text.Line("uniform token info:id = \"UsdPreviewSurface\"");
            text.Line($"color3f inputs:diffuseColor = {Vector(new Vector3d(material.Red, material.Green, material.Blue))}");
            if (material.Opacity < 1)
            {
                text.Line($"float inputs:opacity = {Number(material.Opacity)}");
            }

            text.Line($"float inputs:metallic = {Number(material.Metallic)}");
            text.Line($"float inputs:roughness = {Number(material.Roughness)}");
            text.Line("token outputs:surface");
        });
    });
}
