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
            $"fb = M / S of a simple beam between its bearings (the chord between frames; a tread from stringer to stringer) under dead "
                + $"load and {load.Words}, against Fb' of the NDS. Repetitive factor 1.0: gapped boards share no load. Treads are in one "
                + "piece over all stringers: a stringer carries the largest reaction of a continuous beam (of three stringers the middle "
                + "one 1.25 × load × distance).",
            "NDS 3.3 (ASD); NDS Supplement; factors named in the result",
            [CheckStatus.Pass, CheckStatus.Fail, CheckStatus.Engineer]))),
    ];

    /// <summary>Of the deck's members.</summary>
    public static IEnumerable<CheckResult> Check(CheckContext context) =>
        DeckSpan.List(context).SelectMany(beam => Check(context, beam).Select(c => beam.At(context, c)));

    /// <summary>Of one member.</summary>
    public static IEnumerable<CheckResult> Check(CheckContext context, DeckSpan beam)
    {
        var words = context.Words();
        var values = LumberValues.Find(context.Parameters, beam.Stock, beam.Section);
        foreach (var load in DeckLoad.List(context, beam))
        {
            var span = beam.Span.Length;
            var dead = beam.Dead * span * span / 8;
            var worst = Governing.Choose(dead, load.Moment.Value, load.Duration, values);
            var stress = worst.Effect / beam.Bends.Modulus;
            yield return WoodCheck.Stress(
                Declared.Single(d => DeckKinds.IsFor(d, beam.Kind, "bending", load.Name)),
                words,
                stress,
                beam.Bending(values, worst.Duration),
                $"{beam.Section.Name}, L = {words.Length(span)} ({beam.Span.Where}): M = {words.Moment(dead)} dead + "
                    + $"{words.Moment(load.Moment.Value)} "
                + $"({load.Moment.How}); fb = {words.Moment(worst.Effect)} / {words.Modulus(beam.Bends.Modulus)} = {words.Stress(stress)}",
                LumberValues.Missing(context.Parameters, beam.Stock, beam.Section));
        }
    }
}

/// <summary>Shear along the grain of boards, treads and stringers.</summary>
internal static class DeckShear
{
    /// <summary>One for each kind.</summary>
    public static ImmutableArray<DeclaredCheck> Declared { get; } =
    [
        .. DeckKinds.All.Select(kind => new DeclaredCheck(
            $"{kind}-shear",
            $"Shear in a {kind}",
            "fv = 3·V / (2·b·d) beside a bearing (a tread over three stringers and more: 5/8·w·L beside the inner one), the largest of "
                + "area load, point load over its patch and point load on one member, each with dead load, against Fv'. No load near a "
                + "bearing is left out.",
            "NDS 3.4 (ASD); NDS Supplement; factors named in the result",
            [CheckStatus.Pass, CheckStatus.Fail, CheckStatus.Engineer])),
    ];

    /// <summary>Of the deck's members.</summary>
    public static IEnumerable<CheckResult> Check(CheckContext context) =>
        DeckSpan.List(context).SelectMany(beam => Check(context, beam).Select(c => beam.At(context, c)));

    /// <summary>Of one member.</summary>
    public static IEnumerable<CheckResult> Check(CheckContext context, DeckSpan beam)
    {
        var words = context.Words();
        var values = LumberValues.Find(context.Parameters, beam.Stock, beam.Section);
        var dead = beam.Dead * beam.Span.Length * beam.EvenShear;
        var (load, worst) = DeckLoad.List(context, beam)
            .Select(l => (Load: l, Worst: Governing.Choose(dead, l.Shear.Value, l.Duration, values)))
            .MaxBy(l => l.Worst.Effect / l.Worst.Duration.Of(values));
        var stress = 1.5 * worst.Effect / beam.Bends.Area;
        yield return WoodCheck.Stress(
            Declared.Single(d => string.Equals(d.Id, beam.Kind + "-shear", StringComparison.Ordinal)),
            words,
            stress,
            values?.Shear(worst.Duration),
            $"{beam.Section.Name}, L = {words.Length(beam.Span.Length)} ({beam.Span.Where}): V = {words.Pounds(dead)} dead + "
                + $"{words.Pounds(load.Shear.Value)} "
            + $"({load.Shear.How}); fv = 3 × {words.Pounds(worst.Effect)} / (2 × {words.Area(beam.Bends.Area)}) = {words.Stress(stress)}",
            LumberValues.Missing(context.Parameters, beam.Stock, beam.Section));
    }
}

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
                "5·w·L⁴ / (384·E'·I) of a simple beam under the heaviest area load (live, snow, or three quarters of both) alone, "
                    + "against L/360.",
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
    public static IEnumerable<CheckResult> Check(CheckContext context) =>
        DeckSpan.List(context).SelectMany(beam => Check(context, beam).Select(c => beam.At(context, c)));

    /// <summary>Of one member.</summary>
    public static IEnumerable<CheckResult> Check(CheckContext context, DeckSpan beam)
    {
        var loads = DeckLoad.List(context, beam);
        yield return Check(context, beam, loads[0], "area", AreaSource, CheckStatus.Fail);
        yield return Check(context, beam, loads[1..].MaxBy(l => l.Deflection.Value(1))!, "point", PointSource, CheckStatus.Warn);
    }

    private static CheckResult Check(
        CheckContext context, DeckSpan beam, DeckLoad load, string name, string source, CheckStatus otherwise)
    {
        var declared = Declared.Single(d => DeckKinds.IsFor(d, beam.Kind, "deflection", name));
        if (LumberValues.Find(context.Parameters, beam.Stock, beam.Section)?.Modulus() is not { } modulus)
        {
            return LumberValues.Missing(context.Parameters, beam.Stock, beam.Section).Result(declared, 0, "m", source, "");
        }

        var words = context.Words();
        double span = beam.Span.Length, inertia = beam.Bends.Inertia;
        var deflection = load.Deflection.Value(modulus.Value * inertia);
        return Outcome.AtMost(
            declared,
            deflection,
            span / Share,
            "m",
            $"{source}; {modulus.Sources}",
            $"{beam.Section.Name}, L = {words.Length(span)} ({beam.Span.Where}), I = {words.Inertia(inertia)}, E' = "
                + $"{words.Elastic(modulus.Reference)}"
            + string.Concat(modulus.Factors.Select(f => $" × {f.Symbol} {TimberWords.Ratio(f.Value)}"))
            + $" = {words.Elastic(modulus.Value)}{modulus.Note}: {load.Deflection.How} = {words.Length(deflection)}; L/360 = "
            + $"{words.Length(span / Share)}",
            otherwise);
    }
}
