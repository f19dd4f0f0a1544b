using System.Collections.Immutable;
using System.Runtime.Intrinsics;
using BridgeForm.Quantities;

namespace BridgeForm.Solids;

/// <summary>A convex body prepared for contact tests. Metres.</summary>
public sealed class ConvexBody
{
    // The corners' coordinates one axis at a time, the last corner repeated to a whole number of steps of four.
    private readonly double[] _x;
    private readonly double[] _y;
    private readonly double[] _z;

    private ConvexBody(
        ImmutableArray<Vector3d> vertices,
        ImmutableArray<Plane> planes,
        ImmutableArray<(int From, int To)> edges,
        ImmutableArray<Vector3d> normals,
        ImmutableArray<Vector3d> directions)
    {
        Vertices = vertices;
        Planes = planes;
        Edges = edges;
        FaceNormals = normals;
        EdgeDirections = directions;
        var padded = (vertices.Length + Step - 1) / Step * Step;
        (_x, _y, _z) = (new double[padded], new double[padded], new double[padded]);
        for (var i = 0; i < padded; i++)
        {
            var vertex = vertices[Math.Min(i, vertices.Length - 1)];
            (_x[i], _y[i], _z[i]) = (vertex.X, vertex.Y, vertex.Z);
        }
    }

    private static int Step => Vector256<double>.Count;

    /// <summary>Corners.</summary>
    public ImmutableArray<Vector3d> Vertices { get; }

    /// <summary>Planes of its faces, each once, outward.</summary>
    public ImmutableArray<Plane> Planes { get; }

    /// <summary>Edges as pairs of vertex indices, each once.</summary>
    public ImmutableArray<(int From, int To)> Edges { get; }

    /// <summary>Unit normals of the faces; parallel ones, also opposite ones, count once.</summary>
    internal ImmutableArray<Vector3d> FaceNormals { get; }

    /// <summary>Unit directions of the edges; parallel edges, also opposite ones, count once.</summary>
    public ImmutableArray<Vector3d> EdgeDirections { get; }

    /// <summary>The smallest box along the axes that holds the body, metres.</summary>
    public (Vector3d Min, Vector3d Max) Bounds => Measures.Bounds(Vertices.AsSpan());

    /// <summary>The body of a convex solid. What a concave one gives is of no use.</summary>
    public static ConvexBody Of(Solid solid)
    {
        var planes = new List<Plane>();
        var edges = new List<(int From, int To)>();
        var normals = new List<Vector3d>();
        var directions = new List<Vector3d>();
        foreach (var face in solid.Faces)
        {
            if (!planes.Exists(p => p.Normal.Dot(face.Plane.Normal) > 0 && Parallel(p.Normal, face.Plane.Normal)))
            {
                planes.Add(face.Plane);
            }

            if (!normals.Exists(n => Parallel(n, face.Plane.Normal)))
            {
                normals.Add(face.Plane.Normal);
            }

            foreach (var loop in face.Loops)
            {
                for (var i = 0; i < loop.Length; i++)
                {
                    var (from, to) = (loop[i], loop[(i + 1) % loop.Length]);
                    if (from > to)
                    {
                        continue; // the other face has it too
                    }

                    edges.Add((from, to));
                    var direction = (solid.Vertices[to] - solid.Vertices[from]).Normalized();
                    if (!directions.Exists(d => Parallel(d, direction)))
                    {
                        directions.Add(direction);
                    }
                }
            }
        }

        return new ConvexBody(solid.Vertices, [.. planes], [.. edges], [.. normals], [.. directions]);
    }

    /// <summary>The same body placed in other axes.</summary>
    public ConvexBody Placed(Placement placement) => new(
        Map(Vertices, placement, static (p, v) => p.ToWorld(v)),
        Map(Planes, placement, static (p, plane) => p.ToWorld(plane)),
        Edges,
        Map(FaceNormals, placement, static (p, n) => p.DirectionToWorld(n)),
        Map(EdgeDirections, placement, static (p, d) => p.DirectionToWorld(d)));

