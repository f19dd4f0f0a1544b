namespace BridgeForm.Project.Checking;

/// <summary>A point load at the edge that stands on its own side of the bridge.</summary>
internal static class LoadChecks
{
    private const string Edge = "loads.point.edge";

    public static void Run(CheckedFile f)
    {
        if (!f.Values.Given(Edge) || !f.Good(Edge, "frames.post.foot", "frames.post.lean", "deck.layout", "deck.board.section", "deck.stringer"))
        {
            return;
        }

        var half = DeckWidth.BetweenPosts(f.Parameters) / 2;
        if (f.Parameters.Loads.PointEdge > half + CheckedFile.RoundOff)
        {
            f.Stop(Edge, $"edge: '{f.Written(Edge)}' from the posts' inner face lies beyond the middle of the deck; from there to the middle are {f.AtMost(half)}");
        }
    }
}
