using System.Collections.Immutable;
using BridgeForm.Quantities;

namespace BridgeForm.Checks.Timber;

/// <summary>
/// A rectangle that bends, less what is cut out of it, by plain beam theory. Metres. Voids that overlap count once: in line
/// along the grain one lies in the other's shadow.
/// </summary>
internal sealed class DrilledSection
{
    // Where holes leave nothing, a millimetre keeps the numbers finite; no load is so small that it would hold.
    private const double Least = 1e-3;

    private readonly ImmutableArray<SectionVoid> _voids;
    private readonly ImmutableArray<(double Low, double High, double Breadth)> _layers;

    /// <summary>What is left.</summary>
    public DrilledSection(RectangularSection whole, ImmutableArray<SectionVoid> voids)
    {
        (Whole, _voids) = (whole, voids);
        _layers = Layers();
        Area = Math.Max(Least * Least, _layers.Sum(Of));
        Middle = _layers.Sum(l => Of(l) * (l.Low + l.High) / 2) / Area;
        Inertia = _layers.Sum(l => (Of(l) * Square(l.High - l.Low) / 12) + (Of(l) * Square(((l.Low + l.High) / 2) - Middle)));
        Edge = _layers.IsEmpty ? whole.Depth : Math.Max(Middle - _layers[0].Low, _layers[^1].High - Middle);
        Modulus = Math.Max(Least * Least * Least, Inertia / Edge);
    }

    /// <summary>Before anything is cut out.</summary>
    public RectangularSection Whole { get; }

    /// <summary>Whether anything is.</summary>
    public bool IsCut => !_voids.IsEmpty;

    /// <summary>m².</summary>
    public double Area { get; }

    /// <summary>S at the edge further from the middle, m³.</summary>
    public double Modulus { get; }

    /// <summary>m⁴.</summary>
    private double Inertia { get; }

    /// <summary>Its middle above the middle of the whole depth.</summary>
    private double Middle { get; }

    /// <summary>From the middle to the further edge.</summary>
    private double Edge { get; }

    /// <summary>
    /// What is left when the same is taken away on the other sides of the axis, so that an axial force stays on it: a load
    /// path that asks no bending of the rest.
    /// </summary>
    public DrilledSection Concentric() => new(Whole, [.. _voids, .. _voids.SelectMany(v => v.Mirrored())]);

    /// <summary>Breadth for shear: what runs along the depth counts over the whole depth.</summary>
    public double ShearBreadth =>
        Math.Max(Least, Whole.Breadth - Covered(_voids.Where(v => !v.Parts).Select(v => (v.Left, v.Right)), Whole.Breadth / 2));

    /// <summary>
    /// Depth for shear: the parts that a hole through the breadth leaves share the shear by their stiffness, h³, so that the
    /// deepest one is at its limit when all carry Σh³/h² of it. A blind hole counts as right through.
    /// </summary>
    public double ShearDepth
    {
        get
        {
            var parts = Parts();
            return parts.IsEmpty ? Least : parts.Sum(h => h * h * h) / Square(parts.Max());
        }
    }

    /// <summary>Breadth times depth for shear, m².</summary>
    public double ShearArea => ShearBreadth * ShearDepth;

    /// <summary><c>S = b × d² / 6 = …</c>, or of what is left layer by layer, from the edge that is named.</summary>
    public string ModulusText(CheckWords words, string edge)
    {
        if (_layers.Length == 1)
        {
            var (low, high, breadth) = _layers[0];
            return $"S = {words.Length(breadth)} × ({words.Length(high - low)})² / 6 = {words.Modulus(Modulus)}";
        }

        string Up(double place) => words.Length(place + (Whole.Depth / 2));
        var layers = string.Join(", ", _layers.Select(l => $"{words.Length(l.Breadth)} broad from {Up(l.Low)} to {Up(l.High)}"));
        return $"left of {words.Length(Whole.Breadth)} × {words.Length(Whole.Depth)}, from {edge}: {layers}; its middle at {Up(Middle)}, "
            + $"I = Σ(b·h³/12 + b·h·y²) = {words.Inertia(Inertia)}, S = I / {words.Length(Edge)} = {words.Modulus(Modulus)}";
    }

    /// <summary>Breadth and depth for shear in a person's words.</summary>
    public string ShearText(CheckWords words, string depthName)
    {
        var breadth = $"b = {words.Length(ShearBreadth)}"
            + (Whole.Breadth - ShearBreadth > Tolerances.RoundOff ? $" ({words.Length(Whole.Breadth)} less its holes)" : "");
        var parts = Parts();
        var cubes = parts.Length > 1
            ? $"Σh³/h² of the parts {string.Join(" and ", parts.Select(words.Length))} = {words.Length(ShearDepth)}"
            : words.Length(ShearDepth);
        return $"{breadth}, {depthName} = {cubes}";
    }

    private static double Square(double x) => x * x;

    private static double Of((double Low, double High, double Breadth) layer) => (layer.High - layer.Low) * layer.Breadth;

    private ImmutableArray<(double Low, double High, double Breadth)> Layers()
    {
        var half = Whole.Depth / 2;
        if (_voids.IsEmpty)
        {
            return [(-half, half, Whole.Breadth)];
        }

        var edges =
            _voids.SelectMany(v => (double[])[v.Low, v.High]).Where(y => Math.Abs(y) < half).Append(-half).Append(half).Order().ToList();
        var layers = new List<(double Low, double High, double Breadth)>();
        for (var i = 1; i < edges.Count; i++)
        {
            var (low, high) = (edges[i - 1], edges[i]);
            var middle = (low + high) / 2;
            var breadth = Whole.Breadth
                - Covered(_voids.Where(v => v.Low < middle && v.High > middle).Select(v => (v.Left, v.Right)), Whole.Breadth / 2);
            if (high - low < Tolerances.RoundOff || breadth < Tolerances.RoundOff)
            {
                continue;
            }

            if (layers.Count > 0 && low - layers[^1].High < Tolerances.RoundOff
                && Math.Abs(layers[^1].Breadth - breadth) < Tolerances.RoundOff)
            {
                layers[^1] = layers[^1] with { High = high };
            }
            else
            {
                layers.Add((low, high, breadth));
            }
        }

        return [.. layers];
    }

    /// <summary>Heights of what is left between holes through the breadth.</summary>
    private ImmutableArray<double> Parts()
    {
        if (_voids.IsEmpty)
        {
            return [Whole.Depth];
        }

        var (parts, reached) = (ImmutableArray.CreateBuilder<double>(), -Whole.Depth / 2);
        foreach (
            var hole in _voids.Where(v => v.Parts).OrderBy(v => v.Low).Append(new(0, 0, Whole.Depth / 2, Whole.Depth / 2, Parts: true)))
        {
            if (Math.Min(hole.Low, Whole.Depth / 2) - reached > Tolerances.RoundOff)
            {
                parts.Add(Math.Min(hole.Low, Whole.Depth / 2) - reached);
            }

            reached = Math.Max(reached, hole.High);
        }

        return parts.ToImmutable();
    }

    /// <summary>Length that stretches cover together between −half and half.</summary>
    private static double Covered(IEnumerable<(double From, double To)> stretches, double half)
    {
        var (covered, reached) = (0.0, -half);
        foreach (var (from, to) in stretches.OrderBy(s => s.From))
        {
            var (start, end) = (Math.Max(from, reached), Math.Min(to, half));
            covered += Math.Max(0, end - start);
            reached = Math.Max(reached, end);
        }

        return covered;
    }
}
