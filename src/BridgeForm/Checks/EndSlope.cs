namespace BridgeForm.Checks;

/// <summary>Steepest part of the deck against a ramp's limit.</summary>
internal static class EndSlope
{
    /// <summary>A warning: a rope bridge is no ramp, but whoever rolls or carries something over it should know.</summary>
    public static CheckResult Of(CheckContext context)
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

        var (limit, source) = Limits.Ramp;
        return Outcome.AtMost(
            "deck-slope", "Steepest slope of the deck", steepest, limit, "1", source,
            $"{CheckWords.Slope(steepest)} ({CheckWords.Angle(Math.Atan(steepest))}) in {at}; a ramp has at most {CheckWords.Slope(limit)}",
            CheckStatus.Warn);
    }
}
