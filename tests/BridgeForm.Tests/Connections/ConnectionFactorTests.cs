using System.Collections.Immutable;
using BridgeForm.Connections;
using BridgeForm.Quantities;
using CsCheck;

namespace BridgeForm.Tests.Connections;

/// <summary>What stands beside Z: sharing in a row, distances, moisture, local stresses, steel. Inches and pounds.</summary>
public sealed class ConnectionFactorTests
{
    private const double Inch = 0.0254;
    private const double Pound = Units.PoundForce;
    private const double Psi = Pound / (Inch * Inch);

    // NDS 2018 Table 11.3.6C (transcribed): D 1 in, s 4 in, E 1.4e6 psi, steel on both sides.
    [Theory]
    [InlineData(5, 12, 6, 0.62)]
    [InlineData(40, 50, 12, 0.51)]
    public void Group_action(double area, double ratio, int count, double table) => Assert.Equal(
        table,
        GroupAction.Factor(count, 4 * Inch, Inch, 1.4e6 * area * Pound, GroupAction.SteelModulus * area / ratio * Inch * Inch),
        0.005);

    [Fact]
    public void One_fastener_shares_with_none() => Assert.Equal(1, GroupAction.Factor(1, 4 * Inch, Inch, 1e6, 1e6));

    // NDS 2018 Table 12.5.1D (transcribed): 2.5 D up to l/D 2, (5 l + 10 D)/8, 5 D from 6.
    [Theory]
    [InlineData(0.5, 1, 1.25)]
    [InlineData(0.5, 2, 1.875)]
    [InlineData(0.5, 3.5, 2.5)]
    public void Rows_that_press_across_the_grain(double d, double length, double apart) =>
        Assert.Equal(apart, DowelDistances.BetweenRowsAcross(d * Inch, length * Inch) / Inch, 1e-9);

    [Theory]
    [InlineData(1.7, 0)]
    [InlineData(1.75, 0.5)]
    [InlineData(2.8, 0.8)]
    [InlineData(9, 1)]
    public void Short_ends_count_in_part(double had, double factor) =>
        Assert.Equal(factor, DowelDistances.Factor(had, 1.75, 3.5), 1e-9);

    // NDS 2018 Table 11.3.3 (transcribed): 0.7 wet in service; 0.4 for rows that shrink under one plate, not below 1/4 in.
    [Theory]
    [InlineData(1, 0.5, 0.7)]
    [InlineData(2, 0.5, 0.4)]
    [InlineData(2, 0.2, 0.7)]
    public void Wet_wood(int rows, double d, double factor) => Assert.Equal(factor, WetService.Factor(rows, d * Inch));

    // A notch of d/4 in a 2x8, Fv' 175 psi, by the same form (NDS 3.4.3): 535.25 lb.
    [Fact]
    public void Wood_that_is_left_above_a_row() => Assert.Equal(
        535.25, LocalStresses.Hung(175 * Psi, 1.5 * Inch, 7.25 * Inch, 5.4375 * Inch, 36 * Inch) / Pound, 0.01);

    // Five depths and more from the end: 2/3 · 175 · 1.5 · 5.4375.
    [Fact]
    public void Far_from_its_end_wood_does_not_split_so_soon() => Assert.Equal(
        951.56, LocalStresses.Hung(175 * Psi, 1.5 * Inch, 7.25 * Inch, 5.4375 * Inch, 36.25 * Inch) / Pound, 0.01);

    // Two bolts 4 in apart, 3.5 in thick, 271.6 psi, 3.5 in of end: 2 · 271.6 · 3.5 · 3.5.
    [Fact]
    public void A_row_torn_out() => Assert.Equal(
        6654.2, LocalStresses.Row(271.6 * Psi, 3.5 * Inch, 2, 3.5 * Inch) / Pound, 1e-6);

    [Fact]
    public void A_group_is_half_its_outer_rows_and_what_lies_between() =>
        Assert.Equal(500 + 300, LocalStresses.Group(1000, 100, 3), 1e-9);

    // AISC manual, Table 7-1 (from memory): A307 bolts in single shear, 4.14 kip at 5/8 in, 5.97 at 3/4 in.
    [Theory]
    [InlineData(0.625, 4.14)]
    [InlineData(0.75, 5.97)]
    public void Bolts_in_shear(double d, double kips) => Assert.Equal(kips, SteelPlate.Bolt(d * Inch) / Pound / 1000, 0.01);

