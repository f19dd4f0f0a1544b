using System.Collections.Immutable;
using BridgeForm.Materials;
using BridgeForm.Pieces;
using BridgeForm.Project;
using BridgeForm.Quantities;
using BridgeForm.Stocking.Cutting;

namespace BridgeForm.Stocking;

/// <summary>
/// The stock plan: which boards to buy and how to cut them. Each stock and section is a cutting-stock problem of its own;
/// its objective is cost where the price list has a price for it, and length bought where it has none.
/// </summary>
public static class StockPlanner
{
    /// <summary>Plans all pieces. Same pieces, same plan.</summary>
    /// <param name="pieces">Pieces of the bridge.</param>
    /// <param name="parameters">Lengths on sale, kerf, trim, offcut, and whether neighbours on a board share cuts.</param>
    /// <param name="prices">The user's price list; null for none.</param>
    /// <param name="token">Asked while boards are filled.</param>
    public static StockPlan Plan(
        ImmutableArray<Piece> pieces, BridgeParameters parameters, PriceList? prices, CancellationToken token = default)
    {
        var plan = PlanSawn(pieces, parameters, prices, token);
        if (!parameters.Shop.ShareCuts)
        {
            return plan;
        }

        var byMark = pieces.ToDictionary(p => p.Mark, StringComparer.Ordinal);
        return new StockPlan(
            [.. plan.Jobs.Select(j => j with { Boards = [.. j.Boards.Select(b => SharedMitres.Find(b, byMark, parameters.Shop))] })]);
    }

    private static StockPlan PlanSawn(
        ImmutableArray<Piece> pieces, BridgeParameters parameters, PriceList? prices, CancellationToken token)
    {
        var jobs = ImmutableArray.CreateBuilder<StockJob>();
        var boards = 0;
        foreach (var group in pieces.GroupBy(p => new JobKey(p.Stock, p.Section)))
        {
            var offer = Offer.List(parameters.StockNamed(group.Key.Stock), group.Key.Section, parameters.Shop, prices);
            var job = Job([.. group], offer, parameters.Shop, boards + 1, token);
            boards += job.Boards.Length;
            jobs.Add(job);
        }

        return new StockPlan(jobs.ToImmutable());
    }

    private sealed record JobKey(string Stock, string Section);

    private static StockJob Job(ImmutableArray<Piece> pieces, Offer offer, ShopParameters shop, int firstNumber, CancellationToken token)
    {
        var classes = LengthClasses.Sort(LengthClasses.Blanks([.. pieces.Where(p => offer.Gives(p.BlankLength))], offer, shop));
        var result = Solve(classes, offer, shop.Kerf, token);
        var loads = result is null ? [] : BoardLoads.Fill(result.Value.Best.Plan, classes, offer, shop.Kerf);
        var boards = loads.Select((load, i) => BoardLayout.Lay(firstNumber + i, pieces[0].Section, load, offer, shop)).ToImmutableArray();
        var section = Sections.Of(pieces[0]);
        var bought = boards.Sum(b => b.Length);
        var volume = bought * section.Width * section.Thickness;
        var total = loads.Sum(l => offer.Costs[l.Board]);
        var proven = result is null || total <= result.Value.RoundedBound * (1 + Tolerances.RoundOff)
            || (result.Value.Best.Proven && !result.Value.Widened);
        return new StockJob
        {
            Stock = pieces[0].Stock,
            Section = pieces[0].Section,
            Boards = boards,
            TooLong = [
                .. pieces.Where(p => !offer.Gives(p.BlankLength))
                    .Select(p => new PieceTooLong(p.Mark, p.Occurrences.Length, p.BlankLength, offer.Longest)),
            ],
            ByPrice = offer.ByPrice,
            Total = total,
            Bound = result?.Bound ?? 0,
            RoundedBound = result?.RoundedBound ?? 0,
            Proven = proven,
            SearchEnded = !proven && result!.Value.Best.SearchEnded,
            Bought = bought,
            BoardFeet = boards.Sum(b => Lumber.BoardFeet(section, b.Length)),
            Volume = volume,
            Mass = volume * offer.Stock.Density.InService,
            FreshMass = volume * offer.Stock.Density.High,
            Spare = SpareOf(boards, section, offer.Stock),
        };
    }

    /// <summary>
    /// The share of a stock's boards that is bought besides, rounded up to whole boards, of the length that most boards of the
    /// plan have (the longer one of two): it gives any piece of the short ones too.
    /// </summary>
    private static SpareBoards? SpareOf(ImmutableArray<PlannedBoard> boards, Section section, StockParameters stock)
    {
        var count = (int)Math.Ceiling((boards.Length * stock.Spare) - Tolerances.WholeRatio);
        if (count <= 0)
        {
            return null;
        }

        var most = boards.GroupBy(b => b.Length).OrderByDescending(g => g.Count()).ThenByDescending(g => g.Key).First().First();
        var volume = count * most.Length * section.Width * section.Thickness;
        return new SpareBoards(
            count,
            most.Length,
            count * most.Price,
            count * Lumber.BoardFeet(section, most.Length),
            volume,
            volume * stock.Density.InService,
            volume * stock.Density.High);
    }

    /// <summary>
    /// The plan for the classes' longest blanks. Where they differ from their shortest, its bound is the larger of that of the
    /// shortest and of what the wood itself costs, so that it holds for the true lengths. Null when there is nothing to cut.
    /// </summary>
    private static (CuttingResult Best, double Bound, double RoundedBound, bool Widened)? Solve(
        ImmutableArray<LengthClass> classes, Offer offer, double kerf, CancellationToken token)
    {
        if (classes.IsEmpty)
        {
            return null;
        }

        var problem = new CuttingProblem(
            [.. classes.Select(c => c.Longest)],
            [.. classes.Select(c => c.Blanks.Length)],
            [.. offer.Usable.Zip(offer.Costs, (u, c) => new BoardSize(u, c))],
            kerf);
        var best = CuttingSolver.Solve(problem, token);
        if (classes.All(c => c.Longest - c.Shortest <= Tolerances.CutAlike))
        {
            return (best, best.Bound, best.RoundedBound, false);
        }

        var relaxed = problem with { Lengths = [.. classes.Select(c => c.Shortest)] };
        var wood = classes.Sum(c => c.Blanks.Sum(b => b.Length + kerf));
        var bound = Math.Max(ColumnGeneration.Solve(relaxed, []).Bound, wood * relaxed.LeastCostOfLength());
        return (best, bound, relaxed.RoundedUp(bound), true);
    }
}
