using BridgeForm.Checks;
using BridgeForm.Checks.Timber;
using BridgeForm.Connections;
using BridgeForm.Frames;
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

    /// <summary>Ropes outside of the braces: what they carry of the deck comes in past these.</summary>
    private static readonly string s_apart = Wide.Replace("46 in", "80 in", StringComparison.Ordinal)
        .Replace("76 in", "96 in", StringComparison.Ordinal);

    private static readonly double s_post = 18.5 + (1.75 / Math.Cos(Bridges.Radians(8)));
    private static readonly double s_brace = 33 - (1.75 / Math.Cos(Bridges.Radians(18)));
    private static readonly double s_top = (40 * Math.Cos(Bridges.Radians(8))) + 1.5;

    /// <summary>
    /// 200 lbf inward pulls the brace's foot up, and the base, which hangs on its rope outside of it, is sheared by that and by the rope's
    /// part of the loaded deck: half of it, less 200 · height / 80 in. It splits above the row, 3.5 in down (NDS 3.4.3.3).
    /// </summary>
    [Fact]
    public void A_base_splits_above_the_bolts()
    {
        const string Joint = "brace-foot: { bolt: 3/8 in, count: 3, spacing: 3 in, carrier: { depth: 3-1/2 in, count: 2 } }";
        var context = Contexts.Of(s_apart + "  " + Joint + "\n");
        var check = Contexts.Check(context, "guard-joint-brace-foot");
        var up = 200 * s_top / (s_brace - s_post);
        Assert.Equal(Shear(context) / Allowed(3.5), check.Ratio!.Value, 1e-6);
        Assert.True(Shear(context) > up * 1.1, "the deck adds to it");
        Assert.Equal(up / Math.Cos(Bridges.Radians(18)) * Pound, check.Demand, 0.01);
        Assert.Contains("sheared beside the bolts by", check.Detail, StringComparison.Ordinal);
        Assert.Contains("a licensed engineer confirms the joint", check.Detail, StringComparison.Ordinal);
    }

    /// <summary>More people on the deck shear the base more, and the joint that splits it fails.</summary>
    [Fact]
    public void People_on_the_deck_count_in_a_joint()
    {
        const string Joint = "brace-foot: { bolt: 3/8 in, count: 3, spacing: 3 in, carrier: { depth: 3-1/2 in, count: 2 } }";
        double Of(string live)
        {
            var context = Contexts.Of(s_apart + "  " + Joint + $"\nloads: {{ live: {live} psf }}\n");
            return Contexts.Check(context, "guard-joint-brace-foot").Ratio!.Value;
        }

        // 80 psf more on 37 in of deck and one bay of 3 ft or less: some 370 lbf more on either rope.
        Assert.InRange((Of("140") - Of("60")) * Allowed(3.5), 80.0 / 144 * 37 * 30 / 2 * 0.9, 80.0 / 144 * 37 * 36 / 2 * 1.1);
    }

    /// <summary>Two lines in the base, 2 in apart about 2-1/2 in: the deeper one, 3.5 in down, is what the base splits above.</summary>
    [Fact]
    public void Of_two_lines_the_deeper_counts()
    {
        const string Joint = "brace-foot: { bolt: 5/16 in, count: 4, spacing: 3 in, lines: 2, apart: 1 in, end: 2-1/2 in, "
            + "carrier: { lines: 2, apart: 2 in, depth: 2-1/2 in, count: 3 } }";
        var context = Contexts.Of(s_apart + "  " + Joint + "\n");
        var two = Contexts.Check(context, "guard-joint-brace-foot");
        Assert.Equal(Shear(context) / Allowed(3.5), two.Ratio!.Value, 1e-6);
        Assert.Contains("the 3.5 in from the pressed edge to the bolts furthest from it", two.Detail, StringComparison.Ordinal);
    }

    /// <summary>Wind of 150 psf on the guard asks more of its joints than people do, and is told.</summary>
    [Fact]
    public void Wind_on_the_guard_comes_to_its_joints()
    {
        const string Joint = "brace-foot: { bolt: 3/8 in, count: 3, spacing: 3 in, carrier: { depth: 3-1/2 in, count: 2 } }";
        string With(string psf) => Wide + "  " + Joint + $"\nloads: {{ wind: {{ pressure: {psf} psf, source: a gale }} }}\n";
        var context = Contexts.Of(With("150"));
        var (frames, guard) = (context.Parameters.Frames, context.Parameters.Guard);
        var bay = context.Layout.Poses.Zip(context.Layout.Poses.Skip(1), (a, b) => (b.Node - a.Node).Length).Max() / Inch;
        var rails = GuardRails.Heights(context.Layout, 1).ToList();
        var lean = Bridges.Radians(8);
        var rail = (guard.Rail.Width / Inch * Math.Cos(lean)) + (guard.Rail.Thickness / Inch * Math.Sin(lean));
        var post = (40 * Math.Cos(lean)) - (rails.Count * rail) - (context.Parameters.Deck.Thickness / Inch);
        var area = (rails.Count * rail * bay) + (1.5 * bay) + (3.5 * post);
        var (force, height) = GuardWind.OnPost(context.Layout, context.Parameters);
        Assert.InRange(force / Pound, 150.0 / 144 * area * 0.96, 150.0 / 144 * area * 1.04);
        var middle = ((rails.Sum(h => h / Inch * Math.Cos(lean)) * rail * bay) + (1.5 * bay * (s_top - 0.75)) + (3.5 * post * 20)) / area;
        Assert.InRange(height / Inch, middle - 1.5, middle + 1.5);
        Assert.Equal(40 * Inch, frames.Post.Length, 1e-9);

        // Inward: W · h / (brace − post) up, along the brace.
        var up = force * height / Inch / (s_brace - s_post);
        var check = Contexts.Check(context, "guard-joint-brace-foot");
        Assert.Contains("wind of 150 psf on the guard", check.Detail, StringComparison.Ordinal);
        Assert.True(check.Ratio > Contexts.Check(With("20"), "guard-joint-brace-foot").Ratio);
        Assert.True(up > 200 * s_top / (s_brace - s_post) * Pound);
        foreach (var id in (string[])["guard-post", "guard-brace", "guard-post-shear", "end-base-shear"])
        {
            Assert.True(Contexts.Check(context, id).Demand > Contexts.Check(With("20"), id).Demand * 1.1, id);
        }
    }

    /// <summary>What a push along the bridge asks of the plates of a post's foot: 200 · top over the middles of both.</summary>
    [Fact]
    public void A_push_along_the_bridge_is_told_as_not_looked_at()
    {
        var check = Contexts.Check(
            Wide + "  post-foot: { bolt: 1/4 in, spacing: 1-1/4 in, carrier: { depth: 3 in, lines: 2, apart: 1-1/2 in } }\n",
            "guard-joint-post-foot");
        var words = new CheckWords(UnitSystem.Imperial);
        Assert.Contains(
            $"{words.Pounds(200 * Pound * s_top / 3.75)} in each plate (guard-post-along)", check.Detail, StringComparison.Ordinal);
    }

    /// <summary>In 3/8 in plates on sticks 5-1/2 in thick, threads bear in the nut's plate: the root counts.</summary>
    [Fact]
    public void Threads_in_a_plate_count_by_their_root()
    {
        var check = Contexts.Check(
            Wide.Replace("4x6", "6x6", StringComparison.Ordinal).Replace("4x4", "6x6", StringComparison.Ordinal)
                .Replace("foot: 33 in", "foot: 36 in", StringComparison.Ordinal).Replace("46 in", "60 in", StringComparison.Ordinal)
                .Replace("76 in", "90 in", StringComparison.Ordinal)
                + "  post-foot: { bolt: 1/4 in, plate: { thickness: 3/8 in }, carrier: { depth: 4 in } }\n",
            "guard-joint-post-foot");
        Assert.Contains("Dr 0.189 in", check.Detail, StringComparison.Ordinal);
    }

    /// <summary>Largest shear of a base from the row at a brace's foot outward, pounds, while people stand and one pulls inward.</summary>
    private static double Shear(CheckContext context)
    {
        var beam = BaseCases.List(context).Single(c => c.Name == "live load and 200 lbf inward").Beam;
        var row = PlateLayout.Build(
            context.Parameters.Frames, JointPlace.BraceFoot, context.Parameters.Frames.Joints[0].Plates!).Carrier;
        return beam.Places(Math.Min(s_brace * Inch, row.Min(b => b.Z)), Math.Max(s_brace * Inch, row.Max(b => b.Z)))
            .Max(z => Math.Abs(beam.Shear(z))) / Pound;
    }

    // 2/3 · Fv' · b · de · (de/d)², pounds.
    private static double Allowed(double effective) => 2.0 / 3 * 271.6 * 3.5 * effective * Math.Pow(effective / 5.5, 2);

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
