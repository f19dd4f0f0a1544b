using System.Collections.Immutable;
using BridgeForm.Solids;

namespace BridgeForm.Output.ScaleModel;

/// <summary>A closed body that is printed. Metres, full size, in the bridge's axes.</summary>
/// <param name="Name">Id of the part, or what was added.</param>
/// <param name="Material">Of <see cref="PrintMaterials"/>.</param>
/// <param name="Points">Corners, each once.</param>
/// <param name="Corners">Three for each triangle, counter-clockwise seen from outside.</param>
internal sealed record PrintBody(string Name, int Material, ImmutableArray<Vector3d> Points, ImmutableArray<int> Corners)
{
    /// <summary>It is the bridge's own part, scaled and nothing else.</summary>
    public bool IsExact { get; init; }

    /// <summary>Which sizes were made larger, and from what, in words; empty where none was.</summary>
    public string Thicker { get; init; } = "";

    /// <summary>A solid in its place.</summary>
    public static PrintBody Of(string name, int material, Solid solid, Placement place)
    {
        var mesh = solid.Triangulate();
        var numbers = new Dictionary<Vector3d, int>();
        var points = ImmutableArray.CreateBuilder<Vector3d>();
        var corners = ImmutableArray.CreateBuilder<int>(mesh.Indices.Length);
        for (var t = 0; t < mesh.TriangleCount; t++)
        {
            var (a, b, c) = mesh.Triangle(t);
            var (i, j, k) = (Number(a), Number(b), Number(c));
            if (i != j && j != k && k != i)
            {
                corners.AddRange(i, j, k);
            }
        }

        return new PrintBody(name, material, points.ToImmutable(), corners.ToImmutable());

        int Number(Vector3d point)
        {
            if (!numbers.TryGetValue(point, out var number))
            {
                numbers[point] = number = points.Count;
                points.Add(place.ToWorld(point));
            }

            return number;
        }
    }

    /// <summary>A box between two corners of some axes.</summary>
    public static PrintBody Box(string name, int material, Vector3d low, Vector3d high, Placement axes) =>
        Of(name, material, Solid.Box(low, high), axes);

    /// <summary>
    /// An upright wall: from a level floor up to a line over x, so thick about a plane of one z.
    /// </summary>
    /// <param name="name">Its name.</param>
    /// <param name="material">Of <see cref="PrintMaterials"/>.</param>
    /// <param name="top">Its upper edge, x increasing, everywhere above the floor.</param>
    /// <param name="floor">Level of its lower edge.</param>
    /// <param name="middle">z of its middle.</param>
    /// <param name="thickness">How thick.</param>
    public static PrintBody Wall(
        string name, int material, IReadOnlyList<(double X, double Y)> top, double floor, double middle, double thickness)
    {
        var points = ImmutableArray.CreateBuilder<Vector3d>(4 * top.Count);
        var corners = ImmutableArray.CreateBuilder<int>();
        foreach (var (x, y) in top)
        {
            points.Add(new Vector3d(x, floor, middle - (thickness / 2)));
            points.Add(new Vector3d(x, floor, middle + (thickness / 2)));
            points.Add(new Vector3d(x, y, middle + (thickness / 2)));
            points.Add(new Vector3d(x, y, middle - (thickness / 2)));
        }

        Quad(0, 1, 2, 3);
        for (var i = 0; i + 1 < top.Count; i++)
        {
            for (var side = 0; side < 4; side++)
            {
                var (a, b) = ((4 * i) + side, (4 * i) + ((side + 1) % 4));
                Quad(b, a, a + 4, b + 4);
            }
        }

        var last = 4 * (top.Count - 1);
        Quad(last + 3, last + 2, last + 1, last);
        return new PrintBody(name, material, points.MoveToImmutable(), corners.ToImmutable());

        void Quad(int a, int b, int c, int d) => corners.AddRange(a, b, c, a, c, d);
    }
}
