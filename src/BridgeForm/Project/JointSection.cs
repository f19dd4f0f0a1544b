using System.Collections.Immutable;
using BridgeForm.Connections;
using BridgeForm.Project.Definition;
using BridgeForm.Project.Reading;
using BridgeForm.Quantities;

namespace BridgeForm.Project;

/// <summary>Joints of a frame that the project file can describe.</summary>
public enum JointPlace
{
    /// <summary>Post on base.</summary>
    PostFoot,

    /// <summary>Brace on base.</summary>
    BraceFoot,

    /// <summary>Brace against post.</summary>
    BraceHead,
}

/// <summary>A joint of every frame, left and right alike. It has plates or a bracket, never both.</summary>
/// <param name="Place">Which.</param>
public sealed record JointParameters(JointPlace Place)
{
    /// <summary>Steel plates on both faces, bolted through; null for a bracket.</summary>
    public PlateJoint? Plates { get; init; }

    /// <summary>A bracket by what its maker declares; null for plates.</summary>
    public BracketCapacity? Bracket { get; init; }

    /// <summary>Its name, as under <c>joints</c> and <c>fasteners</c>.</summary>
    public string Name => JointSection.NameOf(Place);
}

/// <summary>Bolts of one member, in lines along its grain. Metres.</summary>
/// <param name="Bolt">Diameter of the bolts.</param>
/// <param name="Count">How many in a line.</param>
/// <param name="Spacing">Between them.</param>
/// <param name="Lines">How many lines lie side by side: one or two.</param>
/// <param name="Apart">Between two lines; 0 for one.</param>
public sealed record BoltPattern(double Bolt, int Count, double Spacing, int Lines, double Apart)
{
    /// <summary>All of them.</summary>
    public int Total => Count * Lines;

    /// <summary>Diameter of their holes.</summary>
    public double Hole => Bolt + BoltSizes.Oversize;

    /// <summary>From the middle of all lines to the outermost.</summary>
    public double Half => (Lines - 1) * Apart / 2;
}

/// <summary>Two steel plates, one on either face of the frame, with bolts through both members. Metres.</summary>
/// <param name="Strut">Bolts in the post or brace that ends here, their lines to both sides of its axis.</param>
/// <param name="End">From its cut, along its axis, to the first of them.</param>
/// <param name="Carrier">Bolts in the base or post that it ends on.</param>
/// <param name="Depth">From the face on which it ends down to the middle of these lines.</param>
/// <param name="Shift">Of their middle along the carrier from the strut's axis, drawn on: outward on a base, upward on a post.</param>
/// <param name="Thickness">Of one plate.</param>
/// <param name="Width">Of a plate, across the axis.</param>
/// <param name="Length">Of a plate, along the axis.</param>
public sealed record PlateJoint(
    BoltPattern Strut, double End, BoltPattern Carrier, double Depth, double Shift, double Thickness, double Width, double Length)
{
    /// <summary>Mass of both plates and all bolts of one joint, with washers, heads and nuts, kilograms.</summary>
    internal double Steel(FrameParameters frames, JointPlace place)
    {
        var wood = JointSticks.Of(frames, place).Carrier.Thickness;
        double Bolts(BoltPattern p) => BoltSizes.Find(p.Bolt) is { } size ? p.Total * BoltMass(size, wood, Thickness) : 0;
        return (2 * PlateMass) + Bolts(Strut) + Bolts(Carrier);
    }

    /// <summary>Of one plate as it is bought, its holes not taken off, kilograms.</summary>
    public double PlateMass => SteelPlate.Density * Length * Width * Thickness;

    /// <summary>Of one bolt through wood between two plates, with its head, washers and nut, kilograms.</summary>
    internal static double BoltMass(BoltSize size, double wood, double plate)
    {
        var fit = BoltSizes.Fit(size, wood, plate);
        return SteelPlate.Density * size.Diameter * size.Diameter
            * ((Math.PI / 4 * fit.Length) + (Hexagon * (size.Head + size.Nut)) + (Round * fit.Washers * size.Washer));
    }

    // Areas in squares of the diameter: a hexagon half as wide again across its flats, √3/2·1.5² less the bolt where it is a nut; a washer
    // of 2-1/2 diameters around its hole (common practice, no source).
    private const double Hexagon = 1.6;
    private const double Round = 4;

    /// <summary>As wide and long as its bolts ask for, up to the next 1/4 in or 5 mm.</summary>
    internal PlateJoint Sized(FrameParameters frames, JointPlace place, UnitSystem units)
    {
        var (length, width) = PlateLayout.Build(frames, place, this).Needed;
        var step = units == UnitSystem.Metric ? 5 * Rounding.Millimetre : Units.MetresPerInch / 4;
        return this with { Width = Rounding.Up(width, step), Length = Rounding.Up(length, step) };
    }
}

