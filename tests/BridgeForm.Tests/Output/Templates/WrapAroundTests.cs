using BridgeForm.Output.Templates;
using BridgeForm.Solids;
using CsCheck;

namespace BridgeForm.Tests.Output.Templates;

public sealed class WrapAroundTests
{
    /// <summary>A micron: the accuracy asked for, metres.</summary>
    private const double Micron = 1e-6;

    /// <summary>Sections from 1x2 to 8x8, planes of up to 75° mitre and 60° bevel.</summary>
    private static readonly Gen<(UnrolledStock Stock, Plane Plane)> Cuts =
        from width in Gen.Double[0.03, 0.2]
        from thickness in Gen.Double[0.015, 0.2]
        from mitre in Gen.Double[-1.3, 1.3]
        from bevel in Gen.Double[-1.05, 1.05]
        from x in Gen.Double[-1, 5]
        select (new UnrolledStock(width, thickness), Plane.Through(
            new Vector3d(x, 0, 0),
            new Vector3d(Math.Cos(bevel) * Math.Cos(mitre), Math.Cos(bevel) * Math.Sin(mitre), Math.Sin(bevel))));

    [Fact]
    public void Line_folded_back_round_the_stock_lies_on_the_cut() => Cuts.Sample(
        cut =>
        {
            var line = WrapAround.CutLine(cut.Stock, cut.Plane);
            for (var i = 0; i + 1 < line.Length; i++)
            {
                foreach (var share in (double[])[0, 0.2, 0.5, 0.8, 0.999])
                {
                    var u = line[i].U + (share * (line[i + 1].U - line[i].U));
                    var x = line[i].X + (share * (line[i + 1].X - line[i].X));
                    Assert.Equal(0, cut.Plane.SignedDistance(cut.Stock.Fold(u, x)), Micron);
                }
            }
        },
        iter: 1000,
        seed: "0000KOIPe036");

    /// <summary>The solid kernel's own corners of the cut are the corners of the line.</summary>
    [Fact]
    public void Corners_are_those_of_the_solid() => Cuts.Sample(
        cut =>
        {
            var shape = new CutStock(
                cut.Stock.Width, cut.Stock.Thickness, new Plane(-Vector3d.UnitX, 20), cut.Plane);
            var solid = StockSolid.Build(shape).OrNull!;
            var corners = solid.Vertices.Where(v => Math.Abs(cut.Plane.SignedDistance(v)) < Micron).ToList();
            var line = WrapAround.CutLine(cut.Stock, cut.Plane).Take(4).Select(p => cut.Stock.Fold(p.U, p.X)).ToList();
            Assert.Equal(4, corners.Count);
            Assert.All(corners, c => Assert.Contains(line, p => (p - c).Length < Micron));
        },
        iter: 200,
        seed: "0000KOIPe036");

    [Fact]
    public void Faces_follow_each_other_as_paper_lies_round_the_stick()
    {
        var stock = new UnrolledStock(0.09, 0.04);
        Assert.Equal(0.26, stock.Girth, Micron);
        Assert.True((stock.Fold(0.045, 1) - new Vector3d(1, 0, 0.02)).Length < Micron);
        Assert.True((stock.Fold(0.10, 1) - new Vector3d(1, 0.045, 0.01)).Length < Micron);
        Assert.True((stock.Fold(0.14, 1) - new Vector3d(1, 0.035, -0.02)).Length < Micron);
        Assert.True((stock.Fold(0.23, 1) - new Vector3d(1, -0.045, -0.01)).Length < Micron);
        Assert.True((stock.Fold(0.26 + 0.045, 1) - stock.Fold(0.045, 1)).Length < Micron);
    }

    [Theory]
    [InlineData(StockFace.PlusZ)]
    [InlineData(StockFace.PlusY)]
    [InlineData(StockFace.MinusZ)]
    [InlineData(StockFace.MinusY)]
    public void A_place_on_a_face_folds_onto_that_face(StockFace face)
    {
        var stock = new UnrolledStock(0.09, 0.04);
        var point = stock.Fold(stock.At(face, 0.012), 2);
        var (normal, cross) = face switch
        {
            StockFace.PlusZ => (point.Z, point.Y),
            StockFace.MinusZ => (-point.Z, point.Y),
            StockFace.PlusY => (point.Y, point.Z),
            _ => (-point.Y, point.Z),
        };
        Assert.Equal(face is StockFace.PlusZ or StockFace.MinusZ ? 0.02 : 0.045, normal, Micron);
        Assert.Equal(0.012, cross, Micron);
    }
}
