using BridgeForm.Checks;
using BridgeForm.Checks.Timber;
using BridgeForm.Connections;
using BridgeForm.Project;
using BridgeForm.Quantities;

namespace BridgeForm.Tests.Checks.Timber;

/// <summary>Joints of plates and bolts, by hand in inches and pounds. Southern pine, G 0.55, Fv 175·1.6·0.97 = 271.6 psi.</summary>
public sealed class JointCheckTests
{
    private const double Inch = 0.0254;
    private const double Pound = Units.PoundForce;
    private const double Psi = Pound / (Inch * Inch);

    private const string Wide = """
        name: Braces far out (invented)
        site: { span: 30 ft }
        ropes: { spacing: 46 in }
        frames:
          base: { section: 4x6, length: 76 in }
          post: { section: 4x4, length: 40 in, lean: 8 deg, foot: 18-1/2 in }
          brace: { section: 4x4, lean: 18 deg, foot: 33 in }
        joints:

        """;

    private static readonly double s_post = 18.5 + (1.75 / Math.Cos(Bridges.Radians(8)));
    private static readonly double s_brace = 33 - (1.75 / Math.Cos(Bridges.Radians(18)));
    private static readonly double s_top = (40 * Math.Cos(Bridges.Radians(8))) + 1.5;

    /// <summary>200 lbf inward pulls the brace's foot up: 200·top/(brace − post), and the base splits above the row, 3.5 in down.</summary>
    [Fact]
    public void A_base_splits_above_the_bolts()
    {
        var check = Check("brace-foot: { bolt: 3/8 in, count: 3, spacing: 3 in, carrier: { depth: 3-1/2 in, count: 2 } }", "brace-foot");
        var up = 200 * s_top / (s_brace - s_post);
        var allowed = 2.0 / 3 * 271.6 * 3.5 * 3.5 * Math.Pow(3.5 / 5.5, 2);
        Assert.Equal(CheckStatus.Pass, check.Status);
        Assert.Equal(up / allowed, check.Ratio!.Value, 1e-6);
        Assert.Equal(up / Math.Cos(Bridges.Radians(18)) * Pound, check.Demand, 0.01);
        Assert.Contains("a licensed engineer confirms the joint", check.Detail, StringComparison.Ordinal);
    }

    /// <summary>Two lines in the base, 2 in apart about 2-1/2 in: the deeper one, 3.5 in down, is what the base splits above.</summary>
    [Fact]
    public void Of_two_lines_the_deeper_counts()
    {
        const string Strut = "brace-foot: { bolt: 5/16 in, count: 4, spacing: 3 in, lines: 2, apart: 1 in, end: 2-1/2 in, ";
        var two = Check(Strut + "carrier: { lines: 2, apart: 2 in, depth: 2-1/2 in, count: 3 } }", "brace-foot");
        var up = 200 * s_top / (s_brace - s_post);
        var allowed = 2.0 / 3 * 271.6 * 3.5 * 3.5 * Math.Pow(3.5 / 5.5, 2);
        Assert.Equal(up / allowed, two.Ratio!.Value, 1e-6);
        Assert.Contains("the 3.5 in from the pressed edge to the bolts furthest from it", two.Detail, StringComparison.Ordinal);
    }

    /// <summary>
    /// 2 · 2 bolts of 1/4 in, ±5/8 in along the base and ±3/4 in about 3 in below its top, shrink under one plate, CM 0.4. Inward the pull
    /// goes through their middle, a quarter each; outward the brace's push acts 3 in above it and turns them.
    /// </summary>
    [Fact]
    public void Two_lines_under_one_plate_shrink()
    {
        var check = Check(
            "brace-foot: { bolt: 5/16 in, count: 4, spacing: 3 in, lines: 2, apart: 1 in, end: 2-1/2 in, carrier: { bolt: 1/4 in, "
                + "lines: 2, apart: 1-1/2 in, depth: 3 in, count: 2, spacing: 1-1/4 in } }", "brace-foot");
        var up = 200 * s_top / (s_brace - s_post);
        var (pull, turn) = (
            Share(up / 4, up * Math.Tan(Bridges.Radians(18)) / 4),
            Share(Outward() * 3 * 0.625 / Polar, (Outward() / 4) + (Outward() * 3 * 0.75 / Polar)));
        Assert.Contains("worst bolt of the base", check.Detail, StringComparison.Ordinal);
        Assert.Contains("CM 0.4 ×", check.Detail, StringComparison.Ordinal);
        var plain = Math.Max(pull, turn);
        Assert.InRange(check.Ratio!.Value, plain, plain * 1.005);
    }

