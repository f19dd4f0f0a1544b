using BridgeForm.Output.Drawing;
using BridgeForm.Output.ShopSheets;
using BridgeForm.Pieces;
using BridgeForm.Project;
using BridgeForm.Quantities;
using BridgeForm.Roles;
using BridgeForm.Solids;
using BridgeForm.Tests.Output.Samples;

namespace BridgeForm.Tests.Pieces;

/// <summary>Strips as the sheet has them sawn, against the packers' own solids and numbers worked out by hand.</summary>
public sealed class StripPlanTests
{
    private static readonly Lazy<BridgeModel> s_inclined = new(() => Bridges.Build(Bridges.Inclined + "\n" + Tools));

    private const string Tools = "shop: { tools: [mitre-saw, table-saw, band-saw] }";

    private static ShopParameters Shop { get; } =
        Bridges.Read(Bridges.Garden + "\nshop: { tools: [table-saw], saw: { kerf: 1/8 in } }").Shop;

    // The strip is what the two rips leave of the stock: between its outer face and a blade that leans from the table on, kerf and all.
    [Fact]
    public void Strips_as_told_are_the_packers_within_the_joints_gap()
    {
        var model = s_inclined.Value;
        var setups = StripPlan.List(model.Pieces, model.Parameters.Shop);
        Assert.Equal(model.Pieces.Where(p => p.Role == Role.Packer).Select(p => p.Mark).Order(), setups.SelectMany(s => s.Pieces)
            .Select(p => p.Piece.Mark).Order());
        foreach (var setup in setups)
        {
            Assert.InRange(setup.Gap, 0, model.Parameters.Shop.JointGap + 1e-12);
            foreach (var (piece, _) in setup.Pieces)
            {
                var stick = piece.Shape;
                double Left(double up) => stick.Thickness - setup.TiltedFence
                    - (setup.Kerf / Math.Cos(setup.Tilt)) - (up * Math.Tan(setup.Tilt));
                var (min, max) = piece.Solid.Bounds;

                // Its thick edge stands on the table. Heights over its lower face, measured on the solid.
                var thickAtHigh = HeightAt(piece.Solid, max.Y) > HeightAt(piece.Solid, min.Y);
                var off = new[] { max.Y, min.Y }.Max(y => Math.Abs(
                    HeightAt(piece.Solid, y) - Left(thickAtHigh ? max.Y - y : y - min.Y)));
                Assert.InRange(off, 0, setup.Gap + 1e-9);
            }
        }

        Assert.Contains(setups, s => s.Pieces.Length > 1);
        Assert.Contains(setups, s => s.Way == RipWay.TableSaw);
        Assert.Contains(setups, s => s.Way == RipWay.BandSaw);
    }

    // atan(18 / 60) = 16.699°, so 16.7° on the gauge: 60 · tan 16.7° = 18.0008, half of the 0.0008 at either edge. From a stick of
    // 38.1 × 88.9 mm, kerf 3.175: fence 38.1 − 20.0004 − 3.175 / cos 16.7° = 14.785 mm; upright 88.9 − 60 − 3.175 = 25.725 mm.
    [Fact]
    public void One_taper_by_hand()
    {
        var setup = Assert.Single(StripPlan.List([Packer("W1", 0.020, 0.002, 0.060)], Shop));
        Assert.Equal(16.7, Bridges.Degrees(setup.Tilt), 9);
        Assert.Equal(0.0200004, setup.Thick, 7);
        Assert.Equal(0.0000004, setup.Gap, 7);
        Assert.Equal(0.014785, setup.TiltedFence, 6);
        Assert.True(setup.NeedsCarrier);
        Assert.True(setup.FromWide(setup.Pieces[0].Taper));
        Assert.Equal(0.025725, setup.UprightFence(setup.Pieces[0].Taper)!.Value, 9);
        Assert.Equal(RipWay.TableSaw, setup.Way);
    }

    // At one width, edges of 20 and 20.8 mm differ by 0.8 in thickness: one set-up half way between is off by 0.4 of a joint gap of
    // 1/32 in = 0.79 mm. At 22 mm it would be off by 1 mm.
    [Theory]
    [InlineData(0.0208, 1)]
    [InlineData(0.0220, 2)]
    public void Tapers_share_a_set_up_within_the_gap(double other, int setups)
    {
        var list = StripPlan.List([Packer("W1", 0.020, 0.002, 0.060), Packer("W2", other, other - 0.018, 0.060)], Shop);
        Assert.Equal(setups, list.Length);
        Assert.Equal(setups == 1 ? 0.0004 : 0, list[0].Gap, 5);
    }

    [Theory]
    [InlineData(0.060, ShopTools.TableSaw, RipWay.TableSaw)]
    [InlineData(0.080, ShopTools.TableSaw, RipWay.Hand)]
    [InlineData(0.080, ShopTools.TableSaw | ShopTools.BandSaw, RipWay.BandSaw)]
    [InlineData(0.060, ShopTools.MitreSaw | ShopTools.CircularSaw, RipWay.Hand)]
    public void A_saw_rips_what_it_reaches(double width, ShopTools tools, RipWay way) => Assert.Equal(
        way, Assert.Single(StripPlan.List([Packer("W1", 0.020, 0.002, width)], Shop with { Tools = tools })).Way);

    // No tool at hand: no fence is named, in the picture no more than in the table. One is one shim, and a shim under a cap has a name
    // of its own.
    [Fact]
    public void What_no_tool_rips_has_no_fence()
    {
        var hand = Assert.Single(StripPlan.List([Packer("W1", 0.020, 0.002, 0.080)], Shop));
        var sawn = Assert.Single(StripPlan.List([Packer("W1", 0.020, 0.002, 0.060)], Shop));
        bool NamesFence(StripSetup setup) => StripPicture.Draw(setup, new QuantityText(UnitSystem.Imperial)).OfType<SheetText>()
            .Any(t => t.Text.Contains("fence", StringComparison.Ordinal));
        Assert.True(NamesFence(sawn));
        Assert.False(NamesFence(hand));
        Assert.Equal("1 tapered shim", StripSheet.Counted(hand));
        var both = hand with
        {
            Pieces =
            [
                hand.Pieces[0], hand.Pieces[0], hand.Pieces[0] with { Piece = hand.Pieces[0].Piece with { Role = Role.Shim } },
            ],
        };
        Assert.Equal("2 tapered shims, 1 cap shim", StripSheet.Counted(both));
    }

    // Its lower face is the stock's, its thick edge the stock's edge at +Y.
    private static Piece Packer(string mark, double thick, double thin, double width)
    {
        var (wide, deep) = (SamplePieces.Wide, SamplePieces.Thin);
        Vector3d high = new(0, wide / 2, thick - (deep / 2)), low = new(0, (wide / 2) - width, thin - (deep / 2));
        var along = low - high;
        var normal = new Vector3d(0, along.Z, -along.Y);
        var shape = new CutStock(wide, deep, SamplePieces.Square(0, -1), SamplePieces.Square(0.9, 1))
        {
            Rips = [Plane.Through(high, (1 / normal.Length) * normal), Plane.Through(low, -Vector3d.UnitY)],
        };
        return SamplePieces.Post with { Mark = mark, Role = Role.Packer, Shape = shape, Solid = shape.ToSolid().OrNull! };
    }

    private static double HeightAt(Solid solid, double y)
    {
        var there = solid.Vertices.Where(v => Math.Abs(v.Y - y) < 1e-9).ToList();
        return there.Max(v => v.Z) - there.Min(v => v.Z);
    }
}
