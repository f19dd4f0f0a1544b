namespace BridgeForm.Checks.Timber;

/// <summary>Notches in bending members: NDS 3.2.3, 3.4.3 and 4.4.3 (from memory). Metres, newtons, pascals.</summary>
internal static class Notches
{
    /// <summary>Members at least so thick are not notched on the tension side but at their ends (NDS 4.4.3), metres.</summary>
    public const double ThickMember = 3.5 * Quantities.Units.MetresPerInch;

    /// <summary>Deepest notch at an end: d/4.</summary>
    public static double AtEnd(double depth) => depth / 4;

    /// <summary>Deepest notch between the ends, in the outer thirds of the span: d/6.</summary>
    public static double Between(double depth) => depth / 6;

    /// <summary>Longest notch between the ends: d/3.</summary>
    public static double LongestBetween(double depth) => depth / 3;

    /// <summary>Largest hole: d/3 (IRC R502.8.1), here of the face it enters.</summary>
    public static double LargestHole(double depth) => depth / 3;

    /// <summary>V_r' = (2/3)·Fv'·b·d of a full section.</summary>
    public static double Shear(double strength, double breadth, double depth) => 2.0 / 3 * strength * breadth * depth;

    /// <summary>V_r' = (2/3)·Fv'·b·dn·(dn/d)² of a notch on the tension side at a support (NDS 3.4.3.2).</summary>
    public static double ShearAtTensionNotch(double strength, double breadth, double depth, double left) =>
        Shear(strength, breadth, left) * (left / depth) * (left / depth);
}