    /// <summary>From the lowest to the highest point along a direction, four corners at a time.</summary>
    internal (double Low, double High) Range(Vector3d direction)
    {
        var (dx, dy, dz) = (Vector256.Create(direction.X), Vector256.Create(direction.Y), Vector256.Create(direction.Z));
        var low = Vector256.Create(double.PositiveInfinity);
        var high = Vector256.Create(double.NegativeInfinity);
        ReadOnlySpan<double> x = _x, y = _y, z = _z;
        for (; x.Length >= Step; x = x[Step..], y = y[Step..], z = z[Step..])
        {
            // Sums in the order of Vector3d.Dot: the same bits.
            var at = (dx * Vector256.Create(x)) + (dy * Vector256.Create(y)) + (dz * Vector256.Create(z));
            low = Vector256.MinNative(low, at);
            high = Vector256.MaxNative(high, at);
        }

        var (lows, highs) = (Vector128.MinNative(low.GetLower(), low.GetUpper()), Vector128.MaxNative(high.GetLower(), high.GetUpper()));

        // Which of −0 and 0 is the lower is up to the processor: neither goes on as −0.
        return (Math.Min(lows[0], lows[1]) + 0.0, Math.Max(highs[0], highs[1]) + 0.0);
    }

    private static bool Parallel(Vector3d a, Vector3d b)
    {
        var across = a.Cross(b);
        return across.Dot(across) < Tolerances.Parallel * Tolerances.Parallel;
    }

    private static ImmutableArray<T> Map<T>(ImmutableArray<T> items, Placement placement, Func<Placement, T, T> step)
    {
        var mapped = ImmutableArray.CreateBuilder<T>(items.Length);
        foreach (var item in items)
        {
            mapped.Add(step(placement, item));
        }

        return mapped.MoveToImmutable();
    }
}

/// <summary>A stick as convex cells that touch but do not overlap, for contact tests. Holes are not taken out.</summary>
internal static class ConvexCells
{
    public static ImmutableArray<ConvexBody> Split(CutStock stock)
    {
        var whole = StockSolid.Build(stock with { Channels = [], Holes = [] }).OrNull;
        if (whole is null)
        {
            return [];
        }

        var cells = new List<Solid> { whole };
        foreach (var channel in stock.Channels)
        {
            cells = [.. cells.SelectMany(cell => Split(cell, StockCutters.Build(stock, channel)))];
        }

        return [.. cells.Select(ConvexBody.Of)];
    }

    /// <summary>What lies beyond each plane of the cutter, peeled off one by one.</summary>
    private static IEnumerable<Solid> Split(Solid cell, ConvexCutter cutter)
    {
        var rest = cell;
        foreach (var plane in cutter.Planes)
        {
            if (rest.Cut(plane.Flipped(), cutter.Origin).OrNull is { } beyond)
            {
                yield return beyond;
            }

            if (rest.Cut(plane, cutter.Origin).OrNull is not { } inside)
            {
                yield break;
            }

            rest = inside;
        }
    }
}

/// <summary>
/// A convex region: all points below every plane (normals point out of it). It may be unbounded: a channel is two walls
/// and a floor, open below.
/// </summary>
/// <param name="Planes">Its planes, in any order; those that take most away first are fastest.</param>
/// <param name="Origin">What a face made by it counts as.</param>
public sealed record ConvexCutter(ImmutableArray<Plane> Planes, FaceOrigin Origin)
{
    /// <summary>The region with each plane moved outwards by a distance in metres.</summary>
    public ConvexCutter Grown(double distance) =>
        this with { Planes = [.. Planes.Select(plane => plane.Shifted(distance))] };

    /// <summary>A box with its sides along the axes.</summary>
    public static ConvexCutter Box(Vector3d min, Vector3d max, FaceOrigin origin) => new(
        [
            new Plane(-Vector3d.UnitX, -min.X),
            new Plane(Vector3d.UnitX, max.X),
            new Plane(-Vector3d.UnitY, -min.Y),
            new Plane(Vector3d.UnitY, max.Y),
            new Plane(-Vector3d.UnitZ, -min.Z),
            new Plane(Vector3d.UnitZ, max.Z),
        ],
        origin);
}
