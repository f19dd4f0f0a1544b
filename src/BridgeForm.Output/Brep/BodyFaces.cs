using System.Collections.Immutable;
using BridgeForm.Quantities;
using BridgeForm.Solids;

namespace BridgeForm.Output.Brep;

/// <summary>Puts edges and faces of the exact body together, once its corners are known.</summary>
/// <param name="walls">The solid, and which of its faces are walls of round holes.</param>
/// <param name="places">Where its corners lie; null for those that are none any more.</param>
/// <param name="flat">Holes that keep their flat sides; grows where a hole cannot be made round.</param>
internal sealed class BodyFaces(HoleWalls walls, Vector3d?[] places, HashSet<int> flat)
{
    private readonly Dictionary<(int From, int To, int Patch, int Face), int> _known = [];
    private readonly List<ExactEdge> _edges = [];
    private readonly List<ExactFace> _faces = [];
    private readonly int _flatBefore = flat.Count;

    /// <summary>The body; null when a hole turned out to be one that must stay flat.</summary>
    public ExactBody? Build()
    {
        for (var f = 0; f < walls.Faces.Length; f++)
        {
            if (walls.IsFlat(f))
            {
                var plane = walls.Faces[f].Plane;
                var near = walls.Solid.Vertices[walls.Faces[f].Loops[0][0]];
                var surface = new Surface.Flat(near - (plane.SignedDistance(near) * plane.Normal), plane.Normal);
                _faces.Add(new ExactFace(surface, [.. walls.Faces[f].Loops.Select(Loop)]));
            }
        }

        foreach (var patch in walls.WallPatches())
        {
            _faces.Add(new ExactFace(walls.Holes[walls.HoleOf(patch.Key)].Wall, [Loop(Outline(patch))]));
        }

        flat.UnionWith(Grazed());
        return flat.Count > _flatBefore ? null : Packed();
    }

    /// <summary>The vertices around a patch of a wall; a hole whose patch has more than one outline stays flat.</summary>
    private ImmutableArray<int> Outline(IGrouping<int, int> patch)
    {
        var next = new Dictionary<int, int>();
        foreach (var loop in patch.SelectMany(f => walls.Faces[f].Loops))
        {
            for (var i = 0; i < loop.Length; i++)
            {
                var (from, to) = (loop[i], loop[(i + 1) % loop.Length]);
                if (walls.PatchOf(walls.FaceAlong(to, from)) != patch.Key && !next.TryAdd(from, to))
                {
                    flat.Add(walls.HoleOf(patch.Key));
                    return [];
                }
            }
        }

        var outline = ImmutableArray.CreateBuilder<int>();
        for (var at = next.Keys.Min(); next.Remove(at, out var to); at = to)
        {
            outline.Add(at);
        }

        if (next.Count > 0)
        {
            flat.Add(walls.HoleOf(patch.Key));
        }

        return outline.ToImmutable();
    }

    /// <summary>Edges of a loop of vertices, from one that is still a corner to the next.</summary>
    private ImmutableArray<EdgeUse> Loop(ImmutableArray<int> loop)
    {
        var first = -1;
        for (var i = 0; i < loop.Length && first < 0; i++)
        {
            first = places[loop[i]] is null ? -1 : i;
        }

        var uses = ImmutableArray.CreateBuilder<EdgeUse>();
        for (var (i, at) = (first, first); first >= 0 && i < first + loop.Length;)
        {
            var steps = 1;
            while (places[loop[(i + steps) % loop.Length]] is null)
            {
                steps++;
            }

            at = i % loop.Length;
            uses.Add(Use(loop[at], loop[(at + steps) % loop.Length], loop[(at + 1) % loop.Length], steps));
            i += steps;
        }

        return uses.ToImmutable();
    }

