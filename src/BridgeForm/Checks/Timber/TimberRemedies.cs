using System.Collections.Immutable;
using BridgeForm.Frames;
using BridgeForm.Materials;

namespace BridgeForm.Checks;

/// <summary>What would pass where boards or bases fail: the longest span they carry, the smallest base that passes.</summary>
internal static class TimberRemedies
{
    // Shorter spans than a hand's breadth are no bridge; finer steps than a millimetre no builder sets.
    private const double Shortest = 0.1;
    private const double Step = 0.001;

    // Two boards' ends and their gap need more than 1-1/2 in to lie and be screwed on. Common practice, no source.
    private const double ThinnestBase = 3;

    /// <summary>Empty when no check of boards and bases fails.</summary>
    public static ImmutableArray<Remedy> Of(CheckContext context, ImmutableArray<CheckResult> checks)
    {
        var failing = checks.Where(c => c.Status == CheckStatus.Fail).Select(c => c.Id).ToList();
        return
        [
            .. DeckSpan.Of(context)
                .Select(beam => (Beam: beam, Id: failing.Find(id => id.StartsWith(beam.Kind + "-", StringComparison.Ordinal))))
                .Where(b => b.Id is not null)
                .Select(b => Span(context, b.Beam, b.Id!)),
            .. failing.Where(id => id.StartsWith("base-", StringComparison.Ordinal)).Take(1).Select(id => Base(context, id)),
        ];
    }

    private static Remedy Span(CheckContext context, DeckSpan beam, string id)
    {
        var words = context.People();
        var longest = Remedies.Largest(
            span => DeckBending.Of(context, With(beam, span))
                .Concat(DeckShear.Of(context, With(beam, span)))
                .Concat(DeckDeflection.Of(context, With(beam, span)))
                .All(c => c.Status != CheckStatus.Fail),
            Shortest,
            beam.Span.Length,
            Step);
        // Rounded down to what a builder can set, so that the span that is told passes.
        var step = Remedies.Settable(context.Parameters.Units);
        longest = longest is { } exact ? Math.Floor(exact / step) * step : null;
        var way = string.Equals(beam.Kind, "tread", StringComparison.Ordinal) ? "more stringers (deck.stringer.count)" : "a shorter frames.spacing";
        return longest is { } span
            ? new Remedy(
                id,
                $"Preliminary: a {beam.Section.Name} {beam.Kind} carries {words.Length(span)} at most; it spans {words.Length(beam.Span.Length)} in {beam.Span.Where}. "
                + $"Set {way}, or take a stronger {beam.Kind}.",
                Length: span)
            : new Remedy(id, $"Preliminary: a {beam.Section.Name} {beam.Kind} passes at no useful span; take a stronger one.");
    }

    private static DeckSpan With(DeckSpan beam, double span) => beam with { Span = (span, beam.Span.Where) };

    /// <summary>Sticks of dimension lumber in which a base stands, least wood first; weights of the rest stay as they are.</summary>
    private static Remedy Base(CheckContext context, string id)
    {
        var passing = Lumber.Names
            .Select(name => SectionReader.Read(name).Section!)
            .Where(s => s.NominalThickness is >= ThinnestBase and <= 4 && s.Width > context.Parameters.Frames.Channel.Depth)
            .OrderBy(s => s.Width * s.Thickness)
            .FirstOrDefault(s => Passes(context, s));
        return passing is null
            ? new Remedy(id, "Preliminary: no base of dimension lumber standing on its narrow side passes; bring the ropes under or outside the braces' feet, or widen the frame's stance.")
            : new Remedy(id, $"Preliminary: a {passing.Name} base, standing on its narrow side, is the smallest that passes.");
    }

    private static bool Passes(CheckContext context, Section section)
    {
        var frames = context.Parameters.Frames;
        var parameters = context.Parameters with
        {
            Frames = frames with { Base = frames.Base with { Section = section, Flat = false } },
        };
        var trial = context with { Parameters = parameters, Layout = BridgeLayout.Of(parameters, context.Rope) };
        return BaseBending.Of(trial).Concat(BaseShear.Of(trial)).Concat(ChannelFaces.Of(trial)).All(c => c.Status == CheckStatus.Pass);
    }
}
