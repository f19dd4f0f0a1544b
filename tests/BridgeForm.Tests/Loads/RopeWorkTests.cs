using System.Collections.Immutable;
using BridgeForm.Checks;
using BridgeForm.Loads;
using BridgeForm.Project;
using BridgeForm.Quantities;
using BridgeForm.Roles;
using BridgeForm.Ropes;
using BridgeForm.Ropes.Pairs;
using BridgeForm.Tests.Checks.Catalogue;
using BridgeForm.Tests.Ropes;

namespace BridgeForm.Tests.Loads;

public sealed class RopeWorkTests
{
    private const double Foot = 0.3048;

    private static readonly BridgeModel Garden = Bridges.Build(Bridges.Garden);

    private static readonly RopeWork Work = Garden.Ropework;

    [Fact]
    public void Frames_move_by_the_difference_of_the_shapes()
    {
        foreach (var result in Work.Cases)
        {
            Assert.Equal(Garden.Frames.Length, result.Moves.Length);
            Assert.Equal(0, result.Moves[0].Y, 1e-12);
            var i = result.Moves.Length / 2;
            Assert.Equal(result.Shape!.Nodes[i].Y, Garden.Rope.Nodes[i].Y + result.Moves[i].Y, 1e-12);
        }
    }

    /// <summary>
    /// A parabola's length S = (L/2)·[√(1 + k²) + asinh(k)/k], k = 4d/L (Civil Engineering Formulas ch. 10), longer by the
    /// share, gives the sag; the rope also springs back a little as its tension falls.
    /// </summary>
    [Theory]
    [InlineData(0.00125)]
    [InlineData(0.005)]
    public void Stretch_lowers_the_middle_as_a_longer_parabola(double share)
    {
        var model = Bridges.Build(Bridges.Garden.Replace("span: 30 ft", "span: 36 ft", StringComparison.Ordinal));
        var end = model.Ropework.Stretch.Single(s => Math.Abs(s.Share - share) < 1e-12);
        var (span, sag) = (36 * Foot, model.Rope.Sag);
        var (low, high) = (sag, 2 * sag);
        for (var i = 0; i < 100; i++)
        {
            var middle = (low + high) / 2;
            (low, high) = Length(span, middle) < Length(span, sag) * (1 + share) ? (middle, high) : (low, middle);
        }

        // A polygon of thirteen bays is not quite a parabola.
        RopeSamples.Close(low - sag, end.MidSpanDrop!.Value, 0.04);
    }

    private static double Length(double span, double sag)
    {
        var k = 4 * sag / span;
        return span / 2 * (Math.Sqrt(1 + (k * k)) + (Math.Asinh(k) / k));
    }

    [Fact]
    public void Rope_set_short_comes_to_the_design_marks()
    {
        foreach (var end in Work.Stretch)
        {
            Assert.All(end.Marks.Zip(Work.Marks), m => Assert.Equal(m.Second.Unstressed, m.First.Unstressed * (1 + end.Share), 1e-12));
            // Shorter rope hangs higher when it is new.
            Assert.True(end.Hoisting.Rows[0].Sag < Work.Hoisting.Rows[0].Sag);
            Assert.Equal(end.Share * Work.Cut!.BetweenEnds, end.TakeUp, 1e-12);
        }

        Assert.Equal([0.00125, 0.005], Work.Stretch.Select(s => s.Share));
    }

    [Fact]
    public void Strand_has_no_assumed_stretch_and_the_files_own_goes_first()
    {
        var strand = Bridges.Build(With("rope-6x19-iwrc-eips-galvanized-3/4", "strand-ehs-3/4"));
        Assert.Empty(strand.Ropework.Stretch);
        Assert.Null(strand.Ropework.Cut!.TakeUp);
        var own = Bridges.Build(With("sag: 6 %", "sag: 6 %, stretch: [0.1 %, 0.2 %]"));
        Assert.Equal([0.001, 0.002], own.Ropework.Stretch.Select(s => Math.Round(s.Share, 9)));
    }

