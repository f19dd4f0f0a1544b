namespace BridgeForm.Checks;

/// <summary>Depth of the rope channels where rope and base part: at the mouths, where a sloped floor is shallowest and deepest.</summary>
internal static class ChannelMouths
{
    private const string Source = "BridgeForm's own rule (docs/bridge.md): a channel holds at least half the rope's radius at its shallow mouth";

    /// <summary>Shallow and deep mouths of interior and of end bases.</summary>
    public static IEnumerable<CheckResult> Of(CheckContext context)
    {
        foreach (var atEnd in (bool[])[false, true])
        {
            if (Worst(context, atEnd) is { } worst)
            {
                yield return Shallow(context, worst, atEnd);
                yield return Deep(context, worst, atEnd);
            }
        }
    }

    private static (string Frame, double Depth, double Change)? Worst(CheckContext context, bool atEnd)
    {
        (string Frame, double Depth, double Change)? worst = null;
        for (var i = 0; i < context.Frames.Length; i++)
        {
            var levels = context.Layout.Levels[i];
            var change = context.Parameters.Frames.Base.Along / 2 * Math.Abs(levels.FloorSlope);
            if (context.Frames[i].IsEnd == atEnd && (worst is null || change > worst.Value.Change))
            {
                worst = (context.Frames[i].Name, levels.ChannelDepth, change);
            }
        }

        return worst;
    }

    private static CheckResult Shallow(CheckContext context, (string Frame, double Depth, double Change) at, bool atEnd)
    {
        var needed = context.Parameters.Ropes.Rope.Radius / 2;
        var had = at.Depth - at.Change;
        var words = context.People();
        var key = atEnd ? "channel.end_depth" : "channel.depth";
        var detail =
            $"{at.Frame}: {words.Length(at.Depth)} − {words.Length(at.Change)} = {words.Length(had)} at the shallow mouth; "
            + $"needs {words.Length(needed)}, so {key} of at least {words.Length(needed + at.Change)}";
        return Outcome.AtLeast(
            atEnd ? "channel-shallow-mouth-end" : "channel-shallow-mouth",
            $"Rope channel at its shallow mouth, {Which(atEnd)}",
            had, needed, "m", Source, detail);
    }

    private static CheckResult Deep(CheckContext context, (string Frame, double Depth, double Change) at, bool atEnd)
    {
        var depth = context.Parameters.Frames.Base.Depth;
        var deep = at.Depth + at.Change;
        var words = context.People();
        var detail =
            $"{at.Frame}: {words.Length(at.Depth)} + {words.Length(at.Change)} = {words.Length(deep)} at the deep mouth; "
            + $"a quarter of the base's {words.Length(depth)} is {words.Length(depth / 4)}";
        return Outcome.AtMost(
            atEnd ? "channel-deep-mouth-end" : "channel-deep-mouth",
            $"Rope channel at its deep mouth, {Which(atEnd)}",
            deep, depth / 4, "m",
            "NDS 4.4.3: end notches at most d/4 deep (from memory)", detail);
    }

    private static string Which(bool atEnd) => atEnd ? "end bases" : "bases on the ropes";
}
