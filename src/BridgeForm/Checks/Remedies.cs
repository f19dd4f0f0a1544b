using System.Collections.Immutable;
using BridgeForm.Checks.Ropes;
using BridgeForm.Frames;
using BridgeForm.Project;
using BridgeForm.Ropes;

namespace BridgeForm.Checks;

/// <summary>A change that would make a failing check pass: solved, not guessed, and preliminary.</summary>
/// <param name="CheckId">The check it is for.</param>
/// <param name="Text">For people.</param>
/// <param name="Rope">Key of a rope that passes; null when this is about something else.</param>
/// <param name="Length">A sag or a bay that passes, metres; null when this is about something else.</param>
public sealed record Remedy(string CheckId, string Text, string? Rope = null, double? Length = null);

/// <summary>What would pass where a rope fails. Each trial is a whole new design: shape, weights and all load cases.</summary>
public static class Remedies
{
    // Deeper than three tenths of the span the ends are steeper than stairs (slope 4 · 0.3 at the supports), and nobody walks.
    private const double DeepestSag = 0.3;

    // Sag to the nearest half thousandth of the span: finer than ropes are set.
    private const double SagStep = 0.0005;

    // Trials of longer bridges take too long to be a by-product of a check.
    private const double MostBays = 2000;

    /// <summary>Empty when no check of the ropes fails.</summary>
    public static ImmutableArray<Remedy> Of(BridgeParameters parameters, ImmutableArray<CheckResult> checks)
    {
        var fails = checks.Any(c => c is { Id: RopeStrength.Id, Status: CheckStatus.Fail });
        if (!fails || parameters.Site.Span / parameters.Frames.Spacing > MostBays)
            return [];
        return [Rope(parameters), Sag(parameters)];
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
            return null;
        if (holds(high))
            return high;
        while (high - low > tolerance)
        {
            var middle = (low + high) / 2;
            (low, high) = holds(middle) ? (middle, high) : (low, middle);
        }

        return low;
    }

    private static Remedy Rope(BridgeParameters parameters)
    {
        var passing = RopeTable.Thicker(parameters.Ropes.Rope).FirstOrDefault(r => Try(With(parameters, r)) is Trial.Passes);
        return passing is null
            ? new Remedy(RopeStrength.Id, "Preliminary: no thicker rope of this make in the table passes at this sag.")
            : new Remedy(
                RopeStrength.Id,
                $"Preliminary: {passing.Name} is the smallest rope of this make that passes at this sag. Channels, clips and fittings change with it.",
                Rope: passing.Name);
    }

    private static Remedy Sag(BridgeParameters parameters)
    {
        var (span, now) = (parameters.Site.Span, parameters.Ropes.Sag);
        var words = new Quantities.QuantityText(parameters.Units);
        // A deep bridge may have no shape at all: its ends get too steep. What can be built up to some sag is found first.
        var deepest = Largest(sag => Try(With(parameters, sag)) is not Trial.NoShape, now, Math.Max(now, DeepestSag * span), SagStep * span);
        if (deepest is not { } bound)
            return new Remedy(RopeStrength.Id, "Preliminary: with this rope some load case has no shape at this sag, so no deeper one was looked for.");
        // Counted down from there: what passes at one sag passes at every deeper one.
        return Largest(rise => Try(With(parameters, bound - rise)) is Trial.Passes, 0, bound - now, SagStep * span) is { } up
            ? new Remedy(
                RopeStrength.Id,
                $"Preliminary: with this rope a sag of {Words(bound - up)} is the least that passes. The deck gets steeper with it.",
                Length: bound - up)
            : new Remedy(
                RopeStrength.Id,
                $"Preliminary: this rope passes at no sag up to {Words(bound)}"
                + (bound < (DeepestSag - SagStep) * span ? ", and deeper the bridge has no shape." : "."));

        string Words(double sag) => $"{words.Length(sag)} ({Quantities.QuantityText.Share(sag / span)} of the span)";
    }

    private static BridgeParameters With(BridgeParameters parameters, double sag) =>
        parameters with { Ropes = parameters.Ropes with { Sag = sag } };

    // Channels keep their clearance: they grow as the rope does.
    private static BridgeParameters With(BridgeParameters parameters, RopeProperties rope)
    {
        var channel = parameters.Frames.Channel;
        var wider = channel with { Width = channel.Width + rope.Diameter - parameters.Ropes.Rope.Diameter };
        return parameters with
        {
            Ropes = parameters.Ropes with { Rope = rope },
            Frames = parameters.Frames with { Channel = wider },
        };
    }

    private static Trial Try(BridgeParameters parameters)
    {
        if (!Bridge.TryShape(parameters, out var rope, out _))
            return Trial.NoShape;
        var layout = BridgeLayout.Of(parameters, rope);
        var cases = LoadCases.All(LoadCaseInput.Of(parameters, rope, BridgeMasses.Of(layout)));
        if (cases.Any(c => c.Shape is null))
            return Trial.NoShape;
        return RopeStrength.Of(parameters, cases, new CheckWords(parameters.Units)).Status == CheckStatus.Pass
            ? Trial.Passes
            : Trial.TooWeak;
    }

    /// <summary>How a trial design came out.</summary>
    private enum Trial
    {
        /// <summary>Ropes or a load case without a shape.</summary>
        NoShape,

        /// <summary>Everything has a shape, and the rope is not strong enough.</summary>
        TooWeak,

        /// <summary>The rope is strong enough.</summary>
        Passes,
    }
}
