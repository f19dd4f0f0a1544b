using System.Collections.Immutable;
using System.Globalization;
using BridgeForm.Output.Drawing;
using BridgeForm.Pieces;
using BridgeForm.Project;
using BridgeForm.Quantities;
using BridgeForm.Stocking;

namespace BridgeForm.Output.Router;

/// <summary>A piece at its place on a board that lies on the router.</summary>
/// <param name="Piece">The piece.</param>
/// <param name="Setup">How it lies.</param>
/// <param name="Start">From the board's near end to its blank, metres.</param>
internal sealed record NestedPiece(Piece Piece, RouterSetup Setup, double Start);

/// <summary>
/// <c>boards/board-NN.dxf</c>: a board of the stock plan with its pieces laid out for the router. Where the bit is thicker
/// than the saw's kerf, pieces that it cuts stand further apart than in the stock plan, by the bit. Pieces that it cannot make
/// keep their place on the board and are left for the saw.
/// </summary>
public sealed class RouterBoard
{
    private readonly ImmutableArray<NestedPiece> _pieces;
    private readonly ShopParameters _shop;
    private readonly PlannedBoard _board;

    private RouterBoard(PlannedBoard board, ImmutableArray<NestedPiece> pieces, ShopParameters shop)
    {
        (_board, _pieces, _shop) = (board, pieces, shop);
    }

    /// <summary>Why the board has no file; null when it has one.</summary>
    public string? Reason { get; private init; }

    /// <summary>Which of its pieces are not in the file, and why; null when all are, or when there is no file.</summary>
    public string? LeftOut { get; private init; }

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
    public static RouterBoard Lay(PlannedBoard board, IReadOnlyDictionary<string, Piece> pieces, ShopParameters shop)
    {
        ImmutableArray<NestedPiece> set =
            [.. board.Pieces.Select(p => pieces[p.Mark]).Select(p => new NestedPiece(p, Routing.Setup(p.Shape, shop.RouterBit), 0))];
        var wide = LiesWide(set);
        string? Obstacle(NestedPiece p) => p.Setup.Obstacles.IsEmpty
            ? p.Setup.IsWide == wide ? null : "lies on another face"
            : string.Join(", ", p.Setup.Obstacles);
        var (nested, end) = Nested(set, p => Obstacle(p) is null, shop);
        var left = set.Where(p => Obstacle(p) is not null).DistinctBy(p => p.Piece.Mark, StringComparer.Ordinal).ToList();
        var why = string.Join("; ", left.Select(p => $"{p.Piece.Mark}: {Obstacle(p)}"));
        var reason = nested.IsEmpty ? "not for the router: " + why
            : end > board.Length - shop.Trim + Tolerances.RoundOff
            ? "no room on the board for cuts as wide as the router bit, none of them shared"
            : null;
        return new RouterBoard(board, nested, shop)
        {
            Reason = reason,
            LeftOut = reason is null && left.Count > 0 ? "left for the saw: " + why : null,
        };
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
            .. _shop.Tabs ? HoldingTabs.Place(_pieces, _board.Length, _shop.RouterBit) : [],
        ];
        return new Sheet($"Board {_board.Number.ToString(CultureInfo.InvariantCulture)}", RouterLayers.Gather(cuts), cuts);
    }

    /// <summary>The kind of face on which most of a board's routable pieces lie; the wide one when both have as many.</summary>
    private static bool LiesWide(ImmutableArray<NestedPiece> set)
    {
        var routable = set.Where(p => p.Setup.Obstacles.IsEmpty).ToList();
        return 2 * routable.Count(p => p.Setup.IsWide) >= routable.Count;
    }

    /// <summary>The pieces that are routed, each at its place, and where the last piece of the board ends.</summary>
    private static (ImmutableArray<NestedPiece> Routed, double End) Nested(
        ImmutableArray<NestedPiece> set, Func<NestedPiece, bool> routed, ShopParameters shop)
    {
        var nested = ImmutableArray.CreateBuilder<NestedPiece>();
        var end = shop.Trim;
        for (var i = 0; i < set.Length; i++)
        {
            var now = routed(set[i]);
            var gap = now || (i > 0 && routed(set[i - 1])) ? Math.Max(shop.Kerf, shop.RouterBit) : shop.Kerf;
            var at = end + (i > 0 ? gap : 0);
            if (now)
            {
                nested.Add(set[i] with { Start = at });
            }

            end = at + set[i].Piece.BlankLength;
        }

        return (nested.ToImmutable(), end);
    }

    private IEnumerable<SheetEntity> Cuts(NestedPiece nested) =>
        RouterCuts.Draw(nested.Piece, nested.Setup, _shop.RouterBit).Select(e => Moved(e, nested.Start));

    private static SheetEntity Moved(SheetEntity entity, double dx) => entity switch
    {
        SheetPolyline p => p with { Vertices = [.. p.Vertices.Select(v => v with { X = v.X + dx })] },
        SheetCircle c => c with { Center = c.Center with { X = c.Center.X + dx } },
        _ => throw new NotSupportedException(entity.GetType().Name),
    };
}
