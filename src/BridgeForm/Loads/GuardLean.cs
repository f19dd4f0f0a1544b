using System.Collections.Immutable;
using BridgeForm.Frames;
using BridgeForm.Project;
using BridgeForm.Ropes;
using BridgeForm.Ropes.Pairs;
using BridgeForm.Ropes.Space;

namespace BridgeForm.Loads;

/// <summary>
/// People who push outward on one guard, along the whole of it or on one post: as a wind that blows against the cap's top alone.
/// Their own weight is left out.
/// </summary>
internal static class GuardLean
{
    /// <summary>Push on a public guard, N/m: 50 lb/ft (IBC 1607.8.1).</summary>
    public const double Line = 50 * Quantities.Units.PoundForce / Quantities.Units.MetresPerFoot;

    /// <summary>Push on one post of a guard, newtons: 200 lb (IRC Table R301.5, ASCE 7 4.5.1).</summary>
    public const double Point = 200 * Quantities.Units.PoundForce;

    /// <summary>The line load on a public bridge; null on a private one, and where no frame hangs between the supports.</summary>
    /// <param name="layout">Where the caps lie.</param>
    /// <param name="stages">Of the bridge in the wind.</param>
    /// <param name="names">Of the frames, A's first.</param>
    /// <param name="token">Asked at each step.</param>
    public static WindState? Along(
        BridgeLayout layout, IEnumerable<WindStage> stages, ImmutableArray<string> names, CancellationToken token) =>
        layout.Parameters.Use == BridgeUse.Public && layout.Bays > 1
            ? (Finished(stages) with { Surfaces = Tops(layout) }).Solve(Line, names, token)
            : null;

    /// <summary>
    /// The push on the post where it turns the bridge over, or rolls it furthest: looked for from the middle and from the frame that
    /// it rolls furthest as long as it is small, to either side for as long as that is worse. Only where a frame hangs between the
    /// supports.
    /// </summary>
    /// <param name="layout">Where the caps lie.</param>
    /// <param name="calm">The bridge before anybody pushes.</param>
    /// <param name="names">Of the frames, A's first.</param>
    /// <param name="token">Asked at each step.</param>
    public static PushOnPost OnePost(
        BridgeLayout layout, WindStage calm, ImmutableArray<string> names, CancellationToken token)
    {
        var harms = new Dictionary<int, double>();
        int[] from = [layout.Bays / 2, (layout.Bays + 1) / 2, Softest(layout, calm)];
        var worst = Worst(from);
        for (var before = 0; before != worst && layout.Bays <= MostClimbed;)
        {
            before = worst;
            worst = Worst([worst - 1, worst, worst + 1]);
        }

        return new PushOnPost(names[worst], At(layout, calm, worst).Solve(Point, names, token));

        int Worst(int[] frames) => Quantities.Ties.FirstLargest(
            frames.Where(f => f > 0 && f < layout.Bays).Distinct().Order(), HarmAt);

        // Where it comes to rest, not how it gets there: that costs many times as much, and is followed at the worst place.
        double HarmAt(int frame)
        {
            if (!harms.TryGetValue(frame, out var harm))
            {
                harm = Harm((At(layout, calm, frame) with { IsFollowed = false, Fallen = SpaceSolver.Fallen }).Solve(Point, names, token));
                harms.Add(frame, harm);
            }

            return harm;
        }
    }

    /// <summary>
    /// The same push on the same post with the weight of the one who pushes: <see cref="Pusher"/>, <see cref="FromGuard"/> inside the
    /// clear width, the centre as high over the deck as of all people.
    /// </summary>
    /// <param name="layout">The deck.</param>
    /// <param name="calm">The bridge before anybody is there.</param>
    /// <param name="names">Of the frames, A's first.</param>
    /// <param name="push">Where.</param>
    /// <param name="standing">How high the deck lies.</param>
    /// <param name="token">Asked at each step.</param>
    public static PushOnPost WithWeight(
        BridgeLayout layout, WindStage calm, ImmutableArray<string> names, PushOnPost push, StandingWeights standing,
        CancellationToken token)
    {
        var frame = names.IndexOf(push.Frame);
        var lean = layout.Poses[frame].Up.Y;

        // A person stands plumb: on frames that lean the weight tips with all of its height.
        var height = (standing.DeckHeights[frame] + StandingWeights.PeopleOverDeck) / (lean * lean);
        var aside = Math.Max(0, (DeckWidth.BetweenPosts(layout.Parameters) / 2) - FromGuard);
        return push with
        {
            State = (At(layout, calm, frame) with { Beside = new Bystander(frame, Pusher, aside, height) }).Solve(Point, names, token),
        };
    }

