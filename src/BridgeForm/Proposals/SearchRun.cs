using System.Collections.Immutable;
using BridgeForm.Project;
using BridgeForm.Project.Files;

namespace BridgeForm.Proposals;

/// <summary>One search: what may move, what was looked at.</summary>
internal sealed class SearchRun
{
    private const int MendRounds = 16;
    private const int BestSteps = 6;

    // Flatter than 1 : 20 a walk is no ramp (ADA 2010 402.2): nothing is gained by more.
    internal const double FlatEnough = 1.0 / 20;

    // Two slopes that differ by less than this share are alike: then the lighter one is better.
    internal const double AlikeSlope = 1.005;

    // Nor do weights.
    private const double AlikeWeight = 1.002;

    private const int MostStarts = 4;
    private const double MuchNearer = 0.8;
    private const int SingleSteps = 6;
    private const int LongSteps = 2;
    private const int FewerRounds = 4;
    private const int OtherSteps = 2;

    // A flatter deck asks for stronger ropes, those for wider bases: more has to follow than where wood is spared.
    private const int LightRounds = 2;
    private const int FlatRounds = 8;

    // Of more changes than these nobody asks which one could be spared by another.
    private const int MostWeighed = 6;

    // What makes a deck flatter; what makes a bridge lighter, by far first. Not the posts: guards are what people hold on to.
    private static readonly ImmutableArray<Cure> s_flatter = [new("ropes.sag", Way.Less), new("frames.stance", Way.More)];
    private static readonly ImmutableArray<Cure> s_lighter =
    [
        new("frames.base.section", Way.Less), new("guard.rails.section", Way.Less), new("deck.board.section", Way.Less),
        new("frames.spacing", Way.Less), new("ropes.type", Way.Less),
        new("ropes.spacing", Way.Less), new("guard.cap.section", Way.Less), new("frames.brace.section", Way.Less),
        new("deck.stringer.section", Way.Less), new("deck.stringer.count", Way.Less), new("guard.rails.count", Way.Less),
        new("frames.post.length", Way.Less), new("frames.base.length", Way.Less), new("frames.post.foot", Way.Less),
        new("frames.brace.foot", Way.Less), new("ropes.sag", Way.More), new("ropes.sag", Way.Less),
    ];

    private readonly SearchAsk _ask;
    private ImmutableArray<string> _named;

    public SearchRun(ProjectReading reading, PriceList? prices, SearchAsk ask, CancellationToken token)
    {
        (_ask, Reading, _named) = (ask, reading, ask.Free);
        Judge = new Judge(reading, prices, ask, token);
        Levers = new Levers(reading, ask.Free);
        // Who asks for a width gets it, narrow or not; a public bridge that is too narrow still fails.
        Judge.Bear(ask.LeastWidth is null ? [] : ["clear-width"]);
    }

    /// <summary>The file.</summary>
    public ProjectReading Reading { get; }

    /// <summary>Looks at designs.</summary>
    public Judge Judge { get; }

    /// <summary>What can move.</summary>
    public Levers Levers { get; }

    /// <summary>Whether a key may move.</summary>
    public bool IsFree(string key) => _ask.Free.IsEmpty || _ask.Free.Contains(key, StringComparer.Ordinal);

    /// <summary>
    /// The file as it is, with what it leaves to see to borne with; not what values help that a failing check names anyway.
    /// </summary>
    public Judged AsWritten()
    {
        var written = Judge.Look(Design.AsWritten);
        var named = Named(written.Shortfalls.Where(s => !s.IsLook));
        Judge.Bear(written.Shortfalls
            .Where(s => s.IsLook && !Cures.Of(s.Id).Any(c => named.Contains(c.Key, StringComparer.Ordinal)) && !AsksForOthers(written, s))
            .Select(s => s.Id));
        return Judge.Look(Design.AsWritten);
    }

    // Who lets all sections move that are not on sale wants others.
    private bool AsksForOthers(Judged written, Shortfall shortfall) => shortfall.Id is "section-on-sale" && written.Parameters is { } p
        && Yard.Unsold(p).All(u => _ask.Free.Contains(u.Path, StringComparer.Ordinal));

    /// <summary>The file with sections that are on sale in place of those that are not, as large or larger where there are.</summary>
    public Judged OnSale()
    {
        var design = Design.AsWritten;
        for (var round = 0; round < 2; round++)
        {
            var looked = Judge.Look(design);
            design = looked.Parameters is { } p ? design.With(Yard.Instead(p, Levers.Context).Where(c => IsFree(c.Path))) : design;
        }

        return Judge.Look(design);
    }

