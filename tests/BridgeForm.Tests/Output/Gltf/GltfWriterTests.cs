using BridgeForm.Output.Gltf;
using BridgeForm.Ropes;
using BridgeForm.Solids;
using BridgeForm.Tests.Output.Samples;
using CsCheck;

namespace BridgeForm.Tests.Output.Gltf;

public sealed class GltfWriterTests
{
    /// <summary>Share of a volume that rounding corners to single precision may change: 2⁻²⁴ on each of three sizes, and some.</summary>
    private const double SinglePrecision = 1e-6;

    internal static byte[] Bytes(BridgeModel model)
    {
        using var stream = new MemoryStream();
        GltfWriter.Write(model, solid => solid.Triangulate(), stream);
        return stream.ToArray();
    }

    [Fact]
    public void Tree_names_every_part_by_frame_or_bay()
    {
        var parts = new GlbFile(Bytes(SampleModel.Small)).Parts();
        Assert.Equal(
            [
                "bridge/frames/F00/base", "bridge/frames/F00/post-left", "bridge/frames/F01/base", "bridge/frames/F01/post-left",
                "bridge/frames/F02/base", "bridge/frames/F02/post-left", "bridge/bays/B01/rail-left-1", "bridge/bays/B01/board-1",
                "bridge/bays/B02/rail-left-1", "bridge/bays/B02/board-1", "bridge/ropes/left", "bridge/ropes/right",
            ],
            parts.Keys);
    }

    [Fact]
    public void Parts_carry_what_they_are()
    {
        var parts = new GlbFile(Bytes(SampleModel.Small)).Parts();
        Assert.Equal(
            """{"mark":"P1L","role":"post","stock":"treated","frame":"F01","arrow":"up","turned":false,"rolled":false}""",
            parts["bridge/frames/F01/post-left"].GetProperty("extras").GetRawText());
        Assert.Equal(
            """{"mark":"R1","role":"rail","stock":"cedar","bay":"B02","arrow":"towards B","turned":false,"rolled":false}""",
            parts["bridge/bays/B02/rail-left-1"].GetProperty("extras").GetRawText());
    }

    [Fact]
    public void Occurrences_share_the_mesh_of_their_piece()
    {
        var file = new GlbFile(Bytes(SampleModel.Small));
        var meshes = file.Parts().Where(p => p.Key.EndsWith("/base", StringComparison.Ordinal)).Select(
            p => p.Value.GetProperty("mesh").GetInt32());
        Assert.Single(meshes.Distinct());
        Assert.Equal(SampleModel.Small.Pieces.Length + 2, file.Json.GetProperty("meshes").GetArrayLength());
    }

    [Fact]
    public void Every_mesh_is_closed_outward_and_encloses_its_piece()
    {
        var file = new GlbFile(Bytes(SampleModel.Small));
        for (var i = 0; i < SampleModel.Small.Pieces.Length; i++)
        {
            var mesh = file.Mesh(i);
            AssertClosed(mesh.Positions, mesh.Indices);
            Assert.InRange(
                Volume(mesh.Positions, mesh.Indices) / SampleModel.Small.Pieces[i].Volume, 1 - SinglePrecision, 1 + SinglePrecision);
            AssertNormals(mesh, 1 - SinglePrecision);
        }
    }

    [Fact]
    public void Rope_is_a_closed_tube_of_its_length_and_radius()
    {
        var file = new GlbFile(Bytes(SampleModel.Small));
        var rope = SampleModel.Small.RopeLines[0];
        var mesh = file.Mesh(SampleModel.Small.Pieces.Length);
        var length = rope.Points.Zip(rope.Points.Skip(1), (a, b) => (b - a).Length).Sum();
        var twelveSides = 12.0 / 2 * Math.Sin(Math.Tau / 12) * rope.Radius * rope.Radius;
        AssertClosed(mesh.Positions, mesh.Indices);
        Assert.InRange(Volume(mesh.Positions, mesh.Indices) / (length * twelveSides), 0.999, 1.001);
        AssertNormals(mesh, Math.Cos(Math.PI / 12) - 0.001);
    }