    // 2.4·0.5·0.25·58/2 = 8.7 kip; torn out with 1/2 in clear 1.2·0.5·0.25·58/2 = 4.35.
    [Fact]
    public void A_bolt_in_its_plate()
    {
        var plate = new SteelPlate(3 * Inch, 0.25 * Inch);
        Assert.Equal(8700, plate.Bearing(0.5 * Inch, 2 * Inch) / Pound, 1e-6);
        Assert.Equal(4350, plate.Bearing(0.5 * Inch, 0.5 * Inch) / Pound, 1e-6);
    }

    // 3 × 1/4 in: whole 36/1.67 · 0.75 = 16.17 kip; net 3 − 9/16 − 1/16 = 2.375 in broad, 58/2 = 29 ksi: 1 kip and 1 in·kip are
    // 1/(2.375·0.25) + 6/(2.375²·0.25) = 5.94 ksi there, 4 ksi of 21.6 in the whole.
    [Fact]
    public void A_plate_pulled_and_bent()
    {
        var plate = new SteelPlate(3 * Inch, 0.25 * Inch);
        Assert.Equal(1, plate.Share(36 / 1.67 * 0.75 * 1000 * Pound, 0, 0.5625 * Inch, 1), 1e-9);
        Assert.Equal(
            ((1 / (2.375 * 0.25)) + (6 / (2.375 * 2.375 * 0.25))) / 29,
            plate.Share(1000 * Pound, 1000 * Pound * Inch, 0.5625 * Inch, 1),
            1e-4);
        Assert.Equal(double.PositiveInfinity, plate.Share(1, 0, 0.5625 * Inch, 5));
    }

    // Two lines 2 in apart of three 1/2 in bolts 2 in from each other, 1 in to the plate's end, 1/4 in thick, holes 9/16 + 1/16: planes of
    // 5 in less 2.5 holes, 3.4375, at 0.6·58 beside 5 in at 0.6·36, and 2 − 0.625 = 1.375 at 58: (2·min(119.6, 108) + 79.75)/4/2 kip.
    // With five bolts 1 in apart the holes leave 2.1875 in, which break before 5 in yield.
    [Fact]
    public void A_block_torn_out_of_a_plate()
    {
        var plate = new SteelPlate(4 * Inch, 0.25 * Inch);
        Assert.Equal(
            ((2 * 0.6 * 36 * 5) + (1.375 * 58)) * 0.25 / 2 * 1000,
            plate.Block(5 * Inch, 3, 2, 2 * Inch, 0.5625 * Inch, 1) / Pound, 1e-6);
        Assert.Equal(
            ((2 * 0.6 * 58 * (5 - (4.5 * 0.625))) + (1.375 * 58)) * 0.25 / 2 * 1000,
            plate.Block(5 * Inch, 5, 2, 2 * Inch, 0.5625 * Inch, 1) / Pound, 1e-6);
    }

    // de from the loaded edge to the line furthest from it: 4x4, 271.6 psi, bolts of 1/2 in on the axis, de 1.75; two lines of 1/4 in,
    // each 1 in from its edge, de 2.5; of 5/16 in, 2.25: 2/3·271.6·3.5·de·(de/3.5)².
    [Theory]
    [InlineData(1.75, 277.3)]
    [InlineData(2.5, 808.3)]
    [InlineData(2.25, 589.3)]
    public void Thin_bolts_near_both_edges_split_less(double effective, double pounds) => Assert.Equal(
        pounds, LocalStresses.Hung(271.6 * Psi, 3.5 * Inch, 3.5 * Inch, effective * Inch, 2 * Inch) / Pound, 0.1);

    // Two bolts 4 in apart, up; 100 lbf outward 6 in above their middle: 50 ± 100·6/4.
    [Fact]
    public void A_push_above_a_row()
    {
        var shares = BoltGroup.Share([new(0, -2), new(0, 2)], new(100, 0), new(0, 6));
        Assert.Equal(50 - 150, shares[0].Z, 1e-9);
        Assert.Equal(50 + 150, shares[1].Z, 1e-9);
    }

