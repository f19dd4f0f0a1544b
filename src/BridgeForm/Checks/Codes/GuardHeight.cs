namespace BridgeForm.Checks;

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
        var (height, at) = Least(context);
        var (needed, source) = Limits.GuardHeight(context.Parameters.Use);
        var words = context.People();
        return Outcome.AtLeast(
            Declared, height, needed, "m", source,
            $"least in {at}: {words.Length(height)}, needed {words.Length(needed)}");
    }

    /// <summary>The least height in metres and the frame where it is.</summary>
    public static (double Height, string Frame) Least(CheckContext context)
    {
        var layout = context.Layout;
        return TopLine.Cap(layout).Above(TopLine.Deck(layout), layout).MinBy(h => h.Height);
    }
}
