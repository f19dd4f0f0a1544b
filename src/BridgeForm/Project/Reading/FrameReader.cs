using BridgeForm.Materials;
using BridgeForm.Roles;

namespace BridgeForm.Project.Reading;

/// <summary>Reads <c>frames</c> and <c>holes</c>.</summary>
internal static class FrameReader
{
    private const double LeastSpread = 2.5 * 0.0254;
    private const double HoleDiametersBeside = 4;

    public static FrameParameters Read(FileValues v, RopeProperties rope)
    {
        var channel = Channel(v, rope);
        var post = Post(v);
        return new FrameParameters
        {
            Spacing = v.Number("frames.spacing"),
            Step = v.Text("frames.step") is "plan" ? FrameStep.Plan : FrameStep.Rope,
            Stance = v.Text("frames.stance") is "plumb" ? Stance.Plumb : Stance.Square,
            Base = new BaseParameters(
                v.Section("frames.base.section"), v.Flag("frames.base.flat"), v.Number("frames.base.length"), v.Text("frames.base.stock")),
            Channel = channel,
            Post = post,
            Brace = Brace(v, post),
            Keeper = Keeper(v, channel),
            HardwareMass = v.Number("frames.hardware"),
            Holes = [.. RoleTable.All.Where(r => r.TakesHoles).SelectMany(r => Holes(v, r))],
        };
    }

    private static ChannelParameters Channel(FileValues v, RopeProperties rope)
    {
        var liner = v.Number("frames.channel.liner");
        var width = v.NumberOrNull("frames.channel.width")
            ?? rope.Diameter + (v.NumberOrNull("frames.channel.clearance") ?? 0) + (2 * liner);
        return new ChannelParameters(width, v.Number("frames.channel.depth"), v.Number("frames.channel.end_depth"), liner);
    }

    private static PostParameters Post(FileValues v) => new(
        v.Section("frames.post.section"),
        v.Number("frames.post.length"),
        v.Number("frames.post.lean"),
        v.Number("frames.post.foot"),
        v.Text("frames.post.stock"));

    private static BraceParameters Brace(FileValues v, PostParameters post)
    {
        var section = v.Section("frames.brace.section");
        var lean = v.Number("frames.brace.lean");
        var length = v.NumberOrNull("frames.brace.length");
        var foot = v.NumberOrNull("frames.brace.foot");
        var geometry = length is { } l && foot is null
            ? BraceGeometry.FromLength(post, lean, l)
            : BraceGeometry.FromFoot(post, lean, foot ?? 0);
        return new BraceParameters(section, lean, geometry.Foot, geometry.LongEdge, v.Text("frames.brace.stock"));
    }

    private static KeeperParameters Keeper(FileValues v, ChannelParameters channel)
    {
        var hole = v.Number("frames.keeper.hole");
        var spread = v.NumberOrNull("frames.keeper.spread")
            ?? Math.Max(LeastSpread, channel.Width + (HoleDiametersBeside * hole));
        return new KeeperParameters(hole, spread, v.Number("frames.keeper.depth"));
    }

    private static IEnumerable<HoleParameters> Holes(FileValues v, RoleFacts facts) =>
        v.Items("holes." + facts.Name).Select(p => Hole(v, p, facts.Role));

    private static HoleParameters Hole(FileValues v, string path, Role part)
    {
        var face = v.Text(path + ".face") switch
        {
            "top" => DrilledFace.Top,
            "bottom" => DrilledFace.Bottom,
            _ => DrilledFace.Wide,
        };
        var far = v.NumberOrNull(path + ".from_far_end");
        return new HoleParameters(
            part,
            face,
            far ?? v.NumberOrNull(path + ".from_end") ?? 0,
            far is not null,
            v.Number(path + ".across"),
            v.Number(path + ".diameter"),
            v.NumberOrNull(path + ".depth"));
    }
}
