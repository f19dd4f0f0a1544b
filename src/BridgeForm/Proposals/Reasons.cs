using System.Collections.Immutable;
using System.Globalization;
using BridgeForm.Project;
using BridgeForm.Quantities;

namespace BridgeForm.Proposals;

/// <summary>Why a proposal says what it says, and why nothing passes: each found by looking at the design without it.</summary>
internal static class Reasons
{
    private const int MostTold = 3;
    private const int MostCures = 3;
    private const int MostSteps = 7;

    // What rounds to 1.00.
    private const double JustSo = 1.005;

    /// <summary>What a proposal writes otherwise, in the order of the project file.</summary>
    public static ImmutableArray<ProposedChange> Of(SearchRun run, Judged judged) =>
    [
        .. judged.Design.Changes.OrderBy(c => Order(c.Key)).ThenBy(c => c.Key, StringComparer.Ordinal)
            .Select(c => new ProposedChange(c.Key, Before(run, c.Key), c.Value, Reason(run, judged, c.Key))),
    ];

    /// <summary>Why the nearest that was found does not pass.</summary>
    public static ImmutableArray<string> Why(SearchRun run, Judged nearest) => nearest.Figures is null
        ? [$"It cannot be built: {nearest.Trouble}"]
        : [.. nearest.Shortfalls.OrderBy(s => Cures.Sentence(s.Id) is null).Take(MostTold).Select(s => Why(run, nearest, s))];

    private static string Why(SearchRun run, Judged nearest, Shortfall shortfall)
    {
        var came = shortfall.Ratio is { } ratio && double.IsFinite(ratio)
            ? shortfall.IsTooSmall ? $"in the nearest design it is {Short(ratio)} of what is asked"
            : $"in the nearest design it is {Beyond(ratio)} of what it may be"
            : $"it fails in the nearest design: {shortfall.Detail}";
        var cures = Cures.Of(shortfall.Id).Select(c => c.Key).Distinct(StringComparer.Ordinal).ToList();
        var bound = cures.Where(k => !run.IsFree(k)).ToList();
        var way = Cures.Sentence(shortfall.Id) is { } sentence ? sentence
            : bound.Count > 0 ? $"it may not move what may help: {string.Join(", ", bound)}"
            : cures.Count > 0 ? $"it hangs on {string.Join(", ", cures)}: what was tried of them does not help it, or something else "
                + "fails then"
            : "nothing that may move helps it";
        var sale = cures.FirstOrDefault() is { } first && first.EndsWith(".section", StringComparison.Ordinal) && run.IsFree(first)
            && !run.Levers.Moves(nearest, first, Way.More, 1).Any() ? $"; no stronger section for {first} is on sale" : "";
        return $"{shortfall.Text} ({shortfall.Id}): {came}; {way}{sale}{Needed(nearest, shortfall)}{Least(run, nearest, shortfall)}.";
    }

    // The nearest value of one key that meets this check and no other one may: what the builder could ask for, and what it costs.
    private static string Least(SearchRun run, Judged nearest, Shortfall shortfall)
    {
        foreach (var cure in Cures.Of(shortfall.Id).Where(c => run.IsFree(c.Key)).Take(MostCures))
        {
            var steps = run.Levers.Moves(nearest, cure.Key, cure.Way, 1)
                .Concat(run.Levers.Moves(nearest, cure.Key, cure.Way, shortfall.Ratio is { } r && double.IsFinite(r) ? r : 1));
            var met = steps.Take(MostSteps).Select(run.Judge.Look).FirstOrDefault(j => j.Figures is not null && Meets(j, shortfall.Id));
            if (met is { Shortfalls: [var then, ..] })
            {
                var holds = then.Id is Shortfall.WidthWish or Shortfall.SlopeWish ? ""
                    : then.IsLook ? " is left to see to" : " does not hold";
                return $"; {cure.Key} {met.Design.Changes[cure.Key]} meets it, but then {Uncapital(then.Text)}{holds} ({then.Id}"
                    + (then.Ratio is { } by && double.IsFinite(by) ? $", {Beyond(by)})" : ")");
            }
        }

        return "";
    }

    // What rounds to 1.00 is told to as many decimals as show that it is more.
    private static string Beyond(double ratio) =>
        ratio is > 1 and < JustSo ? NumberText.Fixed(Rounding.Up(ratio, 0.0001), 4) : NumberText.Fixed(ratio, 2);

    // As much that rounds to 1.00.
    private static string Short(double ratio) => ratio is > 1 and < JustSo
        ? NumberText.Fixed(Rounding.Down(1 / ratio, 0.0001), 4) : NumberText.Fixed(Rounding.Down(1 / ratio, 0.01), 2);

