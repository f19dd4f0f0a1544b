using BridgeForm.Output.Drawing;
using BridgeForm.Output.Templates;
using BridgeForm.Pieces;
using BridgeForm.Solids;

namespace BridgeForm.Tests.Output.Templates;

public sealed class WedgeBlockTests
{
    private const double Hair = 1e-9;

    /// <summary>Rise over run of the taper is the tangent of the angle that the saw lacks.</summary>
    [Theory]
    [InlineData(0.6)]
    [InlineData(5)]
    [InlineData(12.5)]
    [InlineData(20)]
    [InlineData(27.3)]
    [InlineData(-20)]
    public void Taper_has_the_wedges_angle(double degrees)
    {
        var (block, cut) = Made(degrees);
        var ring = Assert.Single(block.On<SheetPolyline>(PageLayers.Cut)).Vertices;
        var (fence, slope) = (ring.Take(2).ToList(), ring.Skip(2).OrderBy(v => v.X).ToList());
        Assert.Equal(fence[0].Y, fence[1].Y, Hair);
        Assert.Equal(fence[1].X - fence[0].X, slope[1].X - slope[0].X, Hair);
        Assert.Equal(Math.Tan(Bridges.Radians(Math.Abs(degrees))), (slope[1].Y - slope[0].Y) / (slope[1].X - slope[0].X), Hair);
        Assert.True(slope[0].Y - fence[0].Y >= 0.006, "the thin end would crush");
        Assert.Equal(Bridges.Radians(Math.Abs(degrees)), cut.Wedge, Hair);
    }

    [Theory]
    [InlineData(5, "5.0°")]
    [InlineData(12.5, "12.5°")]
    [InlineData(20, "20.0°")]
    [InlineData(-20, "20.0°")]
    public void Figures_say_what_is_drawn(double degrees, string angle)
    {
        var (block, _) = Made(degrees);
        var limit = Bridges.Degrees(TestPieces.Garden.Parameters.Shop.MitreLimit);
        Assert.StartsWith("Wedge of " + angle, block.Title, StringComparison.Ordinal);
        Assert.Contains(
            FormattableString.Invariant($"Saw set to {limit:F1}°, wedge {angle}: together the miter of {limit + Math.Abs(degrees):F1}°"),
            block.Notes[0],
            StringComparison.Ordinal);
        var named = Assert.Single(block.Entities.OfType<SheetText>(), t => t.Text.EndsWith('°'));
        Assert.Equal(angle, named.Text);
        var arc = Assert.Single(block.Entities.OfType<SheetArc>());
        Assert.Equal(Bridges.Radians(Math.Abs(degrees)), arc.End - arc.Start, Hair);
        var slope = block.On<SheetPolyline>(PageLayers.Cut).Single().Vertices.Skip(2).MinBy(v => v.X);
        Assert.Equal((slope.X, slope.Y), (arc.Center.X, arc.Center.Y));
        Assert.All(block.Entities.OfType<SheetDimension>(), d => Assert.Equal(
            FormattableString.Invariant(
                $"{Math.Sqrt(Math.Pow(d.To.X - d.From.X, 2) + Math.Pow(d.To.Y - d.From.Y, 2)) / 0.0254:F2} in"), d.Text));
        Assert.Equal(3, block.Entities.OfType<SheetDimension>().Count());
        Assert.All(WedgeBlock.Cautions(TestPieces.Units.System), c => Assert.Contains(c, block.Notes));
    }

    // The block sawn from its printed figures alone: the angle that they make, and by how much a 3-1/2 in brace then opens,
    // W · |Δ tan m|, of the 0.5 mm that an end that bears may.
    [Theory]
    [InlineData(0.6)]
    [InlineData(5)]
    [InlineData(7.3)]
    [InlineData(10)]
    [InlineData(12)]
    public void Its_figures_alone_keep_the_joint_within_its_gap(double degrees)
    {
        var figures = Made(degrees).Block.Entities.OfType<SheetDimension>().Select(
            d => double.Parse(d.Text[..^3], System.Globalization.CultureInfo.InvariantCulture)).ToList();
        var angle = Math.Atan((figures[2] - figures[1]) / figures[0]);
        var limit = TestPieces.Garden.Parameters.Shop.MitreLimit;
        Assert.InRange(88.9 * Math.Abs(Math.Tan(limit + angle) - Math.Tan(limit + Bridges.Radians(degrees))), 0, 0.5);
    }

    // One figure for one rule: 6 in on every sheet of an inch file, 150 mm on every one of a metric.
    [Theory]
    [InlineData(BridgeForm.Quantities.UnitSystem.Imperial, "6 in", "12 in")]
    [InlineData(BridgeForm.Quantities.UnitSystem.Metric, "150 mm", "300 mm")]
    public void Cautions_say_the_figures_of_the_files_units(BridgeForm.Quantities.UnitSystem units, string clear, string least)
    {
        var words = string.Join(' ', WedgeBlock.Cautions(units));
        Assert.Contains(
            $"Hands {clear} clear of the blade, clamps {clear} clear of its path, square to it.", words, StringComparison.Ordinal);
        Assert.Contains($"pieces under {least} in pairs", words, StringComparison.Ordinal);
    }

    // 70 mm of brace, and a circular saw that goes 60 mm deep.
    [Fact]
    public void A_template_says_when_both_faces_are_marked()
    {
        string Notes(double thick)
        {
            var stick = new CutStock(0.120, thick, new Plane(-Vector3d.UnitX, 0), Plane.Through(
                new Vector3d(1, 0, 0), new Vector3d(Math.Cos(Bridges.Radians(70)), Math.Sin(Bridges.Radians(70)), 0)));
            var piece = TestPieces.Of(stick) with { Far = SawReach.Measure(stick, near: false, TestPieces.Garden.Parameters.Shop) };
            return string.Join(' ', EndFace.Draw(new CutUse([piece]), PieceEnd.Far, TestPieces.Units).Notes);
        }

        Assert.Contains("mark the other face from there: the saw goes 2-3/8 in deep", Notes(0.070), StringComparison.Ordinal);
        Assert.DoesNotContain("other face from there", Notes(0.038), StringComparison.Ordinal);
    }

    /// <summary>The block for a mitre that many degrees beyond the saw's limit, to the side of its sign.</summary>
    private static (TemplateBlock Block, EndCut Cut) Made(double degrees)
    {
        var mitre = Math.Sign(degrees) * (TestPieces.Garden.Parameters.Shop.MitreLimit + Bridges.Radians(Math.Abs(degrees)));
        var piece = TestPieces.Of(new CutStock(
            0.089,
            0.038,
            new Plane(-Vector3d.UnitX, 0),
            Plane.Through(new Vector3d(2, 0, 0), new Vector3d(Math.Cos(mitre), Math.Sin(mitre), 0))));
        var cut = piece.Far with { Wedge = Math.Abs(mitre) - TestPieces.Garden.Parameters.Shop.MitreLimit };
        var block = TaperBlock.For(
            0.089, 0.038, Math.Abs(mitre), 0, cut.Wedge, thinAtBlade: true, TestPieces.Garden.Parameters.Shop.Hold);
        return (WedgeBlock.Draw(new CutUse([piece]), cut, block, TestPieces.Units), cut);
    }
}
