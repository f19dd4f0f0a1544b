using System.Collections.Immutable;
using BridgeForm.Frames;
using BridgeForm.Loads;
using BridgeForm.Project;
using BridgeForm.Quantities;
using BridgeForm.Roles;

namespace BridgeForm.Checks.Timber;

/// <summary>A base under one set of loads.</summary>
/// <param name="Name">In a person's words.</param>
/// <param name="Beam">Its loads.</param>
/// <param name="Duration">CD of the shortest of them.</param>
internal sealed record BaseCase(string Name, BaseBeam Beam, LoadDuration Duration)
{
    /// <summary>The push on the guard among them; null where nobody pushes.</summary>
    public GuardPush? Push { get; init; }

    /// <summary>Where the brace's force lies under that push, as <see cref="GuardFrame.After"/>.</summary>
    public string After { get; init; } = "";
}

/// <summary>What loads the bases of a bridge beside people and snow.</summary>
/// <param name="Heavy">Weights, wood wet.</param>
/// <param name="Light">Weights, wood dry.</param>
/// <param name="Lean">How far frames lean.</param>
internal sealed record BaseLoads(FrameWeights Heavy, FrameWeights Light, BaseLean Lean)
{
    /// <summary>Of a bridge; null for one without interior frames.</summary>
    public static BaseLoads? Of(BridgeLayout layout, BridgeMasses masses, RopeWork work) => layout.Bays < 2
        ? null
        : new(FrameWeights.Heaviest(layout, masses), FrameWeights.Lightest(layout, masses), BaseLean.Of(work));
}

/// <summary>
/// The base of an interior frame under everything that loads it, in its own plane: the deck spread over the width between
/// the posts' feet, or where stringers stand at these, guard and post at the post's foot, the brace at its own, own weight over
/// the length. People push one
/// guard, the right one; the ropes hold the frame level, half each, at the rope's axis. Under people and snow the frame leans to
/// the right as <see cref="BaseLean"/> says. Wood weighs what the high end of its
/// density says, and for pushes on the empty bridge the low end as well.
/// </summary>
internal static class BaseCases
{
    /// <summary>All cases; none for a bridge without interior frames.</summary>
    public static ImmutableArray<BaseCase> List(CheckContext context) =>
        List(context.Layout, BaseLoads.Of(context.Layout, context.Masses, context.Ropework));

    /// <summary>The same of a bridge as it would be: parameters of its own, and what others weigh.</summary>
    /// <param name="layout">Where everything lies, with its parameters.</param>
    /// <param name="loads">Null for a bridge without interior frames.</param>
    public static ImmutableArray<BaseCase> List(BridgeLayout layout, BaseLoads? loads)
    {
        if (loads is null)
        {
            return [];
        }

        var cases = ImmutableArray.CreateBuilder<BaseCase>();
        var (parameters, bay) = (layout.Parameters, Longest(layout));

        // Wet wood is heaviest; where people lift one side of the empty bridge dry wood holds less against them.
        var dead = Dead(parameters, loads.Heavy);
        var dry = Dead(parameters, loads.Light);
        var length = (layout.Poses[bay].Node - layout.Poses[bay - 1].Node).Length;
        cases.Add(new("empty", dead, LoadDuration.Dead));
        var pushes = GuardPush.List(layout, parameters).ToList();
        var foot = parameters.Frames.Post.Foot;
        var lean = loads.Lean;
        foreach (var area in AreaLoad.All(parameters.Loads))
        {
            var total = area.Pressure * DeckWidth.BetweenPosts(parameters) * length;
            var full = lean.Under(dead.WithDeck(parameters, -foot, foot, total), foot, -foot, foot, total, area.OverDeck);
            var half = lean.Under(dead.WithDeck(parameters, 0, foot, total / 2), foot, 0, foot, total / 2, area.OverDeck);
            cases.Add(new(area.Name + " load", full, area.Duration));
            cases.Add(new(area.Name + " load on the right half", half, area.Duration));
            AddPushes(pushes, $"{area.Name} load and ", full, "");
        }

        foreach (var (name, at) in Places(parameters))
        {
            // Whole at its place: a patch lying over boards or stringers on both sides of it bends the base less.
            var force = parameters.Loads.LargestPoint;
            cases.Add(new(name, lean.Under(dead.Plus([new(at, force)]), foot, at, force), LoadDuration.Live));
        }

        // Wind is looked at on the empty bridge: people do not stand on one that blows about (own figure).
        var alone = GuardPush.WithWind(layout, parameters).ToList();
        AddPushes(alone, "", dead, "");
        AddPushes(alone, "", dry, ", wood dry");
        return cases.ToImmutable();

        // What a brace presses down does not hang on where its force lies on the post; what it pushes outward does.
        void AddPushes(IEnumerable<GuardPush> all, string before, BaseBeam beam, string after)
        {
            cases.AddRange(all.SelectMany(push => push.OnBase(parameters).Select(frame => new BaseCase(
                before + push.Name + after + frame.After, Pushed(layout, beam, frame, push.Force), LoadDuration.Guard)
            {
                Push = push,
                After = frame.After,
            })));
        }
    }

