using System.Collections.Immutable;
using BridgeForm.Ropes;

namespace BridgeForm.Loads;

/// <summary>Part of the deck's width that carries live load.</summary>
public enum DeckPart
{
    /// <summary>All of the clear width, shared by <c>loads.eccentricity</c>.</summary>
    Whole,

    /// <summary>The left half of it at full intensity.</summary>
    Left,

    /// <summary>The right half of it at full intensity.</summary>
    Right,
}

/// <summary>A stretch of the deck with live load on it.</summary>
/// <param name="From">World x where it begins, metres.</param>
/// <param name="To">World x where it ends, metres.</param>
/// <param name="Part">Of the width.</param>
public sealed record LoadedStretch(double From, double To, DeckPart Part);

/// <summary>
/// Where a line of influence is positive: boards are simple beams from frame to frame, so it runs straight between the frames'
/// values, and a load that ends where it passes through nothing adds all that it can.
/// </summary>
internal static class Extents
{
    /// <summary>Stretches on which the line is positive, from A to B.</summary>
    /// <param name="nodes">Nodes of the design state.</param>
    /// <param name="line">At each node, supports included.</param>
    /// <param name="part">Of the width, put down in the result.</param>
    public static IEnumerable<LoadedStretch> Positive(ImmutableArray<RopePoint> nodes, double[] line, DeckPart part)
    {
        double? from = line[0] > 0 ? nodes[0].X : null;
        for (var i = 0; i + 1 < line.Length; i++)
        {
            var (a, b) = (line[i], line[i + 1]);
            if (from is null && b > 0)
            {
                from = a < 0 ? Between(nodes, i, a, b) : nodes[i].X;
            }
            else if (from is { } begun && (b < 0 || (b <= 0 && i + 2 == line.Length)))
            {
                yield return new LoadedStretch(begun, b < 0 ? Between(nodes, i, a, b) : nodes[i + 1].X, part);
                from = null;
            }
        }

        if (from is { } open)
        {
            yield return new LoadedStretch(open, nodes[^1].X, part);
        }
    }

    /// <summary>What one newton a metre on all positive stretches does.</summary>
    public static double Sum(ImmutableArray<RopePoint> nodes, double[] line)
    {
        var sum = 0.0;
        for (var i = 0; i + 1 < line.Length; i++)
        {
            var (low, high) = line[i] < line[i + 1] ? (line[i], line[i + 1]) : (line[i + 1], line[i]);
            var run = nodes[i + 1].X - nodes[i].X;
            sum += low >= 0 ? run * (low + high) / 2 : high > 0 ? run * high * high / (high - low) / 2 : 0;
        }

        return sum;
    }

    private static double Between(ImmutableArray<RopePoint> nodes, int i, double a, double b) =>
        nodes[i].X + ((nodes[i + 1].X - nodes[i].X) * a / (a - b));
}
