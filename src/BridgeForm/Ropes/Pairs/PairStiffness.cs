using BridgeForm.Ropes.Modes;

namespace BridgeForm.Ropes.Pairs;

/// <summary>
/// Stiffness of two hanging ropes against frames that move, and what weights above the ropes take from it. Frames are rigid in
/// their plane; each rope's node moves along the bridge by itself (yaw free) and frames pitch with the ropes. To the side all
/// frames move freely: ropes in upright planes pull to the side only when they are moved there, so to first order that motion
/// and rolling do not meet, and a frame rolls about the middle between its ropes' axes.
/// </summary>
internal static class PairStiffness
{
    private const int PerFrame = 4;
    private const int Width = 5;

    /// <summary>Of both ropes: x and drop of the left node, x and drop of the right node, frame by frame.</summary>
    /// <param name="left">Bays of the left rope.</param>
    /// <param name="right">Bays of the right rope.</param>
    public static BandedMatrix OfBoth(BayStiffness[] left, BayStiffness[] right)
    {
        var matrix = new BandedMatrix(PerFrame * (left.Length - 1), Width);
        Add(matrix, left, PerFrame, 0);
        Add(matrix, right, PerFrame, 2);
        return matrix;
    }

    /// <summary>Of one rope: x and drop, node by node. Both ropes alike roll as one of them does, the other the other way.</summary>
    public static BandedMatrix OfOne(BayStiffness[] bays)
    {
        var matrix = new BandedMatrix(2 * (bays.Length - 1), 3);
        Add(matrix, bays, 2, 0);
        return matrix;
    }

    /// <summary>Weight × height on the frames' rotation, in the order of <see cref="OfBoth"/>.</summary>
    public static BandedMatrix LeverOnBoth(PairLoads loads, double spacing)
    {
        var matrix = new BandedMatrix(PerFrame * (loads.Weights.Length - 2), Width);
        for (var i = 0; PerFrame * i < matrix.Size; i++)
        {
            var (l, r, lever) = ((PerFrame * i) + 1, (PerFrame * i) + 3, loads.HeightMoments[i + 1] / (spacing * spacing));
            (matrix[l, l], matrix[r, r], matrix[r, l]) = (lever, lever, -lever);
        }

        return matrix;
    }

    /// <summary>Takes a share of <see cref="LeverOnBoth"/> from a matrix of its order.</summary>
    public static BandedMatrix LessLever(this BandedMatrix matrix, double share, PairLoads loads, double spacing)
    {
        for (var i = 0; PerFrame * i < matrix.Size; i++)
        {
            var (l, r, lever) = ((PerFrame * i) + 1, (PerFrame * i) + 3, share * loads.HeightMoments[i + 1] / (spacing * spacing));
            matrix[l, l] -= lever;
            matrix[r, r] -= lever;
            matrix[r, l] += lever;
        }

        return matrix;
    }

    /// <summary>
    /// The same in the order of <see cref="OfOne"/>: half of the frame's energy for one of two ropes that go opposite ways.
    /// </summary>
    public static BandedMatrix LeverOnOne(PairLoads loads, double spacing)
    {
        var matrix = new BandedMatrix(2 * (loads.Weights.Length - 2), 3);
        for (var i = 0; 2 * i < matrix.Size; i++)
        {
            matrix[(2 * i) + 1, (2 * i) + 1] = 2 * loads.HeightMoments[i + 1] / (spacing * spacing);
        }

        return matrix;
    }

    /// <summary>Adds the bays of one rope, whose node of frame i has its x at i · step + at, and its drop after it.</summary>
    public static void Add(BandedMatrix matrix, BayStiffness[] bays, int step, int at)
    {
        for (var bay = 0; bay < bays.Length; bay++)
        {
            var (stiff, a, b) = (bays[bay], (step * (bay - 1)) + at, (step * bay) + at);
            if (bay > 0)
            {
                AddEnd(matrix, a, stiff);
            }

            if (bay < bays.Length - 1)
            {
                AddEnd(matrix, b, stiff);
            }

            if (bay == 0 || bay == bays.Length - 1)
            {
                continue;
            }

            matrix[b, a] -= stiff.Xx;
            matrix[b, a + 1] -= stiff.Xd;
            matrix[b + 1, a] -= stiff.Xd;
            matrix[b + 1, a + 1] -= stiff.Dd;
        }
    }

    private static void AddEnd(BandedMatrix matrix, int at, BayStiffness stiff)
    {
        matrix[at, at] += stiff.Xx;
        matrix[at + 1, at] += stiff.Xd;
        matrix[at + 1, at + 1] += stiff.Dd;
    }
}
