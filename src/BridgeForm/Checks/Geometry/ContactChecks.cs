using System.Collections.Immutable;
using BridgeForm.Contacts;
using BridgeForm.Quantities;
using BridgeForm.Roles;

namespace BridgeForm.Checks.Geometry;

/// <summary>Faults of the model itself: parts that press into each other, that hang in the air, ropes in the wood.</summary>
internal static class ContactChecks
{
    private const int Named = 3;
    private const string Source = "BridgeForm's own rule (docs/bridge.md): seating tolerance 1.5 mm";

    /// <summary>All three.</summary>
    public static ImmutableArray<DeclaredCheck> Declared { get; } =
    [
        Declare("parts-overlap", "Parts pressing into each other", "Deepest overlap of two parts that come near each other, as cut (each "
            + "mark's piece where it is drawn), against the seating tolerance."),
        Declare("parts-bear", "Parts resting on what carries them", "Widest gap between a part and what carries it, both as cut, a base on "
            + "its ropes included, against the seating tolerance."),
        Declare("rope-in-channels", "Ropes touching wood nowhere but in channels", "Deepest a rope enters wood, as cut, at a channel's "
            + "mouth against the seating tolerance; no contact elsewhere."),
    ];

    /// <summary>Overlaps, bearings and ropes, over all pairs that come near each other.</summary>
    public static IEnumerable<CheckResult> Check(CheckContext context)
    {
        var found = context.Contacts;
        var words = context.Words();
        yield return Check(
            Declared[0], found.OverlapCount, found.DeepestOverlap, found.Pressed,
            $"{found.Pairs} near pairs compared; deepest {words.Length(found.DeepestOverlap)}, at most {words.Length(Tolerances.Seating)}"
            + List(words, found.Overlaps, found.OverlapCount, "in"));
        yield return Check(
            Declared[1], found.GapCount, found.WidestGap, found.Gaps.FirstOrDefault() ?? found.Clear,
            (found.Gaps.Any(g => !double.IsFinite(g.Amount)) ? "some rest on nothing" : $"widest gap {words.Length(found.WidestGap)}, at "
                + $"most {words.Length(Tolerances.Seating)}")
                + List(words, found.Gaps, found.GapCount, "off")
            + (found.Gaps.Any(g => PartId.Read(g.First) is { Role: Role.Cap })
                ? "; a cap lifted by its steeper neighbor lies down on a cap shim (guard.shims: true), or on thinner posts"
                : ""));
        var depth = Math.Max(0, found.DeepestRope);
        var ropes = Check(
            Declared[2], found.RopeContactCount, depth, found.RopeContacts.FirstOrDefault() ?? found.RopeIn,
            $"the empty bridge: deepest in a channel's mouth {words.Length(depth)}, at most {words.Length(Tolerances.Seating)}; where "
                + "people make the ropes turn further over a base (joint-room) they press deeper into its edges: ease them"
                + List(words, found.RopeContacts, found.RopeContactCount, "in"));
        yield return ropes.Status == CheckStatus.Fail && ropes.Ratio <= 1
            ? ropes with
            {
                Demand = found.RopeContacts[0].Amount,
                Capacity = null,
                Ratio = null,
                Detail = ropes.Detail + "; outside the channels no depth is allowed",
            }
            : ropes;
    }

    // What holds lies within the tolerance or a few roundings above it, which the sweep lets pass.
    private static CheckResult Check(DeclaredCheck check, int faults, double amount, ContactFault? worst, string detail)
    {
        var demand = faults == 0 ? Math.Min(amount, Tolerances.Seating) : amount;
        return new CheckResult(
            check.Id, check.Title, faults == 0 ? CheckStatus.Pass : CheckStatus.Fail, demand, Tolerances.Seating, "m",
            demand / Tolerances.Seating, Source, detail).On(worst is null ? [] : [worst.First, worst.Second]);
    }

    private static DeclaredCheck Declare(string id, string title, string compares) =>
        new(id, title, compares, Source, [CheckStatus.Pass, CheckStatus.Fail]);

    private static string List(CheckWords words, IReadOnlyList<ContactFault> faults, int count, string how)
    {
        if (faults.Count == 0)
        {
            return "";
        }

        var named = faults.Take(Named).Select(
            f => double.IsFinite(f.Amount) ? $"{f.First} {words.Length(f.Amount)} {how} {f.Second}" : $"{f.First} nowhere near {f.Second}");
        return $"; {count} too many: " + string.Join(", ", named) + (count > Named ? ", …" : "");
    }
}
