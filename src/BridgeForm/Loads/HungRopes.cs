using System.Collections.Immutable;
using BridgeForm.Project;
using BridgeForm.Quantities;
using BridgeForm.Ropes;
using BridgeForm.Ropes.Pairs;

namespace BridgeForm.Loads;

/// <summary>A value of each rope, in the unit that its user says.</summary>
public readonly record struct RopePair(double Left, double Right)
{
    /// <summary>The mean of both.</summary>
    public double Mean => (Left + Right) / 2;
}

/// <summary>Both ropes as they hang.</summary>
/// <param name="Left">The left rope, looking from A to B.</param>
/// <param name="Right">The right one.</param>
/// <param name="Tilt">Of the frame that tilts most, radians, never negative; of bare ropes, of the line across at half the span.</param>
public sealed record HungPair(RopeShape Left, RopeShape Right, double Tilt)
{
    /// <summary>Sag of each, metres.</summary>
    public RopePair Sags => new(Left.Sag, Right.Sag);
}

/// <summary>
/// Both ropes of a bridge at one stage of building, each longer or shorter than designed by what its ends let out or took in.
/// Ropes lie free over the supports before frames are hung; frames are fast on their marks, so that what is let out then goes into
/// the first and the last bay, half into each.
/// </summary>
public sealed record HungRopes
{
    // Sags have settled when they are wrong by less than this, metres: what no level tells by a factor of a million.
    private const double Settled = 1e-9;

    // A bare rope that hangs by its stretch alone tells little of its length; metres.
    private const double SettledLength = 1e-12;
    private const int MostSteps = 40;
    private const int MostHalvings = 12;

    // Steps by which it is found how sags follow lengths, and the longest step, as shares of the rope's length.
    private const double Probe = 1e-6;
    private const double LongestStep = 0.02;

    /// <summary>Design state that the marks are of.</summary>
    public required RopeShape Design { get; init; }

    /// <summary>Ropes behind the supports.</summary>
    public required Backstays Backstays { get; init; }

    /// <summary>What hangs on the ropes.</summary>
    public required BuildStage Stage { get; init; }

    /// <summary>What stands on both ropes then; not read of bare ropes.</summary>
    public required PairLoads Loads { get; init; }

    /// <summary>Between the ropes, metres.</summary>
    public required double Spacing { get; init; }

    /// <summary>Horizontal distance between the supports, metres.</summary>
    public required double Span { get; init; }

    /// <summary>Support B above support A, metres.</summary>
    public required double Rise { get; init; }

    /// <summary>Degrees Celsius above the reference temperature.</summary>
    public required double DegreesAbove { get; init; }

    /// <summary>Share by which the ropes have grown for good since they were marked.</summary>
    public double Stretch { get; init; }

    /// <summary>A bridge's ropes at a stage, its supports where the design has them, at the reference temperature.</summary>
    /// <param name="input">The bridge.</param>
    /// <param name="stage">What hangs on them.</param>
    public static HungRopes Of(LoadCaseInput input, BuildStage stage)
    {
        var none = ImmutableArray.Create(new double[input.Design.Nodes.Length]);
        var (loads, moments) = stage == BuildStage.Frames
            ? (input.FrameLoads, input.Standing?.FrameMoments)
            : (input.Design.Loads, input.Standing?.Moments);
        return new HungRopes
        {
            Design = input.Design,
            Backstays = input.Backstays,
            Stage = stage,
            Loads = new PairLoads([.. loads.Select(l => 2 * l)], none, moments ?? none),
            Spacing = input.RopeSpacing,
            Span = input.Design.Nodes[^1].X,
            Rise = input.Design.Nodes[^1].Y,
            DegreesAbove = 0,
        };
    }

    /// <summary>
    /// Unstressed length of one rope between the supports as marked, at the reference temperature, its growth included, metres.
    /// </summary>
    public double Length => Design.UnstressedLength() * (1 + Stretch);

    /// <summary>Both ropes as they hang when each is let out by so much.</summary>
    /// <param name="fed">Rope let out at both ends together, metres unstressed at the reference temperature; negative: taken in.</param>
    /// <param name="hung">Both ropes.</param>
    /// <param name="failure">Why there are none, as a sentence.</param>
    public bool TryHang(RopePair fed, out HungPair? hung, out string? failure)
    {
        hung = null;
        if (Stage == BuildStage.Bare)
        {
            if (TryBare(fed.Left, out var left, out failure) && TryBare(fed.Right, out var right, out failure))
            {
                hung = new HungPair(left!, right!, Elementary.Atan(Math.Abs(left!.Sag - right!.Sag) / Spacing));
            }

            return hung is not null;
        }

        if (!PairSolver.TryFind(
            (Rope(fed.Left), Rope(fed.Right)), Spacing, Loads, LoadCaseSolver.DefaultAccuracy, LoadCaseSolver.DefaultMaxIterations,
            out var pair, out failure))
        {
            return false;
        }

        if (pair!.RollsOver)
        {
            failure = "The frames roll over on ropes so unlike.";
            return false;
        }

        hung = new HungPair(pair.Left, pair.Right, PairShape.Largest(pair.Tilts));
        return true;
    }

