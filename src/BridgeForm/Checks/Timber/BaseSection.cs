using System.Collections.Immutable;
using BridgeForm.Frames;
using BridgeForm.Quantities;
using BridgeForm.Solids;

namespace BridgeForm.Checks.Timber;

/// <summary>A stretch of a base.</summary>
/// <param name="From">z in metres from the middle, right positive.</param>
/// <param name="To">z of its end.</param>
/// <param name="Section">What is left of its section.</param>
/// <param name="IsDrilled">Holes count in it.</param>
internal sealed record BaseStretch(double From, double To, DrilledSection Section, bool IsDrilled)
{
    /// <summary>A source, and where holes count their rule.</summary>
    public string Source(string source) => IsDrilled ? $"{source}; {DrilledHole.Rule}" : source;
}

/// <summary>Full section of a base and what channels and holes leave of it. Metres.</summary>
/// <param name="Full">Breadth along the bridge, depth square to the deck.</param>
/// <param name="Notch">Deepest channel of the interior bases, at its deep mouth.</param>
/// <param name="Channel">Channel's inner and outer wall, z of the right one.</param>
/// <param name="Holes">Keeper holes and the user's own.</param>
internal sealed record BaseSection(
    RectangularSection Full, double Notch, (double Inner, double Outer) Channel, ImmutableArray<DrilledHole> Holes)
{
    /// <summary>The frame whose channel is so deep; of several alike the first that was looked at.</summary>
    public int Frame { get; private init; }

    /// <summary>Net section of the channel alone: the full breadth, what is left of the depth.</summary>
    public RectangularSection Net => Full with { Depth = Full.Depth - Notch };

    /// <summary>Of the interior bases, the one beside the longest bay before the others.</summary>
    public static BaseSection Cut(CheckContext context) =>
        Cut(context, [BaseCases.Governing(context.Layout), .. Enumerable.Range(1, context.Layout.Bays - 1)]);

    /// <summary>With the deepest notch of some frames and their holes, which are the same in all of them.</summary>
    public static BaseSection Cut(CheckContext context, ImmutableArray<int> frames)
    {
        var parameters = context.Parameters;
        var made = parameters.Frames.Base;
        var (axis, half) = (parameters.Ropes.Spacing / 2, parameters.Frames.Channel.Width / 2);
        return new BaseSection(
            new(made.Along, made.Depth),
            frames.Max(Notch),
            (axis - half, axis + half),
            DrilledHole.List(BaseMember.Cut(context.Layout, frames[0]).Shape, made.Flat))
        {
            Frame = Ties.FirstLargest(frames, Notch),
        };

        double Notch(int frame)
        {
            var levels = context.Layout.Levels[frame];
            return levels.ChannelDepth + (made.Along / 2 * Math.Abs(levels.FloorSlope));
        }
    }

    /// <summary>The two channels with the holes in them and near them.</summary>
    public IEnumerable<BaseStretch> Channels()
    {
        var channel = new SectionVoid(-Full.Breadth / 2, Full.Breadth / 2, -Full.Depth / 2, Notch - (Full.Depth / 2), Parts: true);
        foreach (var holes in EitherWay())
        {
            foreach (var (from, to) in ((double, double)[])[(-Channel.Outer, -Channel.Inner), (Channel.Inner, Channel.Outer)])
            {
                var near = holes.Where(h => h.CountsAt(from, to)).Select(h => h.Void).ToList();
                yield return new(from, to, new(Full, [channel, .. near]), near.Count > 0);
            }
        }
    }

    /// <summary>Everything beside the channels: the full section, and at each hole what it and its neighbours leave.</summary>
    /// <param name="half">Half the base's length.</param>
    public IEnumerable<BaseStretch> Beside(double half)
    {
        var (full, channel) = (new DrilledSection(Full, []), Channel);
        yield return new(-half, -Channel.Outer, full, IsDrilled: false);
        yield return new(-Channel.Inner, Channel.Inner, full, IsDrilled: false);
        yield return new(Channel.Outer, half, full, IsDrilled: false);
        foreach (var holes in EitherWay())
        {
            foreach (var hole in holes.Where(h => Math.Abs(h.At) < channel.Inner || Math.Abs(h.At) > channel.Outer))
            {
                yield return new(
                    hole.From, hole.To, new(Full, [.. holes.Where(h => h.CountsWith(hole)).Select(h => h.Void)]), IsDrilled: true);
            }
        }
    }

    // Loads stand on the right side of the base only (BaseCases), holes may be on either.
    private ImmutableArray<DrilledHole>[] EitherWay() => [Holes, [.. Holes.Select(h => h with { At = -h.At })]];

    /// <summary>Fb' of a section of the base with beam stability over its whole length; null without values.</summary>
    public static AdjustedValue? Bending(CheckContext context, RectangularSection section, LoadDuration load)
    {
        var made = context.Parameters.Frames.Base;
        if (Values(context) is not { } values)
        {
            return null;
        }

        var stability = Stability.Beam(
            section, made.Length, cantilever: false, values.Bending(load, flat: false).Value, values.ModulusMin(load).Value);
        return values.Bending(load, made.Flat).Times(stability);
    }

    /// <summary>Fv' of the base; null without values.</summary>
    public static AdjustedValue? Shear(CheckContext context, LoadDuration load) => Values(context)?.Shear(load);

    /// <summary>Values of the base's wood; null where there are none.</summary>
    public static LumberValues? Values(CheckContext context) =>
        LumberValues.Find(context.Parameters, context.Parameters.Frames.Base.Stock, context.Parameters.Frames.Base.Section);

    /// <summary>Why there are no values.</summary>
    public static MissingValue Missing(CheckContext context) =>
        LumberValues.Missing(context.Parameters, context.Parameters.Frames.Base.Stock, context.Parameters.Frames.Base.Section);
}