    /// <summary>An edge between two corners, along which the loop first goes to a vertex.</summary>
    private EdgeUse Use(int from, int to, int over, int steps)
    {
        var (mine, other) = (walls.FaceAlong(from, over), walls.FaceAlong(over, from));
        var side = !walls.IsFlat(mine) ? mine : other;
        var plane = walls.IsFlat(mine) ? mine : other;
        if (walls.IsFlat(side) || !walls.IsFlat(plane))
        {
            return Straight(from, to);
        }

        var hole = walls.Holes[walls.HoleOf(side)];
        if (hole.IsAlong(walls.Faces[plane].Plane) && steps == 1)
        {
            return Straight(from, to);
        }

        if (hole.On(walls.Faces[plane].Plane) is not { } ellipse)
        {
            flat.Add(walls.HoleOf(side));
            return default;
        }

        return Arc(from, to, side, plane, ellipse);
    }

    private EdgeUse Straight(int from, int to)
    {
        var (before, now) = (walls.Solid.Vertices[to] - walls.Solid.Vertices[from], places[to]!.Value - places[from]!.Value);
        if (!(before.Dot(now) > Tolerances.Corner * before.Length))
        {
            // Turned over, or next to nothing: corners that moved towards each other. Whichever hole it was stays flat.
            flat.UnionWith(Enumerable.Range(0, walls.Holes.Length));
        }

        return Known((Math.Min(from, to), Math.Max(from, to), -1, -1), null, from < to);
    }

    private EdgeUse Arc(int from, int to, int side, int plane, Ellipse ellipse)
    {
        var (hole, half) = (walls.Holes[walls.HoleOf(side)], walls.HalfOf(side));
        var forward = hole.AngleIn(half, places[from]!.Value) < hole.AngleIn(half, places[to]!.Value);
        if (forward != hole.AngleIn(half, walls.Solid.Vertices[from]) < hole.AngleIn(half, walls.Solid.Vertices[to]))
        {
            flat.Add(walls.HoleOf(side));
        }

        var (low, high) = forward ? (from, to) : (to, from);
        return Known((low, high, walls.PatchOf(side), plane), ellipse, forward);
    }

    private EdgeUse Known((int From, int To, int Patch, int Face) edge, Ellipse? arc, bool forward)
    {
        if (!_known.TryGetValue(edge, out var index))
        {
            _known[edge] = index = _edges.Count;
            _edges.Add(new ExactEdge(edge.From, edge.To, arc));
        }

        return new EdgeUse(index, forward);
    }

    /// <summary>Round holes that reach over a straight edge, or through a plane beside them, by what the prism does not.</summary>
    private IEnumerable<int> Grazed()
    {
        for (var h = 0; h < walls.Holes.Length; h++)
        {
            var hole = walls.Holes[h];
            if (!flat.Contains(h) && (_edges.Exists(e => e.Arc is null && Distance(hole, e) < hole.Radius - Tolerances.Corner)
                || walls.Faces.Where((f, i) => walls.IsFlat(i) && hole.IsAlong(f.Plane)).Any(f => Pokes(hole, f))))
            {
                yield return h;
            }
        }
    }

    private double Distance(RoundHole hole, ExactEdge edge) => hole.DistanceOf(places[edge.From]!.Value, places[edge.To]!.Value);

    // The plane lies within the radius, but the prism's sides, a little inside, do not reach it.
    private bool Pokes(RoundHole hole, Face face) =>
        Math.Abs(face.Plane.SignedDistance(hole.Entry)) is var distance
        && distance < hole.Radius - Tolerances.Corner && distance > hole.PrismRadius && hole.IsBeside(face, walls.Solid);

    /// <summary>With the corners that are left, numbered in the order in which edges use them.</summary>
    private ExactBody Packed()
    {
        var numbers = new Dictionary<int, int>();
        var corners = ImmutableArray.CreateBuilder<Vector3d>();
        int Number(int vertex)
        {
            if (!numbers.TryGetValue(vertex, out var number))
            {
                numbers[vertex] = number = corners.Count;
                corners.Add(places[vertex]!.Value);
            }

            return number;
        }

        var edges = _edges.Select(e => new ExactEdge(Number(e.From), Number(e.To), e.Arc)).ToImmutableArray();
        return new ExactBody(corners.ToImmutable(), edges, [.. _faces]);
    }
}
