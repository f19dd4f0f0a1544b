using BridgeForm.Frames;
using BridgeForm.Project;
using BridgeForm.Quantities;

namespace BridgeForm.Checks.Codes;

/// <summary>Steepest part of the deck against a ramp's limit, and against what shoes hold on.</summary>
internal static class EndSlope
{
    /// <summary>A ramp's limit.</summary>
    public static DeclaredCheck Declared { get; } = new(
        "deck-slope",
        "Steepest slope of the deck",
        "Steepest bay of the empty bridge against the steepest ramp. A warning only: a rope bridge is no ramp, but whoever rolls or "
            + "carries something over it should know.",
        Limits.Ramp.Source,
        [CheckStatus.Pass, CheckStatus.Warn]);

    /// <summary>Cleats or grit.</summary>
    public static DeclaredCheck DeclaredGrip { get; } = new(
        "deck-grip",
        "Traction of the deck",
        "Steepest bay against 1 : 8. Above it boards need cleats or grit: it holds where the file says that grit is laid, or has cleats, "
            + "at most 16 in middle to middle (deck.grip). Whether wheels and canes pass cleats is not looked at.",
        $"{Limits.Grip.Source}; {Limits.Cleats.Source}",
        [CheckStatus.Pass, CheckStatus.Warn]);

    /// <summary>A warning: a rope bridge is no ramp, but whoever rolls or carries something over it should know.</summary>
    public static CheckResult Check(CheckContext context)
    {
        var (steepest, bay) = Steepest(context.Layout);
        var (limit, source) = Limits.Ramp;
        return Outcome.AtMost(
            Declared, steepest, limit, "1", source,
            $"{CheckWords.Slope(steepest)} ({CheckWords.Angle(Elementary.Atan(steepest))}) in {At(context, bay)}; a ramp has at most "
                + CheckWords.Slope(limit),
            CheckStatus.Warn).On(context.Walked(bay));
    }

    /// <summary>Cleats or grit above 1 : 8.</summary>
    public static CheckResult Grip(CheckContext context)
    {
        var (steepest, bay) = Steepest(context.Layout);
        return Grip(context, steepest, $"{CheckWords.Slope(steepest)} in {At(context, bay)}").On(context.Walked(bay));
    }

    private static CheckResult Grip(CheckContext context, double steepest, string steep)
    {
        var (limit, source) = Limits.Grip;
        if (steepest > limit && context.Parameters.Deck.Grip == DeckGrip.Grit)
        {
            return new CheckResult(
                DeclaredGrip.Id, DeclaredGrip.Title, CheckStatus.Pass, steepest, null, "1", null, source,
                $"{steep}; grit on the boards, as the file says (deck.grip): lay it wherever the deck is steeper than 1 : 8, sweep off "
                    + "leaves and moss, look at it every spring and renew it where it is worn or comes loose");
        }

        if (steepest > limit && context.Parameters.Deck.Cleats is { } cleats)
        {
            return Cleats(context, steepest, steep, DeckCleats.Widest(context.Layout, cleats));
        }

        return Outcome.AtMost(
            DeclaredGrip, steepest, limit, "1", source,
            steep + (steepest > limit
                ? ": lay cleats across the deck or grit on it where it is steeper than 1 : 8 (deck.grip: grit)"
                : ", not steeper than 1 : 8"),
            CheckStatus.Warn);
    }

    private static CheckResult Cleats(CheckContext context, double steepest, string steep, double apart)
    {
        var words = context.Words();
        var (most, source) = Limits.Cleats;
        var holds = apart <= most * (1 + Tolerances.SameLimit);
        return new CheckResult(
            DeclaredGrip.Id, DeclaredGrip.Title, holds ? CheckStatus.Pass : CheckStatus.Warn, steepest, null, "1", null, source,
            $"{steep}; cleats {words.Length(apart)} apart at most, {words.InInches(most)} would hold"
                + (holds ? "; look at their screws every spring" : ": write a smaller deck.cleats.spacing"));
    }

    /// <summary>Rise over run of the steepest bay, and which: 1 … bays.</summary>
    public static (double Slope, int Bay) Steepest(BridgeLayout layout)
    {
        var steepest = Ties.FirstLargest(Enumerable.Range(1, layout.Bays), Slope);
        return (Slope(steepest), steepest);

        double Slope(int bay)
        {
            var way = layout.Deck.Direction(bay);
            return Math.Abs(way.Y / way.X);
        }
    }

    private static string At(CheckContext context, int bay) => $"bay {bay} of {context.Layout.Bays}";
}
