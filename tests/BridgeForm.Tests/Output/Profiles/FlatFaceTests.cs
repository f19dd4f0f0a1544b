using BridgeForm.Output.Drawing;
using BridgeForm.Output.Profiles;

namespace BridgeForm.Tests.Output.Profiles;

public sealed class FlatFaceTests
{
    // A square on its point with a corner too many in the middle of each side: steep, flat and slanted sides lose theirs.
    [Theory]
    [InlineData(0)]
    [InlineData(20)]
    [InlineData(45)]
    [InlineData(70)]
    public void Corners_on_straight_lines_are_left_out(double degrees)
    {
        var (sin, cos) = Math.SinCos(degrees * Math.PI / 180);
        SheetPoint At(double x, double y) => new((x * cos) - (y * sin), (x * sin) + (y * cos));
        var left = FlatFace.Simplified([At(0, 0), At(1, 0), At(2, 0), At(2, 1), At(2, 2), At(1, 2), At(0, 2), At(0, 1)]);
        Assert.Equal([At(0, 0), At(2, 0), At(2, 2), At(0, 2)], left.ToArray());
    }
}
