using BridgeForm.Loads;
using BridgeForm.Solids;

namespace BridgeForm.Tests.Loads;

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
        Assert.Equal(0.005, MemberVolume.Measure(stick, drilled: false), 1e-12);
    }

    // 100 × 50 mm, 1 m long: 0.005 m³. Blind holes in whole wood take their cylinders away.
    [Fact]
    public void Holes_in_whole_wood_weigh_as_cylinders()
    {
        var stick = Stick(new Hole(StockFace.PlusZ, 0.3, -0.0003, 0.0108, 0.0061), new Hole(StockFace.MinusY, 0.6, 0, 0.02, null));
        Assert.True(LooseHoles.Any(stick));
        const double Cylinders = (Math.PI / 4 * 0.0108 * 0.0108 * 0.0061) + (Math.PI / 4 * 0.02 * 0.02 * 0.1);
        Assert.Equal(0.005 - Cylinders, MemberVolume.Measure(stick, drilled: true), 1e-12);
        Assert.Equal(StockSolid.Build(stick).OrNull!.Volume, MemberVolume.Measure(stick, drilled: true), 1e-12);
    }

    // Two cylinders of one diameter whose axes cross at right angles have 2/3 d³ in common (Archimedes, The Method).
    [Fact]
    public void Holes_that_cross_are_taken_out_once()
    {
        const double D = 0.02;
        var stick = Stick(new Hole(StockFace.PlusZ, 0.3, 0, D, null), new Hole(StockFace.MinusY, 0.3, 0, D, null));
        const double Expected = 0.005 - (Math.PI / 4 * D * D * (0.1 + 0.05)) + (2.0 / 3 * D * D * D);
        Assert.Equal(Expected, MemberVolume.Measure(stick, drilled: true), 0.01 * D * D * D);
    }

    // Over an end only half of the cylinder is wood; through a channel 40 mm deep only 60 mm of it are.
    [Fact]
    public void Holes_over_an_end_or_through_a_channel_take_only_what_is_there()
    {
        const double D = 0.02;
        var over = Stick(new Hole(StockFace.PlusZ, 0, 0, D, null));
        Assert.Equal(0.005 - (Math.PI / 8 * D * D * 0.05), MemberVolume.Measure(over, drilled: true), 1e-10);
        var through =
            Stick(new Hole(StockFace.PlusY, 0.5, 0, D, null)) with { Channels = [new Channel(StockFace.MinusY, 0.5, 0.03, 0.04, 0)] };
        Assert.Equal(0.005 - (0.03 * 0.04 * 0.05) - (Math.PI / 4 * D * D * 0.06), MemberVolume.Measure(through, drilled: true), 1e-12);
    }

    [Fact]
    public void Of_sticks_by_lot_it_is_the_solids()
    {
        var lot = new Random(4711);
        var loose = 0;
        for (var i = 0; i < 200; i++)
        {
            var stick = new CutStock(
                0.1,
                0.05,
                Plane.Through(Vector3d.UnitX * 0, new Vector3d(-1, Between(lot, -0.5, 0.5), Between(lot, -0.5, 0.5))),
                Plane.Through(Vector3d.UnitX * 0.4, new Vector3d(1, Between(lot, -0.5, 0.5), Between(lot, -0.5, 0.5))))
            {
                Channels = [new Channel(StockFace.MinusY, 0.2, 0.03, 0.04, 0)],
                Holes = [Drilled(lot), Drilled(lot)],
            };
            loose += LooseHoles.Any(stick) ? 1 : 0;
            Assert.Equal(StockSolid.Build(stick).OrNull!.Volume, MemberVolume.Measure(stick, drilled: true), 1e-12);
        }

        Assert.InRange(loose, 20, 180);
    }

    // A hole of 12 mm through 50 mm of wood with a seat of 20 mm, 6 mm deep, around its mouth; 0.3 m off a channel that another
    // hole runs into: each place is cut by itself.
    [Fact]
    public void Places_where_cuts_meet_are_summed()
    {
        const double A = Math.PI / 4 * 0.012 * 0.012, B = Math.PI / 4 * 0.02 * 0.02;
        var stick = Stick(
            new Hole(StockFace.PlusZ, 0.3, 0.01, 0.012, null), new Hole(StockFace.PlusZ, 0.3, 0.01, 0.02, 0.006),
            new Hole(StockFace.PlusY, 0.6, 0, 0.02, null), new Hole(StockFace.MinusY, 0.8, 0, 0.02, null))
            with
        { Channels = [new Channel(StockFace.MinusY, 0.6, 0.03, 0.04, 0)] };
        Assert.Equal(
            0.005 - (A * 0.05) - ((B - A) * 0.006) - (0.03 * 0.04 * 0.05) - (B * 0.06) - (B * 0.1),
            MemberVolume.Measure(stick, drilled: true),
            1e-9);
        Assert.Equal(StockSolid.Build(stick).OrNull!.Volume, MemberVolume.Measure(stick, drilled: true), 1e-12);
        Assert.Equal(MeetingCuts.Volume(stick)!.Value, MemberVolume.Measure(stick, drilled: true), 1e-12);
    }

    private static CutStock Stick(params Hole[] holes) =>
        new(0.1, 0.05, new Plane(-Vector3d.UnitX, 0), new Plane(Vector3d.UnitX, 1)) { Holes = [.. holes] };

    private static Hole Drilled(Random lot) => new(
        (StockFace)lot.Next(4), Between(lot, 0.01, 0.39), Between(lot, -0.02, 0.02), Between(lot, 0.004, 0.02),
        lot.Next(2) == 0 ? null : Between(lot, 0.005, 0.04));

    private static double Between(Random lot, double low, double high) => low + (lot.NextDouble() * (high - low));
}