/// <summary>What a bracket's maker declares for all brackets of one joint. Newtons.</summary>
/// <param name="Uplift">Square to the face it stands on.</param>
/// <param name="Shear">Along that face.</param>
/// <param name="Source">Who says so.</param>
public sealed record BracketCapacity(double Uplift, double Shear, string Source);

/// <summary>Keys under <c>joints</c>, and how they are read. <see cref="JointRules"/> says what they must agree on.</summary>
internal static class JointSection
{
    /// <summary>The kind that needs a declared capacity.</summary>
    public const string Bracket = "bracket";

    // Low in the base, for what is pulled splits off above the row; above keepers and channels of usual depth. Own figure.
    private const double DeepInBase = 0.75;

    public static KeySpec Keys => Define.OptionalMap(
        "joints",
        "What holds the parts together; what is left out is for your engineer",
        [
            .. Enum.GetValues<JointPlace>().Select(Keyed).Select(k => k.Starting()),
            .. HeldSection.Keys.Select(k => k.Name is "rail" or "board" ? k.Starting() : k),
        ]).Starting();

    /// <summary>A joint's name.</summary>
    public static string NameOf(JointPlace place) => place switch
    {
        JointPlace.PostFoot => "post-foot",
        JointPlace.BraceFoot => "brace-foot",
        _ => "brace-head",
    };

    /// <summary>The joint of a name.</summary>
    public static JointPlace PlaceOf(string name) =>
        Enum.GetValues<JointPlace>().First(p => string.Equals(NameOf(p), name, StringComparison.Ordinal));

    /// <summary>Path of a joint in the file.</summary>
    public static string PathOf(JointPlace place) => "joints." + NameOf(place);

    /// <summary>All that the file describes, in their order.</summary>
    public static ImmutableArray<JointParameters> Read(FileValues v, FrameParameters frames) =>
        [.. Enum.GetValues<JointPlace>().Where(p => v.Given(PathOf(p))).Select(p => Joint(v, frames, p))];

    private static KeySpec Keyed(JointPlace place)
    {
        var (strut, carrier, toward) = Words(place);
        return Define.OptionalMap(
            NameOf(place),
            $"Joint of {strut} and {carrier}",
            Define.Choice(
                "kind", "Two steel plates with bolts through, or a bracket by its maker's figures", "plates", "plates", Bracket),
            Define.Length("bolt", "Diameter of the bolts", "6 mm", "1 in", "1/2 in", "12 mm"),
            Define.Whole("count", $"Bolts in the {strut}, in a line along it", "2", "8", "2"),
            Noted("spacing", "Between them", "5 diameters"),
            Define.Whole("lines", "Lines of bolts, to both sides of its axis", "1", "2", "1"),
            Noted("apart", "Between two lines", Apart(strut)),
            Noted(
                "end", $"From the {strut}'s cut along its axis to the first bolt",
                place == JointPlace.BraceHead ? "7 diameters, and 4 from every line square to the cut" : "7 diameters"),
            Define.Map(
                "carrier",
                $"The bolts in the {carrier}, in lines along it",
                Noted("bolt", "Their diameter", $"as in the {strut}"),
                Define.Whole("count", "How many in a line", "2", "8", "2"),
                Noted("spacing", "Between them", "5 diameters"),
                Define.Whole("lines", "Lines of bolts", "1", "2", "1"),
                Noted("apart", "Between two lines", place == JointPlace.BraceHead ? Apart(carrier) : "4 diameters"),
                Noted(
                    "depth", $"From the face that the {strut} ends on to the middle of the lines",
                    place == JointPlace.BraceHead ? "half the post's width" : "three quarters of the base's depth to the deeper line"),
                Define.Length(
                    "shift", $"Their middle {toward} of where the {strut}'s axis, drawn on, meets it", "-24 in", "24 in", "0 in",
                    "0 mm")),
            Define.Map(
                "plate",
                "The plates, one on either face, alike",
                Define.Length("thickness", "Thickness; below 1/4 in the steel is taken as sheet", "1/8 in", "1 in", "1/4 in", "8 mm"),
                Noted("width", $"Across the {strut}'s axis", "what the bolts ask for, to the next 1/4 in (5 mm)"),
                Noted("length", $"Along the {strut}'s axis", "what the bolts ask for, to the next 1/4 in (5 mm)")),
            Define.OptionalMap(
                "capacity",
                "What the maker of a bracket declares for all brackets of one joint together",
                Define.Quantity(QuantityKind.Force, "uplift", $"Square to the {carrier}", "1 lbf", "100000 lbf")
                    .Needed("1500 lbf", "6.5 kN"),
                Define.Quantity(QuantityKind.Force, "shear", $"Along the {carrier}", "1 lbf", "100000 lbf").Needed("900 lbf", "4 kN"),
                Define.Text("source", "Who declares it").Needed("maker's sheet of 2024")));
    }

