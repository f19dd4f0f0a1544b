using BridgeForm.Quantities;
using MathNet.Numerics.RootFinding;

namespace BridgeForm.Ropes.Modes;

/// <summary>Frequencies of strings and level hanging cables by formula, in hertz.</summary>
public static class CableFormulas
{
    // Radians: the last digits of a root between π/2 and 3π/2.
    private const double RootAccuracy = 1e-15;
    private const int MaxSteps = 200;

    /// <summary>A taut string: n / 2L · √(H/m) (FHWA-HRT-14-049 ch. 3).</summary>
    /// <param name="order">Number of half waves.</param>
    /// <param name="length">Metres.</param>
    /// <param name="tension">Newtons.</param>
    /// <param name="massPerLength">kg/m.</param>
    public static double TautString(int order, double length, double tension, double massPerLength) =>
        order / (2 * length) * Math.Sqrt(tension / massPerLength);

    /// <summary>
    /// Irvine's λ² = (8d/L)²·L / (H·Le/EA) with Le = L·(1 + 8(d/L)²): stretch against sag (Irvine and Caughey, 1974, from
    /// memory).
    /// </summary>
    /// <param name="span">L, metres.</param>
    /// <param name="sag">d, metres.</param>
    /// <param name="horizontal">H, newtons.</param>
    /// <param name="stiffness">EA, newtons.</param>
    public static double LambdaSquared(double span, double sag, double horizontal, double stiffness)
    {
        var ratio = sag / span;
        var length = span * (1 + (8 * ratio * ratio));
        return 64 * ratio * ratio * span * stiffness / (horizontal * length);
    }

    /// <summary>
    /// First root ω̄ of the symmetric modes, tan x = x − (4/λ²)·x³ with x = ω̄/2: from π (taut) to 2.8606·π (rope that does
    /// not stretch).
    /// </summary>
    public static double SymmetricRoot(double lambdaSquared)
    {
        // Multiplied by cos x the equation has no poles, and one root between π/2 and 3π/2.
        return 2 * Brent.FindRoot(
            x => Elementary.Sin(x) - (Elementary.Cos(x) * (x - (4 / lambdaSquared * x * x * x))),
            Math.PI / 2, 3 * Math.PI / 2, RootAccuracy, MaxSteps);
    }

    /// <summary>First symmetric mode in the plane of the cable: ω̄ / (2πL)·√(H/m).</summary>
    public static double Symmetric(double span, double sag, double horizontal, double stiffness, double massPerLength) =>
        SymmetricRoot(LambdaSquared(span, sag, horizontal, stiffness)) / (2 * Math.PI * span)
        * Math.Sqrt(horizontal / massPerLength);
}
