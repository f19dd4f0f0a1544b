namespace BridgeForm.Project.Checking;

/// <summary>Boards and stringers that fit.</summary>
internal static class DeckChecks
{
    private const string Count = "deck.count";
    private const string SideGap = "deck.side_gap";
    private const string PostFoot = "frames.post.foot";
    private const int LeastStringers = 2;

    public static void Run(CheckedFile f)
    {
        var deck = f.Parameters.Deck;
        if (deck.Layout == DeckLayout.Along && f.Values.Given("deck.stringer"))
        {
            f.Stop("deck.stringer", "stringer: boards that run along need no stringers; take it out, or write layout: across");
        }

        if (!f.Good("frames.post.foot", "deck.layout", "deck.side_gap", "deck.gap"))
        {
            return;
        }

        if (deck.Layout == DeckLayout.Along)
        {
            Boards(f, deck);
        }
        else
        {
            // Treads are counted on the shape itself, bay by bay: Frames/TreadFit.
            Stringers(f, deck);
        }
    }

    private static double Width(CheckedFile f) => 2 * (f.Parameters.Frames.Post.Foot - f.Parameters.Deck.SideGap);

    // Largest n with n·w + (n − 1)·gap ≤ width; a deck far wider than any is counted no further than the reader allows.
    private static int MostThatFit(double width, double w, double gap) =>
        (int)Math.Min(100_000, Math.Floor((width + gap + CheckedFile.RoundOff) / (w + gap)));

    private static void Boards(CheckedFile f, DeckParameters deck)
    {
        if (!f.Good("deck.board.section"))
        {
            return;
        }

        var most = MostThatFit(Width(f), deck.Board.Width, deck.Gap);
        if (most < 1)
        {
            TooNarrow(f, "no board fits", deck.Board.Width);
        }
        else if (f.Good(Count) && deck.Count > most)
        {
            f.Stop(Count, FormattableString.Invariant($"count: {deck.Count} boards leave gaps below {f.Size(deck.Gap)}; between the posts' feet, less the side gaps, are {f.Size(Width(f))}, room for at most {most}"));
        }
    }

    /// <summary>Less than one board, or two stringers, of room: the side gap has taken it, or there is none between the posts.</summary>
    private static void TooNarrow(CheckedFile f, string what, double needed)
    {
        var (foot, gap) = (f.Parameters.Frames.Post.Foot, f.Parameters.Deck.SideGap);
        var room = $"between the posts' feet are {f.Size(2 * foot)}, less {f.Size(gap)} on either side, and {f.Size(needed)} are needed";
        if (2 * foot >= needed && f.Values.Given(SideGap))
        {
            f.Stop(SideGap, $"side_gap: with '{f.Written(SideGap)}' {what}: {room}; write at most {f.AtMost(foot - (needed / 2))}");
        }
        else
        {
            f.Stop(PostFoot, $"foot: with '{f.Written(PostFoot)}' {what}: {room}; write at least {f.AtLeast(gap + (needed / 2))}, or take a narrower section", "deck.board.section", "deck.stringer.section", SideGap);
        }
    }

    private static void Stringers(CheckedFile f, DeckParameters deck)
    {
        const string path = "deck.stringer.count";
        if (deck.Stringer is not { } stringer || !f.Good("deck.stringer", "deck.stringer.section", path))
        {
            return;
        }

        var most = MostThatFit(Width(f), stringer.Section.Thickness, deck.Gap);
        if (most < LeastStringers)
        {
            TooNarrow(f, "two stringers do not fit", (LeastStringers * stringer.Section.Thickness) + deck.Gap);
        }
        else if (stringer.Count > most)
        {
            f.Stop(path, FormattableString.Invariant($"count: {stringer.Count} stringers do not fit; between the posts' feet, less the side gaps, are {f.Size(Math.Max(0, Width(f)))}, room for at most {Math.Max(0, most)}"));
        }
    }
}
