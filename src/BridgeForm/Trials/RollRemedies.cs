using System.Collections.Immutable;
using BridgeForm.Checks;
using BridgeForm.Checks.Ropes;
using BridgeForm.Loads;
using BridgeForm.Materials;
using BridgeForm.Project;
using BridgeForm.Quantities;

namespace BridgeForm.Trials;

/// <summary>
/// What would keep a section upright that turns over, or nearly does: ropes further apart; less sag where the halves roll
/// against each other, a larger rope where all rolls to one side. Each trial is a whole new design; what is told was looked at
/// in all its load cases. Side stays would do too; nothing here knows how.
/// </summary>
internal sealed class RollRemedies
{
    // Ropes further apart than this are another bridge: a room's width. Common practice, no source.
    internal const double WidestSpacing = 4;

    // A flatter rope than one per cent of the span is no hanging bridge.
    private const double LeastSag = 0.01;

    // Each sag tried is so much of the one before.
    private const double SagStep = 0.9;

    private readonly BridgeParameters _parameters;
    private readonly RollState _worst;
    private readonly TrialShape _shape;
    private readonly Effort _quick;
    private readonly Effort _effort;

    private RollRemedies(CheckContext context, RollState worst, TrialShape shape, CancellationToken token)
    {
        (_parameters, _worst, _shape) = (context.Parameters, worst, shape);
        var bays = Remedies.Bays(_parameters);
        (_quick, _effort) = (Remedies.Begin(bays, token), Remedies.Begin(bays, token));
    }

    /// <summary>Empty when the section stays upright.</summary>
    /// <param name="context">The bridge.</param>
    /// <param name="checks">What its checks say.</param>
    /// <param name="shape">Finds the shape of a trial design.</param>
    /// <param name="token">Asked before each trial and each weighing.</param>
    public static ImmutableArray<Remedy> Find(
        CheckContext context, ImmutableArray<CheckResult> checks, TrialShape shape, CancellationToken token = default)
    {
        if (!checks.Any(c => c is { Id: Roll.Id, Status: CheckStatus.Fail })
            || Roll.Governing(context.Parameters.Limits, context.Ropework.Roll) is not { Factor: { } factor } worst)
        {
            return [];
        }

        if (Remedies.Bays(context.Parameters) > Remedies.MostBays)
        {
            return [Remedies.NotLookedFor(Roll.Id, "ropes further apart"), s_stays];
        }

        RollRemedies Search() => new(context, worst, shape, token);
        return
        [
            Search().Wider(),
            factor.IsToOneSide ? Search().Larger() : Search().Flatter(),
            s_stays,
        ];
    }

    private static readonly Remedy s_stays = new(
        Roll.Id, "Side stays to the banks hold a bridge against rolling too; they are not modeled here and are for a licensed engineer.");

    private Remedy Wider()
    {
        var (words, step) = (new QuantityText(_parameters.Units), Rounding.Step(_parameters.Units));
        var found = LeastSetting.Checked(
            steps => Try(Apart(steps * step)), steps => TryWhole(Apart(steps * step)), () => _quick.IsSpent,
            (int)Math.Floor(_parameters.Ropes.Spacing / step), (int)(WidestSpacing / step));
        return found is { } least
            ? new Remedy(
                Roll.Id,
                $"Preliminary: with the ropes {words.Length(least * step)} apart (ropes.spacing) and bases as much longer it stays upright "
                    + $"with the factor that is needed; bases bend more then. {Maybe}"
                    .TrimEnd(),
                Length: least * step,
                SearchEnded: IsEnded)
            {
                Write = $"ropes.spacing {words.Size(least * step)}, and bases as much longer",
            }
            : new Remedy(
                Roll.Id,
                $"Preliminary: no distance between the ropes up to {words.Length(WidestSpacing)} was found that keeps it upright. "
                    + $"{Maybe}"
                    .TrimEnd(),
                SearchEnded: IsEnded);
    }

    private Remedy Flatter()
    {
        var (words, step) = (new QuantityText(_parameters.Units), Rounding.Step(_parameters.Units));
        if (Less(step) is not { } steps || !TryWhole(WithSag(steps * step)).Holds)
        {
            return new Remedy(
                Roll.Id, $"Preliminary: less sag alone was not found to keep it upright. {Maybe}".TrimEnd(),
                SearchEnded: IsEnded);
        }

        var sag = steps * step;
        return new Remedy(
            Roll.Id,
            $"Preliminary: with a sag of {words.Length(sag)} (about {QuantityText.Share(sag / _parameters.Site.Span)} of the span) it "
                + "stays upright with the factor that is needed; the ropes pull harder with less sag, so look at rope-strength again. "
                + $"{Maybe}"
                .TrimEnd(),
            Length: sag,
            SearchEnded: IsEnded)
        {
            Write = "ropes.sag " + words.Length(sag),
        };
    }