    /// <summary>
    /// How far each rope must be let out to hang with these sags. Ropes under frames: Newton's method on the squares of the sags, to
    /// which a rope's spare length is nearly in proportion. Bare ropes, which may be drawn so tight that they hang by their stretch
    /// alone: by halves, as a longer rope always hangs deeper.
    /// </summary>
    /// <param name="sags">Of each rope at half the span, metres, positive.</param>
    /// <param name="fed">Rope let out at both ends together, metres unstressed at the reference temperature.</param>
    /// <param name="failure">Why there is none, as a sentence.</param>
    public bool TryFit(RopePair sags, out RopePair fed, out string? failure)
    {
        fed = default;
        if (Stage == BuildStage.Bare)
        {
            var isFound = TryFitBare(sags.Left, out var one, out failure) & TryFitBare(sags.Right, out var other, out var none);
            (fed, failure) = (new RopePair(one, other), failure ?? none);
            return isFound;
        }

        if (!TryHang(fed, out var hung, out failure))
        {
            return false;
        }

        for (var step = 0; step < MostSteps; step++)
        {
            if (Apart(hung!.Sags, sags) <= Settled)
            {
                return true;
            }

            if (!TryStep(fed, hung.Sags, sags, out var move, out failure) || !TryMove(ref fed, move, out hung, out failure))
            {
                return false;
            }
        }

        failure = "No lengths of the ropes were found that hang with these sags.";
        return false;
    }

    private static double Apart(RopePair a, RopePair b) => Math.Max(Math.Abs(a.Left - b.Left), Math.Abs(a.Right - b.Right));

    private bool TryStep(RopePair fed, RopePair now, RopePair wanted, out RopePair step, out string? failure)
    {
        step = default;
        var (probe, most) = (Probe * Length, LongestStep * Length);
        if (!TryHang(fed with { Left = fed.Left + probe }, out var left, out failure)
            || !TryHang(fed with { Right = fed.Right + probe }, out var right, out failure))
        {
            return false;
        }

        var (a, b) = (Rate(left!.Sags.Left, now.Left), Rate(right!.Sags.Left, now.Left));
        var (c, d) = (Rate(left.Sags.Right, now.Right), Rate(right.Sags.Right, now.Right));
        var (p, q) = ((wanted.Left * wanted.Left) - (now.Left * now.Left), (wanted.Right * wanted.Right) - (now.Right * now.Right));
        var whole = (a * d) - (b * c);
        step = new RopePair(
            Math.Clamp(((p * d) - (q * b)) / whole, -most, most), Math.Clamp(((q * a) - (p * c)) / whole, -most, most));
        return true;

        double Rate(double moved, double before) => ((moved * moved) - (before * before)) / probe;
    }

    // Half of a step that leaves the ropes without a shape, and so on.
    private bool TryMove(ref RopePair fed, RopePair step, out HungPair? hung, out string? failure)
    {
        (hung, failure) = (null, null);
        for (var share = 1.0; share >= 1.0 / (1 << MostHalvings); share /= 2)
        {
            var next = new RopePair(fed.Left + (share * step.Left), fed.Right + (share * step.Right));
            if (TryHang(next, out hung, out failure))
            {
                fed = next;
                return true;
            }
        }

        return false;
    }

    private bool TryFitBare(double sag, out double fed, out string? failure)
    {
        var (low, high, step) = (0.0, 0.0, Probe * Length);
        fed = 0;
        while (Deeper(low) is not false)
        {
            (low, step) = (low - step, 2 * step);
            if (step > Length)
            {
                failure = "No length of a rope was found that hangs so flat.";
                return false;
            }
        }

        step = Probe * Length;
        while (Deeper(high) is not true)
        {
            (high, step) = (high + step, 2 * step);
            if (step > Length)
            {
                failure = "No length of a rope was found that hangs so deep.";
                return false;
            }
        }

        while (high - low > SettledLength)
        {
            var middle = (low + high) / 2;
            (low, high) = Deeper(middle) is true ? (low, middle) : (middle, high);
        }

        (fed, failure) = ((low + high) / 2, null);
        return true;

        bool? Deeper(double at) => TryBare(at, out var shape, out _) ? shape!.Sag >= sag : null;
    }

    private bool TryBare(double fed, out RopeShape? shape, out string? failure)
    {
        var rope = Rope(fed);
        return LoadCaseSolver.TryFind(
            rope with { UnstressedLengths = [rope.UnstressedLengths.Sum()], Loads = [0, 0], Start = null },
            LoadCaseSolver.DefaultAccuracy, LoadCaseSolver.DefaultMaxIterations, out shape, out failure);
    }

    private LoadCaseRequest Rope(double fed)
    {
        var rope = LoadCaseRequest.At(Design, DegreesAbove, Backstays, Stretch);
        var each = fed * Materials.SteelRope.ExpansionFactor(DegreesAbove) / 2;
        var lengths = rope.UnstressedLengths.ToArray();
        lengths[0] += each;
        lengths[^1] += each;
        return rope with { Span = Span, Rise = Rise, UnstressedLengths = ImmutableArray.Create(lengths) };
    }
}
