using BridgeForm.Frames;

namespace BridgeForm.Checks.Codes;

/// <summary>
/// The guard's height, the one that check, page and drawings tell: vertical, from the deck's surface at its middle line to
/// the cap's top. World axes, metres.
/// </summary>
/// <param name="X">Where along the bridge.</param>
/// <param name="Deck">Level of the deck's surface.</param>
/// <param name="Cap">Level of the cap's top.</param>
/// <param name="Frame">The frame there.</param>
public sealed record GuardPlace(double X, double Deck, double Cap, string Frame)
{
    /// <summary>The height.</summary>
    public double Height => Cap - Deck;

    /// <summary>Where it is least.</summary>
    public static GuardPlace Least(BridgeLayout layout) => TopLine.Cap(layout).Above(TopLine.Deck(layout), layout).MinBy(p => p.Height)!;
}
