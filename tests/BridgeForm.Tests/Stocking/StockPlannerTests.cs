using System.Collections.Immutable;
using BridgeForm.Checks;
using BridgeForm.Materials;
using BridgeForm.Pieces;
using BridgeForm.Project;
using BridgeForm.Stocking;
using BridgeForm.Tests.Samples;

namespace BridgeForm.Tests.Stocking;

public class StockPlannerTests
{
    // Sums of a board's lengths, metres.
    private const double RoundOff = 1e-9;

    private static readonly Lazy<BridgeModel> s_garden = new(() => Bridges.Build(Bridges.Garden));

    [Fact]
    public void Every_part_is_cut_once_from_a_board_of_its_own_stock_and_section()
    {
        var model = s_garden.Value;
        var planned = model.StockPlan.Boards.SelectMany(b => b.Pieces.Select(p => (p.Id, p.Mark, b.Stock, b.Section))).Order();
        var wanted = model.Pieces.SelectMany(p => p.Occurrences.Select(o => (o.Id, p.Mark, p.Stock, p.Section))).Order();
        Assert.Equal(wanted, planned);
        Assert.Empty(model.StockPlan.TooLong);
        Assert.Equal(Enumerable.Range(1, model.StockPlan.BoardCount), model.StockPlan.Boards.Select(b => b.Number));
    }

    [Theory]
    [InlineData("")]
    [InlineData("shop: { trim: 1/2 in, offcut: 20 in, saw: { kerf: 3/16 in } }")]
    public void Boards_add_up(string shop)
    {
        var model = Bridges.Build(Bridges.Garden + "\n" + shop);
        var made = model.Parameters.Shop;
        foreach (var board in model.StockPlan.Boards)
        {
            Assert.Contains(model.Parameters.StockNamed(board.Stock).Lengths, l => Math.Abs(l - board.Length) < RoundOff);
            Assert.Equal(made.Trim, board.Pieces[0].Start, RoundOff);
            foreach (var (piece, next) in board.Pieces.Zip(board.Pieces.Skip(1)))
            {
                Assert.Equal(piece.Start + piece.BlankLength + made.Kerf, next.Start, RoundOff);
            }

            var end = board.Pieces[^1].Start + board.Pieces[^1].BlankLength;
            Assert.InRange(end, 0, board.Length - made.Trim + RoundOff);
            Assert.Equal(board.Length, board.Pieces.Sum(p => p.BlankLength) + board.Leftover + board.Waste, RoundOff);
            Assert.True(board.Leftover is 0 || board.Leftover >= made.Offcut);
            Assert.True(board.Leftover > 0 || board.Length - made.Trim - end - made.Kerf < made.Offcut);
        }
    }

    // Braces under a foot: two from a blank, as the saw sheet says. Their foot is cut at 27°: 6 in and half a clamp of 2 in square from the
    // path are 7 / cos 27° = 7.856 in along, and the other half of the clamp is 1 in more. The plan has that wood as waste.
    [Fact]
    public void Short_pieces_are_planned_as_the_saw_sheet_has_them_cut()
    {
        var model = Bridges.Build(Bridges.Garden.Replace(
            "brace: { section: 2x4, lean: 12 deg, foot: 28-1/4 in }", "brace: { section: 2x4, lean: 27 deg, foot: 28-1/4 in }",
            StringComparison.Ordinal) + "\nshop: { saw: { crosscut: 9 in } }");
        var shorts = model.Pieces.Where(
            p => Holding.Of(p, model.Parameters.Shop) == HoldWay.Pair && p.Role == BridgeForm.Roles.Role.Brace).ToList();
        Assert.NotEmpty(shorts);
        foreach (var piece in shorts)
        {
            var boards = model.StockPlan.Boards.Where(b => b.Pieces.Any(p => p.Mark == piece.Mark)).ToList();
            var pairs = 0;
            foreach (var (one, next) in boards.SelectMany(b => b.Pieces.Zip(b.Pieces.Skip(1)))
                .Where(p => p.First.Mark == piece.Mark && p.First.Held > 0))
            {
                Assert.Equal((1 + (7 / Math.Cos(Bridges.Radians(27)))) * 0.0254, one.Held, 1e-9);
                pairs += next.Mark == piece.Mark && Math.Abs(next.Start - one.Start - piece.BlankLength - one.Held) < RoundOff ? 1 : 0;
            }

            Assert.Equal(piece.Occurrences.Length / 2, pairs);
            Assert.Equal(piece.Occurrences.Length, boards.Sum(b => b.Pieces.Count(p => p.Mark == piece.Mark)));
            Assert.All(boards, b => Assert.Equal(b.Length, b.Pieces.Sum(p => p.BlankLength) + b.Leftover + b.Waste, RoundOff));
            Assert.All(boards, b => Assert.True(
                b.Pieces.Max(p => p.Start + p.BlankLength) <= b.Length - model.Parameters.Shop.Trim + RoundOff));
            var told = new BridgeForm.Output.DisplayUnits(
                BridgeForm.Quantities.UnitSystem.Metric, m => $"{m * 1000:F1}", a => "", m => "");
            Assert.Contains(
                BridgeForm.Output.Tables.StockPlanTable.Csv(model, told).Split('\n'),
                r => r.Contains($"{piece.Mark} ", StringComparison.Ordinal)
                    && r.Contains("two from one blank with the next, 224.9", StringComparison.Ordinal));
        }
    }

