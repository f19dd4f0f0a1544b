namespace BridgeForm.Checks;

/// <summary>Whether a flat strap across the channel can clamp the rope.</summary>
internal static class KeeperStrap
{
    /// <summary>The check.</summary>
    public static DeclaredCheck Declared { get; } = new(
        "keeper-strap-reach",
        "Rope within reach of a flat keeper strap",
        "How deep the rope lies in the base against its diameter: deeper, a flat strap does not clamp it.",
        "common practice, no source",
        [CheckStatus.Pass, CheckStatus.Warn]);

    /// <summary>Warns when the rope lies deeper in the base than its own diameter.</summary>
    public static CheckResult Of(CheckContext context)
    {
        var rope = context.Parameters.Ropes.Rope.Diameter;
        var channel = context.Parameters.Frames.Channel;
        var sunk = channel.Depth - channel.Liner;
        var words = context.People();
        return Outcome.AtMost(
            Declared,
            sunk, rope, "m",
            Declared.Source,
            $"channel {words.Length(channel.Depth)} − liner {words.Length(channel.Liner)} = {words.Length(sunk)}; "
            + $"rope {words.Length(rope)}: sunk deeper than its diameter a flat strap does not clamp it",
            CheckStatus.Warn);
    }
}
