using BridgeForm.Loads;
using BridgeForm.Ropes;
using BridgeForm.Ropes.Fittings;

namespace BridgeForm.Tests.Loads;

public sealed class RopeTapeTests
{
    private const double Inch = 0.0254;
    private const string Chain = ", ends: { turnbuckle: { take_up: 12 in, closed: 17 in, pitch: 1/10 in }, shackle: { length: 3 in } }";

    private static readonly Lazy<BridgeModel> s_plain = new(() => With("sag: 6 %" + Chain));

    // No backstay: the eye bears at the support's point, and a reading is a mark. 18 in of turn-back and 6 × 3/4 in round the thimble.
    [Fact]
    public void A_rope_that_ends_at_its_supports_is_read_from_support_to_support()
    {
        var (model, tape) = (s_plain.Value, Tape(s_plain.Value));
        Assert.Equal(["cut end A", "eye A", .. model.Frames.Select(f => f.Name), "eye B", "cut end B"], tape.Readings.Select(r => r.Name));
        Assert.All(model.Marks, m => Assert.Equal(m.Unstressed, Along(tape, m.Frame), 1e-12));
        Assert.Equal(-22.5 * Inch, Along(tape, "cut end A"), 1e-12);
        Assert.Equal(model.Rope.UnstressedLength(), Along(tape, "eye B"), 1e-12);
        Assert.Equal(model.Rope.UnstressedLength() + (45 * Inch), tape.CutLength!.Value, 1e-12);
        Assert.Null(tape.LeastBehindSaddle);
    }

    // By hand: α 40 °F either way (60 °F between 20 and 100), 0.5 % of stretch, 1 in as made; what is to spare stands half either way.
    [Fact]
    public void The_turnbuckle_hangs_so_far_open_that_it_reaches_either_way()
    {
        var length = s_plain.Value.Rope.UnstressedLength() / Inch;
        var (takenIn, letOut) = ((length * ((40 * 6.5e-6) + 0.005)) + 1, (length * 40 * 6.5e-6) + 1);
        var chain = Tape(s_plain.Value).Chain!;
        Assert.Equal((takenIn / 2) + ((12 - (takenIn / 2) - (letOut / 2)) / 2), chain.Opening / Inch, 6);
        Assert.Equal(17 + (chain.Opening / Inch) + 3, chain.Length / Inch, 9);
        Assert.Equal(29, chain.Open / Inch, 9);
    }

    // Set short for the mean of the range: every reading shorter by it, ends as long as before.
    [Fact]
    public void Marks_set_short_make_every_reading_shorter()
    {
        var (plain, tape) = (Tape(s_plain.Value), Tape(With("sag: 6 %, new: as-is" + Chain)));
        Assert.All(
            plain.Readings.Where(r => r.Along > 0 && r.Name is not "cut end B"),
            r => Assert.Equal(r.Along / (1 + ((0.00125 + 0.005) / 2)), Along(tape, r.Name), 1e-9));
        Assert.Equal(-22.5 * Inch, Along(tape, "cut end A"), 1e-12);
    }

    [Fact]
    public void A_pulled_tape_reads_more_by_the_pull_over_the_stiffness()
    {
        var model = With("sag: 6 %, marking_tension: 500 lbf" + Chain);
        var pulled = 1 + (500 * 4.4482216152605 / model.Parameters.Ropes.Rope.AxialStiffness);
        Assert.All(Tape(model).Readings, r => Assert.Equal(r.Along * pulled, r.AtTension, 1e-9));
    }

    // With backstays the eye lies short of the anchor by the chain; one shorter than its chain is told.
    [Theory]
    [InlineData("20 ft", true)]
    [InlineData("2 ft", false)]
    public void Backstays_put_the_eye_behind_the_saddle(string stay, bool reaches)
    {
        var model = Bridges.Build(Bridges.Garden.Replace("sag: 6 %", "sag: 6 %" + Chain, StringComparison.Ordinal).Replace(
            "site: { span: 30 ft }",
            $"site: {{ span: 30 ft, a: {{ backstay: {{ length: {stay}, angle: 30 deg }} }}, "
                + $"b: {{ backstay: {{ length: {stay}, angle: 30 deg }} }} }}",
            StringComparison.Ordinal));
        var tape = Tape(model);
        var behind = model.Ropework.Cut!.BackstayA - tape.Chain!.Length;
        Assert.Equal(behind, Along(tape, "F00"), 1e-12);
        Assert.Equal(behind, tape.LeastBehindSaddle!.Value, 1e-12);
        Assert.Equal(reaches, behind > 0);
        Assert.Equal(model.Ropework.Cut.BetweenEnds - (2 * tape.Chain!.Length) + (45 * Inch), tape.CutLength!.Value, 1e-9);
    }

    /// <summary>A maker's table of bow shackles (US Fed Spec RR-C-271): 3/4 in of 4.75 t is 71 mm inside.</summary>
    [Theory]
    [InlineData("1/2", 47)]
    [InlineData("3/4", 71)]
    [InlineData("1", 95)]
    public void Shackles_are_those_of_the_table(string size, double millimetres) =>
        Assert.Equal(millimetres / 1000, EndLengths.Shackle(size)!.Value, 12);

    /// <summary>A maker's table of forged bodies: 3/4 in with 6 in between its heads is 8-1/8 in long; pins 2 diameters out.</summary>
    [Fact]
    public void A_closed_turnbuckle_is_its_body_and_two_jaws() =>
        Assert.Equal((8.125 + (4 * 0.75)) * Inch, EndLengths.ClosedTurnbuckle("3/4", 6 * Inch)!.Value, 9);

    [Fact]
    public void Every_size_of_both_sets_has_a_length()
    {
        Assert.All(FittingSet.Shackles.Sizes, s => Assert.NotNull(EndLengths.Shackle(s.Size)));
        Assert.All(FittingSet.Turnbuckles.Sizes, s => Assert.NotNull(EndLengths.ClosedTurnbuckle(s.Size, 0.3)));
        Assert.Null(EndLengths.Shackle("9/16"));
    }

    private static RopeTape Tape(BridgeModel model) => RopeTape.Of(model.Parameters, model.Ropework)!;

    private static double Along(RopeTape tape, string name) => tape.Readings.Single(r => r.Name == name).Along;

    private static BridgeModel With(string sag) => Bridges.Build(Bridges.Garden.Replace("sag: 6 %", sag, StringComparison.Ordinal));
}
