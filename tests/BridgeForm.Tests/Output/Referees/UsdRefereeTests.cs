using System.Text.Json;
using BridgeForm.Output.Gltf;
using BridgeForm.Solids;
using BridgeForm.Tests.Frames;
using BridgeForm.Tests.Output.StepSolids;
using BridgeForm.Tests.Output.Usd;

namespace BridgeForm.Tests.Output.Referees;

/// <summary>three.js' reader of USD sees every part in its place, whole and in its colour.</summary>
[Trait("Category", "Referee")]
public sealed class UsdRefereeTests
{
    // The reader keeps corners as 32-bit floats, and the file has micrometres of them.
    private const double RelativeDifference = 1e-4;
    private const double Place = 5e-6;

    [Fact]
    public void Every_part_has_its_place_volume_and_colour() => Referee.OnFile(UsdWriterTests.Bytes(StepCase.Whole), "model.usdz", path =>
    {
        var model = StepCase.Whole;
        var seen = JsonDocument.Parse(Referee.Node("usd.mjs", path)).RootElement.GetProperty("meshes").EnumerateArray()
            .ToDictionary(m => m.GetProperty("path").GetString()!);
        foreach (var piece in model.Pieces)
        {
            foreach (var (id, at) in piece.Occurrences)
            {
                var mesh = seen["Bridge/" + id.Replace('-', '_')];
                var corners = piece.Solid.Placed(at).Vertices;
                var volume = mesh.GetProperty("volume").GetDouble();
                Assert.True(Math.Abs((volume / piece.Solid.Volume) - 1) < RelativeDifference, $"{id}: {volume:g9} m3");
                Assert.All(Numbers(mesh, "low").Zip([corners.Min(c => c.X), corners.Min(c => c.Y), corners.Min(c => c.Z)]), AssertNear);
                Assert.All(Numbers(mesh, "high").Zip([corners.Max(c => c.X), corners.Max(c => c.Y), corners.Max(c => c.Z)]), AssertNear);
                var material = GltfMaterials.All[GltfMaterials.Of(piece, model.Parameters)];
                Assert.All(Numbers(mesh, "colour").Zip([material.Red, material.Green, material.Blue]), AssertNear);
            }
        }

        Assert.Equal(model.Pieces.Sum(p => p.Occurrences.Length) + 2, seen.Count);
        Assert.True(Numbers(seen["Bridge/ropes/left"], "high")[2] < 0 && Numbers(seen["Bridge/ropes/right"], "low")[2] > 0);
    });

    [Fact]
    public void Plates_and_bolts_are_there() => Referee.OnFile(UsdWriterTests.Bytes(s_joined.Value), "model.usdz", path =>
    {
        var seen = JsonDocument.Parse(Referee.Node("usd.mjs", path)).RootElement.GetProperty("meshes").EnumerateArray()
            .ToDictionary(m => m.GetProperty("path").GetString()!);
        var places = s_joined.Value.Steel().SelectMany(s => s.Places.Select(p => (Steel: s, p.Id, p.Place))).ToList();
        Assert.Equal(38 * s_joined.Value.Frames.Length, places.Count);
        Assert.All(places, p =>
        {
            var mesh = seen["Bridge/joints/" + p.Id.Replace('-', '_').Replace('/', '_')];
            var solids = p.Steel.Bodies.Select(b => b.ToSolid().Value).ToList();
            Assert.Equal(1, mesh.GetProperty("volume").GetDouble() / solids.Sum(s => s.Volume), 1e-3);
            var corners = solids.SelectMany(s => s.Placed(p.Place).Vertices).ToList();
            Assert.All(
                Numbers(mesh, "low").Zip([corners.Min(c => c.X), corners.Min(c => c.Y), corners.Min(c => c.Z)]), AssertNear);
        });
    });

    private static readonly Lazy<BridgeModel> s_joined = new(() => Bridges.Build(JointSteelTests.Text("square")));

    private static void AssertNear((double Seen, double Expected) pair) => Assert.Equal(pair.Expected, pair.Seen, Place);

    private static double[] Numbers(JsonElement mesh, string name) =>
        [.. mesh.GetProperty(name).EnumerateArray().Select(v => v.GetDouble())];
}
