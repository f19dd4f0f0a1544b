using BridgeForm.Project;

namespace BridgeForm.Checks;

/// <summary>Limits of the codes, in metres, each with its source.</summary>
public static class Limits
{
    private const double Inch = 0.0254;

    /// <summary>Guard height: 36 in private, 42 in public.</summary>
    public static (double Height, string Source) GuardHeight(BridgeUse use) => use == BridgeUse.Public
        ? (42 * Inch, "IBC 1015.3: guards at least 42 in high")
        : (36 * Inch, "IRC 2018 R312.1.2: guards at least 36 in high");

    /// <summary>Below this height above the deck a guard lets no 4 in sphere pass; above it, public guards let none of 4-3/8 in.</summary>
    public static double UpperOpeningsFrom => 36 * Inch;

    /// <summary>Smallest sphere that must not pass through an opening that begins at a height above the deck.</summary>
    public static (double Sphere, string Source) Opening(BridgeUse use, double height) =>
        use == BridgeUse.Public && height >= UpperOpeningsFrom
            ? (4.375 * Inch, "IBC 1015.4 exception 1: no 4-3/8 in sphere from 36 in up to 42 in (from memory)")
            : use == BridgeUse.Public
                ? (4 * Inch, "IBC 1015.4: no 4 in sphere (from memory)")
                : (4 * Inch, "IRC 2018 R312.1.3: no 4 in sphere");

    /// <summary>Width that people pass in.</summary>
    public static (double Width, string Source) ClearWidth =>
        (36 * Inch, "ADA 2010 403.5.1 and IRC R311.7.1: 36 in clear; a figure to compare with, not a rule for a private footbridge");

    /// <summary>Steepest ramp, rise over run.</summary>
    public static (double Slope, string Source) Ramp => (1.0 / 12, "ADA 2010 405.2: ramps no steeper than 1 : 12");
}
