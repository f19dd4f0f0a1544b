using BridgeForm.Project;
using BridgeForm.Quantities;

namespace BridgeForm.Frames;

/// <summary>Whether every bay of a deck of treads has a tread, and its treads their least gap, on this very shape.</summary>
internal static class TreadFit
{
    private const string Count = "deck.count";
    private const string Gap = "deck.gap";
    private const string Spacing = "frames.spacing";
    private const string Section = "deck.board.section";

    /// <summary>The first bay without a tread, or the one whose treads stand closest when that is too close.</summary>
    public static IEnumerable<Misfit> Of(BridgeLayout layout) => layout.Parameters.Deck.Stringer is { } stringer
        ? Bare(layout, stringer) ?? TooClose(layout, stringer) ?? []
        : [];

    private static Misfit[]? Bare(BridgeLayout layout, StringerParameters stringer)
    {
        var text = new QuantityText(layout.Parameters.Units);
        var deck = layout.Parameters.Deck;
        var bare = layout.Steps.Treads.Select((count, i) => (Count: count, Bay: i + 1)).Where(t => t.Count < 1).ToList();
        if (bare.Count == 0)
        {
            return null;
        }

        var bay = bare.MinBy(t => DeckTreads.Length(layout, t.Bay, stringer)).Bay;
        var name = FramePoses.BayName(bay, layout.Bays);
        return
        [
            new Misfit(
                Spacing,
                [Section, Gap],
                FormattableString.Invariant($"no tread fits into {bare.Count} of {layout.Bays} bays: {name} has {text.Size(DeckTreads.Length(layout, bay, stringer))} between its frames' mid-planes, and a tread of {text.Size(deck.Board.Width)} with its gap takes {text.Size(deck.Board.Width + deck.Gap)}")),
        ];
    }

    private static Misfit[]? TooClose(BridgeLayout layout, StringerParameters stringer)
    {
        var (deck, text) = (layout.Parameters.Deck, new QuantityText(layout.Parameters.Units));
        if (deck.Count is not { } count)
        {
            return null;
        }

        var bay = Enumerable.Range(1, layout.Bays).MinBy(i => DeckTreads.Length(layout, i, stringer));
        return DeckTreads.Most(layout, bay, stringer) >= count
            ? null
            : [new Misfit(
                Count,
                [Spacing, Section, Gap],
                $"treads leave gaps below {text.Size(deck.Gap)} in {FramePoses.BayName(bay, layout.Bays)}, {text.Size(DeckTreads.Length(layout, bay, stringer))} between its frames' mid-planes")];
    }
}
