using System.Collections.Immutable;
using BridgeForm.Frames;
using BridgeForm.Project;

namespace BridgeForm.Loads;

/// <summary>
/// People who push outward along the whole of one guard: as a wind that blows against the cap's top alone. Their own weight is left
/// out.
/// </summary>
internal static class GuardLean
{
    /// <summary>Push on a public guard, N/m: 50 lb/ft (IBC 1607.8.1).</summary>
    public const double Line = 50 * Quantities.Units.PoundForce / Quantities.Units.MetresPerFoot;

    /// <summary>Null for a private bridge, and where no frame hangs between the supports.</summary>
    /// <param name="layout">Where the caps lie.</param>
    /// <param name="stages">Of the bridge in the wind.</param>
    /// <param name="names">Of the frames, A's first.</param>
    /// <param name="token">Asked at each step.</param>
    public static WindState? Solve(
        BridgeLayout layout, IEnumerable<WindStage> stages, ImmutableArray<string> names, CancellationToken token)
    {
        var finished = stages.FirstOrDefault(s => s.Stage is WindWork.Finished && s.Combination is WindWork.All);
        return layout.Parameters.Use == BridgeUse.Public && finished is not null
            ? (finished with { Diameter = 0, Surfaces = Tops(layout) }).Solve(Line, names, token)
            : null;
    }

    // Metres of cap that come to each frame, and these times the height of its top over the ropes' axes; the ends' are the landings'.
    private static ImmutableArray<SideSurface> Tops(BridgeLayout layout)
    {
        var (caps, tops) = (layout.Caps.Points, new SideSurface[layout.Bays + 1]);
        for (var i = 1; i < layout.Bays; i++)
        {
            var length = ((caps[i] - caps[i - 1]).Length + (caps[i + 1] - caps[i]).Length) / 2;
            var height = caps[i].Y + layout.Parameters.Guard.Cap.Thickness - layout.Poses[i].Node.Y;
            tops[i] = new SideSurface(length, length * height);
        }

        return [.. tops];
    }
}
