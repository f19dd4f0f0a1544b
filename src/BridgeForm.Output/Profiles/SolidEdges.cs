using System.Collections.Immutable;
using BridgeForm.Solids;

namespace BridgeForm.Output.Profiles;

/// <summary>Which face lies on the other side of each edge of a closed solid.</summary>
internal sealed class SolidEdges
{
    private readonly Dictionary<(int From, int To), Face> faceOf = [];

    /// <summary>Takes stock of a closed solid, in which every edge runs once in each direction.</summary>
    public SolidEdges(Solid solid)
    {
        foreach (var face in solid.Faces)
        {
            foreach (var edge in face.Loops.SelectMany(EdgesOf))
            {
                faceOf.Add(edge, face);
            }
        }
    }

    /// <summary>The face beyond an edge that is given as its own face runs it.</summary>
    public Face Beyond((int From, int To) edge) => faceOf[(edge.To, edge.From)];

    /// <summary>The edges of a closed loop, in order.</summary>
    public static IEnumerable<(int From, int To)> EdgesOf(ImmutableArray<int> loop) =>
        Enumerable.Range(0, loop.Length).Select(i => (loop[i], loop[(i + 1) % loop.Length]));
}
