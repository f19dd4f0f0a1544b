using BridgeForm.Checks.Codes;
using BridgeForm.Loads;
using BridgeForm.Project;
using BridgeForm.Ropes.Fittings;

namespace BridgeForm.Checks.Ropes;

/// <summary>What turnbuckles must take in as new rope beds in and the weather changes.</summary>
internal static class RopeTakeUp
{
    /// <summary>What it compares.</summary>
    public static DeclaredCheck Declared { get; } = new(
        "rope-take-up",
        "Adjustment at the ends of one rope",
        "Stretch to come (by ropes.new: all of its range, none, or half of it either way), the change by temperature and 1 in (25 mm) "
            + "either way for a rope as made (1/2 in an eye, an own figure) against what two turnbuckles take in from open to closed: the "
            + "file's, or the least on sale that reach; fails too where shackle and turnbuckle are longer than a backstay.",
        "sources of stretch and take-up, named in the result",
        [CheckStatus.Pass, CheckStatus.Fail, CheckStatus.Engineer]);

    /// <summary>
    /// Pass with the take-up to buy; fails where the file's turnbuckles reach less; engineer when the stretch is not known or no two on
    /// sale reach.
    /// </summary>
    public static CheckResult Check(CheckContext context)
    {
        var (words, cut) = (context.Words(), context.Ropework.Cut!);
        if (RopeTape.Of(context.Parameters, context.Ropework) is { LeastBehindSaddle: { } over and < 0, Chain: { } chain })
        {
            return new CheckResult(
                Declared.Id, Declared.Title, CheckStatus.Fail, chain.Length, chain.Length + over, "m",
                chain.Length / (chain.Length + over), Declared.Source,
                $"shackle and turnbuckle are {words.Length(chain.Length)} long, the backstay {words.Length(chain.Length + over)}"
                    + ": the rope's eye would lie over the bridge; set the anchor further back");
        }

        var range = StretchRange.Of(context.Parameters.Ropes);
        var source = $"stretch: {range.Source}; expansion 6.5e-6 per °F (Dooley, Applied Science for Metal Workers: steel 6.06e-6 to "
            + "6.89e-6); take-ups on sale 6, 12, 18 and 24 in (makers' tables)";
        if (cut.Travel is not { } travel)
        {
            return new CheckResult(
                Declared.Id, Declared.Title, CheckStatus.Engineer, cut.TemperatureChange, null, "m", null, source,
                $"temperature alone changes {words.Length(cut.BetweenEnds)} of rope by {words.Length(cut.TemperatureChange)}; the "
                    + "constructional stretch of this rope is not known");
        }

        var needed = travel.All;
        var text = $"{ToCome(context, cut, words)}; with temperature {words.Length(cut.TemperatureChange)} and "
            + $"{words.Length(TurnbuckleTravel.AsMade)} either way as made: {words.Length(travel.In)} to take in, "
            + $"{words.Length(travel.Out)} to let out, together {words.Length(needed)}{Held(context.Parameters.Site)}";
        var own = context.Parameters.Ropes.Turnbuckle.TakeUp;
        return (own ?? FittingSet.TakeUpOfEach(needed)) is { } each
            ? Outcome.AtMost(
                Declared, needed, FittingSet.PerRope * each, "m", source,
                $"{text}: two turnbuckles with a take-up of {words.InInches(each)}{(own is null ? "" : " (the project file)")}")
            : new CheckResult(
                Declared.Id, Declared.Title, CheckStatus.Engineer, needed, null, "m", null, source,
                $"{text}: more than two turnbuckles take up; set the rope short by its stretch, or move its ends in the clips after it "
                    + "has bedded in");
    }

    // Behind a saddle that grips, a turnbuckle moves the rope of the backstay alone.
    private static string Held(SiteParameters site) =>
        new[] { site.A.Backstay, site.B.Backstay }.Any(b => b is { Sliding: false })
            ? " (free the rope on its fixed saddle while turning, and fix it again: else a turn tightens the backstay, not the bridge)"
            : "";

