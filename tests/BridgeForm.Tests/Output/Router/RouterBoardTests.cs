using BridgeForm.Output.Router;
using BridgeForm.Pieces;
using BridgeForm.Project;
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
            Assert.Equal(board.Pieces.Length, outlines.Count);
            Assert.Equal(shop.Trim / Inch, outlines[0].Min(c => c.X), Written);
            foreach (var (outline, placed) in outlines.Zip(board.Pieces))
            {
                Assert.Equal(placed.BlankLength / Inch, outline.Max(c => c.X) - outline.Min(c => c.X), Written);
            }

            foreach (var (left, right) in outlines.Zip(outlines.Skip(1)))
            {
                Assert.Equal(Math.Max(shop.Kerf, shop.RouterBit) / Inch, right.Min(c => c.X) - left.Max(c => c.X), Written);
            }

            Assert.True(outlines[^1].Max(c => c.X) <= ((board.Length - shop.Trim) / Inch) + Written);
        }
    }

    [Fact]
    public void Boards_without_a_file_say_why()
    {
        foreach (var board in s_model.StockPlan.Boards)
        {
            var layout = RouterBoard.Of(board, s_pieces, s_model.Parameters.Shop);
            Assert.Equal(layout.Reason is null, layout.Sheet() is not null);
            Assert.Equal(layout.Reason?.StartsWith("not for the router", StringComparison.Ordinal) ?? false, board.Pieces.Any(p => !s_pieces[p.Mark].NotRoutable.IsEmpty));
        }

        Assert.Contains(s_model.StockPlan.Boards, b => RouterBoard.Of(b, s_pieces, s_model.Parameters.Shop).Reason is not null);
    }

    [Fact]
    public void A_full_board_has_no_room_for_a_bit_thicker_than_the_kerf()
    {
        var piece = s_model.Pieces.First(p => p.NotRoutable.IsEmpty);
        var shop = s_model.Parameters.Shop with { Trim = 0 };
        PlannedBoard Board(double gap) => new(
            1, piece.Stock, piece.Section, (2 * piece.BlankLength) + gap,
            [new(piece.Mark, "a", piece.BlankLength, 0), new(piece.Mark, "b", piece.BlankLength, piece.BlankLength + shop.Kerf)], 0, shop.Kerf, null);
        Assert.Contains("bit is thicker", RouterBoard.Of(Board(shop.Kerf), s_pieces, shop).Reason, StringComparison.Ordinal);
        Assert.Null(RouterBoard.Of(Board(shop.RouterBit), s_pieces, shop).Reason);
    }

    [Fact]
    public void Tabs_lie_across_the_end_cuts_and_only_when_asked_for()
    {
        var board = s_model.StockPlan.Boards.First(b => RouterBoard.Of(b, s_pieces, s_model.Parameters.Shop).Reason is null);
        var with = RouterBoard.Of(board, s_pieces, s_model.Parameters.Shop).Sheet()!.Entities.Where(e => e.Layer is "TAB-3.0MM").ToList();
        Assert.Equal(board.Pieces.Length + 1, with.Count);
        var without = RouterBoard.Of(board, s_pieces, s_model.Parameters.Shop with { Tabs = false }).Sheet()!;
        Assert.DoesNotContain(without.Entities, e => e.Layer.StartsWith("TAB", StringComparison.Ordinal));
        Assert.DoesNotContain(without.Layers, l => l.Name.StartsWith("TAB", StringComparison.Ordinal));
    }

    [Fact]
    public void Same_board_gives_the_same_bytes()
    {
        var board = s_model.StockPlan.Boards.First(b => RouterBoard.Of(b, s_pieces, s_model.Parameters.Shop).Reason is null);
        byte[] Bytes() => RouterFiles.Bytes(RouterBoard.Of(board, s_pieces, s_model.Parameters.Shop).Sheet()!, UnitSystem.Imperial);
        Assert.Equal(Bytes(), Bytes());
    }
}
