using System.Text.Json;
using BridgeForm.Stocking.Cutting;

namespace BridgeForm.Tests.Output.Referees;

/// <summary>HiGHS, given every pattern there is, finds the same relaxation, and in whole boards nothing much cheaper.</summary>
[Trait("Category", "Referee")]
public sealed class StockRefereeTests
{
    private const double Kerf = 0.003175;

    // Costs are some tens; HiGHS stops at 1e-7.
    private const double RoundOff = 1e-5;

    [Fact]
    public void Highs_finds_the_same_bound_and_hardly_anything_better()
    {
        var problems = Enumerable.Range(1, 24).Select(Problem).ToList();
        var text = JsonSerializer.SerializeToUtf8Bytes(problems.Select(p => new
        {
            lengths = p.Lengths,
            demand = p.Demand,
            boards = p.Boards.Select(b => b.Usable),
            costs = p.Boards.Select(b => b.Cost),
            kerf = p.Kerf,
        }));
        Referee.OnFile(text, "problems.json", path =>
        {
            var answers = JsonDocument.Parse(Referee.Node("cutting-stock.js", path)).RootElement.EnumerateArray().ToList();
            Assert.Equal(problems.Count, answers.Count);
            var (best, solved) = (0, 0);
            foreach (var (problem, answer) in problems.Zip(answers))
            {
                var result = CuttingSolver.Solve(problem);
                Assert.Equal(answer.GetProperty("relaxed").GetDouble(), result.Bound, RoundOff);
                if (answer.GetProperty("whole").ValueKind == JsonValueKind.Number)
                {
                    var whole = answer.GetProperty("whole").GetDouble();
                    Assert.InRange(result.RoundedBound, result.Bound - RoundOff, whole + RoundOff);
                    Assert.InRange(result.Plan.Cost, whole - RoundOff, whole * 1.01);
                    Assert.True(!result.Proven || result.Plan.Cost <= whole + RoundOff);
                    solved++;
                    best += result.Plan.Cost <= whole + RoundOff ? 1 : 0;
                }
            }

            // On a slow machine the referee may run out of time on a few; it must have judged most.
            Assert.True(solved >= problems.Count / 2, $"only {solved} of {problems.Count} were solved");
            Assert.True(best >= solved * 3 / 4, $"as cheap as the best in {best} of {solved}");
        });
    }

    /// <summary>Up to nine lengths; one board length, three by length, or three by price, in turn.</summary>
    private static CuttingProblem Problem(int seed)
    {
        var random = new Random(seed);
        var lengths = Enumerable.Range(0, random.Next(2, 10)).Select(
            _ => Math.Round(0.6 + (1.8 * random.NextDouble()), 4)).Distinct().OrderDescending().ToArray();
        BoardSize[] boards = (seed % 3) switch
        {
            0 => [new(4.8768, 1)],
            1 => [new(2.4384, 2.4384), new(3.048, 3.048), new(4.8768, 4.8768)],
            _ => [new(2.4384, 5.25), new(3.6576, 8.4), new(4.8768, 10.95)],
        };
        return new CuttingProblem([.. lengths], [.. lengths.Select(_ => random.Next(1, 16))], [.. boards], Kerf);
    }
}