    /// <summary>Weight of one who pushes, newtons: 75 kg, as EUR 23984 EN takes a walker.</summary>
    public const double Pusher = 75 * Quantities.Units.StandardGravity;

    /// <summary>How far a person's middle is inside the clear width, metres: own figure, shoulders against the guard.</summary>
    public const double FromGuard = 0.15;

    /// <summary>
    /// A frame that one person's push rolls further counts as turned over, radians: own figure, 30°, about where shoes slide on wood
    /// (friction 0.5 to 0.6, common practice, no source).
    /// </summary>
    public const double MostRoll = Math.PI / 6;

    // On a longer bridge the frames from which the worst is looked for must do: each costs as much as a wind.
    private const int MostClimbed = 48;

    private static double Harm(WindState state) => state.Stands ? state.Roll : Over - (state.StandsTo ?? 0);

    // More than any frame rolls, radians and newtons alike: what falls comes before all that stands, what falls first before all.
    private const double Over = 1e6;

    /// <summary>With a push on a post of one frame in place of the wind.</summary>
    internal static WindStage At(BridgeLayout layout, WindStage calm, int frame)
    {
        var tops = new SideSurface[layout.Bays + 1];
        tops[frame] = new SideSurface(1, Height(layout, frame));
        return calm with { Surfaces = [.. tops], Fallen = MostRoll };
    }

    /// <summary>The finished bridge of a rope that has stretched, hottest, nothing taken up and its wood dry.</summary>
    /// <param name="layout">The bridge.</param>
    /// <param name="stages">Of the bridge in the wind.</param>
    /// <param name="design">Design state of one rope.</param>
    /// <param name="standing">What stands on both.</param>
    public static WindStage Grown(
        BridgeLayout layout, IEnumerable<WindStage> stages, RopeShape design, StandingWeights standing)
    {
        var (site, ropes) = (layout.Parameters.Site, layout.Parameters.Ropes);
        return Finished(stages) with
        {
            Rope = LoadCaseRequest.At(
                design, site.Temperatures.Max() - site.ReferenceTemperature, Backstays.Of(site), StretchRange.Most(ropes)) with
            {
                Loads = [.. standing.Light.Select(w => w / 2)],
            },
            Weights = standing.Light,
            HeightMoments = standing.LightMoments,
        };
    }

    /// <summary>The finished bridge as marked, all of its own weight, no wind on its ropes.</summary>
    public static WindStage Finished(IEnumerable<WindStage> stages) =>
        stages.First(s => s.Stage is WindWork.Finished && s.Combination is WindWork.All) with { Diameter = 0 };

    // Away from the middle where the ropes hardly stretch: there both ropes together change their shape most easily.
    private static int Softest(BridgeLayout layout, WindStage calm)
    {
        var loads = new PairLoads(calm.Weights, [.. calm.Weights.Select(_ => 0.0)], calm.HeightMoments);
        if (!PairSolver.TryFind(
                calm.Rope, calm.Spacing, loads, LoadCaseSolver.DefaultAccuracy, LoadCaseSolver.DefaultMaxIterations, out var pair, out _)
            || PairInfluence.Of(calm.Rope, calm.Spacing, loads, pair!) is not { } influence)
        {
            return layout.Bays / 2;
        }

        var (own, other) = influence.AtItself();
        return Quantities.Ties.FirstLargest(Enumerable.Range(1, layout.Bays - 1), i => (own[i] - other[i]) * Height(layout, i));
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

    // Straight up over the ropes' axes, as of all that the wind blows against.
    private static double Height(BridgeLayout layout, int frame)
    {
        var pose = layout.Poses[frame];
        return (pose.Up.Dot(layout.Caps.Points[frame] - pose.Node) + layout.Parameters.Guard.Cap.Thickness) / pose.Up.Y;
    }
}

/// <summary>One who pushes outward on a post.</summary>
/// <param name="Frame">Name of the frame.</param>
/// <param name="State">The bridge then; newtons stand where pascals stand of the wind.</param>
public sealed record PushOnPost(string Frame, WindState State);
