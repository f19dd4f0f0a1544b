using System.Collections.Immutable;
using BridgeForm.Quantities;

namespace BridgeForm.Solids;

/// <summary>Where a face of a solid comes from.</summary>
public enum FaceOrigin
{
    /// <summary>A long face of the stock as bought.</summary>
    Stock,

    /// <summary>Made by a saw cut.</summary>
    Cut,

    /// <summary>Made by a channel.</summary>
    Channel,

    /// <summary>Made by a drill.</summary>
    Hole,
}

/// <summary>A planar face. Loops are counter-clockwise seen from outside; loops of holes run the other way.</summary>
/// <param name="Plane">Its plane; the normal points out of the body.</param>
/// <param name="Origin">Where it comes from.</param>
/// <param name="Loops">
/// Closed loops of vertex indices, the last not repeating the first; outer loops and holes in any order. A loop passes no
/// vertex twice, but two loops may touch at one.
/// </param>
public sealed record Face(Plane Plane, FaceOrigin Origin, ImmutableArray<ImmutableArray<int>> Loops);

/// <summary>
/// An immutable planar-faced, closed body with outward faces. Metres. Every operation gives a new body; none gives an open
/// one: each edge is used exactly once in each direction.
/// </summary>
public sealed class Solid
{
    internal Solid(ImmutableArray<Vector3d> vertices, ImmutableArray<Face> faces)
    {
        Vertices = vertices;
        Faces = faces;
    }

    /// <summary>Corners, each once.</summary>
    public ImmutableArray<Vector3d> Vertices { get; }

    /// <summary>Faces.</summary>
    public ImmutableArray<Face> Faces { get; }

    /// <summary>Volume, m³.</summary>
    public double Volume => Measures.Volume(this);

    /// <summary>Area of all faces, m².</summary>
    public double Area => Measures.Area(this, null);

    /// <summary>Centre of volume, metres.</summary>
    public Vector3d Centroid => Measures.Centroid(this);

    /// <summary>The smallest box along the axes that holds the body, metres.</summary>
    public (Vector3d Min, Vector3d Max) Bounds => Measures.Bounds(Vertices.AsSpan());

    /// <summary>Number of separate bodies: parts that hang together by edges of their faces. Hollows do not count.</summary>
    public int ComponentCount => Components.Count(this);

    /// <summary>A box with its sides along the axes.</summary>
    public static Solid Box(Vector3d min, Vector3d max, FaceOrigin origin = FaceOrigin.Stock) =>
        Hexahedron.Box(min, max, origin);

    /// <summary>Area of the faces of one origin, m².</summary>
    public double AreaOf(FaceOrigin origin) => Measures.Area(this, origin);

    /// <summary>
    /// Keeps what is below the plane. Corners within <see cref="Tolerances.Corner"/> of the plane count as on it; a face that
    /// lies on it keeps its own origin.
    /// </summary>
    /// <param name="plane">The cut; its normal points out of what is kept.</param>
    /// <param name="origin">What the new face counts as.</param>
    public SolidResult Cut(Plane plane, FaceOrigin origin) => SolidCutting.Mine.Cut(this, plane, origin);

    /// <summary>Takes away what lies inside the cutter. A cutter that misses or merely touches gives the same solid.</summary>
    public SolidResult Subtract(ConvexCutter cutter) => SolidCutting.Mine.Subtract(this, cutter);

    /// <summary>Keeps what lies inside the cutter.</summary>
    public SolidResult Intersect(ConvexCutter cutter) => SolidCutting.Mine.Intersect(this, cutter);

    /// <summary>The same body placed in other axes: its own coordinates are taken as the placement's local ones.</summary>
    public Solid Placed(Placement placement) => new(
        [.. Vertices.Select(placement.ToWorld)],
        [.. Faces.Select(face => face with { Plane = placement.ToWorld(face.Plane) })]);

    /// <summary>Triangles for pictures, with flat shading. Closed once vertices at equal places are welded.</summary>
    public TriangleMesh Triangulate() => Triangulation.Build(this);

    /// <summary>
    /// Faults that would make a file of it useless, each as a plain sentence; empty when it is closed (also after rounding
    /// to 32-bit floats), finite, outward, and planar within <see cref="Tolerances.Planarity"/>.
    /// </summary>
    public ImmutableArray<string> Audit() => SolidAudit.Audit(this);
}

/// <summary>Separate bodies of a solid, found over triangles that share an edge.</summary>
internal static class Components
{
    public static int Count(Solid solid)
    {
        var (points, corners, _) = Triangulation.CornersOf(solid);
        var parent = Group(corners);
        var volume = new double[parent.Length];
        var area = new double[parent.Length];
        var origin = points[0];
        for (var t = 0; t < parent.Length; t++)
        {
            var (a, b, c) = (corners[3 * t], corners[(3 * t) + 1], corners[(3 * t) + 2]);
            var root = Root(parent, t);
            volume[root] += (points[a] - origin).Dot((points[b] - origin).Cross(points[c] - origin)) / 6;
            area[root] += (points[b] - points[a]).Cross(points[c] - points[a]).Length / 2;
        }

        // The skin of a hollow looks inwards: its volume is negative. A flake no thicker than round-off is no body.
        return volume.Zip(area).Count(part => part.First > Tolerances.Corner * part.Second / 2);
    }

    private static int[] Group(List<int> corners)
    {
        var parent = Enumerable.Range(0, corners.Count / 3).ToArray();
        var firstUse = new EdgeTable(corners.Count / 2);
        for (var i = 0; i < corners.Count; i++)
        {
            var (a, b) = (corners[i], corners[i % 3 == 2 ? i - 2 : i + 1]);
            var seen = firstUse.Undirected(a, b);
            if (seen < 0)
            {
                firstUse.SetUndirected(a, b, i / 3);
            }
            else
            {
                parent[Root(parent, seen)] = Root(parent, i / 3);
            }
        }

        return parent;
    }

    private static int Root(int[] parent, int i)
    {
        while (parent[i] != i)
        {
            i = parent[i] = parent[parent[i]];
        }

        return i;
    }
}
