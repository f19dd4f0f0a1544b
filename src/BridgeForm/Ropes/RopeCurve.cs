using System.Collections.Immutable;
using BridgeForm.Quantities;

namespace BridgeForm.Ropes;

/// <summary>The rope between its nodes: points, heights and tangents. World x and y, metres.</summary>
public static class RopeCurve
{
    /// <summary>The point of the rope after so much unstressed length of one segment.</summary>
    /// <param name="shape">The rope.</param>
    /// <param name="segment">Index of the bay, 0 at support A.</param>
    /// <param name="unstressedLength">Metres from the segment's A-side end, 0 to its unstressed length.</param>
    public static RopePoint PointAt(this RopeShape shape, int segment, double unstressedLength)
    {
        var piece = Piece(shape, segment, unstressedLength);
        var start = shape.Nodes[segment];
        return new RopePoint(start.X + piece.X, start.Y - piece.Drop);
    }

    /// <summary>Unit vector along the rope towards B, after so much unstressed length of one segment.</summary>
    /// <param name="shape">The rope.</param>
    /// <param name="segment">Index of the bay, 0 at support A.</param>
    /// <param name="unstressedLength">Metres from the segment's A-side end.</param>
    public static RopePoint TangentAt(this RopeShape shape, int segment, double unstressedLength)
    {
        var piece = Piece(shape, segment, unstressedLength);
        return new RopePoint(shape.Horizontal / piece.TensionEnd, -piece.VerticalEnd / piece.TensionEnd);
    }

    /// <summary>Height y of the rope axis at a world x; beyond a support, the support's own height.</summary>
    /// <param name="shape">The rope.</param>
    /// <param name="x">World x, metres.</param>
    public static double HeightAt(this RopeShape shape, double x)
    {
        if (double.IsNaN(x))
        {
            throw new ArgumentException("x is not a number.", nameof(x));
        }

        if (x <= shape.Nodes[0].X)
        {
            return shape.Nodes[0].Y;
        }

        if (x >= shape.Nodes[^1].X)
        {
            return shape.Nodes[^1].Y;
        }

        var (segment, along) = Locate(shape, x);
        return shape.PointAt(segment, along).Y;
    }

    /// <summary>The rope as a line of points for drawing, support A to support B; nodes are among them.</summary>
    /// <param name="shape">The rope.</param>
    /// <param name="samplesPerSegment">Pieces each segment is drawn with, at least 1.</param>
    public static ImmutableArray<RopePoint> Curve(this RopeShape shape, int samplesPerSegment)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(samplesPerSegment, 1);
        var points = ImmutableArray.CreateBuilder<RopePoint>((shape.Segments.Length * samplesPerSegment) + 1);
        for (var i = 0; i < shape.Segments.Length; i++)
        {
            points.Add(shape.Nodes[i]);
            for (var k = 1; k < samplesPerSegment; k++)
            {
                points.Add(shape.PointAt(i, shape.Segments[i].UnstressedLength * k / samplesPerSegment));
            }
        }

