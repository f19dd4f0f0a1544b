using System.Collections.Immutable;
using BridgeForm.Solids;

namespace BridgeForm.Contacts;

/// <summary>A part while others come near it: convex cells in the world, the box around them, and how it lies on what carries it.</summary>
internal sealed class Neighbour
{
    private readonly double[][] _gaps;

    /// <summary>The part where it lies.</summary>
    /// <param name="part">The part.</param>
    /// <param name="index">Its place in the list of parts.</param>
    /// <param name="box">Box around it in the world.</param>
    /// <param name="carriers">What it must rest on, by place in the list: of each set at least one part.</param>
    public Neighbour(SurveyedPart part, int index, Box3 box, int[][] carriers)
    {
        (Part, Index, Box, Carriers) = (part, index, box, carriers);
        Cells = [.. part.Cells.Select(cell => cell.Placed(part.Placement))];
        _gaps = Array.ConvertAll(carriers, set => Array.ConvertAll(set, _ => double.PositiveInfinity));
    }

    /// <summary>The part.</summary>
    public SurveyedPart Part { get; }

    /// <summary>Its place in the list of parts.</summary>
    public int Index { get; }

    /// <summary>Box around all cells.</summary>
    public Box3 Box { get; }

    /// <summary>What it must rest on.</summary>
    public int[][] Carriers { get; }

    /// <summary>Its cells, holes left out.</summary>
    public ImmutableArray<ConvexBody> Cells { get; }

    /// <summary>Whether the other is among what it must rest on.</summary>
    public bool RestsOn(Neighbour other)
    {
        foreach (var set in Carriers)
        {
            if (Array.IndexOf(set, other.Index) >= 0)
            {
                return true;
            }
        }

        return false;
    }

    /// <summary>How deep two parts lie in each other, metres: the deepest of all pairs of cells; negative when they are apart.</summary>
    /// <param name="other">The other part.</param>
    /// <param name="enough">Whether they lie deeper than this is the question: a pair of cells known to be no deeper is looked at no further.</param>
    public double DepthIn(Neighbour other, double enough)
    {
        var depth = double.NegativeInfinity;
        foreach (var first in Cells)
        {
            foreach (var second in other.Cells)
            {
                depth = Math.Max(depth, Contact.Overlap(first, second, Math.Max(depth, enough)));
            }
        }

        return depth;
    }

    /// <summary>Remembers how deep it lies in another part, metres; negative when apart.</summary>
    public void Note(Neighbour other, double depth)
    {
        for (var i = 0; i < Carriers.Length; i++)
        {
            if (Array.IndexOf(Carriers[i], other.Index) is var k and >= 0)
            {
                _gaps[i][k] = -depth;
            }
        }
    }

    /// <summary>The smallest gap to any part of a set of carriers that it has met, metres; infinite when it has met none.</summary>
    public double Gap(int set) => _gaps[set].Min();
}