    // Less sag helps until the rope is so flat that all rolls to one side: down by shares to the first sag that holds, then
    // back towards the last that did not. In whole steps that a builder can set.
    private int? Less(double step)
    {
        var least = (int)Math.Ceiling(LeastSag * _parameters.Site.Span / step);
        var above = (int)Math.Ceiling(_parameters.Ropes.Sag / step);
        for (var sag = Below(above); sag >= least && !_quick.IsSpent; (above, sag) = (sag, Below(sag)))
        {
            if (Try(WithSag(sag * step)).Holds)
            {
                return -new LeastSetting(less => Try(WithSag(-less * step))).Between(-above, -sag);
            }
        }

        return null;
    }

    private static int Below(int sag) => Math.Min(sag - 1, (int)Math.Floor(sag * SagStep));

    private Remedy Larger()
    {
        var passing = RopeTable.Thicker(_parameters.Ropes.Rope)
            .FirstOrDefault(r => Remedies.With(_parameters, r) is var with && Try(with).Holds && TryWhole(with).Holds);
        return passing is null
            ? new Remedy(
                Roll.Id, $"Preliminary: no thicker rope of this make in the table was found to keep it upright. {Maybe}".TrimEnd(),
                SearchEnded: IsEnded)
            : new Remedy(
                Roll.Id,
                $"Preliminary: with {passing.Name}, the smallest rope of this make that does, it stays upright with the factor that is "
                    + "needed. Channels, clips and fittings change with it.",
                Rope: passing.Name)
            { Write = "ropes.type " + passing.Name };
    }

    private bool IsEnded => _quick.IsSpent || _effort.IsSpent;

    private string Maybe => IsEnded ? Remedies.Ended(_quick.Trials + _effort.Trials) : "";

    private BridgeParameters WithSag(double sag) => _parameters with { Ropes = _parameters.Ropes with { Sag = sag } };

    private BridgeParameters Apart(double spacing) => _parameters with
    {
        Ropes = _parameters.Ropes with { Spacing = spacing },
        Frames = _parameters.Frames with
        {
            Base = _parameters.Frames.Base with { Length = _parameters.Frames.Base.Length + spacing - _parameters.Ropes.Spacing },
        },
    };

    // In the state that is worst now. Most designs pass or fail by far there: few rounds of shape and loads tell so.
    private Trial Try(BridgeParameters parameters) => _quick.TryBegin()
        ? Trial.Of(Judge(parameters, _quick, roughly: true, Worst), () => Judge(parameters, _quick, roughly: false, Worst))
        : Trial.Nothing;

    // In all load cases: before it is told.
    private Trial TryWhole(BridgeParameters parameters) => _effort.TryBegin()
        ? Trial.Checked(
            Judge(parameters, _effort, roughly: true, Worst),
            () => Judge(parameters, _effort, roughly: false, (input, stretch) => RollState.Find(
                input, LoadCases.All(input, token: _effort.Token), stretch, _effort.Token)))
        : Trial.Nothing;

    private ImmutableArray<RollState> Worst(LoadCaseInput input, double stretch) =>
        RollState.Again(input, _worst, stretch, _effort.Token);

    private Trial Judge(
        BridgeParameters parameters, Effort spent, bool roughly, Func<LoadCaseInput, double, ImmutableArray<RollState>> states)
    {
        if (TrialDesign.Make(parameters, spent, _shape, roughly) is not { } design)
        {
            return Trial.Nothing;
        }

        var roll = Roll.Check(
            parameters, states(design.Input, StretchRange.Most(parameters.Ropes)), design.Layout.Bays,
            new CheckWords(parameters.Units));
        var holds = roll.Status is CheckStatus.Pass or CheckStatus.Warn;

        // A trial in which it rolls over for a load to one side may have a factor that is enough: there is nothing to aim by.
        var ratio = holds || roll.Ratio is > 1 ? roll.Ratio : null;
        return new Trial(holds, ratio ?? double.PositiveInfinity, design.Rope.Steps);
    }
}
