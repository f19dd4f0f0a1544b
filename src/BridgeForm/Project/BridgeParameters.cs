using System.Collections.Immutable;
using BridgeForm.Materials;
using BridgeForm.Ropes;

namespace BridgeForm.Project;

/// <summary>Units that people read in printed matter.</summary>
public enum UnitSystem
{
    /// <summary>Feet, inches and sixteenths, pounds.</summary>
    Imperial,

    /// <summary>Millimetres, kilograms, kilonewtons.</summary>
    Metric,
}

/// <summary>Who walks on the bridge; sets guard height, opening and live load.</summary>
public enum BridgeUse
{
    /// <summary>One household and its guests.</summary>
    Private,

    /// <summary>Anybody.</summary>
    Public,
}

/// <summary>
/// A project file, read and checked: SI units throughout (metres, newtons, pascals, kilograms, radians, degrees Celsius
/// for temperatures), every default filled in.
/// </summary>
public sealed record BridgeParameters
{
    /// <summary>Name for titles.</summary>
    public required string Name { get; init; }

    /// <summary>Units of printed matter.</summary>
    public required UnitSystem Units { get; init; }

    /// <summary>Private or public.</summary>
    public required BridgeUse Use { get; init; }

    /// <summary>Supports and ground.</summary>
    public required SiteParameters Site { get; init; }

    /// <summary>The two ropes.</summary>
    public required RopeParameters Ropes { get; init; }

    /// <summary>Frames.</summary>
    public required FrameParameters Frames { get; init; }

    /// <summary>Deck.</summary>
    public required DeckParameters Deck { get; init; }

    /// <summary>Rails and cap.</summary>
    public required GuardParameters Guard { get; init; }

    /// <summary>Loads.</summary>
    public required LoadParameters Loads { get; init; }

    /// <summary>Lumber by name, in the file's order.</summary>
    public required ImmutableArray<StockParameters> Stock { get; init; }

    /// <summary>Saw, router, tolerance, paper.</summary>
    public required ShopParameters Shop { get; init; }

    /// <summary>Path of the user's price list as written; null when there is none.</summary>
    public string? Prices { get; init; }

    /// <summary>The price list at <see cref="Prices"/>, read at the edge and put in; null without one.</summary>
    public Stocking.PriceList? PriceList { get; init; }

    /// <summary>Field treatment of cuts; null when the file says nothing.</summary>
    public TreatmentParameters? Treatment { get; init; }

    /// <summary>Fasteners of one joint, by joint, as the user counts them.</summary>
    public ImmutableSortedDictionary<string, int> Fasteners { get; init; } = ImmutableSortedDictionary<string, int>.Empty;

    /// <summary>Order in which frames are hung.</summary>
    public ErectionOrder Erection { get; init; } = ErectionOrder.BothEnds;

    /// <summary>The user's own species, in the file's order; they go before the built-in ones.</summary>
    public ImmutableArray<Species> Species { get; init; } = [];

    /// <summary>The user's own design values; they go before the built-in ones.</summary>
    public ImmutableArray<DesignValue> Values { get; init; } = [];

    /// <summary>The stock of that name. Throws <see cref="KeyNotFoundException"/> when there is none; the reader has checked all names.</summary>
    public StockParameters StockNamed(string name) =>
        Stock.FirstOrDefault(s => string.Equals(s.Name, name, StringComparison.Ordinal))
        ?? throw new KeyNotFoundException(name);
}

/// <summary>Order in which frames are hung.</summary>
public enum ErectionOrder
{
    /// <summary>From both supports towards the middle.</summary>
    BothEnds,

    /// <summary>From support A on.</summary>
    OneEnd,
}

/// <summary>Supports and what lies under the bridge. Metres, degrees Celsius.</summary>
public sealed record SiteParameters
{
    /// <summary>Horizontal distance between the supports, metres.</summary>
    public required double Span { get; init; }

    /// <summary>Support B above support A, metres; negative when lower.</summary>
    public required double Rise { get; init; }

    /// <summary>Temperature at which the design shape holds, °C.</summary>
    public required double ReferenceTemperature { get; init; }

    /// <summary>Other temperatures to look at, °C, lowest first.</summary>
    public required ImmutableArray<double> Temperatures { get; init; }

    /// <summary>Ground line from A to B as (x, y) in metres in world axes; empty when not given.</summary>
    public ImmutableArray<GroundPoint> Ground { get; init; } = [];

    /// <summary>Level of the highest water, y in metres; null when not given.</summary>
    public double? Water { get; init; }

    /// <summary>Support A.</summary>
    public SupportParameters A { get; init; } = new();

    /// <summary>Support B.</summary>
    public SupportParameters B { get; init; } = new();
}

/// <summary>A point of the ground line, metres, world axes.</summary>
public readonly record struct GroundPoint(double X, double Y);

