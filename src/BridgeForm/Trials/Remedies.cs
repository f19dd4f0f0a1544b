using System.Collections.Immutable;
using BridgeForm.Checks;
using BridgeForm.Checks.Ropes;
using BridgeForm.Loads;
using BridgeForm.Materials;
using BridgeForm.Project;
using BridgeForm.Quantities;
using BridgeForm.Ropes;
using BridgeForm.Ropes.Fittings;

namespace BridgeForm.Trials;

/// <summary>A change that would make a failing check pass: solved, not guessed, and preliminary.</summary>
/// <param name="CheckId">The check it is for.</param>
/// <param name="Text">For people.</param>
/// <param name="Rope">Key of a rope that passes; null when this is about something else.</param>
/// <param name="Length">
/// A sag that passes, or the longest span that a member of the deck carries, metres; null when this is about something else.
/// </param>
/// <param name="Spacing">A <c>frames.spacing</c> that passes, metres; null when this is about something else.</param>
/// <param name="SearchEnded">The search was ended at its limit: something smaller may pass, or something at all.</param>
public sealed record Remedy(
    string CheckId, string Text, string? Rope = null, double? Length = null, double? Spacing = null, bool SearchEnded = false)
{
    /// <summary>Keys and values to write, such as <c>ropes.spacing 55 in</c>; empty where the text alone says what to do.</summary>
    public string Write { get; init; } = "";
}

/// <summary>Finds the shape of a trial design; null where it has none, or where the effort is spent.</summary>
/// <param name="parameters">The design.</param>
/// <param name="effort">What the search may cost; a trial of it has begun.</param>
/// <param name="roughly">From few of its frames and bays, and to a few digits: to find out what is far from passing or failing.</param>
public delegate RopeShape? TrialShape(BridgeParameters parameters, Effort effort, bool roughly);

/// <summary>
/// What would pass where a rope fails. Each trial is a whole new design, shape and weights; what is told was looked at in all its
/// load cases.
/// </summary>
public static class Remedies
{
    // Trials of longer bridges take too long to be a by-product of a check.
    internal const double MostBays = 400;

    // Half as much again as a search takes whose trials settle as bridges do. A trial takes seven weighings where it settles,
    // three times as many are left to it. A short bridge is weighed the more often the fewer bays it has: that costs as little.
    private const int MostWeighings = 150;
    private const int MostOfTrial = 20;
    private const double FurtherBays = 4000;
    private const double FurtherBaysOfTrial = 400;

    // Frames closer than this are no bridge: a foot. Common practice, no source.
    internal const double ShortestSpacing = 0.3;

    /// <summary>Empty when no check of the ropes fails.</summary>
    /// <param name="parameters">The design.</param>
    /// <param name="cases">Its load cases.</param>
    /// <param name="checks">What its checks say.</param>
    /// <param name="shape">Finds the shape of a trial design, null where it has none or where the effort is spent.</param>
    /// <param name="token">Asked before each trial and each weighing.</param>
    public static ImmutableArray<Remedy> Find(
        BridgeParameters parameters,
        ImmutableArray<LoadCaseResult> cases,
        ImmutableArray<CheckResult> checks,
        TrialShape shape,
        CancellationToken token = default)
    {
        // Where nobody knows what the ends keep, no sag and no rope can be said to pass.
        var fails = checks.Any(c => c is { Id: RopeStrength.Id, Status: CheckStatus.Fail })
            && Terminations.Allowed(parameters.Ropes) is not null;
        if (!fails)
        {
            return [];
        }

        if (Bays(parameters) > MostBays)
        {
            return [NotLookedFor(RopeStrength.Id, "deeper sags and thicker ropes")];
        }

        var hardest = Ties.FirstLargest(cases.Where(c => c.Shape is not null), c => c.Shape!.LargestTension)?.Id;
        RopeTrials Trials() => new(Begin(Bays(parameters), token), Begin(Bays(parameters), token), shape, hardest);
        return [Rope(parameters, Trials()), Sag(parameters, Trials())];
    }

    /// <summary>
    /// The largest value between two bounds for which something still holds, when what holds for one value holds for all
    /// smaller ones: the longest bay that boards carry, say. Null when it does not hold for the smallest.
    /// </summary>
    /// <param name="holds">Whether it holds.</param>
    /// <param name="low">Smallest value.</param>
    /// <param name="high">Largest value.</param>
    /// <param name="tolerance">How close to the true limit the answer comes, from below.</param>
    public static double? Largest(Func<double, bool> holds, double low, double high, double tolerance)
    {
        if (!holds(low))
        {
            return null;
        }

        if (holds(high))
        {
            return high;
        }
        while (high - low > tolerance)
        {
            var middle = (low + high) / 2;
            (low, high) = holds(middle) ? (middle, high) : (low, middle);
        }

        return low;
    }

