using System.Collections.Immutable;
using BridgeForm.Pieces;
using BridgeForm.Project;
using BridgeForm.Quantities;

namespace BridgeForm.Stocking;

/// <summary>How a blank lies on its board, against the piece's own axes.</summary>
public enum BlankTurn
{
    /// <summary>X along the board, Z up.</summary>
    None,

    /// <summary>Half a turn about Z: end for end, the same face up.</summary>
    EndForEnd,

    /// <summary>Half a turn about Y: end for end, the other face up.</summary>
    EndForEndOver,

    /// <summary>Half a turn about X: rolled over.</summary>
    Over,
}

/// <summary>
/// Lets neighbours on a board that are cut at the same mitre and bevel share one cut, turning pieces where that helps: their
/// blanks overlap by as much as the cut slants. The boards bought stay the same; what is saved goes to the leftover.
/// </summary>
internal static class SharedMitres
{
    /// <summary>The board with its pieces in an order that shares cuts; the same board when none can be shared.</summary>
    public static PlannedBoard Find(PlannedBoard board, IReadOnlyDictionary<string, Piece> pieces, ShopParameters shop)
    {
        // What is cut two from a blank keeps its place, and the wood that it is held by; so does what is ripped in one length.
        if (board.Pieces.Any(p => p.Held > 0 || p.RipsOn))
        {
            return board;
        }

        var left = board.Pieces.ToList();
        var placed = ImmutableArray.CreateBuilder<BoardPiece>(left.Count);
        var (at, overlap) = (shop.Trim, 0.0);
        Cut? last = null;
        while (left.Count > 0)
        {
            var (next, shares) = Next(left, pieces, last);
            left.RemoveAll(p => string.Equals(p.Id, next.Id, StringComparison.Ordinal));
            var piece = pieces[next.Mark];
            var saved = shares ? Saving(piece, last!.Value, shop.Kerf) : 0;
            at -= saved;
            overlap += saved;
            placed.Add(next with { Start = at, SharesCut = shares });
            at += next.BlankLength + shop.Kerf;
            last = Ends(piece, next.Turn).Far;
        }

        return overlap > 0 ? Measured(board, placed.ToImmutable(), at, overlap, shop) : board;
    }

    private static PlannedBoard Measured(
        PlannedBoard board, ImmutableArray<BoardPiece> placed, double at, double overlap, ShopParameters shop)
    {
        var offcut = Math.Max(0, board.Length - shop.Trim - at);
        var leftover = offcut >= shop.Offcut ? offcut : 0;
        var waste = board.Length - leftover - placed.Sum(p => p.BlankLength) + overlap;
        return board with { Pieces = placed, Leftover = leftover, Waste = Math.Max(0, waste) };
    }

    /// <summary>A piece turned so that it shares the last cut; else the next one, turned so that another can share its far cut.</summary>
    private static (BoardPiece Piece, bool Shares) Next(
        List<BoardPiece> left, IReadOnlyDictionary<string, Piece> pieces, Cut? last)
    {
        if (last is { IsSquare: false } cut)
        {
            foreach (var candidate in left)
            {
                foreach (var turn in Enum.GetValues<BlankTurn>())
                {
                    if (Ends(pieces[candidate.Mark], turn).Near.Is(cut))
                    {
                        return (candidate with { Turn = turn }, true);
                    }
                }
            }
        }

        var first = left[0];
        var useful = Enum.GetValues<BlankTurn>().FirstOrDefault(
            turn => Ends(pieces[first.Mark], turn).Far is { IsSquare: false } far
                && left.Skip(1).Any(o => Enum.GetValues<BlankTurn>().Any(t => Ends(pieces[o.Mark], t).Near.Is(far))),
            BlankTurn.None);
        return (first with { Turn = useful }, false);
    }

    /// <summary>Overlap of the blanks along the board less what the kerf is longer along the board than across the cut.</summary>
    private static double Saving(Piece piece, Cut cut, double kerf)
    {
        var slant = (Math.Abs(Elementary.Tan(cut.Mitre)) * piece.Shape.Width)
            + (Math.Abs(Elementary.Tan(cut.Bevel) / Elementary.Cos(cut.Mitre)) * piece.Shape.Thickness);
        return Math.Max(0, slant - (kerf * ((1 / (Elementary.Cos(cut.Mitre) * Elementary.Cos(cut.Bevel))) - 1)));
    }

    /// <summary>Angles of both ends as the turned piece shows them; the normal of a cut points along the board at either end.</summary>
    private static (Cut Near, Cut Far) Ends(Piece piece, BlankTurn turn)
    {
        Cut near = Cut.Of(piece.Near), far = Cut.Of(piece.Far);
        return turn switch
        {
            BlankTurn.EndForEnd => (far with { Bevel = -far.Bevel }, near with { Bevel = -near.Bevel }),
            BlankTurn.EndForEndOver => (far with { Mitre = -far.Mitre }, near with { Mitre = -near.Mitre }),
            BlankTurn.Over => (new(-near.Mitre, -near.Bevel), new(-far.Mitre, -far.Bevel)),
            _ => (near, far),
        };
    }

    private readonly record struct Cut(double Mitre, double Bevel)
    {
        /// <summary>A cut on a block is none between neighbors: before it is made the piece is cut square to its length.</summary>
        public static Cut Of(EndCut cut) => cut.Wedge > 0 ? default : new(cut.Mitre, cut.Bevel);

        public bool IsSquare => Math.Abs(Mitre) < Tolerances.SameCut && Math.Abs(Bevel) < Tolerances.SameCut;

        public bool Is(Cut other) =>
            Math.Abs(Mitre - other.Mitre) < Tolerances.SameCut && Math.Abs(Bevel - other.Bevel) < Tolerances.SameCut;
    }
}
