using System.Collections.Immutable;
using BridgeForm.Quantities;

namespace BridgeForm.Solids;

/// <summary>The regions that channels and holes of a stick take away, in the piece's axes.</summary>
public static class StockCutters
{
    /// <summary>
    /// Sides of the prism that stands for a round hole. Its section has the circle's area, so volumes are right; its
    /// corners stand 0.3 % of the radius outside the circle and its sides 0.2 % inside.
    /// </summary>
    public const int HoleSides = 32;

    /// <summary>A channel: two walls square to X and a floor, open on the face's side.</summary>
    public static ConvexCutter Build(CutStock stock, Channel channel)
    {
        var (outward, across, half) = Axes(stock, channel.Face);
        var floorPoint = (half - channel.Depth) * outward;
        var along = across - (channel.FloorSlope * outward);
        var floor = Plane.Through(floorPoint, FloorNormal(outward, along));
        return new ConvexCutter(
            [
                new Plane(-Vector3d.UnitX, -(channel.Center - (channel.Width / 2))),
                new Plane(Vector3d.UnitX, channel.Center + (channel.Width / 2)),
                floor,
            ],
            FaceOrigin.Channel);
    }

    /// <summary>A round hole as a prism; flat-bottomed when blind, endless when drilled through.</summary>
    public static ConvexCutter Build(CutStock stock, Hole hole)
    {
        var (outward, across, half) = Axes(stock, hole.Face);
        var axis = new Vector3d(hole.X, 0, 0) + (hole.Across * across);
        var apothem = Apothem(hole.Diameter / 2);
        var planes = ImmutableArray.CreateBuilder<Plane>(HoleSides + 1);
        if (hole.Depth is { } depth)
        {
            planes.Add(new Plane(-outward, depth - half));
        }

        foreach (var side in SideOrder)
        {
            var (sin, cos) = Elementary.SinCos(2 * Math.PI * side / HoleSides);
            var normal = (cos * Vector3d.UnitX) + (sin * across);
            planes.Add(new Plane(normal, normal.Dot(axis) + apothem));
        }

        return new ConvexCutter(planes.ToImmutable(), FaceOrigin.Hole);
    }

    /// <summary>From the middle of a regular polygon of the circle's area to its sides: π r² = n a² tan(π / n).</summary>
    internal static double Apothem(double radius) =>
        radius * Math.Sqrt(Math.PI / (HoleSides * Elementary.Tan(Math.PI / HoleSides)));

    // Sides by their angle; quarters first: four sides take the prism down to a small block, and the others have little left to cut.
    internal static ImmutableArray<int> SideOrder { get; } =
        [.. Enumerable.Range(0, HoleSides).OrderBy(side => side % (HoleSides / 4) == 0 ? 0 : 1)];

    internal static (Vector3d Outward, Vector3d Across, double Half) Axes(CutStock stock, StockFace face) => face switch
    {
        StockFace.MinusY => (-Vector3d.UnitY, Vector3d.UnitZ, stock.Width / 2),
        StockFace.PlusY => (Vector3d.UnitY, Vector3d.UnitZ, stock.Width / 2),
        StockFace.MinusZ => (-Vector3d.UnitZ, Vector3d.UnitY, stock.Thickness / 2),
        StockFace.PlusZ => (Vector3d.UnitZ, Vector3d.UnitY, stock.Thickness / 2),
        _ => throw new ArgumentOutOfRangeException(nameof(face), face, "No such face."),
    };

    // Square to X and to the floor's direction, pointing into the wood.
    private static Vector3d FloorNormal(Vector3d outward, Vector3d along)
    {
        var normal = Vector3d.UnitX.Cross(along);
        return normal.Dot(outward) < 0 ? normal : -normal;
    }
}