    /// <summary>The longest bay: the one whose load is most. Bays alike differ by round-off: the first of them is meant.</summary>
    public static int Longest(BridgeLayout layout) => Ties.FirstLargest(
        Enumerable.Range(1, layout.Bays), i => (layout.Poses[i].Node - layout.Poses[i - 1].Node).Length);

    /// <summary>
    /// The interior base that is meant: the one beside the longest bay, towards A where there are two. What else loads it, the heaviest
    /// frame and bay, is put together from anywhere.
    /// </summary>
    public static int Governing(BridgeLayout layout) => Math.Max(1, Longest(layout) - 1);

    /// <summary>Bays that hang on frames at both ends; of a bridge that has none, all.</summary>
    public static IEnumerable<int> Hanging(BridgeLayout layout) =>
        layout.Bays < 3 ? Enumerable.Range(1, layout.Bays) : Enumerable.Range(2, layout.Bays - 2);

    /// <summary>The frame's own weights.</summary>
    public static BaseBeam Dead(BridgeParameters parameters, FrameWeights weights)
    {
        var frame = GuardFrame.Build(parameters);
        var (foot, half) = (parameters.Frames.Post.Foot, parameters.Frames.Base.Length / 2);
        return new BaseBeam(
            parameters.Ropes.Spacing / 2,
            [
                new(-frame.PostFoot, weights.Guard),
                new(frame.PostFoot, weights.Guard),
                new(-frame.BraceFoot, weights.Brace),
                new(frame.BraceFoot, weights.Brace),
            ],
            [new(-half, half, weights.Base)],
            []).WithDeck(parameters, -foot, foot, weights.Deck);
    }

    /// <summary>A level push (outward positive) at the right guard's top; the ropes hold against it, half each.</summary>
    public static BaseBeam Pushed(BridgeLayout layout, BaseBeam beam, GuardFrame frame, double push)
    {
        var levels = Highest(layout);
        return Pushed(beam, frame, (levels.Top - levels.Bottom) / 2, (levels.Top + levels.Bottom) / 2, push);
    }

    /// <summary>Levels of the interior base that stands highest over its rope: on an upright frame, where the rope is steepest.</summary>
    public static BaseLevels Highest(BridgeLayout layout) =>
        Ties.FirstLargest(Enumerable.Range(1, layout.Bays - 1).Select(i => layout.Levels[i]), l => l.Top);

    /// <summary>The same of a base that is held sideways at both its supports.</summary>
    /// <param name="beam">With what stands on it.</param>
    /// <param name="frame">Post and brace.</param>
    /// <param name="half">Half the base's depth, metres.</param>
    /// <param name="lever">Its axis above where it is held sideways, metres.</param>
    /// <param name="push">Newtons.</param>
    public static BaseBeam Pushed(BaseBeam beam, GuardFrame frame, double half, double lever, double push)
    {
        var (down, outward) = (frame.BraceDown(push), frame.BraceOut(push));

        // Level forces on the base's top turn it about its axis; so does what holds it, below the axis.
        return beam.Plus(
            [new(frame.BraceFoot, down), new(frame.PostFoot, -down)],
            couples:
            [
                new(frame.BraceFoot, -half * outward),
                new(frame.PostFoot, -half * (push - outward)),
                new(beam.Support, -lever * push / 2),
                new(-beam.Support, -lever * push / 2),
            ]);
    }

