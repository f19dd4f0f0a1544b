using System.Collections.Immutable;

namespace BridgeForm.Proposals;

/// <summary>
/// From a design that passes to the best that single steps lead to: every lever is moved, what fails then is mended by the
/// others, and what is better is kept, until nothing is.
/// </summary>
/// <param name="judge">Looks at designs.</param>
/// <param name="levers">What can move.</param>
/// <param name="repair">Mends what a step broke.</param>
/// <param name="moves">What is moved, and which way; the mending moves other values too.</param>
/// <param name="cost">What is to be small.</param>
/// <param name="isByWeight">What weighs no less than the best so far is not looked at: it costs no less.</param>
/// <param name="mendRounds">So many rounds of mending a step is worth.</param>
internal sealed class Descent(
    Judge judge, Levers levers, Repair repair, ImmutableArray<Cure> moves, Func<Judged, double> cost, bool isByWeight,
    int mendRounds)
{
    private const int MostSweeps = 4;
    private const int Steps = 2;
    // What fails by more than this is not mended by a step or two of the others.
    private const double MostMended = 1.2;

    // Less than a thousandth is no gain that a builder sees.
    private const double Gain = 0.999;

    private readonly HashSet<Cure> _hopeless = [];

    // Values that failed by far: what other values do meanwhile changes little of that.
    private readonly HashSet<(string Key, string Value)> _farOff = [];

    /// <summary>The best that was found; passes as the first does.</summary>
    public Judged Improve(Judged first)
    {
        var best = first;
        for (var sweep = 0; sweep < MostSweeps && !judge.IsSpent; sweep++)
        {
            var before = cost(best);
            foreach (var move in moves)
            {
                best = Along(best, move);
            }

            if (cost(best) > before * Gain)
            {
                break;
            }
        }

        return best;
    }

    // As far along one lever as it gets better.
    private Judged Along(Judged best, Cure move)
    {
        for (var isBetter = true; isBetter && !judge.IsSpent;)
        {
            var looked = judge.LookAll([.. Next(best, move)]);
            _farOff.UnionWith(looked.Where(j => j.Violation >= MostMended).Select(j => Valued(j.Design, move)));
            var better = looked.Where(j => j.Passes && cost(j) < cost(best) * Gain).MinBy(cost) ?? Mended(best, move, looked);
            (best, isBetter) = (better ?? best, better is not null);
        }

        return best;
    }

    // Where the others could not make good for a lever, only its next step is looked at when its turn comes again.
    private IEnumerable<Design> Next(Judged best, Cure move) => levers.Moves(best, move.Key, move.Way, 1)
        .Take(_hopeless.Contains(move) ? 1 : Steps).Where(d => !_farOff.Contains(Valued(d, move)) && IsWorth(d, best));

    private static (string Key, string Value) Valued(Design design, Cure move) =>
        (move.Key, design.Changes.GetValueOrDefault(move.Key, ""));

    private bool IsWorth(Design design, Judged best) => !isByWeight || judge.Weigh(design) < best.Figures!.Weight * Gain;

    // What is better as it stands but fails: the others may make good for it. Where they once could not, it is not asked again.
    private Judged? Mended(Judged best, Cure move, ImmutableArray<Judged> looked)
    {
        if (_hopeless.Contains(move))
        {
            return null;
        }

        var mended = looked
            .Where(j => !j.Passes && j.Figures is not null && cost(j) < cost(best) * Gain && j.Violation < MostMended)
            .Select(j => repair.Mend(j, mendRounds, move.Key, d => IsWorth(d, best)))
            .FirstOrDefault(j => j.Passes && cost(j) < cost(best) * Gain);
        _ = mended is null && _hopeless.Add(move);
        return mended;
    }
}
