using System.Collections.Immutable;

namespace BridgeForm.Proposals;

/// <summary>
/// From a design that fails to one that passes: every failing check names what helps it, all of them are helped at once, by as
/// much as they fail, and the whole is looked at anew; what did not help is followed by the next that may.
/// </summary>
/// <param name="judge">Looks at designs.</param>
/// <param name="levers">What can move.</param>
/// <param name="isFree">Whether a key may.</param>
internal sealed class Repair(Judge judge, Levers levers, Func<string, bool> isFree)
{
    // A cure that took off less than this share of what is missing is followed by the next one.
    private const double Helped = 0.9;

    // A step and a longer one, before a cure is given up.
    private static readonly int[] s_strides = [0, 2];

    private const int BestOf = 5;
    private const int MostAround = 8;
    private const int AroundRounds = 5;
    private const int AheadRounds = 4;

    /// <summary>A design that passes, or the nearest that was found.</summary>
    /// <param name="from">Where to begin.</param>
    /// <param name="rounds">Most rounds.</param>
    /// <param name="kept">A key that is left as it is; null for none.</param>
    /// <param name="isWorth">Whether a design is worth a look; null where all are.</param>
    public Judged Mend(Judged from, int rounds, string? kept = null, Func<Design, bool>? isWorth = null) =>
        Mend(from, rounds, kept, isWorth ?? (_ => true), looksAhead: false);

    /// <summary>The same, looking a few rounds further where a step makes things worse: ropes that sag more have to lie wider.</summary>
    public Judged MendAhead(Judged from, int rounds) => Mend(from, rounds, kept: null, _ => true, looksAhead: true);

    private Judged Mend(Judged from, int rounds, string? kept, Func<Design, bool> isWorth, bool looksAhead)
    {
        var (now, best) = (from, from);
        var tried = new Dictionary<string, int>(StringComparer.Ordinal);
        for (var round = 0; round < rounds && !now.Passes && !judge.IsSpent; round++)
        {
            if (Helping(now, tried, kept) is not { } design)
            {
                break;
            }

            var next = isWorth(design) ? judge.Look(design) : null;
            if (next is null || next.Violation > now.Violation)
            {
                // Together they do harm, or it cannot be built so: what they do harm to is helped, or each is tried alone.
                next = (looksAhead && next is not null ? Ahead(now, next) : null) ?? Alone(now, tried, kept, isWorth) ?? next;
            }

            if (next is null)
            {
                break;
            }

            Learn(now, next, tried);
            now = next.Violation > now.Violation ? now : next;
            best = now.Violation < best.Violation ? now : best;
        }

        return best;
    }

    /// <summary>
    /// From a design that cures do not help further: each single step that may help is taken, either way, however it comes out, held,
    /// and the rest mended. The first that ends up nearer; null where none does.
    /// </summary>
    public Judged? Around(Judged from)
    {
        var steps = from.Shortfalls.SelectMany(s => Cures.Of(s.Id)).Select(c => c.Key).Distinct(StringComparer.Ordinal).Where(isFree)
            .SelectMany(k => levers.Moves(from, k, Way.More, 1).Take(BestOf).Concat(levers.Moves(from, k, Way.Less, 1).Take(BestOf))
                .Select(d => (Key: k, Design: d)))
            .ToList();
        var looked = judge.LookAll([.. steps.Select(s => s.Design)]);
        return looked.Zip(steps, (judged, step) => (judged, step.Key)).Where(l => l.judged.Figures is not null)
            .OrderBy(l => l.judged.Violation).Take(MostAround)
            .Select(l => Mend(l.judged, AroundRounds, l.Key))
            .FirstOrDefault(j => j.Violation < from.Violation * Helped);
    }

    // All failing checks' cures together; a key that two of them move goes as far as the worse one needs.
    private Design? Helping(Judged now, Dictionary<string, int> tried, string? kept)
    {
        var design = now.Design;
        var moved = new HashSet<string>(StringComparer.Ordinal);
        foreach (var shortfall in now.Shortfalls)
        {
            if (Next(shortfall, tried, kept) is not { } cure || !moved.Add(cure.Key))
            {
                continue;
            }

            if (Step(now, shortfall, cure, tried) is { } step)
            {
                design = design.With(step.AsKeys().Where(k => !now.Design.Says(k)));
            }
            else
            {
                tried[shortfall.Id] = tried.GetValueOrDefault(shortfall.Id) + 1;
                moved.Remove(cure.Key);
            }
        }

        return design.IsSame(now.Design) ? AnyLeft(now, tried, kept) : design;
    }

    // Every cure at hand was at its end: those that come next.
    private Design? AnyLeft(Judged now, Dictionary<string, int> tried, string? kept) =>
        now.Shortfalls.Any(s => Next(s, tried, kept) is not null) ? Helping(now, tried, kept) : null;

    private Judged? Ahead(Judged now, Judged worse)
    {
        var end = worse.Figures is null ? worse : Mend(worse, AheadRounds);
        return end.Violation < now.Violation ? end : null;
    }

    private Judged? Alone(Judged now, Dictionary<string, int> tried, string? kept, Func<Design, bool> isWorth)
    {
        var designs = now.Shortfalls.Select(s => Next(s, tried, kept) is { } c
            ? Step(now, s, c, tried) : null).OfType<Design>().Where(isWorth).ToList();
        return judge.LookAll(designs).Where(j => j.Figures is not null).MinBy(j => j.Violation);
    }

    private Design? Step(Judged now, Shortfall shortfall, Cure cure, Dictionary<string, int> tried)
    {
        var steps = levers.Moves(now, cure.Key, cure.Way, Aim(shortfall)).ToList();
        var stride = s_strides[tried.GetValueOrDefault(shortfall.Id) % s_strides.Length];
        return steps.Count == 0 ? null : steps[Math.Min(stride, steps.Count - 1)];
    }

    private static void Learn(Judged before, Judged after, Dictionary<string, int> tried)
    {
        foreach (var shortfall in before.Shortfalls)
        {
            var left = after.Shortfalls.FirstOrDefault(s => string.Equals(s.Id, shortfall.Id, StringComparison.Ordinal));
            if (after.Violation > before.Violation || left?.Missing > shortfall.Missing * Helped)
            {
                tried[shortfall.Id] = tried.GetValueOrDefault(shortfall.Id) + 1;
            }
        }
    }

    private Cure? Next(Shortfall shortfall, Dictionary<string, int> tried, string? kept)
    {
        var left = Cures.Of(shortfall.Id).Where(c => isFree(c.Key) && !string.Equals(c.Key, kept, StringComparison.Ordinal))
            .Skip(tried.GetValueOrDefault(shortfall.Id) / s_strides.Length).ToImmutableArray();
        return left.IsEmpty ? null : left[0];
    }

    // A little beyond what is missing, so that the next look finds it enough; the nearest step where nobody knows how much is.
    private static double Aim(Shortfall shortfall) =>
        shortfall.Ratio is { } ratio && double.IsFinite(ratio) ? Math.Min(ratio, 3) * 1.01 : 1;
}
