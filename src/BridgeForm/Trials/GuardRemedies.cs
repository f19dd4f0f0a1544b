using System.Collections.Immutable;
using BridgeForm.Checks;
using BridgeForm.Checks.Codes;
using BridgeForm.Frames;
using BridgeForm.Materials;
using BridgeForm.Project;
using BridgeForm.Quantities;

namespace BridgeForm.Trials;

/// <summary>
/// Parts that would make a check of deck or guard hold: grit or closer cleats, a handrail, more rails, newels. Each is laid on this very
/// shape and looked at by its own check; their weight is not in it.
/// </summary>
internal static class GuardRemedies
{
    // Beyond these no gap is left between rails: another guard is meant.
    private const int MoreRails = 8;

    /// <summary>Empty where none of these checks fails or is to be reviewed.</summary>
    public static IEnumerable<Remedy> Find(CheckContext context, ImmutableArray<CheckResult> checks) => checks
        .Where(c => c.Status is CheckStatus.Fail or CheckStatus.Warn)
        .Select(c => (Check: c, Tried: Trials(context.Parameters, c.Id)
            .FirstOrDefault(t => LayoutOf(context, t.Parameters) is { } layout
                && t.Check(context with { Parameters = t.Parameters, Layout = layout }).Status == CheckStatus.Pass)))
        .Where(c => c.Tried is not null)
        .Select(c => new Remedy(
            c.Check.Id, $"Preliminary: with {c.Tried!.Key}: {c.Tried.Value} it holds{c.Tried.More}; weights change with it: check again.")
        {
            Write = $"{c.Tried.Key} {c.Tried.Value}",
        });

    private static BridgeLayout? LayoutOf(CheckContext context, BridgeParameters parameters)
    {
        var layout = BridgeLayout.Lay(parameters, context.Rope);
        return LayoutFit.Check(layout, context.Token).IsEmpty ? layout : null;
    }

    private static IEnumerable<Tried> Trials(BridgeParameters p, string check) => check switch
    {
        "deck-grip" => Grip(p),
        "handrail-height" => Handrails(p),
        "guard-openings" => Rails(p),
        "guard-at-landing" => Newels(p),
        _ => [],
    };

    private static IEnumerable<Tried> Grip(BridgeParameters p)
    {
        if (p.Deck.Cleats is { } cleats)
        {
            var most = Rounding.Down(Limits.Cleats.Apart, Rounding.Step(p.Units));
            yield return new("deck.cleats.spacing", Size(p, most), EndSlope.Grip, p with
            {
                Deck = p.Deck with { Cleats = cleats with { Spacing = most } },
            });
        }

        yield return new("deck.grip", "grit", EndSlope.Grip, p with { Deck = p.Deck with { Grip = DeckGrip.Grit, Cleats = null } })
        {
            More = " for as long as it is kept up",
        };
    }

    // In the middle of what codes ask for.
    private static IEnumerable<Tried> Handrails(BridgeParameters p)
    {
        var (low, high, _) = Limits.Handrail(p.Use);
        var height = Rounding.Down((low + high) / 2, Rounding.Step(p.Units));
        var metric = p.Units == UnitSystem.Metric;
        var (diameter, gap) = metric
            ? (40 * Rounding.Millimetre, 45 * Rounding.Millimetre) : (1.5 * Units.MetresPerInch, 1.75 * Units.MetresPerInch);
        var handrail = p.Guard.Handrail ?? new HandrailParameters(
            RoundSection.Of(Size(p, diameter), diameter), IsRound: true, height, gap, p.Frames.Post.Stock);
        var head = (p.Frames.Post.Length * Elementary.Cos(p.Frames.Post.Lean)) - p.Deck.Thickness;
        if (height <= head)
        {
            yield return new("guard.handrail.height", Size(p, height), Handrail.Check, p with
            {
                Guard = p.Guard with { Handrail = handrail with { Height = height } },
            })
            { More = p.Guard.Handrail is null ? $", of {Size(p, diameter)} (guard.handrail.diameter)" : "" };
        }
    }

    private static IEnumerable<Tried> Rails(BridgeParameters p)
    {
        var guard = p.Guard;
        return guard.Pickets is null && guard.Net is null && guard.RailHeights.IsEmpty
            ? Enumerable.Range(guard.RailCount + 1, MoreRails).Select(n => new Tried(
                "guard.rails.count", NumberText.By("0", n), GuardOpenings.Check, p with { Guard = guard with { RailCount = n } }))
            : [];
    }

    private static IEnumerable<Tried> Newels(BridgeParameters p)
    {
        var step = p.Units == UnitSystem.Metric ? 5 * Rounding.Millimetre : Units.MetresPerInch / 4;
        var edge = ((p.Frames.Base.Along - p.Frames.Post.Section.Thickness) / 2)
            + Math.Max(p.Site.A.LandingGap ?? 0, p.Site.B.LandingGap ?? 0);
        var gap = Rounding.Up(Math.Max(edge, step), step);
        yield return new("guard.newels.gap", Size(p, gap), LandingOpenings.Check, p with
        {
            Guard = p.Guard with
            {
                Newels = (p.Guard.Newels ?? new NewelParameters(
                    p.Frames.Post.Section, gap, null, p.Frames.Post.Lean, NewelEnds.Both, p.Frames.Post.Stock)) with
                {
                    Gap = gap,
                    Lean = p.Frames.Post.Lean,
                },
            },
        })
        { More = ", newels leaning as the posts do (guard.newels.lean)" };
    }

    private static string Size(BridgeParameters p, double length) => new QuantityText(p.Units).Size(length);

    /// <summary>A change that is tried by a check.</summary>
    private sealed record Tried(string Key, string Value, Func<CheckContext, CheckResult> Check, BridgeParameters Parameters)
    {
        /// <summary>What more is to be said.</summary>
        public string More { get; init; } = "";
    }
}
