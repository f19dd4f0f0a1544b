using System.Collections.Immutable;
using BridgeForm.Project;
using BridgeForm.Quantities;
using BridgeForm.Ropes;

namespace BridgeForm.Loads;

/// <summary>How far a rope stays above ground and water. Metres, vertical.</summary>
public static class Clearance
{
    // Points a bay at which the rope is looked at: a bay's own sag is a millimetre or two, a quarter of it a sixteenth.
    private const int SamplesPerBay = 4;

    /// <summary>
    /// Least height of the underside over the ground line from one end base's inner face to the other's; null where the two
    /// do not lie over each other. Over the end bases themselves the ground may rise to the landing they stand on.
    /// </summary>
    /// <param name="shape">The rope.</param>
    /// <param name="ground">Ground line, world axes, x growing; empty for none.</param>
    /// <param name="below">How far its underside lies below its axis.</param>
    /// <param name="skipped">From each support to its end base's inner face.</param>
    public static double? OverGround(RopeShape shape, ImmutableArray<GroundPoint> ground, double below, double skipped)
    {
        if (ground.IsEmpty)
        {
            return null;
        }

        var from = Math.Max(ground[0].X, shape.Nodes[0].X + skipped);
        var to = Math.Min(ground[^1].X, shape.Nodes[^1].X - skipped);
        if (to < from)
        {
            return null;
        }

        var atRope = shape.Curve(SamplesPerBay)
            .Where(p => p.X >= from && p.X <= to)
            .Select(p => p.Y - Height(ground, p.X));
        // Where the ground bends, and at both ends of the open span: rope and ground are straightest apart from these.
        var atGround = ground
            .Select(p => p.X)
            .Where(x => x > from && x < to)
            .Append(from)
            .Append(to)
            .Select(x => shape.HeightAt(x) - Height(ground, x));
        return atRope.Concat(atGround).Min() - below;
    }

    /// <summary>
    /// Least height of a short straight line over the ground line; null where the two do not lie over each other.
    /// </summary>
    /// <param name="a">Its end towards A.</param>
    /// <param name="b">Its end towards B.</param>
    /// <param name="ground">Ground line, world axes, x growing; empty for none.</param>
    internal static double? OverGround(RopePoint a, RopePoint b, ImmutableArray<GroundPoint> ground)
    {
        if (ground.IsEmpty)
        {
            return null;
        }

        double? least = null;
        Look(a.X);
        Look(b.X);
        foreach (var bend in ground)
        {
            if (bend.X > a.X && bend.X < b.X)
            {
                Look(bend.X);
            }
        }

        return least;

        void Look(double x)
        {
            if (x >= ground[0].X && x <= ground[^1].X)
            {
                var room = a.Y + ((b.Y - a.Y) * (x - a.X) / (b.X - a.X)) - Height(ground, x);
                least = room >= least ? least : room;
            }
        }
    }

    /// <summary>It reaches under all that is looked at, from one end base's inner face to the other's.</summary>
    /// <param name="site">Where the bridge stands.</param>
    /// <param name="skipped">From each support to its end base's inner face.</param>
    public static bool IsWhole(SiteParameters site, double skipped) => !site.Ground.IsEmpty
        && site.Ground[0].X <= skipped + Tolerances.RoundOff && site.Ground[^1].X >= site.Span - skipped - Tolerances.RoundOff;

    /// <summary>Least height of the underside over still water; negative when the water reaches it.</summary>
    /// <param name="shape">The rope.</param>
    /// <param name="water">Level of the water, world y.</param>
    /// <param name="below">How far its underside lies below its axis.</param>
    public static double OverWater(RopeShape shape, double water, double below) =>
        shape.TouchedBy(0).Y - below - water;

    /// <summary>Height of the ground line at a world x, metres.</summary>
    internal static double Height(ImmutableArray<GroundPoint> ground, double x)
    {
        var (low, high) = (0, ground.Length - 1);
        while (high - low > 1)
        {
            var middle = (low + high) / 2;
            (low, high) = ground[middle].X <= x ? (middle, high) : (low, middle);
        }

        // A single reading is a place, not a line.
        var run = ground[high].X - ground[low].X;
        return low == high ? ground[low].Y : ground[low].Y + ((ground[high].Y - ground[low].Y) * (x - ground[low].X) / run);
    }
}