    /// <summary>By hand: 18 in of turn-back and 6 × 3/4 in round the thimble at each end (Calif. 8 CCR §8497 table 1).</summary>
    [Fact]
    public void Cut_length_adds_both_ends()
    {
        var cut = Work.Cut!;
        Assert.Equal((18 + 4.5) * 0.0254, cut.Termination!.Value, 1e-9);
        Assert.Equal(Garden.Rope.UnstressedLength() + (2 * 22.5 * 0.0254), cut.Length!.Value, 1e-9);
        // 80 °F of 6.5e-6 per °F.
        Assert.Equal(6.5e-6 * 80 * Garden.Rope.UnstressedLength(), cut.TemperatureChange, 1e-9);
    }

    [Fact]
    public void Backstays_lengthen_the_rope_and_hold_it()
    {
        var model = Bridges.Build(Bridges.Garden.Replace(
            "site: { span: 30 ft }",
            "site: { span: 30 ft, a: { backstay: { length: 20 ft, angle: 30 deg } }, b: { backstay: { length: 20 ft, angle: 30 deg, "
                + "saddle: sliding } } }",
            StringComparison.Ordinal));
        var cut = model.Ropework.Cut!;
        Assert.InRange(cut.BackstayA, 0.998 * 20 * Foot, 20 * Foot);
        var (a, b) = (model.Ropework.Supports[0], model.Ropework.Supports[1]);
        // Held saddle: H / cos 30° along the stay, nothing level on the post, V + H·tan 30° down.
        RopeSamples.Close(a.Horizontal / Math.Cos(Math.PI / 6), a.Backstay!.Tension, 1e-12);
        Assert.Equal(0, a.PostHorizontal, 1e-6 * a.Horizontal);
        RopeSamples.Close(a.Vertical + (a.Horizontal * Math.Tan(Math.PI / 6)), a.PostVertical, 1e-12);
        // Sliding saddle: the rope's own tension.
        RopeSamples.Close(b.Tension, b.Backstay!.Tension, 1e-12);
        RopeSamples.Close(b.Horizontal - (b.Tension * Math.Cos(Math.PI / 6)), b.PostHorizontal, 1e-9);
    }

    [Fact]
    public void Without_a_backstay_the_support_holds_all()
    {
        var pull = Work.Supports[0];
        Assert.Equal("live-full-cold", pull.Case);
        RopeSamples.Close(pull.Horizontal, pull.PostHorizontal, 1e-12);
        RopeSamples.Close(Work.Governing!.Shape!.LargestTension, pull.Tension, 1e-9);
    }

    /// <summary>Equilibrium of a node: the tension difference is P·sin θ / cos(half the kink), θ the bisector's slope.</summary>
    [Fact]
    public void Keepers_hold_what_slides_along_the_rope()
    {
        Assert.Equal(Garden.Frames.Length - 2, Work.Keepers.Length);
        foreach (var keeper in Work.Keepers)
        {
            // Kinks are up to a few degrees, and a bay's own weight bends it a little more.
            Assert.True(
                Math.Abs(Math.Abs(keeper.TensionDifference) - keeper.LoadAlong) <= (0.01 * keeper.LoadAlong) + (0.001 * keeper.Load),
                keeper.Frame);
        }

        Assert.True(Work.Keepers[0].Needed > Work.Keepers[Work.Keepers.Length / 2].Needed);
    }

