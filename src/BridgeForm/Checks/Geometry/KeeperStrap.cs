namespace BridgeForm.Checks.Geometry;

/// <summary>Whether a flat strap across the channel can clamp the rope.</summary>
internal static class KeeperStrap
{
    /// <summary>The check.</summary>
    public static DeclaredCheck Declared { get; } = new(
        "keeper-strap-reach",
        "Rope within reach of a flat keeper strap",
        "How deep the rope lies in the base, middle frames and end frames, against its diameter: deeper, a flat strap does not clamp it. At the middle of the base.",
        "common practice, no source",
        [CheckStatus.Pass, CheckStatus.Warn]);

    /// <summary>Warns when the rope lies deeper in the base than its own diameter.</summary>
    public static CheckResult Of(CheckContext context)
    {
        var rope = context.Parameters.Ropes.Rope.Diameter;
        var channel = context.Parameters.Frames.Channel;
        var deepest = Math.Max(channel.Depth, channel.EndDepth);
        var sunk = deepest - channel.Liner;
        var words = context.People();
        return Outcome.AtMost(
            Declared,
            sunk, rope, "m",
            Declared.Source,
            $"channel {words.Length(deepest)}{(channel.EndDepth > channel.Depth ? " in the end bases" : "")} − liner {words.Length(channel.Liner)} = {words.Length(sunk)}; "
            + $"rope {words.Length(rope)}: sunk deeper than its diameter a flat strap does not clamp it",
            CheckStatus.Warn);
    }
}
