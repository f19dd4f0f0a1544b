using BridgeForm.Output.Drawing;

namespace BridgeForm.Tests.Output.Drawing;

public sealed class SheetBoxTests
{
    private const int Digits = 12;

    [Fact]
    public void Half_circle_as_a_bulge_reaches_to_its_right()
    {
        // A bulge of 1 is a half circle to the left of travel bent, so its belly lies to the right (DXF reference, from memory).
        var box = EntityBox.Of(new SheetPolyline("0", [new(0, 0, 1), new(2, 0)], Closed: false));
        Same(new SheetBox(0, -1, 2, 0), box);
    }

    [Fact]
    public void Quarter_circle_reaches_no_further_than_its_ends()
    {
        var box = EntityBox.Of(new SheetPolyline("0", [new(1, 0, Math.Tan(Math.PI / 8)), new(0, 1)], Closed: false));
        Same(new SheetBox(0, 0, 1, 1), box);
    }

    [Fact]
    public void Arc_over_the_left_end_reaches_a_full_radius_there()
    {
        var box = EntityBox.Of(new SheetArc("0", new SheetPoint(0, 0), 2, Math.PI / 2, 3 * Math.PI / 2));
        Same(new SheetBox(-2, -2, 0, 2), box);
    }

    [Fact]
    public void Dimension_keeps_its_line_where_it_was_put()
    {
        var parts = DimensionLines.Draw(new SheetDimension("DIM", new(0, 0), new(3, 0), new(1, -0.5), 0.1, "3 m"));
        Assert.Contains(parts.OfType<SheetLine>(), l => Near(l.From, 0, -0.5) && Near(l.To, 3, -0.5));
        Assert.Equal("3 m", Assert.Single(parts.OfType<SheetText>()).Text);
    }

    private static bool Near(SheetPoint p, double x, double y) => Math.Abs(p.X - x) + Math.Abs(p.Y - y) < 1e-12;

    private static void Same(SheetBox expected, SheetBox box)
    {
        Assert.Equal(expected.MinX, box.MinX, Digits);
        Assert.Equal(expected.MinY, box.MinY, Digits);
        Assert.Equal(expected.MaxX, box.MaxX, Digits);
        Assert.Equal(expected.MaxY, box.MaxY, Digits);
    }
}
