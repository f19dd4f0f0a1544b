using System.Collections.Immutable;
using BridgeForm.Checks;
using BridgeForm.Checks.Codes;
using BridgeForm.Loads;
using BridgeForm.Project;
using BridgeForm.Quantities;
using BridgeForm.Ropes.Fittings;

namespace BridgeForm;

/// <summary>What to turn so that ropes that hang otherwise than designed come to the wanted sag. Metres, radians.</summary>
public sealed record Correction
{
    /// <summary>What was asked for, and what was measured.</summary>
    public required BridgeParameters Parameters { get; init; }

    /// <summary>What was measured.</summary>
    public AsBuiltParameters Measured => Parameters.AsBuilt!;

    /// <summary>Turnbuckles with their thread.</summary>
    public required EndTurnbuckle Turnbuckle { get; init; }

    /// <summary>
    /// How much longer each rope is between the supports than it must be, metres unstressed at the reference temperature; negative
    /// where it is too short.
    /// </summary>
    public required RopePair TooLong { get; init; }

    /// <summary>Turns at both ends of the left rope.</summary>
    public required RopeTurns Left { get; init; }

    /// <summary>Turns at both ends of the right rope.</summary>
    public required RopeTurns Right { get; init; }

    /// <summary>Sags to see after the turns in flats, as loaded and at the temperature at which the ropes were measured.</summary>
    public required RopePair SagsNow { get; init; }

    /// <summary>The same with turns unrounded: what is wanted of both.</summary>
    public required double WantedNow { get; init; }

    /// <summary>The finished, empty bridge at the reference temperature after the turns in flats.</summary>
    public required HungPair Finished { get; init; }

    /// <summary>The same with nothing turned; null where it has no shape or rolls over.</summary>
    public HungPair? AsItIs { get; init; }

    /// <summary>The bridge designed anew between the supports as measured.</summary>
    public required BridgeModel Anew { get; init; }

    /// <summary>Its marks as they must be put on bare ropes today; empty where frames are hung.</summary>
    public ImmutableArray<RopeMark> Marks { get; init; } = [];

    /// <summary>
    /// Share by which ropes that were marked short (<c>ropes.new: as-is</c>) have yet to grow; the finished bridge is told with it.
    /// </summary>
    public double ToCome { get; init; }

    /// <summary>
    /// Each frame of the finished bridge, both ropes' mean, against its place by the file; empty for bare ropes, whose marks can
    /// still be moved.
    /// </summary>
    public ImmutableArray<FrameLevel> Levels { get; init; } = [];

    /// <summary>By how much the first and the last bay of each rope are longer than those that the parts were cut for, metres.</summary>
    public RopePair EndBays { get; init; }

    /// <summary>
    /// What boards of the first and the last bay still bear on at the end frame as it hangs now, where frames and boards lie as they were
    /// cut, and what they must, metres; null before the bridge is complete, or where no board bears on a frame.
    /// </summary>
    public (double Bears, double Least)? EndBearing { get; init; }

    /// <summary>Boards of the first or the last bay bear on too little.</summary>
    public bool IsOffBearing => EndBearing is { } end && end.Bears < end.Least - Tolerances.RoundOff;

    /// <summary>
    /// Bare ropes: by how much the marks that follow set the frames further apart than the parts were cut for, metres; negative nearer.
    /// </summary>
    public double StepChange { get; init; }

    // What a board between two frames bears without being cut anew: half of the tape's step. Own figure.
    private const double StepTold = Rounding.Sixteenth / 2;

    // A hundredth of the span steeper or flatter turns every cut by half a degree. Own figure.
    private const double RiseTold = 0.01;

    /// <summary>By what each rope is longer between the supports, as measured, than its marks have it, metres unstressed.</summary>
    public RopePair OverMarks { get; init; }

    /// <summary>
    /// That is more than both its turnbuckles and a rope made wrong by <see cref="TurnbuckleTravel.AsMade"/> can make of it: something was
    /// measured wrong, or an eye is not where it was marked. False where no turnbuckle's travel is known.
    /// </summary>
    public bool IsOtherThanMarked => Reach is { } reach && new[] { OverMarks.Left, OverMarks.Right }.Any(over =>
        over > (FittingSet.PerRope * reach.Out) + TurnbuckleTravel.AsMade
            || -over > (FittingSet.PerRope * reach.In) + TurnbuckleTravel.AsMade);

    /// <summary>Support B lies so much higher or lower than drawn that no bevel is right any more.</summary>
    public bool IsOtherRise => Math.Abs(Measured.Rise - Parameters.Site.Rise) > RiseTold * Parameters.Site.Span;

    /// <summary>That is more than boards, rails and caps bear as they were cut.</summary>
    public bool IsOtherStep => Math.Abs(StepChange) > StepTold;

    /// <summary>Checks that come out otherwise than by the file once the turns are made.</summary>
    public required ImmutableArray<CheckChange> Changes { get; init; }

    /// <summary>Checks that come out otherwise if nothing is turned.</summary>
    public required ImmutableArray<CheckChange> ChangesAsItIs { get; init; }

