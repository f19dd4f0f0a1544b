using BridgeForm.Project;

namespace BridgeForm.Checks.Codes;

/// <summary>Limits of the codes, in metres, each with its source.</summary>
public static class Limits
{
    private const double Inch = Quantities.Units.MetresPerInch;

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

    /// <summary>Steepest deck without cleats or grit.</summary>
    public static (double Slope, string Source) Grip => (1.0 / 8, "common practice, no source: cleats or grit above 1 : 8");

    /// <summary>Widest distance of cleats, middle to middle.</summary>
    public static (double Apart, string Source) Cleats => (16 * Inch, "common practice, no source: cleats a step apart, 16 in at most");

    /// <summary>Slope from which a walking surface is a ramp and, with more than 6 in of rise, has handrails.</summary>
    public static double WalkingSurface => 1.0 / 20;

    /// <summary>Rise above which a ramp has handrails.</summary>
    public static double RampRise => 6 * Inch;

    /// <summary>Top of a handrail.</summary>
    public static (double Low, double High, string Source) Handrail(BridgeUse use) => (34 * Inch, 38 * Inch, use == BridgeUse.Public
        ? "ADA 2010 505.4 and 405.8: handrails 34 to 38 in high on ramps that rise more than 6 in"
        : "IRC R311.8.3: a handrail 34 to 38 in high on ramps steeper than 1 : 12");

    /// <summary>Diameter of a round handrail.</summary>
    public static (double Low, double High) HandrailDiameter => (1.25 * Inch, 2 * Inch);

    /// <summary>Around a handrail that is not round.</summary>
    public static (double Low, double High) HandrailPerimeter => (4 * Inch, 6.25 * Inch);

    /// <summary>From corner to corner of a handrail that is not round.</summary>
    public static double HandrailAcross => 2.25 * Inch;

    /// <summary>Where the sizes of a handrail stand.</summary>
    public static string HandrailSource =>
        "ADA 2010 505.7 and IRC R311.7.8.5 (from memory): round 1-1/4 to 2 in across; else 4 to 6-1/4 in around and "
        + "at most 2-1/4 in across";

    /// <summary>Clear around a handrail.</summary>
    public static (double Clear, string Source) HandrailClear =>
        (1.5 * Inch, "ADA 2010 505.5 and IRC R311.7.8.2 (from memory): 1-1/2 in clear behind a handrail");

    /// <summary>Step between landing and deck.</summary>
    public static (double Height, string Source) Step => (Inch / 2, "ADA 2010 303: changes in level of at most 1/2 in");

    /// <summary>Openings in the walking surface.</summary>
    public static (double Sphere, string Source) FloorOpening =>
        (Inch / 2, "ADA 2010 302.3: no 1/2 in sphere passes an opening in the floor; a figure to compare with");

    /// <summary>Openings in the walking surface that a foot or a child's arm goes through.</summary>
    public static (double Ball, string Source) FloorBall =>
        (0.035, "EN ISO 14122-2: no ball of 35 mm falls through the floor of a walkway (as walkway makers quote it; not read)");

    /// <summary>Steepest ramp, rise over run.</summary>
    public static (double Slope, string Source) Ramp => (1.0 / 12, "ADA 2010 405.2: ramps no steeper than 1 : 12");

    /// <summary>
    /// Where live load lies worst for it so much of the roll factor is enough: who stands so stands there by chance, and all of the
    /// bridge's parts are at their worst already. Own figure.
    /// </summary>
    public const double RollAtWorstShare = 0.75;

    /// <summary>
    /// Roll factor: below the first it fails, below the second it is worth a look; a stricter one of the project file stands in
    /// for the first.
    /// </summary>
    public static (double Least, double Comfortable, string Source) Roll(LimitParameters own) => (
        Math.Max(LimitParameters.RollFails, own.Roll ?? 0),
        Math.Max(RollLooks, own.Roll ?? 0),
        "own figures: fails below 2, to review below 3" + Own(own.Roll));

    /// <summary>Tilt of a frame under load, radians: a look above the first, a failure above the second.</summary>
    public static (double Look, double Most, string Source) CrossSlope(BridgeUse use, LimitParameters own)
    {
        var (look, words) = use == BridgeUse.Public
            ? (PublicTiltLooks, "own figures: public, look above 3°, fails above 5°")
            : (PrivateTiltLooks, "own figures: private, look above 5°, fails above 8°");
        var limit = Math.Min(LimitParameters.TiltFails(use), own.CrossSlope ?? double.PositiveInfinity);
        return (Math.Min(look, limit), limit, words + Own(own.CrossSlope));
    }

    /// <summary>Steepest deck under load, rise over run.</summary>
    public static (double Most, string Source) DeckSlope(LimitParameters own) => (
        Math.Min(LimitParameters.SlopeFails, own.Slope ?? double.PositiveInfinity),
        "own figure: no deck steeper than 1 : 2" + Own(own.Slope));

    /// <summary>Cross slope of the empty bridge.</summary>
    public static (double Slope, string Source) EmptyCrossSlope =>
        (1.0 / 48, "ADA 2010 405.3: cross slope no steeper than 1 : 48; a figure to compare with, not a rule for a private footbridge");

    private const double RollLooks = 3;
    private const double PublicTiltLooks = 3 * Math.PI / 180;
    private const double PrivateTiltLooks = 5 * Math.PI / 180;

    private static string Own(double? limit) => limit is null ? "" : "; stricter: limits of the project file";
}
