using BridgeForm.Output.Drawing;
using BridgeForm.Output.DrawingSet;
using BridgeForm.Pieces;
using BridgeForm.Solids;
using BridgeForm.Tests.Output.Samples;
using BridgeForm.Tests.Samples;

namespace BridgeForm.Tests.Output.DrawingSet;

public sealed class DrawnWayTests
{
    private const double RoundOff = 1e-9;

    // 1 m long, 100 mm wide, 40 mm thick, square.
    private static readonly Piece s_stick = SamplePieces.Post with
    {
        Shape = new CutStock(0.1, 0.04, SamplePieces.Square(0, -1), SamplePieces.Square(1, 1)),
        BlankLength = 1,
    };

    /// <summary>
    /// At 1 : 10 the mark's 3 mm are 30 mm of wood: from 15 mm behind the end to 45 mm, on the edge at 50 mm, 10.5 mm high. Seen from +Z
    /// the half on the face that is up is filled, and edge 1 is seen on edge.
    /// </summary>
    [Fact]
    public void The_half_that_faces_the_reader_is_filled_and_points_to_the_far_end()
    {
        var area = Assert.IsType<SheetArea>(Assert.Single(Marks(Placement.Identity)));
        AssertSame([(15, 50), (45, 50), (15, 39.5)], area.Corners);
    }

    /// <summary>End for end with the same face up: half a turn about Z, then everything is where its opposite was.</summary>
    [Fact]
    public void A_turned_stick_has_it_the_other_way()
    {
        var turned = new Placement(new Vector3d(1, 0, 0), -Vector3d.UnitX, -Vector3d.UnitY, Vector3d.UnitZ);
        AssertSame([(985, -50), (955, -50), (985, -39.5)], Assert.IsType<SheetArea>(Assert.Single(Marks(turned))).Corners);
    }

    /// <summary>Rolled over, the face that was up looks away: an outline, no area.</summary>
    [Fact]
    public void What_is_on_the_far_side_is_an_outline()
    {
        var rolled = new Placement(Vector3d.Zero, Vector3d.UnitX, -Vector3d.UnitY, -Vector3d.UnitZ);
        var outline = Assert.IsType<SheetPolyline>(Assert.Single(Marks(rolled)));
        AssertSame([(15, -50), (45, -50), (15, -39.5)], outline.Vertices.Select(v => new SheetPoint(v.X, v.Y)));
        Assert.True(outline.Closed);
    }

    /// <summary>A quarter turn about X brings edge 1 to the reader: the other half, along the same arris, 10.5 mm high too.</summary>
    [Fact]
    public void Edge_1_shows_the_other_half()
    {
        var onEdge = new Placement(Vector3d.Zero, Vector3d.UnitX, Vector3d.UnitZ, -Vector3d.UnitY);
        AssertSame([(15, -20), (45, -20), (15, -9.5)], Assert.IsType<SheetArea>(Assert.Single(Marks(onEdge))).Corners);
    }

    /// <summary>The frames' and bays' sheets of the demo: a base, two posts, two braces a frame, boards, rails and a cap a bay.</summary>
    [Fact]
    public void Views_of_frames_and_bays_have_them()
    {
        var marks = DrawingSheets.Draw(MadeSample.Of("alder-dell").Model).Pages
            .Select(p => p.Content.Entities.OfType<SheetArea>().Count(a => a is { Shade: > 0.99, Corners.Length: 3 }))
            .Where(n => n > 0).ToList();
        Assert.True(marks.Count >= 3 && marks.Sum() >= 20, string.Join(' ', marks));
    }

    private static List<SheetEntity> Marks(Placement place) =>
        [.. DrawnWay.Of(s_stick, place, View.Side, p => new SheetPoint(p.X, p.Y), ratio: 10)];

    private static void AssertSame((double X, double Y)[] millimetres, IEnumerable<SheetPoint> seen) => Assert.All(
        seen.Zip(millimetres), p =>
        {
            Assert.Equal(p.Second.X / 1000, p.First.X, RoundOff);
            Assert.Equal(p.Second.Y / 1000, p.First.Y, RoundOff);
        });
}
