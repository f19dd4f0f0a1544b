using System.Collections.Immutable;
using BridgeForm.Loads;
using BridgeForm.Materials;
using BridgeForm.Project;
using BridgeForm.Ropes;
using BridgeForm.Ropes.Pairs;
using BridgeForm.Tests.Ropes;
using CsCheck;

namespace BridgeForm.Tests.Loads;

public sealed class HungRopesTests
{
    private const double Expansion = SteelRope.ThermalExpansion;

    /// <summary>Any bridge in range, built wrong by known amounts: each rope by itself, span, rise, temperature and growth.</summary>
    private static Gen<(DesignRequest Request, double[] Wrong, BuildStage Stage)> Wrong { get; } = Gen.Select(
        RopeSamples.AnyBridge, Gen.Double[-1, 1].Array[6], Gen.Bool.Select(bare => bare ? BuildStage.Bare : BuildStage.Complete));

    // The solver's own forward run, the ropes put together here and not by what is tested: as wrong as they are, then as corrected.
    [Fact]
    public void Ropes_built_wrong_by_known_amounts_come_back_to_the_design() => Wrong.Sample(
        (request, wrong, stage) =>
        {
            var design = DesignState.Find(request);
            var length = design.UnstressedLength();
            var (span, rise) = (request.Span * (1 + (0.002 * wrong[0])), request.Rise + (0.002 * request.Span * wrong[1]));
            var (degrees, grown) = (25 * wrong[2], 0.0015 * (1 + wrong[3]));
            var fed = new RopePair(0.003 * length * wrong[4], 0.003 * length * wrong[5]);
            var ropes = Hung(design, stage) with { Span = span, Rise = rise, DegreesAbove = degrees, Stretch = grown };
            var measured = new RopePair(
                Forward(design, stage, span, rise, degrees, grown, fed.Left).Sag,
                Forward(design, stage, span, rise, degrees, grown, fed.Right).Sag);
            Assert.True(ropes.TryFit(measured, out var found, out var failure), failure);

            // What was found, turned back out of the ropes, with the sag that a rope without fault has there.
            var right = Forward(design, stage, span, rise, degrees, grown, 0).Sag;
            Assert.Equal(right, Forward(design, stage, span, rise, degrees, grown, fed.Left - found.Left).Sag, 0.001);
            Assert.Equal(right, Forward(design, stage, span, rise, degrees, grown, fed.Right - found.Right).Sag, 0.001);

            // And the finished bridge to the sag of its design, whatever span and growth have come to.
            var finished = Hung(design, BuildStage.Complete) with { Span = span, Rise = rise, Stretch = grown };
            Assert.True(finished.TryFit(new RopePair(request.Sag, request.Sag), out var wanted, out failure), failure);
            var turned = fed.Left - (found.Left - wanted.Left);
            Assert.Equal(request.Sag, Forward(design, BuildStage.Complete, span, rise, 0, grown, turned).Sag, 0.001);
        },
        iter: 500);

    // A parabola of 10 m that hangs 0.50 m deep: 8/3·s²/l of spare length, so that 0.52 m asks for 8/3·(0.52² − 0.50²)/10 more.
    [Fact]
    public void A_rope_that_hangs_two_centimetres_too_deep_is_5_4_mm_too_long()
    {
        var design = RopeSamples.Catenary(10, 0, 0.5, 10);
        Assert.True(Hung(design, BuildStage.Bare).TryFit(new RopePair(0.52, 0.50), out var fed, out var failure), failure);
        Assert.Equal(8.0 / 3 * ((0.52 * 0.52) - 0.25) / 10, fed.Left, 0.0001);
        Assert.Equal(0, fed.Right, 1e-8);
    }

    // Broken on purpose: a sag read off by a centimetre is not taken for the right one.
    [Fact]
    public void A_wrong_reading_makes_another_length()
    {
        var design = DesignState.Find(RopeSamples.Footbridge);
        var ropes = Hung(design, BuildStage.Complete);
        Assert.True(ropes.TryFit(new RopePair(0.72, 0.73), out var fed, out _));
        Assert.Equal(0, fed.Left, 1e-7);
        Assert.InRange(fed.Right, 0.0015, 0.0035);
    }

    // Posts and caps above the ropes lean towards the rope that hangs lower, and press it further down: the ropes differ less in
    // length than they would without that lever.
    [Fact]
    public void What_stands_high_hides_some_of_the_rope_that_is_shorter()
    {
        var design = DesignState.Find(RopeSamples.Footbridge);
        var flat = Hung(design, BuildStage.Complete) with { Spacing = 1.2 };
        var high = flat with { Loads = flat.Loads with { HeightMoments = [.. flat.Loads.Weights.Select(w => 0.5 * w)] } };
        Assert.True(flat.TryFit(new RopePair(0.74, 0.70), out var without, out _));
        Assert.True(high.TryFit(new RopePair(0.74, 0.70), out var with, out _));
        Assert.InRange((with.Left - with.Right) / (without.Left - without.Right), 0.1, 0.99);
        Assert.True(high.TryHang(with, out var hung, out _));
        Assert.Equal(0.74, hung!.Left.Sag, 1e-8);
        Assert.Equal(0.70, hung.Right.Sag, 1e-8);
    }

    [Fact]
    public void Sags_that_no_rope_can_have_are_told()
    {
        var ropes = Hung(DesignState.Find(RopeSamples.Footbridge), BuildStage.Complete);
        Assert.False(ropes.TryFit(new RopePair(0.0001, 0.72), out _, out var failure));
        Assert.NotNull(failure);
    }

    private static RopeShape Forward(
        RopeShape design, BuildStage stage, double span, double rise, double degrees, double grown, double fed)
    {
        var growth = (1 + (Expansion * degrees)) * (1 + grown);
        var lengths = design.Segments.Select(s => s.UnstressedLength * growth).ToArray();
        lengths[0] += fed * (1 + (Expansion * degrees)) / 2;
        lengths[^1] += fed * (1 + (Expansion * degrees)) / 2;
        return LoadCaseSolver.Find(new LoadCaseRequest
        {
            Span = span,
            Rise = rise,
            UnstressedLengths = stage == BuildStage.Bare ? [lengths.Sum()] : [.. lengths],
            Loads = stage == BuildStage.Bare ? [0, 0] : design.Loads,
            WeightPerLength = design.WeightPerLength / growth,
            AxialStiffness = design.AxialStiffness,
        });
    }

    private static HungRopes Hung(RopeShape design, BuildStage stage)
    {
        var none = ImmutableArray.Create(new double[design.Nodes.Length]);
        return new HungRopes
        {
            Design = design,
            Backstays = Backstays.None,
            Stage = stage,
            Loads = new PairLoads([.. design.Loads.Select(l => 2 * l)], none, none),

            // So far apart that frames stand whatever the ropes' lengths are.
            Spacing = design.Nodes[^1].X,
            Span = design.Nodes[^1].X,
            Rise = design.Nodes[^1].Y,
            DegreesAbove = 0,
        };
    }
}
