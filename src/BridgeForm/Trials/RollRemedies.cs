using System.Collections.Immutable;
using BridgeForm.Checks;
using BridgeForm.Checks.Ropes;
using BridgeForm.Frames;
using BridgeForm.Loads;
using BridgeForm.Materials;
using BridgeForm.Project;
using BridgeForm.Quantities;

namespace BridgeForm.Trials;

/// <summary>
/// What would keep a section upright that turns over, or nearly does: ropes further apart; less sag where the halves roll
/// against each other, a larger rope where all rolls to one side. Each trial is a whole new design with all its states.
/// Side stays would do too; nothing here knows how.
/// </summary>
internal static class RollRemedies
{
    // Ropes further apart than this are another bridge: a room's width. Common practice, no source.
    private const double WidestSpacing = 4;

    // A flatter rope than one per cent of the span is no hanging bridge.
    private const double LeastSag = 0.01;

    // Each sag tried is so much of the one before.
    private const double SagStep = 0.9;

    /// <summary>Empty when the section stays upright.</summary>
    /// <param name="context">The bridge.</param>
    /// <param name="checks">What its checks say.</param>
    /// <param name="shape">Finds the shape of a trial design.</param>
    /// <param name="token">Asked before each trial and each weighing.</param>
    public static ImmutableArray<Remedy> Find(
        CheckContext context, ImmutableArray<CheckResult> checks, TrialShape shape, CancellationToken token = default)
    {
        var parameters = context.Parameters;
        if (!checks.Any(c => c is { Id: Roll.Id, Status: CheckStatus.Fail }) || Remedies.Bays(parameters) > Remedies.MostBays)
        {
            return [];
        }

        var toOneSide = RollState.Least(context.Ropework.Roll)?.Factor?.IsToOneSide ?? false;
        return
        [
            Wider(parameters, shape, token),
            toOneSide ? Larger(parameters, shape, token) : Flatter(parameters, shape, token),
            new Remedy(Roll.Id, "Side stays to the banks hold a bridge against rolling too; they are not modelled here and are for a "
                + "licensed engineer."),
        ];
    }

    private static Remedy Wider(BridgeParameters parameters, TrialShape shape, CancellationToken token)
    {
        var effort = Remedies.Begin(Remedies.Bays(parameters), token);
        var (words, step) = (new QuantityText(parameters.Units), Rounding.Step(parameters.Units));
        var found = new LeastSetting(steps => Try(Apart(parameters, steps * step), effort, shape))
            .Above((int)Math.Floor(parameters.Ropes.Spacing / step), (int)(WidestSpacing / step));
        return found is { } least
            ? new Remedy(
                Roll.Id,
                $"Preliminary: with the ropes {words.Length(least * step)} apart (ropes.spacing) and bases as much longer it stays upright "
                    + $"with the factor that is needed; bases bend more then. {Maybe(effort)}"
                    .TrimEnd(),
                Length: least * step,
                SearchEnded: effort.IsSpent)
            : new Remedy(
                Roll.Id,
                $"Preliminary: no distance between the ropes up to {words.Length(WidestSpacing)} was found that keeps it upright. "
                    + $"{Maybe(effort)}"
                    .TrimEnd(),
                SearchEnded: effort.IsSpent);
    }

    private static Remedy Flatter(BridgeParameters parameters, TrialShape shape, CancellationToken token)
    {
        var effort = Remedies.Begin(Remedies.Bays(parameters), token);
        var (words, step, span) = (new QuantityText(parameters.Units), Rounding.Step(parameters.Units), parameters.Site.Span);
        if (Less(parameters, effort, shape) is not { } sag
            || Math.Floor(sag / step) * step is var settable && !(settable >= LeastSag * span))
        {
            return new Remedy(
                Roll.Id, $"Preliminary: less sag alone was not found to keep it upright. {Maybe(effort)}".TrimEnd(),
                SearchEnded: effort.IsSpent);
        }

        return new Remedy(
            Roll.Id,
            $"Preliminary: with a sag of {words.Length(settable)} (about {QuantityText.Share(settable / span)} of the span) it stays "
                + "upright with the factor that is needed; the ropes pull harder with less sag, so look at rope-strength again. "
                + $"{Maybe(effort)}"
                .TrimEnd(),
            Length: settable,
            SearchEnded: effort.IsSpent);
    }

    // Less sag helps until the rope is so flat that all rolls to one side: down by steps to the first sag that holds, then
    // back towards the last that did not.
    private static double? Less(BridgeParameters parameters, Effort effort, TrialShape shape)
    {
        var above = parameters.Ropes.Sag;
        for (var sag = above * SagStep; sag >= LeastSag * parameters.Site.Span && !effort.IsSpent; (above, sag) = (sag, sag * SagStep))
        {
            if (Try(WithSag(parameters, sag), effort, shape).Holds)
            {
                return Remedies.Largest(
                    s => Try(WithSag(parameters, s), effort, shape).Holds, sag, above, Rounding.Step(parameters.Units) / 2);
            }
        }

        return null;
    }

    private static Remedy Larger(BridgeParameters parameters, TrialShape shape, CancellationToken token)
    {
        var effort = Remedies.Begin(Remedies.Bays(parameters), token);
        var passing = RopeTable.Thicker(parameters.Ropes.Rope).FirstOrDefault(r => Try(Remedies.With(parameters, r), effort, shape).Holds);
        return passing is null
            ? new Remedy(
                Roll.Id, $"Preliminary: no thicker rope of this make in the table was found to keep it upright. {Maybe(effort)}".TrimEnd(),
                SearchEnded: effort.IsSpent)
            : new Remedy(
                Roll.Id,
                $"Preliminary: with {passing.Name}, the smallest rope of this make that does, it stays upright with the factor that is "
                    + "needed. Channels, clips and fittings change with it.",
                Rope: passing.Name);
    }

    private static string Maybe(Effort effort) => effort.IsSpent ? Remedies.Ended(effort) : "";

    private static BridgeParameters WithSag(BridgeParameters parameters, double sag) =>
        parameters with { Ropes = parameters.Ropes with { Sag = sag } };

    private static BridgeParameters Apart(BridgeParameters parameters, double spacing) => parameters with
    {
        Ropes = parameters.Ropes with { Spacing = spacing },
        Frames = parameters.Frames with
        {
            Base = parameters.Frames.Base with { Length = parameters.Frames.Base.Length + spacing - parameters.Ropes.Spacing },
        },
    };

    private static Trial Try(BridgeParameters parameters, Effort effort, TrialShape shape)
    {
        if (!effort.TryBegin() || shape(parameters, effort, null) is not { } rope)
        {
            return new Trial(false, double.PositiveInfinity, []);
        }

        var layout = BridgeLayout.Lay(parameters, rope);
        var input = LoadCaseInput.Gather(layout, rope, BridgeMasses.Weigh(layout, effort.Token), effort.Token);
        var cases = LoadCases.All(input, token: effort.Token);
        var states = RollState.Find(input, cases, StretchRange.Of(parameters.Ropes).Range?.High, effort.Token);
        var roll = Roll.Check(parameters, states, layout.Bays, new CheckWords(parameters.Units));
        var holds = roll.Status is CheckStatus.Pass or CheckStatus.Warn;

        // A trial in which it rolls over for a load to one side may have a factor that is enough: there is nothing to aim by.
        var ratio = holds || roll.Ratio is > 1 ? roll.Ratio : null;
        return new Trial(holds, ratio ?? double.PositiveInfinity, rope.Steps);
    }
}
