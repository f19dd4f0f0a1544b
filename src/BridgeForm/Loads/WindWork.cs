using System.Collections.Immutable;
using BridgeForm.Frames;
using BridgeForm.Quantities;
using BridgeForm.Roles;
using BridgeForm.Ropes;

namespace BridgeForm.Loads;

/// <summary>All that is found out about a wind across the bridge: nobody on it, at the reference temperature.</summary>
public sealed record WindWork
{
    /// <summary>Stages in the order of building: bare ropes, frames hung from A to mid-span, all frames hung, finished.</summary>
    public static ImmutableArray<string> Stages { get; } = [Hoisting.Bare, Half, Hoisting.Frames, Finished];

    /// <summary>The finished bridge.</summary>
    public const string Finished = "finished";

    /// <summary>Frames hung from A to mid-span.</summary>
    public const string Half = LoadCaseIds.ErectHalf;

    /// <summary>All of the bridge's own weight, as in service.</summary>
    public const string All = "D + W";

    /// <summary>No more of it than can be counted on: 0.6 of it, at the light end of the wood's densities.</summary>
    public const string Sure = "0.6 D + W";

    /// <summary>Nothing looked at.</summary>
    public static WindWork None { get; } = new();

    /// <summary>Pressure on the solid outline, Pa.</summary>
    public double Pressure { get; init; }

    /// <summary>Each stage with either combination.</summary>
    public ImmutableArray<WindState> States { get; init; } = [];

    /// <summary>Both end frames, A first.</summary>
    public ImmutableArray<WindOnEndFrame> Ends { get; init; } = [];

    /// <summary>Outline of the finished bridge between the end frames without the ropes, m².</summary>
    public double Area { get; init; }

    /// <summary>Height of its middle over the ropes' axes, metres.</summary>
    public double Height { get; init; }

    /// <summary>
    /// The frame whose base is lifted most while it still stands upright; null where no frame hangs between the supports.
    /// </summary>
    public UprightFrame? Upright { get; init; }

    /// <summary>
    /// Pressure at which 0.6 of the light weight of some frame, still upright, no longer holds its base down on the rope against
    /// the wind, Pa; null where no frame hangs between the supports.
    /// </summary>
    public double? LiftsAt { get; init; }

    /// <summary>
    /// The finished bridge, all of its own weight, with people who push along the whole of one guard (<see cref="GuardLean"/>): newtons
    /// per metre stand where pascals stand of the wind. Null on a private bridge, and where no frame hangs between the supports.
    /// </summary>
    public WindState? Leaning { get; init; }

    /// <summary>
    /// The same with one who pushes on the post where that rolls it furthest; null where no frame hangs between the supports.
    /// </summary>
    public PushOnPost? Pushed { get; init; }

    /// <summary>The same with the rope grown by the high end of its stretch, hottest, nothing taken up, and the wood dry.</summary>
    public PushOnPost? PushedGrown { get; init; }

    /// <summary>The finished bridge with a combination; null where it was not looked at.</summary>
    public WindState? Done(string combination) => States.FirstOrDefault(s =>
        string.Equals(s.Stage, Finished, StringComparison.Ordinal) && string.Equals(s.Combination, combination, StringComparison.Ordinal));

    /// <summary><see cref="PushedGrown"/> with the weight of the one who pushes.</summary>
    public PushOnPost? PushedByWeight { get; init; }

    /// <summary>Works it out.</summary>
    /// <param name="layout">Where the frames stand.</param>
    /// <param name="design">Design state of one rope.</param>
    /// <param name="masses">Masses of frames and bays.</param>
    /// <param name="standing">How high everything stands, and what the wind blows against.</param>
    /// <param name="token">Asked at each step.</param>
    public static WindWork Work(
        BridgeLayout layout, RopeShape design, BridgeMasses masses, StandingWeights standing, CancellationToken token = default)
    {
        var (parameters, surfaces) = (layout.Parameters, standing.Surfaces);
        var (pressure, spacing) = (parameters.Loads.Wind, parameters.Ropes.Spacing);
        ImmutableArray<string> names = [.. layout.Poses.Select(p => p.Name)];
        var whole = surfaces.Finished.Aggregate(default(SideSurface), (sum, s) => sum + s);
        UprightFrame[] upright =
        [
            .. Enumerable.Range(1, layout.Bays - 1).Select(i => new UprightFrame(
                names[i], pressure * surfaces.Finished[i].Area, surfaces.Finished[i].Moment / surfaces.Finished[i].Area,
                LoadCases.SureDead * standing.Light[i], spacing)),
        ];
        WindStage[] stages = [.. WindStages.List(layout, design, masses, standing)];
        var (pushed, grown, byWeight) = layout.Bays > 1 ? PushedOnPost(layout, stages, design, standing, names, token) : default;
        return new WindWork
        {
            Pressure = pressure,
            States = [.. stages.Select(s => s.Solve(pressure, names, token))],
            Leaning = GuardLean.Along(layout, stages, names, token),
            Pushed = pushed,
            PushedGrown = grown,
            PushedByWeight = byWeight,
            Ends =
            [
                .. surfaces.Ends.Select(e => new WindOnEndFrame(
                    e.Frame, pressure * e.OverLanding.Area, e.OverLanding.Moment / e.OverLanding.Area, e.Light,
                    parameters.Frames.Base.Length)),
            ],
            Area = whole.Area,
            Height = whole.Area > 0 ? whole.Moment / whole.Area : 0,
            Upright = Ties.FirstLargest(upright, u => u.Lift),
            LiftsAt = upright.Length == 0 ? null : upright.Min(u => pressure * u.Weight * spacing / 2 / (u.Wind * u.Height)),
        };
    }

    private static (PushOnPost? Marked, PushOnPost? Grown, PushOnPost? ByWeight) PushedOnPost(
        BridgeLayout layout, WindStage[] stages, RopeShape design, StandingWeights standing, ImmutableArray<string> names,
        CancellationToken token)
    {
        var calm = GuardLean.Grown(layout, stages, design, standing);
        var grown = GuardLean.OnePost(layout, calm, names, token);
        return (
            GuardLean.OnePost(layout, GuardLean.Finished(stages), names, token), grown,
            GuardLean.WithWeight(layout, calm, names, grown, standing, token));
    }
}
