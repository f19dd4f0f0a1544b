using System.Collections.Immutable;
using BridgeForm.Solids;

namespace BridgeForm.Output.Brep;

/// <summary>Which faces of a solid are sides of which round hole.</summary>
internal sealed class HoleWalls
{
    private readonly Dictionary<(int From, int To), int> _faces = [];
    private readonly int[] _halves;
    private readonly int[] _patches;

    private HoleWalls(Solid solid, ImmutableArray<Face> faces, RoundHole[] holes, int[] halves)
    {
        (Solid, Faces, Holes, _halves) = (solid, faces, holes, halves);
        for (var f = 0; f < faces.Length; f++)
        {
            foreach (var loop in faces[f].Loops)
            {
                for (var i = 0; i < loop.Length; i++)
                {
                    _faces[(loop[i], loop[(i + 1) % loop.Length])] = f;
                }
            }
        }

        _patches = Patches();
    }

    /// <summary>The solid with flat sides.</summary>
    public Solid Solid { get; }

    /// <summary>Its faces, each with one outer loop, which comes first.</summary>
    public ImmutableArray<Face> Faces { get; }

    /// <summary>The stick's holes.</summary>
    public RoundHole[] Holes { get; }

    /// <summary>Finds the sides of all holes that are to be round; one that cannot be told becomes flat.</summary>
    public static HoleWalls Find(Solid solid, RoundHole[] holes, HashSet<int> flat)
    {
        var faces = solid.Faces.SelectMany(f => FaceRegions.Of(solid, f).Select(r => f with { Loops = r })).ToImmutableArray();
        var halves = new int[faces.Length];
        for (var f = 0; f < halves.Length; f++)
        {
            halves[f] = -1;
            for (var h = 0; h < holes.Length; h++)
            {
                if (flat.Contains(h) || holes[h].HalfOf(faces[f], solid) is not { } half)
                {
                    continue;
                }

                if (halves[f] >= 0)
                {
                    flat.UnionWith([h, halves[f] / 2]);
                }

                halves[f] = (2 * h) + half;
            }
        }

        return new HoleWalls(solid, faces, holes, halves);
    }

    /// <summary>Whether a face stays as it is.</summary>
    public bool IsFlat(int face) => _halves[face] < 0;

    /// <summary>Index of the hole that a side belongs to.</summary>
    public int HoleOf(int face) => _halves[face] / 2;

    /// <summary>Which half of the hole's wall a side belongs to.</summary>
    public int HalfOf(int face) => _halves[face] % 2;

    /// <summary>A side's patch: the sides of one half that hang together, by the first of them. A flat face is its own.</summary>
    public int PatchOf(int face) => _patches[face];

    /// <summary>The face that uses an edge from one vertex to the other.</summary>
    public int FaceAlong(int from, int to) => _faces[(from, to)];

    /// <summary>The patches of walls, each with its sides, in order.</summary>
    public IEnumerable<IGrouping<int, int>> WallPatches() =>
        Enumerable.Range(0, _halves.Length).Where(f => !IsFlat(f)).GroupBy(PatchOf);

    private int[] Patches()
    {
        var patches = Enumerable.Range(0, _halves.Length).ToArray();
        foreach (var ((from, to), face) in _faces)
        {
            var other = _faces[(to, from)];
            if (_halves[face] >= 0 && _halves[face] == _halves[other])
            {
                var (a, b) = (Root(face), Root(other));
                patches[Math.Max(a, b)] = Math.Min(a, b);
            }
        }

        return [.. patches.Select((_, f) => Root(f))];

        int Root(int face)
        {
            while (patches[face] != face)
            {
                face = patches[face];
            }

            return face;
        }
    }
}
