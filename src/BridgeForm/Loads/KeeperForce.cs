using System.Collections.Immutable;
using BridgeForm.Quantities;
using BridgeForm.Ropes;

namespace BridgeForm.Loads;

/// <summary>What one frame's keeper must hold along one rope, friction not counted. Newtons.</summary>
/// <param name="Frame">Name of the frame.</param>
/// <param name="Case">Id of the load case.</param>
/// <param name="Load">Load of the frame on the rope in that case.</param>
/// <param name="Slope">Slope of the bisector of its two chords, radians.</param>
/// <param name="TensionDifference">Tension on its B side less that on its A side.</param>
public sealed record KeeperForce(string Frame, string Case, double Load, double Slope, double TensionDifference)
{
    /// <summary>The part of the load along the rope.</summary>
    public double LoadAlong => Load * Elementary.Sin(Math.Abs(Slope));

    /// <summary>The larger of both.</summary>
    public double Needed => Math.Max(LoadAlong, Math.Abs(TensionDifference));

    /// <summary>The worst case of each interior frame, in the order of the frames.</summary>
    /// <param name="cases">Load cases.</param>
    /// <param name="names">Names of all frames, supports' included.</param>
    public static ImmutableArray<KeeperForce> Find(ImmutableArray<LoadCaseResult> cases, ImmutableArray<string> names)
    {
        var worst = new KeeperForce?[names.Length];
        foreach (var forces in cases.Select(c => In(c, names)))
        {
            for (var i = 0; i < forces.Length; i++)
            {
                if (worst[i] is not { } so || Ties.IsLarger(forces[i].Needed, so.Needed))
                {
                    worst[i] = forces[i];
                }
            }
        }

        return [.. worst.OfType<KeeperForce>()];
    }

    /// <summary>
    /// Every interior frame in one case, on its more heavily loaded rope, in the order of the frames; none where the case has
    /// no solution.
    /// </summary>
    /// <param name="result">The case.</param>
    /// <param name="names">Names of all frames, supports' included.</param>
    public static ImmutableArray<KeeperForce> In(LoadCaseResult result, ImmutableArray<string> names) => result.Shape is { } shape
        ? [.. Enumerable.Range(1, shape.Nodes.Length - 2).Select(i => At(shape, i, names[i], result.Id))]
        : [];

    private static KeeperForce At(RopeShape shape, int i, string name, string id)
    {
        var (before, after) = (shape.Segments[i - 1], shape.Segments[i]);
        var endsWith = before.VerticalA - (shape.WeightPerLength * before.UnstressedLength);
        var difference = ElasticCatenary.Hypotenuse(after.Horizontal, after.VerticalA)
            - ElasticCatenary.Hypotenuse(before.Horizontal, endsWith);
        var slope = (ChordSlope(shape, i - 1) + ChordSlope(shape, i)) / 2;
        return new KeeperForce(name, id, shape.Loads[i], slope, difference);
    }

    private static double ChordSlope(RopeShape shape, int bay) => Elementary.Atan2(
        shape.Nodes[bay + 1].Y - shape.Nodes[bay].Y, shape.Nodes[bay + 1].X - shape.Nodes[bay].X);
}
