using BridgeForm.Output.Router;
using BridgeForm.Pieces;
using BridgeForm.Quantities;
using BridgeForm.Stocking;

namespace BridgeForm.Tests.Output.Router;

public sealed class RouterBoardTests
{
    private const double Inch = 0.0254;
    private const double Written = 2e-6;

    private static readonly BridgeModel s_model = RouterFiles.Garden;
    private static readonly Dictionary<string, Piece> s_pieces = s_model.Pieces.ToDictionary(p => p.Mark);

    [Fact]
    public void Boards_hold_the_pieces_of_the_plan_in_order_at_least_a_cut_apart()
    {
        var shop = s_model.Parameters.Shop;
        foreach (var board in s_model.StockPlan.Boards)
        {
            if (!RouterFiles.All.TryGetValue("garden/" + RouterBoard.FileName(board, s_model.StockPlan), out var bytes))
            {
                continue;
            }

            var outlines = new Dxf.DxfFile(bytes).Entities.Where(e => e.First(8) is "PIECE").Select(Outlines.Corners).ToList();
            var wide = 1.05 * shop.RouterBit / Inch;
            var (at, k) = (shop.Trim / Inch, 0);
            for (var i = 0; i < board.Pieces.Length; i++)
            {
                // A slot beside everything that the bit cuts, as wide as the slant of the end makes it; else a saw cut.
                var slant = Math.Min(
                    i > 0 && IsCut(board, i - 1) ? Math.Cos(s_pieces[board.Pieces[i - 1].Mark].Far.Mitre) : 1,
                    IsCut(board, i) ? Math.Cos(s_pieces[board.Pieces[i].Mark].Near.Mitre) : 1);
                var parted = IsParted(board, i) || (i > 0 && IsParted(board, i - 1));
                at += i == 0 ? 0 : parted ? Math.Max(wide / slant, shop.Kerf / Inch) : shop.Kerf / Inch;
                if (IsCut(board, i))
                {
                    Assert.Equal(at, outlines[k].Min(c => c.X), Written);
                    Assert.Equal(board.Pieces[i].BlankLength / Inch, outlines[k].Max(c => c.X) - outlines[k].Min(c => c.X), Written);
                    k++;
                }

                at += board.Pieces[i].BlankLength / Inch;
            }

            Assert.Equal(k, outlines.Count);
            Assert.True(outlines[^1].Max(c => c.X) <= ((board.Length - shop.Trim) / Inch) + Written);
        }
    }

    [Fact]
    public void Boards_without_a_file_say_why()
    {
        foreach (var board in s_model.StockPlan.Boards)
        {
            var layout = RouterBoard.Lay(board, s_pieces, s_model.Parameters.Shop);
            Assert.Equal(layout.Reason is null, layout.Sheet(UnitSystem.Imperial) is not null);
            var sawn = board.Pieces.Select(p => p.Mark).Where(m => !s_pieces[m].NotRoutable.IsEmpty).Distinct().ToList();
            Assert.Equal(
                sawn.Count == board.Pieces.Select(p => p.Mark).Distinct().Count(),
                layout.Reason?.StartsWith("not for the router", StringComparison.Ordinal) ?? false);
            if (layout.Reason?.StartsWith("no room", StringComparison.Ordinal) ?? false)
            {
                continue;
            }

            Assert.All(sawn, m => Assert.Contains(m + ": ", layout.Reason ?? layout.LeftOut, StringComparison.Ordinal));
        }

        Assert.Contains(s_model.StockPlan.Boards, b => RouterBoard.Lay(b, s_pieces, s_model.Parameters.Shop).Reason is not null);
        Assert.Contains(s_model.StockPlan.Boards, b => RouterBoard.Lay(b, s_pieces, s_model.Parameters.Shop).LeftOut is not null);
    }

    private static bool IsParted(PlannedBoard board, int index) => IsCut(board, index)
        && Routing.Setup(s_pieces[board.Pieces[index].Mark].Shape, s_model.Parameters.Shop.Router).IsWide;

    private static bool IsCut(PlannedBoard board, int index) => s_pieces[board.Pieces[index].Mark].NotRoutable.IsEmpty;

    [Fact]
    public void A_full_board_has_no_room_for_a_bit_thicker_than_the_kerf()
    {
        var shop = s_model.Parameters.Shop with { Trim = 0 };
        var piece = s_model.Pieces.First(p => Routing.Setup(p.Shape, shop.Router) is { Obstacles.IsEmpty: true, IsWide: true });
        var slot = 1.05 * shop.RouterBit / Math.Min(Math.Cos(piece.Near.Mitre), Math.Cos(piece.Far.Mitre));
        PlannedBoard Board(double gap) => new(
            1, piece.Stock, piece.Section, (2 * piece.BlankLength) + gap,
            [new(piece.Mark, "a", piece.BlankLength, 0), new(piece.Mark, "b", piece.BlankLength, piece.BlankLength + shop.Kerf)], 0,
            shop.Kerf, null);
        Assert.Contains("no room", RouterBoard.Lay(Board(shop.Kerf), s_pieces, shop).Reason, StringComparison.Ordinal);
        Assert.Null(RouterBoard.Lay(Board(slot), s_pieces, shop).Reason);
    }

