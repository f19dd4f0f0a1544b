namespace BridgeForm.Project.Checking;

/// <summary>Posts on the base, and braces between base and post.</summary>
internal static class PostAndBraceChecks
{
    private const string PostFoot = "frames.post.foot";

    /// <summary>Leans that add up to less never meet within reach: a tenth of a degree.</summary>
    private const double SmallestAngle = Math.PI / 1800;

    public static void Run(CheckedFile f)
    {
        if (!f.Good("frames.base.length", "frames.post.section", "frames.post.length", "frames.post.lean", PostFoot))
        {
            return;
        }

        var post = f.Parameters.Frames.Post;
        var half = f.Parameters.Frames.Base.Length / 2;
        var outer = BraceGeometry.PostOuterFoot(post);
        if (outer > half + CheckedFile.RoundOff)
        {
            f.Stop(PostFoot, $"foot: with '{f.Written(PostFoot)}' the post stands out over the base's end; write at most {f.AtMost(half - (outer - post.Foot))}, or a base at least {f.AtLeast(2 * outer)} long", "frames.base.length", "frames.post.lean", "frames.post.section");
        }
        else if (f.Good("frames.brace.section", "frames.brace.lean", "frames.brace.foot", "frames.brace.length"))
        {
            Brace(f, post, half);
        }
    }

    private static void Brace(CheckedFile f, PostParameters post, double half)
    {
        var brace = f.Parameters.Frames.Brace;
        var between = post.Lean + brace.Lean;
        if (between < SmallestAngle)
        {
            f.Stop("frames.brace.lean", "lean: post and brace both stand upright and never meet; lean the brace inward, 10 deg to 20 deg is usual", "frames.post.lean");
            return;
        }

        // Long edges: least, so that the inner edge is not cut away; most, so that the brace meets the post below its head
        // and stands on the base.
        var least = brace.Section.Width * (Math.Tan(brace.Lean) + (1 / Math.Tan(between)));
        var byHead = post.Length * Math.Cos(post.Lean) / Math.Cos(brace.Lean);
        var byBase = BraceGeometry.FromFoot(post, brace.Lean, half).LongEdge;
        var most = Math.Min(byHead, byBase);
        var byLength = f.Values.Given("frames.brace.length");
        var path = byLength ? "frames.brace.length" : "frames.brace.foot";
        var reason = brace.Length <= least + CheckedFile.RoundOff ? "stands too near the post: its inner edge would be cut away"
            : brace.Length > byBase + CheckedFile.RoundOff ? "stands out over the base's end"
            : brace.Length > byHead + CheckedFile.RoundOff ? "meets the post above its head"
            : null;
        if (reason is not null)
        {
            f.Stop(path, $"{(byLength ? "length" : "foot")}: with '{f.Written(path)}' the brace {reason}; {Allowed(f, post, brace, (least, most), byLength)}", "frames.brace.lean", PostFoot, "frames.post.lean", "frames.post.length", "frames.base.length");
        }
    }

    private static string Allowed(
        CheckedFile f, PostParameters post, BraceParameters brace, (double Least, double Most) longEdge, bool byLength)
    {
        if (longEdge.Most <= longEdge.Least)
        {
            return "no place fits: lean post or brace more, or make base or post longer";
        }

        double Value(double edge) => byLength ? edge : BraceGeometry.FromLength(post, brace.Lean, edge).Foot;
        return $"write more than {f.AtLeast(Value(longEdge.Least))} and at most {f.AtMost(Value(longEdge.Most))}";
    }
}
