using System.Runtime.InteropServices;
using BridgeForm.Quantities;

namespace BridgeForm.Solids;

/// <summary>
/// Triangles of any face: holes are bridged, then the best-shaped ear is clipped again and again, and at last diagonals
/// are turned where that makes better triangles. Uses every vertex of the boundary, also those on a straight edge.
/// </summary>
internal sealed class EarClipping
{
    private const double NoEar = -2; // below every shape that an ear may have

    private readonly Rings _rings;
    private readonly List<double> _ears = new(64);

    private readonly EdgeTable _taken;

    private EarClipping(Rings rings, EdgeTable taken) => (_rings, _taken) = (rings, taken);

    // How choosy the search for an ear is; the later grades are for loops that touch themselves within round-off.
    private enum Grade
    {
        Clear,
        Touching,
        Flat,
        Any,
    }

    public static void Fill(List<Vector3d> points, Face face, EdgeTable taken, List<int> corners)
    {
        var flat = FlatPoint.Project(points, face.Plane.Normal);
        var rings = new Rings(flat);
        var loops = AddLoops(rings, points, face);
        var start = corners.Count;
        var clipping = new EarClipping(rings, taken);
        foreach (var ring in HoleBridges.Join(rings, loops))
        {
            clipping.Clip(ring, corners);
        }

        var owners = EdgeFlips.Improve(flat, taken, CollectionsMarshal.AsSpan(corners)[start..]);
        SharedDiagonals.Split(owners, taken, points, corners, start);
    }

    private static List<int> AddLoops(Rings rings, List<Vector3d> points, Face face)
    {
        var loops = new List<int>(face.Loops.Length);
        if (!Touch(face))
        {
            foreach (var loop in face.Loops)
            {
                loops.Add(rings.Add(loop.AsSpan()));
            }

            return loops;
        }

        // Loops that touch at a vertex need no bridge: walked as one, the inside stays to the left.
        var (edges, vertices, lengths) = (new List<Edge>(), new List<int>(), new List<int>());
        foreach (var loop in face.Loops)
        {
            for (var i = 0; i < loop.Length; i++)
            {
                edges.Add(new Edge(loop[i], loop[(i + 1) % loop.Length]));
            }
        }

        new LoopLinker(points).Link(CollectionsMarshal.AsSpan(edges), face.Plane.Normal, false, vertices, lengths);
        var start = 0;
        foreach (var length in lengths)
        {
            loops.Add(rings.Add(CollectionsMarshal.AsSpan(vertices).Slice(start, length)));
            start += length;
        }

        return loops;
    }

    private static bool Touch(Face face)
    {
        if (face.Loops.Length == 1)
        {
            return false;
        }

        var seen = new HashSet<int>();
        return face.Loops.Any(loop => loop.Any(v => !seen.Add(v)));
    }

    private void Clip(int ring, List<int> corners)
    {
        CollectionsMarshal.SetCount(_ears, _rings.Vertex.Count);
        var left = JudgeAll(ring, Grade.Clear);
        for (; left > 3; left--)
        {
            var ear = NextEar(ring);
            var (before, after) = (_rings.Previous[ear], _rings.Next[ear]);
            Emit(ear, corners);
            _rings.Remove(ear);
            _ears[before] = Judge(before, Grade.Clear);
            _ears[after] = Judge(after, Grade.Clear);
            ring = after;
        }

        Emit(ring, corners);
    }

    private int NextEar(int ring)
    {
        var ear = Best(ring);
        // Clipping may have freed ears: look again, then become less choosy.
        for (var grade = Grade.Clear; ear < 0; grade++)
        {
            JudgeAll(ring, grade);
            ear = Best(ring);
        }

        return ear;
    }

    private int Best(int ring)
    {
        var best = -1;
        var n = ring;
        do
        {
            if (_ears[n] > NoEar && (best < 0 || _ears[n] > _ears[best]))
            {
                best = n;
            }

            n = _rings.Next[n];
        }
        while (n != ring);
        return best;
    }

    private int JudgeAll(int ring, Grade grade)
    {
        var count = 0;
        var n = ring;
        do
        {
            _ears[n] = Judge(n, grade);
            count++;
            n = _rings.Next[n];
        }
        while (n != ring);
        return count;
    }

    /// <summary>The shape of the triangle that the node would give, or <see cref="NoEar"/>.</summary>
    private double Judge(int ear, Grade grade)
    {
        var (before, after) = (_rings.Previous[ear], _rings.Next[ear]);
        var (a, b, c) = (_rings.At(before), _rings.At(ear), _rings.At(after));
        var shape = FlatPoint.Shape(a, b, c);
        if (grade == Grade.Any)
        {
            return double.IsNaN(shape) ? -1 : Math.Max(shape, -1);
        }

        if (!(shape > (grade == Grade.Flat ? -Tolerances.Corner : Tolerances.Parallel)))
        {
            return NoEar;
        }

        if (grade <= Grade.Touching && IsTaken(before, after))
        {
            return NoEar;
        }

        var slack = FlatPoint.Slack(a, b, c);
        for (var n = _rings.Next[after]; n != before; n = _rings.Next[n])
        {
            if (!_rings.IsReflex(n) || IsCorner(_rings.Vertex[n], before, ear, after))
            {
                continue;
            }

            var p = _rings.At(n);
            if (grade == Grade.Clear ? FlatPoint.Holds(a, b, c, p, slack) : FlatPoint.HoldsInside(a, b, c, p))
            {
                return NoEar;
            }
        }

        return shape;
    }

    // The last four vertices share their diagonal with the triangle that is left.
    private bool IsTaken(int before, int after) =>
        _rings.Next[_rings.Next[after]] != before && _taken.Undirected(_rings.Vertex[before], _rings.Vertex[after]) >= 0;

    private bool IsCorner(int vertex, int before, int ear, int after) =>
        vertex == _rings.Vertex[before] || vertex == _rings.Vertex[ear] || vertex == _rings.Vertex[after];

    private void Emit(int ear, List<int> corners)
    {
        corners.Add(_rings.Vertex[_rings.Previous[ear]]);
        corners.Add(_rings.Vertex[ear]);
        corners.Add(_rings.Vertex[_rings.Next[ear]]);
    }
}