    [Fact]
    public void Tabs_lie_across_the_end_cuts_and_only_when_asked_for()
    {
        var (piece, shop) = (RouterFiles.Notched, s_model.Parameters.Shop);
        var pieces = new Dictionary<string, Piece>(StringComparer.Ordinal) { [piece.Mark] = piece };
        var length = piece.BlankLength;
        var board = new PlannedBoard(
            1, piece.Stock, piece.Section, (2 * length) + 0.5, [new(piece.Mark, "a", length, 0), new(piece.Mark, "b", length, length)], 0,
            shop.Kerf, null);

        // One in each of the three cuts that part two square pieces from wood: neighbours share the one between them.
        var with = RouterBoard.Lay(board, pieces, shop).Sheet(UnitSystem.Imperial)!.Entities
            .Where(e => e.Layer is "LEAVE-0.118-IN-HIGH").ToList();
        Assert.Equal(3, with.Count);
        var without = RouterBoard.Lay(board, pieces, shop with { Tabs = false }).Sheet(UnitSystem.Imperial)!;
        Assert.DoesNotContain(without.Entities, e => e.Layer.StartsWith("LEAVE", StringComparison.Ordinal));
        Assert.DoesNotContain(without.Layers, l => l.Name.StartsWith("LEAVE", StringComparison.Ordinal));
    }

    [Fact]
    public void Same_board_gives_the_same_bytes()
    {
        var board = s_model.StockPlan.Boards.First(b => RouterBoard.Lay(b, s_pieces, s_model.Parameters.Shop).Reason is null);
        byte[] Bytes() => RouterFiles.Bytes(
            RouterBoard.Lay(board, s_pieces, s_model.Parameters.Shop).Sheet(UnitSystem.Imperial)!, UnitSystem.Imperial);
        Assert.Equal(Bytes(), Bytes());
    }

    // Slots, notches and pockets take wood that no piece needs: no corner of one lies inside the outline of another piece, and
    // each piece keeps its whole area. A bit that went half its width too far would show here.
    [Fact]
    public void Nothing_that_is_cut_through_reaches_into_a_piece()
    {
        var slots = 0;
        foreach (var (name, bytes) in RouterFiles.All.Where(f => f.Key.Contains("/boards/", StringComparison.Ordinal)))
        {
            var entities = new Dxf.DxfFile(bytes).Entities.ToList();
            var pieces = entities.Where(e => e.First(8) is "PIECE").Select(Outlines.Corners).ToList();
            foreach (var corner in entities.Where(e => e.First(8) is "CLEAR-THROUGH").SelectMany(Outlines.Corners))
            {
                Assert.All(pieces, p => Assert.False(Outlines.IsDeepInside(p, corner, 10 * Written), name));
                slots++;
            }
        }

        Assert.True(slots > 40);
    }

    [Fact]
    public void Square_neighbours_share_one_slot_and_the_boards_own_end_has_none()
    {
        var piece = RouterFiles.Notched;
        var pieces = new Dictionary<string, Piece>(StringComparer.Ordinal) { [piece.Mark] = piece };
        var shop = s_model.Parameters.Shop with { Trim = 0, Tabs = false };
        var length = piece.BlankLength;
        var slot = 1.05 * shop.RouterBit;
        PlannedBoard Board(double more) => new(
            1, piece.Stock, piece.Section, (2 * length) + slot + more,
            [new(piece.Mark, "a", length, 0), new(piece.Mark, "b", length, length + shop.Kerf)], 0, shop.Kerf, null);
        int Slots(double more) => RouterBoard.Lay(Board(more), pieces, shop).Sheet(UnitSystem.Imperial)!.Entities
            .Count(e => e.Layer is "CLEAR-THROUGH") - (2 * piece.Shape.Channels.Length);
        Assert.Equal(1, Slots(0));
        Assert.Equal(2, Slots(0.5));
    }

    [Fact]
    public void A_board_larger_than_the_bed_has_no_file()
    {
        var board = s_model.StockPlan.Boards.First(b => RouterBoard.Lay(b, s_pieces, s_model.Parameters.Shop).Reason is null);
        var shop = s_model.Parameters.Shop;
        RouterBoard Lay(double length) => RouterBoard.Lay(
            board, s_pieces, shop with { Router = shop.Router with { BedLength = length } });
        Assert.Contains("larger than its bed", Lay(board.Length - 0.001).Reason, StringComparison.Ordinal);
        Assert.Null(Lay(board.Length).Reason);
    }
}
