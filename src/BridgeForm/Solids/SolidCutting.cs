using System.Runtime.InteropServices;
using BridgeForm.Quantities;

namespace BridgeForm.Solids;

/// <summary>
/// Cuts and subtractions. One instance may be used again and again by one thread; it keeps its buffers.
/// </summary>
internal sealed class SolidCutting
{
    // Wood that hangs together by a line does not hang together: when faces would meet in a line, the cutter takes some
    // microns more. Several sizes, since one may meet the next corner; all far below what a saw can do.
    private static readonly double[] Growths =
        [0, 4 * Tolerances.Corner, 7 * Tolerances.Corner, 12 * Tolerances.Corner, 20 * Tolerances.Corner, 33 * Tolerances.Corner];

    [ThreadStatic]
    private static SolidCutting? s_mine;

    private readonly List<Vector3d> _points = new(128);
    private readonly EdgeTable _splits = new();
    private readonly EdgeTable _uses = new();
    private readonly List<(int Start, int Count)> _parts = new(32);
    private readonly PlaneClip _clip;
    private readonly SolidAssembly _assembly;
    private readonly Shell _original = new();
    private Shell _inside = new();
    private Shell _spare = new();

    private SolidCutting()
    {
        _clip = new PlaneClip(_points, _splits);
        _assembly = new SolidAssembly(_points, new LoopLinker(_points), _uses);
    }

    public static SolidCutting Mine => s_mine ??= new SolidCutting();

    public SolidResult Cut(Solid solid, Plane plane, FaceOrigin origin)
    {
        Solid? touching = null;
        foreach (var growth in Growths)
        {
            Load(solid, _inside);
            var outcome = _clip.Clip(_inside, _spare, plane.Shifted(-growth), origin);
            if (outcome == ClipOutcome.Untouched)
            {
                return solid;
            }

            if (outcome == ClipOutcome.Nothing || IsFilm(_spare))
            {
                return SolidFault.NothingLeft;
            }

            if (Build(_spare, _points.Count, ref touching) is { } cut)
            {
                return Wood(cut);
            }
        }

        return OrTouching(touching);
    }

    public SolidResult Intersect(Solid solid, ConvexCutter cutter)
    {
        Solid? touching = null;
        foreach (var growth in Growths)
        {
            Load(solid, _inside);
            var outcome = ClipByAll(cutter, -growth);
            if (outcome == ClipOutcome.Untouched)
            {
                return solid;
            }

            if (outcome == ClipOutcome.Nothing || IsFilm(_inside))
            {
                return SolidFault.NothingLeft;
            }

            if (Build(_inside, _points.Count, ref touching) is { } cut)
            {
                return Wood(cut);
            }
        }

        return OrTouching(touching);
    }

    public SolidResult Subtract(Solid solid, ConvexCutter cutter)
    {
        Solid? touching = null;
        foreach (var growth in Growths)
        {
            Load(solid, _inside);
            var outcome = ClipByAll(cutter, growth);
            if (outcome == ClipOutcome.Nothing || (outcome == ClipOutcome.Clipped && IsFilm(_inside)))
            {
                return solid;
            }

            if (outcome == ClipOutcome.Untouched)
            {
                return SolidFault.NothingLeft;
            }

            TakeInsideOut(solid, cutter.Origin);
            if (IsFilm(_spare))
            {
                return SolidFault.NothingLeft;
            }

            if (Build(_spare, solid.Vertices.Length, ref touching) is { } rest)
            {
                return Wood(rest);
            }
        }

        return OrTouching(touching);
    }

    private Solid? Build(Shell shell, int firstNew, ref Solid? touching)
    {
        var solid = _assembly.Build(shell, firstNew);
        if (solid is null || !_assembly.Touches)
        {
            return solid;
        }

        touching ??= solid;
        return null;
    }

    // Dropping vertices that lie straight within round-off may turn a thin rest into a film.
    private static SolidResult Wood(Solid solid) =>
        solid.Volume <= Tolerances.Corner * solid.Area / 2 ? (SolidResult)SolidFault.NothingLeft : solid;

