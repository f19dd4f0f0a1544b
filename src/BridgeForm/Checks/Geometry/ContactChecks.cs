using System.Collections.Immutable;
using BridgeForm.Contacts;
using BridgeForm.Frames;

namespace BridgeForm.Checks;

/// <summary>Faults of the model itself: parts that press into each other, that hang in the air, ropes in the wood.</summary>
internal static class ContactChecks
{
    private const int Named = 3;
    private const string Source = "BridgeForm's own rule (docs/bridge.md): seating tolerance 1.5 mm";

    /// <summary>All three.</summary>
    public static ImmutableArray<DeclaredCheck> Declared { get; } =
    [
        Declare("parts-overlap", "Parts pressing into each other", "Deepest overlap of two parts that come near each other, as laid out, against the seating tolerance."),
        Declare("parts-bear", "Parts resting on what carries them", "Widest gap between a part and what carries it, a base on its ropes included, against the seating tolerance."),
        Declare("rope-in-channels", "Ropes touching wood nowhere but in channels", "Deepest a rope enters wood at a channel's mouth against the seating tolerance; no contact elsewhere."),
    ];

    /// <summary>Overlaps, bearings and ropes, over all pairs that come near each other.</summary>
    public static IEnumerable<CheckResult> Of(CheckContext context)
    {
        var found = context.Contacts;
        var words = context.People();
        yield return new CheckResult(
            Declared[0].Id, Declared[0].Title, Status(found.OverlapCount), found.DeepestOverlap,
            Seating.Tolerance, "m", found.DeepestOverlap / Seating.Tolerance, Source,
            $"{found.Pairs} near pairs compared; deepest {words.Length(found.DeepestOverlap)}"
            + List(words, found.Overlaps, found.OverlapCount, "in"));
        yield return new CheckResult(
            Declared[1].Id, Declared[1].Title, Status(found.GapCount), found.WidestGap,
            Seating.Tolerance, "m", found.WidestGap / Seating.Tolerance, Source,
            (found.Gaps.Any(g => !double.IsFinite(g.Amount)) ? "some rest on nothing" : $"widest gap {words.Length(found.WidestGap)}") + List(words, found.Gaps, found.GapCount, "off")
            + (found.Gaps.Any(g => g.First.Contains("/cap-", StringComparison.Ordinal))
                ? "; a cap lifted by its steeper neighbour lies down on a tapered shim, or on thinner posts"
                : ""));
        var depth = Math.Max(0, found.DeepestRope);
        yield return new CheckResult(
            Declared[2].Id, Declared[2].Title, Status(found.RopeContactCount), depth,
            Seating.Tolerance, "m", depth / Seating.Tolerance, Source,
            $"deepest in a channel's mouth {words.Length(depth)}" + List(words, found.RopeContacts, found.RopeContactCount, "in"));
    }

    private static DeclaredCheck Declare(string id, string title, string compares) =>
        new(id, title, compares, Source, [CheckStatus.Pass, CheckStatus.Fail]);

    private static CheckStatus Status(int faults) => faults == 0 ? CheckStatus.Pass : CheckStatus.Fail;

    private static string List(CheckWords words, IReadOnlyList<ContactFault> faults, int count, string how)
    {
        if (faults.Count == 0)
        {
            return "";
        }

        var named = faults.Take(Named).Select(f => double.IsFinite(f.Amount) ? $"{f.First} {words.Length(f.Amount)} {how} {f.Second}" : $"{f.First} nowhere near {f.Second}");
        return $"; {count} too many: " + string.Join(", ", named) + (count > Named ? ", …" : "");
    }
}
