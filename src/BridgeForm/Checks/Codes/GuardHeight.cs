namespace BridgeForm.Checks.Codes;

/// <summary>Height of the guard: vertical, from the deck's surface at its middle line to the cap's top, where it is least.</summary>
internal static class GuardHeight
{
    /// <summary>The check.</summary>
    public static DeclaredCheck Declared { get; } = new(
        "guard-height",
        "Guard height above the deck",
        "Vertical height from the deck's surface at its middle line to the cap's top, where it is least, against 36 in private, 42 in public.",
        "IRC 2018 R312.1.2; IBC 1015.3",
        [CheckStatus.Pass, CheckStatus.Fail]);

    /// <summary>The least height of all bays against the code's.</summary>
    public static CheckResult Of(CheckContext context)
    {
        var least = GuardPlace.Least(context.Layout);
        var (needed, source) = Limits.GuardHeight(context.Parameters.Use);
        var words = context.People();
        return Outcome.AtLeast(
            Declared, least.Height, needed, "m", source,
            $"least in {least.Frame}: {words.Length(least.Height)}, needed {words.Length(needed)}");
    }
}
