namespace BridgeForm.Solids;

/// <summary>Loops of a face as rings of nodes, so that they can be joined and eaten up. A vertex may have several nodes.</summary>
internal sealed class Rings(FlatPoint[] flat)
{
    public List<int> Vertex { get; } = new(64);

    public List<int> Next { get; } = new(64);

    public List<int> Previous { get; } = new(64);

    public int Add(ReadOnlySpan<int> loop)
    {
        var first = Vertex.Count;
        for (var i = 0; i < loop.Length; i++)
        {
            Vertex.Add(loop[i]);
            Next.Add(first + ((i + 1) % loop.Length));
            Previous.Add(first + ((i + loop.Length - 1) % loop.Length));
        }

        return first;
    }

    public FlatPoint At(int node) => flat[Vertex[node]];

    /// <summary>Twice the signed area of the ring.</summary>
    public double Area(int ring)
    {
        double area = 0;
        var origin = At(ring);
        for (var n = Next[ring]; n != ring; n = Next[n])
        {
            area += FlatPoint.Turn(origin, At(n), At(Next[n]));
        }

        return area;
    }

    public int Rightmost(int ring)
    {
        var best = ring;
        for (var n = Next[ring]; n != ring; n = Next[n])
        {
            if (At(n).X > At(best).X)
            {
                best = n;
            }
        }

        return best;
    }

    public bool IsReflex(int node) => FlatPoint.Turn(At(Previous[node]), At(node), At(Next[node])) <= 0;

    /// <summary>Whether the way from the node to a point starts inside the ring.</summary>
    public bool Opens(int node, FlatPoint towards)
    {
        var (before, here, after) = (At(Previous[node]), At(node), At(Next[node]));
        var left = FlatPoint.Turn(here, after, towards) >= 0;
        var right = FlatPoint.Turn(before, here, towards) >= 0;
        return IsReflex(node) ? left || right : left && right;
    }

    /// <summary>Joins the ring of <paramref name="inner"/> into the ring of <paramref name="outer"/> by a bridge there and back.</summary>
    public void Bridge(int outer, int inner)
    {
        var outerTwin = Twin(outer);
        var innerTwin = Twin(inner);
        var (afterOuter, beforeInner) = (Next[outer], Previous[inner]);
        Connect(outer, inner);
        Connect(beforeInner, innerTwin);
        Connect(innerTwin, outerTwin);
        Connect(outerTwin, afterOuter);
    }

    public void Remove(int node) => Connect(Previous[node], Next[node]);

    private int Twin(int node)
    {
        Vertex.Add(Vertex[node]);
        Next.Add(0);
        Previous.Add(0);
        return Vertex.Count - 1;
    }

    private void Connect(int from, int to)
    {
        Next[from] = to;
        Previous[to] = from;
    }
}
