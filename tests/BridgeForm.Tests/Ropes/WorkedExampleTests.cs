using System.Collections.Immutable;
using BridgeForm.Project;
using BridgeForm.Ropes;

namespace BridgeForm.Tests.Ropes;

/// <summary>
/// Examples printed in textbooks, fed to this solver. Each answer holds within the rounding of what is printed; where a
/// book's own answer is wrong or read off a diagram, the exact one was computed from the same formula and is marked C.
/// </summary>
public sealed class WorkedExampleTests
{
    private const double G = 9.81;

    /// <summary>Parabolas from span, rise and sag.</summary>
    [Theory]
    // Tayal, Engineering Mechanics, example 10.3: 75 kg/m, low point 2 m below the lower support, 4.5 m below the other.
    [InlineData("T10.3", 20, 2.5, 3.125, 75 * G, 11772, 14715, double.NaN, 1e-4)]
    // Tayal, example 10.4.
    [InlineData("T10.4", 30, 0, 0.5, 0.5 * G, double.NaN, 1106.07, 30.0222, 5e-6)]
    // Beer and Johnston, Vector Mechanics: Statics, sample 7.9.
    [InlineData("BJ7.9", 40, 0, 0.5, 0.75 * G, double.NaN, 2947, 40.0167, 2e-4)]
    // McLean and Nelson, Schaum's Engineering Mechanics, chapter 7, examples 7.7-7 and 7.7-8 (C).
    [InlineData("S7.7-7", 600, 0, 40, 800, 900_000, 931_450, 607.04, 1e-5)]
    // Beer and Johnston, problem 7.107.
    [InlineData("BJ7.107", 60, 0, 1.5, 0.6 * G, double.NaN, 1774.6, 60.100, 3e-5)]
    // Source book not identified: 120 m, supports differ by 3 m, low point 2 m below the lower (C).
    [InlineData("footbridge", 120, 3, 3.33113883, 5, 2701.8, 2726.7, double.NaN, 2e-5)]
    // Hibbeler, Structural Analysis, example 5.2: low point 40 ft and 20 ft below the supports.
    [InlineData("H5.2", 100, -20, 29.1421356, 850, 36_459.2, 61_713, double.NaN, 1e-5)]
    // Gupta, Elements of Power System, example E10: sag 2.8 m is 0.35·160²/(8·400).
    [InlineData("G-E10", 160, -5, 2.8, 0.35, 400, double.NaN, double.NaN, 1e-6)]
    // Gupta, example E12.
    [InlineData("G-E12", 600, 15, 37.3934659, 2.925, 3520, double.NaN, double.NaN, 1e-6)]
    public void Parabola(
        string id, double span, double rise, double sag, double load, double h, double tension, double length, double tolerance)
    {
        var shape = RopeSamples.Parabola(span, rise, sag, load);
        Expect(id, h, shape.Horizontal, tolerance);
        Expect(id, tension, RopeSamples.ParabolaTension(shape), tolerance);
        Expect(id, length, shape.StretchedLength(), tolerance);
    }

    /// <summary>Low points of parabolas: distance from support A and height above it.</summary>
    [Theory]
    [InlineData("T10.3", 20, 2.5, 3.125, 8.000, -2.000)]
    [InlineData("G-E10", 160, -5, 2.8, 115.71, 64.142 - 70)]
    [InlineData("G-E12", 600, -15, 37.3934659, 330.085, -45.27)]
    [InlineData("H5.2", 100, -20, 29.1421356, 100 - 41.42, -40)]
    public void Low_point(string id, double span, double rise, double sag, double x, double y)
    {
        var shape = RopeSamples.Parabola(span, rise, sag, 1, bays: 4000);
        var lowest = shape.Nodes.MinBy(n => n.Y);
        Assert.True(Math.Abs(x - lowest.X) < span / 4000 + 0.005, id);
        Assert.True(Math.Abs(y - lowest.Y) < 0.005, id);
    }

    /// <summary>End slopes, degrees.</summary>
    [Theory]
    [InlineData(30, 0, 0.5, 3.814, 3.814)]
    [InlineData(40, 0, 0.5, 2.86, 2.86)]
    [InlineData(100, -20, 29.1421356, 53.79, 44.0)]
    public void Parabola_end_slopes(double span, double rise, double sag, double atA, double atB)
    {
        var (first, last) = RopeSamples.Parabola(span, rise, sag, 1, bays: 20_000).EndSlopes();
        Assert.Equal(atA, -first * 180 / Math.PI, 0.01);
        Assert.Equal(atB, last * 180 / Math.PI, 0.05);
    }

