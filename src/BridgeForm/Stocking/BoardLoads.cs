using System.Collections.Immutable;
using BridgeForm.Project;
using BridgeForm.Quantities;
using BridgeForm.Stocking.Cutting;

namespace BridgeForm.Stocking;

/// <summary>What goes on one board.</summary>
/// <param name="Board">Which of the offer's boards.</param>
/// <param name="Blanks">Longest first.</param>
internal sealed record BoardLoad(int Board, ImmutableArray<Blank> Blanks);

/// <summary>From patterns to the very pieces.</summary>
internal static class BoardLoads
{
    /// <summary>
    /// Deals the blanks of each class out to the boards, longest boards first, and takes the cheapest board that holds what
    /// was dealt: blanks shorter than their class may have made room.
    /// </summary>
    public static ImmutableArray<BoardLoad> Fill(
        CuttingPlan plan, ImmutableArray<LengthClass> classes, Offer offer, double kerf)
    {
        var next = new int[classes.Length];
        return
        [
            .. plan.Patterns
                .OrderByDescending(p => offer.Lengths[p.Board])
                .ThenBy(p => p, PatternOrder.Instance)
                .Select(p => Dealt(p, classes, next, offer, kerf)),
        ];
    }

    private static BoardLoad Dealt(
        Pattern pattern, ImmutableArray<LengthClass> classes, int[] next, Offer offer, double kerf)
    {
        var blanks = ImmutableArray.CreateBuilder<Blank>();
        for (var i = 0; i < classes.Length; i++)
        {
            blanks.AddRange(classes[i].Blanks.AsSpan(next[i], pattern.Counts[i]));
            next[i] += pattern.Counts[i];
        }

        var needed = blanks.Sum(b => b.Length) + ((blanks.Count - 1) * kerf);
        var best = pattern.Board;
        for (var b = 0; b < offer.Usable.Length; b++)
        {
            best = offer.Usable[b] + Tolerances.RoundOff >= needed && offer.Costs[b] < offer.Costs[best] ? b : best;
        }

        return new BoardLoad(best, blanks.ToImmutable());
    }

    /// <summary>More of the longest pieces first, so that like boards stand together.</summary>
    private sealed class PatternOrder : IComparer<Pattern>
    {
        public static PatternOrder Instance { get; } = new();

        public int Compare(Pattern? x, Pattern? y)
        {
            for (var i = 0; i < x!.Counts.Length; i++)
            {
                if (x.Counts[i] != y!.Counts[i])
                {
                    return y.Counts[i].CompareTo(x.Counts[i]);
                }
            }

            return 0;
        }
    }
}

/// <summary>Where each piece lies on a board, and what is left of the board.</summary>
internal static class BoardLayout
{
    /// <summary>
    /// Lays the blanks out one after the other, longest first, each followed by a saw cut; the first begins behind the trim.
    /// </summary>
    public static PlannedBoard Lay(int number, string section, BoardLoad load, Offer offer, ShopParameters shop)
    {
        var pieces = ImmutableArray.CreateBuilder<BoardPiece>(load.Blanks.Length);
        var at = shop.Trim;
        foreach (var (blank, ripsOn) in load.Blanks.SelectMany(Parted))
        {
            var held = blank.Length - (blank.Second is null ? 1 : 2) * blank.Each;
            pieces.Add(new BoardPiece(blank.Mark, blank.Id, blank.Each, at) { Held = held, RipsOn = ripsOn });
            if (blank.Second is { } second)
            {
                pieces.Add(new BoardPiece(blank.Mark, second, blank.Each, at + blank.Each + held));
            }

            at += blank.Length + shop.Kerf;
        }

        var length = offer.Lengths[load.Board];
        var offcut = Math.Max(0, length - shop.Trim - at);
        var leftover = offcut >= shop.Offcut ? offcut : 0;
        var used = pieces.Sum(p => p.BlankLength);
        return new PlannedBoard(
            number,
            offer.Stock.Name,
            section,
            length,
            pieces.ToImmutable(),
            leftover,
            Math.Max(0, length - used - leftover),
            offer.ByPrice ? offer.Costs[load.Board] : null);
    }

    /// <summary>Strips that are ripped in one length one by one; whether the next one is of the same length.</summary>
    private static IEnumerable<(Blank Blank, bool RipsOn)> Parted(Blank blank) => blank.Strips.IsEmpty
        ? [(blank, false)]
        : blank.Strips.Select((strip, i) => (strip, i + 1 < blank.Strips.Length));
}
