using BridgeForm.Ropes.Fittings;

namespace BridgeForm.Checks.Ropes;

/// <summary>The smallest size of a named set that carries the largest tension of one rope.</summary>
internal static class FittingSize
{
    /// <summary>Pass with the size; engineer when the set has none that carries it.</summary>
    public static CheckResult Of(CheckContext context, string id, string title, FittingSet set)
    {
        var words = context.People();
        var pull = context.Ropework.Governing?.Shape?.MaxTension ?? 0;
        var source = $"{set.Name}: {set.Source}";
        return set.Smallest(pull) is { } size
            ? Outcome.AtMost(
                id, title, pull, size.WorkingLoad, "N", source,
                $"{size.Size} in is the smallest of this set that carries {words.Force(pull)}: working load {words.Force(size.WorkingLoad)}")
            : new CheckResult(
                id, title, CheckStatus.Engineer, pull, set.Sizes[^1].WorkingLoad, "N", pull / set.Sizes[^1].WorkingLoad, source,
                $"{words.Force(pull)} is more than the largest of this set, {set.Sizes[^1].Size} in with {words.Force(set.Sizes[^1].WorkingLoad)}: "
                + "an engineer chooses what holds the rope");
    }
}

/// <summary>Turnbuckles.</summary>
internal static class TurnbuckleSize
{
    /// <summary>One at the end of each rope.</summary>
    public static CheckResult Of(CheckContext context) =>
        FittingSize.Of(context, "turnbuckle-size", "Turnbuckle for one rope", FittingSet.Turnbuckles);
}

/// <summary>Shackles.</summary>
internal static class ShackleSize
{
    /// <summary>One at each end of each rope.</summary>
    public static CheckResult Of(CheckContext context) =>
        FittingSize.Of(context, "shackle-size", "Shackle for one rope", FittingSet.Shackles);
}
