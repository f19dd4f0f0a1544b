using System.Globalization;
using BridgeForm.Output.Router;
using BridgeForm.Pieces;
using BridgeForm.Quantities;
using BridgeForm.Stocking;

namespace BridgeForm.Output.Tables;

/// <summary>
/// <c>stock-plan.csv</c>: one row a board with its pieces in the order of cutting; after the boards of each stock and section a
/// row with their sum, a row with the bound that no plan can beat and one with the spare boards; at the end one row for the whole
/// load.
/// </summary>
public static class StockPlanTable
{
    private static readonly string[] Head =
    [
        "Row", "Board", "Stock", "Section", "Length bought", "Length bought (mm)", "Number of pieces", "Pieces in order (blank length)",
        "Leftover", "Leftover (mm)", "Waste", "Waste (mm)", "Cost", "Volume", "Mass", "Mass (kg)", "Mass, fresh from treatment",
        "Mass, fresh from treatment (kg)",
        "Router file", "Note",
    ];

    /// <summary>The table as text. Leftover: offcut worth keeping; waste: saw cuts, trim and short offcuts.</summary>
    public static string Csv(BridgeModel model, DisplayUnits units)
    {
        var plan = model.StockPlan;
        var pieces = model.Pieces.ToDictionary(p => p.Mark, StringComparer.Ordinal);
        IEnumerable<IReadOnlyList<string>> rows =
        [
            .. plan.Jobs.SelectMany(job => job.Boards.Select(b => Board(b, model, pieces, units))
                .Concat(job.TooLong.Select(p => TooLong(job, p, units)))
                .Append(Sum(job, units))
                .Append(Bound(job, units))
                .Concat(job.Spare is { } spare ? [Spare(job, spare, units)] : [])),
            Load(plan, units),
        ];
        return CsvText.Write(Head, rows);
    }

    private static IReadOnlyList<string> Board(
        PlannedBoard board, BridgeModel model, IReadOnlyDictionary<string, Piece> pieces, DisplayUnits units)
    {
        var router = RouterBoard.Lay(board, pieces, model.Parameters.Shop);
        return
        [
            "board",
            Count(board.Number),
            CsvText.Users(board.Stock),
            board.Section,
            .. Bought(board.Length, units),
            Count(board.Pieces.Length),
            string.Join("; ", board.Pieces.Select(p => $"{p.Mark} {units.Length(p.BlankLength)}{Laid(p)}{Held(board, p, units)}")),
            .. Both(board.Leftover, units),
            .. Both(board.Waste, units),
            board.Price is { } price ? Money(price) : string.Empty,
            .. Enumerable.Repeat(string.Empty, 5),
            router.Reason is null ? RouterBoard.FileName(board, model.StockPlan) : "none",
            router.Reason ?? router.LeftOut ?? string.Empty,
        ];
    }

    /// <summary>How a piece lies on its board where cuts are shared; nothing for one that lies as drawn and has its own cuts.</summary>
    private static string Laid(BoardPiece piece)
    {
        string[] words =
        [
            .. piece.Turn is BlankTurn.None ? Array.Empty<string>() : [TurnWords(piece.Turn)],
            .. piece.SharesCut ? ["shares the cut before it"] : Array.Empty<string>(),
        ];
        return words.Length == 0 ? string.Empty : $" ({string.Join(", ", words)})";
    }

    /// <summary>What a short piece is held by until it is parted.</summary>
    private static string Held(PlannedBoard board, BoardPiece piece, DisplayUnits units) =>
        piece.RipsOn ? " (ripped in one length with the next, then cut apart)" : piece.Held <= 0 ? string.Empty
        : board.Pieces.Any(p => Math.Abs(p.Start - piece.Start - piece.BlankLength - piece.Held) < Tolerances.CutAlike)
        ? $" (two from one blank with the next, {units.Length(piece.Held)} between them to hold, parted last)"
        : $" ({units.Length(piece.Held)} more to hold it by, parted last)";

    private static string TurnWords(BlankTurn turn) => turn switch
    {
        BlankTurn.EndForEnd => "turned end for end, same face up",
        BlankTurn.EndForEndOver => "turned end for end, other face up",
        BlankTurn.Over => "rolled over",
        _ => throw new ArgumentOutOfRangeException(nameof(turn), turn, "No such turn."),
    };

    private static IReadOnlyList<string> TooLong(StockJob job, PieceTooLong piece, DisplayUnits units) =>
    [
        "error", string.Empty, CsvText.Users(job.Stock), job.Section, string.Empty, string.Empty,
        Count(piece.Quantity),
        $"{piece.Mark} {units.Length(piece.BlankLength)}",
        .. Enumerable.Repeat(string.Empty, 11),
        $"longer than every board on sale: the longest gives {units.Length(piece.Longest)}; not in this plan",
    ];

