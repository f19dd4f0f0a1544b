using System.Collections.Immutable;
using BridgeForm.Project;
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

    /// <summary>Lays frames, deck and caps on the nodes of a rope.</summary>
    public static BridgeLayout Of(BridgeParameters parameters, ImmutableArray<RopePoint> nodes)
    {
        var frames = parameters.Frames;
        var poses = FramePoses.Of(nodes, frames.Stance);
        var levels = ImmutableArray.CreateBuilder<BaseLevels>(poses.Length);
        var bases = ImmutableArray.CreateBuilder<BearingTop>(poses.Length);
        var heads = ImmutableArray.CreateBuilder<BearingTop>(poses.Length);
        var headHeight = frames.Post.Length * Math.Cos(frames.Post.Lean);
        foreach (var pose in poses)
        {
            var level = BaseLevels.Of(frames, parameters.Ropes.Rope.Radius, pose, frames.Stance);
            levels.Add(level);
            bases.Add(new BearingTop(level.Top, frames.Base.Along / 2, FollowsParts: false));
            heads.Add(new BearingTop(
                level.Top + headHeight,
                frames.Post.Section.Thickness / 2,
                FollowsParts: pose.IsEnd || frames.Stance == Stance.Plumb));
        }

        return new BridgeLayout(
            parameters,
            poses,
            levels.MoveToImmutable(),
            BearingLine.Lay(poses, bases.MoveToImmutable()),
            BearingLine.Lay(poses, heads.MoveToImmutable()));
    }
}
