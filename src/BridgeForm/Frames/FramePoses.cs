using System.Collections.Immutable;
using System.Globalization;
using BridgeForm.Project;
using BridgeForm.Quantities;
using BridgeForm.Ropes;
using BridgeForm.Solids;

namespace BridgeForm.Frames;

/// <summary>Where the frames stand on the ropes and how their axes lie.</summary>
public static class FramePoses
{
    /// <summary>
    /// One pose a node. Square interior frames stand at right angles to the bisector of their two chords; plumb frames, and
    /// end frames in either stance, stand upright.
    /// </summary>
    /// <param name="nodes">Nodes of the rope, supports included; at least two, world x and y in metres, x increasing.</param>
    /// <param name="stance">How interior frames stand.</param>
    public static ImmutableArray<FramePose> Stand(ImmutableArray<RopePoint> nodes, Stance stance)
    {
        var last = nodes.Length - 1;
        var poses = ImmutableArray.CreateBuilder<FramePose>(nodes.Length);
        for (var i = 0; i <= last; i++)
        {
            var isEnd = i == 0 || i == last;
            var bisector = Bisector(nodes, i);
            var along = isEnd || stance == Stance.Plumb ? Vector3d.UnitX : bisector;
            poses.Add(new FramePose(
                FrameName(i, last),
                new Vector3d(nodes[i].X, nodes[i].Y, 0),
                along,
                Vector3d.UnitZ.Cross(along),
                Elementary.Atan2(bisector.Y, bisector.X),
                isEnd));
        }

        return poses.MoveToImmutable();
    }

    /// <summary>
    /// Name of frame <paramref name="index"/> of a bridge whose last frame is <paramref name="last"/>: <c>F03</c>, wider for
    /// long bridges.
    /// </summary>
    public static string FrameName(int index, int last) => "F" + Padded(index, last);

    /// <summary>Name of bay <paramref name="index"/>, between frames <paramref name="index"/> − 1 and <paramref name="index"/>.</summary>
    public static string BayName(int index, int last) => "B" + Padded(index, last);

    /// <summary>Unit bisector of the chords that meet at a node; of the one chord at a support.</summary>
    private static Vector3d Bisector(ImmutableArray<RopePoint> nodes, int i)
    {
        var sum = Vector3d.Zero;
        if (i > 0)
        {
            sum += Chord(nodes[i - 1], nodes[i]);
        }

        if (i < nodes.Length - 1)
        {
            sum += Chord(nodes[i], nodes[i + 1]);
        }

        return sum.Normalized();
    }

    private static Vector3d Chord(RopePoint from, RopePoint to) =>
        new Vector3d(to.X - from.X, to.Y - from.Y, 0).Normalized();

    private static string Padded(int index, int last)
    {
        var digits = Math.Max(2, last.ToString(CultureInfo.InvariantCulture).Length);
        return index.ToString(CultureInfo.InvariantCulture).PadLeft(digits, '0');
    }
}

/// <summary>Where a frame stands and how its axes lie. Metres and radians.</summary>
/// <param name="Name"><c>F00</c> at support A, counting towards B.</param>
/// <param name="Node">The node, on the rope axis in the plane z = 0.</param>
/// <param name="Along">Unit vector t.</param>
/// <param name="Up">Unit vector n.</param>
/// <param name="Slope">θ: slope of the bisector of the neighbouring chords; of the one chord at an end frame.</param>
/// <param name="IsEnd">Stands on a landing and loads no rope.</param>
public sealed record FramePose(string Name, Vector3d Node, Vector3d Along, Vector3d Up, double Slope, bool IsEnd)
{
    /// <summary>A point from frame coordinates (t along, n up, z right), in the world.</summary>
    public Vector3d At(double t, double n, double z) =>
        Node + (t * Along) + (n * Up) + new Vector3d(0, 0, z);

    /// <summary>A direction from frame coordinates, in the world.</summary>
    public Vector3d Direction(double t, double n, double z) =>
        (t * Along) + (n * Up) + new Vector3d(0, 0, z);
}
