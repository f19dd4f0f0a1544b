using System.Runtime.InteropServices;
using BridgeForm.Quantities;

namespace BridgeForm.Solids;

/// <summary>
/// Finds edges that lie inside a third face: there wood hangs together by a line, though each edge is used once each way.
/// </summary>
internal sealed class TouchingEdges(List<Vector3d> points)
{
    private readonly List<int> _firstFace = new(64);
    private readonly List<(int Face, int Next)> _faceList = new(128);

    public bool AnEdgeLiesInAThirdFace(List<int> vertices, List<int> lengths, List<(ShellFace Face, int Loops)> faces)
    {
        ListFaces(vertices, lengths, faces);
        var start = 0;
        foreach (var length in lengths)
        {
            for (var i = 0; i < length; i++)
            {
                var (a, b) = (vertices[start + i], vertices[start + (i + 1 == length ? 0 : i + 1)]);
                if (a < b && CommonFaces(a, b) > 2 && LiesInAFace(a, b, vertices, lengths, faces))
                {
                    return true;
                }
            }

            start += length;
        }

        return false;
    }

    // For each vertex a list of its faces, linked through (face, next); each face once.
    private void ListFaces(List<int> vertices, List<int> lengths, List<(ShellFace Face, int Loops)> faces)
    {
        CollectionsMarshal.SetCount(_firstFace, points.Count);
        CollectionsMarshal.AsSpan(_firstFace).Fill(-1);
        _faceList.Clear();
        int loop = 0, at = 0;
        for (var f = 0; f < faces.Count; f++)
        {
            for (var end = loop + faces[f].Loops; loop < end; loop++)
            {
                for (var stop = at + lengths[loop]; at < stop; at++)
                {
                    ref var first = ref CollectionsMarshal.AsSpan(_firstFace)[vertices[at]];
                    if (first >= 0 && _faceList[first].Face == f)
                    {
                        continue;
                    }

                    _faceList.Add((f, first));
                    first = _faceList.Count - 1;
                }
            }
        }
    }

    private int CommonFaces(int a, int b)
    {
        var common = 0;
        for (var i = _firstFace[a]; i >= 0; i = _faceList[i].Next)
        {
            if (IsOf(b, _faceList[i].Face))
            {
                common++;
            }
        }

        return common;
    }

    private bool IsOf(int vertex, int face)
    {
        for (var j = _firstFace[vertex]; j >= 0; j = _faceList[j].Next)
        {
            if (_faceList[j].Face == face)
            {
                return true;
            }
        }

        return false;
    }

    // Three faces with both ends are common: a face that a channel interrupts has both ends of the edge between. What
    // counts is whether the edge starts out into the face.
    private bool LiesInAFace(int a, int b, List<int> vertices, List<int> lengths, List<(ShellFace Face, int Loops)> faces)
    {
        int loop = 0, start = 0;
        for (var f = 0; f < faces.Count; f++)
        {
            var looked = IsOf(a, f) && IsOf(b, f);
            for (var end = loop + faces[f].Loops; loop < end; start += lengths[loop++])
            {
                var ring = CollectionsMarshal.AsSpan(vertices).Slice(start, lengths[loop]);
                if (looked && StartsInside(ring, a, b, faces[f].Face.Plane.Normal))
                {
                    return true;
                }
            }
        }

        return false;
    }

    private bool StartsInside(ReadOnlySpan<int> ring, int a, int b, Vector3d normal)
    {
        for (var i = 0; i < ring.Length; i++)
        {
            if (ring[i] != a)
            {
                continue;
            }

            var (before, after) = (ring[i == 0 ? ring.Length - 1 : i - 1], ring[i + 1 == ring.Length ? 0 : i + 1]);
            if (before == b || after == b)
            {
                continue;
            }

            var first = points[after] - points[a];
            var wide = Angle(first, points[before] - points[a], normal);
            var towards = Angle(first, points[b] - points[a], normal);
            if (towards > Tolerances.AlongOutline && towards < wide - Tolerances.AlongOutline)
            {
                return true;
            }
        }

        return false;
    }

    // Counter-clockwise, from 0 to a full turn.
    private static double Angle(Vector3d from, Vector3d to, Vector3d normal)
    {
        var angle = Elementary.Atan2(normal.Dot(from.Cross(to)), from.Dot(to));
        return angle < 0 ? angle + (2 * Math.PI) : angle;
    }
}
