using BridgeForm.Roles;

namespace BridgeForm.Project.Checking;

/// <summary>The user's own holes lie in the wood.</summary>
internal static class HoleChecks
{
    public static void Run(CheckedFile f)
    {
        foreach (var facts in RoleTable.All.Where(r => r.TakesHoles))
        {
            var name = facts.Name;
            if (!f.Good($"frames.{name}.section", $"frames.{name}.length", "frames.base.flat", "frames.brace.foot", "holes." + name))
            {
                continue;
            }

            var holes = f.Parameters.Frames.Holes.Where(h => h.Part == facts.Role).ToList();
            var paths = f.Values.Items("holes." + name).ToList();
            for (var i = 0; i < paths.Count; i++)
            {
                One(f, paths[i], name, holes[i]);
            }
        }
    }

    private static void One(CheckedFile f, string path, string name, HoleParameters hole)
    {
        if (!f.Good(path, path + ".from_end", path + ".from_far_end", path + ".across", path + ".diameter", path + ".depth", path + ".face"))
        {
            return;
        }

        var (length, across, through) = Stick(f.Parameters.Frames, hole);
        if (length <= 0)
        {
            // A brace for which there is no place: told where it is written.
            return;
        }

        if (hole.Diameter >= across || hole.Diameter > length)
        {
            f.Stop(path + ".diameter", $"a hole of {f.Size(hole.Diameter)} leaves no wood beside it in the {name}, {f.Size(Math.Min(across, length))} there; write less, or use a larger section");
            return;
        }

        var r = hole.Diameter / 2;
        if (hole.FromEnd < r || hole.FromEnd > length - r)
        {
            f.Stop(path + (hole.FromFarEnd ? ".from_far_end" : ".from_end"), $"the hole is not inside the {name}, {f.Length(length)} long; allowed is {f.AtLeast(r)} to {f.AtMost(length - r)}");
        }

        if (Math.Abs(hole.Across) + r >= across / 2)
        {
            var most = (across / 2) - r;
            var right = f.Down(most) > 0 ? $"write less than {f.AtMost(most)} to either side of its middle" : "leave across out, or drill less";
            f.Stop(path + ".across", $"the hole runs out of its face, {f.Size(across)} wide; {right}");
        }

        if (hole.Depth >= through)
        {
            f.Stop(path + ".depth", $"depth: '{f.Written(path + ".depth")}' goes through the {name}, {f.Size(through)}; leave depth out for a hole right through");
        }
    }

    private static (double Length, double Across, double Through) Stick(FrameParameters frames, HoleParameters hole)
    {
        var wide = hole.Face == DrilledFace.Wide;
        var (length, section) = hole.Part switch
        {
            Role.Post => (frames.Post.Length, frames.Post.Section),
            Role.Brace => (frames.Brace.Length, frames.Brace.Section),
            Role.Base => (frames.Base.Length, frames.Base.Section),
            _ => throw new ArgumentOutOfRangeException(nameof(hole), hole.Part, "Takes holes, and nobody knows how long it is."),
        };
        if (hole.Part == Role.Base)
        {
            return wide ? (length, frames.Base.Depth, frames.Base.Along) : (length, frames.Base.Along, frames.Base.Depth);
        }

        return wide ? (length, section.Width, section.Thickness) : (length, section.Thickness, section.Width);
    }
}
