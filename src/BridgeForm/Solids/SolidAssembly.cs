using System.Collections.Immutable;
using System.Runtime.InteropServices;
using BridgeForm.Quantities;

namespace BridgeForm.Solids;

/// <summary>
/// Makes a solid of a finished shell: links loops, drops vertices that no corner needs any more, and refuses a shell
/// whose edges are not used exactly once in each direction.
/// </summary>
internal sealed class SolidAssembly(List<Vector3d> points, LoopLinker linker, EdgeTable table)
{
    private const int Straight = -1;
    private const int Unplaced = -2;

    private readonly List<int> _vertices = new(128);
    private readonly List<int> _lengths = new(32);
    private readonly List<(ShellFace Face, int Loops)> _faces = new(32);
    private readonly List<int> _leaving = new(64);
    private readonly TouchingEdges _touching = new(points);

    /// <summary>Whether an edge of the last solid lies inside a third face: wood that hangs together by a line.</summary>
    public bool Touches { get; private set; }

    /// <summary>The solid, or null when the shell is not closed in the strict sense.</summary>
    public Solid? Build(Shell shell, int firstNew)
    {
        if (!LinkAll(shell))
        {
            return null;
        }

        CountLeaving();
        MarkStraight();
        DropStraight();
        if (!EachEdgeOnceEachWay())
        {
            return null;
        }

        if (_faces.Count == 0 || CrowdsOld(firstNew))
        {
            return null;
        }

        Touches = _touching.AnEdgeLiesInAThirdFace(_vertices, _lengths, _faces);
        return Pack();
    }

    private bool LinkAll(Shell shell)
    {
        _vertices.Clear();
        _lengths.Clear();
        _faces.Clear();
        foreach (ref readonly var face in CollectionsMarshal.AsSpan(shell.Faces))
        {
            var before = _lengths.Count;
            if (!linker.Link(shell.EdgesOf(face), face.Plane.Normal, true, _vertices, _lengths))
            {
                return false;
            }

            if (_lengths.Count > before)
            {
                _faces.Add((face, _lengths.Count - before));
            }
        }

        return true;
    }

    private void CountLeaving()
    {
        CollectionsMarshal.SetCount(_leaving, points.Count);
        var leaving = CollectionsMarshal.AsSpan(_leaving);
        leaving.Clear();
        foreach (var v in _vertices)
        {
            leaving[v]++;
        }
    }

    // A vertex with two edges has two faces; both see the same two neighbours and so both drop it, or neither.
    private void MarkStraight()
    {
        var leaving = CollectionsMarshal.AsSpan(_leaving);
        var start = 0;
        foreach (var length in _lengths)
        {
            for (var i = 0; i < length; i++)
            {
                var v = _vertices[start + i];
                if (leaving[v] != 2)
                {
                    continue;
                }

                var before = points[_vertices[start + (i == 0 ? length - 1 : i - 1)]];
                var after = points[_vertices[start + (i + 1 == length ? 0 : i + 1)]];
                if (IsStraight(before, points[v], after))
                {
                    leaving[v] = Straight;
                }
            }

            start += length;
        }
    }

    private static bool IsStraight(Vector3d a, Vector3d v, Vector3d b)
    {
        var along = b - a;
        var s = (v - a).Dot(along);
        var square = along.Dot(along);
        return s > 0 && s < square && (v - a).Cross(along).Length <= Tolerances.Corner * Math.Sqrt(square);
    }

    private void DropStraight()
    {
        int read = 0, write = 0, kept = 0, loop = 0, faces = 0;
        for (var f = 0; f < _faces.Count; f++)
        {
            var (face, loops) = _faces[f];
            var before = kept;
            for (var end = loop + loops; loop < end; loop++)
            {
                var start = write;
                for (var stop = read + _lengths[loop]; read < stop; read++)
                {
                    if (_leaving[_vertices[read]] != Straight)
                    {
                        _vertices[write++] = _vertices[read];
                    }
                }

                // Two edges there and back are nothing; the faces on both sides then meet each other.
                if (write - start > 2)
                {
                    _lengths[kept++] = write - start;
                }
                else
                {
                    write = start;
                }
            }

            if (kept > before)
            {
                _faces[faces++] = (face, kept - before);
            }
        }

        CollectionsMarshal.SetCount(_vertices, write);
        CollectionsMarshal.SetCount(_lengths, kept);
        CollectionsMarshal.SetCount(_faces, faces);
    }

    private bool EachEdgeOnceEachWay()
    {
        table.Clear();
        var (start, both) = (0, 0);
        foreach (var length in _lengths)
        {
            for (var i = 0; i < length; i++)
            {
                var (a, b) = (_vertices[start + i], _vertices[start + (i + 1 == length ? 0 : i + 1)]);
                ref var uses = ref a < b ? ref table.Slot(a, b) : ref table.Slot(b, a);
                var way = a < b ? 1 : 2;
                if ((uses & way) != 0)
                {
                    return false;
                }

                uses |= way;
                if (uses == 3)
                {
                    both++;
                }
            }

            start += length;
        }

        return both == table.Count;
    }

    // A new vertex so near an old one that they may be one in a file of 32-bit floats. New ones keep apart by themselves.
    private bool CrowdsOld(int firstNew)
    {
        var leaving = CollectionsMarshal.AsSpan(_leaving);
        var places = CollectionsMarshal.AsSpan(points);
        for (var v = firstNew; v < leaving.Length; v++)
        {
            if (leaving[v] <= 0)
            {
                continue;
            }

            for (var old = 0; old < firstNew; old++)
            {
                var apart = places[v] - places[old];
                if (leaving[old] > 0 && apart.Dot(apart) < Tolerances.Corner * Tolerances.Corner)
                {
                    return true;
                }
            }
        }

        return false;
    }

    private Solid Pack()
    {
        _leaving.Clear();
        for (var i = 0; i < points.Count; i++)
        {
            _leaving.Add(Unplaced);
        }

        var corners = new List<Vector3d>(_vertices.Count / 3);
        foreach (ref var v in CollectionsMarshal.AsSpan(_vertices))
        {
            if (_leaving[v] == Unplaced)
            {
                _leaving[v] = corners.Count;
                corners.Add(points[v]);
            }

            v = _leaving[v];
        }

        return new Solid(ImmutableCollectionsMarshal.AsImmutableArray(corners.ToArray()), PackFaces());
    }

    private ImmutableArray<Face> PackFaces()
    {
        var faces = new Face[_faces.Count];
        int loop = 0, start = 0;
        for (var f = 0; f < faces.Length; f++)
        {
            var (face, count) = _faces[f];
            var loops = new ImmutableArray<int>[count];
            for (var i = 0; i < count; i++, loop++)
            {
                var vertices = CollectionsMarshal.AsSpan(_vertices).Slice(start, _lengths[loop]).ToArray();
                loops[i] = ImmutableCollectionsMarshal.AsImmutableArray(vertices);
                start += _lengths[loop];
            }

            faces[f] = new Face(face.Plane, face.Origin, ImmutableCollectionsMarshal.AsImmutableArray(loops));
        }

        return ImmutableCollectionsMarshal.AsImmutableArray(faces);
    }
}
