using System.Collections.Immutable;
using BridgeForm.Project;

namespace BridgeForm.Stocking;

/// <summary>Where each piece lies on a board, and what is left of the board.</summary>
internal static class BoardLayout
{
    /// <summary>Lays the blanks out one after the other, longest first, each followed by a saw cut; the first begins behind the trim.</summary>
    public static PlannedBoard Of(int number, string section, BoardLoad load, Offer offer, ShopParameters shop)
    {
        var pieces = ImmutableArray.CreateBuilder<BoardPiece>(load.Blanks.Length);
        var at = shop.Trim;
        foreach (var blank in load.Blanks)
        {
            pieces.Add(new BoardPiece(blank.Mark, blank.Id, blank.Length, at));
            at += blank.Length + shop.Kerf;
        }

        var length = offer.Lengths[load.Board];
        var offcut = Math.Max(0, length - shop.Trim - at);
        var leftover = offcut >= shop.Offcut ? offcut : 0;
        var used = load.Blanks.Sum(b => b.Length);
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
}
