using System.Collections.Immutable;
using BridgeForm.Checks.Timber;
using BridgeForm.Solids;
using CsCheck;

namespace BridgeForm.Tests.Checks.Timber;

/// <summary>Closed forms of drilled rectangles, and the same by adding up thin strips.</summary>
public sealed class DrilledSectionTests
{
    private const double B = 1.5;
    private const double D = 3.5;

    private static readonly Gen<SectionVoid> s_voids = Gen.Select(
        Gen.Double[-0.7, 0.5], Gen.Double[0.1, 0.4], Gen.Double[-1.7, 1.2], Gen.Double[0.1, 0.8], Gen.Bool,
        (left, wide, low, high, parts) => parts
            ? new SectionVoid(-B / 2, left + wide, low, low + high, Parts: true)
            : new SectionVoid(left, left + wide, low, D / 2, Parts: false));

    private static DrilledSection Of(params ImmutableArray<SectionVoid> voids) => new(new(B, D), voids);

    // b·d²/6; (b − D)·d²/6; b·(d³ − D³)/12 / (d/2).
    [Fact]
    public void Closed_forms()
    {
        Assert.Equal(B * D * D / 6, Of().Modulus, 1e-12);
        Assert.Equal((B - 0.5) * D * D / 6, Of(new SectionVoid(-0.25, 0.25, -D / 2, D / 2, Parts: false)).Modulus, 1e-12);
        var middle = Of(new SectionVoid(-B / 2, B / 2, -0.5, 0.5, Parts: true));
        Assert.Equal(B * ((D * D * D) - 1) / 12 / (D / 2), middle.Modulus, 1e-12);
        Assert.Equal(B * (D - 1), middle.Area, 1e-12);

        // A notch leaves a rectangle of its own.
        Assert.Equal(B * 3 * 3 / 6, Of(new SectionVoid(-B / 2, B / 2, -D / 2, 0.5 - (D / 2), Parts: true)).Modulus, 1e-12);
    }

    // Two halves of a beam parted in the middle carry half the shear each: 1.5·V/(b·(d − D)). Of 2 in and 1 in the deep one
    // carries 8/9, so that 9/4 in count.
    [Fact]
    public void Shear_of_parted_beams()
    {
        Assert.Equal(2.5, Of(new SectionVoid(-B / 2, B / 2, -0.5, 0.5, Parts: true)).ShearDepth, 1e-12);
        Assert.Equal(9.0 / 4, Of(new SectionVoid(-B / 2, B / 2, 0.25, 0.75, Parts: true)).ShearDepth, 1e-12);
        Assert.Equal(1, Of(new SectionVoid(-0.25, 0.25, 0, D / 2, Parts: false)).ShearBreadth, 1e-12);
    }

    [Fact]
    public void In_line_along_the_grain_one_hole_hides_the_other()
    {
        var hole = new SectionVoid(-B / 2, B / 2, 0.2, 0.9, Parts: true);
        Assert.Equal(Of(hole).Modulus, Of(hole, hole).Modulus, 1e-12);
        Assert.Equal(Of(hole).ShearArea, Of(hole, hole).ShearArea, 1e-12);
    }

    [Fact]
    public void By_strips() => Gen.Select(s_voids, s_voids, s_voids).Sample(
        (a, b, c) =>
        {
            const int Strips = 4000;
            const double H = D / Strips;
            var section = Of(a, b, c);
            double area = 0, first = 0, second = 0, low = double.PositiveInfinity, high = double.NegativeInfinity;
            for (var i = 0; i < Strips; i++)
            {
                var y = ((i + 0.5) * H) - (D / 2);
                const int Columns = 300;
                var taken = Enumerable.Range(0, Columns).Count(k =>
                {
                    var x = ((k + 0.5) * B / Columns) - (B / 2);
                    return new[] { a, b, c }.Any(v => v.Left < x && x < v.Right && v.Low < y && y < v.High);
                });
                var strip = H * B * (Columns - taken) / Columns;
                (area, first, second) = (area + strip, first + (strip * y), second + (strip * y * y));
                (low, high) = strip > 0 ? (Math.Min(low, y), Math.Max(high, y)) : (low, high);
            }

            var middle = first / area;
            var modulus = (second - (area * middle * middle)) / Math.Max(high - middle, middle - low);
            Assert.Equal(area, section.Area, 0.03 * area);
            Assert.Equal(modulus, section.Modulus, 0.03 * modulus);
        },
        iter: 20);

    [Fact]
    public void More_holes_leave_less() => Gen.Select(s_voids, s_voids).Sample((a, b) =>
    {
        Assert.True(Of(a, b).Area <= Of(a).Area + 1e-12);
        Assert.True(Of(a, b).ShearBreadth <= Of(a).ShearBreadth + 1e-12);
        Assert.True(Of(a, b).ShearArea <= (B * D) + 1e-12);
        Assert.True(Of(a).Concentric().Area <= Of(a).Area + 1e-12);
    });

    // A 3x6 base stands: 2.5 in broad, 5.5 in deep. From below 2 in deep; through the wide face 1 in above the middle.
    [Fact]
    public void Holes_of_a_stick_in_its_section()
    {
        var stick = new CutStock(5.5, 2.5, new Plane(-Vector3d.UnitX, 29), new Plane(Vector3d.UnitX, 29))
        {
            Holes = [new(StockFace.MinusY, 3, 0, 0.25, 2), new(StockFace.PlusZ, -3, 1, 0.5, null)],
        };
        var holes = DrilledHole.List(stick, flat: false);
        Assert.Equal(new SectionVoid(-0.125, 0.125, -2.75, -0.75, Parts: false), holes[0].Void);
        Assert.Equal(new SectionVoid(-1.25, 1.25, 0.75, 1.25, Parts: true), holes[1].Void);

        // Lying flat the same holes change their parts.
        Assert.Equal(new SectionVoid(-2.75, -0.75, -0.125, 0.125, Parts: true), DrilledHole.List(stick, flat: true)[0].Void);
        Assert.Equal(new SectionVoid(0.75, 1.25, -1.25, 1.25, Parts: false), DrilledHole.List(stick, flat: true)[1].Void);
    }
}
