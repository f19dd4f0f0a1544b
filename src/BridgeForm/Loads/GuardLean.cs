using System.Collections.Immutable;
using BridgeForm.Frames;
using BridgeForm.Project;

namespace BridgeForm.Loads;

/// <summary>
/// People who push outward on one guard, along the whole of it or on one post in the middle: as a wind that blows against the cap's
/// top alone. Their own weight is left out.
/// </summary>
internal static class GuardLean
{
    /// <summary>Push on a public guard, N/m: 50 lb/ft (IBC 1607.8.1).</summary>
    public const double Line = 50 * Quantities.Units.PoundForce / Quantities.Units.MetresPerFoot;

    /// <summary>Push on one post of a guard, newtons: 200 lb (IRC Table R301.5, ASCE 7 4.5.1).</summary>
    public const double Point = 200 * Quantities.Units.PoundForce;

    /// <summary>
    /// The line load on a public bridge, the push on the middle frame's post on a private one; null where no frame hangs between the
    /// supports.
    /// </summary>
    /// <param name="layout">Where the caps lie.</param>
    /// <param name="stages">Of the bridge in the wind.</param>
    /// <param name="names">Of the frames, A's first.</param>
    /// <param name="token">Asked at each step.</param>
    public static WindState? Solve(
        BridgeLayout layout, IEnumerable<WindStage> stages, ImmutableArray<string> names, CancellationToken token)
    {
        var finished = stages.FirstOrDefault(s => s.Stage is WindWork.Finished && s.Combination is WindWork.All);
        if (finished is null || layout.Bays < 2)
        {
            return null;
        }

        var (surfaces, push) = layout.Parameters.Use == BridgeUse.Public ? (Tops(layout), Line) : (OneTop(layout), Point);
        return (finished with { Diameter = 0, Surfaces = surfaces }).Solve(push, names, token);
    }

    // One newton at the cap's top of the middle frame, times its height over the ropes' axes.
    private static ImmutableArray<SideSurface> OneTop(BridgeLayout layout)
    {
        var tops = new SideSurface[layout.Bays + 1];
        tops[layout.Bays / 2] = new SideSurface(1, Height(layout, layout.Bays / 2));
        return [.. tops];
    }

    // Metres of cap that come to each frame, and these times the height of its top over the ropes' axes; the ends' are the landings'.
    private static ImmutableArray<SideSurface> Tops(BridgeLayout layout)
    {
        var (caps, tops) = (layout.Caps.Points, new SideSurface[layout.Bays + 1]);
        for (var i = 1; i < layout.Bays; i++)
        {
            var length = ((caps[i] - caps[i - 1]).Length + (caps[i + 1] - caps[i]).Length) / 2;
            tops[i] = new SideSurface(length, length * Height(layout, i));
        }

        return [.. tops];
    }

    private static double Height(BridgeLayout layout, int frame) =>
        layout.Caps.Points[frame].Y + layout.Parameters.Guard.Cap.Thickness - layout.Poses[frame].Node.Y;
}