    [Fact]
    public void Parabola_sag_from_largest_tension_or_length()
    {
        // Schaum example 7.7-10: 140 kN, 2 kN/m, 20 m.
        var shape = ParabolaWhere(20, 2, RopeSamples.ParabolaTension, 140, 0.1, 5);
        Assert.Equal(0.72, shape.Sag, 0.005);
        Assert.Equal(20.07, shape.StretchedLength(), 0.005);
        // Schaum example 7.7-11: 0.625 lb/ft, 80 ft, 500 lb.
        Assert.Equal(1.00125, ParabolaWhere(80, 0.625, RopeSamples.ParabolaTension, 500, 0.1, 20).Sag, 0.00005);
        // Beer and Johnston: 104 ft of cable over 100 ft (C).
        Assert.Equal(12.463, ParabolaWhere(100, 1, RopeCurve.StretchedLength, 104, 1, 30).Sag, 0.001);
        // Housner and Hudson, Applied Mechanics: Statics, §6.14.1 (C): 100 ft over 95 ft, 10 000 lb in all.
        var housner = ParabolaWhere(95, 10_000.0 / 95, RopeCurve.StretchedLength, 100, 1, 30);
        Assert.Equal(13.654, housner.Sag, 0.001);
        Assert.Equal(10_032, RopeSamples.ParabolaTension(housner), 1.0);
        // The same, (1): 50 ft, 10 ft, 10 000 lb at most carries 12 494 lb.
        Assert.Equal(12_494, 50 * 10_000 / RopeSamples.ParabolaTension(RopeSamples.Parabola(50, 0, 10, 1)), 0.5);
    }

    /// <summary>Catenaries: c = H / w, length and largest tension over w, from span and sag.</summary>
    [Theory]
    // Tayal, example 10.6: 200 m and 50 m of sag; 6131.25 N at 49.05 N/m (C).
    [InlineData("T10.6", 164.79, 50, 75, 200, 6131.25 / 49.05, 6e-5)]
    // Schaum example 7.7-12 (C; the text reads c off a diagram).
    [InlineData("S7.7-12", 500, 50, 633.162, 513.093, 353.878 / 0.518, 2e-6)]
    // Gönen, Electric Power Transmission System Engineering, example 13.1; 4122 lb/mile.
    [InlineData("G13.1", 500, 19.571, 1600, 502.037, 1264.4 * 5280 / 4122, 5e-5)]
    // Civil engineering board review: a = 50 m.
    [InlineData("board", 80, 16.87, 50, 88.81, 66.87, 3e-4)]
    public void Catenary(string id, double span, double sag, double c, double length, double tension, double tolerance)
    {
        var shape = RopeSamples.Catenary(span, 0, sag, 1);
        Expect(id, c, shape.Horizontal, tolerance);
        Expect(id, length, shape.StretchedLength(), tolerance);
        Expect(id, tension, shape.LargestTension, tolerance);
    }

    /// <summary>Sag of a catenary from the tension at its lowest point, which is the one these books mean.</summary>
    [Theory]
    // Ray, Electrical Power Systems, examples 5.1 (3500 kg, 0.65 kg/m) and 5.2 (35 kN, 0.85 kg/m).
    [InlineData(250, 0.65, 3500, 1.4510, 0.00005)]
    [InlineData(160, 0.85 * G, 35_000, 0.762, 0.0005)]
    [InlineData(200, 0.85 * G, 35_000, 1.191, 0.0005)]
    [InlineData(250, 0.85 * G, 35_000, 1.861, 0.0005)]
    [InlineData(275, 0.85 * G, 35_000, 2.252, 0.0005)]
    public void Catenary_sag_from_tension(double span, double weight, double tension, double sag, double rounding)
    {
        var shape = RopeSamples.Where(
            s => RopeSamples.Catenary(span, 0, s, weight), s => s.Horizontal, tension, 0.002 * span, 0.1 * span);
        Assert.Equal(sag, shape.Sag, rounding);
    }

    /// <summary>OpenStax, Calculus volume 1, §6.9: y = a·cosh(x / a) (the second answer from memory).</summary>
    [Theory]
    [InlineData(10, 30, 42.586)]
    [InlineData(15, 40, 52.951)]
    public void Catenary_length_from_its_parameter(double a, double span, double length)
    {
        var shape = RopeSamples.Where(
            s => RopeSamples.Catenary(span, 0, s, 1), s => s.Horizontal, a, 0.1 * span, 0.6 * span);
        Assert.Equal(length, shape.StretchedLength(), 0.0005);
    }

