using BridgeForm.Loads;
using BridgeForm.Quantities;

namespace BridgeForm.Checks.Ropes;

/// <summary>Loads that stand outside the ropes.</summary>
internal static class Tips
{
    private const string Source = "statics: ½ + (e + h·tan θ)/s";

    /// <summary>What it compares.</summary>
    public static DeclaredCheck Declared { get; } = new(
        "load-tips",
        "Loads that tip the frames",
        "Largest share of one load on one rope, ½ + (e + h·tan θ)/s with its distance e from the middle, its height h over the ropes and "
            + "the tilt θ of its frame, against 1: a load with a larger share stands outside that rope, relieves the other, and only the "
            + "bridge's own weight and its keepers hold the frame down there.",
        Source,
        [CheckStatus.Pass, CheckStatus.Warn, CheckStatus.Fail]);

    /// <summary>A look where a load has more than all of itself on one rope; fails where the section rolls over.</summary>
    public static CheckResult Check(CheckContext context)
    {
        var over = context.Cases.Where(c => c.RollsOver).Select(c => c.Id).ToList();
        if (over.Count > 0)
        {
            return new CheckResult(
                Declared.Id, Declared.Title, CheckStatus.Fail, 0, null, "1", null, Source,
                $"it rolls over in case {string.Join(", ", over)}: see roll");
        }

        var worst = Ties.FirstLargest(context.Cases, c => c.LargestShare ?? 0);
        var (share, where, frame) = (worst?.LargestShare ?? 0, $"in case {worst?.Id}", Frame(context, worst));
        var bound = Ties.FirstLargest(
            context.Ropework.Points.Where(p => !p.IsSolved), p => p.Share ?? double.PositiveInfinity);
        if (bound is { Share: null })
        {
            return new CheckResult(
                Declared.Id, Declared.Title, CheckStatus.Warn, share, 1, "1", null, Source,
                $"{CheckWords.Share(share)} of a load on one rope {where}; with the point load at the edge at {bound.Frame} nothing bounds "
                    + "it").OnBase(context, bound.Frame);
        }

        if (bound?.Share > share)
        {
            (share, where) = (bound.Share.Value, $"at most, with the point load at the edge at {bound.Frame}: bounded, not solved");
            frame = bound.Frame;
        }

        return Outcome.AtMost(
            Declared, share, 1, "1", Source,
            share > 1
                ? $"tips: {CheckWords.Share(share)} of a load on one rope {where}, so it pulls upward at the other; what the "
                    + "bridge's own weight does not hold there, keepers must: keeper-uplift-load. Ropes further apart take it between them"
                : $"{CheckWords.Share(share)} of a load on one rope at most, {where}; above 100 % it would pull upward at the other",
            CheckStatus.Warn).OnBase(context, frame);
    }

    // Name of the frame with the largest share of a load in a case.
    private static string Frame(CheckContext context, LoadCaseResult? of) => of is
    {
        LargestShare: not null, Loading: { } loading, Pair: { } pair
    }
        ? context.Frames[Ties.FirstLargest(
            Enumerable.Range(1, context.Layout.Bays - 1),
            i => loading.On.Max(o => o.LargestShareAt(i, pair.Shape.Tilts, pair.Spacing)))].Name
        : "";
}

/// <summary>What loads to one side ask of the keepers of the other rope.</summary>
internal static class KeeperUpliftLoad
{
    private const string Source = "statics of both ropes together, 0.6 of the bridge's own weight at light densities (ASCE 7 2.4.1); what "
        + "a keeper holds is for a licensed engineer or a test";

    /// <summary>What it compares.</summary>
    public static DeclaredCheck Declared { get; } = new(
        "keeper-uplift-load",
        "Keeper: base lifted off a rope by people on the other side",
        "Largest load upward at any frame of any case, solved with 0.6 of the bridge's own weight at the light end of its wood's "
            + "densities, ropes as marked, and in the cases that tilt it most also grown by the high end of their stretch with nothing "
            + "taken up, hottest. Only stated: what a keeper holds is not known here.",
        Source,
        [CheckStatus.Engineer, CheckStatus.Fail]);

    /// <summary>The largest lift; fails where so light a bridge rolls over.</summary>
    public static CheckResult Check(CheckContext context)
    {
        var words = context.Words();
        var lifts = context.Ropework.Lifts;
        if (lifts.FirstOrDefault(l => l.Force is null) is { } over)
        {
            return new CheckResult(
                Declared.Id, Declared.Title, CheckStatus.Fail, 0, null, "N", null, Source,
                $"with 0.6 of its own weight it rolls over in case {over.Case}{When(over)}, or has no shape: "
                    + "what keepers must hold has no end");
        }

        var worst = Ties.FirstLargest(lifts, l => l.Force ?? 0);
        var result = Outcome.ForEngineer(
            Declared, worst?.Force ?? 0, "N", Source,
            worst is { Force: > 0 }
                ? $"{words.Force(worst.Force.Value)} upward at frame {worst.Frame} in case {worst.Case}{When(worst)}: "
                    + "each keeper there must hold it "
                    + "down, besides keeper-uplift-guard and keeper-uplift-wind"
                : "no case lifts a frame off a rope, also with 0.6 of the bridge's own weight"
                    + ", nor in those that tilt it most with the rope stretched, nothing taken up"
                    + StretchRange.Unknown(context.Parameters.Ropes)
                    + "; a push on the guard and wind are looked at by keeper-uplift-guard and keeper-uplift-wind");
        return result.OnBase(context, worst?.Frame ?? "");
    }

    private static string When(Lift lift) => lift.IsGrown ? " with the rope stretched, nothing taken up, hottest" : "";
}
