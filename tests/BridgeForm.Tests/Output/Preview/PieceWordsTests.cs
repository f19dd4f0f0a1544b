using BridgeForm.Output.Preview;
using BridgeForm.Pieces;
using BridgeForm.Roles;

namespace BridgeForm.Tests.Output.Preview;

public sealed class PieceWordsTests
{
    [Theory]
    [InlineData(0, 0, true, 0, "cut square")]
    [InlineData(0.04, -0.04, true, 0, "cut square")]
    [InlineData(-8, 0, true, 0, "cut at 8.0° from square, blade upright")]
    [InlineData(0, 3.25, true, 0, "cut straight across, blade tilted 3.3°")]
    [InlineData(12.5, -1, true, 0, "cut at 12.5° from square, blade tilted 1.0°")]
    [InlineData(70, 0, false, 20, "cut at 70.0° from square, blade upright; more than the saw can set: hold the piece on a 20.0° wedge")]
    [InlineData(0, 60, false, 0, "cut straight across, blade tilted 60.0°; more than the saw reaches: hand saw along the template line")]
    public void An_end_cut_in_plain_words(double mitre, double bevel, bool inReach, double wedge, string words) =>
        Assert.Equal(words, PieceWords.Cut(new EndCut(Bridges.Radians(mitre), Bridges.Radians(bevel), 0, inReach, Bridges.Radians(wedge))));

    [Fact]
    public void A_base_tells_of_its_channels_and_holes()
    {
        var model = Bridges.Build(Bridges.Garden);
        var piece = model.Pieces.First(p => p.Role == Role.Base && p.Occurrences.Length > 2);
        var lines = PieceWords.Lines(piece, model.Parameters.StockNamed(piece.Stock), new(model.Parameters.Units));
        // 3/4 in of rope and 1/8 in of clearance, 58 in of base, ropes 46 in apart.
        Assert.Contains(("Rope channels", "7/8 in wide, 5/8 in deep, level floor; middles 6 in and 52 in from the left end"), lines);
        Assert.Contains(("Holes", "4, 1/4 in across, 2 in deep"), lines);
        Assert.Contains(("Both ends", "cut square"), lines);
    }
}
