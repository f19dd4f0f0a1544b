using BridgeForm.Stocking.Cutting;
using CsCheck;

namespace BridgeForm.Tests.Stocking.Cutting;

public class CuttingSolverTests
{
    private const double Kerf = 0.003175;

    // Metres or money, of sums of some hundred boards.
    private const double RoundOff = 1e-6;

    private static readonly double[] Boards = [2.4384, 3.048, 3.6576, 4.2672, 4.8768];

    private static readonly Gen<(double[] Lengths, int[] Demand)> Pieces =
        from count in Gen.Int[1, 40]
        from lengths in Gen.Int[1500, 24000].Array[count]
        from demand in Gen.Int[1, 20].Array[count]
        select (Distinct(lengths), demand);

    [Fact]
    public void One_board_length_takes_at_most_one_board_more_than_the_bound_rounded_up() => Pieces.OnFixed(
        40,
        p =>
        {
            var problem = Problem(p.Lengths, p.Demand, [4.8768], [1]);
            var result = Solved(problem);
            Assert.InRange(result.Plan.Cost, Math.Ceiling(result.Bound - RoundOff), Math.Ceiling(result.Bound - RoundOff) + 1);
        });

    [Fact]
    public void Several_board_lengths_cost_close_to_the_bound() =>
        (from p in Pieces from prices in Gen.Double[1.5, 3.5].Array[Boards.Length] select (p.Lengths, p.Demand, prices)).OnFixed(
            30,
            p =>
            {
                double[] costs = [.. Boards.Select((b, i) => Math.Round(b * p.prices[i], 2))];
                var result = Solved(Problem(p.Lengths, p.Demand, Boards, costs));
                Assert.InRange(result.Plan.Cost, result.Bound - RoundOff, result.Bound + Math.Max(0.015 * result.Bound, costs[^1]));
            });

    // The oracle knows nothing of patterns or prices: it puts one piece after the other onto every board there is.
    [Fact]
    public void Small_jobs_are_cut_as_cheaply_as_trying_everything_finds() =>
        (from lengths in Gen.Int[4000, 24000].Array[2, 7] select lengths).OnFixed(
            60,
            lengths =>
            {
                double[] pieces = [.. lengths.Select(l => l / 1e4).OrderDescending()];
                double[] boards = [2.4384, 3.6576, 4.8768], costs = [2.5, 3.5, 4.9];
                var groups = pieces.GroupBy(l => l).ToList();
                var result = Solved(Problem([.. groups.Select(g => g.Key)], [.. groups.Select(g => g.Count())], boards, costs));
                var best = Everything.Cheapest(pieces, boards, costs, Kerf);
                Assert.Equal(best, result.Plan.Cost, RoundOff);
                Assert.InRange(result.Bound, 0, best + RoundOff);
            });

    [Fact]
    public void Last_piece_needs_no_cut_when_it_ends_with_the_board()
    {
        var exact = Solved(Problem([1.0], [4], [(2 * 1.0) + Kerf], [1]));
        Assert.Equal(2, exact.Plan.Cost, RoundOff);
        var short1 = Solved(Problem([1.0], [4], [(2 * 1.0) + Kerf - 1e-4], [1]));
        Assert.Equal(4, short1.Plan.Cost, RoundOff);
    }

    // Three pieces of two fifths: the relaxation thinks of half-empty boards, whole boards hold two.
    [Fact]
    public void Bound_is_that_of_fractions_and_rounds_up_to_whole_boards()
    {
        var result = Solved(new CuttingProblem([0.4], [3], [new BoardSize(1, 10)], 0));
        Assert.Equal(15, result.Bound, RoundOff);
        Assert.Equal(20, result.RoundedBound, RoundOff);
        Assert.Equal(20, result.Plan.Cost, RoundOff);
        Assert.True(result.Proven);
    }

    [Fact]
    public void Same_problem_gives_the_same_plan() => Pieces.OnFixed(
        40,
        p =>
        {
            var problem = Problem(p.Lengths, p.Demand, Boards, Boards);
            var (a, b) = (CuttingSolver.Solve(problem), CuttingSolver.Solve(problem));
            Assert.Equal(a.Plan.Patterns.Select(Text), b.Plan.Patterns.Select(Text));
        });

    // Halving every length, the kerf and the boards changes nothing but the unit.
    [Fact]
    public void Bound_scales_with_the_unit() => Pieces.OnFixed(
        40,
        p =>
        {
            var whole = ColumnGeneration.Solve(Problem(p.Lengths, p.Demand, Boards, Boards), []).Bound;
            var half = ColumnGeneration.Solve(
                new CuttingProblem(
                    [.. p.Lengths.Select(l => l / 2)], [.. p.Demand], [.. Boards.Select(b => new BoardSize(b / 2, b))], Kerf / 2),
                []).Bound;
            Assert.Equal(whole, half, whole * 1e-6);
        });

