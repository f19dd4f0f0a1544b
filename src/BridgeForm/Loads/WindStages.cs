using System.Collections.Immutable;
using BridgeForm.Frames;
using BridgeForm.Quantities;
using BridgeForm.Ropes;
using BridgeForm.Ropes.Space;

namespace BridgeForm.Loads;

/// <summary>A stage of the bridge before the wind blows.</summary>
/// <param name="Stage">Its name.</param>
/// <param name="Combination">How much of its own weight counts.</param>
/// <param name="Rope">One rope under half of the weights.</param>
/// <param name="Spacing">Between the ropes, metres.</param>
/// <param name="Diameter">Of a rope, metres.</param>
/// <param name="Weights">Of the whole bridge at each node, newtons.</param>
/// <param name="HeightMoments">Weight × height over the ropes, N·m.</param>
/// <param name="Surfaces">What the wind blows against at each node.</param>
internal sealed record WindStage(
    string Stage,
    string Combination,
    LoadCaseRequest Rope,
    double Spacing,
    double Diameter,
    ImmutableArray<double> Weights,
    ImmutableArray<double> HeightMoments,
    ImmutableArray<SideSurface> Surfaces)
{
    /// <summary>How far each frame leans towards B for each metre up.</summary>
    public required ImmutableArray<double> Leans { get; init; }

    /// <summary>A frame that rolls further counts as turned over, radians.</summary>
    public double Fallen { get; init; } = SpaceSolver.Fallen;

    /// <summary>The way there from the calm counts; else an equilibrium is enough where one is found at once.</summary>
    public bool IsFollowed { get; init; } = true;

    /// <summary>One who stands beside the guard; null for nobody.</summary>
    public Bystander? Beside { get; init; }

    /// <summary>The same in the wind.</summary>
    /// <param name="pressure">Pa.</param>
    /// <param name="names">Of the frames, A's first.</param>
    /// <param name="token">Asked at each step.</param>
    public WindState Solve(double pressure, ImmutableArray<string> names, CancellationToken token)
    {
        token.ThrowIfCancellationRequested();
        var loads = new SpaceLoads(
            Weights, HeightMoments,
            [.. Surfaces.Select(s => pressure * s.Area)], [.. Surfaces.Select(s => pressure * s.Moment)], pressure * Diameter)
        {
            Leans = Leans,
        };
        loads = Beside is { } person ? person.On(loads) : loads;
        var state = new WindState
        {
            Stage = Stage,
            Combination = Combination,
            Force = loads.Winds.Sum() + (2 * loads.WindOnRope * Rope.UnstressedLengths.Sum()),
            Ends = null,
            StandsTo = null,
        };
        var found = LoadCaseSolver.TryFind(
            Rope, LoadCaseSolver.DefaultAccuracy, LoadCaseSolver.DefaultMaxIterations, out var calm, out _)
            ? SpaceSolver.Find(Rope, Spacing, loads, calm!, (Fallen, IsFollowed), token)
            : null;
        if (found is null)
        {
            return state;
        }

        var stands = found.Share >= 1;
        state = state with { StandsTo = found.Share * pressure, FallsAt = stands ? null : found.Beyond * pressure, Stands = stands };
        return found.Shape is { } shape ? Told(state with { Ends = WindEnds.Of(shape) }, shape, names) : state;
    }

    private static WindState Told(WindState state, SpaceShape shape, ImmutableArray<string> names)
    {
        var (rolls, lifts) = (0, 0);
        var lift = new double[shape.Rolls.Length];
        for (var i = 1; i + 1 < shape.Rolls.Length; i++)
        {
            var up = SpaceShape.Up(shape.Rolls[i]);
            lift[i] = -Math.Min(shape.LeftForces[i].Dot(up), shape.RightForces[i].Dot(up));
            rolls = rolls == 0 || Math.Abs(shape.Rolls[i]) > Math.Abs(shape.Rolls[rolls]) + Tolerances.RoundOff ? i : rolls;
            lifts = lift[i] > 0 && (lifts == 0 || lift[i] > lift[lifts] * (1 + Tolerances.RoundOff)) ? i : lifts;
        }

        return state with
        {
            Sideways = shape.Sideways,
            Roll = shape.Rolls[rolls],
            RollFrame = rolls > 0 ? names[rolls] : "",
            Lift = Math.Max(0, lift[lifts]),
            LiftFrame = lifts > 0 ? names[lifts] : "",
            LargestTension = shape.LargestTension,
        };
    }
}