    /// <summary>A design that passes, or the nearest that was found.</summary>
    public Judged Pass(Judged from)
    {
        _named = _ask.Free.IsEmpty ? Named(from.Shortfalls) : _ask.Free;
        var repair = new Repair(Judge, Levers, IsFree);
        var best = repair.MendAhead(Nearer(from), MendRounds);
        if (!best.Passes)
        {
            best = OtherRoads(repair, from, best);
        }

        for (var step = 0; step < BestSteps && !best.Passes && !Judge.IsSpent && repair.Around(best) is { } next; step++)
        {
            best = repair.MendAhead(next, MendRounds);
        }

        if (best.Figures is null || !best.Shortfalls.All(s => s.IsLook) || best.Passes)
        {
            return best;
        }

        // No design was found without: it is told as a look, as it is.
        Judge.Bear(best.Shortfalls.Select(s => s.Id));
        return Judge.Look(best.Design);
    }

    // A file that is wrong in much may be far nearer with what its span asks for by rule: that too is seen at one look.
    private Judged Nearer(Judged from)
    {
        var standing = Standing(from);
        var given = Search.Keys.Where(k => IsFree(k) && _named.Contains(k, StringComparer.Ordinal) && Reading.Values!.Given(k)).ToList();
        if (from.Passes || given.Count == 0)
        {
            return standing;
        }

        var ruled = Judge.Look(from.Design.With(Reading.ByRule(given)));
        return ruled.Violation < standing.Violation * MuchNearer ? Standing(ruled) : standing;
    }

    // Where supports are at different heights frames that stand plumb may be far nearer: that is seen at one look.
    private Judged Standing(Judged from) => from.Passes || !IsFree("frames.stance") ? from
        : Judge.LookAll([.. Levers.Moves(from, "frames.stance", Way.More, 1)]).Where(j => j.Violation < from.Violation * MuchNearer)
            .MinBy(j => j.Violation) ?? from;

    private Judged OtherRoads(Repair repair, Judged from, Judged best)
    {
        foreach (var start in new OtherStarts(Judge, Levers, IsFree).From(from).Take(MostStarts))
        {
            var other = Judge.IsSpent ? best : repair.MendAhead(start, MendRounds);
            best = other.Violation < best.Violation ? other : best;
            if (best.Passes)
            {
                break;
            }
        }

        return best;
    }

    /// <summary>
    /// One change of one value with which the file passes, the least weight of all; null where none of the nearest few steps does.
    /// </summary>
    public Judged? Single(Judged written)
    {
        var cures = written.Shortfalls.Where(s => !s.IsLook)
            .SelectMany(s => Cures.Of(s.Id), (s, cure) => (Cure: cure, By: s.Ratio is { } r && double.IsFinite(r) ? r : 1))
            .Where(c => IsFree(c.Cure.Key)).ToList();
        var small = cures.Select(c => c.Cure).Distinct().SelectMany(c => Levers.Moves(written, c.Key, c.Way, 1).Take(SingleSteps));
        // A step as long as what is missing, too.
        var designs = small.Concat(cures.SelectMany(c => Levers.Moves(written, c.Cure.Key, c.Cure.Way, c.By).Take(LongSteps)))
            .Where(d => d.Changes.Count == written.Design.Changes.Count + 1).ToList();
        return Judge.LookAll(designs).Where(j => j.Passes).MinBy(j => j.Figures!.Weight);
    }

    /// <summary>A flat deck was asked for.</summary>
    public bool IsFlatWished => _ask.Prefer == Preference.Flat || _ask.MostSlope is not null;

    /// <summary>Whether it passes as well where a value is set out a little off.</summary>
    public bool IsSteady(Judged judged, string path) => new Steadying(Judge, _ => true).IsSteady(judged, path);

    /// <summary>The same, steady against what is set out a little off; what nobody named stays as the file writes it.</summary>
    public Judged Steady(Judged passing) => new Steadying(Judge, k => MayMove(k, passing)).Steady(passing);

    /// <summary>The same with as little changed as still passes, or as is mended by the other values that are changed anyway.</summary>
    /// <param name="written">The file as it is.</param>
    /// <param name="passing">A design that passes.</param>
    public Judged Fewest(Judged written, Judged passing)
    {
        var best = passing;
        foreach (var path in passing.Design.Changes.Keys.Except(written.Design.Changes.Keys, StringComparer.Ordinal))
        {
            best = Fewer(best, path) ?? best;
        }

        return Lowered(best, best.Design.Changes.ContainsKey, Preference.Light);
    }

    private Judged? Fewer(Judged best, string path)
    {
        var less = Judge.Look(best.Design.Without(path));
        if (best.Design.Changes.Count > MostWeighed)
        {
            return less.Passes ? less : null;
        }

        var others = new Repair(
            Judge, Levers, k => best.Design.Changes.ContainsKey(k) && !string.Equals(k, path, StringComparison.Ordinal));
        var mended = less.Passes ? less : others.Mend(less, FewerRounds);
        mended = mended.Passes ? mended : Otherwise(less) ?? mended;
        return mended.Passes && mended.Design.Changes.Count < best.Design.Changes.Count ? mended : null;
    }

