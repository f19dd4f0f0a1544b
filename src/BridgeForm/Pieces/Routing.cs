using System.Collections.Immutable;
using BridgeForm.Solids;

namespace BridgeForm.Pieces;

/// <summary>Whether a three-axis router can make a piece from one wide face.</summary>
public static class Routing
{
    // An edge out of square by less than this over 4 in of wood is under 0.01 mm: no router cuts better.
    private const double SquareSlack = 1e-4;

    /// <summary>Reasons why it cannot, each naming the edge; empty when it can.</summary>
    public static ImmutableArray<string> Obstacles(CutStock stock)
    {
        var reasons = ImmutableArray.CreateBuilder<string>();
        AddIfBevelled(reasons, stock.Near, "near end");
        AddIfBevelled(reasons, stock.Far, "far end");
        for (var i = 0; i < stock.Rips.Length; i++)
        {
            AddIfBevelled(reasons, stock.Rips[i], "ripped face");
        }

        if (stock.Channels.Any(c => c.Face == StockFace.MinusY && Math.Abs(c.FloorSlope) > SquareSlack))
        {
            reasons.Add("channel floor slopes through the thickness");
        }

        if (stock.Channels.Any(c => c.Face == StockFace.MinusZ && Math.Abs(c.FloorSlope) > SquareSlack))
        {
            reasons.Add("channel floor slopes across the face");
        }

        if (stock.Holes.Any(h => h.Face is StockFace.MinusY or StockFace.PlusY))
        {
            reasons.Add("holes in a narrow face are drilled by hand");
        }

        return reasons.ToImmutable();
    }

    private static void AddIfBevelled(ImmutableArray<string>.Builder reasons, Plane plane, string where)
    {
        if (Math.Abs(plane.Normal.Z) > SquareSlack)
        {
            reasons.Add(where + " is bevelled");
        }
    }
}
