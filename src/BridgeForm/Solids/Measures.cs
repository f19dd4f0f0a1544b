namespace BridgeForm.Solids;

/// <summary>Volume, area, centroid and bounds from the faces' loops: sums over fans (divergence theorem), exact for planar faces.</summary>
internal static class Measures
{
    public static double Volume(Solid solid)
    {
        var origin = solid.Vertices[0];
        double six = 0;
        foreach (var face in solid.Faces)
        {
            foreach (var loop in face.Loops)
            {
                var first = solid.Vertices[loop[0]] - origin;
                var last = solid.Vertices[loop[1]] - origin;
                for (var i = 2; i < loop.Length; i++)
                {
                    var next = solid.Vertices[loop[i]] - origin;
                    six += first.Dot(last.Cross(next));
                    last = next;
                }
            }
        }

        return six / 6;
    }

    public static double Area(Solid solid, FaceOrigin? only)
    {
        double area = 0;
        foreach (var face in solid.Faces)
        {
            if (only is null || face.Origin == only)
            {
                area += AreaOf(solid, face);
            }
        }

        return area;
    }

    public static double AreaOf(Solid solid, Face face)
    {
        var twice = Vector3d.Zero;
        foreach (var loop in face.Loops)
        {
            var first = solid.Vertices[loop[0]];
            for (var i = 2; i < loop.Length; i++)
            {
                twice += (solid.Vertices[loop[i - 1]] - first).Cross(solid.Vertices[loop[i]] - first);
            }
        }

        return face.Plane.Normal.Dot(twice) / 2;
    }

    public static Vector3d Centroid(Solid solid)
    {
        var origin = solid.Vertices[0];
        var moment = Vector3d.Zero;
        double six = 0;
        foreach (var face in solid.Faces)
        {
            foreach (var loop in face.Loops)
            {
                var a = solid.Vertices[loop[0]] - origin;
                for (var i = 2; i < loop.Length; i++)
                {
                    var b = solid.Vertices[loop[i - 1]] - origin;
                    var c = solid.Vertices[loop[i]] - origin;
                    var part = a.Dot(b.Cross(c));
                    six += part;
                    moment += part * (a + b + c); // the origin is each tetrahedron's fourth corner
                }
            }
        }

        return origin + (moment / (4 * six));
    }

    public static (Vector3d Min, Vector3d Max) Bounds(ReadOnlySpan<Vector3d> points)
    {
        var (min, max) = (points[0], points[0]);
        foreach (var p in points)
        {
            min = new Vector3d(Math.Min(min.X, p.X), Math.Min(min.Y, p.Y), Math.Min(min.Z, p.Z));
            max = new Vector3d(Math.Max(max.X, p.X), Math.Max(max.Y, p.Y), Math.Max(max.Z, p.Z));
        }

        return (min, max);
    }
}
