namespace BridgeForm.Checks.Timber;

/// <summary>A rectangle that bends. Metres.</summary>
/// <param name="Breadth">b, along the axis it bends about.</param>
/// <param name="Depth">d, in the direction of the load.</param>
internal sealed record RectangularSection(double Breadth, double Depth)
{
    /// <summary>b·d, m².</summary>
    public double Area => Breadth * Depth;

    /// <summary>S = b·d²/6, m³.</summary>
    public double Modulus => Breadth * Depth * Depth / 6;

    /// <summary>I = b·d³/12, m⁴.</summary>
    public double Inertia => Modulus * Depth / 2;
}