    // Nobody has to ask for it: boards come with split and painted ends.
    [Theory]
    [InlineData(Bridges.Garden, 0.0127)]
    [InlineData(Bridges.Inclined, 0.012)]
    public void Ends_are_trimmed_by_default(string bridge, double trim) =>
        Assert.Equal(trim, Bridges.Read(bridge).Shop.Trim, RoundOff);

    // A tenth of 2 boards is a board, and of 21 boards 3 are: rounded up. Nothing else of the plan changes.
    [Theory]
    [InlineData(0)]
    [InlineData(0.1)]
    [InlineData(1)]
    public void Spare_boards_are_a_share_of_the_plans_rounded_up(double share)
    {
        var model = s_garden.Value;
        var parameters = model.Parameters with { Stock = [.. model.Parameters.Stock.Select(s => s with { Spare = share })] };
        var plan = StockPlanner.Plan(model.Pieces, parameters, null);
        foreach (var (job, before) in plan.Jobs.Zip(model.StockPlan.Jobs))
        {
            Assert.Equal(before.Bought, job.Bought);
            var count = job.Boards.Length;
            var wanted = Enumerable.Range(0, count + 1).First(n => n >= (count * share) - 1e-9);
            Assert.Equal(wanted, job.Spare?.Count ?? 0);
            if (job.Spare is { } spare)
            {
                var same = job.Boards.Count(b => Math.Abs(b.Length - spare.Length) < RoundOff);
                Assert.All(job.Boards, b => Assert.True(job.Boards.Count(o => Math.Abs(o.Length - b.Length) < RoundOff) <= same));
                Assert.Equal(wanted * spare.Length * job.Mass / job.Bought, spare.Mass, 1e-6);
                Assert.Equal(wanted * spare.Length * job.BoardFeet / job.Bought, spare.BoardFeet, 1e-6);
            }
        }

        Assert.Contains(plan.Jobs, j => (j.Spare is null) == (share is 0) && j.Boards.Length > 10);
    }

    [Fact]
    public void Totals_keep_what_is_promised()
    {
        foreach (var job in s_garden.Value.StockPlan.Jobs)
        {
            var longest = s_garden.Value.Parameters.StockNamed(job.Stock).Lengths.Max();
            Assert.Equal(job.Boards.Sum(b => b.Length), job.Total, RoundOff);
            Assert.InRange(job.Total, job.Bound - RoundOff, job.Bound + Math.Max(0.015 * job.Bound, longest));
            Assert.InRange(job.RoundedBound, job.Bound - RoundOff, job.Total + RoundOff);
        }
    }

    // PS 20: nominal inches × nominal inches × feet / 12.
    [Fact]
    public void Board_feet_and_mass_are_those_of_the_boards_bought()
    {
        var model = s_garden.Value;
        var job = model.StockPlan.Jobs.Single(j => j.Section is "2x4");
        Assert.Equal(2 * 4 * (job.Bought / 0.3048) / 12, job.BoardFeet, 1e-6);
        var density = model.Parameters.StockNamed(job.Stock).Density;
        Assert.Equal(job.Bought * 0.0381 * 0.0889 * density.InService, job.Mass, 1e-6);
        Assert.Equal(job.Mass * density.High / density.InService, job.FreshMass, 1e-6);
        Assert.Equal(20.0 / 3, Lumber.BoardFeet(SectionReader.Read("2x4").Section!, 10 * 0.3048), 1e-9);
        Assert.Equal(10.0 / 3, Lumber.BoardFeet(SectionReader.Read("1x4").Section!, 10 * 0.3048), 1e-9);
    }

    [Fact]
    public void Piece_longer_than_every_board_fails_a_check_and_is_in_no_plan()
    {
        var model = Bridges.Build(Bridges.Garden + "\n" + """
            stock:
              treated: { species: southern-pine, grade: no1, treated: true, lengths: [4 ft, 8 ft] }
              cedar: { species: western-red-cedar, grade: no2, lengths: [3 ft] }
            """);
        var cap = model.Pieces.First(p => p.BlankLength > 0.9144 && p.Stock is "cedar");
        var check = model.Checks.Single(c => c.Id is "stock-length");
        Assert.Equal(CheckStatus.Fail, check.Status);
        Assert.Contains(cap.Mark, check.Detail, StringComparison.Ordinal);
        Assert.Contains(model.StockPlan.TooLong, p => p.Mark == cap.Mark && p.Quantity == cap.Occurrences.Length);
        Assert.DoesNotContain(model.StockPlan.Boards.SelectMany(b => b.Pieces), p => p.Mark == cap.Mark);
        Assert.Contains(model.StockPlan.Boards, b => b.Stock is "cedar");
    }

