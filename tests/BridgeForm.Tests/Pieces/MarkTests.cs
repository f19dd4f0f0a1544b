using System.Globalization;
using BridgeForm.Frames;
using BridgeForm.Pieces;
using BridgeForm.Project.Files;
using BridgeForm.Roles;
using BridgeForm.Solids;

namespace BridgeForm.Tests.Pieces;

/// <summary>Every mark names one piece.</summary>
public class MarkTests
{
    private const int RandomBridges = 24;

    private static string Text(Random random)
    {
        double Between(double low, double high) => low + (random.NextDouble() * (high - low));
        return string.Create(CultureInfo.InvariantCulture, $$"""
            name: Random and coarse (invented)
            units: metric
            site: { span: {{Between(6, 14):0.000}} m, rise: {{Between(-1.2, 1.2):0.000}} m }
            ropes: { type: rope-6x19-iwrc-eips-5/8, spacing: 1200 mm, sag: {{Between(3, 9):0.00}} % }
            frames:
              spacing: {{Between(0.7, 1.7):0.000}} m
              stance: {{(random.Next(4) > 0 ? "plumb" : "square")}}
              base: { section: 89 x 140 mm, length: 1600 mm }
              channel: { clearance: 3 mm, depth: 45 mm, end_depth: 50 mm }
              post: { section: {{(random.Next(2) == 0 ? "38 x 89" : "64 x 64")}} mm, length: 1150 mm, lean: {{Between(4, 14):0.0}} deg, foot: 470 mm }
              brace: { section: 38 x 89 mm, lean: 14 deg, foot: 775 mm }
              keeper: { hole: 0 mm }
            guard: { rails: { section: 25 x 64 mm, count: 2 } }
            shop: { tolerance: {{Between(0.5, 6):0.00}} mm }
            """);
    }

    [Fact]
    public void No_two_pieces_of_random_bridges_share_a_mark_in_whatever_order_parts_come()
    {
        var random = new Random(904);
        var handed = 0;
        for (var i = 0; i < RandomBridges; i++)
        {
            var text = Text(random);
            if (ProjectReader.Read(text, "random.yaml", Bridges.Catalogue).Parameters is not { } parameters)
            {
                continue;
            }

            var members = Members.Lay(Bridges.Layout(parameters)).SelectMany(g => g.Members).ToArray();
            for (var order = 0; order < 4; order++)
            {
                Assert.True(PieceSet.TryOf(parameters, [new MemberGroup("all", [.. members])], out var pieces, out var failure), failure);
                Assert.True(pieces.Select(p => p.Mark).Distinct(StringComparer.Ordinal).Count() == pieces.Length, text);
                Assert.Equal(members.Length, pieces.Sum(p => p.Occurrences.Length));
                var hands = pieces.Where(p => !char.IsAsciiDigit(p.Mark[^1])).Select(p => p.Mark).ToHashSet(StringComparer.Ordinal);
                handed += hands.Count;

                // A number with a hand is no number without one.
                Assert.DoesNotContain(pieces, p => hands.Contains(p.Mark + "L") || hands.Contains(p.Mark + "R"));
                random.Shuffle(members);
            }
        }

        Assert.True(handed > 50, $"Only {handed} pieces had a hand: the bridges do not try what this test is about.");
    }

    // Sticks 89 x 38 mm, a mitre at the foot and a bevel at the head, which a mirror turns the other way. Corners are compared
    // with both sticks centred, so 2.5 mm of length are 1.25 mm at each end: within 2 mm of the first, 2.5 mm from each other.
    [Fact]
    public void Two_parts_that_mirror_one_piece_but_not_each_other_get_two_marks()
    {
        Assert.Equal(["P1L", "P1R", "P2R"], Marks(
            Stick("F01/post-left", Side.Left, 1, 0.010), Stick("F02/post-right", Side.Right, 1.0025, -0.010),
            Stick("F03/post-right", Side.Right, 0.9975, -0.010)));
        Assert.Equal(["P1R", "P2R", "P2L"], Marks(
            Stick("F02/post-right", Side.Right, 1.0025, -0.010), Stick("F03/post-right", Side.Right, 0.9975, -0.010),
            Stick("F01/post-left", Side.Left, 0.9960, 0.010)));
    }

    // A bevel of 1.9 mm over the thickness is its own mirror image within 2 mm. One of 4.4 mm the other way agrees with that
    // image (half the difference at each corner, 1.25 mm, and 0.63 mm for the centre of the box), and neither with the first
    // itself (3.15 mm less or more 0.63 mm) nor with its own image (4.4 mm).
    [Fact]
    public void A_number_without_hands_gets_no_left_or_right()
    {
        Assert.Equal(["P1", "P2L"], Marks(Stick("F01/post-left", Side.Left, 1, 0.0019), Stick("F02/post-left", Side.Left, 1, -0.0044)));
    }

    private static IEnumerable<string> Marks(params Member[] members)
    {
        var parameters = Bridges.Read(Bridges.Garden + "\nshop: { tolerance: 2 mm }\n");
        Assert.True(PieceSet.TryOf(parameters, [new MemberGroup("F01", [.. members])], out var pieces, out var failure), failure);
        return pieces.Select(p => p.Mark);
    }

    /// <summary>A stick whose head slopes by a height over its thickness, metres.</summary>
    private static Member Stick(string id, Side side, double length, double bevel)
    {
        const double Width = 0.089, Thickness = 0.038, Mitre = 0.1;
        var near = Plane.Through(Vector3d.Zero, new Vector3d(-1, Mitre, 0).Normalized());
        var far = Plane.Through(new Vector3d(length, 0, 0), new Vector3d(1, 0, bevel / Thickness).Normalized());
        return new Member(id, Role.Post, side, "treated", "2x4", Placement.Identity, new CutStock(Width, Thickness, near, far));
    }

    [Fact]
    public void A_mark_given_twice_stops_the_program()
    {
        PieceSet.RequireOwnMarks(["P1L", "P1R", "P2"]);
        var thrown = Assert.Throws<InvalidOperationException>(() => PieceSet.RequireOwnMarks(["P1L", "P2", "P1L"]));
        Assert.Contains("P1L", thrown.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void The_other_hand_of_a_number_is_given_once_and_never_to_a_number_without_hands()
    {
        var numbers = new MarkNumbers();
        var plain = numbers.WithoutHand(Role.Post);
        Assert.Equal("P1", plain.Text);
        Assert.False(numbers.TryOtherHand(plain, out _));
        var right = numbers.WithHand(Role.Post, Side.Right);
        Assert.Equal("P2R", right.Text);
        Assert.True(numbers.TryOtherHand(right, out var left));
        Assert.Equal("P2L", left.Text);
        Assert.False(numbers.TryOtherHand(right, out _));
        Assert.False(numbers.TryOtherHand(left, out _));
        Assert.Equal("P3L", numbers.WithHand(Role.Post, Side.None).Text);
        Assert.Equal("K1L", numbers.WithHand(Role.Brace, Side.Left).Text);
    }
}