    private static string Apart(string member) => $"the {member}'s width less 4 diameters to either edge";

    private static KeySpec Noted(string name, string description, string rule) =>
        Define.Length(name, description, "1/4 in", "10 ft") with { DefaultNote = rule };

    private static (string Strut, string Carrier, string Toward) Words(JointPlace place) => place switch
    {
        JointPlace.PostFoot => ("post", "base", "outward"),
        JointPlace.BraceFoot => ("brace", "base", "outward"),
        _ => ("brace", "post", "upward"),
    };

    private static JointParameters Joint(FileValues v, FrameParameters frames, JointPlace place)
    {
        var path = PathOf(place);
        return v.Text(path + ".kind") is Bracket
            ? new JointParameters(place) { Bracket = Capacity(v, path + ".capacity") }
            : new JointParameters(place) { Plates = Plates(v, frames, place, path) };
    }

    internal static BracketCapacity Capacity(FileValues v, string path) => v.Given(path)
        ? new(v.Number(path + ".uplift"), v.Number(path + ".shear"), v.Text(path + ".source"))
        : new(0, 0, "");

    private static PlateJoint Plates(FileValues v, FrameParameters frames, JointPlace place, string path)
    {
        var (sticks, bolt) = (JointSticks.Of(frames, place), v.Number(path + ".bolt"));
        double Or(string key, double rule) => v.NumberOrNull(path + key) ?? rule;
        var strut = Pattern(v, path, bolt, BetweenEdges(sticks.Strut, bolt));
        var below = Or(".carrier.bolt", bolt);
        var carrier = Pattern(
            v, path + ".carrier", below, sticks.CarrierIsPost ? BetweenEdges(sticks.Carrier, below) : DowelDistances.LoadedEdge * below);
        var plain = new PlateJoint(
            strut,
            Or(".end", EndFor(frames, place, strut)),
            carrier,
            Or(".carrier.depth", Middle(sticks, carrier)),
            v.Number(path + ".carrier.shift"),
            v.Number(path + ".plate.thickness"),
            0,
            0);
        var sized = plain.Sized(frames, place, v.Units);
        return sized with { Width = Or(".plate.width", sized.Width), Length = Or(".plate.length", sized.Length) };
    }

    private static BoltPattern Pattern(FileValues v, string path, double bolt, double apart)
    {
        var lines = v.Whole(path + ".lines");
        return new BoltPattern(
            bolt, v.Whole(path + ".count"), v.NumberOrNull(path + ".spacing") ?? (RowApart * bolt), lines,
            lines > 1 ? v.NumberOrNull(path + ".apart") ?? apart : 0);
    }

    /// <summary>
    /// Least distance of a rope from the middle of the bridge that keeps its channel out of the sections that the brace's bolts in the
    /// base weaken: four diameters of their holes (NDS 3.1.2, from memory) and half a wide channel (own figure), metres.
    /// </summary>
    /// <param name="outermost">Of these bolts, from the middle of the bridge, metres.</param>
    /// <param name="bolt">Their diameter, metres.</param>
    internal static double RopeBeyond(double outermost, double bolt) =>
        outermost + (SameSection * (bolt + BoltSizes.Oversize)) + HalfChannel;

    private const double SameSection = 4;
    private const double HalfChannel = 1.25 * Units.MetresPerInch;

