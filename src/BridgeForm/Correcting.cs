using System.Collections.Immutable;
using System.Diagnostics.CodeAnalysis;
using BridgeForm.Checks.Timber;
using BridgeForm.Loads;
using BridgeForm.Project;
using BridgeForm.Project.Reading.Faults;
using BridgeForm.Ropes;
using BridgeForm.Ropes.Fittings;

namespace BridgeForm;

/// <summary>Works out a correction.</summary>
public static class Correcting
{
    /// <summary>The correction, or why there is none.</summary>
    /// <param name="parameters">The project file with what was measured (<see cref="BridgeParameters.AsBuilt"/>).</param>
    /// <param name="run">How works that do not hang on each other are run.</param>
    /// <param name="correction">What to turn.</param>
    /// <param name="fault">Why there is none.</param>
    public static bool TryFind(
        BridgeParameters parameters,
        SideBySide run,
        [NotNullWhen(true)] out Correction? correction,
        [NotNullWhen(false)] out BridgeFault? fault)
    {
        correction = null;
        var built = parameters.AsBuilt ?? throw new ArgumentException("Nothing was measured.", nameof(parameters));
        var rebuild = new Rebuild(run);
        if (!rebuild.TryAnswer(parameters, CancellationToken.None, out var drawn, out fault))
        {
            return false;
        }

        // Between other supports too there are as many bays as parts were cut for.
        var between = parameters with
        {
            Site = parameters.Site with { Span = built.Span, Rise = built.Rise },
            Frames = parameters.Frames with { Bays = drawn.Rope.Segments.Length },
        };
        if (!rebuild.TryAnswer(between, CancellationToken.None, out var anew, out fault))
        {
            return false;
        }

        var turnbuckle = EndTurnbuckle.Of(parameters, drawn.Ropework);
        if (turnbuckle.Thread is not { } thread)
        {
            fault = NoAnswer("no turnbuckle of the set carries the pull, so that its thread is not known: write "
                + "ropes.ends.turnbuckle: { pitch: … } as you measure it on yours");
            return false;
        }

        var growth = Growth.Of(built, drawn.Ropework.Chosen);
        var ropes = Ropes(parameters, built) with { Stretch = growth.Now };
        if (!TryCompare(ropes, anew, parameters, growth, out var compared, out var failure))
        {
            fault = NoAnswer(failure);
            return false;
        }

        var (left, right) = (RopeTurns.For(-compared.TooLong.Left, thread), RopeTurns.For(-compared.TooLong.Right, thread));
        var turned = new RopePair(left.Change(thread), right.Change(thread));
        if (!ropes.TryHang(Sum(compared.Fed, turned), out var now, out failure)
            || !ropes.TryHang(Sum(compared.Fed, Less(compared.TooLong)), out var wanted, out failure)
            || !compared.Finished.TryHang(growth.Once(Sum(compared.Wanted, Sum(compared.TooLong, turned))), out var finished, out failure))
        {
            fault = NoAnswer(failure!);
            return false;
        }

        _ = compared.Finished.TryHang(growth.Once(Sum(compared.Wanted, compared.TooLong)), out var asItIs, out var none);
        var (changes, noneAfter) = Changes(drawn, between, finished, rebuild);
        var (changesAsItIs, noneAsItIs) = asItIs is null ? ([], none) : Changes(drawn, between, asItIs, rebuild);
        correction = new Correction
        {
            Parameters = parameters,
            Turnbuckle = turnbuckle,
            Chain = RopeChain.Of(parameters, drawn.Ropework),
            StillToCome = StillToCome(parameters, drawn.Ropework.Cut!),
            TooLong = compared.TooLong,
            Left = left,
            Right = right,
            SagsNow = now!.Sags,
            WantedNow = wanted!.Sags.Mean,
            Finished = finished!,
            AsItIs = asItIs,
            Anew = anew,
            ToCome = growth.ToCome,
            Marks = built.Stage == BuildStage.Bare ? [.. anew.Marks.Select(growth.Before)] : [],
            Levels = built.Stage == BuildStage.Bare ? [] : LevelsOf(drawn, finished!),
            OverMarks = compared.Fed,
            EndBearing = built.Stage == BuildStage.Complete ? EndBearing(drawn, EndBaysOf(compared, default)) : null,
            EndBays = built.Stage == BuildStage.Bare ? default : EndBaysOf(compared, turned),
            StepChange = built.Stage == BuildStage.Bare ? LongestStep(anew) - LongestStep(drawn) : 0,
            Changes = changes,
            NoneAfter = noneAfter,
            ChangesAsItIs = changesAsItIs,
            NoneAsItIs = noneAsItIs,
        };
        return true;
    }

