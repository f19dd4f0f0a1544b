using BridgeForm.Materials;
using BridgeForm.Project.Definition;
using BridgeForm.Project.Reading;
using BridgeForm.Project.Reading.Faults;
using BridgeForm.Quantities;

namespace BridgeForm.Project;

/// <summary>The rope channel of a base. Metres.</summary>
/// <param name="Width">Wall to wall (already computed from rope, clearance and liner when not given).</param>
/// <param name="Depth">Depth at the middle of an interior base.</param>
/// <param name="EndDepth">Depth at the middle of an end base.</param>
/// <param name="Liner">Thickness of a liner between rope and wood; 0 for none.</param>
public sealed record ChannelParameters(double Width, double Depth, double EndDepth, double Liner);

/// <summary>Blind pilot holes from below, two at each channel. Metres.</summary>
/// <param name="Hole">Diameter; 0 for no holes.</param>
/// <param name="Spread">Centre to centre across the channel.</param>
/// <param name="Depth">Depth from the bottom face.</param>
public sealed record KeeperParameters(double Hole, double Spread, double Depth);

/// <summary>Keys under <c>frames.channel</c> and <c>frames.keeper</c>, how they are read, and how they fit into the base.</summary>
internal static class ChannelSection
{
    private const string BaseSection = "frames.base.section";
    private const string BaseLength = "frames.base.length";
    private const string Spacing = "ropes.spacing";
    private const double LeastSpread = 2.5 * Quantities.Units.MetresPerInch;
    // Half a hole and four diameters of wood between hole and channel, to either side.
    private const double HoleDiametersBeside = 9;

    public static KeySpec Keys => Define.Map(
        "channel",
        "The rope channels in the underside of a base",
        [
            Define.Length("clearance", "Channel wider than the rope (and two liners) by this much", "0 in", "2 in", "1/8 in", "3 mm"),
            Define.Length("width", "Width of the channel, in place of clearance", "1/16 in", "12 in") with
            { DefaultNote = "rope diameter + clearance + two liners", Example = "1-1/8 in", MetricExample = "30 mm" },
            Define.Length("depth", "Depth of the channel in the middle of the base", "1/16 in", "24 in").ByRule(
                "the rope",
                "5/8 in (16 mm), or the rope's diameter and the liner where that is less, so that a flat strap clamps it",
                "5/8 in", "16 mm"),
            Define.Length("end_depth", "The same of the two end frames", "1/16 in", "24 in").ByRule(
                "the rope, span, rise and sag",
                "3/4 in (19 mm), or the rope's diameter and the liner where that is less; deeper where the rope leaves it steeply",
                "3/4 in", "19 mm"),
            Define.Length("liner", "Thickness of a liner, no metal, between rope and wood; 0 for none", "0 in", "1 in", "1/16 in", "2 mm"),
        ]) with
    { OneOf = ["clearance", "width"] };

    public static KeySpec KeeperKeys => Define.Map(
        "keeper",
        "Blind pilot holes from below for the strap that holds base to rope, two straddling each channel",
        [
            Define.Length("hole", "Diameter; 0 for no holes", "0 in", "2 in", "1/4 in", "6 mm"),
            Define.Length("spread", "Center to center across the channel", "1/4 in", "24 in") with
            {
                DefaultNote = "the larger of 2-1/2 in (64 mm) and channel width + 9 hole diameters",
                Example = "3-1/8 in",
                MetricExample = "80 mm",
            },
            Define.Length("depth", "Depth from the base's bottom face", "0 in", "24 in", "2 in", "50 mm"),
        ]);

    public static ChannelParameters Read(FileValues v, RopeProperties rope)
    {
        var liner = v.Number("frames.channel.liner");
        var width = v.NumberOrNull("frames.channel.width")
            ?? rope.Diameter + (v.NumberOrNull("frames.channel.clearance") ?? 0) + (2 * liner);
        return new ChannelParameters(width, v.Number("frames.channel.depth"), v.Number("frames.channel.end_depth"), liner);
    }

    public static KeeperParameters Keeper(FileValues v, ChannelParameters channel)
    {
        var hole = v.Number("frames.keeper.hole");
        var spread = v.NumberOrNull("frames.keeper.spread")
            ?? Math.Max(LeastSpread, channel.Width + (HoleDiametersBeside * hole));
        return new KeeperParameters(hole, spread, v.Number("frames.keeper.depth"));
    }

    public static void Check(CheckedFile f)
    {
        if (!f.Good(BaseSection, "frames.base.flat"))
        {
            return;
        }

        var channel = f.Parameters.Frames.Channel;
        Depth(f, "frames.channel.depth", channel.Depth);
        Depth(f, "frames.channel.end_depth", channel.EndDepth);
        if (f.Good("ropes.type", "ropes.type.diameter", "frames.channel.width", "frames.channel.clearance", "frames.channel.liner"))
        {
            Width(f);
            Keepers(f);
        }
    }

