using System.Collections.Immutable;
using BridgeForm.Checks.Timber;
using BridgeForm.Quantities;

namespace BridgeForm.Checks.Geometry;

/// <summary>Depth of the rope channels where rope and base part: at the mouths, where a sloped floor is shallowest and deepest.</summary>
internal static class ChannelMouths
{
    private const string Source =
        "BridgeForm's own rule (docs/bridge.md): a channel holds at least half the rope's radius at its shallow mouth";

    /// <summary>All four.</summary>
    public static ImmutableArray<DeclaredCheck> Declared { get; } =
    [
        .. ((bool[])[false, true]).SelectMany(atEnd => (DeclaredCheck[])
        [
            new(
                atEnd ? "channel-shallow-mouth-end" : "channel-shallow-mouth",
                $"Rope channel at its shallow mouth, {Which(atEnd)}",
                "Depth of the channel where a sloped floor leaves least of it against half the rope's radius.",
                Source,
                [CheckStatus.Pass, CheckStatus.Fail]),
            new(
                atEnd ? "channel-deep-mouth-end" : "channel-deep-mouth",
                $"Rope channel at its deep mouth, {Which(atEnd)}",
                atEnd
                    ? "Depth of the channel where a sloped floor takes most against a quarter of the base's depth: deeper is to review, "
                        + "to see that the landing bears beside the rope. Above half of the depth (own figure) it fails. What a push on "
                        + "the guard asks of the rest: end-base-bending, end-base-shear."
                    : "Depth of the channel where a sloped floor takes most against a quarter of the base's depth. Deeper fails unless the "
                        + "net section passes (base-channel-bending, base-channel-shear).",
                DeepSource,
                atEnd ? [CheckStatus.Pass, CheckStatus.Warn, CheckStatus.Fail] : [CheckStatus.Pass, CheckStatus.Fail]),
        ]),
    ];

    private const string DeepSource = "NDS 4.4.3, IRC R502.8.1: end notches at most d/4 deep";

    /// <summary>Shallow and deep mouths of interior and of end bases.</summary>
    public static IEnumerable<CheckResult> Check(CheckContext context)
    {
        foreach (var atEnd in (bool[])[false, true])
        {
            if (Worst(context, atEnd) is { } worst)
            {
                yield return Shallow(context, worst, atEnd).OnBase(context, worst.Frame);
                yield return Deep(context, worst, atEnd).OnBase(context, worst.Frame);
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
            if (context.Frames[i].IsEnd == atEnd && (worst is null || Ties.IsLarger(change, worst.Value.Change)))
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
        var words = context.Words();
        var key = atEnd ? "channel.end_depth" : "channel.depth";
        var detail =
            $"{at.Frame}: {words.Length(at.Depth)} − {words.Length(at.Change)} = {words.Length(had)} at the shallow mouth; "
            + $"needs {words.Length(needed)}, so {key} of at least {words.AtLeast(needed + at.Change)}";
        return Outcome.AtLeast(
            Declared[atEnd ? 2 : 0],
            had, needed, "m", Source, detail);
    }

    private static CheckResult Deep(CheckContext context, (string Frame, double Depth, double Change) at, bool atEnd)
    {
        var depth = context.Parameters.Frames.Base.Depth;
        var deep = at.Depth + at.Change;
        var words = context.Words();
        var detail =
            $"{at.Frame}: {words.Length(at.Depth)} + {words.Length(at.Change)} = {words.Length(deep)} at the deep mouth; "
            + $"a quarter of the base's {words.Length(depth)} is {words.Length(depth / 4)}";
        var declared = Declared[atEnd ? 3 : 1];
        if (atEnd && deep > depth / 2 * (1 + Tolerances.SameLimit))
        {
            return Outcome.AtMost(
                declared, deep, depth / 2, "m", $"{DeepSource}; own figure: at most d/2 where the base lies on a landing",
                $"{detail}, half of it {words.Length(depth / 2)}; a deeper base, or less depth at the ends "
                    + "(channel.end_depth)");
        }

        var result = Outcome.AtMost(
            declared, deep, depth / 4, "m", DeepSource, detail, atEnd ? CheckStatus.Warn : CheckStatus.Fail);
        return result.Status switch
        {
            CheckStatus.Warn => result with
            {
                Detail = detail + "; see that the landing bears right beside the rope; what the guard's "
                + "push does there: end-base-bending, end-base-shear"
            },
            CheckStatus.Fail when NetSection.Passes(context) => NetSection.Instead(result),
            _ => result,
        };
    }

    private static string Which(bool atEnd) => atEnd ? "end bases" : "bases on the ropes";
}

/// <summary>Whether a flat strap across the channel can clamp the rope.</summary>
internal static class KeeperStrap
{
    /// <summary>The check.</summary>
    public static DeclaredCheck Declared { get; } = new(
        "keeper-strap-reach",
        "Rope within reach of a flat keeper strap",
        "How deep the rope lies in the base, middle frames and end frames, against its diameter: deeper, a flat strap does not clamp it. "
            + "At the middle of the base. Wood between the strap's screws and the channel: keeper-hole-distance. What the screws hold is "
            + "not looked at.",
        "common practice, no source",
        [CheckStatus.Pass, CheckStatus.Warn]);

    /// <summary>Warns when the rope lies deeper in the base than its own diameter.</summary>
    public static CheckResult Check(CheckContext context)
    {
        var rope = context.Parameters.Ropes.Rope.Diameter;
        var channel = context.Parameters.Frames.Channel;
        var deepest = Math.Max(channel.Depth, channel.EndDepth);
        var sunk = deepest - channel.Liner;
        var words = context.Words();
        var atEnd = channel.EndDepth > channel.Depth || context.Layout.Bays < 2;
        return Outcome.AtMost(
            Declared,
            sunk, rope, "m",
            Declared.Source,
            $"channel {words.Length(deepest)}{(channel.EndDepth > channel.Depth ? " in the end bases" : "")} − liner "
                + $"{words.Length(channel.Liner)} = {words.Length(sunk)}; "
            + $"rope {words.Length(rope)}: sunk deeper than its diameter a flat strap does not clamp it",
            CheckStatus.Warn).OnBase(context, atEnd ? 0 : 1);
    }
}
