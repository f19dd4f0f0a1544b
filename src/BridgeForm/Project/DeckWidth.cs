using BridgeForm.Quantities;

namespace BridgeForm.Project;

/// <summary>How the deck fills the width between the posts' feet. Metres.</summary>
public static class DeckWidth
{
    /// <summary>Width the boards, stringers or treads fill: between the posts' feet less the side gaps.</summary>
    public static double Filled(BridgeParameters parameters) =>
        2 * (parameters.Frames.Post.Foot - parameters.Deck.SideGap);

    /// <summary>Clear width between the posts' inner faces at the deck's surface, metres: what the area load acts on.</summary>
    public static double BetweenPosts(BridgeParameters parameters) =>
        2 * (parameters.Frames.Post.Foot + (parameters.Deck.Thickness * Elementary.Tan(parameters.Frames.Post.Lean)));

    /// <summary>Number of boards of a deck along the bridge: as given, or the largest that keeps the least gap.</summary>
    public static int BoardCount(BridgeParameters parameters)
    {
        var deck = parameters.Deck;
        return deck.Count ?? LargestCount(Filled(parameters), deck.Board.Width, deck.Gap);
    }

    /// <summary>Equal gap between neighbours; 0 for one part alone.</summary>
    public static double EqualGap(double width, double part, int count) =>
        count > 1 ? (width - (count * part)) / (count - 1) : 0;

    /// <summary>Largest number of parts, at least 0, whose equal gaps are not below the least one.</summary>
    public static int LargestCount(double width, double part, double gap) =>
        Math.Max(0, (int)Math.Floor((width + gap + Tolerances.RoundOff) / (part + gap)));
}
