using System.Globalization;
using BridgeForm.Frames;
using BridgeForm.Pieces;
using BridgeForm.Project;

namespace BridgeForm.Tests.Pieces;

/// <summary>Every mark names one piece.</summary>
public class MarkTests
{
    private const int RandomBridges = 40;

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

            var members = Members.Of(Bridges.Layout(parameters)).SelectMany(g => g.Members).ToArray();
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
