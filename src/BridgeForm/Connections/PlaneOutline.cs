using System.Collections.Immutable;

namespace BridgeForm.Connections;

/// <summary>Convex outlines in a plane, their corners one after another.</summary>
public static class PlaneOutline
{
    /// <summary>An upright rectangle.</summary>
    public static ImmutableArray<PlanePoint> Box(double left, double right, double low, double high) =>
        [new(left, low), new(right, low), new(right, high), new(left, high)];

    /// <summary>Whether two of them share more than an edge: no line of an edge of either has one on each side.</summary>
    public static bool Overlap(ImmutableArray<PlanePoint> one, ImmutableArray<PlanePoint> other, double tolerance) =>
        !Normals(one).Concat(Normals(other)).Any(n => Apart(one, other, n, tolerance));

    /// <summary>What of an outline lies above a level.</summary>
    public static ImmutableArray<PlanePoint> Above(ImmutableArray<PlanePoint> outline, double level)
    {
        var kept = ImmutableArray.CreateBuilder<PlanePoint>();
        for (var i = 0; i < outline.Length; i++)
        {
            var (here, next) = (outline[i], outline[(i + 1) % outline.Length]);
            if (here.N >= level)
            {
                kept.Add(here);
            }

            if ((here.N >= level) != (next.N >= level))
            {
                var share = (level - here.N) / (next.N - here.N);
                kept.Add(new(here.Z + (share * (next.Z - here.Z)), level));
            }
        }

        return kept.ToImmutable();
    }

    /// <summary>Shortest way from a place to an upright rectangle; 0 inside it.</summary>
    public static double ToBox(PlanePoint place, double left, double right, double low, double high)
    {
        var (z, n) = (Gap(place.Z, left, right), Gap(place.N, low, high));
        return Math.Sqrt((z * z) + (n * n));
    }

    private static double Gap(double at, double low, double high) => Math.Max(0, Math.Max(low - at, at - high));

    private static IEnumerable<PlanePoint> Normals(ImmutableArray<PlanePoint> outline) =>
        outline.Select((p, i) => (p, outline[(i + 1) % outline.Length])).Select(e => Unit(e.Item2.Z - e.p.Z, e.Item2.N - e.p.N).Turned);

    private static PlanePoint Unit(double z, double n)
    {
        var length = Math.Sqrt((z * z) + (n * n));
        return new(z / length, n / length);
    }

    private static bool Apart(
        ImmutableArray<PlanePoint> one, ImmutableArray<PlanePoint> other, PlanePoint direction, double tolerance)
    {
        var zero = new PlanePoint(0, 0);
        double Of(PlanePoint p) => p.From(zero, direction);
        return one.Max(Of) <= other.Min(Of) + tolerance || other.Max(Of) <= one.Min(Of) + tolerance;
    }
}
