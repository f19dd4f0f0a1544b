using BridgeForm.Ropes.Fittings;

namespace BridgeForm.Checks.Ropes;

/// <summary>The smallest size of a named set that carries the largest tension of one rope.</summary>
internal static class FittingSize
{
    /// <summary>Pass with the size; engineer when the set has none that carries it.</summary>
    public static CheckResult Check(CheckContext context, DeclaredCheck check, FittingSet set)
    {
        var words = context.Words();
        var pull = context.Ropework.LargestPull;
        var source = $"{set.Name}: {set.Source}";
        return set.Smallest(pull) is { } size
            ? Outcome.AtMost(
                check, pull, size.WorkingLoad, "N", source,
                $"size {size.Named(words.Units)} is the smallest of this set that carries {words.Force(pull)}: working load "
                    + $"{words.Force(size.WorkingLoad)}")
            : new CheckResult(
                check.Id, check.Title, CheckStatus.Engineer, pull, set.Sizes[^1].WorkingLoad, "N", pull / set.Sizes[^1].WorkingLoad, source,
                $"{words.Force(pull)} is more than the largest of this set, size {set.Sizes[^1].Named(words.Units)} with "
                    + $"{words.Force(set.Sizes[^1].WorkingLoad)}: "
                + "an engineer chooses what holds the rope");
    }
}

/// <summary>Turnbuckles.</summary>
internal static class TurnbuckleSize
{
    /// <summary>What it compares.</summary>
    public static DeclaredCheck Declared { get; } = new(
        "turnbuckle-size",
        "Turnbuckle for one rope",
        "Largest tension, of new rope before it has stretched too where the file chose marks set short for that (ropes.new: as-is), "
            + "against the working load of the smallest turnbuckle of a named set that carries it.",
        "the set's source, named in the result",
        [CheckStatus.Pass, CheckStatus.Engineer]);

    /// <summary>One at each end of each rope.</summary>
    public static CheckResult Check(CheckContext context) =>
        FittingSize.Check(context, Declared, FittingSet.Turnbuckles);
}

/// <summary>Shackles.</summary>
internal static class ShackleSize
{
    /// <summary>What it compares.</summary>
    public static DeclaredCheck Declared { get; } = new(
        "shackle-size",
        "Shackle for one rope",
        "Largest tension, of new rope before it has stretched too where the file chose marks set short for that (ropes.new: as-is), "
            + "against the working load of the smallest shackle of a named set that carries it.",
        "the set's source, named in the result",
        [CheckStatus.Pass, CheckStatus.Engineer]);

    /// <summary>One at each end of each rope.</summary>
    public static CheckResult Check(CheckContext context) =>
        FittingSize.Check(context, Declared, FittingSet.Shackles);
}
