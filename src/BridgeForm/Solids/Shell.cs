using System.Runtime.InteropServices;

namespace BridgeForm.Solids;

/// <summary>A directed edge between two vertex numbers; the face lies to its left, seen from outside.</summary>
internal readonly record struct Edge(int From, int To)
{
    public Edge Reversed => new(To, From);
}

/// <summary>
/// A face as a chain of directed edges in no order: <see cref="Count"/> edges of its shell from <see cref="Start"/> on.
/// <see cref="Source"/> is the number of the solid's face it is part of, or <see cref="Shell.Cap"/>.
/// </summary>
internal readonly record struct ShellFace(Plane Plane, FaceOrigin Origin, int Source, int Start, int Count);

/// <summary>
/// The boundary of a body while it is being cut: faces as chains of edges, where two opposite edges cancel. A body is
/// closed when the edges of all faces together cancel, and every step here keeps that so by construction.
/// </summary>
internal sealed class Shell
{
    /// <summary>Source of a face that lies on a cutting plane.</summary>
    public const int Cap = -1;

    public List<Edge> Edges { get; } = new(128);

    public List<ShellFace> Faces { get; } = new(32);

    public void Clear()
    {
        Edges.Clear();
        Faces.Clear();
    }

    public ReadOnlySpan<Edge> EdgesOf(in ShellFace face) =>
        CollectionsMarshal.AsSpan(Edges).Slice(face.Start, face.Count);

    /// <summary>Makes a face of the edges added since <paramref name="start"/>; no edges, no face.</summary>
    public void CloseFace(int start, Plane plane, FaceOrigin origin, int source)
    {
        if (Edges.Count > start)
        {
            Faces.Add(new ShellFace(plane, origin, source, start, Edges.Count - start));
        }
    }

    public void CopyFace(ShellFace face, ReadOnlySpan<Edge> edges)
    {
        var start = Edges.Count;
        Edges.AddRange(edges);
        Faces.Add(face with { Start = start });
    }

    public void Load(Solid solid)
    {
        Clear();
        for (var f = 0; f < solid.Faces.Length; f++)
        {
            var face = solid.Faces[f];
            var start = Edges.Count;
            foreach (var loop in face.Loops)
            {
                for (var i = 0; i < loop.Length; i++)
                {
                    Edges.Add(new Edge(loop[i], loop[i + 1 < loop.Length ? i + 1 : 0]));
                }
            }

            CloseFace(start, face.Plane, face.Origin, f);
        }
    }
}