    private static IReadOnlyList<string> Sum(StockJob job, DisplayUnits units) =>
    [
        "sum",
        Count(job.Boards.Length),
        CsvText.Users(job.Stock),
        job.Section,
        .. Bought(job.Bought, units),
        Count(job.Boards.Sum(b => b.Pieces.Length)),
        string
            .Join("; ", job.Boards.GroupBy(b => b.Length).OrderBy(g => g.Key).Select(g => $"{Count(g.Count())} x {OnSale(g.Key, units)}")),
        .. Both(job.Boards.Sum(b => b.Leftover), units),
        .. Both(job.Boards.Sum(b => b.Waste), units),
        job.ByPrice ? Money(job.Total) : string.Empty,
        .. Wood(job.BoardFeet, job.Volume, job.Mass, job.FreshMass, units),
        string.Empty,
        job.Proven
            ? "no plan is better"
            : $"at most {Numbers.Fixed(job.Gap * 100, 2)} % above the best plan there can be"
                + (job.SearchEnded ? "; the search was ended at its limit, and a better plan may have been missed" : string.Empty),
    ];

    private static IReadOnlyList<string> Spare(StockJob job, SpareBoards spare, DisplayUnits units) =>
    [
        "spare",
        Count(spare.Count),
        CsvText.Users(job.Stock),
        job.Section,
        .. Bought(spare.Count * spare.Length, units),
        string.Empty,
        $"{Count(spare.Count)} x {OnSale(spare.Length, units)}",
        .. Enumerable.Repeat(string.Empty, 4),
        spare.Price is { } price ? Money(price) : string.Empty,
        .. Wood(spare.BoardFeet, spare.Volume, spare.Mass, spare.FreshMass, units),
        string.Empty,
        "for culls and mistakes, by the project file; in no board's row and in no sum but the load",
    ];

    private static IReadOnlyList<string> Bound(StockJob job, DisplayUnits units) =>
    [
        "lower bound", string.Empty, CsvText.Users(job.Stock), job.Section,
        .. job.ByPrice ? [string.Empty, string.Empty] : Bought(job.Bound, units),
        .. Enumerable.Repeat(string.Empty, 6),
        job.ByPrice ? Money(job.Bound) : string.Empty,
        .. Enumerable.Repeat(string.Empty, 6),
        $"linear relaxation by column generation: no plan can do with less; in whole boards "
            + (job.ByPrice ? Money(job.RoundedBound) : OnSale(job.RoundedBound, units))
            + $"; this plan lies {Numbers.Fixed(job.Gap * 100, 2)} % above the bound",
    ];

    private static IReadOnlyList<string> Load(StockPlan plan, DisplayUnits units) =>
    [
        "load",
        Count(plan.BoardCount + plan.Jobs.Sum(j => j.Spare?.Count ?? 0)),
        .. Enumerable.Repeat(string.Empty, 2),
        .. Bought(plan.Jobs.Sum(j => j.Bought + ((j.Spare?.Count ?? 0) * (j.Spare?.Length ?? 0))), units),
        Count(plan.Boards.Sum(b => b.Pieces.Length)),
        string.Empty,
        .. Both(plan.Boards.Sum(b => b.Leftover), units),
        .. Both(plan.Boards.Sum(b => b.Waste), units),
        plan.Jobs.Any(j => j.ByPrice)
            ? Money(plan.Boards.Sum(b => b.Price ?? 0) + plan.Jobs.Sum(j => j.Spare?.Price ?? 0)) : string.Empty,
        .. Wood(
            plan.Jobs.Sum(j => j.BoardFeet + (j.Spare?.BoardFeet ?? 0)),
            plan.Jobs.Sum(j => j.Volume + (j.Spare?.Volume ?? 0)),
            plan.Jobs.Sum(j => j.Mass + (j.Spare?.Mass ?? 0)),
            plan.Jobs.Sum(j => j.FreshMass + (j.Spare?.FreshMass ?? 0)),
            units),
        string.Empty,
        (IsMetric(units) ? "volume of boards by dressed size" : "board feet by nominal size (PS 20)") + "; carry home by the fresh mass"
            + (
                plan.Jobs.Any(j => j.ByPrice) && plan.Jobs
                    .Any(j => !j.ByPrice) ? "; stocks without prices are not in the cost" : string.Empty),
    ];

    // As the yard counts: nobody who buys in millimetres counts in board feet.
    private static IReadOnlyList<string> Wood(double boardFeet, double volume, double mass, double fresh, DisplayUnits units) =>
    [
        IsMetric(units) ? Numbers.Fixed(volume, 3) + " m3" : Numbers.Fixed(boardFeet, 1) + " board feet",
        units.Mass(mass), Numbers.Fixed(mass, 1), units.Mass(fresh), Numbers.Fixed(fresh, 1),
    ];

    private static IReadOnlyList<string> Both(double metres, DisplayUnits units) =>
        [units.Length(metres), Numbers.Fixed(metres * 1000, 1)];

    private static IReadOnlyList<string> Bought(double metres, DisplayUnits units) =>
        [OnSale(metres, units), Numbers.Fixed(metres * 1000, 1)];

    /// <summary>Lengths of boards as they are sold: in feet and inches, whole feet without inches; or in millimetres.</summary>
    private static string OnSale(double metres, DisplayUnits units)
    {
        var text = new QuantityText(units.System).Length(metres);
        return text.EndsWith(" ft 0 in", StringComparison.Ordinal) ? text[..^" 0 in".Length] : text;
    }

    private static bool IsMetric(DisplayUnits units) => units.System == UnitSystem.Metric;

    private static string Money(double price) => NumberText.Fixed(price, 2);

    private static string Count(int n) => n.ToString(CultureInfo.InvariantCulture);
}
