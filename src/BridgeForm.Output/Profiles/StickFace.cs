using System.Collections.Immutable;
using BridgeForm.Output.Drawing;
using BridgeForm.Solids;

namespace BridgeForm.Output.Profiles;

/// <summary>A long face of a stick before channels and holes: a rectangle cut by the end planes and rips, so always convex.</summary>
internal static class StickFace
{
    /// <summary>
    /// The face that a view looks at, counter-clockwise on the page; X of the piece, and its cross axis measured from the
    /// middle.
    /// </summary>
    public static ImmutableArray<SheetPoint> Draw(CutStock shape, double length, PageView view)
    {
        var high = (Math.Abs(view.Toward.Y) > 0.5 ? shape.Width : shape.Thickness) / 2;
        var half = (Math.Abs(view.Toward.Y) > 0.5 ? shape.Thickness : shape.Width) / 2;
        ImmutableArray<SheetPoint> face =
            [new(-length, -half), new(2 * length, -half), new(2 * length, half), new(-length, half)];
        return shape.Rips.Prepend(shape.Far).Prepend(shape.Near).Aggregate(face, (f, plane) => Clipped(
            f,
            plane.Normal.X,
            plane.Normal.Dot(view.Up),
            plane.Offset - (plane.Normal.Dot(view.Toward) * high)));
    }

    /// <summary>What of a convex polygon lies between two values of x.</summary>
    public static ImmutableArray<SheetPoint> Between(ImmutableArray<SheetPoint> polygon, double low, double high) =>
        Clipped(Clipped(polygon, 1, 0, high), -1, 0, -low);

    /// <summary>The part of a convex polygon with a·x + b·y ≤ c (Sutherland and Hodgman, 1974).</summary>
    public static ImmutableArray<SheetPoint> Clipped(ImmutableArray<SheetPoint> polygon, double a, double b, double c)
    {
        var kept = ImmutableArray.CreateBuilder<SheetPoint>();
        for (var i = 0; i < polygon.Length; i++)
        {
            var (p, q) = (polygon[i], polygon[(i + 1) % polygon.Length]);
            var (dp, dq) = ((a * p.X) + (b * p.Y) - c, (a * q.X) + (b * q.Y) - c);
            if (dp <= 0)
            {
                kept.Add(p);
            }

            if ((dp < 0 && dq > 0) || (dp > 0 && dq < 0))
            {
                var s = dp / (dp - dq);
                kept.Add(new SheetPoint(p.X + (s * (q.X - p.X)), p.Y + (s * (q.Y - p.Y))));
            }
        }

        return kept.ToImmutable();
    }
}
