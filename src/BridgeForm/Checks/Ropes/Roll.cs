using BridgeForm.Checks.Codes;
using BridgeForm.Loads;
using BridgeForm.Quantities;
using BridgeForm.Roles;

namespace BridgeForm.Checks.Ropes;

/// <summary>Whether the section stays upright: deck and people stand above the two ropes.</summary>
internal static class Roll
{
    /// <summary>Stable id.</summary>
    public const string Id = "roll";

    private const string Theory = "statics: smallest root of det(K − λ·G), K from the ropes as they hang";

    /// <summary>What it compares.</summary>
    public static DeclaredCheck Declared { get; } = new(
        Id,
        "Section stays upright on its ropes",
        "Roll factor: how many times as high all weights could stand over the ropes before the section turns over, tensions and "
            + "shape held; "
            + "people's center 1.0 m above the deck (common practice, no source). It does not say how many times as heavy they could be. "
            + "Smallest root λ of det(K − λ·G) = 0, K the elastic and "
            + "geometric stiffness of both ropes with their backstays, frames rigid in their plane, yawing and moving sideways freely and "
            + "pitching with the ropes, "
            + "G weight × height on the frames' rotation. Of the empty bridge, live load on all of it (also in the cold), on each half, "
            + "on one side, snow, own cases; the first ones also at the highest temperature with the rope grown by the high end of "
            + "ropes.stretch and nothing taken up. "
            + "Fails below 2 (or limits.roll), to review below 3. Also with live load where it is worst for it, about the quarters and "
            + "not in "
            + "the middle (least-roll), wood dry: there it fails below three quarters of that, 1.5. It fails where no upright "
            + "equilibrium is found. With the deck held in plan: for information. Wind and side stays are not in "
            + "it. A licensed engineer decides.",
        $"own figures: fails below 2 (1.5 where live load lies worst for it), to review below 3; {Theory}",
        [CheckStatus.Pass, CheckStatus.Warn, CheckStatus.Fail, CheckStatus.Engineer]);

    /// <summary>The least factor of all states.</summary>
    public static CheckResult Check(CheckContext context) =>
        Check(context.Parameters, context.Ropework.Roll, context.Layout.Bays, context.Words());

    /// <summary>The same from its parts, for trial designs.</summary>
    public static CheckResult Check(
        Project.BridgeParameters parameters, IReadOnlyCollection<RollState> states, int bays, CheckWords words)
    {
        var (least, comfortable, figures) = Limits.Roll(parameters.Limits);
        var source = $"{figures}; {Theory}";
        if (bays < 2)
        {
            return Outcome.ForEngineer(
                Declared, 0, "1", source,
                "no frame hangs between the supports: nothing stands on the ropes alone. A licensed engineer decides.");
        }

        var over = states.Where(s => s.RollsOver).ToList();
        var unsolved = states.Where(s => s.Failure is not null).ToList();
        var unknown = unsolved.Count == 0
            ? ""
            : $"no shape of the ropes in {Names(unsolved)}: whether the section stays upright there is not known";
        var worst = Governing(parameters.Limits, states);

        // A case that is not known does not excuse one that fails.
        if (worst?.Factor is not { } factor || (unsolved.Count > 0 && over.Count == 0 && factor.Value >= Needed(worst, least)))
        {
            return Outcome.ForEngineer(Declared, 0, "1", source, $"{unknown}. A licensed engineer decides.");
        }

        var text = Words(parameters, states, words)
            + (over.Count > 0 ? $" It rolls over in {Names(over)}: no tilt is given where it does." : "")
            + (unknown.Length > 0 ? $" Besides, {unknown}." : "")
            + " Wind and side stays are not in it. A licensed engineer decides.";
        var result = Outcome.AtLeast(Declared, factor.Value, Needed(worst, least), "1", source, text);
        if (over.Count > 0)
        {
            // With a load to one side there may be no equilibrium although the factor of upright frames would do.
            return result with { Status = CheckStatus.Fail, Ratio = result.Ratio > 1 ? result.Ratio : null };
        }

        return result.Status == CheckStatus.Pass && RollState.Least(states)!.Factor!.Value < comfortable
            ? result with { Status = CheckStatus.Warn }
            : result;
    }

    /// <summary>The state that comes nearest to what it needs, or furthest below; null when none has a factor.</summary>
    public static RollState? Governing(Project.LimitParameters own, IEnumerable<RollState> states) => Ties.FirstLeast(
        states.Where(s => s.Factor is not null), s => s.Factor!.Value / Needed(s, Limits.Roll(own).Least));

    private static double Needed(RollState state, double least) => IsPattern(state) ? Limits.RollAtWorstShare * least : least;

    private static bool IsPattern(RollState state) => state.Case is LoadCaseIds.LeastRoll;

    private static string Words(Project.BridgeParameters parameters, IReadOnlyCollection<RollState> states, CheckWords words)
    {
        var (least, comfortable, _) = Limits.Roll(parameters.Limits);
        string?[] told =
        [
            RollState.Least(states.Where(s => !IsPattern(s))) is { } listed ? Told(listed, "needed", least) : null,
            RollState.Least(states.Where(IsPattern)) is { } pattern
                ? Told(pattern, "live load where it is worst for it, needed", Limits.RollAtWorstShare * least)
                : null,
        ];
        var held = states.Select(s => s.HeldInPlan).FirstOrDefault(h => h is not null) is { } plan && double.IsFinite(plan)
            ? $"; {CheckWords.Plain(plan)} if the deck were held in plan, for information"
            : "";
        return $"least {string.Join("; ", told.OfType<string>())}; comfortable {CheckWords.Plain(comfortable)}; ropes "
            + $"{words.Length(parameters.Ropes.Spacing)} apart{held}{StretchRange.Unknown(parameters.Ropes)}. "
            + "The factor says how many times as high the weights could stand over the ropes, not how many times as heavy they could be.";
    }

    private static string Told(RollState state, string needed, double least) =>
        $"{Down(state.Factor!.Value)} in {Name(state)}: "
            + (state.Factor.IsToOneSide ? "all rolls to one side" : "one half rolls against the other")
            + $", {needed} {CheckWords.Plain(least)}";

    // Never told higher than it is.
    private static string Down(double factor) => CheckWords.Plain(Math.Floor(factor * 100) / 100);

    private const string InHeat = " at the highest temperature with the rope stretched and nothing taken up";

    private static string Name(RollState state) => state.InHeat ? state.Case + InHeat : $"case {state.Case}";

    private static string Names(IReadOnlyCollection<RollState> states)
    {
        var (plain, hot) = (Joined(states.Where(s => !s.InHeat)), Joined(states.Where(s => s.InHeat)));
        return plain.Length == 0 ? hot + InHeat : hot.Length == 0 ? $"case {plain}" : $"case {plain}, and in {hot}{InHeat}";
    }

    private static string Joined(IEnumerable<RollState> states) => string.Join(", ", states.Select(s => s.Case));
}
