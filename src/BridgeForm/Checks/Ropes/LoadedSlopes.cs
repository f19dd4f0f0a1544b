using BridgeForm.Checks.Codes;
using BridgeForm.Frames;
using BridgeForm.Loads;
using BridgeForm.Quantities;
using BridgeForm.Roles;

namespace BridgeForm.Checks.Ropes;

/// <summary>Steepest deck of all load cases that have a deck.</summary>
internal static class DeckSlopeLoaded
{
    /// <summary>What it compares.</summary>
    public static DeclaredCheck Declared { get; } = new(
        "deck-slope-loaded",
        "Steepest slope of the deck under load",
        "Steepest bay of all load cases with a deck, live load where it makes it steepest among them: to review above the steepest ramp; "
            + "fails above 1 : 2 (or limits.slope) in any case of the empty bridge, area loads or snow; point loads are to review at most. "
            + "Ropes as marked; beside it, to review: the worst of these cases with the rope grown by the high end of its stretch, nothing "
            + "taken up, hottest.",
        $"{Limits.Ramp.Source}; own figure: no deck steeper than 1 : 2",
        [CheckStatus.Pass, CheckStatus.Warn, CheckStatus.Fail]);

    /// <summary>A warning above a ramp's limit; fails where nobody walks any more.</summary>
    public static CheckResult Check(CheckContext context)
    {
        var (ramp, source) = Limits.Ramp;
        var (most, own) = Limits.DeckSlope(context.Parameters.Limits);
        var decked = context.Cases.Where(c => c.Shape is not null && c.Id is not LoadCaseIds.ErectHalf).ToList();
        var spread = Ties.FirstLargest(decked.Where(c => !LoadedCases.IsPoint(context.Parameters.Loads, c.Id)), c => c.SteepestDeck);
        if (spread is not null && spread.SteepestDeck > most)
        {
            return Outcome.AtMost(Declared, spread.SteepestDeck, most, "1", own, Words(spread, most, "a deck"))
                .On(Steepest(context, spread));
        }

        var worst = Ties.FirstLargest(decked, c => c.SteepestDeck);
        var grown = Ties.FirstLargest(context.Ropework.Grown.Where(c => c.Shape is not null), c => c.SteepestDeck);
        var result = Outcome.AtMost(
            Declared, worst?.SteepestDeck ?? 0, ramp, "1", $"{source}; {own}",
            $"{Words(worst, ramp, "a ramp")}; above {CheckWords.Slope(most)} it would fail"
                + Grown.Words(
                    context,
                    grown is null
                        ? null
                        : $"{CheckWords.Slope(grown.SteepestDeck)} ({CheckWords.Angle(Elementary.Atan(grown.SteepestDeck))}) "
                        + $"in case {grown.Id}",
                    grown?.SteepestDeck > most),
            CheckStatus.Warn).On(Steepest(context, worst));
        return result.Status == CheckStatus.Pass && grown?.SteepestDeck > ramp ? result with { Status = CheckStatus.Warn } : result;
    }

    // What people walk on in the steepest bay of a case.
    private static IEnumerable<string> Steepest(CheckContext context, LoadCaseResult? of) => of?.Shape is { } shape
        ? context.Walked(EndSlope.Steepest(BridgeLayout.Lay(context.Parameters, shape.Nodes)).Bay)
        : [];

    private static string Words(LoadCaseResult? of, double limit, string what) =>
        $"{CheckWords.Slope(of?.SteepestDeck ?? 0)} ({CheckWords.Angle(Elementary.Atan(of?.SteepestDeck ?? 0))}) in case {of?.Id}; "
        + $"{what} has at "
            + $"most {CheckWords.Slope(limit)}";
}

/// <summary>What is told of ropes that have stretched and were not taken up.</summary>
internal static class Grown
{
    /// <summary>When that is.</summary>
    public const string When = "with the rope grown by its stretch and nothing taken up, hottest,";

    /// <summary>Begins with a semicolon.</summary>
    /// <param name="context">The bridge.</param>
    /// <param name="figure">The worst, and where; null where no such case was solved.</param>
    /// <param name="isTooMuch">More than would fail as marked.</param>
    public static string Words(CheckContext context, string? figure, bool isTooMuch) => figure is null
        ? ""
        : $"; {When} {figure}" + (isTooMuch ? ", more than it may: take the ropes up as they stretch (rope-take-up)" : "")
            + StretchRange.Unknown(context.Parameters.Ropes);
}

