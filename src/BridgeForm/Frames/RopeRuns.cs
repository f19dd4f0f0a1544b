using System.Collections.Immutable;
using BridgeForm.Project;
using BridgeForm.Quantities;
using BridgeForm.Roles;
using BridgeForm.Ropes;
using BridgeForm.Solids;

namespace BridgeForm.Frames;

/// <summary>The two ropes in space, with what is drawn of them beyond the supports.</summary>
public static class RopeRuns
{
    /// <summary>
    /// Straight pieces a bay. A bay's own sag between two frames is under a millimetre or two; a quarter of the bay has a
    /// sixteenth of it.
    /// </summary>
    public const int PiecesPerBay = 4;

    // Without a backstay just enough rope is drawn to show that it goes on.
    private const double StubLength = 0.45;

    /// <summary>Left and right rope, each a line of points on its axis from behind support A to behind support B.</summary>
    public static ImmutableArray<RopeLine> Draw(BridgeParameters parameters, RopeShape shape)
    {
        var curve = shape.Curve(PiecesPerBay);
        var (first, last) = shape.EndSlopes();
        var before = Beyond(parameters.Site.A, -1, first);
        var after = Beyond(parameters.Site.B, 1, last);
        var radius = parameters.Ropes.Rope.Radius;
        return
        [
            Line(RopeIds.Left, -parameters.Ropes.Spacing / 2),
            Line(RopeIds.Right, parameters.Ropes.Spacing / 2),
        ];

        RopeLine Line(string name, double z)
        {
            var points = ImmutableArray.CreateBuilder<Vector3d>(curve.Length + 2);
            points.Add(new Vector3d(curve[0].X, curve[0].Y, z) + before);
            foreach (var p in curve)
            {
                points.Add(new Vector3d(p.X, p.Y, z));
            }

            points.Add(new Vector3d(curve[^1].X, curve[^1].Y, z) + after);
            return new RopeLine(name, radius, points.MoveToImmutable());
        }
    }

    /// <summary>
    /// From a support to where the drawn rope ends: along the backstay when there is one; else level, or straight on where the
    /// rope already falls outwards.
    /// </summary>
    private static Vector3d Beyond(SupportParameters support, double outward, double chordSlope)
    {
        var (length, angle) = support.Backstay is { } stay
            ? (stay.Length, stay.Angle)
            : (StubLength, Math.Max(0, -outward * chordSlope));
        return length * new Vector3d(outward * Elementary.Cos(angle), -Elementary.Sin(angle), 0);
    }
}