    [Fact]
    public void Nodes_put_corners_where_the_placement_does()
    {
        var model = SampleModel.Small;
        var parts = new GlbFile(Bytes(model)).Parts();
        foreach (var (piece, occurrence) in model.Pieces.SelectMany(p => p.Occurrences.Select(o => (p, o))))
        {
            var node = parts["bridge/" + (occurrence.Id[0] == 'F' ? "frames/" : "bays/") + occurrence.Id];
            double[] r = [.. node.GetProperty("rotation").EnumerateArray().Select(v => v.GetDouble())];
            double[] t = [.. node.GetProperty("translation").EnumerateArray().Select(v => v.GetDouble())];
            Assert.All(piece.Solid.Vertices, v =>
            {
                var gap = Turned(r, v) + new Vector3d(t[0], t[1], t[2]) - occurrence.Placement.ToWorld(v);
                Assert.True(gap.Length < 1e-6);
            });
        }
    }

    [Fact]
    public void Rotation_of_any_axes_turns_the_world_into_them()
    {
        var number = Gen.Double[-1, 1];
        Gen.Select(number, number, number, number).Where((a, b, c, d) => (a * a) + (b * b) + (c * c) + (d * d) > 0.01).Sample(
            (a, b, c, d) =>
        {
            var k = 1 / Math.Sqrt((a * a) + (b * b) + (c * c) + (d * d));
            double[] q = [a * k, b * k, c * k, d * k];
            var axes = new Placement(Vector3d.Zero, Turned(q, Vector3d.UnitX), Turned(q, Vector3d.UnitY), Turned(q, Vector3d.UnitZ));
            var r = Rotation.Of(axes);
            return Math.Abs(Math.Abs((r.X * q[0]) + (r.Y * q[1]) + (r.Z * q[2]) + (r.W * q[3])) - 1) < 1e-12;
        });
    }

    [Fact]
    public void Large_meshes_get_wide_indices_and_stay_closed()
    {
        var points = Enumerable.Range(0, 6000).Select(i => new Vector3d(0.01 * i, 0, 0));
        var model = SampleModel.Small with { RopeLines = [new RopeLine("left", 0.01, [.. points])] };
        var file = new GlbFile(Bytes(model));
        var mesh = file.Mesh(model.Pieces.Length);
        Assert.True(mesh.Positions.Length > ushort.MaxValue);
        AssertClosed(mesh.Positions, mesh.Indices);
        AssertClosed(file.Mesh(0).Positions, file.Mesh(0).Indices);
    }

    [Fact]
    public void Model_without_parts_is_still_a_file()
    {
        var empty = SampleModel.Small with { Pieces = [], Groups = [], RopeLines = [] };
        using var stream = new MemoryStream();
        GltfWriter.Write(empty, solid => solid.Triangulate(), stream);
        Assert.Equal(0, stream.Length % 4);
    }

    [Fact]
    public void Same_model_gives_the_same_bytes() => Assert.Equal(Bytes(SampleModel.WithBays(5, 2)), Bytes(SampleModel.WithBays(5, 2)));

    /// <summary>v + 2 w (u × v) + 2 u × (u × v) with the quaternion (u, w).</summary>
    private static Vector3d Turned(double[] q, Vector3d v)
    {
        var u = new Vector3d(q[0], q[1], q[2]);
        var cross = u.Cross(v);
        return v + (2 * q[3] * cross) + (2 * u.Cross(cross));
    }

    /// <summary>Each edge runs exactly once in each direction after corners at equal places are made one.</summary>
    private static void AssertClosed(Vector3d[] positions, int[] indices)
    {
        var edges = new HashSet<(Vector3d, Vector3d)>();
        foreach (var t in indices.Chunk(3))
        {
            Assert.True(edges.Add((positions[t[0]], positions[t[1]])));
            Assert.True(edges.Add((positions[t[1]], positions[t[2]])));
            Assert.True(edges.Add((positions[t[2]], positions[t[0]])));
        }

        Assert.All(edges, e => Assert.Contains((e.Item2, e.Item1), edges));
    }

    private static double Volume(Vector3d[] positions, int[] indices) =>
        indices.Chunk(3).Sum(t => positions[t[0]].Dot(positions[t[1]].Cross(positions[t[2]])) / 6);

    /// <summary>Normals have length one and look the way their triangles do.</summary>
    private static void AssertNormals((Vector3d[] Positions, Vector3d[] Normals, int[] Indices) mesh, double cosine)
    {
        Assert.All(mesh.Normals, n => Assert.Equal(1, n.Length, 6));
        foreach (var t in mesh.Indices.Chunk(3))
        {
            var (a, b, c) = (mesh.Positions[t[0]], mesh.Positions[t[1]], mesh.Positions[t[2]]);
            var face = (b - a).Cross(c - a).Normalized();
            Assert.All(t, i => Assert.True(mesh.Normals[i].Dot(face) > cosine));
        }
    }
}
