using System.Collections.Immutable;
using BridgeForm.Output.Drawing;
using BridgeForm.Quantities;
using BridgeForm.Solids;

namespace BridgeForm.Output.Profiles;

/// <summary>The flat side of a solid that looks at the reader, or away from it, and its boundary on the page.</summary>
internal static class FlatFace
{
    /// <summary>
    /// The faces of the solid in its outermost plane square to <paramref name="toward"/>; where no face is square to it (a
    /// tapered packer), those in the plane of the face that shows the largest area.
    /// </summary>
    public static ImmutableArray<Face> Facing(Solid solid, Vector3d toward)
    {
        var square = solid.Faces.Where(f => f.Plane.Normal.Dot(toward) > 1 - (Tolerances.InPage * Tolerances.InPage)).ToList();
        var lead = square.Count > 0
            ? square.MaxBy(f => f.Plane.Offset)!
            : solid.Faces.MaxBy(f => f.Plane.Normal.Dot(toward) * Area(solid, f))!;
        return [.. solid.Faces.Where(f => Coplanar(f.Plane, lead.Plane))];
    }

    /// <summary>
    /// Closed boundaries of those faces together on the page, corners counter-clockwise around wood; drilled holes left out.
    /// </summary>
    public static ImmutableArray<ImmutableArray<SheetPoint>> Boundary(
        Solid solid, SolidEdges edges, ImmutableArray<Face> faces, PageView view)
    {
        var inside = faces.ToHashSet(ReferenceEqualityComparer.Instance);
        var border = faces
            .SelectMany(f => f.Loops)
            .Where(loop => !SolidEdges.EdgesOf(loop).All(e => edges.Beyond(e).Origin == FaceOrigin.Hole))
            .SelectMany(SolidEdges.EdgesOf)
            .Where(e => !inside.Contains(edges.Beyond(e)))
            .ToList();
        return [.. Loops(border).Select(loop => Simplified([.. loop.Select(v => view.Project(solid.Vertices[v]))]))];
    }

    private static bool Coplanar(Plane a, Plane b) =>
        (a.Normal - b.Normal).Length < Tolerances.InPage && Math.Abs(a.Offset - b.Offset) < Tolerances.FlatFace;

    private static double Area(Solid solid, Face face)
    {
        var sum = face.Loops
            .SelectMany(SolidEdges.EdgesOf)
            .Aggregate(Vector3d.Zero, (s, e) => s + solid.Vertices[e.From].Cross(solid.Vertices[e.To]));
        return sum.Dot(face.Plane.Normal) / 2;
    }

    private static IEnumerable<List<int>> Loops(List<(int From, int To)> border)
    {
        var next = border.ToLookup(e => e.From, e => e.To).ToDictionary(g => g.Key, g => new Queue<int>(g));
        foreach (var (start, _) in border)
        {
            var loop = new List<int>();
            for (var at = start; next[at].TryDequeue(out var to); at = to)
            {
                loop.Add(at);
            }

            if (loop.Count > 0)
            {
                yield return loop;
            }
        }
    }

    /// <summary>Without the corners that are none: those on a straight line between their neighbours.</summary>
    internal static ImmutableArray<SheetPoint> Simplified(List<SheetPoint> loop)
    {
        for (var i = 0; i < loop.Count && loop.Count > 2;)
        {
            if (IsStraight(loop[(i + loop.Count - 1) % loop.Count], loop[i], loop[(i + 1) % loop.Count]))
            {
                loop.RemoveAt(i);
                i = Math.Max(0, i - 1);
            }
            else
            {
                i++;
            }
        }

        return [.. loop];
    }

    private static bool IsStraight(SheetPoint a, SheetPoint b, SheetPoint c)
    {
        var (ux, uy, vx, vy) = (c.X - a.X, c.Y - a.Y, b.X - a.X, b.Y - a.Y);
        var length = Math.Sqrt((ux * ux) + (uy * uy));
        return length < Tolerances.FlatFace || Math.Abs((ux * vy) - (uy * vx)) < Tolerances.FlatFace * length;
    }
}