    private static IEnumerable<(string Name, double At)> Places(BridgeParameters parameters)
    {
        yield return ("point load in the middle", 0);
        yield return (
            "point load at the edge",
            NodeLoads.EdgeFromMiddle(DeckWidth.BetweenPosts(parameters), parameters.Loads.PointEdge));
    }
}

/// <summary>
/// Weights that one interior frame carries, newtons. Frames and bays differ, by where they stand: end bays have rails that run on
/// over the landing, upright frames on a slope have cuts of their own, and which side that is hangs on which bank is higher.
/// </summary>
/// <param name="Deck">Boards or treads and stringers of one bay, and the packer.</param>
/// <param name="Guard">Rails, cap and post of one side.</param>
/// <param name="Brace">One brace.</param>
/// <param name="Base">Base and hardware.</param>
internal sealed record FrameWeights(double Deck, double Guard, double Brace, double Base)
{
    /// <summary>All of it.</summary>
    public double Total => Deck + (2 * (Guard + Brace)) + Base;

    /// <summary>So much of each.</summary>
    public FrameWeights Times(double share) => new(share * Deck, share * Guard, share * Brace, share * Base);

    /// <summary>The heaviest interior frame with the whole of the heaviest bay, wood wet.</summary>
    public static FrameWeights Heaviest(CheckContext context) => Heaviest(context.Layout, context.Masses);

    /// <summary>The same before anything is checked.</summary>
    public static FrameWeights Heaviest(BridgeLayout layout, BridgeMasses masses)
    {
        return Weigh(
            layout,
            s => s.Density.High,
            Ties.FirstLargest(Enumerable.Range(1, layout.Bays - 1), i => masses.Frames[i] + masses.Packers[i]),
            Ties.FirstLargest(Enumerable.Range(1, layout.Bays), bay => masses.Bays[bay - 1]));
    }

    /// <summary>
    /// The lightest interior frame with the whole of the lightest bay, wood dry: of those that hang on frames at both ends, where
    /// there are any, since rails and caps of the others run on over a landing.
    /// </summary>
    public static FrameWeights Lightest(CheckContext context) => Lightest(context.Layout, context.Masses);

    /// <summary>The same before anything is checked.</summary>
    public static FrameWeights Lightest(BridgeLayout layout, BridgeMasses masses) => Weigh(
        layout,
        s => s.Density.Low,
        LightestFrame(layout, masses),
        Ties.FirstLeast(BaseCases.Hanging(layout), bay => masses.Bays[bay - 1]));

    /// <summary>That frame, 1 … bays − 1.</summary>
    public static int LightestFrame(CheckContext context) => LightestFrame(context.Layout, context.Masses);

    private static int LightestFrame(BridgeLayout layout, BridgeMasses masses) => Ties.FirstLeast(
        Enumerable.Range(1, layout.Bays - 1), i => masses.Frames[i] + masses.Packers[i]);

    /// <summary>Of one frame with the whole of one bay.</summary>
    /// <param name="layout">Where everything lies.</param>
    /// <param name="density">Density of a stock, kg/m³.</param>
    /// <param name="frame">The frame.</param>
    /// <param name="bay">The bay whose parts hang on the frame, half from either side.</param>
    public static FrameWeights Weigh(BridgeLayout layout, Func<StockParameters, double> density, int frame, int bay)
    {
        var members = Members.Frame(layout, frame).Members.AddRange(Members.Bay(layout, bay).Members);
        var asked = layout.Parameters.Frames.Holes;
        double Weight(WeightShare share) => members
            .Where(m => RoleTable.Of(m.Role).Share == share)
            .Sum(m => MemberVolume.Measure(m.Shape, MemberVolume.IsDrilled(asked, m.Role)) * density(layout.Parameters.StockNamed(m.Stock)))
                * BridgeMasses.Gravity;
        return new FrameWeights(
            Weight(WeightShare.Deck),
            (Weight(WeightShare.Guard) + (GuardNet.Mass(layout, bay) * BridgeMasses.Gravity)) / 2,
            Weight(WeightShare.Brace) / 2,
            Weight(WeightShare.Base) + (layout.Parameters.Frames.HardwareMass * BridgeMasses.Gravity));
    }
}
