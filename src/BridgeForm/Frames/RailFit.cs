using BridgeForm.Quantities;

namespace BridgeForm.Frames;

/// <summary>Whether the rails have room between deck, lift included, and post's head, frame by frame.</summary>
internal static class RailFit
{
    private const string Count = "guard.rails.count";
    private const string Section = "guard.rails.section";
    private const string PostLength = "frames.post.length";

    // Sums of fractions of an inch do not come out even: a billionth of a metre is round-off, not room.
    private const double RoundOff = 1e-9;

    /// <summary>The frame with the least room, when it is too little.</summary>
    public static IEnumerable<Misfit> Of(BridgeLayout layout)
    {
        var guard = layout.Parameters.Guard;
        var frame = Enumerable.Range(0, layout.Bays + 1).MaxBy(i => layout.Deck.Lifts[i]);
        var deck = GuardRails.DeckAlongPost(layout, frame);
        var head = layout.Parameters.Frames.Post.Length;
        return guard.RailHeights.IsEmpty ? ByCount(layout, frame, head - deck) : ByHeight(layout, frame, deck);
    }

    // Equal gaps must be gaps: rails that touch or lie on each other are a wall that was not asked for.
    private static IEnumerable<Misfit> ByCount(BridgeLayout layout, int frame, double room)
    {
        var (guard, text) = (layout.Parameters.Guard, new QuantityText(layout.Parameters.Units));
        if (guard.RailCount > 0 && guard.RailCount * guard.Rail.Width >= room - RoundOff)
        {
            yield return new Misfit(
                Count,
                [PostLength, Section],
                $"the rails of {text.Size(guard.Rail.Width)} overlap: between deck and head are {text.Size(Math.Max(0, room))} along the posts of {layout.Poses[frame].Name}, where the deck lies {text.Size(layout.Deck.Lifts[frame])} above the base");
        }
    }

    private static IEnumerable<Misfit> ByHeight(BridgeLayout layout, int frame, double deck)
    {
        var (guard, text) = (layout.Parameters.Guard, new QuantityText(layout.Parameters.Units));
        var edge = guard.RailHeights[0] - (guard.Rail.Width / 2);
        if (edge < deck - RoundOff)
        {
            yield return new Misfit(
                "guard.rails.heights.0",
                ["guard.rails.heights", Section],
                $"the lowest rail's edge is below the deck's surface at {layout.Poses[frame].Name}, {text.Size(deck)} up along the post, where the deck lies {text.Size(layout.Deck.Lifts[frame])} above the base");
        }
    }
}