    [Fact]
    public void Stock_too_short_to_trim_gives_no_plan_and_no_crash()
    {
        var parameters = Bridges.Read(Bridges.Garden);
        var plan = StockPlanner.Plan(
            s_garden.Value.Pieces, parameters with { Shop = parameters.Shop with { Trim = 5 } }, null);
        Assert.Empty(plan.Boards);
        Assert.Equal(s_garden.Value.Pieces.Length, plan.TooLong.Count());
    }

    /// <summary>
    /// The demo's two packers of 35-1/2 in are ripped at one setting: 71 in and the saw cut between them go on one board of 8 ft, the
    /// shortest that there is.
    /// </summary>
    [Fact]
    public void Packers_of_one_setting_lie_one_behind_the_other()
    {
        var model = MadeSample.Of("alder-dell").Model;
        var packer = model.Pieces.Single(StripPlan.IsRipped);
        var board = Assert.Single(model.StockPlan.Boards, b => b.Pieces.Any(p => p.Mark == packer.Mark));
        BoardPiece[] strips = [.. board.Pieces.Where(p => p.Mark == packer.Mark)];
        Assert.Equal([true, false], strips.Select(p => p.RipsOn));
        Assert.Equal(strips[0].Start + packer.BlankLength + model.Parameters.Shop.Kerf, strips[1].Start, RoundOff);
        Assert.DoesNotContain(board.Pieces, p => p.RipsOn && p.Mark != packer.Mark);
        Assert.Contains(
            "(ripped in one length with the next, then cut apart)",
            BridgeForm.Output.Tables.StockPlanTable.Csv(model, BridgeForm.Output.DisplayUnits.For(model.Parameters.Units)),
            StringComparison.Ordinal);
    }

    /// <summary>
    /// Seven packers alike, each 35-1/2 in, boards of 8, 10, 12 and 16 ft less 1/2 in at either end: two go into 8 ft (4 boards, 32 ft),
    /// three into 10 ft (3 boards, 30 ft), four into 12 ft (2 boards, 24 ft), five into 16 ft (2 boards, 32 ft).
    /// </summary>
    [Fact]
    public void As_many_packers_are_ripped_in_one_length_as_buy_the_least_board()
    {
        var model = MadeSample.Of("alder-dell").Model;
        var packer = model.Pieces.Single(StripPlan.IsRipped);
        Assert.Equal(35.5 * 0.0254, packer.BlankLength, 5e-4);
        var seven = packer with
        {
            Occurrences = [.. Enumerable.Range(0, 7).Select(i => packer.Occurrences[0] with { Id = $"F0{i}/packer" })],
        };
        var boards = StockPlanner.Plan([seven], model.Parameters, null).Jobs.Single().Boards;
        Assert.Equal([4, 3], boards.Select(b => b.Pieces.Length).OrderDescending());
        Assert.Equal([3, 2], boards.Select(b => b.Pieces.Count(p => p.RipsOn)).OrderDescending());
    }

    [Fact]
    public void Prices_turn_the_plan_to_the_cheaper_boards()
    {
        var model = s_garden.Value;
        PriceList Of(double two, double twelve) => new([
            new BoardPrice("treated", "2x6", 8 * 0.3048, two), new BoardPrice("treated", "2x6", 12 * 0.3048, twelve)]);
        ImmutableArray<Piece> boards = [.. model.Pieces.Where(p => p.Section is "2x6" && p.Stock is "treated")];
        var cheapShort = StockPlanner.Plan(boards, model.Parameters, Of(5, 90)).Jobs.Single();
        var cheapLong = StockPlanner.Plan(boards, model.Parameters, Of(90, 5)).Jobs.Single();
        Assert.True(cheapShort.ByPrice);
        Assert.All(cheapShort.Boards, b => Assert.Equal(8 * 0.3048, b.Length, RoundOff));
        Assert.All(cheapLong.Boards, b => Assert.Equal(12 * 0.3048, b.Length, RoundOff));
        Assert.Equal(cheapShort.Boards.Length * 5, cheapShort.Total, RoundOff);
        Assert.Equal(cheapShort.Total, cheapShort.Boards.Sum(b => b.Price!.Value), RoundOff);
    }

    [Fact]
    public void Many_lengths_are_planned_in_classes_and_the_bound_stays_a_bound()
    {
        var parameters = Bridges.Read(Bridges.Garden);
        var like = s_garden.Value.Pieces.First(p => p.Section is "1x4");
        ImmutableArray<Piece> pieces =
        [
            .. Enumerable.Range(0, 200).Select(i => like with
            {
                Mark = $"R{i}",
                BlankLength = 0.7 + (0.0031 * i),
                Occurrences = [like.Occurrences[0] with { Id = $"B{i}/rail" }],
            }),
        ];
        var job = StockPlanner.Plan(pieces, parameters, null).Jobs.Single();
        Assert.Equal(200, job.Boards.Sum(b => b.Pieces.Length));
        Assert.InRange(job.Total, job.Bound, job.Bound * 1.06);
        var wood = pieces.Sum(p => p.BlankLength);
        Assert.InRange(job.Bound, wood, job.Total);
    }
}
