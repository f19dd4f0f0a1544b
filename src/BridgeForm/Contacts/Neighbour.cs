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
    public Neighbour(SweptPart part, int index, Box3 box, int[][] carriers)
    {
        (Part, Index, Box, Carriers) = (part, index, box, carriers);
        Cells = [.. part.Cells.Select(cell => cell.Placed(part.Placement))];
        _gaps = Array.ConvertAll(carriers, set => Array.ConvertAll(set, _ => double.PositiveInfinity));
    }

    /// <summary>The part.</summary>
    public SweptPart Part { get; }

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
    /// <param name="enough">
    /// Whether they lie deeper than this is the question: a pair of cells known to be no deeper is looked at no further.
    /// </param>
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

/// <summary>A box along the world's axes, metres.</summary>
internal readonly record struct Box3(Vector3d Min, Vector3d Max)
{
    /// <summary>The smallest box around points; inside out when there are none.</summary>
    public static Box3 Around(IEnumerable<Vector3d> points)
    {
        var box = new Box3(
            new Vector3d(double.PositiveInfinity, double.PositiveInfinity, double.PositiveInfinity),
            new Vector3d(double.NegativeInfinity, double.NegativeInfinity, double.NegativeInfinity));
        foreach (var p in points)
        {
            box = box.With(p);
        }

        return box;
    }

    /// <summary>The box grown to hold a point.</summary>
    public Box3 With(Vector3d p) => new(
        new Vector3d(Math.Min(Min.X, p.X), Math.Min(Min.Y, p.Y), Math.Min(Min.Z, p.Z)),
        new Vector3d(Math.Max(Max.X, p.X), Math.Max(Max.Y, p.Y), Math.Max(Max.Z, p.Z)));

    /// <summary>Whether the boxes come closer to each other than a margin in metres along every axis.</summary>
    public bool IsNear(Box3 other, double margin) =>
        Min.X <= other.Max.X + margin && other.Min.X <= Max.X + margin
        && Min.Y <= other.Max.Y + margin && other.Min.Y <= Max.Y + margin
        && Min.Z <= other.Max.Z + margin && other.Min.Z <= Max.Z + margin;
}
