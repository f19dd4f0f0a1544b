using System.Collections.Immutable;
using System.Globalization;
using BridgeForm.Output.Drawing;
using BridgeForm.Pieces;
using BridgeForm.Project;
using BridgeForm.Stocking;

namespace BridgeForm.Output.Router;

/// <summary>A piece at its place on a board that lies on the router.</summary>
/// <param name="Piece">The piece.</param>
/// <param name="Setup">How it lies.</param>
/// <param name="Start">From the board's near end to its blank, metres.</param>
internal sealed record NestedPiece(Piece Piece, RouterSetup Setup, double Start);

/// <summary>
/// <c>boards/board-NN.dxf</c>: a board of the stock plan with its pieces laid out for the router. Where the bit is thicker
/// than the saw's kerf, pieces stand further apart than in the stock plan, by the bit.
/// </summary>
public sealed class RouterBoard
{
    // Lengths of pieces and boards carry round-off of some 1e-15 m.
    private const double Fit = 1e-9;

    private readonly ImmutableArray<NestedPiece> _pieces;
    private readonly ShopParameters _shop;
    private readonly PlannedBoard _board;

    private RouterBoard(PlannedBoard board, ImmutableArray<NestedPiece> pieces, ShopParameters shop, string? reason)
    {
        (_board, _pieces, _shop, Reason) = (board, pieces, shop, reason);
    }

    /// <summary>Why the board has no file; null when it has one.</summary>
    public string? Reason { get; }

    /// <summary>Path of its file in the output folder.</summary>
    /// <param name="board">The board.</param>
    /// <param name="plan">The plan it belongs to; its size sets the number of digits.</param>
    public static string FileName(PlannedBoard board, StockPlan plan)
    {
        var digits = Math.Max(2, plan.BoardCount.ToString(CultureInfo.InvariantCulture).Length);
        return $"boards/board-{board.Number.ToString(CultureInfo.InvariantCulture).PadLeft(digits, '0')}.dxf";
    }

    /// <summary>Lays a board out.</summary>
    /// <param name="board">A board of the plan.</param>
    /// <param name="pieces">The bridge's pieces by mark.</param>
    /// <param name="shop">Kerf, bit, trim, tabs.</param>
    public static RouterBoard Of(PlannedBoard board, IReadOnlyDictionary<string, Piece> pieces, ShopParameters shop)
    {
        var gap = Math.Max(shop.Kerf, shop.RouterBit);
        var at = shop.Trim;
        var nested = ImmutableArray.CreateBuilder<NestedPiece>();
        foreach (var placed in board.Pieces)
        {
            var piece = pieces[placed.Mark];
            nested.Add(new NestedPiece(piece, Routing.Setup(piece.Shape, shop.RouterBit), at));
            at += piece.BlankLength + gap;
        }

        return new RouterBoard(board, nested.ToImmutable(), shop, Why(nested, at - gap, board.Length - shop.Trim));
    }

    /// <summary>The sheet; null when there is a <see cref="Reason"/>.</summary>
    public Sheet? Sheet()
    {
        if (Reason is not null)
        {
            return null;
        }

        ImmutableArray<SheetEntity> cuts =
        [
            .. _pieces.SelectMany(Cuts),
            .. _shop.Tabs ? HoldingTabs.Of(_pieces, _board.Length, _shop.RouterBit) : [],
        ];
        return new Sheet($"Board {_board.Number.ToString(CultureInfo.InvariantCulture)}", RouterLayers.Of(cuts), cuts);
    }

    private static string? Why(ImmutableArray<NestedPiece>.Builder nested, double end, double room)
    {
        var unroutable = nested.Where(n => !n.Setup.Obstacles.IsEmpty).DistinctBy(n => n.Piece.Mark, StringComparer.Ordinal).ToList();
        if (unroutable.Count > 0)
        {
            return "not for the router: " + string.Join(
                "; ", unroutable.Select(n => $"{n.Piece.Mark}: {string.Join(", ", n.Setup.Obstacles)}"));
        }

        if (nested.Select(n => n.Setup.IsWide).Distinct().Count() > 1)
        {
            return "its pieces lie on different faces";
        }

        return end > room + Fit ? "the router bit is thicker than the saw cut, and the board has no room for it" : null;
    }

    private IEnumerable<SheetEntity> Cuts(NestedPiece nested) =>
        RouterCuts.Of(nested.Piece, nested.Setup, _shop.RouterBit).Select(e => Moved(e, nested.Start));

    private static SheetEntity Moved(SheetEntity entity, double dx) => entity switch
    {
        SheetPolyline p => p with { Vertices = [.. p.Vertices.Select(v => v with { X = v.X + dx })] },
        SheetCircle c => c with { Center = c.Center with { X = c.Center.X + dx } },
        _ => throw new NotSupportedException(entity.GetType().Name),
    };
}