    [Fact]
    public void Shares_are_in_balance_with_the_force() => Gen.Select(
        Gen.Select(Gen.Double[-1, 1], Gen.Double[-1, 1]).Array[2, 6], Gen.Double[-5, 5], Gen.Double[-5, 5], Gen.Double[-1, 1],
        Gen.Double[-1, 1]).Where((places, _, _, _, _) => places.Max(p => p.Item1) - places.Min(p => p.Item1) > 0.1).Sample(
        (places, z, n, atZ, atN) =>
        {
            ImmutableArray<PlanePoint> points = [.. places.Select(p => new PlanePoint(p.Item1, p.Item2))];
            var (force, at) = (new PlaneForce(z, n), new PlanePoint(atZ, atN));
            var shares = BoltGroup.Share(points, force, at);
            var zero = new PlanePoint(0, 0);
            Assert.Equal(z, shares.Sum(s => s.Z), 1e-9);
            Assert.Equal(n, shares.Sum(s => s.N), 1e-9);
            Assert.Equal(
                BoltGroup.Moment(zero, force, at), points.Zip(shares, (p, s) => BoltGroup.Moment(zero, s, p)).Sum(), 1e-6);
        });

    // Grip 4 in, washer 0.109, nut 7/16, 1/8 out: 4.67, so 5 in; at 6 in of grip 6.67, by whole inches 7.
    [Fact]
    public void Bolts_are_bought_by_the_next_length()
    {
        var half = BoltSizes.Find(0.5 * Inch)!;
        Assert.Equal(5, BoltSizes.Length(half, 4 * Inch) / Inch, 1e-9);
        Assert.Equal(7, BoltSizes.Length(half, 6 * Inch) / Inch, 1e-9);
        Assert.Equal(0.12, BoltSizes.Length(BoltSizes.Find(0.012)!, 0.1), 1e-9);
        Assert.Null(BoltSizes.Find(0.45 * Inch));
        Assert.Equal("1/2", BoltSizes.Nearest(0.45 * Inch, UnitSystem.Imperial).Size);
    }

    // Grip 4 in of 3-1/2 in wood: thread of 2 D + 1/4 in begins 3.75 in up a bolt of 4-1/2 in, in the nut's plate; of 5 in at 4.25, past
    // it, where four washers of 0.065 in bring the nut to it. 95 mm wood, 8 mm plates, grip 111: M8 of 140 mm has 28 of thread.
    [Theory]
    [InlineData(0.25, 3.5, 0.25, 5, 4, 4.25)]
    [InlineData(0.3125, 3.5, 0.25, 5, 2, 4.125)]
    [InlineData(0.375, 3.5, 0.25, 5, 1, 4)]
    [InlineData(8 / 25.4, 95 / 25.4, 8 / 25.4, 140 / 25.4, 1, 112 / 25.4)]
    [InlineData(10 / 25.4, 95 / 25.4, 8 / 25.4, 150 / 25.4, 4, 118 / 25.4)]
    public void A_shank_reaches_through_the_nuts_plate(double d, double wood, double plate, double length, int washers, double shank)
    {
        var fit = BoltSizes.Fit(BoltSizes.Find(d * Inch)!, wood * Inch, plate * Inch);
        Assert.Equal(length, fit.Length / Inch, 1e-6);
        Assert.Equal(washers, fit.Washers);
        Assert.Equal(shank, fit.Shank / Inch, 1e-6);
        Assert.Equal(d, fit.Counts / Inch, 1e-6);
    }

    // Grip 6-1/2 in: 7 in has its thread from 6 in on, 8 in from 7 in, half an inch past what four washers fill.
    [Fact]
    public void Where_none_does_the_root_counts()
    {
        var fit = BoltSizes.Fit(BoltSizes.Find(0.25 * Inch)!, 6 * Inch, 0.25 * Inch);
        Assert.Equal(7, fit.Length / Inch, 1e-6);
        Assert.Equal(0.189, fit.Counts / Inch, 1e-6);
    }

    [Fact]
    public void Outlines_overlap_only_where_they_share_wood()
    {
        var box = PlaneOutline.Box(0, 1, 0, 1);
        Assert.True(PlaneOutline.Overlap(box, PlaneOutline.Box(0.9, 2, 0.9, 2), 1e-9));
        Assert.False(PlaneOutline.Overlap(box, PlaneOutline.Box(1, 2, 0, 1), 1e-9));

        // A diamond beside the corner: boxes around both would overlap.
        ImmutableArray<PlanePoint> diamond = [new(1.6, 0.7), new(2.2, 1.3), new(1.6, 1.9), new(1.0, 1.3)];
        Assert.False(PlaneOutline.Overlap(box, diamond, 1e-9));
        Assert.Equal(4, PlaneOutline.Above(PlaneOutline.Box(0, 1, -1, 1), 0).Length);
        Assert.Equal(5, PlaneOutline.ToBox(new(4, 5), 0, 1, 0, 1));
    }
}