    /// <summary>On the grid, rounded up and down, stand below and above the best filling; the one rounded up fits.</summary>
    [Fact]
    public void A_filling_on_the_grid_bounds_the_best_one() =>
        (from p in Pieces from values in Gen.Double[0.1, 1].Array[40] select (p.Lengths, p.Demand, values)).OnFixed(
            40,
            p =>
            {
                var problem = Problem(p.Lengths, p.Demand, Boards, Boards);
                double[] values = [.. p.Lengths.Select((l, i) => l * p.values[i])];
                var budget = int.MaxValue;
                var best = ParetoKnapsack.Best(problem, values, problem.Demand, new double[Boards.Length], ref budget);
                var below = GridKnapsack.Best(problem, values, problem.Demand, roundUp: true);
                var above = GridKnapsack.Best(problem, values, problem.Demand, roundUp: false);
                for (var b = 0; b < Boards.Length; b++)
                {
                    var exact = best[b]?.Value ?? 0;
                    Assert.InRange(exact, below[b].Value - RoundOff, above[b].Value + RoundOff);
                    Assert.True(problem.Weight(below[b].Counts) <= problem.Capacity(b));
                    Assert.Equal(below[b].Value, below[b].Counts.Select((c, i) => c * values[i]).Sum(), RoundOff);
                    Assert.All(below[b].Counts.Zip(p.Demand), c => Assert.True(c.First <= c.Second));
                }
            });

    /// <summary>
    /// Lengths like the rails of a short bridge with many frames: a board of 12 ft holds a dozen and more of thirty lengths,
    /// in ways without number. Some hundredths of a second are usual; what it took before was minutes.
    /// </summary>
    [Fact]
    public void Many_short_pieces_are_planned_quickly_and_well()
    {
        double[] lengths = [.. Enumerable.Range(0, 32).Select(i => 0.2921 - (i * 0.00137) - (i % 3 * 0.0004))];
        int[] demand = [.. Enumerable.Range(0, 32).Select(i => 4 + (i % 4))];
        var watch = System.Diagnostics.Stopwatch.StartNew();
        var one = Solved(Problem(lengths, demand, [3.6576], [1]));
        Assert.InRange(one.Plan.Cost, one.RoundedBound - RoundOff, one.RoundedBound + 1 + RoundOff);
        var problem = Problem(lengths, demand, Boards, Boards);
        var several = Solved(problem);
        Assert.InRange(several.Plan.Cost, several.Bound - RoundOff, several.Bound + Math.Max(0.015 * several.Bound, Boards[^1]));
        var wood = lengths.Zip(demand, (l, d) => d * (l + Kerf)).Sum() * problem.LeastCostOfLength();
        Assert.InRange(several.Bound, wood * 0.995, wood * 1.02);
        Assert.InRange(watch.Elapsed, TimeSpan.Zero, TimeSpan.FromSeconds(20));
    }

    [Theory]
    [InlineData(new[] { 2.4384, 3.048, 3.6576 }, 0.6096)]
    [InlineData(new[] { 6.48, 8.1, 9.72 }, 1.62)]
    [InlineData(new[] { 5.0 }, 5)]
    [InlineData(new[] { 1, 1.4142135623730951 }, 0)]
    public void Costs_have_a_common_step(double[] costs, double step) => Assert.Equal(step, CostSteps.Common(costs), 1e-6);

    private static CuttingResult Solved(CuttingProblem problem)
    {
        var result = CuttingSolver.Solve(problem);
        var cut = new int[problem.Count];
        foreach (var pattern in result.Plan.Patterns)
        {
            var used = 0.0;
            for (var i = 0; i < cut.Length; i++)
            {
                cut[i] += pattern.Counts[i];
                used += pattern.Counts[i] * problem.Lengths[i];
            }

            used += (pattern.Counts.Sum() - 1) * problem.Kerf;
            Assert.InRange(used, 0, problem.Boards[pattern.Board].Usable + 1e-9);
        }

        Assert.Equal(problem.Demand, cut);
        Assert.Equal(result.Plan.Patterns.Sum(p => problem.Boards[p.Board].Cost), result.Plan.Cost, RoundOff);
        return result;
    }

    private static CuttingProblem Problem(double[] lengths, int[] demand, double[] boards, double[] costs) => new(
        [.. lengths], [.. demand.Take(lengths.Length)], [.. boards.Zip(costs, (b, c) => new BoardSize(b, c))], Kerf);

    private static double[] Distinct(int[] tenths) => [.. tenths.Distinct().OrderDescending().Select(l => l / 1e4)];

    private static string Text(Pattern pattern) => $"{pattern.Board}: {string.Join(' ', pattern.Counts)}";
}
