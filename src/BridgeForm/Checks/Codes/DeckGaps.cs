using BridgeForm.Frames;

namespace BridgeForm.Checks;

/// <summary>Gaps that heels, canes and wheels find.</summary>
internal static class DeckGaps
{
    /// <summary>The check.</summary>
    public static DeclaredCheck Declared { get; } = new(
        "deck-gaps",
        "Gaps in the deck",
        "Widest gap between boards or treads, and between boards that meet end to end, against 1/2 in. The side gap at the posts is not walked on.",
        Limits.FloorOpening.Source,
        [CheckStatus.Pass, CheckStatus.Warn]);

    /// <summary>A warning.</summary>
    public static CheckResult Of(CheckContext context)
    {
        var parameters = context.Parameters;
        var deck = parameters.Deck;
        var between = deck.Stringer is { } stringer
            ? context.Bays.Max(bay => DeckTreads.Gap(context.Layout, bay, stringer))
            : DeckWidth.EqualGap(DeckWidth.Filled(parameters), deck.Board.Width, DeckWidth.BoardCount(parameters));
        var widest = deck.Stringer is null ? Math.Max(between, deck.ButtGap) : between;
        var words = context.People();
        var (limit, source) = Limits.FloorOpening;
        return Outcome.AtMost(
            Declared, widest, limit, "m", source,
            $"{(deck.Stringer is null ? "boards" : "treads")} {words.Length(between)} apart, ends {words.Length(deck.ButtGap)} apart; at most {words.Length(limit)}",
            CheckStatus.Warn);
    }
}
