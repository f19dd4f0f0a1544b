namespace BridgeForm.Project.Checking;

/// <summary>Rails on the posts, between deck and head.</summary>
internal static class RailChecks
{
    private const string Heights = "guard.rails.heights";
    private const string Count = "guard.rails.count";

    public static void Run(CheckedFile f)
    {
        if (!f.Good(
            "guard.rails.section", Heights, Count, "deck.layout", "deck.board.section", "deck.stringer.section", "frames.post.length", "frames.post.lean"))
        {
            return;
        }

        var p = f.Parameters;
        var low = p.Deck.Thickness / Math.Cos(p.Frames.Post.Lean);
        if (f.Values.Given(Heights))
        {
            ByHeight(f, low, p.Frames.Post.Length);
        }
        else
        {
            ByCount(f, p.Frames.Post.Length - low);
        }
    }

    private static void ByCount(CheckedFile f, double room)
    {
        var rail = f.Parameters.Guard.Rail.Width;
        var count = f.Parameters.Guard.RailCount;
        if (count * rail < room - CheckedFile.RoundOff)
        {
            return;
        }

        var most = (int)Math.Max(0, Math.Ceiling(room / rail) - 1);
        f.Stop(Count, FormattableString.Invariant($"count: {count} rails of {f.Size(rail)} do not fit between deck and head, {f.Size(Math.Max(0, room))} along the post; write at most {most}"), "guard.rails.section", "frames.post.length");
    }

    private static void ByHeight(CheckedFile f, double low, double high)
    {
        var guard = f.Parameters.Guard;
        var half = guard.Rail.Width / 2;
        var paths = f.Values.Items(Heights).ToList();
        for (var i = 0; i < paths.Count; i++)
        {
            var h = guard.RailHeights[i];
            if (h < low + half - CheckedFile.RoundOff || h > high - half + CheckedFile.RoundOff)
            {
                f.Stop(paths[i], $"heights: '{f.Written(paths[i])}' puts a rail's edge below the deck's surface or above the post's head; allowed is {f.AtLeast(low + half)} to {f.AtMost(high - half)}");
            }
            else if (i > 0 && h < guard.RailHeights[i - 1] + guard.Rail.Width - CheckedFile.RoundOff)
            {
                f.Stop(paths[i], $"heights: '{f.Written(paths[i])}' lies on the rail before it; list heights from the lowest up, here at least {f.AtLeast(guard.RailHeights[i - 1] + guard.Rail.Width)}");
            }
        }
    }
}
