using System.Collections.Immutable;

namespace BridgeForm.Checks.Timber;

/// <summary>Bending of boards, treads and stringers.</summary>
internal static class DeckBending
{
    /// <summary>One for each kind and load.</summary>
    public static ImmutableArray<DeclaredCheck> Declared { get; } =
    [
        .. DeckKinds.All.SelectMany(kind => DeckKinds.Loads.Select(load => new DeclaredCheck(
            $"{kind}-bending-{load.Name}",
            $"Bending of a {kind}, {load.Title}",
            $"fb = M / S of a simple beam between its bearings (the chord between frames; a tread from stringer to stringer) under dead load and {load.Words}, against Fb' of the NDS. Repetitive factor 1.0: gapped boards share no load. Treads are in one piece over all stringers: a stringer carries the largest reaction of a continuous beam (of three stringers the middle one 1.25 × load × distance).",
            "NDS 3.3 (ASD); NDS Supplement; factors named in the result",
            [CheckStatus.Pass, CheckStatus.Fail, CheckStatus.Engineer]))),
    ];

    /// <summary>Of the deck's members.</summary>
    public static IEnumerable<CheckResult> Of(CheckContext context) =>
        DeckSpan.Of(context).SelectMany(beam => Of(context, beam));

    /// <summary>Of one member.</summary>
    public static IEnumerable<CheckResult> Of(CheckContext context, DeckSpan beam)
    {
        var words = context.People();
        var values = LumberValues.Find(context.Parameters, beam.Stock, beam.Section);
        foreach (var load in DeckLoad.Of(context, beam))
        {
            var span = beam.Span.Length;
            var dead = beam.Dead * span * span / 8;
            var worst = Governing.Of(dead, load.Moment.Value, load.Duration);
            var stress = worst.Effect / beam.Bends.Modulus;
            yield return WoodCheck.Stress(
                Declared.Single(d => DeckKinds.IsFor(d, beam.Kind, "bending", load.Name)),
                words,
                stress,
                beam.Bending(values, worst.Duration),
                $"{beam.Section.Name}, L = {words.Length(span)} ({beam.Span.Where}): M = {words.Moment(dead)} dead + {words.Moment(load.Moment.Value)} "
                + $"({load.Moment.How}); fb = {words.Moment(worst.Effect)} / {words.Modulus(beam.Bends.Modulus)} = {words.Stress(stress)}",
                LumberValues.Missing(context.Parameters, beam.Stock, beam.Section));
        }
    }
}
