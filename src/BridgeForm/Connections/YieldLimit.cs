using BridgeForm.Quantities;

namespace BridgeForm.Connections;

/// <summary>Ways in which a dowel yields (NDS 2018 Table 12.3.1A).</summary>
public enum YieldMode
{
    /// <summary>The main member is crushed along the dowel.</summary>
    Im,

    /// <summary>The side member is.</summary>
    Is,

    /// <summary>The dowel turns in both.</summary>
    II,

    /// <summary>One hinge in the dowel, and it turns in the main member.</summary>
    IIIm,

    /// <summary>One hinge, and it turns in the side member.</summary>
    IIIs,

    /// <summary>Two hinges to each shear plane.</summary>
    IV,
}

/// <summary>A dowel through a main and one or two side members, pushed square to its axis. Metres, pascals, radians.</summary>
/// <param name="Diameter">As it counts in the equations: of a bolt's shank, of the root of a screw's thread.</param>
/// <param name="Yield">Fyb, its bending yield strength.</param>
/// <param name="Main">Its length in the main member (lm).</param>
/// <param name="MainBearing">Fem.</param>
/// <param name="Side">Its length in one side member (ls).</param>
/// <param name="SideBearing">Fes.</param>
/// <param name="Angle">The largest angle between load and grain in any member, which Kθ asks for.</param>
/// <param name="IsDouble">Side members on both sides, alike.</param>
public sealed record YieldLimit(
    double Diameter, double Yield, double Main, double MainBearing, double Side, double SideBearing, double Angle, bool IsDouble)
{
    /// <summary>Where the equations are from.</summary>
    public const string Source = "NDS 2018 Tables 12.3.1A and 12.3.1B";

    // NDS 2018 Table 12.3.1B (transcribed): KD by the diameter that counts, inches.
    private const double Slim = 0.17;
    private const double SlimReduction = 2.2;

    /// <summary>The least of all modes, newtons: Z.</summary>
    public double Value => In(Governing);

    /// <summary>The mode that governs.</summary>
    public YieldMode Governing => Modes().MinBy(In);

    /// <summary>What a mode allows, newtons.</summary>
    public double In(YieldMode mode)
    {
        var (re, d) = (MainBearing / SideBearing, Diameter);
        var planes = IsDouble && mode != YieldMode.Im ? 2 : 1;
        return planes / Reduction(mode) * mode switch
        {
            YieldMode.Im => d * Main * MainBearing,
            YieldMode.Is => d * Side * SideBearing,
            YieldMode.II => TurnsInBoth(re, Main / Side) * d * Side * SideBearing,
            YieldMode.IIIm => Hinge(2 * (1 + re), 1 + (2 * re), Main) * d * Main * MainBearing / (1 + (2 * re)),
            YieldMode.IIIs => Hinge(2 * (1 + re) / re, 2 + re, Side) * d * Side * MainBearing / (2 + re),
            _ => d * d * Math.Sqrt(2 * MainBearing * Yield / (3 * (1 + re))),
        };
    }

    /// <summary>Rd. A dowel that counts with less than 1/4 in takes KD; Kθ stands beside it where there is an angle.</summary>
    public double Reduction(YieldMode mode)
    {
        var angle = 1 + (0.25 * Angle / (Math.PI / 2));
        var inches = Diameter / Units.MetresPerInch;
        return angle * (Diameter < DowelBearing.ThinFastener - Tolerances.RoundOff
            ? inches <= Slim ? SlimReduction : (10 * inches) + 0.5
            : mode switch
            {
                YieldMode.Im or YieldMode.Is => 4,
                YieldMode.II => 3.6,
                _ => 3.2,
            });
    }

    /// <summary>Those that can be: a dowel that is held on both sides does not turn through.</summary>
    private YieldMode[] Modes() => IsDouble
        ? [YieldMode.Im, YieldMode.Is, YieldMode.IIIs, YieldMode.IV]
        : Enum.GetValues<YieldMode>();

    // k1.
    private static double TurnsInBoth(double re, double rt) =>
        (Math.Sqrt(re + (2 * re * re * (1 + rt + (rt * rt))) + (rt * rt * re * re * re)) - (re * (1 + rt))) / (1 + re);

    // k2 and k3.
    private double Hinge(double constant, double share, double length) =>
        Math.Sqrt(constant + (2 * Yield * share * Diameter * Diameter / (3 * MainBearing * length * length))) - 1;
}
