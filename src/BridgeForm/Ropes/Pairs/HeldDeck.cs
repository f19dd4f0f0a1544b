using System.Collections.Immutable;
using BridgeForm.Ropes.Modes;

namespace BridgeForm.Ropes.Pairs;

/// <summary>
/// Two ropes whose frames do not yaw and do not move to the side at a height: x of both nodes, drop of the left node, drop of
/// the right node, frame by frame.
/// </summary>
internal static class HeldDeck
{
    private const int PerFrame = 3;
    private const int Width = 5;

    /// <summary>In the ropes' planes.</summary>
    public static BandedMatrix Stiffness(BayStiffness[] left, BayStiffness[] right)
    {
        var matrix = new BandedMatrix(PerFrame * (left.Length - 1), Width);
        Add(matrix, left, 1);
        Add(matrix, right, 2);
        return matrix;
    }

    /// <summary>
    /// To the side: a frame that rolls about the held height swings both ropes out by height × roll, and a bay resists that
    /// with the level pull over its level length.
    /// </summary>
    public static void AddSideways(BandedMatrix matrix, PairShape pair, double spacing, ImmutableArray<double> heights)
    {
        var frames = matrix.Size / PerFrame;
        for (var bay = 0; bay <= frames; bay++)
        {
            var stiff = Sideways(pair.Left, bay) + Sideways(pair.Right, bay);
            var (before, after) = (heights[bay] / spacing, heights[bay + 1] / spacing);
            var (a, b) = (PerFrame * (bay - 1), PerFrame * bay);
            if (bay > 0)
            {
                AddRoll(matrix, a, stiff * before * before);
            }

            if (bay < frames)
            {
                AddRoll(matrix, b, stiff * after * after);
            }

            if (bay == 0 || bay == frames)
            {
                continue;
            }

            var between = stiff * before * after;
            matrix[b + 1, a + 1] -= between;
            matrix[b + 2, a + 2] -= between;
            matrix[b + 1, a + 2] += between;
            matrix[b + 2, a + 1] += between;
        }
    }

    /// <summary>Weight × height on the frames' rotation.</summary>
    public static BandedMatrix Lever(PairLoads loads, double spacing)
    {
        var matrix = new BandedMatrix(PerFrame * (loads.Weights.Length - 2), Width);
        for (var i = 0; PerFrame * i < matrix.Size; i++)
        {
            AddRoll(matrix, PerFrame * i, loads.HeightMoments[i + 1] / (spacing * spacing));
        }

        return matrix;
    }

    /// <summary>Of one bay to the side, N/m: it gives way by ∫ds/T = Δx/H per newton.</summary>
    public static double Sideways(RopeShape shape, int bay) =>
        shape.Horizontal / (shape.Nodes[bay + 1].X - shape.Nodes[bay].X);

    private static void AddRoll(BandedMatrix matrix, int at, double stiff)
    {
        matrix[at + 1, at + 1] += stiff;
        matrix[at + 2, at + 2] += stiff;
        matrix[at + 2, at + 1] -= stiff;
    }

    private static void Add(BandedMatrix matrix, BayStiffness[] bays, int drop)
    {
        for (var bay = 0; bay < bays.Length; bay++)
        {
            var (stiff, a, b) = (bays[bay], PerFrame * (bay - 1), PerFrame * bay);
            if (bay > 0)
            {
                AddEnd(matrix, a, drop, stiff);
            }

            if (bay < bays.Length - 1)
            {
                AddEnd(matrix, b, drop, stiff);
            }

            if (bay == 0 || bay == bays.Length - 1)
            {
                continue;
            }

            matrix[b, a] -= stiff.Xx;
            matrix[b, a + drop] -= stiff.Xd;
            matrix[b + drop, a] -= stiff.Xd;
            matrix[b + drop, a + drop] -= stiff.Dd;
        }
    }

    private static void AddEnd(BandedMatrix matrix, int at, int drop, BayStiffness stiff)
    {
        matrix[at, at] += stiff.Xx;
        matrix[at + drop, at] += stiff.Xd;
        matrix[at + drop, at + drop] += stiff.Dd;
    }
}
