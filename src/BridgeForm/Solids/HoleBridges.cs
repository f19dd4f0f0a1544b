using BridgeForm.Quantities;

namespace BridgeForm.Solids;

/// <summary>
/// Joins the holes of a face to its outer loops, after D. Eberly, "Triangulation by Ear Clipping": from a hole's rightmost
/// vertex look right, and bridge to the nearest vertex in sight.
/// </summary>
internal static class HoleBridges
{
    /// <summary>The outer rings, with every hole joined in.</summary>
    public static List<int> Join(Rings rings, List<int> loops)
    {
        var outers = new List<int>();
        var holes = new List<int>();
        foreach (var loop in loops)
        {
            if (rings.Area(loop) > 0)
            {
                outers.Add(loop);
            }
            else
            {
                holes.Add(rings.Rightmost(loop));
            }
        }

        holes.Sort((p, q) => rings.At(q).X.CompareTo(rings.At(p).X));
        foreach (var hole in holes)
        {
            var seen = Facing(rings, outers, hole);
            if (seen.Node >= 0)
            {
                rings.Bridge(InSight(rings, outers, hole, seen), hole);
            }
        }

        return outers;
    }

    /// <summary>The edge that a look to the right meets first: its end further to the right, and X where it is met.</summary>
    private static (int Node, double X) Facing(Rings rings, List<int> outers, int hole)
    {
        var eye = rings.At(hole);
        var (best, nearest) = (-1, double.PositiveInfinity);
        foreach (var ring in outers)
        {
            var n = ring;
            do
            {
                var (a, b) = (rings.At(n), rings.At(rings.Next[n]));
                if (a.Y <= eye.Y && b.Y > eye.Y)
                {
                    var x = a.X + ((eye.Y - a.Y) / (b.Y - a.Y) * (b.X - a.X));
                    if (x >= eye.X - Tolerances.Corner && x < nearest)
                    {
                        (best, nearest) = (a.X > b.X ? n : rings.Next[n], x);
                    }
                }

                n = rings.Next[n];
            }
            while (n != ring);
        }

        return (best, nearest);
    }

    /// <summary>The facing vertex, unless others stand in the way: then the one at the smallest angle to the look.</summary>
    private static int InSight(Rings rings, List<int> outers, int hole, (int Node, double X) facing)
    {
        var eye = rings.At(hole);
        var met = new FlatPoint(facing.X, eye.Y);
        var end = rings.At(facing.Node);
        var (best, bestSlope, bestX) = (facing.Node, double.PositiveInfinity, double.PositiveInfinity);
        foreach (var ring in outers)
        {
            var n = ring;
            do
            {
                var p = rings.At(n);
                var inside = end.Y > eye.Y ? FlatPoint.Holds(eye, met, end, p) : FlatPoint.Holds(eye, end, met, p);
                if (inside && rings.IsReflex(n) && rings.Opens(n, eye))
                {
                    var slope = Math.Abs(p.Y - eye.Y) / Math.Max(p.X - eye.X, double.Epsilon);
                    if (slope < bestSlope || (slope <= bestSlope && p.X < bestX))
                    {
                        (best, bestSlope, bestX) = (n, slope, p.X);
                    }
                }

                n = rings.Next[n];
            }
            while (n != ring);
        }

        return best;
    }
}
