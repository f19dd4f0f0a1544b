using System.Collections.Immutable;
using BridgeForm.Project;
using BridgeForm.Project.Files;

namespace BridgeForm.Proposals;

/// <summary>
/// Looks for designs that pass. Every one that is told is a whole model whose checks were all run; designs are counted and not
/// timed, so that the same file gets the same answer everywhere.
/// </summary>
public static class Search
{
    // Less than this nobody feels underfoot; own figures.
    private const double MuchFlatter = 1.03;
    private const int MostFlatter = 4;

    /// <summary>Keys that a search can move.</summary>
    public static ImmutableArray<string> Keys => Levers.Keys;

    /// <summary>Keys that a search for a new site moves: leans are left to those who ask for them.</summary>
    public static ImmutableArray<string> SiteKeys { get; } =
        [.. Levers.Keys.Where(k => k is not ("frames.post.lean" or "frames.brace.lean"))];

    /// <summary>What may help a check that fails, in one sentence: values that a search moves, or why none does and what would.</summary>
    /// <param name="check">Id of the check.</param>
    public static string Help(string check)
    {
        var keys = Cures.Of(check).Select(c => c.Key).Distinct(StringComparer.Ordinal).ToList();
        return Cures.Sentence(check)
            ?? (keys.Count > 0 ? $"a search may find values that pass of {string.Join(", ", keys)}"
                : "no value of the design is known to help it: read its numbers, and change what makes the larger one");
    }

    /// <summary>Up to three ways from a file that exists to a design that passes: fewest changes, lightest or cheapest, flattest.</summary>
    /// <param name="reading">The file, read without a fault.</param>
    /// <param name="prices">The price list that goes with it; null without one.</param>
    /// <param name="ask">What may move and what is wished for.</param>
    /// <param name="token">Asked within each look at a design.</param>
    /// <exception cref="OperationCanceledException">The token asked for it.</exception>
    public static SearchResult Propose(ProjectReading reading, PriceList? prices, SearchAsk ask, CancellationToken token = default)
    {
        if (Clashes.Impossible(reading, ask) is { } why)
        {
            return new SearchResult([], 0, IsPassing: false, null, [why]);
        }

        var run = new SearchRun(reading, prices, ask, token);
        var asWritten = run.AsWritten();
        if (asWritten.Passes && ask.Free.IsEmpty)
        {
            return new SearchResult([], run.Judge.Count, IsPassing: true, asWritten.Figures, [])
            {
                Unsold = [.. Yard.Unsold(asWritten.Parameters!).Select(u => u.Path)],
            };
        }

        if (WithoutValues(run, asWritten) is { } lacking)
        {
            return lacking;
        }

        var passing = run.Pass(asWritten.Shortfalls.Any(s => s.Id is "section-on-sale") ? run.OnSale() : asWritten);
        if (!passing.Passes)
        {
            return new SearchResult(
                [], run.Judge.Count, IsPassing: false, asWritten.Figures,
                [.. Reasons.Why(run, passing), .. Clashes.OfLimits(reading, prices, ask, token)]);
        }

        var fewest = run.Single(asWritten) ?? run.Fewest(asWritten, passing);
        var least = run.Steady(run.Trimmed(fewest, isFewest: true));
        var flattest = run.Steady(run.Trimmed(run.Best(fewest, Preference.Flat)));
        var second = ask.Prefer == Preference.Cheap && prices is not null ? Preference.Cheap : Preference.Light;
        (string Name, Judged Design)[] ways =
        [
            ("fewest changes", least),
            (second == Preference.Cheap ? "cheapest" : "lightest", run.Steady(run.Trimmed(run.BestOfAll(fewest, second)))),
            ("flattest", flattest),
        ];
        var told = ways.Where(w => !w.Design.Design.Changes.IsEmpty).DistinctBy(w => w.Design.Design.Signature, StringComparer.Ordinal);
        var now = run.Judge.Build(asWritten.Design);
        var figures = asWritten.Figures is { } f && now is not null ? f with { Price = now.StockPlan.Price } : asWritten.Figures;
        return new SearchResult([.. told.Select(w => run.Tell(w.Name, w.Design))], run.Judge.Count, asWritten.Passes, figures, [])
        {
            Written = now,
        };
    }

    // No value that moves gives wood another strength than its tables.
    private static SearchResult? WithoutValues(SearchRun run, Judged asWritten)
    {
        var woods = asWritten.Shortfalls.Select(s => s.NoValues).Where(w => w.Length > 0).Distinct(StringComparer.Ordinal).ToList();
        return woods.Count == 0 ? null : new SearchResult(
            [], run.Judge.Count, IsPassing: false, asWritten.Figures,
            [
                $"No table has values for {string.Join(", ", woods)}: "
                    + $"{asWritten.Shortfalls.Count(s => s.NoValues.Length > 0)} checks cannot be made, whatever else changes. Take a "
                    + "species and grade that have, or give its values under values.",
            ]);
    }

    /// <summary>The best design for a site, by what is preferred; one proposal, or none.</summary>
    /// <param name="reading">The site, and all that is not to be changed, as a project file.</param>
    /// <param name="prices">A price list; null without one.</param>
    /// <param name="ask">What may move and what is wished for.</param>
    /// <param name="token">Asked within each look at a design.</param>
    /// <exception cref="OperationCanceledException">The token asked for it.</exception>
    public static SearchResult Best(ProjectReading reading, PriceList? prices, SearchAsk ask, CancellationToken token = default)
    {
        if (Clashes.Impossible(reading, ask) is { } why)
        {
            return new SearchResult([], 0, IsPassing: false, null, [why]);
        }

        var found = One(reading, prices, ask, token);
        return found.Proposals.IsEmpty ? found with { Why = [.. found.Why, .. Clashes.OfWishes(reading, prices, ask, token)] }
            : ask.Prefer == Preference.Flat ? Flatter(reading, prices, ask, found, token)
            : found;
    }

    private static SearchResult One(ProjectReading reading, PriceList? prices, SearchAsk ask, CancellationToken token)
    {
        var run = new SearchRun(reading, prices, ask, token);
        var asWritten = run.OnSale();
        var passing = run.Pass(asWritten);
        if (!passing.Passes)
        {
            return new SearchResult([], run.Judge.Count, IsPassing: false, asWritten.Figures, Reasons.Why(run, passing));
        }

        var best = run.Steady(run.Trimmed(run.BestOfAll(passing, ask.Prefer)));
        return new SearchResult([run.Tell("best", best)], run.Judge.Count, asWritten.Passes, asWritten.Figures, []);
    }

    // Who asks for the flattest gets what he would get who asks for a little flatter still, as long as there is such a one.
    private static SearchResult Flatter(
        ProjectReading reading, PriceList? prices, SearchAsk ask, SearchResult found, CancellationToken token)
    {
        for (var round = 0; round < MostFlatter; round++)
        {
            var least = found.Proposals[0].Figures.Slope;
            var before = found.Looked;
            var wish = ask with
            {
                MostSlope = least / MuchFlatter,
                Prefer = Preference.Light,
                MostDesigns = ask.MostDesigns / 2,
                Looked = count => ask.Looked?.Invoke(before + count),
            };
            if (least <= SearchRun.FlatEnough)
            {
                break;
            }

            var next = One(reading, prices, wish, token);
            found = (next.Proposals.IsEmpty ? found : next) with { Looked = before + next.Looked };
            if (next.Proposals.IsEmpty)
            {
                break;
            }
        }

        return found;
    }
}