    /// <summary>A new search among designs with about so many bays.</summary>
    internal static Effort Begin(double bays, CancellationToken token) =>
        new(MostWeighings + (int)(FurtherBays / Math.Max(1, bays)), MostOfTrial + (int)(FurtherBaysOfTrial / Math.Max(1, bays)), token);

    internal static double Bays(BridgeParameters parameters) => parameters.Site.Span / parameters.Frames.Spacing;

    private static Remedy Rope(BridgeParameters parameters, RopeTrials trials)
    {
        var passing = RopeTable.Thicker(parameters.Ropes.Rope)
            .FirstOrDefault(r => With(parameters, r) is var with && trials.Try(with).Holds && trials.TryWhole(with).Holds);
        return passing is null && trials.IsEnded
            ? new Remedy(
                RopeStrength.Id, $"Preliminary: no thicker rope of this make was found to pass at this sag. {Ended(trials.Count)}",
                SearchEnded: true)
            : passing is null
            ? new Remedy(RopeStrength.Id, "Preliminary: no thicker rope of this make in the table passes at this sag.")
            : new Remedy(
                RopeStrength.Id,
                $"Preliminary: {passing.Name} is the smallest rope of this make that passes at this sag. Channels, clips and fittings "
                    + "change with it.",
                Rope: passing.Name)
            { Write = "ropes.type " + passing.Name };
    }

    private static Remedy Sag(BridgeParameters parameters, RopeTrials trials)
    {
        var (span, now) = (parameters.Site.Span, parameters.Ropes.Sag);
        var words = new Quantities.QuantityText(parameters.Units);
        var step = Rounding.Step(parameters.Units);
        var deepest = (int)Math.Floor(SpanRules.DeepestSag(parameters.Site) / step);
        var found = LeastSetting.Checked(
            steps => trials.Try(With(parameters, steps * step)), steps => trials.TryWhole(With(parameters, steps * step)),
            () => trials.IsQuickEnded,
            (int)Math.Floor(now / step), deepest);
        if (trials.IsEnded)
        {
            return new Remedy(
                RopeStrength.Id,
                (found is { } some
                    ? $"Preliminary: with this rope a sag of {words.Length(some * step)} (about "
                        + $"{Quantities.QuantityText.Share(some * step / span)} of the span) passes; less may do. "
                    : "Preliminary: no sag was found at which this rope passes. ") + Ended(trials.Count),
                Length: found * step,
                SearchEnded: true);
        }

        return found is { } least
            ? new Remedy(
                RopeStrength.Id,
                $"Preliminary: with this rope a sag of {words.Length(least * step)} (about "
                    + $"{Quantities.QuantityText.Share(least * step / span)} of the span) is the least that passes. The deck gets steeper "
                    + "with it, and the section rolls more easily.",
                Length: least * step)
            { Write = "ropes.sag " + words.Length(least * step) }
            : new Remedy(
                RopeStrength.Id,
                $"Preliminary: this rope passes at no sag up to {words.Length(deepest * step)} (about "
                    + $"{Quantities.QuantityText.Share(deepest * step / span)} of the span).");
    }

    /// <summary>Nothing was tried on so long a bridge.</summary>
    internal static Remedy NotLookedFor(string checkId, string what) => new(
        checkId,
        FormattableString.Invariant($"On a bridge of more than {MostBays:0} bays no remedy is looked for: try {what} yourself, ")
            + "and check again.",
        SearchEnded: true);

    /// <summary>In words that the search was not brought to its end.</summary>
    internal static string Ended(int trials) =>
        FormattableString.Invariant(
            $"The search was ended after {trials} trial designs, because they hardly settle: it may have missed something.");

    private static BridgeParameters With(BridgeParameters parameters, double sag) =>
        parameters with { Ropes = parameters.Ropes with { Sag = sag } };

    // Channels keep their clearance: they grow as the rope does.
    internal static BridgeParameters With(BridgeParameters parameters, RopeProperties rope)
    {
        var channel = parameters.Frames.Channel;
        var wider = channel with { Width = channel.Width + rope.Diameter - parameters.Ropes.Rope.Diameter };
        return parameters with
        {
            Ropes = parameters.Ropes with { Rope = rope },
            Frames = parameters.Frames with { Channel = wider },
        };
    }
}
