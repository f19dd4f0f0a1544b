using BridgeForm.Frames;
using BridgeForm.Quantities;
using BridgeForm.Roles;

namespace BridgeForm.Checks.Codes;

/// <summary>Height of the guard: vertical, from the deck's surface at its middle line to the cap's top, where it is least.</summary>
internal static class GuardHeight
{
    /// <summary>The check.</summary>
    public static DeclaredCheck Declared { get; } = new(
        "guard-height",
        "Guard height above the deck",
        "Vertical height from the deck's surface at its middle line to the cap's top, where it is least, against 36 in private, "
            + "42 in public.",
        "IRC 2018 R312.1.2; IBC 1015.3",
        [CheckStatus.Pass, CheckStatus.Fail]);

    /// <summary>The least height of all bays against the code's.</summary>
    public static CheckResult Check(CheckContext context)
    {
        var least = GuardPlace.Least(context.Layout);
        var (needed, source) = Limits.GuardHeight(context.Parameters.Use);
        var words = context.Words();
        return Outcome.AtLeast(
            Declared, least.Height, needed, "m", source,
            $"least in {least.Frame}: {words.Length(least.Height)}, needed {words.InInches(needed)}")
            .On(context.In(least.Frame, Role.Post));
    }
}

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
    public static GuardPlace Least(BridgeLayout layout) =>
        Ties.FirstLeast(TopLine.Cap(layout).Above(TopLine.Deck(layout), layout), p => p.Height)!;
}
