using BridgeForm.Ropes.Fittings;
using CsCheck;

namespace BridgeForm.Tests.Ropes.Fittings;

public sealed class RopeTurnsTests
{
    private const double Inch = 0.0254;

    /// <summary>ASME B1.1, coarse series.</summary>
    [Theory]
    [InlineData("1/4", 20)]
    [InlineData("1/2", 13)]
    [InlineData("3/4", 10)]
    [InlineData("1", 8)]
    [InlineData("1-1/4", 7)]
    public void Threads_are_those_of_the_coarse_series(string size, int perInch) =>
        Assert.Equal(Inch / perInch, TurnbuckleThread.CoarseOf(size)!.Pitch, 12);

    [Fact]
    public void No_thread_is_made_up_for_a_size_that_the_table_has_not() => Assert.Null(TurnbuckleThread.CoarseOf("2-3/8"));

    // Every size that the checks choose has one.
    [Fact]
    public void Every_turnbuckle_of_the_set_has_a_thread() =>
        Assert.All(FittingSet.Turnbuckles.Sizes, s => Assert.NotNull(TurnbuckleThread.CoarseOf(s.Size)));

    /// <summary>
    /// 3/4 in: 10 threads to the inch, right and left hand, so that a turn moves 1/5 in. 1.2 in of both ends together are 0.6 in
    /// each, three turns; 37 flats go 19 and 18.
    /// </summary>
    [Theory]
    [InlineData(-1.2, -3.0, -18, -18)]
    [InlineData(1.2, 3.0, 18, 18)]
    [InlineData(-37 / 30.0, -37 / 12.0, -19, -18)]
    [InlineData(0.01, 0.025, 0, 0)]
    public void Turns_by_hand(double inches, double exact, int a, int b)
    {
        var turns = RopeTurns.For(inches * Inch, TurnbuckleThread.CoarseOf("3/4")!);
        Assert.Equal(exact, turns.Exact, 9);
        Assert.Equal((a, b), (turns.A, turns.B));
    }

    [Fact]
    public void Flats_leave_no_more_than_half_a_flat() => Gen.Select(Gen.Double[-0.5, 0.5], Gen.Double[0.001, 0.005]).Sample(
        (change, pitch) =>
        {
            var thread = new TurnbuckleThread(pitch, "made up");
            var turns = RopeTurns.For(change, thread);
            Assert.InRange(Math.Abs(turns.Change(thread) - change), 0, pitch / 6 * 1.000001);
            Assert.InRange(Math.Abs(turns.A - turns.B), 0, 1);
        });
}
