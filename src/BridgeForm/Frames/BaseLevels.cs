using BridgeForm.Project;

namespace BridgeForm.Frames;

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
    public static BaseLevels Of(FrameParameters frames, double ropeRadius, FramePose pose, Stance stance)
    {
        var upright = pose.IsEnd || stance == Stance.Plumb;
        var reach = ropeRadius + frames.Channel.Liner;
        var floor = upright ? reach / Math.Cos(pose.Slope) : reach;
        var depth = pose.IsEnd ? frames.Channel.EndDepth : frames.Channel.Depth;
        var bottom = floor - depth;
        return new BaseLevels(
            floor, upright ? Math.Tan(pose.Slope) : 0, depth, bottom, bottom + frames.Base.Depth);
    }
}
