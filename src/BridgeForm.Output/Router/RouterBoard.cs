using System.Collections.Immutable;
using System.Globalization;
using BridgeForm.Output.Drawing;
using BridgeForm.Pieces;
using BridgeForm.Project;
using BridgeForm.Quantities;
using BridgeForm.Solids;
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
            [.. board.Pieces.Select(p => pieces[p.Mark]).Select(p => new NestedPiece(p, Routing.Setup(p.Shape, shop.Router), 0))];
        var wide = LiesWide(set);
        string? Obstacle(NestedPiece p) => p.Setup.Obstacles.IsEmpty
            ? p.Setup.IsWide == wide ? null : "lies on another face"
            : string.Join(", ", p.Setup.Obstacles);
        var (nested, end) = Nested(set, p => Obstacle(p) is null, shop);
        var left = set.Where(p => Obstacle(p) is not null).DistinctBy(p => p.Piece.Mark, StringComparer.Ordinal).ToList();
        var why = string.Join("; ", left.Select(p => $"{p.Piece.Mark}: {Obstacle(p)}"));
        var reason = nested.IsEmpty ? "not for the router: " + why
            : !shop.Router.HasRoomFor(board.Length, Across(nested[0])) ? "not for the router: the board is larger than its bed"
            : end > board.Length - shop.Trim + Tolerances.RoundOff
            ? "no room on the board for cuts as wide as the router bit, none of them shared"
            : null;
        return new RouterBoard(board, nested, shop)
        {
            Reason = reason,
            LeftOut = reason is null && left.Count > 0 ? "left for the saw: " + why : null,
        };
    }

    /// <summary>The sheet in the units of a file; null when there is a <see cref="Reason"/>.</summary>
    public Sheet? Sheet(UnitSystem system)
    {
        if (Reason is not null)
        {
            return null;
        }

        var layers = new RouterLayers(system);
        ImmutableArray<SheetEntity> cuts =
        [
            Blank(),
            .. _pieces.SelectMany(p => Cuts(p, system)).Aggregate(ImmutableList<SheetEntity>.Empty, Once),
            .. _shop.Tabs ? HoldingTabs.Place(_pieces, _board.Length, layers) : [],
        ];
        var used = RouterLayers.Gather(cuts);
        return new Sheet($"Board {_board.Number.ToString(CultureInfo.InvariantCulture)}", used, cuts)
        {
            Remarks = [.. Head(system), .. RouterRemarks.Tail(used, _pieces.MaxBy(p => p.Setup.Bit.Diameter)!.Setup.Bit, system)],
        };
    }

    /// <summary>The board, as wide as its pieces, which are cut along it.</summary>
    private SheetPolyline Blank()
    {
        var across = Across(_pieces[0]);
        return new(RouterLayers.Blank, [new(0, 0), new(_board.Length, 0), new(_board.Length, across), new(0, across)], true);
    }

    private static double Across(NestedPiece nested) => nested.Setup.IsWide ? nested.Piece.Shape.Width : nested.Piece.Shape.Thickness;

    private IEnumerable<string> Head(UnitSystem system)
    {
        var first = _pieces[0];
        yield return string.Create(CultureInfo.InvariantCulture, $"Board {_board.Number}, {_board.Stock} {_board.Section}");
        yield return "Pieces from the left: " + string.Join(", ", _pieces.Select(p => p.Piece.Mark));
        yield return $"{(first.Setup.IsWide ? "Wide" : "Narrow")} face up, "
            + $"{RouterRemarks.Exact(RouterRemarks.Height(first.Piece, first.Setup), system)} thick as it lies";
        if (!first.Setup.IsWide)
        {
            yield return "The ends are left for the saw";
        }

        if (LeftOut is not null)
        {
            yield return char.ToUpperInvariant(LeftOut[0]) + LeftOut[1..];
        }
    }

    /// <summary>Slots of neighbours that are the same slot are cut once.</summary>
    private static ImmutableList<SheetEntity> Once(ImmutableList<SheetEntity> before, SheetEntity next) =>
        next is SheetPolyline slot && before.Any(e => e is SheetPolyline other && IsSame(slot, other)) ? before : before.Add(next);

    private static bool IsSame(SheetPolyline one, SheetPolyline other) =>
        string.Equals(one.Layer, other.Layer, StringComparison.Ordinal)
        && one.Vertices.Length == other.Vertices.Length
        && one.Vertices.All(v => other.Vertices.Any(
            o => Math.Abs(o.X - v.X) < Tolerances.RoundOff && Math.Abs(o.Y - v.Y) < Tolerances.RoundOff));

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
            var before = i > 0 && routed(set[i - 1]) ? Reach(set[i - 1], set[i - 1].Piece.Shape.Far) : 0;
            var gap = Math.Max(shop.Kerf, Math.Max(before, now ? Reach(set[i], set[i].Piece.Shape.Near) : 0));
            var at = end + (i > 0 ? gap : 0);
            if (now)
            {
                nested.Add(set[i] with { Start = at });
            }

            end = at + set[i].Piece.BlankLength;
        }

        return (nested.ToImmutable(), end);
    }

    /// <summary>How far the slot of an end goes beyond it; the saw's ends have none.</summary>
    private static double Reach(NestedPiece piece, Plane end) =>
        piece.Setup.IsWide ? EndSlots.Reach(end, piece.Setup.Bit.Diameter) : 0;

    /// <summary>
    /// What is cut of a piece at its place. The board's own end needs no slot; a piece that lies on the board alone with its
    /// ends left for the saw shows its outline all the same.
    /// </summary>
    private IEnumerable<SheetEntity> Cuts(NestedPiece nested, UnitSystem system) =>
        new RouterCuts(system, _shop.Router.Engrave).Draw(nested.Piece, nested.Setup)
            .Select(e => Moved(string.Equals(e.Layer, RouterLayers.Blank, StringComparison.Ordinal)
                ? e with { Layer = RouterLayers.Piece } : e, nested.Start))
            .Where(e => e is not SheetPolyline line || !IsOff(line));

    private bool IsOff(SheetPolyline line) =>
        line.Vertices.All(v => v.X < Tolerances.RoundOff) || line.Vertices.All(v => v.X > _board.Length - Tolerances.RoundOff);

    private static SheetEntity Moved(SheetEntity entity, double dx) => entity switch
    {
        SheetPolyline p => p with { Vertices = [.. p.Vertices.Select(v => v with { X = v.X + dx })] },
        SheetCircle c => c with { Center = c.Center with { X = c.Center.X + dx } },
        _ => throw new NotSupportedException(entity.GetType().Name),
    };
}
