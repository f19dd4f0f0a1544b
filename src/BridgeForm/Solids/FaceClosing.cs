namespace BridgeForm.Solids;

/// <summary>
/// Closes clipped faces along the cutting plane. At each on-plane vertex of a face the kept edges that leave, less those
/// that arrive, are counted; sorted along the line where face and plane meet, the running sum says which stretches
/// between neighbours belong to the face's boundary.
/// </summary>
internal sealed class FaceClosing(List<Vector3d> points, EdgeTable splits)
{
    private readonly List<Edge> _cap = new(32);
    private readonly List<(int Vertex, int Leaving, double Key)> _line = new(16);
    private Plane _plane;

    public void Begin(Plane plane)
    {
        _plane = plane;
        _cap.Clear();
        _line.Clear();
    }

    /// <summary>Counts an on-plane vertex of the face at hand.</summary>
    public void Note(int vertex, int leaving)
    {
        for (var i = 0; i < _line.Count; i++)
        {
            if (_line[i].Vertex != vertex)
            {
                continue;
            }

            _line[i] = (vertex, _line[i].Leaving + leaving, 0);
            return;
        }

        _line.Add((vertex, leaving, 0));
    }

    /// <summary>Adds the closing edges of the face at hand, and their reverses to the cap.</summary>
    public void Close(Plane face, List<Edge> edges)
    {
        if (_line.Count > 2)
        {
            Sort(face.Normal.Cross(_plane.Normal));
        }

        var running = 0;
        for (var i = 0; i + 1 < _line.Count; i++)
        {
            running -= _line[i].Leaving;
            for (var k = running; k > 0; k--)
            {
                Emit(_line[i].Vertex, _line[i + 1].Vertex, edges);
            }

            for (var k = running; k < 0; k++)
            {
                Emit(_line[i + 1].Vertex, _line[i].Vertex, edges);
            }
        }

        _line.Clear();
    }

    /// <summary>Keeps an edge of a face that lies on the plane.</summary>
    public void KeepOnPlane(Edge edge, List<Edge> edges) => Emit(edge.From, edge.To, edges);

    public void AppendCap(List<Edge> edges)
    {
        // Opposite closing edges cancel; what is left is the outline of the cap.
        for (var i = 0; i < _cap.Count; i++)
        {
            var opposite = _cap.IndexOf(_cap[i].Reversed, i + 1);
            if (opposite < 0)
            {
                edges.Add(_cap[i]);
            }
            else
            {
                _cap.RemoveAt(opposite);
            }
        }
    }

    private void Emit(int from, int to, List<Edge> edges)
    {
        var between = splits.Undirected(from, to);
        if (between >= 0)
        {
            Emit(from, between, edges);
            Emit(between, to, edges);
            return;
        }

        edges.Add(new Edge(from, to));
        _cap.Add(new Edge(to, from));
    }

    private void Sort(Vector3d along)
    {
        for (var i = 0; i < _line.Count; i++)
        {
            _line[i] = _line[i] with { Key = along.Dot(points[_line[i].Vertex]) };
        }

        for (var i = 1; i < _line.Count; i++)
        {
            var item = _line[i];
            var at = i;
            for (; at > 0 && _line[at - 1].Key > item.Key; at--)
            {
                _line[at] = _line[at - 1];
            }

            _line[at] = item;
        }
    }
}