/// <summary>How far frames tilt to one side under people and snow, their weight leaning with them.</summary>
internal static class CrossSlope
{
    /// <summary>What it compares.</summary>
    public static DeclaredCheck Declared { get; } = new(
        "cross-slope",
        "Cross slope of the deck under load",
        "The frame that tilts most in any case with people (on either side of the deck where they tilt it most, wood dry, among them), "
            + "snow or the point load at the edge at any frame, the weights' lever above the ropes counted (second "
            + "order; the first-order tilt stands beside it): to review above 3° and fails above 5° on a public bridge, 5° and 8° on a "
            + "private "
            + "one, or limits.cross_slope, ropes as marked at the reference temperature. Beside it, to review: the worst of these cases "
            + "with "
            + "the rope grown by the high end of its stretch, nothing taken up, hottest. Fails without a number where the section rolls "
            + "over in either. The empty bridge alone against 1 : 48, a "
            + "look; its weights are taken as even from side to side.",
        $"own figures: public 3° and 5°, private 5° and 8°; {Limits.EmptyCrossSlope.Source}",
        [CheckStatus.Pass, CheckStatus.Warn, CheckStatus.Fail]);

    /// <summary>Fails where people are tipped off or the section rolls over; a look before that.</summary>
    public static CheckResult Check(CheckContext context)
    {
        var (look, most, source) = Limits.CrossSlope(context.Parameters.Use, context.Parameters.Limits);
        var loaded = context.Cases.Where(c => LoadedCases.HasLoad(c.Id)).ToList();
        var over = loaded.Where(c => c.RollsOver).Select(c => c.Id).ToList();
        if (over.Count > 0)
        {
            return new CheckResult(
                Declared.Id, Declared.Title, CheckStatus.Fail, 0, null, "1", null, source,
                $"it rolls over in case {string.Join(", ", over)}: no tilt at which the section stays upright was found; see roll");
        }

        if (Ties.FirstLargest(loaded, c => c.CrossSlope ?? double.NegativeInfinity) is not { CrossSlope: { } tilt } worst)
        {
            return new CheckResult(
                Declared.Id, Declared.Title, CheckStatus.Fail, 0, null, "1", null, source,
                "no load case has a solution: how far the deck tilts is not known");
        }

        var unsolved = loaded.Where(c => c.CrossSlope is null).Select(c => c.Id).ToList();
        var spacing = context.Parameters.Ropes.Spacing;
        var frame = TiltsMost(context, worst);
        var where = $"in case {worst.Id}, {CheckWords.Angle(worst.FirstOrderCrossSlope)} before the weights lean with the deck";
        var bound = Ties.FirstLargest(
            context.Ropework.Points.Where(p => !p.IsSolved), p => p.Tilt ?? double.PositiveInfinity);
        if (bound is { Tilt: null })
        {
            unsolved.Add($"the point load at the edge at {bound.Frame}");
        }
        else if (bound?.Tilt > tilt)
        {
            (tilt, where) = (bound.Tilt.Value, $"at most, with the point load at the edge at {bound.Frame}: bounded, not solved");
            frame = bound.Frame;
        }

        var words = $"one rope {context.Words().Length(Elementary.Tan(tilt) * spacing)} lower than the other over "
            + $"{context.Words().Length(spacing)} = {CheckWords.Angle(tilt)} ({CheckWords.Slope(Elementary.Tan(tilt))}) {where}; "
            + $"to review above {CheckWords.Angle(look)}, at most {CheckWords.Angle(most)}"
            + (unsolved.Count == 0 ? "" : $"; no shape of the ropes in {string.Join(", ", unsolved)}");
        var (level, code) = Limits.EmptyCrossSlope;
        var empty = Elementary.Tan(context.Cases.FirstOrDefault(c => c.Id is LoadCaseIds.Dead)?.CrossSlope ?? 0);
        if (empty > level)
        {
            words += $"; the empty deck alone lies at {CheckWords.Slope(empty)}, more than {CheckWords.Slope(level)} ({code})";
        }

        var grown = Ties.FirstLargest(context.Ropework.Grown, c => c.CrossSlope ?? double.PositiveInfinity);
        if (grown is { CrossSlope: null })
        {
            return new CheckResult(
                Declared.Id, Declared.Title, CheckStatus.Fail, Elementary.Tan(tilt), null, "1", null, source,
                $"{words}; {Grown.When} it rolls over in case {grown.Id}, or has no shape: take the ropes up as they stretch, and set them "
                    + "further apart").OnBase(context, frame);
        }

        words += Grown.Words(
            context, grown is null ? null : $"{CheckWords.Angle(grown.CrossSlope!.Value)} in case {grown.Id}", grown?.CrossSlope > most);
        var result = Outcome.AtMost(Declared, Elementary.Tan(tilt), Elementary.Tan(most), "1", source, words).OnBase(context, frame);
        var isLook = tilt > look || grown?.CrossSlope > look || unsolved.Count > 0 || empty > level;
        return result.Status == CheckStatus.Pass && isLook ? result with { Status = CheckStatus.Warn } : result;
    }

    // Name of the frame that tilts most in a case.
    private static string TiltsMost(CheckContext context, LoadCaseResult of) => of.Pair is { } pair
        ? context.Frames[Ties.FirstLargest(Enumerable.Range(0, context.Frames.Length), i => Math.Abs(pair.Shape.Tilts[i]))].Name
        : "";
}
