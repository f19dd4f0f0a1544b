using System.Collections.Immutable;
using BridgeForm.Project;
using BridgeForm.Quantities;
using BridgeForm.Roles;
using BridgeForm.Solids;

namespace BridgeForm.Frames;

/// <summary>The base of a frame.</summary>
internal static class BaseMember
{
    /// <summary>
    /// The stick across the bridge. X from left to right; a standing base has Z towards A and its depth along Y, a flat one Z
    /// upwards.
    /// </summary>
    public static Member Cut(BridgeLayout layout, int frame)
    {
        var parameters = layout.Parameters;
        var made = parameters.Frames.Base;
        var pose = layout.Poses[frame];
        var levels = layout.Levels[frame];
        var origin = pose.At(0, (levels.Bottom + levels.Top) / 2, 0);
        var placement = Placement.FromLengthAndThickness(
            origin, Vector3d.UnitZ, made.Flat ? pose.Up : -pose.Along);
        var half = made.Length / 2;
        var shape = new CutStock(
            made.Section.Width,
            made.Section.Thickness,
            new Plane(-Vector3d.UnitX, half),
            new Plane(Vector3d.UnitX, half))
        {
            Channels = Channels(parameters, levels),
            Holes =
            [
                .. KeeperHoles(parameters), .. JointHoles.OfBase(parameters.Frames),
                .. UserHoles.OfBase(parameters.Frames, half, made.Flat),
            ],
        };
        return new Member(
            new PartId(pose.Name, Role.Base), parameters.StockOf(Role.Base), made.Section.Name, placement, shape);
    }

    private static ImmutableArray<Channel> Channels(BridgeParameters parameters, BaseLevels levels)
    {
        var made = parameters.Frames.Base;
        var face = made.Flat ? StockFace.MinusZ : StockFace.MinusY;

        // A flat base has its cross axis Y along t, a standing one its cross axis Z against t.
        var slope = made.Flat ? levels.FloorSlope : -levels.FloorSlope;
        var z = parameters.Ropes.Spacing / 2;
        var width = parameters.Frames.Channel.Width;
        return
        [
            new Channel(face, -z, width, levels.ChannelDepth, slope),
            new Channel(face, z, width, levels.ChannelDepth, slope),
        ];
    }

    private static IEnumerable<Hole> KeeperHoles(BridgeParameters parameters)
    {
        var keeper = parameters.Frames.Keeper;
        if (keeper.Hole <= 0)
        {
            yield break;
        }

        var face = parameters.Frames.Base.Flat ? StockFace.MinusZ : StockFace.MinusY;
        var z = parameters.Ropes.Spacing / 2;
        foreach (var channel in (double[])[-z, z])
        {
            yield return new Hole(face, channel - (keeper.Spread / 2), 0, keeper.Hole, keeper.Depth);
            yield return new Hole(face, channel + (keeper.Spread / 2), 0, keeper.Hole, keeper.Depth);
        }
    }
}

/// <summary>Heights of a base in its frame's axes: n in metres at t = 0, from the rope axis.</summary>
/// <param name="Floor">Height of the channel's floor (f).</param>
/// <param name="FloorSlope">Rise of the floor per metre along t; 0 for frames square to the rope.</param>
/// <param name="ChannelDepth">Depth of the channel at t = 0 (c).</param>
/// <param name="Bottom">Bottom face.</param>
/// <param name="Top">Top face.</param>
public readonly record struct BaseLevels(double Floor, double FloorSlope, double ChannelDepth, double Bottom, double Top)
{
    /// <summary>
    /// Levels of one frame's base: the floor touches the top of the rope or of its liner; on an upright frame the rope
    /// passes at a slope, so its top lies 1 / cosθ higher above the node.
    /// </summary>
    public static BaseLevels Find(FrameParameters frames, double ropeRadius, FramePose pose, Stance stance)
    {
        var upright = pose.IsEnd || stance == Stance.Plumb;
        var reach = ropeRadius + frames.Channel.Liner;
        var floor = upright ? reach / Elementary.Cos(pose.Slope) : reach;
        var depth = pose.IsEnd ? frames.Channel.EndDepth : frames.Channel.Depth;
        var bottom = floor - depth;
        return new BaseLevels(
            floor, upright ? Elementary.Tan(pose.Slope) : 0, depth, bottom, bottom + frames.Base.Depth);
    }
}
