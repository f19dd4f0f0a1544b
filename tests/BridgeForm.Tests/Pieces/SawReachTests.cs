using BridgeForm.Pieces;
using BridgeForm.Project;
using BridgeForm.Solids;

namespace BridgeForm.Tests.Pieces;

public class SawReachTests
{
    private static readonly ShopParameters Shop = Bridges.Read(Bridges.Garden).Shop with
    {
        MitreLimit = Bridges.Radians(50),
        BevelLimit = Bridges.Radians(45),
    };

    // Printed table of a compound mitre saw's handbook: side of a box of n sides that leans s from horizontal.
    [Theory]
    [InlineData(45, 4, 35.26, 30.00)]
    [InlineData(45, 5, 27.19, 24.56)]
    [InlineData(45, 6, 22.21, 20.70)]
    [InlineData(45, 8, 16.32, 15.70)]
    [InlineData(30, 4, 40.89, 20.70)]
    [InlineData(30, 6, 26.57, 14.48)]
    [InlineData(30, 8, 19.73, 11.03)]
    [InlineData(15, 4, 44.01, 10.55)]
    [InlineData(0, 4, 45, 0)]
    [InlineData(0, 6, 30, 0)]
    public void Compound_mitre_table(double lean, int sides, double mitre, double bevel)
    {
        var half = Math.PI / sides;
        var s = Bridges.Radians(lean);
        var side = Placement.FromLengthAndThickness(
            Vector3d.Zero, Vector3d.UnitX, new Vector3d(0, Math.Cos(s), Math.Sin(s)));
        var joint = new Plane(new Vector3d(Math.Cos(half), 0, Math.Sin(half)), 0);
        var cut = SawReach.Measure(side.ToLocal(joint), Shop);
        Assert.Equal(mitre, Math.Abs(Bridges.Degrees(cut.Mitre)), 0.006);
        Assert.Equal(bevel, Math.Abs(Bridges.Degrees(cut.Bevel)), 0.006);
    }

    // Crown moulding at spring angle 38° in a right-angled corner: a moulding maker's published settings.
    [Fact]
    public void Crown_moulding_settings()
    {
        var spring = Bridges.Radians(38);
        var piece = Placement.FromLengthAndThickness(
            Vector3d.Zero, Vector3d.UnitX, new Vector3d(0, Math.Sin(spring), Math.Cos(spring)));
        var corner = new Plane(new Vector3d(Math.Cos(Math.PI / 4), 0, Math.Sin(Math.PI / 4)), 0);
        var cut = SawReach.Measure(piece.ToLocal(corner), Shop);
        Assert.Equal(31.62, Math.Abs(Bridges.Degrees(cut.Mitre)), 0.006);
        Assert.Equal(33.86, Math.Abs(Bridges.Degrees(cut.Bevel)), 0.006);
    }

    // Common practice, no source: a 70° cut is made with the saw at 50° and a 20° wedge; 45° + 10° = 55° (woodworkers' advice).
    [Theory]
    [InlineData(70, 50, 20)]
    [InlineData(55, 45, 10)]
    [InlineData(-70, 50, 20)]
    [InlineData(50, 50, 0)]
    [InlineData(30, 50, 0)]
    public void Wedge_makes_up_for_what_the_saw_lacks(double mitre, double limit, double wedge)
    {
        var angle = Bridges.Radians(mitre);
        var cut = SawReach.Measure(
            new Plane(new Vector3d(Math.Cos(angle), Math.Sin(angle), 0), 0), Shop with { MitreLimit = Bridges.Radians(limit) });
        Assert.Equal(wedge, Bridges.Degrees(cut.Wedge), 1e-9);
        Assert.Equal(Math.Abs(mitre) <= limit, cut.InReach);
    }

    [Theory]
    [InlineData(12, 20)]
    [InlineData(-30, 10)]
    [InlineData(44, -35)]
    public void Edge_line_follows_from_mitre_and_bevel(double mitre, double bevel)
    {
        double a = Bridges.Radians(mitre), b = Bridges.Radians(bevel);
        var normal = new Vector3d(Math.Cos(b) * Math.Cos(a), Math.Cos(b) * Math.Sin(a), Math.Sin(b));
        foreach (var end in (Plane[])[new Plane(normal, 1), new Plane(-normal, 1)])
        {
            var cut = SawReach.Measure(end, Shop);
            Assert.Equal(mitre, Bridges.Degrees(cut.Mitre), 1e-9);
            Assert.Equal(bevel, Bridges.Degrees(cut.Bevel), 1e-9);
            Assert.Equal(Math.Tan(b) / Math.Cos(a), Math.Tan(cut.Edge), 1e-12);
        }
    }
}
