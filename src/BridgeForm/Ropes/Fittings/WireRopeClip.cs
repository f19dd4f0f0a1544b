using System.Collections.Immutable;
using BridgeForm.Quantities;

namespace BridgeForm.Ropes.Fittings;

/// <summary>U-bolt clips for one diameter of wire rope. Metres and newton-metres.</summary>
/// <param name="Size">Diameter in inches, as people write it.</param>
/// <param name="Diameter">Diameter.</param>
/// <param name="Count">Least number of clips at one end; three at least, whatever the table says.</param>
/// <param name="TurnBack">Rope turned back from the thimble.</param>
/// <param name="Torque">Torque of the nuts.</param>
/// <param name="Source">Where these come from.</param>
public sealed record WireRopeClip(
    string Size, double Diameter, int Count, double TurnBack, double Torque, string Source)
{
    /// <summary>Distance of clips from centre to centre, in rope diameters (NAVEDTRA 14026 fig. 1-8; WAC 296-874-30020 (1)(b)).</summary>
    public const double SpacingDiameters = 6;

    private const double Inch = Quantities.Units.MetresPerInch;
    private const double FootPound = Quantities.Units.MetresPerFoot * Quantities.Units.PoundForce;

    /// <summary>Fewest clips at one end whatever a table says.</summary>
    public const int Fewest = 3;

    private const string AtLeastThree = "; three U-bolt clips at least, WAC 296-24-29401 (5)(c)";
    private const string Large = "Calif. 8 CCR §8497 table 1";
    private const string Small = "a maker's table for U-bolt clips (other tables give up to 1/4 in more turn-back at 5/16)";

    /// <summary>All rows, smallest first. Sizes between them do not exist.</summary>
    public static ImmutableArray<WireRopeClip> All { get; } =
    [
        Row("1/8", 1 / 8.0, 2, 3.75, 4.5, Small),
        Row("3/16", 3 / 16.0, 2, 3.75, 7.5, Small),
        Row("1/4", 1 / 4.0, 2, 4.75, 15, Small),
        Row("5/16", 5 / 16.0, 2, 5.5, 30, Small),
        Row("3/8", 3 / 8.0, 2, 6.5, 45, Small),
        Row("7/16", 7 / 16.0, 2, 7, 65, Small),
        Row("1/2", 1 / 2.0, 3, 11.5, 65, Large),
        Row("9/16", 9 / 16.0, 3, 12, 95, Large),
        Row("5/8", 5 / 8.0, 3, 12, 95, Large),
        Row("3/4", 3 / 4.0, 4, 18, 130, Large),
        Row("7/8", 7 / 8.0, 4, 19, 225, Large),
        Row("1", 1, 5, 26, 225, Large),
        Row("1-1/8", 1.125, 6, 34, 225, Large),
        Row("1-1/4", 1.25, 6, 37, 360, Large),
        Row("1-3/8", 1.375, 7, 44, 360, Large),
        Row("1-1/2", 1.5, 7, 48, 360, Large),
    ];

    /// <summary>Centre to centre, metres.</summary>
    public double Spacing => SpacingDiameters * Diameter;

    /// <summary>The row of exactly that diameter in metres; null when there is none.</summary>
    public static WireRopeClip? For(double diameter) => All.FirstOrDefault(c => Math.Abs(c.Diameter - diameter) < Tolerances.SameRope);

    // Rope beyond the middles of the outermost clips, in diameters: 2 to the cut end, one clip's width (common practice, no source),
    // and 1 to the thimble's throat, half a saddle (an own figure).
    private const double BeyondClips = 3;

    private const string ForSpacing = "; turned back further than it says, so that all clips stand 6 diameters apart";

    // Each clip that a table has fewer needs its distance of rope; and of large ropes a table turns back too little for the distance
    // that others ask for: the clips at their distance, and rope beyond the outermost.
    private static WireRopeClip Row(string size, double inches, int count, double turnBack, double torque, string source)
    {
        var more = Math.Max(0, Fewest - count);
        var table = turnBack + (more * SpacingDiameters * inches);
        var needed = (((count + more - 1) * SpacingDiameters) + BeyondClips) * inches;
        return new(
            size, inches * Inch, count + more, Math.Max(table, needed) * Inch, torque * FootPound,
            source + (more > 0 ? AtLeastThree : "") + (needed > table ? ForSpacing : ""));
    }
}
