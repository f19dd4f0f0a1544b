using BridgeForm.Loads;

namespace BridgeForm.Checks.Ropes;

/// <summary>What each support and anchor must hold. An engineer designs them.</summary>
internal static class Anchors
{
    /// <summary>Support A.</summary>
    public static DeclaredCheck DeclaredA { get; } = new(
        "anchor-a",
        "Support A: anchor and post or tree",
        "Pull along the rope and the backstay, of new rope set short for its stretch too, and what comes down on the support. Only stated.",
        "statics of the worst load case; for a licensed engineer",
        [CheckStatus.Engineer]);

    /// <summary>Support B.</summary>
    public static DeclaredCheck DeclaredB { get; } = new(
        "anchor-b",
        "Support B: anchor and post or tree",
        "As for support A.",
        "statics of the worst load case; for a licensed engineer",
        [CheckStatus.Engineer]);

    private const string Source = "statics of the worst load case; anchors, posts and trees are for a licensed engineer";

    /// <summary>One result a support.</summary>
    public static IEnumerable<CheckResult> Check(CheckContext context) =>
        context.Ropework.Supports.Select(pull => At(context.Words(), pull, context.Ropework.PullWhenNew(pull.Support)));

    private static CheckResult At(CheckWords words, SupportPull pull, SupportPull? asNew)
    {
        var rope = $"one rope in case {pull.Case}: level pull {words.Force(pull.Horizontal)}, down {words.Force(pull.Vertical)}, "
            + $"along the rope √(H² + V²) = {words.Force(pull.Tension)}";
        var stay = pull.Backstay is { } s
            ? $"; backstay at {CheckWords.Angle(s.Angle)} below level: pull {words.Force(s.Tension)} on the anchor; "
                + $"post: down {words.Force(pull.Vertical)} + {words.Force(s.Vertical)} = {words.Force(pull.PostVertical)}"
                + (pull.PostVertical < 0 ? " (lifted: it must be held down), " : ", ")
                + $"level {words.Force(pull.Horizontal)} − {words.Force(s.Horizontal)} = {words.Force(pull.PostHorizontal)}"
            : "; no backstay given: the support itself holds all of it";
        var declared = pull.Support is "A" ? DeclaredA : DeclaredB;
        return new CheckResult(
            declared.Id,
            declared.Title,
            CheckStatus.Engineer,
            Math.Max(pull.Held, asNew?.Held ?? 0),
            null,
            "N",
            null,
            Source,
            rope + stay + (asNew is null ? "" : "; new rope, if it is set short for its stretch, until it has stretched: "
                + $"{words.Force(asNew.Held)} in case {asNew.Case}, level {words.Force(asNew.Horizontal)}")
            + "; two ropes pull on the support");
    }
}

/// <summary>How far the bridge falls when a support gives way a little.</summary>
internal static class SupportMoves
{
    /// <summary>What it compares.</summary>
    public static DeclaredCheck Declared { get; } = new(
        "support-move",
        "Mid-span drop when a support moves",
        "Mid-span drop when one support moves 25 mm (1 in). Only stated.",
        "large-displacement solution of the empty bridge; how much an anchor may move is for a licensed engineer",
        [CheckStatus.Engineer]);

    /// <summary>Fall of mid-span when one support moves an inch.</summary>
    public static CheckResult Check(CheckContext context)
    {
        var words = context.Words();
        var fall = context.Ropework.MidSpanDropWhenSupportMoves;
        return new CheckResult(
            Declared.Id, Declared.Title, CheckStatus.Engineer, fall ?? 0, null, "m", null,
            Declared.Source,
            fall is { } f
                ? $"one support {words.InInches(SupportMove.Standard)} inward or down: mid-span falls by up to {words.Length(f)}"
                : "the moved ropes have no shape");
    }
}

/// <summary>What happens when one rope is lost.</summary>
internal static class LossOfRope
{
    /// <summary>What it compares.</summary>
    public static DeclaredCheck Declared { get; } = new(
        "loss-of-one-rope",
        "Loss of one rope",
        "No other load path is claimed.",
        "no source: nothing here is designed to carry the bridge on one rope",
        [CheckStatus.Engineer]);

    /// <summary>No other path is claimed.</summary>
    public static CheckResult Check(CheckContext context) => new(
        Declared.Id, Declared.Title, CheckStatus.Engineer, 2, null, "count", null,
        Declared.Source,
        $"the bridge hangs on two ropes of {context.Parameters.Ropes.Rope.Name}; when one fails the deck turns over: no other load "
            + "path is claimed");
}