    /// <summary>
    /// Outward the brace's foot is pressed on the base, which the wood carries; its push outward bends the row of two about its middle:
    /// that of the lower bolt is shared evenly and added to M/s, across the brace.
    /// </summary>
    [Fact]
    public void A_row_in_the_brace_turns()
    {
        var check = Check(
            "brace-foot: { bolt: 3/8 in, count: 2, spacing: 2 in, end: 4 in, carrier: { depth: 3-1/2 in, count: 2 } }", "brace-foot");
        var lean = Bridges.Radians(18);
        var push = Outward();
        var moment = push * 5 * Math.Cos(lean);
        var (along, across) = (push * Math.Sin(lean) / 2, (push * Math.Cos(lean) / 2) + (moment / 2));
        var force = Math.Sqrt((along * along) + (across * across));
        var angle = Math.Atan2(across, along);
        var limit = new YieldLimit(
            0.375 * Inch, 45000 * Psi, 3.5 * Inch, DowelBearing.Wood(0.55, 0.375 * Inch, angle), 0.25 * Inch, 87000 * Psi, angle, true);

        // Two bolts share nearly alike: Cg within half a percent below 1.
        var plain = force * Pound / (limit.Value * 1.6 * 0.7);
        Assert.Equal(CheckStatus.Fail, check.Status);
        Assert.InRange(check.Ratio!.Value, plain, plain * 1.005);
        Assert.Contains("worst bolt of the brace", check.Detail, StringComparison.Ordinal);
    }

    /// <summary>
    /// Two lines in the brace, 1 in apart, its end so near that rows tear out. Outward the foot is pushed sideways by the force held,
    /// F·sin 18° along the grain, and the moment F·cos 18°·(2-1/2 + 1-5/8) about the middle of 2 · 3 bolts pulls one row
    /// by 3·M·0.5/Σr², Σr² = 6·0.5² + 4·1.625² = 12.0625 in². A row holds 3·271.6·3.5·1.625 lbf (NDS appendix E.3).
    /// </summary>
    [Fact]
    public void One_row_of_two_takes_the_moment()
    {
        var check = LocalOf(
            "brace-foot: { bolt: 5/16 in, count: 3, spacing: 1-5/8 in, lines: 2, apart: 1 in, end: 2-1/2 in, carrier: { lines: 2, "
                + "apart: 2 in, depth: 2-1/2 in, count: 3 } }");
        var (lean, push) = (Bridges.Radians(18), Outward());
        var pull = (push * Math.Sin(lean) / 2) + (3 * push * Math.Cos(lean) * 4.125 * 0.5 / 12.0625);
        Assert.Equal(pull / (3 * 271.6 * 3.5 * 1.625), check, 1e-3);
    }

    /// <summary>The largest share of a row that is torn out of the brace, under any push.</summary>
    private static double LocalOf(string joint)
    {
        var parameters = Contexts.Of(Wide + "  " + joint + "\n").Parameters;
        var layout = PlateLayout.Build(parameters.Frames, JointPlace.BraceFoot, parameters.Frames.Joints[0].Plates!);
        var (strut, carrier, _) = JointMember.Build(parameters, layout);
        var capacity = new PlateCapacity(new CheckWords(UnitSystem.Imperial), layout, strut!, carrier!);
        return JointLoad.List(Contexts.Of(Wide + "  " + joint + "\n").Layout, parameters, JointPlace.BraceFoot)
            .SelectMany(capacity.OfStrut)
            .Where(l => l.Text().StartsWith("row torn out of the brace", StringComparison.Ordinal))
            .Max(l => l.Ratio);
    }

