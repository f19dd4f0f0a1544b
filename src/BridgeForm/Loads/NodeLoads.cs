using System.Collections.Immutable;
using BridgeForm.Ropes;

namespace BridgeForm.Loads;

/// <summary>Loads of the whole bridge brought to its nodes, and their share on one rope.</summary>
public static class NodeLoads
{
    /// <summary>
    /// Length in plan whose area load comes to each node when the deck is loaded from one x to another: each bay's deck
    /// is a simple beam between its frames. Metres; what comes to the supports rests on the landings and reads 0.
    /// </summary>
    /// <param name="nodes">Nodes of the design state.</param>
    /// <param name="from">World x where the load begins, metres.</param>
    /// <param name="to">World x where it ends, metres.</param>
    public static ImmutableArray<double> TributaryLengths(ImmutableArray<RopePoint> nodes, double from, double to)
    {
        var lengths = new double[nodes.Length];
        for (var i = 0; i + 1 < nodes.Length; i++)
        {
            var (a, b) = (nodes[i].X, nodes[i + 1].X);
            var (begin, end) = (Math.Clamp(from, a, b), Math.Clamp(to, a, b));
            if (end <= begin)
            {
                continue;
            }

            var atB = (((begin + end) / 2) - a) / (b - a);
            lengths[i] += (end - begin) * (1 - atB);
            lengths[i + 1] += (end - begin) * atB;
        }

        (lengths[0], lengths[^1]) = (0, 0);
        return ImmutableArray.Create(lengths);
    }

    /// <summary>Index of the interior node nearest to a world x, the one nearer A of two; null when there is none.</summary>
    /// <param name="nodes">Nodes of the design state.</param>
    /// <param name="x">World x, metres.</param>
    public static int? Nearest(ImmutableArray<RopePoint> nodes, double x) => nodes.Length <= 2
        ? null
        : Enumerable.Range(1, nodes.Length - 2).MinBy(i => NearerA(Math.Abs(nodes[i].X - x), i));

    /// <summary>
    /// Share of a force at any place that comes to each node: by the lever rule to the two frames that the deck there lies
    /// on. What comes to the supports rests on the landings and reads 0.
    /// </summary>
    /// <param name="nodes">Nodes of the design state.</param>
    /// <param name="x">World x of the force, metres; beyond the supports nothing comes to the ropes.</param>
    public static ImmutableArray<double> LeverShares(ImmutableArray<RopePoint> nodes, double x)
    {
        var shares = new double[nodes.Length];
        for (var i = 0; i + 1 < nodes.Length; i++)
        {
            var (a, b) = (nodes[i].X, nodes[i + 1].X);
            if (x < a || x >= b)
            {
                continue;
            }

            (shares[i], shares[i + 1]) = ((b - x) / (b - a), (x - a) / (b - a));
        }

        (shares[0], shares[^1]) = (0, 0);
        return ImmutableArray.Create(shares);
    }

    /// <summary>
    /// Distance from the middle line of the point load's resultant when it stands at the edge; 0 where that lies beyond the
    /// middle.
    /// </summary>
    /// <param name="clearWidth">Between the posts' inner faces at the deck's surface, metres.</param>
    /// <param name="edge">From the resultant to the posts' inner face there, metres.</param>
    public static double EdgeFromMiddle(double clearWidth, double edge) => Math.Max(0, (clearWidth / 2) - edge);

    // Two nodes as far from mid-span differ by round-off only: the smaller index decides, on every machine alike.
    private static (double Distance, int Index) NearerA(double distance, int index)
    {
        const int Digits = 9;
        return (Math.Round(distance, Digits), index);
    }
}
