using System.Collections.Immutable;
using System.Globalization;
using BridgeForm.Quantities;

namespace BridgeForm.Solids;

/// <summary>What must hold of every solid before a writer sees it.</summary>
internal static class SolidAudit
{
    public static ImmutableArray<string> Audit(Solid solid)
    {
        var faults = ImmutableArray.CreateBuilder<string>();
        if (solid.Vertices.Any(v => !double.IsFinite(v.X + v.Y + v.Z)))
        {
            return ["a corner is not a finite point"];
        }

        var (points, corners, _) = Triangulation.CornersOf(solid);
        var (exact, rounded) = (Weld(points, v => (v.X, v.Y, v.Z)), Weld(points, v => ((float)v.X, (float)v.Y, (float)v.Z)));
        AddOpenEdges(exact, corners, "", faults);
        if (!exact.AsSpan().SequenceEqual(rounded))
        {
            AddOpenEdges(rounded, corners, " after rounding to 32-bit floats", faults);
        }

        if (!(solid.Volume > 0))
        {
            faults.Add("the volume is not positive");
        }

        AddUnevenFaces(solid, faults);
        AddTurnedTriangles(solid, points, corners, faults);
        return faults.ToImmutable();
    }

    private static void AddOpenEdges(int[] welded, List<int> corners, string when, ImmutableArray<string>.Builder faults)
    {
        var uses = new EdgeTable(corners.Count);
        for (var i = 0; i < corners.Count; i++)
        {
            uses.Slot(welded[corners[i]], welded[corners[After(i)]])++;
        }

        var open = 0;
        for (var i = 0; i < corners.Count; i++)
        {
            var (a, b) = (welded[corners[i]], welded[corners[After(i)]]);
            if (a == b || uses.Find(a, b) != 1 || uses.Find(b, a) != 1)
            {
                open++;
            }
        }

        if (open > 0)
        {
            faults.Add(string.Create(CultureInfo.InvariantCulture, $"{open} edges are not used once each way{when}"));
        }
    }

    // The next corner of the same triangle.
    private static int After(int corner) => corner % 3 == 2 ? corner - 2 : corner + 1;

    /// <summary>For each point the first one at its place.</summary>
    private static int[] Weld(List<Vector3d> points, Func<Vector3d, (double, double, double)> place)
    {
        var first = new Dictionary<(double, double, double), int>(points.Count);
        var welded = new int[points.Count];
        for (var i = 0; i < welded.Length; i++)
        {
            welded[i] = first.TryAdd(place(points[i]), i) ? i : first[place(points[i])];
        }

        return welded;
    }

    private static void AddUnevenFaces(Solid solid, ImmutableArray<string>.Builder faults)
    {
        foreach (var face in solid.Faces)
        {
            var furthest = face.Loops.Max(loop => loop.Max(v => Math.Abs(face.Plane.SignedDistance(solid.Vertices[v]))));
            if (!(furthest <= Tolerances.Planarity))
            {
                faults.Add(string.Create(CultureInfo.InvariantCulture, $"a corner lies {furthest:g3} m off its face"));
            }
        }
    }

    private static void AddTurnedTriangles(
        Solid solid, List<Vector3d> points, List<int> corners, ImmutableArray<string>.Builder faults)
    {
        double area = 0;
        for (var t = 0; t < corners.Count; t += 3)
        {
            var (a, b, c) = (points[corners[t]], points[corners[t + 1]], points[corners[t + 2]]);
            area += (b - a).Cross(c - a).Length / 2;
        }

        if (!(area <= solid.Area * (1 + Tolerances.FaceArea)))
        {
            faults.Add(string.Create(CultureInfo.InvariantCulture, $"triangles of {area:g9} m2 cover faces of {solid.Area:g9} m2"));
        }
    }
}