    /// <summary>What the ropes are let out by, what they must be let out by, and the finished bridge that both are counted from.</summary>
    /// <param name="Fed">By what each rope hangs longer than its marks, as measured.</param>
    /// <param name="TooLong">By what each is longer than it must be.</param>
    /// <param name="Finished">The finished bridge at the reference temperature.</param>
    /// <param name="Wanted">By what its ropes must be let out now for the wanted sag.</param>
    private sealed record Compared(RopePair Fed, RopePair TooLong, HungRopes Finished, RopePair Wanted);

    /// <summary>How much a rope has grown against the lengths of its design, and will have in the end.</summary>
    /// <param name="Now">Share as measured; negative where it was marked short for a stretch that has not come yet.</param>
    /// <param name="Later">Once it has come.</param>
    private sealed record Growth(double Now, double Later)
    {
        public double ToCome => ((1 + Later) / (1 + Now)) - 1;

        public static Growth Of(AsBuiltParameters built, MarkedRopes chosen)
        {
            var now = ((1 + built.Stretch) * chosen.Shorter) - 1;
            return new Growth(now, Math.Max(now, 0));
        }

        /// <summary>Lengths of today once the stretch has come.</summary>
        public RopePair Once(RopePair now) => new(now.Left * (1 + ToCome), now.Right * (1 + ToCome));

        /// <summary>A mark as it must be put today.</summary>
        public RopeMark Before(RopeMark mark) =>
            new(mark.Frame, mark.Unstressed / (1 + ToCome), mark.AtMarkingTension / (1 + ToCome));
    }

    private static HungRopes Ropes(BridgeParameters parameters, AsBuiltParameters built)
    {
        _ = Bridge.TryLayout(parameters, out var rope, out var layout, out _);
        return HungRopes.Of(LoadCaseInput.Gather(layout!, rope!, BridgeMasses.Weigh(layout!)), built.Stage) with
        {
            Span = built.Span,
            Rise = built.Rise,
            DegreesAbove = built.Temperature - parameters.Site.ReferenceTemperature,
        };
    }

    // Bare ropes get new marks, and must be as long as the bridge designed anew has them. Frames stay where they are fast: then
    // the ends alone are let out or taken in until the finished bridge hangs as deep as it was to.
    private static bool TryCompare(
        HungRopes ropes, BridgeModel anew, BridgeParameters parameters, Growth growth, [NotNullWhen(true)] out Compared? compared,
        [NotNullWhen(false)] out string? failure)
    {
        compared = null;
        var built = parameters.AsBuilt!;
        if (!ropes.TryFit(new RopePair(built.LeftSag, built.RightSag), out var fed, out failure))
        {
            failure ??= "no lengths of the ropes hang so";
            return false;
        }

        if (ropes.Stage == BuildStage.Bare)
        {
            var over = ropes.Length - (anew.Rope.UnstressedLength() / (1 + growth.ToCome));
            compared = new Compared(fed, new RopePair(fed.Left + over, fed.Right + over), Complete(anew.Parameters), default);
            return true;
        }

        var finished = Complete(parameters) with { Span = ropes.Span, Rise = ropes.Rise, Stretch = growth.Later };
        if (!finished.TryFit(new RopePair(parameters.Ropes.Sag, parameters.Ropes.Sag), out var once, out failure))
        {
            failure ??= "no lengths of the ropes hang as designed";
            return false;
        }

        var wanted = new RopePair(once.Left / (1 + growth.ToCome), once.Right / (1 + growth.ToCome));
        compared = new Compared(fed, new RopePair(fed.Left - wanted.Left, fed.Right - wanted.Right), finished, wanted);
        return true;
    }

