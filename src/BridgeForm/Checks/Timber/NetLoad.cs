using BridgeForm.Roles;

namespace BridgeForm.Checks.Timber;

/// <summary>Netting under the load on infill, by what its maker declares.</summary>
internal static class NetLoad
{
    /// <summary>The check.</summary>
    public static DeclaredCheck Declared { get; } = new(
        "net-load",
        "Netting pushed outward",
        "Only with guard.net: 50 lbf on one square foot against guard.net.capacity, what its maker declares for it as it is laced. A net "
            + "does not bend: it sags and pulls, and how far, how it pulls on cap and rail, its lacings and how it ages in the sun are not "
            + "looked at. The push at the guard's top is the cap's alone (cap-bending-level).",
        $"{RailSpan.Source}; the maker's figure as the file gives it",
        [CheckStatus.Pass, CheckStatus.Fail, CheckStatus.Engineer]);

    /// <summary>None without a net.</summary>
    public static IEnumerable<CheckResult> Check(CheckContext context)
    {
        if (context.Parameters.Guard.Net is not { } net)
        {
            yield break;
        }

        var words = context.Words();
        var push = $"{words.Pounds(RailSpan.Infill)} on one square foot";
        yield return net.Capacity is { } capacity
            ? Outcome.AtMost(
                Declared, RailSpan.Infill, capacity, "N", $"{RailSpan.Source}; capacity: {net.Source}",
                $"{push}; the net holds {words.Pounds(capacity)} ({net.Source})").On(context.InBay(1, Role.Cap))
            : Outcome.ForEngineer(
                Declared, RailSpan.Infill, "N", RailSpan.Source,
                $"{push}; what the net holds is not in the file: write guard.net.capacity and its source").On(context.InBay(1, Role.Cap));
    }
}
