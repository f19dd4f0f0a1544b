using BridgeForm.Pieces;
using BridgeForm.Solids;
using BridgeForm.Stocking;

namespace BridgeForm.Tests.Stocking;

public class SharedMitresTests
{
    // Metres.
    private const double RoundOff = 1e-9;

    private static readonly Lazy<BridgeModel> s_garden = new(() => Bridges.Build(Bridges.Garden));

    [Fact]
    public void Sharing_buys_the_same_boards_and_wastes_less()
    {
        var model = s_garden.Value;
        var shared = Shared(model);
        Assert.Equal(model.StockPlan.Boards.Select(b => b.Length), shared.Boards.Select(b => b.Length));
        Assert.Equal(
            model.StockPlan.Boards.SelectMany(b => b.Pieces).Select(p => p.Id).Order(),
            shared.Boards.SelectMany(b => b.Pieces).Select(p => p.Id).Order());
        Assert.Contains(shared.Boards.SelectMany(b => b.Pieces), p => p.SharesCut);
        static double End(PlannedBoard b) => b.Pieces[^1].Start + b.Pieces[^1].BlankLength;
        Assert.All(model.StockPlan.Boards.Zip(shared.Boards), p => Assert.True(End(p.Second) <= End(p.First) + RoundOff));
        Assert.All(shared.Boards.Where(b => b.Pieces.Any(p => p.SharesCut)), b => Assert.True(b.Length - b.Leftover - b.Waste > 0));
    }

    // The solids themselves, turned and laid on the board, keep a saw cut between them wherever they are.
    [Fact]
    public void Neighbours_that_share_a_cut_stand_exactly_a_kerf_apart()
    {
        var model = s_garden.Value;
        var pieces = model.Pieces.ToDictionary(p => p.Mark);
        var kerf = model.Parameters.Shop.Kerf;
        var seen = 0;
        foreach (var board in Shared(model).Boards)
        {
            foreach (var (left, right) in board.Pieces.Zip(board.Pieces.Skip(1)).Where(p => p.Second.SharesCut))
            {
                var far = End(pieces[left.Mark], left, far: true);
                var near = End(pieces[right.Mark], right, far: false);
                Assert.Equal(1, far.Normal.Dot(-near.Normal), 1e-7);
                Assert.Equal(kerf, -near.Offset - far.Offset, 1e-6);
                seen++;
            }
        }

        Assert.True(seen > 5);
    }

    // Posts that lean 8° on a saw that is set to 4° at most. What is cut on a block is cut square to its length before: no neighbor is
    // there to share the cut.
    [Fact]
    public void No_cut_on_a_block_is_shared()
    {
        var model = Bridges.Build(Bridges.Garden + "\nshop: { saw: { mitre_limit: 4 deg } }");
        var steep = model.Pieces.Where(p => (p.Near.Wedge > 0 || p.Far.Wedge > 0) && p.Mark[0] is 'P').ToDictionary(p => p.Mark);
        Assert.NotEmpty(steep);
        foreach (var (left, right) in Shared(model).Boards.SelectMany(b => b.Pieces.Zip(b.Pieces.Skip(1))).Where(p => p.Second.SharesCut))
        {
            foreach (var (at, far) in new[] { (left, true), (right, false) }.Where(p => steep.ContainsKey(p.Item1.Mark)))
            {
                var turned = at.Turn is BlankTurn.EndForEnd or BlankTurn.EndForEndOver;
                Assert.Equal(0, (far == turned ? steep[at.Mark].Near : steep[at.Mark].Far).Wedge);
            }
        }
    }

    private static StockPlan Shared(BridgeModel model) => StockPlanner.Plan(
        model.Pieces, model.Parameters with { Shop = model.Parameters.Shop with { ShareCuts = true } }, null);

    [Fact]
    public void The_project_file_asks_for_it_and_the_table_says_how_pieces_lie()
    {
        Assert.DoesNotContain("shares the cut", Table(Bridges.Garden), StringComparison.Ordinal);
        var table = Table(Bridges.Garden + "\nshop: { share_cuts: true }\n");
        Assert.Contains("shares the cut before it)", table, StringComparison.Ordinal);
        Assert.Contains("turned end for end", table, StringComparison.Ordinal);

        static string Table(string text)
        {
            var model = Bridges.Build(text);
            return BridgeForm.Output.Tables.StockPlanTable.Csv(model, BridgeForm.Output.DisplayUnits.For(model.Parameters.Units));
        }
    }

    /// <summary>The end plane of a piece as it lies on the board; its normal points out of the wood.</summary>
    private static Plane End(Piece piece, BoardPiece at, bool far)
    {
        var ends = new[] { piece.Shape.Near, piece.Shape.Far }.Select(p => Turned(p, at.Turn)).OrderBy(p => p.Normal.X).ToArray();
        var moved = at.Turn is BlankTurn.EndForEnd or BlankTurn.EndForEndOver ? at.Start + at.BlankLength : at.Start;
        var end = far ? ends[1] : ends[0];
        return end with { Offset = end.Offset + (end.Normal.X * moved) };
    }

    private static Plane Turned(Plane p, BlankTurn turn) => p with
    {
        Normal = turn switch
        {
            BlankTurn.EndForEnd => new Vector3d(-p.Normal.X, -p.Normal.Y, p.Normal.Z),
            BlankTurn.EndForEndOver => new Vector3d(-p.Normal.X, p.Normal.Y, -p.Normal.Z),
            BlankTurn.Over => new Vector3d(p.Normal.X, -p.Normal.Y, -p.Normal.Z),
            _ => p.Normal,
        },
    };
}
