namespace BridgeForm.Quantities;

/// <summary>
/// What counts as equal, level, whole or nothing, each with its reason: lengths in metres, then angles in radians where nothing
/// else is said, then shares, then what is drawn. What an iteration stops at stands with the iteration.
/// </summary>
public static class Tolerances
{
    /// <summary>
    /// Sums and differences of lengths carry round-off of some 1e-15 m, and fractions of an inch do not come out even: a
    /// nanometre is far above that and far below any tool. A gap, a room or a fit that is short by less is not short.
    /// </summary>
    public const double RoundOff = 1e-9;

    /// <summary>
    /// The solids see no difference below this: a corner nearer to a plane lies on it, and corners nearer to each other are
    /// one. Twice the step of a 32-bit float between 4 m and 8 m (4.8e-7 m), so corners stay apart in files that store such
    /// floats. Round-off, not shop tolerance.
    /// </summary>
    public const double Corner = 1e-6;

    /// <summary>
    /// How far a corner may lie off its face's plane: it was put on up to three planes, each within <see cref="Corner"/>.
    /// </summary>
    public const double Planarity = 4 * Corner;

    /// <summary>
    /// Faces this close to one plane, and corners this close to the line between their neighbours, are one.
    /// </summary>
    public const double FlatFace = 1e-8;

    /// <summary>A length read from a person's text and the same length in the project file differ by round-off only.</summary>
    public const double PricedLength = 1e-6;

    /// <summary>
    /// A rope is called by whole or tenth millimetres as well as by inches: 19 mm, and 19.1 mm, are its 3/4 in. No two ropes on
    /// sale differ by so little.
    /// </summary>
    public const double NamedDiameter = 0.06e-3;

    /// <summary>Parts laid out to press in by exactly the seating tolerance come out a few roundings above it.</summary>
    public const double Pressed = 1e-6;

    /// <summary>
    /// Parts that bear on each other at a small angle may press into each other, and rope may enter wood at a channel's
    /// mouth, by as much. Wood gives way and a plane takes off as much (the project's own definition).
    /// </summary>
    public const double Seating = 1.5e-3;

    /// <summary>A part whose shortest edge is below this is none: nobody cuts or holds a millimetre.</summary>
    public const double ShortestEdge = 1e-3;

    /// <summary>A board must leave at least this much between its trimmed ends to count.</summary>
    public const double ShortestBoard = 1e-3;

    /// <summary>A stick shorter than a tenth of a millimetre along any edge is none: its ends are taken to meet.</summary>
    public const double ShortestStick = 1e-4;

    /// <summary>A wall shorter than this between a relief and the edge is a splinter, not a wall.</summary>
    public const double ShortestWall = 1e-4;

    /// <summary>Blanks within this of each other are cut alike: a tenth of a millimetre, below any saw's stop.</summary>
    public const double CutAlike = 1e-4;

    /// <summary>Diameters of rope closer than this are one size written in two ways.</summary>
    public const double SameRope = 1e-5;

    /// <summary>Dressed sizes in millimetres are rounded from inches: 38 mm is 1-1/2 in, 89 mm is 3-1/2 in.</summary>
    public const double DressedSize = 0.5e-3;

    /// <summary>A load on less than a millimetre stands on a point.</summary>
    public const double OnAPoint = 1e-3;

    /// <summary>
    /// Sine of the angle below which two directions count as parallel; a micron over the longest stock, 6 m, rounded down.
    /// </summary>
    public const double Parallel = 1e-7;

    /// <summary>
    /// An edge that runs along the outline within this angle, radians, does not start into the face: a micron in a
    /// centimetre.
    /// </summary>
    public const double AlongOutline = 1e-4;

    /// <summary>
    /// Angles are printed to 0.1°; a saw stop is no sharper than a thousandth of that, and 50° computed from a tangent must
    /// still count as 50°.
    /// </summary>
    public const double SawStop = 1e-6;

    /// <summary>Angles of parallel cuts agree to round-off; a saw's stop is no sharper than this. Radians.</summary>
    public const double SameCut = 1e-4;

    /// <summary>An edge out of square by less than this over 4 in of wood is under 0.01 mm: no router cuts better.</summary>
    public const double SquareEdge = 1e-4;

    /// <summary>
    /// Slope, as a tangent, of what people call level: a millimetre in a metre. Nobody feels it, and a level shows no less.
    /// </summary>
    public const double Level = 1e-3;

    /// <summary>Floors flatter than this, as a tangent, are level to any tool.</summary>
    public const double LevelFloor = 1e-4;

    /// <summary>
    /// Faces turned less than this from the page (sine of the angle) lie in it; well below any cut a saw can set.
    /// </summary>
    public const double InPage = 1e-6;

    /// <summary>
    /// Directions closer than this to the paper's plane count as in it: far above round-off, far below any drawn angle.
    /// </summary>
    public const double EdgeOn = 1e-9;

    /// <summary>Lines this close to upright, radians, are all read from the right, whichever end comes first.</summary>
    public const double Upright = 1e-9;

    /// <summary>The same where both ends come out of a view of the bridge, and carry its round-off.</summary>
    public const double AlmostUpright = 1e-6;

    /// <summary>
    /// A step this share above the spacing still keeps it: the spacing that divides exactly must not give one bay more.
    /// </summary>
    public const double Spacing = 1e-9;

    /// <summary>
    /// Of a step that is rounded to: what lies this near a half or a whole one counts as it. Far above round-off, far below
    /// what people set.
    /// </summary>
    public const double OfAStep = 1e-6;

    /// <summary>A bound written in one unit may be met in another: relative slack of a few roundings.</summary>
    public const double Bound = 1e-12;

    /// <summary>A number that was converted and back is the same number: a few roundings, relative.</summary>
    public const double Converted = 1e-13;

    /// <summary>Demand and limit that differ by less than a billionth are the same number reached on two ways.</summary>
    public const double SameLimit = 1e-9;

    /// <summary>Cheaper by less than this share is round-off.</summary>
    public const double SameCost = 1e-9;

    /// <summary>A ratio this little above a whole number is that number.</summary>
    public const double WholeRatio = 1e-6;

    /// <summary>
    /// Triangles may differ from their face's area by round-off along its outline; more means that some are turned over.
    /// </summary>
    public const double FaceArea = 1e-6;

    /// <summary>A gain in shape below this is round-off and not worth a flip.</summary>
    public const double FlipGain = 1e-9;

    /// <summary>
    /// Bodies hide as if they were smaller by this on every side, so that touching bodies do not hide each other's edges;
    /// above what parts are drawn off their places for being grouped (0.5 mm), below what a print shows.
    /// </summary>
    public const double Skin = 6e-4;

    /// <summary>A stretch shorter than this is none: a tenth of a millimetre at true size.</summary>
    public const double ShortestStretch = 1e-4;

    /// <summary>
    /// Points closer on paper than a hundredth of a millimetre are one point to every eye: nothing is measured between them.
    /// </summary>
    public const double OnePoint = 1e-5;

    /// <summary>Distances alike to this are one dimension: less than anyone can mark.</summary>
    public const double SameDimension = 5e-5;

    /// <summary>An entry exactly as wide as its column is not broken for round-off.</summary>
    public const double ColumnWidth = 1e-6;

    /// <summary>
    /// Lines with both ends in the same places on this grid are one line on paper: half the width of a thin line.
    /// </summary>
    public const double SameLine = 0.0001;
}
