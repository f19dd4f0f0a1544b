using System.Collections.Immutable;
using BridgeForm.Checks;
using BridgeForm.Checks.Timber;
using BridgeForm.Contacts;
using BridgeForm.Frames;
using BridgeForm.Materials;
using BridgeForm.Project;
using BridgeForm.Quantities;
using BridgeForm.Roles;

namespace BridgeForm.Trials;

/// <summary>What would pass where a deck lies too short, a base ends too soon or a rail is too thin: each tried by its own check.</summary>
internal static class BearingRemedies
{
    // Lumber that lies flat as a rail: 1 in, 5/4 and 2 in, the thinnest that passes.
    private static readonly ImmutableArray<string> s_thicknesses = ["5/4", "2", "3"];

    private const string Bear = "parts-bear";

    /// <summary>Empty when none of these checks fails.</summary>
    public static IEnumerable<Remedy> Find(CheckContext context, ImmutableArray<CheckResult> checks)
    {
        foreach (var check in checks.Where(c => c.Status == CheckStatus.Fail))
        {
            if (DeckBearing.Is(check.Id))
            {
                yield return check.Unit is "m" ? Along(context, check) : new Remedy(
                    check.Id,
                    "Preliminary: harder wood, or more of it to lie on: a base that measures more along the bridge, a thicker stringer.");
            }
            else if (string.Equals(check.Id, EndDistance.Declared.Id, StringComparison.Ordinal) && check.Capacity is { } needed)
            {
                var length = Up(context, context.Parameters.Frames.Base.Length + (2 * (needed - check.Demand)));
                yield return new Remedy(
                    check.Id, $"Preliminary: with frames.base.length {Text(context, length)} it passes.", Length: length);
            }
            else if (string.Equals(check.Id, Bear, StringComparison.Ordinal) && LiesOnShims(context))
            {
                yield return new Remedy(
                    check.Id, "Preliminary: with guard.shims: true every cap lies down, on cap shims on the heads it stands clear of.")
                {
                    Write = "guard.shims true",
                };
            }
            else if (string.Equals(check.Id, RailSpan.Declared.Id, StringComparison.Ordinal))
            {
                yield return Rail(context, check.Id);
            }
        }
    }

    // Caps that stand clear, and none that still does on this very shape with shims.
    private static bool LiesOnShims(CheckContext context)
    {
        if (context.Parameters.Guard.Shims || !context.Contacts.Gaps.Any(IsCap))
        {
            return false;
        }

        var layout = context.Layout.WithShims();
        return !ContactSweep.Sweep(layout, [.. Members.Lay(layout).SelectMany(g => g.Members).Select(SweptPart.Of)], [], context.Token)
            .Gaps.Any(IsCap);
    }

    private static bool IsCap(ContactFault gap) => PartId.Read(gap.First) is { Role: Role.Cap };

    private static Remedy Along(CheckContext context, CheckResult check)
    {
        if (check.Id.StartsWith(RoleTable.Of(Role.Tread).Name, StringComparison.Ordinal))
        {
            var thick = Up(context, check.Capacity!.Value);
            return new Remedy(
                check.Id, $"Preliminary: on stringers {Text(context, thick)} thick (deck.stringer.section) it passes.", Length: thick);
        }

        var along = Up(context, (2 * check.Capacity!.Value) + context.Parameters.Deck.ButtGap);
        return new Remedy(
            check.Id,
            $"Preliminary: on bases that measure {Text(context, along)} along the bridge (frames.base.section) it passes. A base "
                + $"{new CheckWords(context.Parameters.Units).InInches(Notches.ThickMember)} thick and more may have no channel "
                + "in a side that is ever pulled: look at base-channel-notch again.",
            Length: along);
    }

    private static Remedy Rail(CheckContext context, string id)
    {
        var guard = context.Parameters.Guard;
        var passing = Thicker(context, guard)
            .FirstOrDefault(s => RailSpan.Check(context with { Parameters = context.Parameters with { Guard = guard with { Rail = s } } })
                .All(c => c.Status == CheckStatus.Pass));
        return passing is null
            ? new Remedy(id, "Preliminary: no thicker rail of this width passes; bring the posts closer together, or give values of lumber "
                + "that is stamped for stress.")
            : new Remedy(id, $"Preliminary: rails of {passing.Name} in the same wood pass between posts as far apart as now; "
                + "their weight and the gaps between them change: check again.");
    }

    /// <summary>Rails of the same width, thinnest first; in a metric file those that their stock sells.</summary>
    private static IEnumerable<Section> Thicker(CheckContext context, GuardParameters guard) =>
        context.Parameters.Units == UnitSystem.Metric
            ? context.Parameters.StockNamed(guard.RailStock).Sections
                .Where(s => Math.Abs(s.Width - guard.Rail.Width) <= Tolerances.DressedSize && s.Thickness > guard.Rail.Thickness)
                .OrderBy(s => s.Thickness)
            : s_thicknesses
                .Select(t => SectionReader.Read(FormattableString.Invariant($"{t}x{NominalSize.Of(guard.Rail).Width}")).Section)
                .OfType<Section>();

    /// <summary>Up to a sixteenth of an inch, or to a millimetre.</summary>
    private static double Up(CheckContext context, double length)
    {
        var unit = Rounding.Step(context.Parameters.Units);
        return Math.Ceiling((length / unit) - RoundOff) * unit;
    }

    // A length that is a whole number of steps by two ways.
    private const double RoundOff = 1e-9;

    private static string Text(CheckContext context, double length) => new QuantityText(context.Parameters.Units).Size(length);
}