/// <summary>What stands behind one support.</summary>
public sealed record SupportParameters
{
    /// <summary>Rope from support to anchor; null when the rope ends at the support.</summary>
    public BackstayParameters? Backstay { get; init; }

    /// <summary>Level of the landing's walking surface above the support's rope axis, metres; null: flush with the end frame's deck.</summary>
    public double? LandingLevel { get; init; }

    /// <summary>Gap between landing and deck, metres; null when not given.</summary>
    public double? LandingGap { get; init; }
}

/// <summary>Rope from a support to its anchor.</summary>
/// <param name="Length">Metres.</param>
/// <param name="Angle">Below the horizontal, radians.</param>
/// <param name="Sliding">The rope slides over the saddle; false: it is held there.</param>
public sealed record BackstayParameters(double Length, double Angle, bool Sliding);

/// <summary>The two ropes and how they are made fast.</summary>
public sealed record RopeParameters
{
    /// <summary>The rope itself.</summary>
    public required RopeProperties Rope { get; init; }

    /// <summary>Distance between the two ropes' axes, metres.</summary>
    public required double Spacing { get; init; }

    /// <summary>Sag at mid-span in the design state, metres below the line A–B.</summary>
    public required double Sag { get; init; }

    /// <summary>Kind of termination, as written: <c>clips</c>, <c>socket</c>, …</summary>
    public required string TerminationKind { get; init; }

    /// <summary>Share of the rope's strength the termination keeps, 0 to 1; null: not given.</summary>
    public required double? TerminationEfficiency { get; init; }

    /// <summary>Where the efficiency comes from, as the user says; null: not given.</summary>
    public string? TerminationSource { get; init; }

    /// <summary>Breaking strength over largest allowed tension.</summary>
    public required double SafetyFactor { get; init; }

    /// <summary>Tension at which the rope is laid out and marked, newtons; 0: unstressed.</summary>
    public double MarkingTension { get; init; }

    /// <summary>Constructional stretch as a share of length, low and high; null: by the rope's kind.</summary>
    public ShareRange? Stretch { get; init; }
}

/// <summary>A range of shares (0.005 is half a per cent).</summary>
public readonly record struct ShareRange(double Low, double High);

/// <summary>Frames and their steps along the ropes.</summary>
public sealed record FrameParameters
{
    /// <summary>Largest distance between neighbouring frames, metres.</summary>
    public required double Spacing { get; init; }

    /// <summary>Equal steps along the rope's chords, or in plan.</summary>
    public required FrameStep Step { get; init; }

    /// <summary>Square to the rope, or plumb.</summary>
    public required Stance Stance { get; init; }

    /// <summary>The beam across the ropes.</summary>
    public required BaseParameters Base { get; init; }

    /// <summary>Rope channels of a base.</summary>
    public required ChannelParameters Channel { get; init; }

    /// <summary>Posts.</summary>
    public required PostParameters Post { get; init; }

    /// <summary>Braces.</summary>
    public required BraceParameters Brace { get; init; }

    /// <summary>Holes for the keeper straps.</summary>
    public required KeeperParameters Keeper { get; init; }

    /// <summary>Mass of fasteners and keepers of one frame, kilograms.</summary>
    public required double HardwareMass { get; init; }

    /// <summary>The user's own holes.</summary>
    public ImmutableArray<HoleParameters> Holes { get; init; } = [];
}

/// <summary>What is equal from frame to frame.</summary>
public enum FrameStep
{
    /// <summary>Straight distances between neighbouring nodes.</summary>
    Rope,

    /// <summary>Horizontal distances.</summary>
    Plan,
}

/// <summary>How frames stand.</summary>
public enum Stance
{
    /// <summary>Square to the rope.</summary>
    Square,

    /// <summary>Upright.</summary>
    Plumb,
}

/// <summary>The base: a stick across the bridge.</summary>
/// <param name="Section">Its section.</param>
/// <param name="Flat">Lies on its wide side instead of standing on the narrow one.</param>
/// <param name="Length">Metres.</param>
/// <param name="Stock">Name of the stock.</param>
public sealed record BaseParameters(Section Section, bool Flat, double Length, string Stock)
{
    /// <summary>Size square to the deck (b), metres.</summary>
    public double Depth => Flat ? Section.Thickness : Section.Width;

    /// <summary>Size along the bridge (b_t), metres.</summary>
    public double Along => Flat ? Section.Width : Section.Thickness;
}

/// <summary>The rope channel of a base. Metres.</summary>
/// <param name="Width">Wall to wall (already computed from rope, clearance and liner when not given).</param>
/// <param name="Depth">Depth at the middle of an interior base.</param>
/// <param name="EndDepth">Depth at the middle of an end base.</param>
/// <param name="Liner">Thickness of a liner between rope and wood; 0 for none.</param>
public sealed record ChannelParameters(double Width, double Depth, double EndDepth, double Liner);