    /// <summary>
    /// As it hangs it is not to be walked on: it rolls over or has no shape, boards of an end bay bear on too little, a check fails that by
    /// the file does not or could not be made, or a frame of the finished bridge leans more than it may under load. Nobody walks on bare
    /// ropes.
    /// </summary>
    public bool IsOffLimits => Measured.Stage != BuildStage.Bare && (AsItIs is null || NoneAsItIs is not null
        || ChangesAsItIs.Any(c => c.BeginsToFail) || AsItIs.Tilt > MostTilt || IsOffBearing);

    /// <summary>The most that a frame may tilt under load, by the program or by the file, radians.</summary>
    public double MostTilt => Limits.CrossSlope(Parameters.Use, Parameters.Limits).Most;

    /// <summary>After the turns a check fails that by the file does not, or the checks could not be made.</summary>
    public bool FailsAfter => NoneAfter is not null || Changes.Any(c => c.BeginsToFail);

    /// <summary>Why nothing is told of checks once the turns are made; null where it is.</summary>
    public string? NoneAfter { get; init; }

    /// <summary>Why nothing is told of checks if nothing is turned; null where it is.</summary>
    public string? NoneAsItIs { get; init; }

    /// <summary>The chain at each end with its turnbuckle as it was to be hung; null where its lengths are not known.</summary>
    public RopeChain? Chain { get; init; }

    /// <summary>What one turnbuckle takes in, and lets out, from where it was to be hung, metres; null where that is not known.</summary>
    public (double In, double Out)? Reach => Chain is { } chain ? (chain.Opening, chain.TakeUp - chain.Opening)
        : Turnbuckle.TakeUp is { } all ? (all, all)
        : null;

    /// <summary>
    /// What one turnbuckle must still take in and let out after these turns, as the design has it: stretch not seen yet, the hottest and
    /// the coldest day, metres; null where the stretch is not known.
    /// </summary>
    public (double In, double Out)? StillToCome { get; init; }

    /// <summary>The turns can be made, but leave some turnbuckle too little for what is still to come.</summary>
    public bool IsShortLater => !IsBeyondReach && StillToCome is { } still && Chain is not null && Reach is { } reach
        && Turnbuckle.Thread is { } thread && new[] { Left, Right }.Any(t =>
            (-t.Exact * thread.PerTurn) + still.In > reach.In + Tolerances.RoundOff
            || (t.Exact * thread.PerTurn) + still.Out > reach.Out + Tolerances.RoundOff);

    /// <summary>Some turnbuckle must go further than it can.</summary>
    public bool IsBeyondReach => Reach is { } reach && Turnbuckle.Thread is { } thread && new[] { Left, Right }.Any(
        t => t.Exact < 0 ? -t.Exact * thread.PerTurn > reach.In : t.Exact * thread.PerTurn > reach.Out);
}

/// <summary>Level of the rope's axis at a frame of the finished bridge.</summary>
/// <param name="Frame">Name of the frame.</param>
/// <param name="Level">Mean of both ropes over support A's point, metres.</param>
/// <param name="OverDrawn">Above what is drawn, metres; the deck there as well.</param>
/// <param name="RightOverLeft">How much higher the right rope is, metres.</param>
public sealed record FrameLevel(string Frame, double Level, double OverDrawn, double RightOverLeft);

/// <summary>A check that came out otherwise.</summary>
/// <param name="Before">By the project file; null where there was none.</param>
/// <param name="Now">As built; null where there is none.</param>
public sealed record CheckChange(CheckResult? Before, CheckResult? Now)
{
    // A twentieth more is told; own figure.
    private const double Told = 1.05;

    /// <summary>It fails, and by the file it does not.</summary>
    public bool BeginsToFail => Now?.Status == CheckStatus.Fail && Before?.Status != CheckStatus.Fail;

    /// <summary>It came out alike, but asks for more than a twentieth more where it fails already or an engineer judges.</summary>
    public bool IsOnlyWorse => Before?.Status == Now?.Status;

    /// <summary>
    /// Every check whose status changed, or that got worse where it failed already or an engineer judges, by id in the order of the
    /// register.
    /// </summary>
    public static ImmutableArray<CheckChange> Between(IEnumerable<CheckResult> before, IEnumerable<CheckResult> now)
    {
        var (first, second) = (ById(before), ById(now));
        return
        [
            .. first.Keys.Union(second.Keys, StringComparer.Ordinal)
                .Select(id => new CheckChange(first.GetValueOrDefault(id), second.GetValueOrDefault(id)))
                .Where(c => c.Before?.Status != c.Now?.Status || GotWorse(c)),
        ];
    }

    private static bool GotWorse(CheckChange change) => (change.Before, change.Now) switch
    {
        ({ Status: CheckStatus.Fail, Ratio: { } before }, { Status: CheckStatus.Fail, Ratio: { } now }) => now > Told * before,
        ({ Status: CheckStatus.Engineer, Ratio: null } before, { Status: CheckStatus.Engineer, Ratio: null } now) =>
            now.Demand > Told * before.Demand,
        _ => false,
    };

    // The worst where a check comes out more than once.
    private static Dictionary<string, CheckResult> ById(IEnumerable<CheckResult> checks) => checks
        .GroupBy(c => c.Id, StringComparer.Ordinal)
        .ToDictionary(g => g.Key, g => CheckOrder.WorstFirst(g).First(), StringComparer.Ordinal);
}
