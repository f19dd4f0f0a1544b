using BridgeForm.Project;

namespace BridgeForm.Checks;

/// <summary>Posts' inner faces at the deck's surface: between them acts the area load.</summary>
internal static class DeckEdge
{
    /// <summary>From the middle line, metres.</summary>
    public static double Of(BridgeParameters parameters) =>
        parameters.Frames.Post.Foot + (parameters.Deck.Thickness * Math.Tan(parameters.Frames.Post.Lean));
}
