using BridgeForm.Pieces;
using BridgeForm.Project;
using BridgeForm.Quantities;

namespace BridgeForm.Stocking;

/// <summary>
/// Packers are ripped before they are cut to length: those of one setting of the blade lie one behind the other on a board, so that
/// its taper is ripped once for all of them.
/// </summary>
internal static class RipGroups
{
    /// <summary>
    /// Strips of one setting each: as many in a blank as cost least in boards, the fewer boards of two that cost the same.
    /// </summary>
    public static IEnumerable<Blank> Blanks(IEnumerable<Piece> ripped, Offer offer, ShopParameters shop)
    {
        foreach (var setup in StripPlan.List([.. ripped], shop))
        {
            Blank[] strips =
            [
                .. setup.Pieces.SelectMany(p => p.Piece.Occurrences.Select(o => new Blank(p.Piece.Mark, o.Id, p.Piece.BlankLength)))
                    .OrderByDescending(b => b.Length),
            ];
            foreach (var some in strips.Chunk(InOne(strips, offer, shop.Kerf)))
            {
                var length = some.Sum(b => b.Length) + ((some.Length - 1) * shop.Kerf);
                yield return some.Length == 1 ? some[0] : some[0] with { Length = length, Strips = [.. some] };
            }
        }
    }

    private static int InOne(Blank[] strips, Offer offer, double kerf) => Enumerable.Range(0, offer.Usable.Length)
        .Select(i => (
            Count: (int)Math.Floor(((offer.Usable[i] + kerf) / (strips[0].Length + kerf)) + Tolerances.WholeRatio),
            Board: offer.Costs[i]))
        .Where(b => b.Count > 0)
        .Select(b => (Count: Math.Min(b.Count, strips.Length), b.Board))
        .Select(b => (b.Count, Boards: (strips.Length + b.Count - 1) / b.Count, b.Board))
        .OrderBy(b => Rounding.ToDecimals(b.Boards * b.Board, 6)).ThenBy(b => b.Boards).First().Count;
}
