namespace BridgeForm.Checks.Geometry;

/// <summary>Wood between the keepers' pilot holes and the rope channel they straddle.</summary>
internal static class KeeperHoles
{
    // NDS 2018 Table 12.5.1E.
    private const double Full = 4;
    private const double Least = 1.5;

    /// <summary>The check.</summary>
    public static DeclaredCheck Declared { get; } = new(
        "keeper-hole-distance",
        "Wood between keeper holes and channel",
        "From the edge of a keeper hole to the channel's wall, D the hole's diameter, since the file does not know the screw's: below 4 D "
            + "to review, below 1.5 D it fails, for the screw tears out sideways. A screw is thicker than its pilot hole, and tables "
            + "measure from its middle: by the hole's edge that is made up for. What the screws hold is not looked at. Absent without "
            + "keeper holes.",
        "NDS 2018 Table 12.5.1E: lag screws in withdrawal, end distance 4 D, edge distance 1.5 D; the channel's wall taken as an end "
            + "(own reading)",
        [CheckStatus.Pass, CheckStatus.Warn, CheckStatus.Fail]);

    /// <summary>None without keeper holes.</summary>
    public static IEnumerable<CheckResult> Check(CheckContext context)
    {
        var (keeper, channel) = (context.Parameters.Frames.Keeper, context.Parameters.Frames.Channel);
        if (keeper.Hole <= 0)
        {
            yield break;
        }

        var words = context.Words();
        var had = (keeper.Spread - channel.Width - keeper.Hole) / 2;
        var (full, least) = (Full * keeper.Hole, Least * keeper.Hole);
        var detail = $"({words.Length(keeper.Spread)} − {words.Length(channel.Width)} of channel − {words.Length(keeper.Hole)} of hole) "
            + $"/ 2 = {words.Length(had)}; 4 D = {words.Length(full)}, 1.5 D = {words.Length(least)}; keeper.spread of "
            + $"{words.AtLeast(channel.Width + keeper.Hole + (2 * full))} would leave 4 D";
        var result = Outcome.AtLeast(Declared, had, least, "m", Declared.Source, detail);
        result = result.Status == CheckStatus.Fail
            ? result
            : Outcome.AtLeast(Declared, had, full, "m", Declared.Source, detail, CheckStatus.Warn);
        yield return result.OnBase(context, 0);
    }
}
