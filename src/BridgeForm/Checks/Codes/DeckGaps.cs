using BridgeForm.Frames;
using BridgeForm.Project;

namespace BridgeForm.Checks.Codes;

/// <summary>Gaps that heels, canes and wheels find.</summary>
internal static class DeckGaps
{
    /// <summary>The check.</summary>
    public static DeclaredCheck Declared { get; } = new(
        "deck-gaps",
        "Gaps in the deck",
        "Widest gap between boards or treads, and between boards that meet end to end, against 1/2 in, a figure to compare with; a gap that lets a 4 in sphere fall through fails. The side gap at the posts is not walked on.",
        Limits.FloorOpening.Source,
        [CheckStatus.Pass, CheckStatus.Warn, CheckStatus.Fail]);

    /// <summary>A warning; a fault where a child's head or a foot goes through.</summary>
    public static CheckResult Of(CheckContext context)
    {
        var parameters = context.Parameters;
        var deck = parameters.Deck;
        var between = deck.Stringer is { } stringer
            ? context.Bays.Max(bay => DeckTreads.Gap(context.Layout, bay, stringer))
            : DeckWidth.EqualGap(DeckWidth.Filled(parameters), deck.Board.Width, DeckWidth.BoardCount(parameters));
        var widest = deck.Stringer is null ? Math.Max(between, deck.ButtGap) : between;
        var words = context.People();
        var (sphere, guards) = Limits.Opening(parameters.Use, 0);
        if (GuardOpenings.Status(widest, sphere) == CheckStatus.Fail)
        {
            return new CheckResult(
                Declared.Id, Declared.Title, CheckStatus.Fail, widest, sphere, "m", GuardOpenings.Ratio(widest, sphere), $"{guards}, of guards; taken for the floor",
                $"{words.Length(widest)} between {(deck.Stringer is null ? "boards" : "treads")}; no sphere of {words.Length(sphere)} may fall through");
        }

        var (limit, source) = Limits.FloorOpening;
        return Outcome.AtMost(
            Declared, widest, limit, "m", source,
            $"{(deck.Stringer is null ? "boards" : "treads")} {words.Length(between)} apart, ends {words.Length(deck.ButtGap)} apart; at most {words.Length(limit)}",
            CheckStatus.Warn);
    }
}
