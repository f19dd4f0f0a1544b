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

        var mesh = solid.Triangulate();
        AddOpenEdges(mesh, v => (v.X, v.Y, v.Z), "", faults);
        AddOpenEdges(mesh, v => ((float)v.X, (float)v.Y, (float)v.Z), " after rounding to 32-bit floats", faults);
        if (!(solid.Volume > 0))
        {
            faults.Add("the volume is not positive");
        }

        AddUnevenFaces(solid, faults);
        AddTurnedTriangles(solid, mesh, faults);
        return faults.ToImmutable();
    }

    private static void AddOpenEdges(
        TriangleMesh mesh, Func<Vector3d, (double, double, double)> place, string when, ImmutableArray<string>.Builder faults)
    {
        var welded = Weld(mesh, place);
        var uses = new EdgeTable();
        var open = 0;
        for (var i = 0; i < welded.Length; i++)
        {
            uses.Slot(welded[i], welded[i % 3 == 2 ? i - 2 : i + 1])++;
        }

        for (var i = 0; i < welded.Length; i++)
        {
            var (a, b) = (welded[i], welded[i % 3 == 2 ? i - 2 : i + 1]);
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

    private static int[] Weld(TriangleMesh mesh, Func<Vector3d, (double, double, double)> place)
    {
        var numbers = new Dictionary<(double, double, double), int>(mesh.Positions.Length);
        var welded = new int[mesh.Positions.Length];
        for (var i = 0; i < welded.Length; i++)
        {
            var key = place(mesh.Positions[i]);
            if (!numbers.TryGetValue(key, out welded[i]))
            {
                numbers.Add(key, welded[i] = numbers.Count);
            }
        }

        return [.. mesh.Indices.Select(i => welded[i])];
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

    private static void AddTurnedTriangles(Solid solid, TriangleMesh mesh, ImmutableArray<string>.Builder faults)
    {
        double area = 0;
        for (var t = 0; t < mesh.TriangleCount; t++)
        {
            var (a, b, c) = mesh.Triangle(t);
            area += (b - a).Cross(c - a).Length / 2;
        }

        if (!(area <= solid.Area * (1 + Tolerances.FaceArea)))
        {
            faults.Add(string.Create(CultureInfo.InvariantCulture, $"triangles of {area:g9} m2 cover faces of {solid.Area:g9} m2"));
        }
    }
}