    private static bool Meets(Judged judged, string check) =>
        judged.Shortfalls.All(s => !string.Equals(s.Id, check, StringComparison.Ordinal));

    // A value that would do, where it is in proportion to what is missing.
    private static string Needed(Judged nearest, Shortfall shortfall)
    {
        if (shortfall.Id is not "rope-strength" || shortfall.Ratio is not { } ratio || !double.IsFinite(ratio))
        {
            return "";
        }

        var (p, words) = (nearest.Parameters!, new QuantityText(nearest.Parameters!.Units));
        var has = p.Ropes.Rope.BreakingStrength;
        var most = Yard.Ropes(p.Ropes).Select(r => r.BreakingStrength).DefaultIfEmpty(has).Max();
        var ends = p.Ropes.TerminationEfficiency is { } efficiency and < 1 && has * ratio * efficiency <= most
            ? $"; its ends are counted at {QuantityText.Share(efficiency)} of the rope: with ends that hold all of it it would do "
                + "(poured sockets; write ropes.termination)" : "";
        return most >= has * ratio ? ""
            : $"{ends}; a rope that breaks at {words.Force(has * ratio)} would carry it, the strongest of its kind on sale breaks at "
                + words.Force(most);
    }

    private static string Before(SearchRun run, string path) => run.Reading.Values!.Find(path)?.Text ?? "";

    private static string Reason(SearchRun run, Judged judged, string path)
    {
        var without = run.Judge.Look(judged.Design.Without(path));
        // A rule may choose something else beside the other changes.
        var before = without.Parameters?.Chosen.FirstOrDefault(c => string.Equals(c.Path, path, StringComparison.Ordinal))?.Text
            ?? Before(run, path);
        if (without.Figures is null)
        {
            return $"{before}: it cannot be built: {without.Trouble}";
        }

        var sale = path.EndsWith(".section", StringComparison.Ordinal)
            ? without.Shortfalls.FirstOrDefault(s => s.Id is "section-on-sale") : null;
        return without.Shortfalls.IsEmpty ? Better(run, judged, without, (path, before))
            : Failing(before, sale ?? without.Shortfalls[0], without.Figures.Slope);
    }

    private static string Failing(string before, Shortfall shortfall, double slope)
    {
        var by = shortfall.Ratio is not { } ratio || !double.IsFinite(ratio) ? ""
            : ratio < JustSo ? ", just"
            : string.Create(CultureInfo.InvariantCulture, $", {ratio:0.00}");
        return shortfall.Id is Shortfall.SlopeWish ? $"{before}: the deck would be as steep as {Checks.CheckWords.Slope(slope)}"
            : shortfall.Id is Shortfall.WidthWish ? $"{before}: {shortfall.Text}"
            : shortfall.Id is "section-on-sale" ? $"{before} is not on sale"
            : shortfall.IsLook ? $"{before} leaves to see to: {Uncapital(shortfall.Text)}{by}"
            : $"{before} would fail: {Uncapital(shortfall.Text)}{by}";
    }

    private static string Better(SearchRun run, Judged judged, Judged without, (string Path, string Text) before)
    {
        var (now, then) = (judged.Figures!, without.Figures!);
        var words = new QuantityText(judged.Parameters!.Units);
        var (slope, weight) = (Checks.CheckWords.Slope(then.Slope), words.Force(then.Weight - now.Weight));
        // A rule may take another rope with it: that is what weighs.
        var rope = without.Parameters!.Ropes.Rope;
        var by = string.Equals(rope.Name, judged.Parameters.Ropes.Rope.Name, StringComparison.Ordinal) ? "" : $", with {rope.Name}";
        var isSteeper = then.Slope > now.Slope * SearchRun.AlikeSlope
            && !string.Equals(slope, Checks.CheckWords.Slope(now.Slope), StringComparison.Ordinal);
        var steeper = $"{before.Text}: the deck would be as steep as {slope}{by}";
        return isSteeper && run.IsFlatWished ? steeper
            : then.Price > now.Price
                ? $"{before.Text}: the boards would cost {NumberText.Fixed(then.Price.Value - now.Price.Value, 2)} more"
            : then.Weight > now.Weight ? $"{before.Text} would weigh {weight} more, ropes included{by}"
            : isSteeper ? steeper
            : run.IsSteady(judged, before.Path) && !run.IsSteady(without, before.Path)
                ? $"{before.Text} passes too, but not where it is set out {Steadying.Off(judged.Parameters.Units)} off"
            : $"{before.Text} passes too";
    }

    private static string Uncapital(string text) => char.ToLowerInvariant(text[0]) + text[1..];

    private static int Order(string path) => ProjectKeys.Root.Keys.TakeWhile(
        k => !path.StartsWith(k.Name + ".", StringComparison.Ordinal)).Count();
}
