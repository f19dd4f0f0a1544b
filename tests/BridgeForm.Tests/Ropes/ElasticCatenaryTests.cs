using BridgeForm.Ropes;
using CsCheck;

namespace BridgeForm.Tests.Ropes;

public sealed class ElasticCatenaryTests
{
    private static readonly Gen<(double H, double V, double S, double W, double Ea)> Pieces = Gen.Select(
        Gen.Double[1, 1e5], Gen.Double[-1e5, 1e5], Gen.Double[0.01, 50], Gen.Double[0, 500], Gen.Double[1e6, 1e8]);

    /// <summary>
    /// Irvine, Cable Structures, 1981, §1.3, as printed; the references were solved from them to a residual of 1e-9.
    /// </summary>
    [Theory]
    [InlineData(30, 30.2, 1000, 1e7, 55060.898529, 57093.892378, 30.36834534, 2.0443943486)]
    [InlineData(30, 30.2, 1000, 1e15, 75074.883821, 76578.379330, 30.2, 1.5034955086)]
    [InlineData(100, 100.5, 50, 5e6, 11849.786287, 12113.219692, 100.73995348, 5.2812934049)]
    public void Level_elastic_catenary_has_its_reference_solution(
        double span, double length, double weight, double stiffness, double h, double tension, double stretched, double sag)
    {
        var shape = LoadCaseSolver.Find(new LoadCaseRequest
        {
            Span = span,
            Rise = 0,
            UnstressedLengths = [length],
            Loads = [0, 0],
            WeightPerLength = weight,
            AxialStiffness = stiffness,
        });
        const double Tolerance = 1e-9;
        RopeSamples.Close(h, shape.Horizontal, Tolerance);
        RopeSamples.Close(tension, shape.LargestTension, Tolerance);
        RopeSamples.Close(stretched, shape.StretchedLength(), Tolerance);
        RopeSamples.Close(sag, shape.Sag, Tolerance);
        RopeSamples.Close(weight * length / 2, shape.Segments[0].VerticalA, Tolerance);
    }

    /// <summary>Irvine, Cable Structures, 1981, §1.3, of a level piece that does not stretch: span = 2·H/w · arsinh(w·s / (2·H)).</summary>
    [Theory]
    [InlineData(0.02)]
    [InlineData(0.2)]
    [InlineData(2)]
    [InlineData(9)]
    [InlineData(90)]
    public void Taut_and_slack_pieces_have_all_their_digits(double weight)
    {
        const double H = 1000, Length = 10;
        var span = 2 * H / weight * Math.Asinh(weight * Length / 2 / H);
        Assert.Equal(span, new ElasticCatenary(H, weight * Length / 2, Length, weight, 1e18).X, 5e-14 * Length);
    }

    /// <summary>The differential equations dx = (1 + T/EA)·H/T ds, dz = (1 + T/EA)·v/T ds by Simpson's rule.</summary>
    [Fact]
    public void Closed_form_agrees_with_integration_along_the_rope() => Pieces.Sample(p =>
    {
        var piece = new ElasticCatenary(p.H, p.V, p.S, p.W, p.Ea);
        // Near a sharp turn Simpson's rule, not the closed form, loses digits.
        var tolerance = p.H > 0.05 * p.W * p.S ? 1e-7 : 1e-2;
        double Tension(double s) => RopeSamples.Hypotenuse(p.H, p.V - (p.W * s));
        var x = Simpson(s => (1 + (Tension(s) / p.Ea)) * p.H / Tension(s), p.S);
        var drop = Simpson(s => (1 + (Tension(s) / p.Ea)) * (p.V - (p.W * s)) / Tension(s), p.S);
        var length = Simpson(s => 1 + (Tension(s) / p.Ea), p.S);
        Assert.Equal(x, piece.X, tolerance * p.S);
        Assert.Equal(drop, piece.Drop, tolerance * p.S);
        Assert.Equal(length, piece.StretchedLength, tolerance * p.S);
    });

    [Fact]
    public void Rates_of_change_agree_with_differences() => Pieces.Sample(p =>
    {
        var piece = new ElasticCatenary(p.H, p.V, p.S, p.W, p.Ea);
        const double Share = 1e-4;
        var force = Share * piece.TensionEnd * p.H / (p.H + piece.TensionEnd);
        ElasticCatenary At(double dh, double dv, double ds) => new(p.H + dh, p.V + dv, p.S + ds, p.W, p.Ea);
        double Rate(ElasticCatenary a, ElasticCatenary b, Func<ElasticCatenary, double> what, double step) =>
            (what(a) - what(b)) / (2 * step);
        void Agree(double expected, double actual, double scale) => Assert.Equal(expected, actual, 1e-5 * scale);

        var (h1, h0) = (At(force, 0, 0), At(-force, 0, 0));
        var (v1, v0) = (At(0, force, 0), At(0, -force, 0));
        var (s1, s0) = (At(0, 0, Share * p.S), At(0, 0, -Share * p.S));
        var flexibility = piece.DropByVertical + piece.XByHorizontal;
        Agree(Rate(h1, h0, c => c.X, force), piece.XByHorizontal, flexibility);
        Agree(Rate(h1, h0, c => c.Drop, force), piece.XByVertical, flexibility);
        Agree(Rate(v1, v0, c => c.X, force), piece.XByVertical, flexibility);
        Agree(Rate(v1, v0, c => c.Drop, force), piece.DropByVertical, flexibility);
        var scale = 1 + (p.W * p.S * p.W * p.S / (p.H * p.H));
        Agree(Rate(s1, s0, c => c.X, Share * p.S), piece.XByLength, scale);
        Agree(Rate(s1, s0, c => c.Drop, Share * p.S), piece.DropByLength, scale);
    });

    [Theory]
    [InlineData(100, 40)]
    [InlineData(100, -40)]
    public void Light_rope_tends_to_a_straight_bar(double h, double v)
    {
        var bar = new ElasticCatenary(h, v, 3, 0, 1e6);
        var light = new ElasticCatenary(h, v, 3, 1e-9, 1e6);
        var tension = RopeSamples.Hypotenuse(h, v);
        RopeSamples.Close(3 * (1 + (tension / 1e6)) * h / tension, bar.X, 1e-14);
        RopeSamples.Close(bar.X, light.X, 1e-10);
        RopeSamples.Close(bar.Drop, light.Drop, 1e-10);
        RopeSamples.Close(bar.DropByVertical, light.DropByVertical, 1e-10);
        RopeSamples.Close(bar.XByHorizontal, light.XByHorizontal, 1e-10);
    }

    [Fact]
    public void Slack_rope_folds_without_losing_its_digits()
    {
        // A metre of rope with almost no horizontal force, folded in the middle: down half, up half.
        var piece = new ElasticCatenary(1e-12, 5, 1, 10, 1e12);
        Assert.Equal(0, piece.Drop, 12);
        RopeSamples.Close(2 * 1e-12 / 10 * Math.Asinh(5 / 1e-12), piece.X, 1e-9);
    }

    private static double Simpson(Func<double, double> f, double end)
    {
        const int Steps = 4000;
        var sum = f(0) + f(end);
        for (var i = 1; i < Steps; i++)
        {
            sum += f(end * i / Steps) * (i % 2 == 1 ? 4 : 2);
        }

        return sum * end / Steps / 3;
    }
}
