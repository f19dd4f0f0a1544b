using System.Collections.Immutable;
using BridgeForm.Project;
using BridgeForm.Quantities;
using BridgeForm.Solids;

namespace BridgeForm.Pieces;

/// <summary>How a piece lies on a three-axis router.</summary>
/// <param name="FaceUp">The face that is up.</param>
/// <param name="Bit">The bit that cuts it.</param>
/// <param name="Obstacles">What cannot be cut from it, each naming the edge; empty when all can, in this one set-up.</param>
public sealed record RouterSetup(StockFace FaceUp, RouterBit Bit, ImmutableArray<string> Obstacles)
{
    /// <summary>A wide face is up; false: a narrow one.</summary>
    public bool IsWide => FaceUp is StockFace.MinusZ or StockFace.PlusZ;
}

/// <summary>
/// Whether a three-axis router can make a piece in one set-up. From a wide face it can cut square ends, mitres and level
/// channels in the edges; with a narrow face up it can sink level channels into that face, when both ends are square and left
/// to the saw. It makes no bevels and no sloping floors.
/// </summary>
public static class Routing
{
    private static readonly ImmutableArray<StockFace> Faces =
        [StockFace.PlusZ, StockFace.MinusZ, StockFace.MinusY, StockFace.PlusY];

    /// <summary>Reasons why it cannot; empty when it can.</summary>
    /// <param name="stock">The piece's stick and cuts.</param>
    /// <param name="router">Its bed and bits.</param>
    public static ImmutableArray<string> Obstacles(CutStock stock, RouterParameters router) => Setup(stock, router).Obstacles;

    /// <summary>
    /// The first face, wide before narrow, and on it the thickest bit, with which everything can be cut; else those with the
    /// fewest obstacles.
    /// </summary>
    /// <param name="stock">The piece's stick and cuts.</param>
    /// <param name="router">Its bed and bits.</param>
    public static RouterSetup Setup(CutStock stock, RouterParameters router) => Faces
        .SelectMany(face => router.Bits.Select(bit => new RouterSetup(face, bit, From(stock, face, router, bit))))
        .MinBy(s => s.Obstacles.Length)!;

    private static ImmutableArray<string> From(CutStock stock, StockFace face, RouterParameters router, RouterBit bit) =>
    [
        .. Room(stock, face, router),
        .. stock.IsRound ? ["is round"] : (string[])[],
        .. Ends(Edge(stock.Near, face), Edge(stock.Far, face)),
        .. (stock.IsRound ? [] : stock.Rips).Select(rip => Edge(rip, face)).OfType<string>()
            .Select(fault => "ripped face " + fault).Distinct(StringComparer.Ordinal),
        .. stock.Channels.SelectMany(c => Judge(stock, c, face, bit.Diameter)).Distinct(StringComparer.Ordinal),
        .. stock.Holes.SelectMany(h => Judge(h, face)).Distinct(StringComparer.Ordinal),
        .. bit.Reach < Deepest(stock, face) ? ["no bit reaches deep enough"] : (string[])[],
    ];

    /// <summary>Whether it lies on the bed and goes under the bit.</summary>
    private static IEnumerable<string> Room(CutStock stock, StockFace face, RouterParameters router)
    {
        var (near, far) = stock.LengthRange();
        var (across, height) = OnWide(face) ? (stock.Width, stock.Thickness) : (stock.Thickness, stock.Width);
        if (!router.HasRoomFor(far - near, across))
        {
            yield return "larger than the router's bed";
        }

        if (height > router.Height)
        {
            yield return "thicker than goes under the router";
        }
    }

    /// <summary>How deep the bit goes: through, from a wide face, and to the floor of a channel that is up. Metres.</summary>
    public static double Deepest(CutStock stock, StockFace face) => OnWide(face)
        ? stock.Thickness
        : stock.Channels.Where(c => c.Face == face).Select(c => c.Depth).DefaultIfEmpty(0).Max();

    private static IEnumerable<string> Ends(string? near, string? far) => (near, far) switch
    {
        (null, null) => [],
        (_, null) => ["near end " + near],
        (null, _) => ["far end " + far],
        _ => string.Equals(near, far, StringComparison.Ordinal)
            ? ["both ends " + near.Replace("is ", "are ", StringComparison.Ordinal)]
            : ["near end " + near, "far end " + far],
    };

    /// <summary>What is wrong with a cut; null when the router can follow it.</summary>
    private static string? Edge(Plane plane, StockFace face)
    {
        var bevelled = Math.Abs(plane.Normal.Z) > Tolerances.SquareEdge;
        return OnWide(face)
            ? bevelled ? "is bevelled" : null
            : bevelled || Math.Abs(plane.Normal.Y) > Tolerances.SquareEdge ? "is not square, and a narrow face would have to be up" : null;
    }

    private static IEnumerable<string> Judge(CutStock stock, Channel channel, StockFace face, double bit)
    {
        var sideways = OnWide(face) != OnWide(channel.Face);
        if (channel.Face != face && !sideways)
        {
            yield return "channel in the face that lies down";
        }
        else if (Math.Abs(channel.FloorSlope) > Tolerances.SquareEdge)
        {
            yield return sideways ? "channel floor slopes through the thickness" : "channel floor slopes across the face";
        }
        else if (sideways && IsTight(channel, bit))
        {
            yield return "router bit is too thick for the channel's corners";
        }
        else if (channel.Width < bit)
        {
            yield return "channel is narrower than the router bit";
        }

        var (low, high) = stock.LengthRange();
        if (channel.Center - (channel.Width / 2) < low || channel.Center + (channel.Width / 2) > high)
        {
            yield return "channel runs out of the end";
        }
    }

    private static bool IsTight(Channel channel, double bit)
    {
        var reach = CornerRelief.Reach(bit) + Tolerances.ShortestWall;
        return channel.Depth < reach || channel.Width < 2 * reach;
    }

    private static IEnumerable<string> Judge(Hole hole, StockFace face)
    {
        if (OnWide(hole.Face) != OnWide(face))
        {
            yield return OnWide(face) ? "holes in a narrow face are drilled by hand" : "holes in a wide face are drilled by hand";
        }
        else if (hole.Face != face && hole.Depth is not null)
        {
            yield return "blind holes in the face that lies down are drilled by hand";
        }
    }

    private static bool OnWide(StockFace face) => face is StockFace.MinusZ or StockFace.PlusZ;
}