    // Another value of one of those that are changed anyway may do without.
    private Judged? Otherwise(Judged less) => Judge.LookAll(
    [
        .. less.Design.Changes.Keys.SelectMany(k => Levers.Moves(less, k, Way.More, 1).Take(OtherSteps)
            .Concat(Levers.Moves(less, k, Way.Less, 1).Take(OtherSteps)))
            .Where(d => d.Changes.Count == less.Design.Changes.Count),
    ]).Where(j => j.Passes).MinBy(j => j.Figures!.Weight);

    /// <summary>The best by a preference that the free keys lead to.</summary>
    public Judged Best(Judged passing, Preference preference) => Lowered(passing, k => MayMove(k, passing), preference);

    /// <summary>The same from the lightest that was seen on the way too, where that is another road.</summary>
    public Judged BestOfAll(Judged passing, Preference preference)
    {
        var best = Best(passing, preference);
        return preference == Preference.Light && Judge.Lightest(k => MayMove(k, passing)) is { } seen
            && seen.Figures!.Weight < best.Figures!.Weight ? Best(seen, preference) : best;
    }

    private bool MayMove(string key, Judged passing) =>
        _named.IsEmpty || _named.Contains(key, StringComparer.Ordinal) || passing.Design.Changes.ContainsKey(key);

    /// <summary>The same without changes that are none, or that nothing is gained by.</summary>
    /// <param name="passing">A design that passes.</param>
    /// <param name="isFewest">Nothing counts as a gain but that it passes.</param>
    public Judged Trimmed(Judged passing, bool isFewest = false)
    {
        var best = passing;
        for (var before = ""; !string.Equals(before, best.Design.Signature, StringComparison.Ordinal);)
        {
            before = best.Design.Signature;
            best = TrimmedOnce(best, isFewest);
        }

        return best;
    }

    private Judged TrimmedOnce(Judged passing, bool isFewest)
    {
        var best = passing;
        foreach (var (path, text) in passing.Design.Changes)
        {
            var isNone = string.Equals(Reading.Values!.Find(path)?.Text, text, StringComparison.Ordinal);
            if (!isFewest && !isNone && Judge.Weigh(best.Design.Without(path)) > best.Figures!.Weight * AlikeWeight)
            {
                continue;
            }

            var without = Judge.Look(best.Design.Without(path));
            var isAsGood = isFewest || (without.Passes && without.Figures!.Weight <= best.Figures!.Weight * AlikeWeight
                && without.Figures.Slope <= best.Figures.Slope * AlikeSlope);
            best = without.Passes && (isNone || isAsGood) ? without : best;
        }

        return best;
    }

    /// <summary>A proposal with its reasons.</summary>
    public Proposal Tell(string name, Judged judged)
    {
        var model = Judge.Build(judged.Design)!;
        var figures = judged.Figures! with { Price = model.StockPlan.Price };
        return new Proposal(name, Reasons.Of(this, judged), figures, model);
    }

    private static ImmutableArray<string> Named(IEnumerable<Shortfall> shortfalls) =>
        [.. shortfalls.SelectMany(s => Cures.Of(s.Id)).Select(c => c.Key).Distinct(StringComparer.Ordinal)];

    private Judged Lowered(Judged from, Func<string, bool> isFree, Preference preference)
    {
        if (preference != Preference.Flat)
        {
            var isByWeight = preference == Preference.Light || from.Figures!.Price is null;
            return Lowered(
                from, isFree, LighterMoves(isFree), j => (isByWeight ? null : j.Figures!.Price) ?? j.Figures!.Weight, isByWeight);
        }

        var flattest = s_flatter.Where(m => isFree(m.Key)).ToImmutableArray();
        var flat = Lowered(from, isFree, flattest, j => Math.Max(j.Figures!.Slope, FlatEnough), isByWeight: false, FlatRounds);
        var most = Math.Max(flat.Figures!.Slope, FlatEnough) * AlikeSlope;
        double Cost(Judged j) => j.Figures!.Slope > most ? double.PositiveInfinity : j.Figures.Weight;
        return Lowered(flat, isFree, LighterMoves(isFree), Cost, isByWeight: true);
    }

    private Judged Lowered(
        Judged from, Func<string, bool> isFree, ImmutableArray<Cure> moves, Func<Judged, double> cost, bool isByWeight,
        int mendRounds = LightRounds) =>
        new Descent(Judge, Levers, new Repair(Judge, Levers, isFree), moves, cost, isByWeight, mendRounds).Improve(from);

    private static ImmutableArray<Cure> LighterMoves(Func<string, bool> isFree) => [.. s_lighter.Where(m => isFree(m.Key))];
}
