using System.Collections.Immutable;
using BridgeForm.Checks;
using BridgeForm.Project;
using BridgeForm.Project.Files;
using BridgeForm.Quantities;
using BridgeForm.Ropes;
using BridgeForm.Stocking;

namespace BridgeForm.Proposals;

/// <summary>Looks at designs, each once: a whole model, all checks, and how it compares with others.</summary>
/// <param name="reading">The project file.</param>
/// <param name="prices">The price list that goes with it; null without one.</param>
/// <param name="ask">What is wished for.</param>
/// <param name="token">Asked within each look.</param>
internal sealed class Judge(ProjectReading reading, PriceList? prices, SearchAsk ask, CancellationToken token)
{
    // Beyond so many metres fewer designs are looked at. Own figure.
    private const double LongSpan = 60;

    // What is borne with, though other designs are without.
    private readonly HashSet<string> _borne = new(StringComparer.Ordinal);

    private readonly Dictionary<string, Judged> _known = new(StringComparer.Ordinal);

    private double _lightest = double.PositiveInfinity;

    /// <summary>Designs that were looked at.</summary>
    public int Count { get; private set; }

    /// <summary>No more are looked at.</summary>
    public bool IsSpent => Count >= MostDesigns;

    // A look at a long bridge takes as much longer.
    private int MostDesigns => (int)(ask.MostDesigns * Math.Min(1, LongSpan / Math.Max(LongSpan, reading.Parameters!.Site.Span)));

    /// <summary>Looks that are borne with from now on: the file has them as it is, or no design is without.</summary>
    public void Bear(IEnumerable<string> checks)
    {
        _borne.UnionWith(checks);
        _known.Clear();
    }

    /// <summary>Looks at a design.</summary>
    public Judged Look(Design design) => LookAll([design])[0];

    /// <summary>Looks at several, side by side where the caller can.</summary>
    public ImmutableArray<Judged> LookAll(IReadOnlyList<Design> designs)
    {
        token.ThrowIfCancellationRequested();
        var anew = designs.DistinctBy(d => d.Signature, StringComparer.Ordinal).Where(d => !_known.ContainsKey(d.Signature)).ToList();
        var found = new Judged[anew.Count];
        var works = anew.Select((design, i) => (Action)(() => found[i] = Made(design))).ToArray();
        if (ask.Run is { } run && works.Length > 1)
        {
            run(works);
        }
        else
        {
            foreach (var work in works)
            {
                work();
            }
        }

        foreach (var judged in found)
        {
            _known.Add(judged.Design.Signature, judged);
            Tell(judged);
        }

        Count += found.Length;
        ask.Looked?.Invoke(Count);
        return [.. designs.Select(d => _known[d.Signature])];
    }

    /// <summary>
    /// What a design weighs as <see cref="Figures.Weight"/>, newtons, for a thirtieth of the time of a look; infinite where it does
    /// not hang. Not counted as a look.
    /// </summary>
    public double Weigh(Design design)
    {
        token.ThrowIfCancellationRequested();
        return Parameters(design).Parameters is { } p && FormFinding.Find(p, token, out _) is { } rope
            ? Weight(rope) : double.PositiveInfinity;
    }

    /// <summary>The lightest of all that were looked at, pass and write nothing but such keys; null where none was.</summary>
    /// <param name="mayMove">Whether a key may be written.</param>
    public Judged? Lightest(Func<string, bool> mayMove) =>
        _known.Values.Where(j => j.Passes && j.Design.Changes.Keys.All(mayMove)).MinBy(j => j.Figures!.Weight);

    /// <summary>The bridge itself, with stock plan and without remedies; null where it cannot be built.</summary>
    public BridgeModel? Build(Design design) =>
        Parameters(design).Parameters is { } p && new Rebuild().TryWhole(p, token, out var model, out _) ? model : null;

    private void Tell(Judged judged)
    {
        if (judged.Passes && judged.Figures!.Weight < _lightest)
        {
            _lightest = judged.Figures.Weight;
            ask.Better?.Invoke(judged.Figures);
        }
    }

    private ChangedProject Parameters(Design design)
    {
        var changed = reading.Changed(design.AsKeys());
        return changed.Parameters is { } p ? changed with { Parameters = p with { PriceList = prices } } : changed;
    }

    private Judged Made(Design design)
    {
        var changed = Parameters(design);
        if (changed.Parameters is not { } parameters)
        {
            return new Judged(design, null, [], null, changed.Faults.Select(f => f.Message).FirstOrDefault() ?? "");
        }

        if (!new Rebuild(ask.Run).TryAnswer(parameters, token, out var model, out var fault))
        {
            return new Judged(design, parameters, [], null, fault.Message);
        }

        var slope = Demand(model, "deck-slope");
        ImmutableArray<Shortfall> falling =
        [
            .. model.Checks.Where(c => c.Status == CheckStatus.Fail || c.NotChecked is not null)
                .Select(c => new Shortfall(c.Id, c.NotChecked is null ? c.Ratio : null, c.Title)
                {
                    Detail = c.Detail, NoValues = c.NotChecked ?? "", IsTooSmall = IsTooSmall(c),
                })
                .Concat(Wishes(model, slope))
                .Concat(Avoided.Find(model).Where(a => !_borne.Contains(a.Id)))
                .OrderBy(s => s.IsLook).ThenByDescending(s => s.Amount),
        ];
        return new Judged(design, parameters, falling, FiguresOf(model, slope, falling.IsEmpty), null);
    }

    private IEnumerable<Shortfall> Wishes(BridgeModel model, double slope)
    {
        if (ask.MostSlope is { } most && slope > most * (1 + Tolerances.SameLimit))
        {
            yield return new Shortfall(Shortfall.SlopeWish, slope / most, "the empty deck is steeper than asked");
        }

        if (ask.LeastWidth is { } least && Demand(model, "clear-width") is var width
            && width < least * (1 - Tolerances.SameLimit))
        {
            yield return new Shortfall(Shortfall.WidthWish, least / width, "it is narrower between the guards than asked")
            {
                IsTooSmall = true,
            };
        }
    }

    // What is asked for at least has the other quotient.
    private static bool IsTooSmall(CheckResult check) =>
        check is { Ratio: > 1, Capacity: > 0, Demand: > 0 } && check.Demand < check.Capacity;

    private static double Demand(BridgeModel model, string check) =>
        model.Checks.First(c => string.Equals(c.Id, check, StringComparison.Ordinal)).Demand;

    private Figures FiguresOf(BridgeModel model, double slope, bool passes)
    {
        var rope = model.Rope;
        var solved = model.Cases.Where(c => c.Shape is not null).ToList();
        var ground = solved.Select(c => c.OverGround).OfType<double>().ToList();
        return new Figures(
            Weight(rope), slope, solved.Max(c => c.Moves.Max(m => -m.Y)), ground.Count > 0 ? ground.Min() : null, model.Pieces.Length,
            passes && ask.Prefer == Preference.Cheap && prices is not null
                ? StockPlanner.Plan(model.Pieces, model.Parameters, prices, token).Price : null);
    }

    private static double Weight(RopeShape rope) =>
        2 * (rope.Loads.Sum() + (rope.WeightPerLength * rope.Segments.Sum(s => s.UnstressedLength)));
}
