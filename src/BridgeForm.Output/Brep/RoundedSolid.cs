using System.Collections.Immutable;
using BridgeForm.Quantities;
using BridgeForm.Solids;

namespace BridgeForm.Output.Brep;

/// <summary>
/// A cut stick with its holes round. The solid has prisms for them, and its faces meet as those of the real body do: the sides of a
/// prism become the halves of a wall, corners between two sides vanish, and what is left of its edges becomes arcs. Corners where
/// wall and planes meet move to where these meet exactly.
/// </summary>
internal static class RoundedSolid
{
    /// <summary>
    /// The body. A hole keeps its flat sides where it meets another hole or grazes an edge, so that round and flat would not meet
    /// alike.
    /// </summary>
    public static ExactBody Build(CutStock stock, Solid solid)
    {
        RoundHole[] holes = [.. stock.Holes.Select(h => RoundHole.Of(stock, h))];
        var flat = new HashSet<int>();
        for (var i = 0; i < holes.Length; i++)
        {
            for (var k = 0; k < i; k++)
            {
                if (holes[i].Meets(holes[k]))
                {
                    flat.UnionWith([i, k]);
                }
            }
        }

        while (true)
        {
            var left = flat.Count;
            var walls = HoleWalls.Find(solid, holes, flat);
            var corners = MovedCorners.Find(walls, flat);
            if (flat.Count == left && new BodyFaces(walls, corners, flat).Build() is { } body)
            {
                return body;
            }
        }
    }
}

/// <summary>Which faces of a solid are sides of which round hole.</summary>
internal sealed class HoleWalls
{
    private readonly Dictionary<(int From, int To), int> _faces = [];
    private readonly int[] _halves;
    private readonly int[] _patches;

    private HoleWalls(Solid solid, ImmutableArray<Face> faces, RoundHole[] holes, int[] halves)
    {
        (Solid, Faces, Holes, _halves) = (solid, faces, holes, halves);
        for (var f = 0; f < faces.Length; f++)
        {
            foreach (var loop in faces[f].Loops)
            {
                for (var i = 0; i < loop.Length; i++)
                {
                    _faces[(loop[i], loop[(i + 1) % loop.Length])] = f;
                }
            }
        }

        _patches = Patches();
    }

    /// <summary>The solid with flat sides.</summary>
    public Solid Solid { get; }

    /// <summary>Its faces, each with one outer loop, which comes first.</summary>
    public ImmutableArray<Face> Faces { get; }

    /// <summary>The stick's holes.</summary>
    public RoundHole[] Holes { get; }

    /// <summary>Finds the sides of all holes that are to be round; one that cannot be told becomes flat.</summary>
    public static HoleWalls Find(Solid solid, RoundHole[] holes, HashSet<int> flat)
    {
        var faces = solid.Faces.SelectMany(f => FaceRegions.Of(solid, f).Select(r => f with { Loops = r })).ToImmutableArray();
        var halves = new int[faces.Length];
        for (var f = 0; f < halves.Length; f++)
        {
            halves[f] = -1;
            for (var h = 0; h < holes.Length; h++)
            {
                if (flat.Contains(h) || holes[h].HalfOf(faces[f], solid) is not { } half)
                {
                    continue;
                }

                if (halves[f] >= 0)
                {
                    flat.UnionWith([h, halves[f] / 2]);
                }

                halves[f] = (2 * h) + half;
            }
        }

        return new HoleWalls(solid, faces, holes, halves);
    }

    /// <summary>Whether a face stays as it is.</summary>
    public bool IsFlat(int face) => _halves[face] < 0;

    /// <summary>Index of the hole that a side belongs to.</summary>
    public int HoleOf(int face) => _halves[face] / 2;

    /// <summary>Which half of the hole's wall a side belongs to.</summary>
    public int HalfOf(int face) => _halves[face] % 2;

    /// <summary>A side's patch: the sides of one half that hang together, by the first of them. A flat face is its own.</summary>
    public int PatchOf(int face) => _patches[face];

    /// <summary>The face that uses an edge from one vertex to the other.</summary>
    public int FaceAlong(int from, int to) => _faces[(from, to)];

    /// <summary>The patches of walls, each with its sides, in order.</summary>
    public IEnumerable<IGrouping<int, int>> WallPatches() =>
        Enumerable.Range(0, _halves.Length).Where(f => !IsFlat(f)).GroupBy(PatchOf);

    private int[] Patches()
    {
        var patches = Enumerable.Range(0, _halves.Length).ToArray();
        foreach (var ((from, to), face) in _faces)
        {
            var other = _faces[(to, from)];
            if (_halves[face] >= 0 && _halves[face] == _halves[other])
            {
                var (a, b) = (Root(face), Root(other));
                patches[Math.Max(a, b)] = Math.Min(a, b);
            }
        }

        return [.. patches.Select((_, f) => Root(f))];

        int Root(int face)
        {
            while (patches[face] != face)
            {
                face = patches[face];
            }

            return face;
        }
    }
}

/// <summary>Where the solid's corners lie once its holes are round.</summary>
internal static class MovedCorners
{
    // Of the radius. Corners of the prism stand 0.3 % outside the circle; one that moves further is one where prism and circle
    // graze an edge, each in its own way.
    private const double Furthest = 0.1;

    /// <summary>
    /// Places of all corners; null for those between two sides of one wall, which are corners no more. A hole is made flat where a
    /// corner's place is not plain.
    /// </summary>
    public static Vector3d?[] Find(HoleWalls walls, HashSet<int> flat)
    {
        var faces = new List<int>?[walls.Solid.Vertices.Length];
        for (var f = 0; f < walls.Faces.Length; f++)
        {
            foreach (var v in walls.Faces[f].Loops.SelectMany(l => l))
            {
                (faces[v] ??= []).Add(f);
            }
        }

        return [.. faces.Select((around, v) => Place(walls, walls.Solid.Vertices[v], around ?? [], flat))];
    }

    private static Vector3d? Place(HoleWalls walls, Vector3d place, List<int> faces, HashSet<int> flat)
    {
        var holes = faces.Where(f => !walls.IsFlat(f)).Select(walls.HoleOf).Distinct().ToList();
        if (holes.Count == 0)
        {
            return place;
        }

        var planes = Distinct(faces.Where(walls.IsFlat).Select(f => walls.Faces[f].Plane));
        var isOnSeam = faces.Where(f => !walls.IsFlat(f)).Select(walls.HalfOf).Distinct().Count() == 2;
        if (holes.Count == 1 && planes.Count == 1 && !isOnSeam)
        {
            return null;
        }

        var hole = walls.Holes[holes[0]];
        var moved = (holes.Count, planes.Count, isOnSeam) switch
        {
            (1, 1, true) => hole.SeamOn(planes[0], place),
            (1, >= 2, false) => hole.WallOn(planes[0], planes[1], place),
            _ => null,
        };
        if (moved is not { } at || (at - place).Length > Furthest * hole.Radius
            || planes.Exists(p => Math.Abs(p.SignedDistance(at)) > Tolerances.Planarity))
        {
            flat.UnionWith(holes);
            return place;
        }

        return at;
    }

    private static List<Plane> Distinct(IEnumerable<Plane> planes)
    {
        var distinct = new List<Plane>();
        foreach (var plane in planes)
        {
            if (!distinct.Exists(p => (p.Normal - plane.Normal).Length < Tolerances.Parallel))
            {
                distinct.Add(plane);
            }
        }

        return distinct;
    }
}