/// <summary>A post.</summary>
/// <param name="Section">Its section; the wide face lies in the plane of the frame.</param>
/// <param name="Length">Along its axis, metres.</param>
/// <param name="Lean">Outward from n, radians (α).</param>
/// <param name="Foot">z of the inner face at the base's top, metres.</param>
/// <param name="Stock">Name of the stock.</param>
public sealed record PostParameters(Section Section, double Length, double Lean, double Foot, string Stock);

/// <summary>A brace; foot and length both known, whichever was given.</summary>
/// <param name="Section">Its section; the wide face lies in the plane of the frame.</param>
/// <param name="Lean">Inward from n, radians (β).</param>
/// <param name="Foot">z of the outer face at the base's top, metres.</param>
/// <param name="Length">Long point to long point, metres.</param>
/// <param name="Stock">Name of the stock.</param>
public sealed record BraceParameters(Section Section, double Lean, double Foot, double Length, string Stock);

/// <summary>Blind pilot holes from below, two at each channel. Metres.</summary>
/// <param name="Hole">Diameter; 0 for no holes.</param>
/// <param name="Spread">Centre to centre across the channel.</param>
/// <param name="Depth">Depth from the bottom face.</param>
public sealed record KeeperParameters(double Hole, double Spread, double Depth);

/// <summary>Members that the user may drill.</summary>
public enum DrilledPart
{
    /// <summary>Bases.</summary>
    Base,

    /// <summary>Posts.</summary>
    Post,

    /// <summary>Braces.</summary>
    Brace,
}

/// <summary>A hole the user asks for in every member of a kind. Metres.</summary>
/// <param name="Part">Which members.</param>
/// <param name="Face">The face the bit enters.</param>
/// <param name="FromEnd">Along the piece from the named end: the long point of the foot end (left end of a base) or of the far end.</param>
/// <param name="FromFarEnd">Measured from the head (right end of a base) instead of the foot.</param>
/// <param name="Across">From the middle of the face.</param>
/// <param name="Diameter">Diameter.</param>
/// <param name="Depth">Depth; null when through.</param>
public sealed record HoleParameters(
    DrilledPart Part, DrilledFace Face, double FromEnd, bool FromFarEnd, double Across, double Diameter, double? Depth);

/// <summary>Faces as people name them.</summary>
public enum DrilledFace
{
    /// <summary>A wide face (of a square base: the one towards A).</summary>
    Wide,

    /// <summary>The narrow face; of a base its top.</summary>
    Top,

    /// <summary>The opposite narrow face; of a base its bottom.</summary>
    Bottom,
}

/// <summary>Deck.</summary>
public sealed record DeckParameters
{
    /// <summary>Boards run along the bridge, or lie across it.</summary>
    public required DeckLayout Layout { get; init; }

    /// <summary>Section of boards or treads.</summary>
    public required Section Board { get; init; }

    /// <summary>Stock of boards or treads.</summary>
    public required string BoardStock { get; init; }

    /// <summary>Number of boards side by side (along) or treads in a bay (across); null for as many as fit.</summary>
    public required int? Count { get; init; }

    /// <summary>Least gap between neighbours, metres.</summary>
    public required double Gap { get; init; }

    /// <summary>Gap from the outermost boards, stringers or tread ends to the posts' feet, metres.</summary>
    public required double SideGap { get; init; }

    /// <summary>Gap between boards that meet end to end at a frame, metres.</summary>
    public required double ButtGap { get; init; }

    /// <summary>Stringers of a deck across; null for a deck along.</summary>
    public required StringerParameters? Stringer { get; init; }

    /// <summary>Thickness from the base's top to the walking surface, metres.</summary>
    public double Thickness => Board.Thickness + (Stringer?.Section.Width ?? 0);
}

/// <summary>Direction of the deck's boards.</summary>
public enum DeckLayout
{
    /// <summary>From base to base.</summary>
    Along,

    /// <summary>Treads on stringers.</summary>
    Across,
}

/// <summary>Stringers, standing on their narrow sides.</summary>
public sealed record StringerParameters(Section Section, int Count, string Stock);

/// <summary>Rails and cap.</summary>
public sealed record GuardParameters
{
    /// <summary>Section of a rail.</summary>
    public required Section Rail { get; init; }

    /// <summary>Stock of the rails.</summary>
    public required string RailStock { get; init; }

    /// <summary>Number of rails a side with equal gaps; ignored when <see cref="RailHeights"/> is not empty.</summary>
    public required int RailCount { get; init; }

    /// <summary>Heights of the rails' centre lines, up along the post from the base's top, metres; empty for equal gaps.</summary>
    public required ImmutableArray<double> RailHeights { get; init; }