    private static HungRopes Complete(BridgeParameters parameters) =>
        Ropes(parameters, new AsBuiltParameters
        {
            Stage = BuildStage.Complete,
            Temperature = parameters.Site.ReferenceTemperature,
            Span = parameters.Site.Span,
            Rise = parameters.Site.Rise,
            LeftSag = 0,
            RightSag = 0,
            Stretch = 0,
        });

    // The checks take both ropes as alike and all bays as equal: the sag of the mean stands for both.
    private static (ImmutableArray<CheckChange> Changes, string? Failure) Changes(
        BridgeModel drawn, BridgeParameters between, HungPair? hung, Rebuild rebuild) =>
        rebuild.TryAnswer(
            between with { Ropes = between.Ropes with { Sag = hung!.Sags.Mean } }, CancellationToken.None, out var model, out var fault)
            ? (CheckChange.Between(drawn.Checks, model.Checks), null)
            : ([], fault.Message);

    private static ImmutableArray<FrameLevel> LevelsOf(BridgeModel drawn, HungPair finished) =>
    [
        .. drawn.Frames.Select((f, i) =>
        {
            var (left, right) = (finished.Left.Nodes[i].Y, finished.Right.Nodes[i].Y);
            return new FrameLevel(f.Name, (left + right) / 2, ((left + right) / 2) - f.Node.Y, right - left);
        }),
    ];

    private static double LongestStep(BridgeModel model) =>
        model.Rope.Nodes.Zip(model.Rope.Nodes.Skip(1), (a, b) => Math.Sqrt(((b.X - a.X) * (b.X - a.X)) + ((b.Y - a.Y) * (b.Y - a.Y))))
            .Max();

    // Where boards meet on the inner base each has half of it; a longer bay leaves its own less.
    private static (double Bears, double Least)? EndBearing(BridgeModel drawn, RopePair longer) => drawn.Checks
        .Where(c => c.Id is BoardBearing or StringerBearing)
        .Select(c => ((double Bears, double Least)?)(
            c.Demand - Math.Max(longer.Left, longer.Right),
            DeckBearing.LeastOf(c.Id[..^BearingLength.Length], drawn.Parameters.Units)))
        .FirstOrDefault();

    private const string BearingLength = "-bearing-length";
    private const string BoardBearing = "board" + BearingLength;
    private const string StringerBearing = "stringer" + BearingLength;

    private static RopePair EndBaysOf(Compared compared, RopePair turned) => new(
        (compared.Wanted.Left + compared.TooLong.Left + turned.Left) / 2,
        (compared.Wanted.Right + compared.TooLong.Right + turned.Right) / 2);

    // Of what the design asks of both turnbuckles, less what was left for the making, and the stretch that was seen where it is drawn in.
    private static (double In, double Out)? StillToCome(BridgeParameters parameters, RopeCut cut)
    {
        var seen = parameters.Ropes.New == NewRopeWay.AsIs ? 0 : parameters.AsBuilt!.Stretch * cut.BetweenEnds;
        return cut.Travel is { } travel
            ? (
                Math.Max(0, travel.In - TurnbuckleTravel.AsMade - seen) / FittingSet.PerRope,
                (travel.Out - TurnbuckleTravel.AsMade) / FittingSet.PerRope)
            : null;
    }

    private static RopePair Sum(RopePair a, RopePair b) => new(a.Left + b.Left, a.Right + b.Right);

    private static RopePair Less(RopePair a) => new(-a.Left, -a.Right);

    private static BridgeFault NoAnswer(string message) => new(BridgeFaultKind.NoShape, FaultCode.NoShape.Id(), message);
}