    private static string ToCome(CheckContext context, RopeCut cut, CheckWords words)
    {
        if (context.Parameters.Ropes.New == NewRopeWay.StretchedBefore)
        {
            return $"rope {words.Length(cut.BetweenEnds)} between its ends, stretched before it was marked (ropes.new)";
        }

        var (range, stretch) = (StretchRange.Of(context.Parameters.Ropes).Range!.Value, cut.Stretch!.Value);
        var falls = string.Join(" to ", context.Ropework.Stretch.Select(s => s.MidSpanDrop is { } fall ? words.Length(fall) : "?"));
        return $"rope {words.Length(cut.BetweenEnds)} between its ends × {CheckWords.Share(range.Low)} to "
            + $"{CheckWords.Share(range.High)} = {words.Length(stretch.Low)} to {words.Length(stretch.High)} of stretch"
            + (context.Parameters.Ropes.New == NewRopeWay.AsIs
                ? ", set short for the mean of it (ropes.new), so that half the difference is left either way"
                : $", which lowers mid-span by {falls} when nothing is taken up");
    }
}

/// <summary>New rope set short for the stretch to come hangs flatter, and pulls harder, until it has stretched.</summary>
internal static class NewRope
{
    /// <summary>What it compares.</summary>
    public static DeclaredCheck Declared { get; } = new(
        "rope-strength-new",
        "Strength of new rope before it has stretched",
        "Largest tension of the load cases that can pull hardest (all along, snow, cold, your own, and the worst as marked) in rope set to "
            + "its marks for the stretch to come, at the end of the range where it is set shortest, before it has stretched, against the "
            + "same limit as rope-strength. To review, since plain marks and drawing in later do without it; fails where the file chose "
            + "such "
            + "marks (ropes.new: as-is), and where less than a factor of 3 is left (that of safety-factor). Only where the stretch is "
            + "known.",
        "load cases with the rope shorter by stretch / (1 + stretch); limit as rope-strength; fails as safety-factor does",
        [CheckStatus.Pass, CheckStatus.Warn, CheckStatus.Fail, CheckStatus.Engineer]);

    /// <summary>None where no stretch is known.</summary>
    public static IEnumerable<CheckResult> Check(CheckContext context)
    {
        if (context.Ropework.Stretch.MaxBy(s => s.NewPull?.Tension ?? 0) is not { NewPull: { } pull } end)
        {
            yield break;
        }

        var words = context.Words();
        var text = $"set short for {CheckWords.Share(end.Share)} of stretch and loaded before it comes: {words.Force(pull.Tension)} in "
            + $"case {pull.Case}";
        if (Terminations.Allowed(context.Parameters.Ropes) is not { } allowed)
        {
            yield return Outcome.ForEngineer(Declared, pull.Tension, "N", Declared.Source, $"{text}; the ends' efficiency is not known");
            yield break;
        }

        // What safety-factor asks at least: the shop may not set rope so short that less is left.
        var most = allowed * context.Parameters.Ropes.SafetyFactor / InputFloors.LeastFactor;
        if (pull.Tension > most)
        {
            yield return Outcome.AtMost(
                Declared, pull.Tension, most, "N", Declared.Source,
                $"{text}; more than {words.Force(most)}, a third of the strength with its ends: do not set the ropes so; take the plain "
                    + "marks and draw them in afterwards, or take rope that was stretched before");
            yield break;
        }

        yield return Outcome.AtMost(
            Declared, pull.Tension, allowed, "N", Declared.Source,
            pull.Tension > allowed
                ? $"{text}; more than {words.Force(allowed)}: keep crowds off until the ropes have stretched, or set them to the plain "
                    + "marks and draw them in afterwards, or take rope that was stretched before"
                : $"{text}; allowed {words.Force(allowed)}",
            context.Parameters.Ropes.New == NewRopeWay.AsIs ? CheckStatus.Fail : CheckStatus.Warn);
    }
}
