using System.Collections.Immutable;

namespace BridgeForm.Stocking;

/// <summary>Which boards to buy and how to cut them; one job for each stock and section.</summary>
/// <param name="Jobs">In the order in which their first piece appears.</param>
public sealed record StockPlan(ImmutableArray<StockJob> Jobs)
{
    /// <summary>All boards, numbered through from 1.</summary>
    public IEnumerable<PlannedBoard> Boards => Jobs.SelectMany(j => j.Boards);

    /// <summary>How many boards to buy.</summary>
    public int BoardCount => Jobs.Sum(j => j.Boards.Length);

    /// <summary>
    /// What all boards cost, spare ones with them, in the money of the price list; null without boards, and where one has no price.
    /// </summary>
    public double? Price => Boards.Select(b => b.Price).ToList() is { Count: > 0 } each && each.TrueForAll(p => p is not null)
        ? each.Sum() + Jobs.Sum(j => j.Spare?.Price ?? 0) : null;

    /// <summary>Pieces that no board on sale is long enough for; they are in no plan.</summary>
    public IEnumerable<PieceTooLong> TooLong => Jobs.SelectMany(j => j.TooLong);
}

/// <summary>All pieces of one stock and section, and the boards they are cut from.</summary>
public sealed record StockJob
{
    /// <summary>Name of the stock.</summary>
    public required string Stock { get; init; }

    /// <summary>Name of the section.</summary>
    public required string Section { get; init; }

    /// <summary>Boards to buy, in the order of cutting.</summary>
    public required ImmutableArray<PlannedBoard> Boards { get; init; }

    /// <summary>Pieces left out, because no board on sale is long enough.</summary>
    public required ImmutableArray<PieceTooLong> TooLong { get; init; }

    /// <summary>The plan is for the least cost, in the price list's money; false: for the least length bought, in metres.</summary>
    public required bool ByPrice { get; init; }

    /// <summary>Cost or length of all boards, as <see cref="ByPrice"/> says.</summary>
    public required double Total { get; init; }

    /// <summary>No plan can have a smaller total: value of the linear relaxation (Gilmore and Gomory, 1961).</summary>
    public required double Bound { get; init; }

    /// <summary>The same bound, rounded up to what whole boards add up to.</summary>
    public required double RoundedBound { get; init; }

    /// <summary>No plan is better than this one.</summary>
    public required bool Proven { get; init; }

    /// <summary>The search was ended at its counted limit: a better plan may have been missed.</summary>
    public bool SearchEnded { get; init; }

    /// <summary>Length of all boards, metres.</summary>
    public required double Bought { get; init; }

    /// <summary>Board feet of all boards (PS 20: nominal sizes).</summary>
    public required double BoardFeet { get; init; }

    /// <summary>Volume of all boards by dressed size, m³.</summary>
    public double Volume { get; init; }

    /// <summary>Mass of all boards at moisture in service, kilograms.</summary>
    public required double Mass { get; init; }

    /// <summary>Mass of all boards freshly treated or green, kilograms: the load to carry home.</summary>
    public required double FreshMass { get; init; }

    /// <summary>Boards to buy besides, for culls and mistakes; null for none. No other figure of the job counts them.</summary>
    public SpareBoards? Spare { get; init; }

    /// <summary>How far the total lies above the bound, as a share of it; 0 for no boards.</summary>
    public double Gap => Bound > 0 ? (Total / Bound) - 1 : 0;
}

/// <summary>Boards that are bought and have no place in the plan: all of the length that the plan takes most of.</summary>
/// <param name="Count">How many.</param>
/// <param name="Length">Length of each, metres.</param>
/// <param name="Price">What all of them cost; null without a price list.</param>
/// <param name="BoardFeet">Board feet of all of them.</param>
/// <param name="Volume">Volume of all of them by dressed size, m³.</param>
/// <param name="Mass">Mass of all of them at moisture in service, kilograms.</param>
/// <param name="FreshMass">Mass of all of them freshly treated or green, kilograms.</param>
public sealed record SpareBoards(
    int Count, double Length, double? Price, double BoardFeet, double Volume, double Mass, double FreshMass);

/// <summary>A board to buy. Metres.</summary>
/// <param name="Number">From 1, through all jobs.</param>
/// <param name="Stock">Name of the stock.</param>
/// <param name="Section">Name of the section.</param>
/// <param name="Length">Length bought.</param>
/// <param name="Pieces">What is cut from it, from its near end on.</param>
/// <param name="Leftover">Offcut worth keeping; 0 when it is shorter than <c>shop.offcut</c>.</param>
/// <param name="Waste">Saw cuts, trim, and an offcut not worth keeping.</param>
/// <param name="Price">What it costs; null without a price list.</param>
public sealed record PlannedBoard(
    int Number,
    string Stock,
    string Section,
    double Length,
    ImmutableArray<BoardPiece> Pieces,
    double Leftover,
    double Waste,
    double? Price);

/// <summary>A piece on a board.</summary>
/// <param name="Mark">Mark of the piece.</param>
/// <param name="Id">Which of its occurrences, such as <c>F03/post-left</c>.</param>
/// <param name="BlankLength">Length of its blank, metres.</param>
/// <param name="Start">From the board's near end to the blank, metres.</param>
public sealed record BoardPiece(string Mark, string Id, double BlankLength, double Start)
{
    /// <summary>How it lies on the board; always as it is unless cuts are shared.</summary>
    public BlankTurn Turn { get; init; }

    /// <summary>
    /// Wood after it to clamp it by, metres, parted last; 0 for none. Where the next piece has the same mark and stands so far behind
    /// it, both are cut from one blank.
    /// </summary>
    public double Held { get; init; }

    /// <summary>A packer that is ripped in one length with the piece after it, before the two are cut apart.</summary>
    public bool RipsOn { get; init; }

    /// <summary>Its near end is made by the same cut as the far end of the piece before it; their blanks overlap.</summary>
    public bool SharesCut { get; init; }
}

/// <summary>A piece that no board on sale is long enough for.</summary>
/// <param name="Mark">Mark of the piece.</param>
/// <param name="Quantity">How many are needed.</param>
/// <param name="BlankLength">Length of its blank, metres.</param>
/// <param name="Longest">Usable length of the longest board on sale, metres.</param>
public sealed record PieceTooLong(string Mark, int Quantity, double BlankLength, double Longest);
