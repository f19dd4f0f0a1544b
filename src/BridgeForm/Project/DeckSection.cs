using BridgeForm.Materials;
using BridgeForm.Project.Definition;
using BridgeForm.Project.Reading;
using BridgeForm.Project.Reading.Faults;
using BridgeForm.Quantities;

namespace BridgeForm.Project;

/// <summary>Deck.</summary>
public sealed record DeckParameters
{
    /// <summary>Boards run along the bridge, or lie across it.</summary>
    public required DeckLayout Layout { get; init; }

    /// <summary>Section of boards or treads.</summary>
    public required Section Board { get; init; }

    /// <summary>Stock of boards or treads.</summary>
    public required string BoardStock { get; init; }

    /// <summary>Number of boards side by side (along) or treads in a bay (across); null for as many as fit.</summary>
    public required int? Count { get; init; }

    /// <summary>Least gap between neighbours, metres.</summary>
    public required double Gap { get; init; }

    /// <summary>Gap from the outermost boards, stringers or tread ends to the posts' feet, metres.</summary>
    public required double SideGap { get; init; }

    /// <summary>Gap between boards that meet end to end at a frame, metres.</summary>
    public required double ButtGap { get; init; }

    /// <summary>What the builder lays on the walking surface for shoes to hold on.</summary>
    public DeckGrip Grip { get; init; }

    /// <summary>Cleats across the deck; null where its grip is another.</summary>
    public CleatParameters? Cleats { get; init; }

    /// <summary>Stringers of a deck across; null for a deck along.</summary>
    public required StringerParameters? Stringer { get; init; }

    /// <summary>Thickness from the base's top to the walking surface, metres.</summary>
    public double Thickness => Board.Thickness + (Stringer?.Section.Width ?? 0);
}

/// <summary>Direction of the deck's boards.</summary>
public enum DeckLayout
{
    /// <summary>From base to base.</summary>
    Along,

    /// <summary>Treads on stringers.</summary>
    Across,
}

/// <summary>What shoes hold on.</summary>
public enum DeckGrip
{
    /// <summary>The wood alone.</summary>
    None,

    /// <summary>Grit strips or a sanded coating over the whole walking surface.</summary>
    Grit,

    /// <summary>Strips of wood across the deck.</summary>
    Cleats,
}

/// <summary>Stringers, standing on their narrow sides.</summary>
public sealed record StringerParameters(Section Section, int Count, string Stock);

/// <summary>Keys under <c>deck</c>, how they are read, and whether boards and stringers fit.</summary>
internal static class DeckSection
{
    private const string Count = "deck.count";
    private const string SideGap = "deck.side_gap";
    private const string PostFoot = "frames.post.foot";
    private const int LeastStringers = 2;

    public static KeySpec Keys => Define.Map(
        "deck",
        "The deck",
        [
            Define.Choice("layout", "Boards along the bridge, or treads across it on stringers", "along", "along", "across").Starting(),
            Define.Map(
                "board",
                "Boards; with layout across, treads",
                [
                    Define.Section("section", "Lies flat", "2x6", "45 x 145 mm"),
                    Define.StockName("treated"),
                ]).AllStarting(),
            (Define.Whole("count", "Boards side by side, or treads in a bay; auto for as "
                + "many as fit", "1", "1000", "auto") with { Choices = ["auto"] }).Starting(),
            Define.Length("gap", "Least gap between boards", "0 in", "6 in", "1/4 in", "6 mm").Starting(),
            Define.Length("side_gap", "Gap from the outermost boards to the posts' feet", "0 in", "2 ft", "3/4 in", "20 mm").Starting(),
            Define.Length("butt_gap", "Gap between boards that meet end to end at a frame", "0 in", "2 in", "1/8 in", "3 mm").Starting(),
            Define.Choice("grip", "What the builder lays on the boards for shoes to hold on: grit strips or a sanded coating, "
                + "kept up for as long as the bridge is used", "none", "none", "grit", "cleats").Starting(),
            Define.Map(
                "stringer",
                "Bearers of treads; with layout across only",
                [
                    Define.Section("section", "Stands on its narrow side", "2x6", "45 x 145 mm"),
                    Define.Whole("count", "Stringers side by side", "2", "100", "3"),
                    Define.StockName("treated"),
                ]),
            CleatSection.Keys,
        ]).Starting();

    public static DeckParameters Read(FileValues v)
    {
        var across = v.Text("deck.layout") is "across";
        return new DeckParameters
        {
            Layout = across ? DeckLayout.Across : DeckLayout.Along,
            Board = v.Section("deck.board.section"),
            BoardStock = v.Text("deck.board.stock"),
            Count = double.IsNaN(v.Number("deck.count")) ? null : v.Whole("deck.count"),
            Gap = v.Number("deck.gap"),
            SideGap = v.Number("deck.side_gap"),
            ButtGap = v.Number("deck.butt_gap"),
            Grip = v.Text("deck.grip") switch { "grit" => DeckGrip.Grit, "cleats" => DeckGrip.Cleats, _ => DeckGrip.None },
            Cleats = CleatSection.Read(v),
            Stringer = across
                ? new StringerParameters(v.Section("deck.stringer.section"), v.Whole("deck.stringer.count"), v.Text("deck.stringer.stock"))
                : null,
        };
    }

    public static void Check(CheckedFile f)
    {
        var deck = f.Parameters.Deck;
        CleatSection.Check(f);
        if (deck.Layout == DeckLayout.Along && f.Values.Given("deck.stringer"))
        {
            f.Stop(FaultCode.StringerUnused, "deck.stringer", "stringer: boards that run along need no stringers; take it out, or write "
                + "layout: across");
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
        (int)Math.Min(100_000, Math.Floor((width + gap + Tolerances.RoundOff) / (w + gap)));

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
            f.Stop(FaultCode.TooManyBoards, Count, FormattableString.Invariant($"count: {deck.Count} boards leave gaps below ")
                + FormattableString.Invariant(
                    $"{f.Size(deck.Gap)}; between the posts' feet, less the side gaps, are {f.Size(Width(f))}, room for at most {most}"));
        }
    }

    /// <summary>Less than one board, or two stringers, of room: the side gap has taken it, or there is none between the posts.</summary>
    private static void TooNarrow(CheckedFile f, string what, double needed)
    {
        var (foot, gap) = (f.Parameters.Frames.Post.Foot, f.Parameters.Deck.SideGap);
        var room = $"between the posts' feet are {f.Size(2 * foot)}, less {f.Size(gap)} on either side, and {f.Size(needed)} are needed";
        if (2 * foot >= needed && f.Values.Given(SideGap))
        {
            f.Stop(FaultCode.DeckTooNarrow, SideGap, $"side_gap: with '{f.Written(SideGap)}' {what}: {room}; write at most "
                + $"{f.AtMost(foot - (needed / 2))}");
        }
        else
        {
            f.Stop(FaultCode.DeckTooNarrow, PostFoot, $"foot: with '{f.Written(PostFoot)}' {what}: {room}; write at least "
                + $"{f.AtLeast(gap + (needed / 2))}, or take a narrower section", "deck.board.section", "deck.stringer.section", SideGap);
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
            f.Stop(FaultCode.TooManyStringers, path, FormattableString.Invariant($"count: {stringer.Count} stringers do not fit; between ")
                + FormattableString.Invariant(
                    $"the posts' feet, less the side gaps, are {f.Size(Math.Max(0, Width(f)))}, room for at most {Math.Max(0, most)}"));
        }
    }
}
