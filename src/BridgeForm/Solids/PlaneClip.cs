using System.Runtime.InteropServices;
using BridgeForm.Quantities;

namespace BridgeForm.Solids;

internal enum ClipOutcome
{
    /// <summary>The whole shell lies below the plane; the output was not written.</summary>
    Untouched,

    /// <summary>Nothing lies below the plane; the output was not written.</summary>
    Nothing,

    /// <summary>The output holds what lies below.</summary>
    Clipped,
}

/// <summary>
/// Cuts a shell by a plane and keeps what is below. Each face keeps its edges below the plane; where they end on the plane
/// the face is closed along it, from one on-plane vertex to the next, and the cap is the reverse of all those closing
/// edges. So the result is closed whatever the shape, with no case for concave faces or vertices on the plane.
/// </summary>
internal sealed class PlaneClip
{
    private readonly List<Vector3d> _points;
    private readonly EdgeTable _splits;
    private readonly FaceClosing _closing;
    private readonly List<sbyte> _sides = new(64);
    private readonly List<int> _on = new(32);
    private readonly List<int> _between = new(4);

    /// <param name="points">Positions by vertex number; new vertices are added.</param>
    /// <param name="splits">Gets, for each edge cut in two, the vertex where: the other faces of the edge need it.</param>
    public PlaneClip(List<Vector3d> points, EdgeTable splits)
    {
        _points = points;
        _splits = splits;
        _closing = new FaceClosing(points, splits);
    }

    public ClipOutcome Clip(Shell input, Shell output, Plane plane, FaceOrigin origin)
    {
        var (below, above) = Classify(input, plane);
        if (!below)
        {
            return ClipOutcome.Nothing;
        }

        if (!above)
        {
            return ClipOutcome.Untouched;
        }

        SplitCrossingEdges(input, plane);
        if (_on.Count > 2)
        {
            SplitTouchedEdges(input);
        }

        output.Clear();
        _closing.Begin(plane);
        foreach (ref readonly var face in CollectionsMarshal.AsSpan(input.Faces))
        {
            ClipFace(input, face, plane, output);
        }

        var start = output.Edges.Count;
        _closing.AppendCap(output.Edges);
        output.CloseFace(start, plane, origin, Shell.Cap);
        return ClipOutcome.Clipped;
    }

    private (bool Below, bool Above) Classify(Shell input, Plane plane)
    {
        _sides.Clear();
        _on.Clear();
        var seen = 0;
        CollectionsMarshal.SetCount(_sides, _points.Count);
        var sides = CollectionsMarshal.AsSpan(_sides);
        sides.Fill(Unseen);
        var points = CollectionsMarshal.AsSpan(_points);
        foreach (var edge in input.Edges)
        {
            ref var side = ref sides[edge.From];
            if (side != Unseen)
            {
                continue;
            }

            var distance = plane.SignedDistance(points[edge.From]);
            side = distance > Tolerances.Corner ? (sbyte)1 : distance < -Tolerances.Corner ? (sbyte)-1 : (sbyte)0;
            if (side == 0)
            {
                _on.Add(edge.From);
            }

            seen |= side < 0 ? 1 : side > 0 ? 2 : 0;
        }

        return ((seen & 1) != 0, (seen & 2) != 0);
    }

    private const sbyte Unseen = sbyte.MaxValue;

    private void SplitCrossingEdges(Shell input, Plane plane)
    {
        foreach (var edge in input.Edges)
        {
            if (_sides[edge.From] * _sides[edge.To] >= 0 || _splits.Undirected(edge.From, edge.To) >= 0)
            {
                continue;
            }

            var (u, v) = edge.From < edge.To ? (edge.From, edge.To) : (edge.To, edge.From);
            _splits.SetUndirected(u, v, VertexAt(Crossing(_points[u], _points[v], plane)));
        }
    }

    private static Vector3d Crossing(Vector3d u, Vector3d v, Plane plane)
    {
        var (du, dv) = (plane.SignedDistance(u), plane.SignedDistance(v));
        return u + (du / (du - dv) * (v - u));
    }