    private static void Depth(CheckedFile f, string path, double depth)
    {
        var b = f.Parameters.Frames.Base.Depth;
        if (f.Good(path) && depth >= b - Tolerances.RoundOff)
        {
            f.Stop(FaultCode.ChannelCutsThrough, path, $"{Last(path)}: '{f.Written(path)}' cuts through the base, which is {f.Size(b)} "
                + $"deep; write less than that, at most a quarter of it is usual ({f.AtMost(b / 4)})", BaseSection);
        }
    }

    private static void Width(CheckedFile f)
    {
        var p = f.Parameters;
        var w = p.Frames.Channel.Width;
        var rope = p.Ropes.Rope.Diameter + (2 * p.Frames.Channel.Liner);
        if (w < rope - Tolerances.RoundOff)
        {
            f.Stop(FaultCode.ChannelTooNarrow, "frames.channel.width", $"width: '{f.Written("frames.channel.width")}' is narrower than the "
                + $"rope with its liners; write at least {f.AtLeast(rope)}");
        }

        if (!f.Good(Spacing))
        {
            return;
        }

        if (p.Ropes.Spacing <= w + Tolerances.RoundOff)
        {
            f.Stop(FaultCode.ChannelsMeet, Spacing, $"spacing: '{f.Written(Spacing)}' lets the two rope channels run into each other; "
                + $"write more than the channel's width, {f.Size(w)}", "frames.channel.width");
        }

        if (f.Good(BaseLength) && p.Ropes.Spacing + w >= p.Frames.Base.Length - Tolerances.RoundOff)
        {
            f.Stop(FaultCode.ChannelOverEnd, Spacing, $"spacing: with '{f.Written(Spacing)}' the rope channels run over the ends of the "
                + $"base; write less than {f.AtMost(p.Frames.Base.Length - w)}, or a base longer than {f.AtLeast(p.Ropes.Spacing + w)}",
                BaseLength);
        }
    }

    private static void Keepers(CheckedFile f)
    {
        var keeper = f.Parameters.Frames.Keeper;
        if (!f.Good("frames.keeper.hole", "frames.keeper.spread") || keeper.Hole <= Tolerances.RoundOff)
        {
            return;
        }

        Across(f, keeper);
        var b = f.Parameters.Frames.Base;
        if (keeper.Hole >= b.Along)
        {
            f.Stop(FaultCode.KeeperTooWide, "frames.keeper.hole", $"hole: '{f.Written("frames.keeper.hole")}' is no smaller than the base, "
                + $"{f.Size(b.Along)}", BaseSection);
        }

        if (f.Good("frames.keeper.depth") && keeper.Depth >= b.Depth - Tolerances.RoundOff)
        {
            f.Stop(FaultCode.KeeperThrough, "frames.keeper.depth", $"depth: '{f.Written("frames.keeper.depth")}' goes through the base, "
                + $"which is {f.Size(b.Depth)} deep; keeper holes are blind", BaseSection);
        }
    }

    private static void Across(CheckedFile f, KeeperParameters keeper)
    {
        const string path = "frames.keeper.spread";
        var p = f.Parameters;
        var least = p.Frames.Channel.Width + keeper.Hole;
        if (keeper.Spread < least - Tolerances.RoundOff)
        {
            f.Stop(FaultCode.KeeperInChannel, path, $"spread: {f.Size(keeper.Spread)} puts the keeper holes into the rope channel; write "
                + $"at least {f.AtLeast(least)}", "frames.channel.width", "frames.keeper.hole");
        }

        if (!f.Good(Spacing))
        {
            return;
        }

        if (keeper.Spread + keeper.Hole >= p.Ropes.Spacing)
        {
            f.Stop(FaultCode.KeepersMeet, path, $"spread: {f.Size(keeper.Spread)} lets the keeper holes of the two ropes meet; write less "
                + $"than {f.AtMost(p.Ropes.Spacing - keeper.Hole)}", Spacing);
        }

        var most = p.Frames.Base.Length - p.Ropes.Spacing - keeper.Hole;
        if (f.Good(BaseLength) && keeper.Spread > most + Tolerances.RoundOff)
        {
            f.Stop(FaultCode.KeeperOverEnd, path, most > least
                ? $"spread: {f.Size(keeper.Spread)} puts the outer keeper holes over the ends of the base; write at most {f.AtMost(most)}"
                : $"spread: {f.Size(keeper.Spread)} puts the outer keeper holes over the ends of the base; make the base at least "
                    + $"{f.AtLeast(p.Ropes.Spacing + keeper.Spread + keeper.Hole)} long",
                BaseLength, Spacing);
        }
    }

    private static string Last(string path) => path[(path.LastIndexOf('.') + 1)..];
}
