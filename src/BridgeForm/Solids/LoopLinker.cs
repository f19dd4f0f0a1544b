using System.Runtime.InteropServices;
using BridgeForm.Quantities;

namespace BridgeForm.Solids;

/// <summary>
/// Links a chain of edges to closed loops. Opposite edges cancel first. Where several edges leave a vertex, the walk takes
/// the one furthest to the left, towards the face's inside, so that parts that touch at a corner come apart.
/// </summary>
internal sealed class LoopLinker(List<Vector3d> points)
{
    private const int None = -1;
    private const int Dead = -2;

    private readonly List<int> _head = new(64);
    private readonly List<int> _next = new(64);
    private readonly List<int> _walk = new(64);
    private readonly List<int> _seen = new(64);
    private bool _branches;

    /// <summary>
    /// Appends vertices of all loops to <paramref name="vertices"/> and each loop's length to <paramref name="lengths"/>.
    /// </summary>
    /// <param name="edges">Edges whose ends cancel at every vertex.</param>
    /// <param name="normal">The face's outward normal.</param>
    /// <param name="simple">Cut a loop that passes a vertex twice into loops that do not.</param>
    /// <param name="vertices">Gets the loops' vertices.</param>
    /// <param name="lengths">Gets the loops' lengths.</param>
    /// <returns>False when the chain is not closed: a defect of the caller.</returns>
    public bool Link(ReadOnlySpan<Edge> edges, Vector3d normal, bool simple, List<int> vertices, List<int> lengths)
    {
        Index(edges);
        Cancel(edges);
        var closed = true;
        for (var first = 0; first < edges.Length && closed; first++)
        {
            if (_next[first] == Dead)
            {
                continue;
            }

            _walk.Clear();
            closed = Walk(edges, first, normal);
            if (_branches && simple)
            {
                StoreSimple(vertices, lengths);
            }
            else
            {
                Store(_walk, 0, vertices, lengths);
            }
        }

        foreach (var edge in edges)
        {
            _head[edge.From] = None;
        }

        return closed;
    }

    private void Index(ReadOnlySpan<Edge> edges)
    {
        while (_head.Count < points.Count)
        {
            _head.Add(None);
        }

        CollectionsMarshal.SetCount(_next, edges.Length);
        _branches = false;
        for (var e = 0; e < edges.Length; e++)
        {
            ref var head = ref CollectionsMarshal.AsSpan(_head)[edges[e].From];
            _branches |= head != None;
            _next[e] = head;
            head = e;
        }
    }

    private void Cancel(ReadOnlySpan<Edge> edges)
    {
        for (var e = 0; e < edges.Length; e++)
        {
            if (_next[e] == Dead)
            {
                continue;
            }

            for (var o = _head[edges[e].To]; o != None; o = _next[o])
            {
                if (edges[o].To != edges[e].From)
                {
                    continue;
                }

                Remove(edges[o].From, o);
                Remove(edges[e].From, e);
                break;
            }
        }
    }

    private void Remove(int from, int edge)
    {
        var next = CollectionsMarshal.AsSpan(_next);
        ref var at = ref CollectionsMarshal.AsSpan(_head)[from];
        while (at != edge)
        {
            at = ref next[at];
        }

        at = next[edge];
        next[edge] = Dead;
    }

    private bool Walk(ReadOnlySpan<Edge> edges, int first, Vector3d normal)
    {
        var home = edges[first].From;
        for (var e = first; ;)
        {
            _walk.Add(edges[e].From);
            Remove(edges[e].From, e);
            var arrived = edges[e];
            e = _head[arrived.To];
            if (e == None || (_branches && arrived.To == home && TurnsBackHome(edges, arrived, first, normal)))
            {
                return arrived.To == home;
            }

            if (_next[e] != None)
            {
                e = Leftmost(edges, arrived, normal);
            }
        }
    }

    // At home the first edge itself competes: it was taken out when the walk began.
    private bool TurnsBackHome(ReadOnlySpan<Edge> edges, Edge arrived, int first, Vector3d normal) =>
        Turn(arrived, edges[first], normal) >= Turn(arrived, edges[Leftmost(edges, arrived, normal)], normal);

    private int Leftmost(ReadOnlySpan<Edge> edges, Edge arrived, Vector3d normal)
    {
        var best = _head[arrived.To];
        for (var e = _next[best]; e != None; e = _next[e])
        {
            if (Turn(arrived, edges[e], normal) > Turn(arrived, edges[best], normal))
            {
                best = e;
            }
        }

        return best;
    }

    // Angle from straight on to the leaving edge, positive to the left.
    private double Turn(Edge arriving, Edge leaving, Vector3d normal)
    {
        var inwards = points[arriving.To] - points[arriving.From];
        var outwards = points[leaving.To] - points[leaving.From];
        return Elementary.Atan2(normal.Dot(inwards.Cross(outwards)), inwards.Dot(outwards));
    }

    private static void Store(List<int> walk, int from, List<int> vertices, List<int> lengths)
    {
        for (var i = from; i < walk.Count; i++)
        {
            vertices.Add(walk[i]);
        }

        lengths.Add(walk.Count - from);
    }

    private void StoreSimple(List<int> vertices, List<int> lengths)
    {
        _seen.Clear();
        foreach (var v in _walk)
        {
            var at = _seen.IndexOf(v);
            if (at >= 0)
            {
                Store(_seen, at, vertices, lengths);
                _seen.RemoveRange(at, _seen.Count - at);
            }

            _seen.Add(v);
        }

        Store(_seen, 0, vertices, lengths);
    }
}
