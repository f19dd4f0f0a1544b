using BridgeForm.Project;

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
        "Hold for shoes on the deck",
        "Steepest bay against 1 : 8. Above it boards need cleats or grit: it holds where the file says that grit is laid (deck.grip).",
        Limits.Grip.Source,
        [CheckStatus.Pass, CheckStatus.Warn]);

    /// <summary>A warning: a rope bridge is no ramp, but whoever rolls or carries something over it should know.</summary>
    public static CheckResult Check(CheckContext context)
    {
        var (steepest, at) = Steepest(context);
        var (limit, source) = Limits.Ramp;
        return Outcome.AtMost(
            Declared, steepest, limit, "1", source,
            $"{CheckWords.Slope(steepest)} ({CheckWords.Angle(Math.Atan(steepest))}) in {at}; a ramp has at most {CheckWords.Slope(limit)}",
            CheckStatus.Warn);
    }

    /// <summary>Cleats or grit above 1 : 8.</summary>
    public static CheckResult Grip(CheckContext context)
    {
        var (steepest, at) = Steepest(context);
        var (limit, source) = Limits.Grip;
        var steep = $"{CheckWords.Slope(steepest)} in {at}";
        if (steepest > limit && context.Parameters.Deck.Grip == DeckGrip.Grit)
        {
            return new CheckResult(
                DeclaredGrip.Id, DeclaredGrip.Title, CheckStatus.Pass, steepest, null, "1", null, source,
                $"{steep}; grit on the boards, as the file says (deck.grip): lay it wherever the deck is steeper than 1 : 8, sweep off "
                    + "leaves and moss, look at it every spring and renew it where it is worn or comes loose");
        }

        return Outcome.AtMost(
            DeclaredGrip, steepest, limit, "1", source,
            steep + (steepest > limit
                ? ": lay cleats across the deck or grit on it where it is steeper than 1 : 8 (deck.grip: grit)"
                : ", not steeper than 1 : 8"),
            CheckStatus.Warn);
    }

    /// <summary>Rise over run of the steepest bay, and which.</summary>
    public static (double Slope, string Where) Steepest(CheckContext context)
    {
        var steepest = 0.0;
        var at = "";
        foreach (var bay in context.Bays)
        {
            var way = context.Layout.Deck.Direction(bay);
            var slope = Math.Abs(way.Y / way.X);
            if (slope > steepest)
            {
                steepest = slope;
                at = $"bay {bay} of {context.Layout.Bays}";
            }
        }

        return (steepest, at);
    }
}
