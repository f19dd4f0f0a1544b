using System.Collections.Immutable;
using BridgeForm.Quantities;
using BridgeForm.Solids;

namespace BridgeForm.Frames;

/// <summary>The top that straight parts lie on at one frame, in the frame's own plane z = 0.</summary>
/// <param name="Height">n of the top at t = 0, metres.</param>
/// <param name="HalfSize">Half its size along t, metres.</param>
/// <param name="FollowsParts">
/// Its slope is the bisector of the parts that lie on it (the heads of upright posts), instead of square to n.
/// </param>
public readonly record struct BearingTop(double Height, double HalfSize, bool FollowsParts);

/// <summary>
/// A chain of straight parts, one a bay, that lie on the frames' tops: the undersides of the boards, or of a cap. In the
/// plane z = 0.
/// </summary>
/// <param name="Points">Where the undersides pass at t = 0 of each frame, lift included.</param>
/// <param name="Lifts">How far that is above the top at t = 0, measured along n, metres.</param>
/// <param name="TopSlopes">Slope of each top in its frame's axes, dn/dt.</param>
public sealed record BearingLine(
    ImmutableArray<Vector3d> Points, ImmutableArray<double> Lifts, ImmutableArray<double> TopSlopes)
{
    // Lifts change the parts' slopes, and these the lifts, by about the ratio of bearing to bay length (a few per cent) a
    // round: twenty rounds are beyond the last digit, and bays hardly longer than their bearings settle within this many.
    private const int MaxRounds = 500;

    // A lift settles when it moves by less than a picometre: far below anything made of wood, far above round-off.
    private const double Settled = 1e-12;

    /// <summary>Lifts and slopes agree with each other; false where the parts are too short for their bearings.</summary>
    public bool Settles { get; private init; }

    /// <summary>Unit vector of the part in bay <paramref name="bay"/> (1 … n), from A to B.</summary>
    public Vector3d Direction(int bay) => (Points[bay] - Points[bay - 1]).Normalized();

    /// <summary>
    /// Lays the parts on the tops. A part that falls away from a top's middle rests on its edge and passes above the middle;
    /// a frame's lift is the larger of its two parts' and never negative, so that neighbours meet flush.
    /// </summary>
    /// <param name="poses">Frames.</param>
    /// <param name="tops">One top a frame.</param>
    public static BearingLine Lay(ImmutableArray<FramePose> poses, ImmutableArray<BearingTop> tops)
    {
        var count = poses.Length;
        var points = new Vector3d[count];
        var lifts = new double[count];
        var slopes = new double[count];
        var settles = false;
        for (var round = 0; round < MaxRounds && !settles; round++)
        {
            for (var i = 0; i < count; i++)
            {
                points[i] = poses[i].At(0, tops[i].Height + lifts[i], 0);
            }

            var moved = 0.0;
            for (var i = 0; i < count; i++)
            {
                moved = Math.Max(moved, Settle(poses[i], tops[i], points, i, ref slopes[i], ref lifts[i]));
            }

            // Not a number once is not a number ever after.
            if (double.IsNaN(moved))
            {
                break;
            }

            settles = moved < Settled;
        }

        return new BearingLine([.. points], [.. lifts], [.. slopes]) { Settles = settles };
    }

    /// <summary>
    /// The first bay (1 … n) in which the parts do not run from A towards B as both its frames see it, or the shortest one when
    /// the lifts do not settle; null when the line is sound.
    /// </summary>
    public int? Unsound(ImmutableArray<FramePose> poses)
    {
        var bays = Enumerable.Range(1, Points.Length - 1);
        var turned = bays.FirstOrDefault(bay => !(Runs(poses[bay - 1], bay) > 0 && Runs(poses[bay], bay) > 0));
        return turned > 0 ? turned : Settles ? null : bays.MinBy(bay => (Points[bay] - Points[bay - 1]).Length);

        double Runs(FramePose pose, int bay) => pose.Along.Dot(Points[bay] - Points[bay - 1]);
    }

    /// <summary>Slope of the line from one point to another in a frame's axes, dn/dt.</summary>
    public static double SlopeIn(FramePose pose, Vector3d from, Vector3d to)
    {
        var way = to - from;
        return pose.Up.Dot(way) / pose.Along.Dot(way);
    }

    private static double Settle(
        FramePose pose, BearingTop top, Vector3d[] points, int i, ref double slope, ref double lift)
    {
        var last = points.Length - 1;

        // At an end frame the one part runs on over the whole top: it lies there before and after the middle.
        var before = SlopeIn(pose, points[Math.Max(0, i - 1)], points[Math.Max(1, i)]);
        var after = SlopeIn(pose, points[Math.Min(last - 1, i)], points[Math.Min(last, i + 1)]);
        slope = top.FollowsParts ? Elementary.Tan((Elementary.Atan(before) + Elementary.Atan(after)) / 2) : 0;
        var needed = Math.Max(0, top.HalfSize * Math.Max(before - slope, slope - after));
        var moved = Math.Abs(needed - lift);
        lift = needed;
        return moved;
    }
}
