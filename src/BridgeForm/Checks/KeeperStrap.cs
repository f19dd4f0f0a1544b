namespace BridgeForm.Checks;

/// <summary>Whether a flat strap across the channel can clamp the rope.</summary>
internal static class KeeperStrap
{
    /// <summary>Warns when the rope lies deeper in the base than its own diameter.</summary>
    public static CheckResult Of(CheckContext context)
    {
        var rope = context.Parameters.Ropes.Rope.Diameter;
        var channel = context.Parameters.Frames.Channel;
        var sunk = channel.Depth - channel.Liner;
        var words = context.People();
        return Outcome.AtMost(
            "keeper-strap-reach",
            "Rope within reach of a flat keeper strap",
            sunk, rope, "m",
            "common practice, no source",
            $"channel {words.Length(channel.Depth)} − liner {words.Length(channel.Liner)} = {words.Length(sunk)}; "
            + $"rope {words.Length(rope)}: sunk deeper than its diameter a flat strap does not clamp it",
            CheckStatus.Warn);
    }
}
