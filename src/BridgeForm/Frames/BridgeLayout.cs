using System.Collections.Immutable;
using BridgeForm.Project;
using BridgeForm.Quantities;
using BridgeForm.Ropes;

namespace BridgeForm.Frames;

/// <summary>Where everything lies before any member is cut: poses, levels, and the lines of deck and caps.</summary>
/// <param name="Parameters">What the builder asked for.</param>
/// <param name="Poses">Frames.</param>
/// <param name="Levels">Levels of each frame's base.</param>
/// <param name="Deck">Undersides of the boards or stringers.</param>
/// <param name="Caps">Undersides of the caps.</param>
public sealed record BridgeLayout(
    BridgeParameters Parameters,
    ImmutableArray<FramePose> Poses,
    ImmutableArray<BaseLevels> Levels,
    BearingLine Deck,
    BearingLine Caps)
{
    /// <summary>Number of bays.</summary>
    public int Bays => Poses.Length - 1;

    /// <summary>Treads, pickets and packers by number.</summary>
    public DeckSteps Steps { get; private init; } = DeckSteps.None;

    /// <summary>Lays frames, deck and caps on a rope, with the treads and packers that its shape was found with.</summary>
    public static BridgeLayout Lay(BridgeParameters parameters, RopeShape rope) =>
        rope.Steps.IsEmpty ? Lay(parameters, rope.Nodes) : Lay(parameters, rope.Nodes).With(rope.Steps);

    /// <summary>The same with treads and packers as given, counted as in <see cref="DeckSteps.Counted"/>.</summary>
    public BridgeLayout With(ImmutableArray<int> steps) => this with
    {
        Steps = DeckSteps.Read(steps, Poses.Length, Parameters.Deck.Stringer is not null, Parameters.Guard.Shims),
    };

    /// <summary>The same bridge with shims wherever a cap stands clear.</summary>
    public BridgeLayout WithShims()
    {
        var shimmed = this with { Parameters = Parameters with { Guard = Parameters.Guard with { Shims = true } } };
        return shimmed with { Steps = Steps with { Shims = DeckSteps.Count(shimmed).Shims } };
    }

    /// <summary>Lays frames, deck and caps on the nodes of a rope, with the treads and packers that go with them.</summary>
    public static BridgeLayout Lay(BridgeParameters parameters, ImmutableArray<RopePoint> nodes)
    {
        var frames = parameters.Frames;
        var poses = FramePoses.Stand(nodes, frames.Stance);
        var levels = ImmutableArray.CreateBuilder<BaseLevels>(poses.Length);
        var bases = ImmutableArray.CreateBuilder<BearingTop>(poses.Length);
        var heads = ImmutableArray.CreateBuilder<BearingTop>(poses.Length);
        var headHeight = frames.Post.Length * Elementary.Cos(frames.Post.Lean);
        foreach (var pose in poses)
        {
            var level = BaseLevels.Find(frames, parameters.Ropes.Rope.Radius, pose, frames.Stance);
            levels.Add(level);
            bases.Add(new BearingTop(level.Top, frames.Base.Along / 2, FollowsParts: false));
            heads.Add(new BearingTop(
                level.Top + headHeight,
                frames.Post.Section.Thickness / 2,
                FollowsParts: pose.IsEnd || frames.Stance == Stance.Plumb));
        }

        var layout = new BridgeLayout(
            parameters,
            poses,
            levels.MoveToImmutable(),
            BearingLine.Lay(poses, bases.MoveToImmutable()),
            BearingLine.Lay(poses, heads.MoveToImmutable()));
        return layout with { Steps = DeckSteps.Count(layout) };
    }
}

/// <summary>
/// What comes by whole numbers and hangs on the shape: treads and pickets of a bay, and whether a packer lies on a base. The
/// weights jump with them, so the ropes' shape is found with these numbers and the parts are made with the same.
/// </summary>
/// <param name="Treads">Treads in each bay, bay 1 first; empty for a deck along the bridge.</param>
/// <param name="Packers">Whether a packer lies on the base of each frame, F00 first.</param>
public sealed record DeckSteps(ImmutableArray<int> Treads, ImmutableArray<bool> Packers)
{
    /// <summary>Pickets on a side of each bay, bay 1 first; empty for a guard without.</summary>
    public ImmutableArray<int> Pickets { get; init; } = [];

    /// <summary>Whether shims lie on the posts' heads of each frame, F00 first; empty where the file asks for none.</summary>
    public ImmutableArray<bool> Shims { get; init; } = [];

    /// <summary>None chosen yet.</summary>
    public static DeckSteps None { get; } = new([], []);

    /// <summary>The numbers that go with a layout by itself: as many treads as keep their gap, packers where boards stand clear.</summary>
    public static DeckSteps Count(BridgeLayout layout) => new(
        layout.Parameters.Deck.Stringer is { } stringer
            ? [.. Enumerable.Range(1, layout.Bays).Select(bay => DeckTreads.Count(layout, bay, stringer))]
            : [],
        [.. Enumerable.Range(0, layout.Bays + 1).Select(frame => Frames.Packers.StandsClear(layout, frame))])
    {
        Pickets = layout.Parameters.Guard.Pickets is { } pickets
            ? [.. Enumerable.Range(1, layout.Bays).Select(bay => GuardPickets.Count(layout, bay, pickets))]
            : [],
        Shims = layout.Parameters.Guard.Shims
            ? [.. Enumerable.Range(0, layout.Bays + 1).Select(frame => Frames.Shims.StandsClear(layout, frame))]
            : [],
    };

    /// <summary>
    /// As the ropes count them: treads, pickets less than none, then 0 for a shim or a packer and 1 for none. The smaller fits on both
    /// sides of a threshold: a tread fewer keeps its gap, a picket more leaves none too wide, and a shim or packer fills what is just
    /// under the seating tolerance as well as what is just over it.
    /// </summary>
    public ImmutableArray<int> Counted => [.. Treads, .. Pickets.Select(n => -n), .. Shims.Concat(Packers).Select(p => p ? 0 : 1)];

    /// <summary>Reads <see cref="Counted"/> back.</summary>
    /// <param name="counted">
    /// One number a bay where there are treads, another where there are pickets, one a frame where there may be shims, then one a frame.
    /// </param>
    /// <param name="frames">Number of frames.</param>
    /// <param name="hasTreads">The deck lies across.</param>
    /// <param name="hasShims">The file asks for shims.</param>
    public static DeckSteps Read(ImmutableArray<int> counted, int frames, bool hasTreads, bool hasShims)
    {
        var (treads, packers) = (hasTreads ? frames - 1 : 0, counted.Length - frames);
        var shims = hasShims ? packers - frames : packers;
        return new DeckSteps(counted[..treads], [.. counted.Skip(packers).Select(p => p == 0)])
        {
            Pickets = [.. counted[treads..shims].Select(n => -n)],
            Shims = [.. counted[shims..packers].Select(s => s == 0)],
        };
    }
}
