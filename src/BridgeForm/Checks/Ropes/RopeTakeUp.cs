using BridgeForm.Loads;
using BridgeForm.Ropes.Fittings;

namespace BridgeForm.Checks.Ropes;

/// <summary>What turnbuckles must take in as new rope beds in and the weather changes.</summary>
internal static class RopeTakeUp
{
    /// <summary>What it compares.</summary>
    public static DeclaredCheck Declared { get; } = new(
        "rope-take-up",
        "Adjustment at the ends of one rope",
        "Constructional stretch at its high end plus the change by temperature against what two turnbuckles take up.",
        "sources of stretch and take-up, named in the result",
        [CheckStatus.Pass, CheckStatus.Engineer]);

    /// <summary>Pass with the take-up to buy; engineer when the stretch is not known or no two turnbuckles reach.</summary>
    public static CheckResult Of(CheckContext context)
    {
        var (words, cut) = (context.People(), context.Ropework.Cut!);
        var range = StretchRange.Of(context.Parameters.Ropes);
        var source = $"stretch: {range.Source}; expansion 6.5e-6 per °F (from memory); take-ups on sale 6, 12, 18 and 24 in (from memory)";
        if (cut.Stretch is not { } stretch || cut.TakeUp is not { } needed)
            return new CheckResult(
                Declared.Id, Declared.Title, CheckStatus.Engineer, cut.TemperatureChange, null, "m", null, source,
                $"temperature alone changes {words.Length(cut.BetweenEnds)} of rope by {words.Length(cut.TemperatureChange)}; the constructional stretch of this rope is not known");
        var falls = string.Join(" to ", context.Ropework.Stretch.Select(s => s.MoveDownMid is { } fall ? words.Length(fall) : "?"));
        var text = $"rope {words.Length(cut.BetweenEnds)} between its ends × {CheckWords.Share(range.Range!.Value.Low)} to {CheckWords.Share(range.Range.Value.High)} = "
            + $"{words.Length(stretch.Low)} to {words.Length(stretch.High)} of stretch, which lowers mid-span by {falls} when nothing is taken up; "
            + $"with temperature {words.Length(stretch.High)} + {words.Length(cut.TemperatureChange)} = {words.Length(needed)}";
        return FittingSet.TakeUpOfEach(needed) is { } each
            ? Outcome.AtMost(Declared, needed, FittingSet.PerRope * each, "m", source, $"{text}: two turnbuckles with a take-up of {words.Length(each)}, hung nearly open")
            : new CheckResult(
                Declared.Id, Declared.Title, CheckStatus.Engineer, needed, null, "m", null, source,
                $"{text}: more than two turnbuckles take up; set the rope short by its stretch, or move its ends in the clips after it has bedded in");
    }
}
