using BridgeForm.Checks;
using BridgeForm.Loads;

namespace BridgeForm.Proposals;

/// <summary>
/// What no check fails for, but other designs are without: a search that looks for little weight would drive every design to it.
/// </summary>
internal static class Avoided
{
    /// <summary>Id of a push on the guard that turns the bridge over with the weight of who pushes.</summary>
    public const string Push = "push-with-weight";

    // Checks that are a look, and above which ratio they count. Wood pressed to half as much again as its value by a rope gives way
    // a little and is a look in many a sound bridge. Own figures.
    private static readonly (string Id, double Above)[] s_looks =
    [
        ("board-bearing-length", 0), ("deck-gaps", 0), ("keeper-strap-reach", 0), ("handrail-height", 0), ("clear-width", 0),
        ("section-on-sale", 0), ("rope-on-sale", 0), ("load-tips", 1), ("rope-bearing", 1.5),
        ("guard-post-along", 1), ("rope-setting", 1),
    ];

    /// <summary>What a bridge leaves to see to.</summary>
    public static IEnumerable<Shortfall> Find(BridgeModel model)
    {
        foreach (var check in model.Checks.Where(c => c.Status == CheckStatus.Warn))
        {
            if (Array.Exists(s_looks, l => string.Equals(l.Id, check.Id, StringComparison.Ordinal) && !(check.Ratio <= l.Above)))
            {
                yield return new Shortfall(check.Id, check.Ratio, check.Title, IsLook: true);
            }
        }

        if (model.Wind.PushedByWeight is { State: { Stands: false } state })
        {
            yield return new Shortfall(
                Push, state.StandsTo is > 0 and { } least ? Math.Max(1, GuardLean.Point / least) : null,
                "who pushes the guard turns the bridge over, with his own weight (guard-line-load)", IsLook: true);
        }
    }
}