        points.Add(shape.Nodes[^1]);
        return points.MoveToImmutable();
    }

    /// <summary>
    /// The point of the rope furthest below a family of parallel lines: where a line of that slope touches the rope from
    /// below. With slope 0 the lowest point.
    /// </summary>
    /// <param name="shape">The rope.</param>
    /// <param name="slope">Rise over run of the lines.</param>
    public static RopePoint TouchedBy(this RopeShape shape, double slope)
    {
        var best = shape.Nodes[0];
        for (var i = 0; i < shape.Segments.Length; i++)
        {
            // The rope's slope is −V/H, and V falls by the rope's own weight along the piece.
            var along = (shape.Segments[i].VerticalA + (slope * shape.Horizontal)) / shape.WeightPerLength;
            if (along > 0 && along < shape.Segments[i].UnstressedLength)
            {
                best = Lower(best, shape.PointAt(i, along), slope);
            }

            best = Lower(best, shape.Nodes[i + 1], slope);
        }

        return best;
    }

    /// <summary>Slopes of the first and the last chord, radians; negative where the chord falls towards B.</summary>
    /// <param name="shape">The rope.</param>
    public static (double First, double Last) EndSlopes(this RopeShape shape) =>
        (Slope(shape.Nodes[0], shape.Nodes[1]), Slope(shape.Nodes[^2], shape.Nodes[^1]));

    /// <summary>Rise over run of the steepest chord of a line of points whose x grows, never negative.</summary>
    /// <param name="points">Points from A to B.</param>
    public static double Steepest(ImmutableArray<RopePoint> points) =>
        points.Zip(points.Skip(1), (from, to) => Math.Abs((to.Y - from.Y) / (to.X - from.X))).DefaultIfEmpty(0).Max();

    /// <summary>By how much the chord behind a point rises more steeply than that before it, radians.</summary>
    /// <param name="points">Points from A to B.</param>
    /// <param name="at">Number of a point that has one on either side.</param>
    public static double Turn(IReadOnlyList<RopePoint> points, int at) =>
        Angle(points[at], points[at + 1]) - Angle(points[at - 1], points[at]);

    private static double Angle(RopePoint from, RopePoint to) => Elementary.Atan2(to.Y - from.Y, to.X - from.X);

    /// <summary>Unstressed length of the whole rope from support to support, metres.</summary>
    /// <param name="shape">The rope.</param>
    public static double UnstressedLength(this RopeShape shape) => shape.Segments.Sum(s => s.UnstressedLength);

    /// <summary>Length of the whole rope as it hangs, metres.</summary>
    /// <param name="shape">The rope.</param>
    public static double StretchedLength(this RopeShape shape) => shape.Segments.Sum(s => s.StretchedLength);

    /// <summary>Everything that hangs between the supports on this rope, its own weight included, newtons.</summary>
    /// <param name="shape">The rope.</param>
    public static double TotalLoad(this RopeShape shape) =>
        shape.Loads.Sum() + (shape.WeightPerLength * shape.UnstressedLength());

    /// <summary>Forces of the rope on its supports, world axes, newtons.</summary>
    /// <param name="shape">The rope.</param>
    public static (RopePoint A, RopePoint B) Reactions(this RopeShape shape)
    {
        var last = shape.Segments.Length - 1;
        var end = Piece(shape, last, shape.Segments[last].UnstressedLength);
        return (new RopePoint(shape.Horizontal, -shape.Segments[0].VerticalA),
            new RopePoint(-shape.Horizontal, end.VerticalEnd));
    }

    /// <summary>Tensions at supports A and B, newtons.</summary>
    /// <param name="shape">The rope.</param>
    public static (double A, double B) EndTensions(this RopeShape shape)
    {
        var (a, b) = shape.Reactions();
        return (ElasticCatenary.Hypotenuse(a.X, a.Y), ElasticCatenary.Hypotenuse(b.X, b.Y));
    }

    private static ElasticCatenary Piece(RopeShape shape, int segment, double length) => new(
        shape.Horizontal, shape.Segments[segment].VerticalA, length, shape.WeightPerLength, shape.AxialStiffness);

    // H > 0, so x grows along the rope and the nodes are sorted by x.
    private static (int Segment, double Along) Locate(RopeShape shape, double x)
    {
        var (low, high) = (0, shape.Segments.Length);
        while (high - low > 1)
        {
            var middle = (low + high) / 2;
            if (shape.Nodes[middle].X <= x)
            {
                low = middle;
            }
            else
            {
                high = middle;
            }
        }

        var segment = shape.Segments[low];
        var along = x <= shape.Nodes[low].X
            ? 0
            : SegmentLength.Find(
                shape.Horizontal,
                segment.VerticalA,
                shape.WeightPerLength,
                shape.AxialStiffness,
                x - shape.Nodes[low].X,
                inPlan: true);
        return (low, Math.Min(along, segment.UnstressedLength));
    }

    private static RopePoint Lower(RopePoint a, RopePoint b, double slope) =>
        b.Y - (slope * b.X) < a.Y - (slope * a.X) ? b : a;

    private static double Slope(RopePoint a, RopePoint b) => Elementary.Atan2(b.Y - a.Y, b.X - a.X);
}