    [Fact]
    public void Keepers_are_told_for_every_frame_in_every_case_and_the_worst_is_among_them()
    {
        ImmutableArray<string> names = [.. Garden.Frames.Select(f => f.Name)];
        var all = Work.Cases.SelectMany(c => KeeperForce.In(c, names)).ToList();
        Assert.Equal(Work.Cases.Length * (names.Length - 2), all.Count);
        foreach (var worst in Work.Keepers)
        {
            Assert.Equal(all.Where(k => k.Frame == worst.Frame).Max(k => k.Needed), worst.Needed, 1e-9);
        }

        var lines = BridgeForm.Output.Tables.KeeperTable.Csv(Garden).Split('\n', StringSplitOptions.RemoveEmptyEntries);
        // One row of heads before, what riggers must know and the caution after.
        var told = all.Count(k => !LoadCaseIds.IsPoint(k.Case) || Work.Keepers.Any(w => w.Frame == k.Frame && w.Case == k.Case));
        Assert.Equal(told + 2 + Work.Cautions.Length, lines.Length);
        Assert.Equal(names.Length - 2, lines.Count(l => l.Contains(",yes,", StringComparison.Ordinal)));

        // The check that asks for most of what holds a base down, in every row.
        var down = Garden.Checks.Where(c => c.Id.StartsWith("keeper-uplift", StringComparison.Ordinal) || c.Id == "wind-keeper").ToList();
        Assert.True(down.Count >= 3 && down.TrueForAll(c => c.Status != CheckStatus.Fail));
        var most = down.MaxBy(c => c.Demand)!;
        var asked = FormattableString.Invariant($",{most.Demand:0.0},{most.Id}");
        Assert.Equal(told, lines.Count(l => l.TrimEnd().EndsWith(asked, StringComparison.Ordinal)));

        // What rolls over is held down by nothing.
        var over = Garden with
        {
            Checks = [.. Garden.Checks.Select(c => c.Id == "keeper-uplift-load" ? c with { Status = CheckStatus.Fail } : c)],
        };
        Assert.Contains(",no end,,keeper-uplift-load", BridgeForm.Output.Tables.KeeperTable.Csv(over), StringComparison.Ordinal);
    }

    /// <summary>
    /// New rope set to the marks for 0.5 % of stretch, before it has stretched: the case solved once more by itself with every
    /// length divided by 1.005. Fittings and anchors are told of it.
    /// </summary>
    [Fact]
    public void New_rope_set_short_pulls_harder_until_it_has_stretched()
    {
        var design = Garden.Rope;
        var end = Work.Stretch[1];
        var worst = Work.Cases.Single(c => c.Id == end.NewPull!.Case);
        var plain = LoadCaseRequest.At(design, worst.Temperature - Garden.Parameters.Site.ReferenceTemperature, Backstays.None);
        var request = plain with
        {
            UnstressedLengths = [.. plain.UnstressedLengths.Select(l => l / 1.005)],
            WeightPerLength = plain.WeightPerLength * 1.005,
        };
        var (spacing, loads) = (Garden.Parameters.Ropes.Spacing, worst.Pair!.Loads);
        Assert.True(PairSolver.TryFind(request, spacing, loads, 1e-12, 200, out var pair, out _));
        RopeSamples.Close(pair!.Left.LargestTension, end.NewPull!.Tension, 1e-6);
        Assert.True(end.NewPull.Tension > 1.1 * Work.Governing!.Shape!.LargestTension);
        Assert.True(Work.Stretch[0].NewPull!.Tension < end.NewPull.Tension);
        RopeSamples.Close(end.NewPull.Tension, Garden.Checks.Single(c => c.Id is "rope-strength-new").Demand, 1e-9);
        // By plain marks it is never set so short; where the file chose such marks the fittings hold it.
        var asIs = Bridges.Build(With("sag: 6 %", "sag: 6 %, new: as-is"));
        foreach (var id in (string[])["shackle-size", "turnbuckle-size"])
        {
            RopeSamples.Close(Work.Governing.Shape!.LargestTension, Garden.Checks.Single(c => c.Id == id).Demand, 1e-9);
            RopeSamples.Close(end.NewPull.Tension, asIs.Checks.Single(c => c.Id == id).Demand, 1e-9);
        }

        Assert.True(Garden.Checks.Single(c => c.Id is "anchor-a").Demand > Work.Supports[0].Tension);
    }

