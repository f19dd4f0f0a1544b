using System.Text.Json;
using BridgeForm.Output.Gltf;
using BridgeForm.Tests.Output.StepSolids;
using BridgeForm.Tests.Output.Usd;

namespace BridgeForm.Tests.Output.Referees;

/// <summary>three.js' reader of USD sees every part in its place, whole and in its colour.</summary>
[Trait("Category", "Referee")]
public sealed class UsdRefereeTests
{
    // The reader keeps corners as 32-bit floats, and the file has micrometres of them.
    private const double LeastDifference = 1e-4;
    private const double Rounded = 4e-6;
    private const double Place = 5e-6;

    // A few at a time: the reader is one process.
    private const int FilesAtOnce = 20;

    /// <summary>A whole bridge, every kind of part that a bridge has, and bridges that nobody chose.</summary>
    [Fact]
    public void Every_part_has_its_place_volume_and_colour()
    {
        foreach (var batch in StepCase.Others.Prepend(("whole", StepCase.Whole)).Chunk(FilesAtOnce))
        {
            var read = Referee.Lines("usd.mjs", ".usdz", batch.Select(c => UsdWriterTests.Bytes(c.Item2)));
            foreach (var (seen, (name, model)) in read.Zip(batch))
            {
                Judge(name, model, seen.GetProperty("meshes").EnumerateArray().ToDictionary(m => m.GetProperty("path").GetString()!));
            }
        }
    }

    private static void Judge(string name, BridgeModel model, Dictionary<string, JsonElement> seen)
    {
        var parts = ShownPart.Of(model);
        foreach (var part in parts)
        {
            var mesh = seen["Bridge/" + part.Path];
            var corners = part.Corners(part.Place);
            var volume = mesh.GetProperty("volume").GetDouble();
            Assert.True(Math.Abs((volume / part.Volume) - 1) < RelativeDifference(part), $"{name}, {part.Name}: {volume:g9} m3");
            Assert.All(Numbers(mesh, "low").Zip([corners.Min(c => c.X), corners.Min(c => c.Y), corners.Min(c => c.Z)]), AssertNear);
            Assert.All(Numbers(mesh, "high").Zip([corners.Max(c => c.X), corners.Max(c => c.Y), corners.Max(c => c.Z)]), AssertNear);
            var material = GltfMaterials.All[part.Material];
            Assert.All(Numbers(mesh, "colour").Zip([material.Red, material.Green, material.Blue]), AssertNear);
            Assert.Equal(material.Opacity, mesh.GetProperty("opacity").GetDouble(), Place);
        }

        Assert.True(parts.Length + model.RopeLines.Length == seen.Count, $"{name}: {seen.Count} meshes, not {parts.Length} and ropes");
        Assert.True(Numbers(seen["Bridge/ropes/left"], "high")[2] < 0 && Numbers(seen["Bridge/ropes/right"], "low")[2] > 0, name);
    }

    // A micrometre in the place of each corner, at either end of two of its sizes, of the thinnest body.
    private static double RelativeDifference(ShownPart part) =>
        Math.Max(LeastDifference, Rounded / part.Bodies.Min(b => Math.Min(b.Shape.Width, b.Shape.Thickness)));

    private static void AssertNear((double Seen, double Expected) pair) => Assert.Equal(pair.Expected, pair.Seen, Place);

    private static double[] Numbers(JsonElement mesh, string name) =>
        [.. mesh.GetProperty(name).EnumerateArray().Select(v => v.GetDouble())];
}