    /// <summary>Gönen, example 13.1: for one sag the parabola's tension is the smaller: 1246.55 lb against 1249.1 lb.</summary>
    [Fact]
    public void Parabola_of_the_same_sag_pulls_less_than_the_catenary()
    {
        var weight = 4122 / 5280.0;
        var parabola = RopeSamples.Parabola(500, 0, 19.571, weight);
        var catenary = RopeSamples.Catenary(500, 0, 19.571, weight);
        RopeSamples.Close(1246.55, parabola.Horizontal, 1e-4);
        RopeSamples.Close(1249.1, catenary.Horizontal, 1e-4);
        Assert.True(parabola.Horizontal < catenary.Horizontal);
    }

    /// <summary>Tayal, example 10.1: supports 2 m apart in height, three loads; the middle point is 2.25 m below B.</summary>
    [Fact]
    public void Three_loads_on_unequal_supports()
    {
        var shape = Loaded(8, 2, 1 + 0.25, 0, 400, 600, 400, 0);
        var (_, b) = shape.Reactions();
        RopeSamples.Close(1600, -b.X, 1e-6);
        RopeSamples.Close(-1100, b.Y, 1e-6);
        Assert.Equal(1.375, 2 - shape.Nodes[3].Y, 1e-6);
        RopeSamples.Close(1627.88, RopeSamples.Hypotenuse(shape.Horizontal, shape.Segments[0].VerticalA), 1e-5);
        RopeSamples.Close(1941.65, shape.LargestTension, 1e-5);
        Assert.Equal(34.51, shape.EndSlopes().Last * 180 / Math.PI, 0.005);
    }

    /// <summary>Beer and Johnston, problem 7.89a: 600 lb at 4 ft, 450 lb at 8 ft of 10 ft, 720 lb at most.</summary>
    [Fact]
    public void Two_loads_and_a_largest_tension()
    {
        var shape = RopeSamples.Where(s => Loaded(10, 0, s, 0, 0, 600, 0, 450, 0), s => s.LargestTension, 720, 2, 6);
        Assert.Equal(398, shape.Horizontal, 0.5);
        Assert.Equal(4.52, -shape.Nodes[2].Y, 0.005);
    }

    /// <summary>Course notes after Hibbeler: 3 kN at 2 m, 8 kN at 4 m, D at (5.5, −2), last segment 4:3, B 2.74 m down.</summary>
    [Fact]
    public void Known_lengths_give_the_tensions()
    {
        var shape = LoadCaseSolver.Find(new LoadCaseRequest
        {
            Span = 5.5,
            Rise = -2,
            UnstressedLengths =
                [RopeSamples.Hypotenuse(2, 2.74), RopeSamples.Hypotenuse(2, 4 - 2.74), RopeSamples.Hypotenuse(1.5, 2)],
            Loads = [0, 3, 8, 0],
            WeightPerLength = 0,
            AxialStiffness = RopeSamples.Rigid,
        });
        Assert.Equal(6.90, Tension(0), 0.01);
        Assert.Equal(4.82, Tension(1), 0.01);
        Assert.Equal(6.79, Tension(2), 0.01);
        Assert.Equal(53.8, -shape.EndSlopes().First * 180 / Math.PI, 0.1);

        double Tension(int i) => RopeSamples.Hypotenuse(shape.Horizontal, shape.Segments[i].VerticalA);
    }

    private static RopeShape Loaded(double span, double rise, double sag, params ImmutableArray<double> loads) =>
        DesignState.Find(new DesignRequest
        {
            Span = span,
            Rise = rise,
            Sag = sag,
            Step = FrameStep.Plan,
            Bays = loads.Length - 1,
            WeightPerLength = 0,
            AxialStiffness = RopeSamples.Rigid,
            NodeLoads = _ => loads,
        });

    private static RopeShape ParabolaWhere(
        double span, double load, Func<RopeShape, double> measure, double value, double low, double high) =>
        RopeSamples.Where(s => RopeSamples.Parabola(span, 0, s, load, bays: 300), measure, value, low, high);

    private static void Expect(string id, double printed, double actual, double tolerance)
    {
        if (double.IsNaN(printed))
        {
            return;
        }

        Assert.True(
            Math.Abs(actual - printed) <= tolerance * Math.Abs(printed),
            FormattableString.Invariant($"{id}: printed {printed}, got {actual:R}"));
    }
}
