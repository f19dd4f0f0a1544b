using System.Collections.Immutable;
using BridgeForm.Solids;

namespace BridgeForm.Checks.Timber;

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
    public static ImmutableArray<DrilledHole> Of(CutStock stock, bool flat) =>
        [.. stock.Holes.Select(hole => new DrilledHole(hole.X, hole.Diameter, SectionVoid.Of(stock, hole, flat)))];

    /// <summary>Whether it counts in a section through a stretch.</summary>
    public bool CountsAt(double from, double to) => At > from - (SameSection * Diameter) && At < to + (SameSection * Diameter);

    /// <summary>Whether it counts in a section through another hole: nearer than four diameters of the larger one.</summary>
    public bool CountsWith(DrilledHole other) => Math.Abs(At - other.At) < SameSection * Math.Max(Diameter, other.Diameter);
}
