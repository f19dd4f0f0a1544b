using System.Collections.Immutable;
using BridgeForm.Checks.Ropes;
using BridgeForm.Frames;
using BridgeForm.Project;
using BridgeForm.Project.Checking;
using BridgeForm.Ropes;

namespace BridgeForm.Checks;

/// <summary>A change that would make a failing check pass: solved, not guessed, and preliminary.</summary>
/// <param name="CheckId">The check it is for.</param>
/// <param name="Text">For people.</param>
/// <param name="Rope">Key of a rope that passes; null when this is about something else.</param>
/// <param name="Length">A sag that passes, or the longest span that a member of the deck carries, metres; null when this is about something else.</param>
/// <param name="Spacing">A <c>frames.spacing</c> that passes, metres; null when this is about something else.</param>
public sealed record Remedy(string CheckId, string Text, string? Rope = null, double? Length = null, double? Spacing = null);

/// <summary>What would pass where a rope fails. Each trial is a whole new design: shape, weights and all load cases.</summary>
public static class Remedies
{
    // Tension falls about as sag grows: steps of a twelfth are far finer than the way from one regime to another.
    private const double ScanGrowth = 13.0 / 12;

    // A bay more weighs a hundredth or so more, and undoes as much of a sag: so many of its last steps are looked at one by one.
    private const int WidestHole = 16;

    private const double Millimetre = 0.001;
    private const double Sixteenth = 0.0254 / 16;

    // Trials of longer bridges take too long to be a by-product of a check.
    internal const double MostBays = 2000;

    // Frames closer than this are no bridge: a foot. Common practice, no source.
    internal const double ShortestSpacing = 0.3;

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
        var passing = RopeTable.Thicker(parameters.Ropes.Rope).FirstOrDefault(r => Passes(With(parameters, r)));
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
        var step = Settable(parameters.Units);
        var deepest = (int)Math.Floor(SpanChecks.DeepestSag(parameters.Site) / step);
        return LeastSteps((int)Math.Floor(now / step), deepest, steps => Passes(With(parameters, steps * step))) is { } least
            ? new Remedy(
                RopeStrength.Id,
                $"Preliminary: with this rope a sag of {words.Length(least * step)} (about {Quantities.QuantityText.Share(least * step / span)} of the span) is the least that passes. The deck gets steeper with it.",
                Length: least * step)
            : new Remedy(
                RopeStrength.Id,
                $"Preliminary: this rope passes at no sag up to {words.Length(deepest * step)} (about {Quantities.QuantityText.Share(deepest * step / span)} of the span).");
    }

    /// <summary>What people can set a length to, metres: 1/16 in or 1 mm.</summary>
    public static double Settable(UnitSystem units) => units == UnitSystem.Metric ? Millimetre : Sixteenth;

    /// <summary>
    /// The least whole number above a first one for which something holds, and does not for the one before it; null when it
    /// holds for none. What holds need not hold for all larger ones: a bay more, or a case without a shape, makes holes.
    /// </summary>
    /// <param name="fails">A number for which it does not hold.</param>
    /// <param name="most">Largest number.</param>
    /// <param name="holds">Whether it holds.</param>
    public static int? LeastSteps(int fails, int most, Func<int, bool> holds)
    {
        var low = fails;
        for (var high = Next(low); low < most; (low, high) = (high, Next(high)))
        {
            if (holds(high))
                return Lowered(fails, low, high, holds);
        }

        return null;

        int Next(int from) => Math.Min(most, Math.Max(from + 1, (int)(from * ScanGrowth)));
    }

    /// <summary>Halves the way from what fails to what holds, then looks a little further down, over a hole.</summary>
    private static int Lowered(int floor, int low, int high, Func<int, bool> holds)
    {
        var least = high;
        while (least - low > 1)
        {
            var middle = low + ((least - low) / 2);
            (low, least) = holds(middle) ? (low, middle) : (middle, least);
        }

        for (var below = least - 2; below > floor && below >= least - WidestHole; below--)
        {
            if (holds(below))
                least = below;
        }

        return least;
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

    /// <summary>Ropes and every load case have a shape, and the rope is strong enough.</summary>
    private static bool Passes(BridgeParameters parameters)
    {
        if (!Bridge.TryShape(parameters, out var rope, out _))
            return false;
        var layout = BridgeLayout.Of(parameters, rope);
        var cases = LoadCases.All(LoadCaseInput.Of(parameters, rope, BridgeMasses.Of(layout)));
        return cases.All(c => c.Shape is not null)
            && RopeStrength.Of(parameters, cases, new CheckWords(parameters.Units)).Status == CheckStatus.Pass;
    }
}
