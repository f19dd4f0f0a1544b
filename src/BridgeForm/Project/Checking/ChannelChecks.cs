namespace BridgeForm.Project.Checking;

/// <summary>Rope channels and keeper holes in the base.</summary>
internal static class ChannelChecks
{
    private const string BaseSection = "frames.base.section";
    private const string BaseLength = "frames.base.length";
    private const string Spacing = "ropes.spacing";

    public static void Run(CheckedFile f)
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
        if (f.Good(path) && depth >= b - CheckedFile.RoundOff)
        {
            f.Stop(path, $"{Last(path)}: '{f.Written(path)}' cuts through the base, which is {f.Size(b)} deep; write less than that, at most a quarter of it is usual ({f.AtMost(b / 4)})", BaseSection);
        }
    }

    private static void Width(CheckedFile f)
    {
        var p = f.Parameters;
        var w = p.Frames.Channel.Width;
        var rope = p.Ropes.Rope.Diameter + (2 * p.Frames.Channel.Liner);
        if (w < rope - CheckedFile.RoundOff)
        {
            f.Stop("frames.channel.width", $"width: '{f.Written("frames.channel.width")}' is narrower than the rope with its liners; write at least {f.AtLeast(rope)}");
        }

        if (!f.Good(Spacing))
        {
            return;
        }

        if (p.Ropes.Spacing <= w + CheckedFile.RoundOff)
        {
            f.Stop(Spacing, $"spacing: '{f.Written(Spacing)}' lets the two rope channels run into each other; write more than the channel's width, {f.Size(w)}", "frames.channel.width");
        }

        if (f.Good(BaseLength) && p.Ropes.Spacing + w >= p.Frames.Base.Length - CheckedFile.RoundOff)
        {
            f.Stop(Spacing, $"spacing: with '{f.Written(Spacing)}' the rope channels run over the ends of the base; write less than {f.AtMost(p.Frames.Base.Length - w)}, or a base longer than {f.AtLeast(p.Ropes.Spacing + w)}", BaseLength);
        }
    }

    private static void Keepers(CheckedFile f)
    {
        var keeper = f.Parameters.Frames.Keeper;
        if (!f.Good("frames.keeper.hole", "frames.keeper.spread") || keeper.Hole <= CheckedFile.RoundOff)
        {
            return;
        }

        Across(f, keeper);
        var b = f.Parameters.Frames.Base;
        if (keeper.Hole >= b.Along)
        {
            f.Stop("frames.keeper.hole", $"hole: '{f.Written("frames.keeper.hole")}' is no smaller than the base, {f.Size(b.Along)}", BaseSection);
        }

        if (f.Good("frames.keeper.depth") && keeper.Depth >= b.Depth - CheckedFile.RoundOff)
        {
            f.Stop("frames.keeper.depth", $"depth: '{f.Written("frames.keeper.depth")}' goes through the base, which is {f.Size(b.Depth)} deep; keeper holes are blind", BaseSection);
        }
    }

    private static void Across(CheckedFile f, KeeperParameters keeper)
    {
        const string path = "frames.keeper.spread";
        var p = f.Parameters;
        var least = p.Frames.Channel.Width + keeper.Hole;
        if (keeper.Spread < least - CheckedFile.RoundOff)
        {
            f.Stop(path, $"spread: {f.Size(keeper.Spread)} puts the keeper holes into the rope channel; write at least {f.AtLeast(least)}", "frames.channel.width", "frames.keeper.hole");
        }

        if (!f.Good(Spacing))
        {
            return;
        }

        if (keeper.Spread + keeper.Hole >= p.Ropes.Spacing)
        {
            f.Stop(path, $"spread: {f.Size(keeper.Spread)} lets the keeper holes of the two ropes meet; write less than {f.AtMost(p.Ropes.Spacing - keeper.Hole)}", Spacing);
        }

        var most = p.Frames.Base.Length - p.Ropes.Spacing - keeper.Hole;
        if (f.Good(BaseLength) && keeper.Spread > most + CheckedFile.RoundOff)
        {
            f.Stop(path, most > least
                ? $"spread: {f.Size(keeper.Spread)} puts the outer keeper holes over the ends of the base; write at most {f.AtMost(most)}"
                : $"spread: {f.Size(keeper.Spread)} puts the outer keeper holes over the ends of the base; make the base at least {f.AtLeast(p.Ropes.Spacing + keeper.Spread + keeper.Hole)} long", BaseLength, Spacing);
        }
    }

    private static string Last(string path) => path[(path.LastIndexOf('.') + 1)..];
}
