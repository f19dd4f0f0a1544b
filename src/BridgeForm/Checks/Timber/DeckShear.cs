using System.Collections.Immutable;

namespace BridgeForm.Checks.Timber;

/// <summary>Shear along the grain of boards, treads and stringers.</summary>
internal static class DeckShear
{
    /// <summary>One for each kind.</summary>
    public static ImmutableArray<DeclaredCheck> Declared { get; } =
    [
        .. DeckKinds.All.Select(kind => new DeclaredCheck(
            $"{kind}-shear",
            $"Shear in a {kind}",
            "fv = 3·V / (2·b·d) beside a bearing (a tread over three stringers and more: 5/8·w·L beside the inner one), the largest of area load, point load over its patch and point load on one member, each with dead load, against Fv'. No load near a bearing is left out.",
            "NDS 3.4 (ASD); NDS Supplement; factors named in the result",
            [CheckStatus.Pass, CheckStatus.Fail, CheckStatus.Engineer])),
    ];

    /// <summary>Of the deck's members.</summary>
    public static IEnumerable<CheckResult> Of(CheckContext context) =>
        DeckSpan.Of(context).SelectMany(beam => Of(context, beam));

    /// <summary>Of one member.</summary>
    public static IEnumerable<CheckResult> Of(CheckContext context, DeckSpan beam)
    {
        var words = context.People();
        var dead = beam.Dead * beam.Span.Length * beam.EvenShear;
        var (load, worst) = DeckLoad.Of(context, beam)
            .Select(l => (Load: l, Worst: Governing.Of(dead, l.Shear.Value, l.Duration)))
            .MaxBy(l => l.Worst.Effect / l.Worst.Duration.Factor);
        var stress = 1.5 * worst.Effect / beam.Bends.Area;
        yield return WoodCheck.Stress(
            Declared.Single(d => string.Equals(d.Id, beam.Kind + "-shear", StringComparison.Ordinal)),
            words,
            stress,
            LumberValues.Find(context.Parameters, beam.Stock, beam.Section)?.Shear(worst.Duration),
            $"{beam.Section.Name}, L = {words.Length(beam.Span.Length)} ({beam.Span.Where}): V = {words.Pounds(dead)} dead + {words.Pounds(load.Shear.Value)} "
            + $"({load.Shear.How}); fv = 3 × {words.Pounds(worst.Effect)} / (2 × {words.Area(beam.Bends.Area)}) = {words.Stress(stress)}",
            LumberValues.Missing(context.Parameters, beam.Stock, beam.Section));
    }
}
