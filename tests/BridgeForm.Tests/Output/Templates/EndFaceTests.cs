using BridgeForm.Output.Drawing;
using BridgeForm.Output.Templates;
using BridgeForm.Solids;
using CsCheck;

namespace BridgeForm.Tests.Output.Templates;

public sealed class EndFaceTests
{
    private const double Micron = 1e-6;

    /// <summary>Mitres of 1° to 70° to either side with bevels of up to 50°, at either end of a stick of 2 m.</summary>
    private static readonly Gen<(CutStock Stick, PieceEnd End)> Cuts =
        from width in Gen.Double[0.03, 0.2]
        from thickness in Gen.Double[0.015, 0.1]
        from mitre in Gen.Double[0.02, 1.2]
        from turned in Gen.Bool
        from bevel in Gen.Double[-0.87, 0.87]
        from near in Gen.Bool
        let end = near ? PieceEnd.Near : PieceEnd.Far
        select (Stick(width, thickness, turned ? -mitre : mitre, bevel, end), end);

    /// <summary>The full line lies on the face up and on the cut, the dashed one on the far face and on the cut.</summary>
    [Fact]
    public void Lines_lie_on_the_cut() => Cuts.Sample(
        cut =>
        {
            var piece = TestPieces.Of(cut.Stick);
            var block = EndFace.Draw(new CutUse([piece]), cut.End, TestPieces.Units);
            foreach (
                var (layer, z) in new[] { (PageLayers.Accent, piece.Shape.Thickness / 2), (PageLayers.Hidden, -piece.Shape.Thickness / 2) })
            {
                foreach (var line in block.On<SheetLine>(layer))
                {
                    Assert.Equal(-piece.Shape.Width / 2, line.From.Y, Micron);
                    Assert.Equal(piece.Shape.Width / 2, line.To.Y, Micron);
                    foreach (var p in (SheetPoint[])[line.From, line.To])
                    {
                        var folded = new Vector3d(p.X, p.Y, z);
                        Assert.Equal(0, piece.Plane(cut.End).SignedDistance(folded), Micron);
                        Assert.Contains(piece.Solid.Vertices, v => (v - folded).Length < Micron);
                    }
                }
            }

            Assert.Single(block.On<SheetLine>(PageLayers.Accent));
            Assert.True(Math.Abs(piece.Cut(cut.End).Bevel) < 0.05 || block.On<SheetLine>(PageLayers.Hidden).Any());
        },
        iter: 300,
        seed: "0000KOIPe036",
        threads: 1);

    /// <summary>
    /// Each name stands level with its point; of the two corners of the solid on the face up the long one is further out.
    /// </summary>
    [Fact]
    public void Long_and_short_point_are_named_where_they_are() => Cuts.Sample(
        cut =>
        {
            var piece = TestPieces.Of(cut.Stick);
            var block = EndFace.Draw(new CutUse([piece]), cut.End, TestPieces.Units);
            var outward = cut.End == PieceEnd.Near ? -1 : 1;
            var corners = piece.Solid.Vertices
                .Where(
                    v => Math.Abs(v.Z - (piece.Shape.Thickness / 2)) < Micron && Math.Abs(piece.Plane(cut.End).SignedDistance(v)) < Micron)
                .OrderByDescending(v => outward * v.X).ToList();
            Assert.Equal(2, corners.Count);
            foreach (var (words, corner) in new[] { ("long point", corners[0]), ("short point", corners[1]) })
            {
                var text = Assert.Single(block.Entities.OfType<SheetText>(), t => t.Text.StartsWith(words, StringComparison.Ordinal));
                var box = PageBox.Of(text);
                // A millimetre beside it, on the side where no line crosses the words.
                Assert.Equal(
                    0.001, Math.Min(Math.Abs(box.MinX - corner.X), Math.Abs(box.MaxX - corner.X)), Micron);
                Assert.Equal(Math.Sign(corner.Y), Math.Sign(text.At.Y));
            }

            var along = TestPieces.Units.Length(Math.Abs(corners[0].X - corners[1].X));
            Assert.True(block.Entities.OfType<SheetDimension>().Any(d => string.Equals(d.Text, along, StringComparison.Ordinal))
                || block.Entities.OfType<SheetText>().Any(t => t.Text.Contains(along + " back", StringComparison.Ordinal)));
        },
        iter: 300,
        seed: "0000KOIPe036",
        threads: 1);

    private static CutStock Stick(double width, double thickness, double mitre, double bevel, PieceEnd end)
    {
        var normal = new Vector3d(Math.Cos(bevel) * Math.Cos(mitre), Math.Cos(bevel) * Math.Sin(mitre), Math.Sin(bevel));
        return end == PieceEnd.Far
            ? new CutStock(width, thickness, new Plane(-Vector3d.UnitX, 0), Plane.Through(new Vector3d(2, 0, 0), normal))
            : new CutStock(width, thickness, Plane.Through(new Vector3d(0.4, 0, 0), -normal), new Plane(Vector3d.UnitX, 2));
    }
}
