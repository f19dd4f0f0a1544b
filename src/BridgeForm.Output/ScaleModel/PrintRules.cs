using BridgeForm.Project;
using BridgeForm.Quantities;

namespace BridgeForm.Output.ScaleModel;

/// <summary>
/// Sizes of the printed model as lengths of the full-size bridge, metres: what is so long on the bed, divided by the scale.
/// </summary>
/// <param name="Scale">Model to bridge.</param>
/// <param name="Thinnest">Nothing is thinner.</param>
internal sealed record PrintRules(double Scale, double Thinnest)
{
    // How far parts that come out in one piece run into each other: most of a layer. Common practice, no source.
    private const double JoinOnBed = 0.15e-3;

    // Between parts that are put together afterwards. Common practice, no source.
    private const double FitOnBed = 0.1e-3;

    /// <summary>How far bodies of one item run into each other.</summary>
    public double Join => JoinOnBed / Scale;

    /// <summary>Between items that are put together.</summary>
    public double Fit => FitOnBed / Scale;

    /// <summary>The rules of a bridge.</summary>
    public static PrintRules Of(BridgeParameters parameters)
    {
        var scale = PrintFit.Scale(parameters);
        return new PrintRules(scale, parameters.Shop.Print.Thinnest / scale);
    }

    /// <summary>A length on the bed, as one of the bridge.</summary>
    public double OnBed(double metres) => metres / Scale;

    /// <summary>A length of the bridge in millimetres on the bed, in words.</summary>
    public string Printed(double metres) => Numbers.Fixed(metres * Scale / Rounding.Millimetre, 2);

    /// <summary>By how much something must grow.</summary>
    public double Lacking(double size) => size < Thinnest - Tolerances.RoundOff ? Thinnest - size : 0;

    /// <summary>Size of a printed frame along the bridge: that of its thickest part.</summary>
    public double FrameAlong(BridgeParameters parameters)
    {
        var frames = parameters.Frames;
        return Math.Max(
            Math.Max(frames.Base.Along, Thinnest), Math.Max(frames.Post.Section.Thickness, frames.Brace.Section.Thickness));
    }

    /// <summary>Side of the square bar that a rope is printed as.</summary>
    public double RopeBar(BridgeParameters parameters) => Math.Max(Thinnest, parameters.Ropes.Rope.Diameter);
}
