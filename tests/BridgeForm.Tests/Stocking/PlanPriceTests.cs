using BridgeForm.Project;
using BridgeForm.Stocking;

namespace BridgeForm.Tests.Stocking;

/// <summary>What all boards of a plan cost: boards of the shopping list times their prices, or nothing.</summary>
public sealed class PlanPriceTests
{
    private static readonly Lazy<BridgeModel> s_garden = new(() => Bridges.Build(Bridges.Garden));

    [Fact]
    public void Without_boards_or_prices_there_is_none()
    {
        Assert.Null(new StockPlan([]).Price);
        Assert.Null(s_garden.Value.StockPlan.Price);
    }

    [Fact]
    public void It_is_the_sum_of_number_times_price()
    {
        var model = s_garden.Value;
        var prices = All(model.Parameters);
        var plan = StockPlanner.Plan(model.Pieces, model.Parameters, new PriceList([.. prices]));
        var bought = plan.Boards.CountBy(b => (b.Stock, b.Section, Math.Round(b.Length, 6)));
        var sum = bought.Sum(b => b.Value * prices.Single(
            p => p.Stock == b.Key.Stock && p.Section == b.Key.Section && Math.Abs(p.Length - b.Key.Item3) < 1e-5).Price);
        Assert.True(sum > 100);
        Assert.Equal(sum, plan.Price!.Value, 6);
    }

    [Fact]
    public void One_board_without_a_price_leaves_it_unknown()
    {
        var model = s_garden.Value;
        var first = model.StockPlan.Boards.First();
        var some = All(model.Parameters).Where(p => p.Stock != first.Stock || p.Section != first.Section);
        Assert.Null(StockPlanner.Plan(model.Pieces, model.Parameters, new PriceList([.. some])).Price);
    }

    private static List<BoardPrice> All(BridgeParameters p) =>
    [
        .. p.Stock.SelectMany(s => s.Sections.SelectMany(c => s.Lengths.Select(
            l => new BoardPrice(s.Name, c.Name, l, Math.Round(1e3 * l * c.Width * c.Thickness, 2))))),
    ];
}
