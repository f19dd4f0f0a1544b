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

            var outlines = new Dxf.DxfFile(bytes).Entities.Where(e => e.First(8) is "OUTLINE").Select(Outlines.Corners).ToList();
            var wide = Math.Max(shop.Kerf, shop.RouterBit) / Inch;
            var (at, k) = (shop.Trim / Inch, 0);
            for (var i = 0; i < board.Pieces.Length; i++)
            {
                // A cut as wide as the bit beside everything it cuts, one as wide as the saw's between what is left for it.
                at += i == 0 ? 0 : IsCut(board, i) || IsCut(board, i - 1) ? wide : shop.Kerf / Inch;
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
            Assert.Equal(layout.Reason is null, layout.Sheet() is not null);
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

    private static bool IsCut(PlannedBoard board, int index) => s_pieces[board.Pieces[index].Mark].NotRoutable.IsEmpty;

    [Fact]
    public void A_full_board_has_no_room_for_a_bit_thicker_than_the_kerf()
    {
        var piece = s_model.Pieces.First(p => p.NotRoutable.IsEmpty);
        var shop = s_model.Parameters.Shop with { Trim = 0 };
        PlannedBoard Board(double gap) => new(
            1, piece.Stock, piece.Section, (2 * piece.BlankLength) + gap,
            [new(piece.Mark, "a", piece.BlankLength, 0), new(piece.Mark, "b", piece.BlankLength, piece.BlankLength + shop.Kerf)], 0,
            shop.Kerf, null);
        Assert.Contains("no room", RouterBoard.Lay(Board(shop.Kerf), s_pieces, shop).Reason, StringComparison.Ordinal);
        Assert.Null(RouterBoard.Lay(Board(shop.RouterBit), s_pieces, shop).Reason);
    }

    [Fact]
    public void Tabs_lie_across_the_end_cuts_and_only_when_asked_for()
    {
        var board = s_model.StockPlan.Boards.First(
            b => RouterBoard.Lay(b, s_pieces, s_model.Parameters.Shop) is { Reason: null, LeftOut: null });
        var with = RouterBoard.Lay(board, s_pieces, s_model.Parameters.Shop).Sheet()!.Entities.Where(e => e.Layer is "TAB-3.0MM").ToList();
        Assert.Equal(board.Pieces.Length + 1, with.Count);
        var without = RouterBoard.Lay(board, s_pieces, s_model.Parameters.Shop with { Tabs = false }).Sheet()!;
        Assert.DoesNotContain(without.Entities, e => e.Layer.StartsWith("TAB", StringComparison.Ordinal));
        Assert.DoesNotContain(without.Layers, l => l.Name.StartsWith("TAB", StringComparison.Ordinal));
    }

    [Fact]
    public void Same_board_gives_the_same_bytes()
    {
        var board = s_model.StockPlan.Boards.First(b => RouterBoard.Lay(b, s_pieces, s_model.Parameters.Shop).Reason is null);
        byte[] Bytes() => RouterFiles.Bytes(RouterBoard.Lay(board, s_pieces, s_model.Parameters.Shop).Sheet()!, UnitSystem.Imperial);
        Assert.Equal(Bytes(), Bytes());
    }
}