    /// <summary>By hand: a backstay at 60° is pulled by H / cos 60° = 2 H, more than the rope between the supports.</summary>
    [Fact]
    public void A_steep_backstay_governs_rope_and_fittings()
    {
        var model = Bridges.Build(With("span: 30 ft", "span: 30 ft, a: { backstay: { length: 20 ft, angle: 60 deg } }"));
        var level = 2 * model.Cases.Max(c => c.Shape!.Horizontal);
        RopeSamples.Close(level, model.Checks.Single(c => c.Id is "rope-strength").Demand, 1e-9);
        RopeSamples.Close(level, model.Checks.Single(c => c.Id is "shackle-size").Demand, 1e-9);
        Assert.True(model.Ropework.Stretch[1].NewPull!.Tension > level);
    }

    /// <summary>A level mark and a rope's parabola: halfway up a line of sight on unequal supports touches at mid-span.</summary>
    [Theory]
    [InlineData(Bridges.Garden)]
    [InlineData(Bridges.Inclined)]
    public void Line_of_sight_touches_the_rope(string text)
    {
        var model = Bridges.Build(text);
        var slope = model.Rope.Nodes[^1].Y / model.Rope.Nodes[^1].X;
        foreach (var row in model.Hoisting)
        {
            Assert.InRange(row.Sight, row.Sag - 1e-12, row.Sag * 1.02);
            Assert.True(row.Lowest.Y <= Math.Min(0, model.Rope.Nodes[^1].Y) + 1e-12);
        }

        var bare = LoadCaseSolver.Find(LoadCaseRequest.At(model.Rope, 0, Backstays.None) with
        {
            UnstressedLengths = [model.Rope.UnstressedLength()],
            Loads = [0, 0],
            Start = null,
        });
        var sight = model.Hoisting.First(r => Math.Abs(r.Temperature - model.Parameters.Site.ReferenceTemperature) < 1e-9).Sight;
        double[] above =
            [.. Enumerable.Range(0, 2001).Select(i => bare.Nodes[^1].X * i / 2000).Select(x => bare.HeightAt(x) - (slope * x) + sight)];
        Assert.InRange(above.Min(), -1e-9, 1e-6);
    }

    [Fact]
    public void Odd_input_fails_with_a_sentence()
    {
        var design = Garden.Rope;
        var table = Hoisting.Solve(design, design.Loads, 15, [-300_000], Backstays.None);
        Assert.NotEmpty(table.Failures);
        Assert.Equal(2, table.Rows.Length);
        Assert.False(SupportMove.TryFallOfMiddle(design, Backstays.None, 1000, out _, out var failure));
        Assert.NotNull(failure);
        Assert.Throws<MathNet.Numerics.NonConvergenceException>(() => SupportMove.FallOfMiddle(design, Backstays.None, 1000));
    }

    /// <summary>By hand on a level line 2 m below: sag, and the rope's radius or the base below it.</summary>
    [Fact]
    public void Clearance_is_measured_from_the_lowest_part()
    {
        ImmutableArray<GroundPoint> flat = [new(-5, -2), new(20, -2)];
        var shape = Garden.Rope;
        Assert.Equal(2 - shape.Sag - 0.01, Clearance.OverGround(shape, flat, 0.01, 0.1)!.Value, 1e-3);
        Assert.Equal(1 - shape.Sag - 0.01, Clearance.OverWater(shape, -1, 0.01), 1e-3);
        Assert.Null(Clearance.OverGround(shape, [], 0.01, 0.1));
        ImmutableArray<GroundPoint> peak = [new(0, -2), new(3, -2), new(3.2, -0.1), new(3.4, -2), new(9, -2)];
        Assert.Equal(shape.HeightAt(3.2) + 0.1 - 0.01, Clearance.OverGround(shape, peak, 0.01, 0.1)!.Value, 1e-9);
    }

