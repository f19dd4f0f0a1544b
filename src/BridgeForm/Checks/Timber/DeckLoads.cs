namespace BridgeForm.Checks.Timber;

/// <summary>Moment, shear and sinking of a simple beam under one of the deck's loads, with the formulas in words.</summary>
/// <param name="Name">Part of a check's id.</param>
/// <param name="Moment">N·m, and how.</param>
/// <param name="Shear">N, and how.</param>
/// <param name="Sink">Metres for a stiffness E·I, the load alone without dead weight, and how.</param>
/// <param name="Duration">CD of the load.</param>
internal sealed record DeckLoad(
    string Name,
    (double Value, string How) Moment,
    (double Value, string How) Shear,
    (Func<double, double> Value, string How) Sink,
    LoadDuration Duration)
{
    /// <summary>Area load; point load spread over its patch; point load all on one member.</summary>
    public static DeckLoad[] Of(CheckContext context, DeckSpan beam) =>
    [
        Area(context, beam),
        Spread(context, beam),
        Alone(context, beam),
    ];

    private static DeckLoad Area(CheckContext context, DeckSpan beam)
    {
        var words = context.People();
        var loads = context.Parameters.Loads;
        var area = AreaLoad.Strongest(loads, beam.Dead / beam.Tributary);
        var heaviest = AreaLoad.Heaviest(loads);
        double span = beam.Span.Length, load = area.Pressure * beam.Tributary, most = heaviest.Pressure * beam.Tributary;
        var text = Text(area);
        return new DeckLoad(
            "area",
            (load * span * span / 8, $"w·L²/8 with {text}"),
            (load * span * beam.EvenShear, $"{TimberWords.Ratio(beam.EvenShear)}·w·L with {text}"),
            (stiffness => 5 * most * Math.Pow(span, 4) / (384 * stiffness), $"5·w·L⁴/(384·E'·I) with {Text(heaviest)}"),
            area.Duration);

        string Text(AreaLoad a) =>
            $"{a.Name} {words.Pressure(a.Pressure)} on {words.Length(beam.Tributary)} = {words.PerLength(a.Pressure * beam.Tributary)}";
    }

    private static DeckLoad Spread(CheckContext context, DeckSpan beam)
    {
        var words = context.People();
        var point = context.Parameters.Loads;
        var span = beam.Span.Length;
        var length = Math.Min(point.PointPatch, span);
        var load = point.PointForce * beam.Patch.Share * length / point.PointPatch;
        var text = $"P = {words.Pounds(point.PointForce)} × {TimberWords.Ratio(beam.Patch.Share)} ({beam.Patch.Why}) on a = {words.Length(length)} of the span"
            + (length < point.PointPatch ? $", a / patch of it: {words.Pounds(load)}" : $": {words.Pounds(load)}");
        return new DeckLoad(
            "patch",
            (load / 4 * (span - (length / 2)), $"P/4·(L − a/2), {text}"),
            (load * (1 - (length / (2 * span))), $"P·(1 − a/(2L)) beside a bearing, {text}"),
            (stiffness => load * span * span * span / (48 * stiffness), $"at most P·L³/(48·E'·I), {text}"),
            LoadDuration.Live);
    }

    private static DeckLoad Alone(CheckContext context, DeckSpan beam)
    {
        var words = context.People();
        double span = beam.Span.Length, load = context.Parameters.Loads.PointForce;
        var text = $"P = {words.Pounds(load)} all on one {beam.Kind}";
        return new DeckLoad(
            "point",
            (load * span / 4, $"P·L/4, {text} in the middle"),
            (load, $"P, {text} beside a bearing"),
            (stiffness => load * span * span * span / (48 * stiffness), $"P·L³/(48·E'·I), {text}"),
            LoadDuration.Live);
    }
}