    /// <summary>A plate of thin sheet, a row higher up: each is weaker than what holds.</summary>
    [Theory]
    [InlineData("carrier: { depth: 3 in, count: 2 }")]
    [InlineData("plate: { thickness: 1/8 in }, carrier: { depth: 3-1/2 in, count: 2 }")]
    public void What_is_taken_away_is_missed(string keys)
    {
        var whole = Check("brace-foot: { bolt: 3/8 in, count: 3, spacing: 3 in, carrier: { depth: 3-1/2 in, count: 2 } }", "brace-foot");
        var less = Check($"brace-foot: {{ bolt: 3/8 in, count: 3, spacing: 3 in, {keys} }}", "brace-foot");
        Assert.True(less.Ratio > whole.Ratio * 1.05, $"{less.Ratio} {whole.Ratio}");
    }

    [Fact]
    public void What_is_not_described_stays_for_an_engineer()
    {
        var context = Contexts.Of(Wide + "  brace-foot: { bolt: 3/8 in, count: 3, spacing: 3 in, carrier: { depth: 3-1/2 in } }\n");
        var bare = Contexts.Of(Wide.Replace("joints:\n", "", StringComparison.Ordinal));
        foreach (var id in (string[])["guard-joint-post-foot", "guard-joint-brace-head"])
        {
            var (given, without) = (Contexts.Check(context, id), Contexts.Check(bare, id));
            Assert.Equal(CheckStatus.Engineer, given.Status);
            Assert.Equal(without.Detail, given.Detail);
            Assert.Equal(without.Source, given.Source);
        }
    }

    /// <summary>Wood that no table has: told, with the force, and no number for the joint.</summary>
    [Fact]
    public void Wood_without_values_is_told()
    {
        var check = Contexts.Check(
            Wide + "  brace-foot: { bolt: 3/8 in, count: 3, spacing: 3 in, carrier: { depth: 3-1/2 in } }\n"
                + "stock: { treated: { species: white-oak, treated: true, lengths: [12 ft] }, cedar: { species: western-red-cedar, "
                + "lengths: [12 ft] } }\n",
            "guard-joint-brace-foot");
        Assert.Equal(CheckStatus.Engineer, check.Status);
        Assert.Null(check.Capacity);
        Assert.Contains("white-oak", check.NotChecked, StringComparison.Ordinal);
    }

    // 4·(0.625² + 0.75²) in².
    private const double Polar = 4 * ((0.625 * 0.625) + (0.75 * 0.75));

    /// <summary>A force on a 1/4 in bolt in the base, as a share of what it carries: across and along the grain, pounds.</summary>
    private static double Share(double across, double along)
    {
        var angle = Math.Atan2(across, along);
        var limit = new YieldLimit(
            0.25 * Inch, 45000 * Psi, 3.5 * Inch, DowelBearing.Wood(0.55, 0.25 * Inch, angle), 0.25 * Inch, 87000 * Psi, angle, true);
        return Math.Sqrt((across * across) + (along * along)) * Pound / (limit.Value * 1.6 * 0.4);
    }

    /// <summary>
    /// What the brace pushes outward at its foot, pounds: its force at the lower edge of its head's contact, on the outer edge of its
    /// foot, where it leans most.
    /// </summary>
    private static double Outward()
    {
        var lean = Bridges.Radians(18);
        var face = 18.5 + (3.5 / Math.Cos(Bridges.Radians(8)));
        var tan = Math.Tan(Bridges.Radians(8)) + Math.Tan(lean);
        var edge = 1.75 / Math.Cos(lean);
        var low = (s_brace - edge - face) / tan;
        return 200 * s_top / (s_brace + edge - s_post) * (s_brace + edge - face - (low * Math.Tan(Bridges.Radians(8)))) / low;
    }

    private static CheckResult Check(string joint, string name) => Contexts.Check(Wide + "  " + joint + "\n", "guard-joint-" + name);
}
