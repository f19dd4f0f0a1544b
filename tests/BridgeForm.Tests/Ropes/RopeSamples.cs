using BridgeForm.Project;
using BridgeForm.Ropes;
using CsCheck;

namespace BridgeForm.Tests.Ropes;

/// <summary>Ropes that the tests share.</summary>
internal static class RopeSamples
{
    /// <summary>So stiff that the rope is as good as inextensible.</summary>
    public const double Rigid = 1e15;

    /// <summary>A footbridge: 12 m, 6 % sag, 3/4 in rope, about 900 N a node.</summary>
    public static DesignRequest Footbridge { get; } = new()
    {
        Span = 12,
        Rise = 0.5,
        Sag = 0.72,
        Step = FrameStep.Rope,
        Spacing = 0.9,
        WeightPerLength = 15.2,
        AxialStiffness = 1.63e7,
        NodeLoads = nodes => [.. nodes.Select((_, i) => 900.0 + (10 * i))],
    };

    /// <summary>Any bridge in range: rise to 1:3, sag from half a per cent to 30 %, uneven loads.</summary>
    public static Gen<DesignRequest> AnyBridge { get; } =
        Gen.Select(
            Gen.Double[3, 80],
            Gen.Double[-1.0 / 3, 1.0 / 3],
            Gen.Double[0.005, 0.3],
            Gen.Bool,
            Gen.Int[2, 40],
            Gen.Double[1, 40],
            Gen.Double[1e6, 5e7],
            Gen.Double[0, 2000].Array[42]).Select(Bridge);

    /// <summary>A parabola: many plan steps under a load per horizontal length, weightless inextensible rope.</summary>
    public static RopeShape Parabola(double span, double rise, double sag, double load, int bays = 600) =>
        DesignState.Find(new DesignRequest
        {
            Span = span,
            Rise = rise,
            Sag = sag,
            Step = FrameStep.Plan,
            Bays = bays,
            WeightPerLength = 0,
            AxialStiffness = Rigid,
            NodeLoads = nodes => [.. nodes.Select(_ => load * span / bays)],
        });

    /// <summary>A catenary: one bay of inextensible rope under its own weight.</summary>
    public static RopeShape Catenary(double span, double rise, double sag, double weight) =>
        DesignState.Find(new DesignRequest
        {
            Span = span,
            Rise = rise,
            Sag = sag,
            Step = FrameStep.Rope,
            Bays = 1,
            WeightPerLength = weight,
            AxialStiffness = Rigid,
            NodeLoads = _ => [0, 0],
        });

    /// <summary>The shape of a family, ordered by sag, at which a rising or falling measure has a value.</summary>
    public static RopeShape Where(Func<double, RopeShape> bySag, Func<RopeShape, double> measure, double value, double low, double high)
    {
        var rising = measure(bySag(high)) > measure(bySag(low));
        for (var i = 0; i < 60; i++)
        {
            var middle = (low + high) / 2;
            if (measure(bySag(middle)) < value == rising)
            {
                low = middle;
            }
            else
            {
                high = middle;
            }
        }

        return bySag((low + high) / 2);
    }

    /// <summary>
    /// Largest tension of the parabola that a polygon of plan steps stands for: the supports also carry half a step each.
    /// </summary>
    public static double ParabolaTension(RopeShape polygon)
    {
        var half = polygon.Loads[1] / 2;
        var (a, b) = polygon.Reactions();
        return Math.Max(Hypotenuse(a.X, a.Y - half), Hypotenuse(b.X, b.Y - half));
    }

    public static double Hypotenuse(double a, double b) => Math.Sqrt((a * a) + (b * b));

    public static double Distance(RopePoint a, RopePoint b) => Hypotenuse(b.X - a.X, b.Y - a.Y);

    /// <summary>Largest distance between nodes of two ropes.</summary>
    public static double Distance(RopeShape a, RopeShape b) => a.Nodes.Zip(b.Nodes).Max(p => Distance(p.First, p.Second));

    public static void Close(double expected, double actual, double relative) =>
        Assert.True(
            Math.Abs(actual - expected) <= relative * Math.Abs(expected),
            FormattableString.Invariant($"expected {expected:R}, got {actual:R}"));

    private static DesignRequest Bridge(
        double span, double rise, double sag, bool plan, int bays, double weight, double stiffness, double[] loads) => new()
        {
            Span = span,
            Rise = rise * span,
            Sag = sag * span,
            Step = plan ? FrameStep.Plan : FrameStep.Rope,
            Bays = bays,
            WeightPerLength = weight,
            AxialStiffness = stiffness,
            NodeLoads = nodes => [.. loads.Take(nodes.Length)],
        };
}
