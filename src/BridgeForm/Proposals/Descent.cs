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
internal sealed class Descent(Judge judge, Levers levers, Repair repair, ImmutableArray<Cure> moves, Func<Judged, double> cost)
{
    private const int MostSweeps = 4;
    private const int Steps = 3;
    private const int MendRounds = 3;

    // Less than a thousandth is no gain that a builder sees.
    private const double Gain = 0.999;

    /// <summary>The best that was found; passes as the first does.</summary>
    public Judged Improve(Judged first)
    {
        var best = first;
        for (var sweep = 0; sweep < MostSweeps && !judge.IsSpent; sweep++)
        {
            var before = cost(best);
            foreach (var (key, way) in moves)
            {
                best = Along(best, key, way);
            }

            if (cost(best) > before * Gain)
            {
                break;
            }
        }

        return best;
    }

    // As far along one lever as it gets better.
    private Judged Along(Judged best, string key, Way way)
    {
        for (var isBetter = true; isBetter && !judge.IsSpent;)
        {
            var looked = judge.LookAll([.. levers.Moves(best, key, way, 1).Take(Steps)]);
            var better = looked.Where(j => j.Passes && cost(j) < cost(best) * Gain).MinBy(cost) ?? Mended(best, key, looked);
            (best, isBetter) = (better ?? best, better is not null);
        }

        return best;
    }

    // What is lighter as it stands but fails: the others may make good for it.
    private Judged? Mended(Judged best, string key, ImmutableArray<Judged> looked) => looked
        .Where(j => !j.Passes && j.Figures is not null && cost(j) < cost(best) * Gain && j.Violation < 2)
        .Select(j => repair.Mend(j, MendRounds, key))
        .FirstOrDefault(j => j.Passes && cost(j) < cost(best) * Gain);
}
