using BridgeForm.Frames;
using BridgeForm.Solids;

namespace BridgeForm.Tests.Frames;

public sealed class MemberVolumeTests
{
    // 100 × 50 mm, 1 m long: 0.005 m³. A taper that takes everything away leaves no solid, but not a member without weight.
    [Fact]
    public void Cuts_that_leave_no_solid_still_weigh()
    {
        var stick = new CutStock(0.1, 0.05, new Plane(-Vector3d.UnitX, 0), new Plane(Vector3d.UnitX, 1))
        {
            Rips = [new Plane(Vector3d.UnitY, -1)],
        };
        Assert.Null(StockSolid.Build(stick).OrNull);
        Assert.Equal(0.005, MemberVolume.Of(stick, drilled: false), 1e-12);
    }
}