    /// <summary>The on-plane vertex at a place: one that is there already, or a new one.</summary>
    private int VertexAt(Vector3d place)
    {
        foreach (var v in _on)
        {
            var apart = _points[v] - place;
            if (apart.Dot(apart) < Tolerances.Corner * Tolerances.Corner)
            {
                return v;
            }
        }

        _points.Add(place);
        _sides.Add(0);
        _on.Add(_points.Count - 1);
        return _points.Count - 1;
    }

    /// <summary>
    /// An edge that lies on the plane and passes through other on-plane vertices is cut in two there, for all faces alike.
    /// </summary>
    private void SplitTouchedEdges(Shell input)
    {
        foreach (var edge in input.Edges)
        {
            if (edge.From > edge.To || _sides[edge.From] != 0 || _sides[edge.To] != 0)
            {
                continue;
            }

            if (_splits.Undirected(edge.From, edge.To) >= 0)
            {
                continue;
            }

            var (a, b) = (_points[edge.From], _points[edge.To]);
            var along = (b - a).Normalized();
            var length = along.Dot(b - a);
            _between.Clear();
            foreach (var v in _on)
            {
                var s = along.Dot(_points[v] - a);
                if (v == edge.From || v == edge.To || s <= 0 || s >= length)
                {
                    continue;
                }

                if ((_points[v] - a - (s * along)).Length < Tolerances.Corner)
                {
                    _between.Add(v);
                }
            }

            if (_between.Count > 0)
            {
                SplitAt(edge, along);
            }
        }
    }

    private void SplitAt(Edge edge, Vector3d along)
    {
        _between.Sort((p, q) => along.Dot(_points[p]).CompareTo(along.Dot(_points[q])));
        var from = edge.From;
        foreach (var v in _between)
        {
            _splits.SetUndirected(from, edge.To, v);
            from = v;
        }
    }

    private void ClipFace(Shell input, in ShellFace face, Plane plane, Shell output)
    {
        var edges = input.EdgesOf(face);
        var (below, above, lying) = Survey(edges);
        if (below && !above && !lying)
        {
            output.CopyFace(face, edges);
        }
        else if (below)
        {
            var start = output.Edges.Count;
            KeepBelow(edges, output.Edges);
            _closing.Close(face.Plane, output.Edges);
            output.CloseFace(start, face.Plane, face.Origin, face.Source);
        }
        else if (!above && face.Plane.Normal.Dot(plane.Normal) > 0)
        {
            // The face lies on the plane and looks the same way: it stays what it is, and the cap leaves its place free.
            var start = output.Edges.Count;
            foreach (var edge in edges)
            {
                _closing.KeepOnPlane(edge, output.Edges);
            }

            output.CloseFace(start, face.Plane, face.Origin, face.Source);
        }
    }

    private (bool Below, bool Above, bool Lying) Survey(ReadOnlySpan<Edge> edges)
    {
        bool below = false, above = false, lying = false;
        foreach (var edge in edges)
        {
            var side = _sides[edge.From];
            below |= side < 0;
            above |= side > 0;
            lying |= side == 0 && _sides[edge.To] == 0;
        }

        return (below, above, lying);
    }

    private void KeepBelow(ReadOnlySpan<Edge> edges, List<Edge> kept)
    {
        foreach (var edge in edges)
        {
            var (from, to) = (_sides[edge.From], _sides[edge.To]);
            if (from == 0)
            {
                _closing.Note(edge.From, to < 0 ? 1 : 0);
            }

            if (to == 0 && from < 0)
            {
                _closing.Note(edge.To, -1);
            }

            if (from >= 0 && to >= 0)
            {
                continue;
            }

            if (from <= 0 && to <= 0)
            {
                kept.Add(edge);
                continue;
            }

            var at = _splits.Undirected(edge.From, edge.To);
            _closing.Note(at, from < 0 ? -1 : 1);
            kept.Add(from < 0 ? new Edge(edge.From, at) : new Edge(at, edge.To));
        }
    }
}