/// <summary>A person on the deck beside a guard, upright with the frame.</summary>
/// <param name="Frame">Number of the frame.</param>
/// <param name="Weight">Newtons.</param>
/// <param name="Aside">From the middle, metres.</param>
/// <param name="Height">Of the person's centre over the ropes' axes, metres.</param>
internal sealed record Bystander(int Frame, double Weight, double Aside, double Height)
{
    /// <summary>With the person there, to the side to which the wind blows.</summary>
    public SpaceLoads On(SpaceLoads loads) => loads with
    {
        Weights = With(loads.Weights, Weight),
        HeightMoments = With(loads.HeightMoments, Weight * Height),
        SideMoments = With(loads.SideMoments, Weight * Aside),
    };

    private ImmutableArray<double> With(ImmutableArray<double> all, double more) => all.SetItem(Frame, all[Frame] + more);
}

/// <summary>Every stage of a bridge with either combination.</summary>
internal static class WindStages
{
    /// <summary>In the order of building; with a bridge of one bay none but the bare ropes hangs on the ropes.</summary>
    public static IEnumerable<WindStage> List(BridgeLayout layout, RopeShape design, BridgeMasses masses, StandingWeights standing)
    {
        var ropes = layout.Parameters.Ropes;
        var rope = LoadCaseRequest.At(design, 0, Backstays.Of(layout.Parameters.Site));
        var surfaces = standing.Surfaces;
        ImmutableArray<double> leans = [.. layout.Poses.Select(p => p.Up.X / p.Up.Y)];
        var none = ImmutableArray.Create(new double[design.Nodes.Length]);
        ImmutableArray<double> frames = [.. masses.FrameStageLoads().Select(p => 2 * p)];
        ImmutableArray<double> whole = [.. design.Loads.Select(p => 2 * p)];

        WindStage Stage(
            string name, bool isSure, ImmutableArray<double> weights, ImmutableArray<double> moments, ImmutableArray<SideSurface> sides)
        {
            var share = isSure ? LoadCases.SureDead : 1;
            ImmutableArray<double> hung = [.. weights.Select(w => share * w)];
            return new WindStage(
                name,
                isSure ? WindWork.Sure : WindWork.All,
                rope with { Loads = [.. hung.Select(w => w / 2)], WeightPerLength = share * rope.WeightPerLength },
                ropes.Spacing, ropes.Rope.Diameter, hung, [.. moments.Select(m => share * m)], sides)
            {
                Leans = leans,
            };
        }

        WindStage[] Both(
            string name,
            (ImmutableArray<double> W, ImmutableArray<double> M) all,
            (ImmutableArray<double> W, ImmutableArray<double> M) light,
            ImmutableArray<SideSurface> sides) =>
            [Stage(name, isSure: false, all.W, all.M, sides), Stage(name, isSure: true, light.W, light.M, sides)];

        foreach (var stage in Both(Hoisting.Bare, (none, none), (none, none), [.. none.Select(_ => default(SideSurface))]))
        {
            yield return Kept(stage, 0);
        }

        if (layout.Bays < 2)
        {
            yield break;
        }

        var framesOnly = Both(
            Hoisting.Frames, (frames, standing.FrameMoments), (surfaces.LightFrames, surfaces.LightFrameMoments), surfaces.Frames);
        var last = (design.Nodes[^1].X / 2) + (Tolerances.Spacing * design.Nodes[^1].X);
        var hungSoFar = design.Nodes.Skip(1).SkipLast(1).Count(n => n.X <= last);
        foreach (var stage in framesOnly)
        {
            yield return Kept(stage with { Stage = WindWork.Half }, hungSoFar);
        }

        foreach (var stage in framesOnly.Concat(
            Both(WindWork.Finished, (whole, standing.Moments), (standing.Light, standing.LightMoments), surfaces.Finished)))
        {
            yield return stage;
        }
    }

    /// <summary>With the first so many frames alone: the rope runs on from the last of them to B in one piece.</summary>
    private static WindStage Kept(WindStage stage, int frames)
    {
        ImmutableArray<T> First<T>(ImmutableArray<T> all) => [.. all.Take(frames + 1), all[^1]];
        var lengths = stage.Rope.UnstressedLengths;
        return stage with
        {
            Rope = stage.Rope with
            {
                UnstressedLengths = [.. lengths.Take(frames), lengths.Skip(frames).Sum()],
                Loads = First(stage.Rope.Loads),
                Start = null,
            },
            Weights = First(stage.Weights),
            HeightMoments = First(stage.HeightMoments),
            Surfaces = First(stage.Surfaces),
            Leans = First(stage.Leans),
        };
    }
}
