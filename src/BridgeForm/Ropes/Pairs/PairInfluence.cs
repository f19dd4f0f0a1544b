using BridgeForm.Ropes.Modes;

namespace BridgeForm.Ropes.Pairs;

/// <summary>
/// What a newton at any frame does to something at one place, as long as it is small: from the tangent stiffness of both ropes
/// with the lever of the weights, factored once. By reciprocity one back-substitution gives the line of all frames.
/// </summary>
/// <remarks>Maxwell and Betti: the stiffness is symmetric, so the solution for a force where something is read is its line.</remarks>
internal sealed class PairInfluence
{
    private const int PerFrame = 4;
    private readonly BandedMatrix _factor;
    private readonly PairShape _pair;
    private readonly double _spacing;
    private readonly BayStiffness _first;
    private readonly BayStiffness _last;

    private PairInfluence(BandedMatrix factor, PairShape pair, double spacing, BayStiffness first, BayStiffness last) =>
        (_factor, _pair, _spacing, _first, _last) = (factor, pair, spacing, first, last);

    /// <summary>Frames between the supports.</summary>
    public int Frames => _factor.Size / PerFrame;

    /// <summary>Of a pair in equilibrium; null when it has no frame between its supports or is not stiff.</summary>
    /// <param name="rope">One rope, as <see cref="PairSolver"/> was given it.</param>
    /// <param name="spacing">Between the ropes, metres.</param>
    /// <param name="loads">What stands on them.</param>
    /// <param name="pair">Both ropes under it.</param>
    public static PairInfluence? Of(LoadCaseRequest rope, double spacing, PairLoads loads, PairShape pair)
    {
        if (pair.RollsOver || pair.Left.Nodes.Length < 3)
        {
            return null;
        }

        var left = BayStiffness.Find(rope, pair.Left);
        var right = ReferenceEquals(pair.Left, pair.Right) ? left : BayStiffness.Find(rope, pair.Right);
        return PairStiffness.OfBoth(left, right).LessLever(1, loads, spacing).FactoredInPlace() is { } factor
            ? new PairInfluence(factor, pair, spacing, left[0], left[^1])
            : null;
    }

    /// <summary>Fall of the left rope at a frame, metres per newton; or of what stands out from the frame beyond it.</summary>
    /// <param name="frame">1 ….</param>
    /// <param name="beyond">So far, metres.</param>
    public InfluenceLine OfFall(int frame, double beyond = 0)
    {
        var read = new double[_factor.Size];
        (read[Drop(frame)], read[Drop(frame) + 2]) = (1 + (beyond / _spacing), -beyond / _spacing);
        return Line(read);
    }

    /// <summary>tan θ of a frame, positive where the left rope hangs lower, per newton.</summary>
    public InfluenceLine OfTilt(int frame)
    {
        var read = new double[_factor.Size];
        (read[Drop(frame)], read[Drop(frame) + 2]) = (1 / _spacing, -1 / _spacing);
        return Line(read);
    }

    /// <summary>Slope of the left rope's chord in a bay (0 …), rise over run towards B, per newton.</summary>
    public InfluenceLine OfSlope(int bay)
    {
        var (a, b) = (_pair.Left.Nodes[bay], _pair.Left.Nodes[bay + 1]);
        var run = b.X - a.X;
        var slope = (b.Y - a.Y) / run;
        var read = new double[_factor.Size];
        if (bay > 0)
        {
            (read[Drop(bay) - 1], read[Drop(bay)]) = (slope / run, 1 / run);
        }

        if (bay < Frames)
        {
            (read[Drop(bay + 1) - 1], read[Drop(bay + 1)]) = (-slope / run, -1 / run);
        }

        return Line(read);
    }

    /// <summary>Tension of the left rope at support A, or at support B, newtons per newton.</summary>
    public InfluenceLine OfTension(bool atB)
    {
        var segment = _pair.Left.Segments[atB ? ^1 : 0];
        var vertical = segment.VerticalA - (atB ? _pair.Left.WeightPerLength * segment.UnstressedLength : 0);
        var tension = ElasticCatenary.Hypotenuse(segment.Horizontal, vertical);
        var (stiff, node, sign) = atB ? (_last, Frames, -1) : (_first, 1, 1);
        var (level, down) = (segment.Horizontal / tension, vertical / tension);
        var read = new double[_factor.Size];
        read[Drop(node) - 1] = sign * ((level * stiff.Xx) + (down * stiff.Xd));
        read[Drop(node)] = sign * ((level * stiff.Xd) + (down * stiff.Dd));
        return Line(read);
    }

    /// <summary>
    /// What a newton on the left rope at each frame does there: how far the left and the right rope fall at that frame, metres;
    /// supports included (0 there). One sweep over the factor for all frames.
    /// </summary>
    public (double[] Own, double[] Other) AtItself()
    {
        var inverse = _factor.InverseInBand();
        var (own, other) = (new double[Frames + 2], new double[Frames + 2]);
        for (var i = 1; i <= Frames; i++)
        {
            (own[i], other[i]) = (inverse[Drop(i), Drop(i)], inverse[Drop(i) + 2, Drop(i)]);
        }

        return (own, other);
    }

    private static int Drop(int frame) => (PerFrame * (frame - 1)) + 1;

    private InfluenceLine Line(double[] read)
    {
        var moves = _factor.Solve(read);
        var (left, right) = (new double[Frames + 2], new double[Frames + 2]);
        for (var i = 1; i <= Frames; i++)
        {
            (left[i], right[i]) = (moves[Drop(i)], moves[Drop(i) + 2]);
        }

        return new InfluenceLine(left, right, _spacing);
    }
}

/// <summary>What a newton down on either rope at each frame, supports included, does to one thing at one place.</summary>
/// <param name="Left">On the left rope.</param>
/// <param name="Right">On the right rope.</param>
/// <param name="Spacing">Between them, metres.</param>
internal sealed record InfluenceLine(double[] Left, double[] Right, double Spacing)
{
    /// <summary>Of a newton that stands so far from the middle towards the left rope, shared by statics.</summary>
    public double[] Aside(double fromMiddle)
    {
        var (share, line) = (0.5 + (fromMiddle / Spacing), new double[Left.Length]);
        for (var i = 0; i < line.Length; i++)
        {
            line[i] = (share * Left[i]) + ((1 - share) * Right[i]);
        }

        return line;
    }
}