    /// <summary>
    /// By hand: rope that falls by 1 in 10 to x = 6, ground that falls by 1 in 2 from (2, −1) and rises by 1 in 4 from (6, −3).
    /// Four metres out they are −0.4 + 2 apart, eight metres out −0.4 + 2.5, at the ground's bend more.
    /// </summary>
    [Fact]
    public void Ground_between_two_points_lies_on_their_line()
    {
        var shape = RopeSamples.Parabola(12, 0, 0.6, 500, bays: 2);
        ImmutableArray<GroundPoint> ground = [new(2, -1), new(6, -3), new(10, -2)];
        Assert.Equal(1.6 - 0.1, Clearance.OverGround(shape, ground, 0.1, 4)!.Value, 1e-9);
        Assert.Equal(1.6 + 0.4 - 0.1, Clearance.OverGround(shape, ground, 0.1, 5)!.Value, 1e-9);
    }

    /// <summary>
    /// By hand, inches: ground that falls from the support by 1 in 1, rope by 8 in 72. They part from the end base's inner face
    /// on, half of 3-1/2 in out; the lowest part is the rope, 3/8 in below its axis.
    /// </summary>
    [Fact]
    public void Clearance_begins_at_the_end_bases_inner_face()
    {
        var bridge = new TwoBays { Site = ", ground: [[0 in, 0 in], [72 in, -72 in], [144 in, -72 in]]" };
        var over = bridge.Context.Cases.Single(c => string.Equals(c.Id, "dead", StringComparison.Ordinal)).OverGround!.Value;

        // Between frames the rope hangs a little lower by its own weight.
        Assert.Equal((1.75 * (1 - (8 / 72.0))) - 0.375, over / TwoBays.Inch, 0.02);
    }

    /// <summary>
    /// By hand, inches: two bars of √(72² + 8²), their ends 1 in nearer, hang √(72² + 8² − 71.5²) = 11.65 deep. Half an inch
    /// beside the bend, at the old mid-span, that is 1/143 less. Elastic rope under its own weight comes near it.
    /// </summary>
    [Fact]
    public void A_support_that_moves_moves_by_an_inch()
    {
        var deep = Math.Sqrt((72 * 72) + (8 * 8) - (71.5 * 71.5));
        Assert.Equal(
            (deep * (1 - (1 / 143.0))) - 8, new TwoBays().Context.Ropework.MidSpanDropWhenSupportMoves!.Value / TwoBays.Inch, 0.05);
    }

    /// <summary>
    /// Input whose last quarter of a bay was once left out: ground that rises towards a support is nearest beside the end
    /// base. Over the base itself it may rise to the landing.
    /// </summary>
    [Fact]
    public void Ground_is_looked_at_up_to_the_end_bases()
    {
        var shape = Garden.Rope;
        var span = shape.Nodes[^1].X;
        ImmutableArray<GroundPoint> banks = [new(0, -0.05), new(0.5, -3), new(span - 0.5, -3), new(span, -0.05)];
        foreach (var x in new[] { 0.1, span - 0.1 })
        {
            var beside = shape.HeightAt(x) + 0.64 - 0.01;
            Assert.Equal(beside, Clearance.OverGround(shape, banks, 0.01, 0.1)!.Value, 0.005);
            Assert.True(Clearance.OverGround(shape, banks, 0.01, 0.1)!.Value <= beside + 1e-9);
        }

        Assert.True(Clearance.OverGround(shape, banks, 0.01, 0.02)!.Value < 0.25);
        Assert.Null(Clearance.OverGround(shape, [new(-5, 0), new(-1, 0)], 0.01, 0.1));
    }

    [Theory]
    [InlineData(UnitSystem.Imperial, 0.0254 / 16)]
    [InlineData(UnitSystem.Metric, 0.001)]
    public void Rounded_marks_never_run_away(UnitSystem units, double step)
    {
        double[] exact = [.. Enumerable.Range(0, 500).Select(i => i * 0.83333)];
        double[] rounded = [.. exact.Select(m => Rounding.ToTape(m, units))];
        Assert.All(exact.Zip(rounded), p => Assert.True(Math.Abs(p.First - p.Second) <= (step / 2) + 1e-12));
        Assert.All(rounded, r => Assert.Equal(Math.Round(r / step), r / step, 1e-9));
    }

    private static string With(string old, string now) => Bridges.Garden.Replace(old, now, StringComparison.Ordinal);
}
