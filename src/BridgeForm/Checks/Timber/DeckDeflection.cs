using System.Collections.Immutable;

namespace BridgeForm.Checks.Timber;

/// <summary>How far boards, treads and stringers bend down under the load alone.</summary>
internal static class DeckDeflection
{
    private const double Share = 360;

    private const string AreaSource = "IRC Table R301.7: floors at most L/360 under live load";
    private const string PointSource =
        "IRC Table R301.7: floors at most L/360; no code asks it of a concentrated load: a figure to compare with";

    /// <summary>Under area load a rule, under the point load a figure to compare with.</summary>
    public static ImmutableArray<DeclaredCheck> Declared { get; } =
    [
        .. DeckKinds.All.SelectMany(kind => (DeclaredCheck[])
        [
            new(
                $"{kind}-deflection-area",
                $"Bending down of a {kind}, area load",
                "5·w·L⁴ / (384·E'·I) of a simple beam under the heaviest area load (live, snow, or three quarters of both) alone, against L/360.",
                AreaSource,
                [CheckStatus.Pass, CheckStatus.Fail, CheckStatus.Engineer]),
            new(
                $"{kind}-deflection-point",
                $"Bending down of a {kind}, point load",
                "P·L³ / (48·E'·I) of a simple beam, the larger of the point load over its patch and on one member, against L/360.",
                PointSource,
                [CheckStatus.Pass, CheckStatus.Warn, CheckStatus.Engineer]),
        ]),
    ];

    /// <summary>Of the deck's members.</summary>
    public static IEnumerable<CheckResult> Of(CheckContext context) =>
        DeckSpan.Of(context).SelectMany(beam => Of(context, beam));

    /// <summary>Of one member.</summary>
    public static IEnumerable<CheckResult> Of(CheckContext context, DeckSpan beam)
    {
        var loads = DeckLoad.Of(context, beam);
        yield return Check(context, beam, loads[0], "area", AreaSource, CheckStatus.Fail);
        yield return Check(context, beam, loads[1..].MaxBy(l => l.Sink.Value(1))!, "point", PointSource, CheckStatus.Warn);
    }

    private static CheckResult Check(
        CheckContext context, DeckSpan beam, DeckLoad load, string name, string source, CheckStatus otherwise)
    {
        var declared = Declared.Single(d => DeckKinds.IsFor(d, beam.Kind, "deflection", name));
        if (LumberValues.Find(context.Parameters, beam.Stock, beam.Section)?.Modulus() is not { } modulus)
        {
            return LumberValues.Missing(context.Parameters, beam.Stock, beam.Section).Result(declared, 0, "m", source, "");
        }

        var words = context.People();
        double span = beam.Span.Length, inertia = beam.Bends.Inertia;
        var sink = load.Sink.Value(modulus.Value * inertia);
        return Outcome.AtMost(
            declared,
            sink,
            span / Share,
            "m",
            $"{source}; {modulus.Sources}",
            $"{beam.Section.Name}, L = {words.Length(span)} ({beam.Span.Where}), I = {words.Inertia(inertia)}, E' = {words.Elastic(modulus.Reference)}"
            + string.Concat(modulus.Factors.Select(f => $" × {f.Symbol} {TimberWords.Ratio(f.Value)}"))
            + $" = {words.Elastic(modulus.Value)}{modulus.Note}: {load.Sink.How} = {words.Length(sink)}; L/360 = {words.Length(span / Share)}",
            otherwise);
    }
}
