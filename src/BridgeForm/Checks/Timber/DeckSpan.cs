using BridgeForm.Frames;
using BridgeForm.Loads;
using BridgeForm.Materials;
using BridgeForm.Project;
using BridgeForm.Quantities;
using BridgeForm.Roles;

namespace BridgeForm.Checks.Timber;

/// <summary>One board, tread or stringer as a simple beam. Metres, newtons, pascals.</summary>
internal sealed record DeckSpan
{
    /// <summary>What it is for.</summary>
    public required Role Role { get; init; }

    /// <summary>Its role's name, with which its checks' ids begin.</summary>
    public string Kind => RoleTable.Of(Role).Name;

    /// <summary>Stock it is cut from.</summary>
    public required string Stock { get; init; }

    /// <summary>Its section.</summary>
    public required Section Section { get; init; }

    /// <summary>Lies on its wide face.</summary>
    public required bool Flat { get; init; }

    /// <summary>Distance between bearings, and where.</summary>
    public required (double Length, string Where) Span { get; init; }

    /// <summary>The bay it is looked at in, 1 … bays: the longest; of treads the one where they lie furthest apart.</summary>
    public required int Bay { get; init; }

    /// <summary>The check with all of its kind in that bay.</summary>
    public CheckResult At(CheckContext context, CheckResult check) => check.On(context.InBay(Bay, Role));

    /// <summary>Own weight and what lies on it, N/m.</summary>
    public required double Dead { get; init; }

    /// <summary>Width whose area load it carries, metres.</summary>
    public required double Tributary { get; init; }

    /// <summary>Share of a concentrated load that it carries when this spreads over its patch.</summary>
    public required (double Share, string Why) Patch { get; init; }

    /// <summary>
    /// Largest shear under an even load as a share of load × span: half of a simple beam's, 5/8 beside the middle of three
    /// supports, which is the most of any number (standard beam tables, from memory).
    /// </summary>
    public double EvenShear { get; init; } = 0.5;

    private const double InnerShear = 5.0 / 8;

    /// <summary>How it bends.</summary>
    public RectangularSection Bends => Flat
        ? new(Section.Width, Section.Thickness)
        : new(Section.Thickness, Section.Width);

    /// <summary>Members of the deck that carry between bearings; none of a kind the deck has not.</summary>
    public static IEnumerable<DeckSpan> List(CheckContext context)
    {
        var parameters = context.Parameters;
        var (length, bay) = LongestBay(context.Layout);
        var span = (length, FramePoses.BayName(bay, context.Layout.Bays));
        if (parameters.Deck.Stringer is { } stringer)
        {
            yield return Tread(context.Layout, stringer);
            yield return Stringer(parameters, stringer, span, bay);
        }
        else
        {
            yield return Board(parameters, span, bay);
        }
    }

    /// <summary>Fb' with beam stability; null when no table has it.</summary>
    public AdjustedValue? Bending(LumberValues? values, LoadDuration load)
    {
        if (values is null)
        {
            return null;
        }

        var stability = Stability.Beam(
            Bends, Span.Length, cantilever: false, values.Bending(load, flat: false).Value, values.ModulusMin(load).Value);
        return values.Bending(load, Flat).Times(stability);
    }

    /// <summary>Longest distance between neighbouring frames along the deck: the chord.</summary>
    private static (double Length, int Bay) LongestBay(BridgeLayout layout)
    {
        var bay = Ties.FirstLargest(
            Enumerable.Range(1, layout.Bays), i => (layout.Deck.Points[i] - layout.Deck.Points[i - 1]).Length);
        return ((layout.Deck.Points[bay] - layout.Deck.Points[bay - 1]).Length, bay);
    }

    private static DeckSpan Board(BridgeParameters parameters, (double Length, string Where) span, int bay)
    {
        var deck = parameters.Deck;
        var gap = DeckWidth.EqualGap(DeckWidth.Filled(parameters), deck.Board.Width, DeckWidth.BoardCount(parameters));
        var pitch = deck.Board.Width + gap;
        return new DeckSpan
        {
            Role = Role.Board,
            Stock = deck.BoardStock,
            Section = deck.Board,
            Flat = true,
            Span = span,
            Bay = bay,
            Dead = PerLength(parameters, deck.BoardStock, deck.Board.Width * deck.Board.Thickness),
            Tributary = pitch,
            Patch = BySize(parameters, pitch, Role.Board),
        };
    }

    private static DeckSpan Tread(BridgeLayout layout, StringerParameters stringer)
    {
        var parameters = layout.Parameters;
        var deck = parameters.Deck;
        // Treads lie evenly in their bay: where they are fewest a tread carries most.
        var bay = Ties.FirstLargest(Enumerable.Range(1, layout.Bays), i => DeckTreads.Gap(layout, i, stringer));
        var pitch = deck.Board.Width + DeckTreads.Gap(layout, bay, stringer);
        return new DeckSpan
        {
            Role = Role.Tread,
            Stock = deck.BoardStock,
            Section = deck.Board,
            Flat = true,
            Span = (StringerShares.Apart(parameters, stringer), "stringer to stringer"),
            Bay = bay,
            Dead = PerLength(parameters, deck.BoardStock, deck.Board.Width * deck.Board.Thickness),
            Tributary = pitch,
            Patch = BySize(parameters, pitch, Role.Tread),
            EvenShear = stringer.Count == 2 ? 0.5 : InnerShear,
        };
    }

    private static DeckSpan Stringer(
        BridgeParameters parameters, StringerParameters stringer, (double Length, string Where) span, int bay)
    {
        var tributary = StringerShares.LargestWidth(parameters, stringer);
        return new DeckSpan
        {
            Role = Role.Stringer,
            Stock = stringer.Stock,
            Section = stringer.Section,
            Flat = false,
            Span = span,
            Bay = bay,
            Dead = PerLength(parameters, stringer.Stock, stringer.Section.Width * stringer.Section.Thickness)
                + PerLength(parameters, parameters.Deck.BoardStock, tributary * parameters.Deck.Board.Thickness),
            Tributary = tributary,
            Patch = ByStatics(parameters, stringer),
        };
    }

    private static (double Share, string Why) BySize(BridgeParameters parameters, double pitch, Role role)
    {
        var noun = RoleTable.Of(role).Name;
        var patch = parameters.Loads.PointPatch;
        return pitch < patch
            ? (pitch / patch, $"a {noun} with its gap carries pitch / patch of it")
            : (1, $"the patch is narrower than a {noun}");
    }

    /// <summary>Treads run over all stringers: the patch stands over one of them, or beside two.</summary>
    private static (double Share, string Why) ByStatics(BridgeParameters parameters, StringerParameters stringer)
    {
        var patch = parameters.Loads.PointPatch;
        if (stringer.Count == 2)
        {
            var outwards = NodeLoads.EdgeFromMiddle(DeckWidth.BetweenPosts(parameters), parameters.Loads.PointEdge);
            return (
                Math.Min(1, 0.5 + (outwards / StringerShares.Apart(parameters, stringer))),
                "at the edge, between two stringers by statics");
        }

        return (
            StringerShares.LargestOfPatch(parameters, stringer, patch),
            $"patch over the stringers where it is worst, treads in one piece over {stringer.Count}");
    }

    private static double PerLength(BridgeParameters parameters, string stock, double area) =>
        area * parameters.StockNamed(stock).Density.High * BridgeMasses.Gravity;
}