    /// <summary>Section of the cap, lying flat.</summary>
    public required Section Cap { get; init; }

    /// <summary>Stock of the cap.</summary>
    public required string CapStock { get; init; }
}

/// <summary>Loads. Pascals, newtons, metres.</summary>
public sealed record LoadParameters
{
    /// <summary>Live load on the clear width, Pa.</summary>
    public required double Live { get; init; }

    /// <summary>Where <see cref="Live"/> comes from: the project file, or the default's source.</summary>
    public required string LiveSource { get; init; }

    /// <summary>Concentrated load, newtons.</summary>
    public required double PointForce { get; init; }

    /// <summary>Side of its square patch, metres.</summary>
    public required double PointPatch { get; init; }

    /// <summary>Nearest distance of the patch to the posts' inner face, metres.</summary>
    public required double PointEdge { get; init; }

    /// <summary>Share of the area load on the more heavily loaded rope, 0.5 to 1.</summary>
    public required double Eccentricity { get; init; }

    /// <summary>Upward wind on the deck, Pa; null when not given.</summary>
    public double? Uplift { get; init; }

    /// <summary>Snow, Pa; null when not given.</summary>
    public double? Snow { get; init; }

    /// <summary>The user's own cases.</summary>
    public ImmutableArray<LoadCaseParameters> Cases { get; init; } = [];
}

/// <summary>A load case of the user's.</summary>
public sealed record LoadCaseParameters
{
    /// <summary>Its id.</summary>
    public required string Id { get; init; }

    /// <summary>Area load, Pa; 0 for none.</summary>
    public double Live { get; init; }

    /// <summary>Where the area load begins, x in metres; null for support A.</summary>
    public double? From { get; init; }

    /// <summary>Where the area load ends, x in metres; null for support B.</summary>
    public double? To { get; init; }

    /// <summary>Concentrated load, newtons; 0 for none.</summary>
    public double PointForce { get; init; }

    /// <summary>Place of the concentrated load, x in metres; null for mid-span.</summary>
    public double? PointAt { get; init; }

    /// <summary>Temperature, °C; null for the reference temperature.</summary>
    public double? Temperature { get; init; }
}

/// <summary>One kind of lumber the builder buys.</summary>
public sealed record StockParameters
{
    /// <summary>Its name in the project file.</summary>
    public required string Name { get; init; }

    /// <summary>Key of the species.</summary>
    public required string Species { get; init; }

    /// <summary>Grade, as written.</summary>
    public required string Grade { get; init; }

    /// <summary>Pressure-treated: its cuts are brushed with field preservative.</summary>
    public required bool Treated { get; init; }

    /// <summary>Heartwood of a naturally durable species: cuts need no preservative.</summary>
    public bool Durable { get; init; }

    /// <summary>Incised for treatment.</summary>
    public required bool Incised { get; init; }

    /// <summary>Lengths on sale, metres, shortest first.</summary>
    public required ImmutableArray<double> Lengths { get; init; }

    /// <summary>Densities, dry to freshly treated.</summary>
    public required DensityRange Density { get; init; }
}

/// <summary>Density of a lumber in kg/m³.</summary>
/// <param name="Low">Dry; for uplift.</param>
/// <param name="InService">At moisture in service; for the design shape.</param>
/// <param name="High">Freshly treated or green; for lifting.</param>
/// <param name="Source">Where the numbers come from.</param>
public sealed record DensityRange(double Low, double InService, double High, string Source);

/// <summary>Tools and paper. Metres and radians.</summary>
public sealed record ShopParameters
{
    /// <summary>Largest mitre the saw sets, radians.</summary>
    public required double MitreLimit { get; init; }

    /// <summary>Largest bevel the saw sets, radians.</summary>
    public required double BevelLimit { get; init; }

    /// <summary>Width of the saw cut, metres.</summary>
    public required double Kerf { get; init; }

    /// <summary>Diameter of the router bit, metres.</summary>
    public required double RouterBit { get; init; }

    /// <summary>Pieces closer than this at every corner are one piece, metres.</summary>
    public required double Tolerance { get; init; }

    /// <summary>Paper name.</summary>
    public required string Paper { get; init; }

    /// <summary>Length cut off each end of a stock board before use, metres.</summary>
    public required double Trim { get; init; }

    /// <summary>Shortest offcut worth keeping, metres.</summary>
    public required double Offcut { get; init; }

    /// <summary>Leave holding tabs in board files.</summary>
    public required bool Tabs { get; init; }
}

/// <summary>Field treatment of cuts.</summary>
/// <param name="Coats">Number of coats.</param>
/// <param name="Coverage">Area one litre covers in one coat, m²/m³ (square metres per cubic metre).</param>
public sealed record TreatmentParameters(int Coats, double Coverage);