/// <summary>A rectangle that bends. Metres.</summary>
/// <param name="Breadth">b, along the axis it bends about.</param>
/// <param name="Depth">d, in the direction of the load.</param>
internal sealed record RectangularSection(double Breadth, double Depth)
{
    /// <summary>b·d, m².</summary>
    public double Area => Breadth * Depth;

    /// <summary>S = b·d²/6, m³.</summary>
    public double Modulus => Breadth * Depth * Depth / 6;

    /// <summary>I = b·d³/12, m⁴.</summary>
    public double Inertia => Modulus * Depth / 2;
}

/// <summary>What a hole or a channel takes out of a section. Metres from the middle of the whole section.</summary>
/// <param name="Left">Along the breadth.</param>
/// <param name="Right">Along the breadth.</param>
/// <param name="Low">Along the depth, the way the member bends.</param>
/// <param name="High">Along the depth.</param>
/// <param name="Parts">It runs along the breadth and so parts what is above it from what is below.</param>
internal sealed record SectionVoid(double Left, double Right, double Low, double High, bool Parts)
{
    /// <summary>A hole where it is widest; the section's breadth is the stick's thickness, or its width where it bends flat.</summary>
    public static SectionVoid Of(CutStock stock, Hole hole, bool flat)
    {
        var isNarrow = hole.Face is StockFace.MinusY or StockFace.PlusY;
        var half = (isNarrow ? stock.Width : stock.Thickness) / 2;
        var floor = half - Math.Min(hole.Depth ?? double.PositiveInfinity, 2 * half);
        var (from, to) = hole.Face is StockFace.PlusY or StockFace.PlusZ ? (floor, half) : (-half, -floor);
        var (one, other) = (hole.Across - (hole.Diameter / 2), hole.Across + (hole.Diameter / 2));
        return isNarrow == flat ? new(from, to, one, other, Parts: true) : new(one, other, from, to, Parts: false);
    }

    /// <summary>The same on the other side of the axis, in depth, in breadth and in both.</summary>
    public IEnumerable<SectionVoid> Mirrored() =>
    [
        this with { Low = -High, High = -Low },
        this with { Left = -Right, Right = -Left },
        new(-Right, -Left, -High, -Low, Parts),
    ];
}

/// <summary>A hole of a member. Metres along the piece's X axis.</summary>
/// <param name="At">Its middle.</param>
/// <param name="Diameter">Diameter.</param>
/// <param name="Void">What it takes of the section.</param>
internal sealed record DrilledHole(double At, double Diameter, SectionVoid Void)
{
    // NDS 3.1.2.2 says so of staggered fasteners (from memory); taken for all that is cut out.
    private const double SameSection = 4;

    /// <summary>What the text says of it.</summary>
    public const string Rule = "net section less every hole nearer than four diameters along the grain, NDS 3.1.2 (from memory)";

    /// <summary>Where it begins.</summary>
    public double From => At - (Diameter / 2);

    /// <summary>Where it ends.</summary>
    public double To => At + (Diameter / 2);

    /// <summary>All holes of a stick.</summary>
    public static ImmutableArray<DrilledHole> List(CutStock stock, bool flat) =>
        [.. stock.Holes.Select(hole => new DrilledHole(hole.X, hole.Diameter, SectionVoid.Of(stock, hole, flat)))];

    /// <summary>Whether it counts in a section through a stretch.</summary>
    public bool CountsAt(double from, double to) => At > from - (SameSection * Diameter) && At < to + (SameSection * Diameter);

    /// <summary>Whether it counts in a section through another hole: nearer than four diameters of the larger one.</summary>
    public bool CountsWith(DrilledHole other) => Math.Abs(At - other.At) < SameSection * Math.Max(Diameter, other.Diameter);
}