    /// <summary>Keys of which <see cref="RopeBeside"/> makes its place.</summary>
    internal static ImmutableArray<string> RopeKeys { get; } =
    [
        .. ((string[])["kind", "bolt", "carrier.bolt", "carrier.count", "carrier.spacing", "carrier.lines", "carrier.apart",
            "carrier.depth", "carrier.shift"]).Select(k => $"{PathOf(JointPlace.BraceFoot)}.{k}"),
    ];

    /// <summary>Keys of which <see cref="SteelGuess"/> makes its mass.</summary>
    internal static ImmutableArray<string> KindKeys { get; } = [.. Enum.GetValues<JointPlace>().Select(p => PathOf(p) + ".kind")];

    /// <summary>Least distance of a rope from the middle beside the plates of the brace's foot, metres; 0 where it has none.</summary>
    /// <param name="v">The file.</param>
    /// <param name="braceMiddle">Where the brace's axis meets the base, metres.</param>
    internal static double RopeBeside(FileValues v, double braceMiddle)
    {
        var path = PathOf(JointPlace.BraceFoot);
        if (!v.Given(path) || v.Text(path + ".kind") is Bracket)
        {
            return 0;
        }

        var bolt = v.NumberOrNull(path + ".carrier.bolt") ?? v.Number(path + ".bolt");
        var carrier = Pattern(v, path + ".carrier", bolt, DowelDistances.LoadedEdge * bolt);
        var section = v.Section("frames.base.section");
        var depth = v.NumberOrNull(path + ".carrier.depth")
            ?? ((v.Flag("frames.base.flat") ? section.Thickness : section.Width) * DeepInBase) - carrier.Half;
        var middle = braceMiddle + (depth * Elementary.Tan(v.Number("frames.brace.lean"))) + v.Number(path + ".carrier.shift");
        return RopeBeyond(middle + ((carrier.Count - 1) * carrier.Spacing / 2), bolt);
    }

    /// <summary>
    /// About what the plates of a frame weigh, before they are laid out, kilograms: 5 a joint, left and right (own figure).
    /// </summary>
    internal static double SteelGuess(FileValues v) => SteelOfJoint
        * Enum.GetValues<JointPlace>().Count(p => v.Given(PathOf(p)) && v.Text(PathOf(p) + ".kind") is not Bracket);

    private const double SteelOfJoint = 5;

    /// <summary>
    /// From the strut's cut along its axis to the first bolt: seven diameters, and so far that every line has four square to a cut that
    /// runs along the grain rather than across it, for that is an edge on which the joint pulls. Metres.
    /// </summary>
    internal static double EndFor(FrameParameters frames, JointPlace place, BoltPattern strut)
    {
        var (full, sine) = (DowelDistances.FullEnd * strut.Bolt, CutSine(frames, place));
        return IsEdge(sine)
            ? Math.Max(full, ((DowelDistances.LoadedEdge * strut.Bolt) + (strut.Half * Math.Sqrt(1 - (sine * sine)))) / sine)
            : full;
    }

    /// <summary>Sine of the angle between a strut's axis and its cut.</summary>
    internal static double CutSine(FrameParameters frames, JointPlace place) => place switch
    {
        JointPlace.PostFoot => Elementary.Cos(frames.Post.Lean),
        JointPlace.BraceFoot => Elementary.Cos(frames.Brace.Lean),
        _ => Elementary.Sin(frames.Post.Lean + frames.Brace.Lean),
    };

    /// <summary>Whether a cut runs nearer along the grain than across it (half of a right angle: own figure).</summary>
    internal static bool IsEdge(double sine) => sine * sine < 0.5;

    /// <summary>Where the middle of the carrier's lines lies, from the face that the strut ends on, metres.</summary>
    internal static double Middle(JointSticks sticks, BoltPattern carrier) =>
        sticks.CarrierIsPost ? sticks.Carrier.Width / 2 : (sticks.Carrier.Width * DeepInBase) - carrier.Half;

    /// <summary>How far two lines lie apart that keep four diameters to either edge, metres.</summary>
    internal static double BetweenEdges(JointStick stick, double bolt) => stick.Width - (2 * DowelDistances.LoadedEdge * bolt);

    // Far enough for rows that press across the grain (Table 12.5.1D) and for the full value along it.
    internal const double RowApart = 5;
}
