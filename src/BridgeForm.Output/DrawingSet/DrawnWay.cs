using BridgeForm.Output.Drawing;
using BridgeForm.Pieces;
using BridgeForm.Solids;

namespace BridgeForm.Output.DrawingSet;

/// <summary>Way marks (docs/bridge.md, which way round) of sticks where they stand, in the views of the drawings.</summary>
internal static class DrawnWay
{
    // On paper, metres, so low that a name in the middle of a rail keeps clear; its height a share of its length; of the stick's
    // length and face at most such a share.
    private const double LengthInView = 0.003;
    private const double Slender = 0.35;
    private const double ShareOfStick = 0.2;
    private const double ShareOfFace = 0.5;

    // A face that looks less towards the reader than this shows its half too narrow to be seen.
    private const double Facing = 0.35;

    /// <summary>What the marks in a view say.</summary>
    public const string Words = "Triangles: way marks, larger than they are, outlined where they are on the far side";

    /// <summary>
    /// The mark of a stick in a view of the bridge, at a size of its own so that it can be seen at any scale: filled where its half
    /// faces the reader, else its outline. Nothing on a stick without the arris, such as a round one.
    /// </summary>
    /// <param name="piece">The piece.</param>
    /// <param name="place">Where it stands.</param>
    /// <param name="view">How it is seen.</param>
    /// <param name="onPaper">From the world to the paper.</param>
    /// <param name="ratio">True length over length on paper.</param>
    public static IEnumerable<SheetEntity> Of(
        Piece piece, Placement place, View view, Func<Vector3d, SheetPoint> onPaper, double ratio)
    {
        var stock = piece.Shape;
        if (stock.IsRound)
        {
            yield return RoundWay(piece, place, view, onPaper);
            yield break;
        }

        var (y, z) = (stock.Width / 2, stock.Thickness / 2);
        var length = Math.Min(LengthInView * ratio, ShareOfStick * piece.BlankLength);
        var tail = new Vector3d(stock.Near.XAt(y, z) + (length / 2), y, z);
        var tip = tail with { X = tail.X + length };
        foreach (var (normal, foot) in new[]
        {
            (Vector3d.UnitZ, tail with { Y = y - High(stock.Width) }), (Vector3d.UnitY, tail with { Z = z - High(stock.Thickness) }),
        })
        {
            var faces = place.DirectionToWorld(normal).Dot(view.Toward);
            SheetPoint[] corners = [.. new[] { tail, tip, foot }.Select(place.ToWorld).Select(onPaper)];
            if (faces > Facing)
            {
                yield return new SheetArea(PageLayers.Cut, [.. corners], 1);
            }
            else if (faces < -Facing)
            {
                yield return new SheetPolyline(PageLayers.Dim, [.. corners.Select(c => new SheetVertex(c.X, c.Y))], Closed: true);
            }
        }

        double High(double face) => Math.Min(Slender * length, ShareOfFace * face);
    }

    /// <summary>The line struck along a round stick, on the face that is up: full where it faces the reader.</summary>
    private static SheetLine RoundWay(Piece piece, Placement place, View view, Func<Vector3d, SheetPoint> onPaper)
    {
        var z = piece.Shape.Thickness / 2;
        var (near, far) = (new Vector3d(piece.Shape.Near.XAt(0, z), 0, z), new Vector3d(piece.Shape.Far.XAt(0, z), 0, z));
        return new SheetLine(
            place.DirectionToWorld(Vector3d.UnitZ).Dot(view.Toward) > Facing ? PageLayers.Cut : PageLayers.Dim,
            onPaper(place.ToWorld(near)), onPaper(place.ToWorld(far)));
    }
}
