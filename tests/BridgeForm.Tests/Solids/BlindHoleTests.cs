using BridgeForm.Quantities;
using BridgeForm.Solids;

namespace BridgeForm.Tests.Solids;

/// <summary>Holes drilled at once are those that planes cut, corner by corner; near something else planes cut them.</summary>
public sealed class BlindHoleTests
{
    private static readonly CutStock s_stick = new(0.14, 0.064, new Plane(-Vector3d.UnitX, 0), new Plane(Vector3d.UnitX, 1))
    {
        Channels = [new Channel(StockFace.MinusY, 0.3, 0.022, 0.02, 0)],
    };

    [Fact]
    public void The_same_faces_loops_and_corners_as_by_planes()
    {
        var random = new Random(5);
        var drilled = 0;
        for (var i = 0; i < 300; i++)
        {
            var stick = s_stick with
            {
                Width = 0.03 + (0.2 * random.NextDouble()),
                Thickness = 0.03 + (0.1 * random.NextDouble()),
                Near = Plane.Through(default, new Vector3d(-1, random.NextDouble() - 0.5, random.NextDouble() - 0.5)),
            };
            var solid = stick.ToSolid().Value;
            for (var k = 0; k < 3; k++)
            {
                var hole = new Hole(
                    (StockFace)random.Next(4),
                    0.05 + (0.9 * random.NextDouble()),
                    0.05 * (random.NextDouble() - 0.5),
                    0.002 + (0.02 * random.NextDouble()),
                    0.002 + (0.06 * random.NextDouble()));
                var byPlanes = solid.Subtract(StockCutters.Build(stick, hole)).Value;
                if (AtOnce(solid, stick, hole) is { } atOnce)
                {
                    drilled++;
                    Same(byPlanes, atOnce);
                }

                solid = byPlanes;
            }
        }

        Assert.InRange(drilled, 400, 900);
    }

    // Across the channel, at its wall, out of the side, through the far face, at the stick's end, over another hole: none is plain.
    // In the last one 1/10 mm is left.
    [Theory]
    [InlineData(StockFace.MinusY, 0.3, 0, 0.01, 0.05)]
    [InlineData(StockFace.MinusY, 0.316, 0, 0.01, 0.01)]
    [InlineData(StockFace.MinusY, 0.6, 0.03, 0.01, 0.01)]
    [InlineData(StockFace.PlusY, 0.6, 0, 0.01, 0.14)]
    [InlineData(StockFace.PlusY, 0.3, 0, 0.01, 0.13)]
    [InlineData(StockFace.MinusY, 0.004, 0, 0.01, 0.01)]
    [InlineData(StockFace.MinusY, 0.708, 0, 0.01, 0.02)]
    [InlineData(StockFace.PlusZ, 0.7, -0.06, 0.01, 0.03)]
    [InlineData(StockFace.PlusY, 0.6, 0.02695, 0.01, 0.01)]
    public void Near_something_else_planes_cut(StockFace face, double x, double across, double diameter, double depth)
    {
        var solid = (s_stick with { Holes = [new Hole(StockFace.MinusY, 0.7, 0, 0.01, 0.03)] }).ToSolid().Value;
        Assert.Null(AtOnce(solid, s_stick, new Hole(face, x, across, diameter, depth)));
    }

    [Fact]
    public void A_plain_hole_is_drilled_at_once_and_is_closed()
    {
        var drilled = AtOnce(s_stick.ToSolid().Value, s_stick, new Hole(StockFace.PlusY, 0.6, 0.02, 0.01, 0.1))!;
        Assert.Empty(drilled.Audit());
        Assert.Equal(Math.PI * 0.005 * 0.005 * 0.1, s_stick.ToSolid().Value.Volume - drilled.Volume, 1e-12);
        Assert.Equal(33, drilled.Faces.Count(f => f.Origin == FaceOrigin.Hole));
    }

    private static Solid? AtOnce(Solid solid, CutStock stick, Hole hole) => BlindHole.TryDrill(
        solid, new Drill(StockCutters.Build(stick, hole).Planes, hole, StockCutters.Axes(stick, hole.Face)));

    private static void Same(Solid byPlanes, Solid atOnce)
    {
        Assert.Equal(byPlanes.Faces.Length, atOnce.Faces.Length);
        Assert.Equal(byPlanes.Vertices.Length, atOnce.Vertices.Length);
        foreach (var (expected, face) in byPlanes.Faces.Zip(atOnce.Faces))
        {
            Assert.Equal((expected.Plane, expected.Origin), (face.Plane, face.Origin));
            Assert.Equal(expected.Loops.Length, face.Loops.Length);
            Assert.True(expected.Loops.Zip(face.Loops).All(loops => loops.First.SequenceEqual(loops.Second)));
        }

        Assert.True(byPlanes.Vertices.Zip(atOnce.Vertices).Max(v => (v.First - v.Second).Length) < Tolerances.Corner);
    }
}