    // Closed, though it hangs together by a line whatever is tried: still a body that writers can use.
    private static SolidResult OrTouching(Solid? touching) => touching is null ? (SolidResult)SolidFault.NotClosed : touching;

    private void Load(Solid solid, Shell shell)
    {
        _points.Clear();
        _points.AddRange(solid.Vertices.AsSpan());
        _splits.Clear();
        shell.Load(solid);
    }

    private ClipOutcome ClipByAll(ConvexCutter cutter, double growth)
    {
        var all = ClipOutcome.Untouched;
        foreach (var plane in cutter.Planes)
        {
            var outcome = _clip.Clip(_inside, _spare, plane.Shifted(growth), cutter.Origin);
            if (outcome == ClipOutcome.Nothing)
            {
                return outcome;
            }

            if (outcome == ClipOutcome.Untouched)
            {
                continue;
            }

            all = outcome;
            (_inside, _spare) = (_spare, _inside);
        }

        return all;
    }

    /// <summary>
    /// What is left of the solid, in <see cref="_spare"/>: each of its faces less the part of it that lies inside, and the
    /// inside's caps turned round.
    /// </summary>
    private void TakeInsideOut(Solid solid, FaceOrigin origin)
    {
        _original.Load(solid);
        _spare.Clear();
        IndexParts(solid.Faces.Length);
        foreach (ref readonly var face in CollectionsMarshal.AsSpan(_original.Faces))
        {
            var start = _spare.Edges.Count;
            foreach (var edge in _original.EdgesOf(face))
            {
                AddSplit(edge.From, edge.To);
            }

            var (partStart, count) = _parts[face.Source];
            AddReversed(CollectionsMarshal.AsSpan(_inside.Edges).Slice(partStart, count));
            _spare.CloseFace(start, face.Plane, face.Origin, face.Source);
        }

        foreach (ref readonly var face in CollectionsMarshal.AsSpan(_inside.Faces))
        {
            if (face.Source != Shell.Cap)
            {
                continue;
            }

            var start = _spare.Edges.Count;
            AddReversed(_inside.EdgesOf(face));
            _spare.CloseFace(start, face.Plane.Flipped(), origin, Shell.Cap);
        }
    }

    private void IndexParts(int faces)
    {
        _parts.Clear();
        CollectionsMarshal.SetCount(_parts, faces);
        CollectionsMarshal.AsSpan(_parts).Clear();
        foreach (ref readonly var face in CollectionsMarshal.AsSpan(_inside.Faces))
        {
            if (face.Source != Shell.Cap)
            {
                _parts[face.Source] = (face.Start, face.Count);
            }
        }
    }

    private void AddSplit(int from, int to)
    {
        var between = _splits.Undirected(from, to);
        if (between < 0)
        {
            _spare.Edges.Add(new Edge(from, to));
            return;
        }

        AddSplit(from, between);
        AddSplit(between, to);
    }

    private void AddReversed(ReadOnlySpan<Edge> edges)
    {
        foreach (var edge in edges)
        {
            _spare.Edges.Add(edge.Reversed);
        }
    }

    /// <summary>A body no thicker than round-off: volume against half its area.</summary>
    private bool IsFilm(Shell shell)
    {
        if (shell.Faces.Count == 0)
        {
            return true;
        }

        var origin = _points[shell.Edges[0].From];
        double volume = 0, area = 0;
        foreach (ref readonly var face in CollectionsMarshal.AsSpan(shell.Faces))
        {
            var sum = Vector3d.Zero;
            foreach (var edge in shell.EdgesOf(face))
            {
                sum += (_points[edge.From] - origin).Cross(_points[edge.To] - origin);
            }

            var size = face.Plane.Normal.Dot(sum) / 2;
            area += Math.Abs(size);
            // From a corner of the face, not from its plane: corners lie off it by as much as a film is thick.
            var corner = _points[shell.Edges[face.Start].From];
            volume += size * face.Plane.Normal.Dot(corner - origin) / 3;
        }

        return volume <= Tolerances.Corner * area / 2;
    }
}
