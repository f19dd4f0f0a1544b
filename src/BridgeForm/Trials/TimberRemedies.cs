using System.Collections.Immutable;
using BridgeForm.Checks;
using BridgeForm.Checks.Geometry;
using BridgeForm.Checks.Timber;
using BridgeForm.Frames;
using BridgeForm.Materials;
using BridgeForm.Quantities;
using BridgeForm.Roles;

namespace BridgeForm.Trials;

/// <summary>What would pass where boards or bases fail: the longest span they carry, the smallest base that passes.</summary>
internal static class TimberRemedies
{
    // Shorter spans than a hand's breadth are no bridge; finer steps than a millimetre no builder sets.
    private const double Shortest = 0.1;
    private const double Step = 0.001;

    // More stringers than this lie closer than treads are wide.
    private const int MostStringers = 9;

    // Two boards' ends and their gap need more than 1-1/2 in to lie and be screwed on. Common practice, no source.
    private const double ThinnestBase = 3;

    // The same in millimetres: sections of 63 to 97 mm stand for 3 in and 4 in lumber.
    private const double ThinnestMetric = 0.06;

    // Thicker ones are posts.
    private const double ThickestBase = 4;
    private const double ThickestMetric = 0.1;

    /// <summary>Empty when no check of boards and bases fails.</summary>
    public static ImmutableArray<Remedy> Find(
        CheckContext context, ImmutableArray<CheckResult> checks, TrialShape shape, CancellationToken token = default)
    {
        var failing = checks.Where(c => c.Status == CheckStatus.Fail).Select(c => c.Id).ToList();
        return
        [
            .. DeckSpan.List(context)
                .Select(
                    beam => (
                        Beam: beam,
                        Id: failing.Find(id => id.StartsWith(beam.Kind + "-", StringComparison.Ordinal) && !DeckBearing.Is(id))))
                .Where(b => b.Id is not null)
                .Select(b => Span(context, b.Beam, b.Id!, shape, token)),
            .. Base(
                context,
                [
                    .. failing.Where(
                        id => (id.StartsWith("base-", StringComparison.Ordinal) || id.StartsWith("end-base-", StringComparison.Ordinal))
                            && !string.Equals(id, EndDistance.Declared.Id, StringComparison.Ordinal)),
                ]),
            .. BearingRemedies.Find(context, checks),
            .. GuardRemedies.Find(context, checks),
        ];
    }

    private static Remedy Span(CheckContext context, DeckSpan beam, string id, TrialShape shape, CancellationToken token)
    {
        var words = context.Words();
        var longest = Remedies.Largest(
            span => DeckBending.Check(context, With(beam, span))
                .Concat(DeckShear.Check(context, With(beam, span)))
                .Concat(DeckDeflection.Check(context, With(beam, span)))
                .All(c => c.Status != CheckStatus.Fail),
            Shortest,
            beam.Span.Length,
            Step);
        if (longest is not { } exact)
        {
            return new Remedy(id, $"Preliminary: a {beam.Section.Name} {beam.Kind} passes at no useful span; take a stronger one.");
        }

        // Rounded down to what a builder can set: what is told passes.
        var carried = Settable(context, exact);
        var text = $"Preliminary: a {beam.Section.Name} {beam.Kind} carries {words.Length(carried)} at most; it spans "
            + $"{words.Length(beam.Span.Length)} in {beam.Span.Where}. ";
        return beam.Role == Role.Tread
            ? Stringers(context, new Remedy(id, text, Length: carried))
            : Spacing(context, beam, new Remedy(id, text, Length: carried), shape, token);
    }

    /// <summary>The widest frames.spacing at which the deck of a whole new design passes: end bays may be longer than it.</summary>
    private static Remedy Spacing(CheckContext context, DeckSpan beam, Remedy remedy, TrialShape shape, CancellationToken token)
    {
        var now = context.Parameters.Frames.Spacing;
        var effort = Remedies.Begin(context.Parameters.Site.Span / Remedies.ShortestSpacing, token);
        if (context.Parameters.Site.Span / Remedies.ShortestSpacing > Remedies.MostBays)
        {
            var none = Remedies.NotLookedFor(remedy.CheckId, "frames closer together");
            return none with { Text = $"{remedy.Text}Take a stronger {beam.Kind}. {none.Text}", Length = remedy.Length };
        }

        var found = Remedies.Largest(
            spacing => Try(context, spacing, effort, shape, roughly: true) is { } trial && DeckPasses(trial),
            Remedies.ShortestSpacing, now, Step);
        if (effort.IsSpent)
        {
            return remedy with
            {
                Text = remedy.Text + $"Take a stronger {beam.Kind}: no useful frames.spacing was found. {Remedies.Ended(effort.Trials)}",
                SearchEnded = true,
            };
        }

        return found is { } wide && Settable(context, wide) is var spacing
            && Try(context, spacing, effort, shape, roughly: false) is { } design
            && DeckPasses(design)
            ? remedy with
            {
                Text = remedy.Text + string.Create(
                    System.Globalization.CultureInfo.InvariantCulture,
                    $"With frames.spacing {new Quantities.QuantityText(context.Parameters.Units).Size(spacing)} ({design.Layout.Bays} "
                        + $"bays) it passes; or take a stronger {beam.Kind}."),
                Spacing = spacing,
                Write = "frames.spacing " + new Quantities.QuantityText(context.Parameters.Units).Size(spacing),
            }
            : remedy with { Text = remedy.Text + $"Take a stronger {beam.Kind}: no useful frames.spacing was found." };
    }

    /// <summary>The fewest stringers on which treads pass.</summary>
    private static Remedy Stringers(CheckContext context, Remedy remedy)
    {
        var stringer = context.Parameters.Deck.Stringer!;
        foreach (var count in Enumerable.Range(stringer.Count + 1, MostStringers - Math.Min(MostStringers, stringer.Count)))
        {
            var deck = context.Parameters.Deck with { Stringer = stringer with { Count = count } };
            if (DeckPasses(context with { Parameters = context.Parameters with { Deck = deck } }))
            {
                return remedy with
                {
                    Text = remedy.Text + FormattableString.Invariant($"On {count} stringers (deck.stringer.count) the ")
                    + "deck passes; or take a stronger tread.",
                    Write = FormattableString.Invariant($"deck.stringer.count {count}"),
                };
            }
        }

        return remedy with { Text = remedy.Text + "Take a stronger tread." };
    }

    /// <summary>A shape and layout with other distances between frames; null where there is none.</summary>
    private static CheckContext? Try(
        CheckContext context, double spacing, Effort effort, TrialShape shape, bool roughly)
    {
        var parameters = context.Parameters with { Frames = context.Parameters.Frames with { Spacing = spacing } };
        return effort.TryBegin() && shape(parameters, effort, roughly) is { } rope
            ? context with { Parameters = parameters, Rope = rope, Layout = BridgeLayout.Lay(parameters, rope) }
            : null;
    }

    private static bool DeckPasses(CheckContext context) =>
        DeckBending.Check(context).Concat(DeckShear.Check(context)).Concat(DeckDeflection.Check(context)).All(
            c => c.Status != CheckStatus.Fail);

    /// <summary>Down to a sixteenth of an inch, or to a millimetre.</summary>
    private static double Settable(CheckContext context, double length)
    {
        var unit = Rounding.Step(context.Parameters.Units);
        return Math.Floor(length / unit) * unit;
    }

    private static DeckSpan With(DeckSpan beam, double span) => beam with { Span = (span, beam.Span.Where) };

    /// <summary>Sticks of dimension lumber in which a base stands, least wood first; weights of the rest stay as they are.</summary>
    private static IEnumerable<Remedy> Base(CheckContext context, ImmutableArray<string> failing)
    {
        if (failing.IsEmpty)
        {
            yield break;
        }

        var sold = Least(context, Bases(context));
        // Where nothing on sale passes, what can be ordered.
        var passing = sold ?? Least(context, Orderable(context));
        var all = string.Join(", ", failing);
        var isEnd = failing.Any(id => id.StartsWith("end-base-", StringComparison.Ordinal));
        if (isEnd && Shallower(context) is { } depth)
        {
            yield return new Remedy(
                failing.First(id => id.StartsWith("end-base-", StringComparison.Ordinal)),
                $"Preliminary: with channel.end_depth {new QuantityText(context.Parameters.Units).Size(depth)} the end bases pass. "
                    + "Levels of landings move with it: check again.",
                Length: depth)
            {
                Write = "frames.channel.end_depth " + new QuantityText(context.Parameters.Units).Size(depth),
            };
        }

        yield return passing is null
            ? new Remedy(
                failing[0],
                $"Preliminary ({all}): no base of what is {Lot(context)} passes standing on its narrow side; bring the ropes under or "
                    + "outside the braces' feet, or widen the frame's stance.")
            : new Remedy(failing[0], $"Preliminary ({all}): a {passing.Name} base, standing on its narrow side, has the least "
                + $"wood of all {(sold is null ? "dimension lumber, not on sale here," : Lot(context))} that pass every check of the base. "
                + "Levels of landings, posts' feet and deck move "
                + "with its depth: check again.")
            { Write = $"frames.base.section {passing.Name}, on its narrow side{(sold is null ? "; not on sale here" : "")}" };
    }

    /// <summary>The deepest channel of the end bases with which they pass; null where less depth is no cure.</summary>
    private static double? Shallower(CheckContext context)
    {
        var channel = context.Parameters.Frames.Channel;
        var found = Remedies.Largest(d => EndsPass(With(d)), context.Parameters.Ropes.Rope.Radius, channel.EndDepth, Step);
        // Less depth may take the rope out of its mouth: then it is no cure.
        return found is { } deep && Settable(context, deep) is var depth && EndsPass(With(depth)) && Mouths(With(depth)) <= Mouths(context)
            ? depth : null;

        CheckContext With(double depth)
        {
            var frames = context.Parameters.Frames;
            var parameters = context.Parameters with { Frames = frames with { Channel = channel with { EndDepth = depth } } };
            return context with { Parameters = parameters, Layout = BridgeLayout.Lay(parameters, context.Rope) };
        }

        static int Mouths(CheckContext of) => ChannelMouths.Check(of).Count(
            c => c.Status == CheckStatus.Fail && c.Id.EndsWith("-end", StringComparison.Ordinal));

        static bool EndsPass(CheckContext trial) =>
            LayoutFit.Check(trial.Layout).IsEmpty && EndBase.Check(trial).All(c => c.Status == CheckStatus.Pass);
    }

    /// <summary>What a base may be cut from: what its stock sells of 3 in and 4 in lumber, or 60 to 100 mm thick.</summary>
    private static IEnumerable<Section> Bases(CheckContext context)
    {
        var sold = context.Parameters.StockNamed(context.Parameters.Frames.Base.Stock).Sections;
        return context.Parameters.Units == UnitSystem.Metric
            ? sold.Where(s => s.Thickness is >= ThinnestMetric and <= ThickestMetric)
            : sold.Where(s => s.NominalThickness is >= ThinnestBase and <= ThickestBase);
    }

    private static IEnumerable<Section> Orderable(CheckContext context) => context.Parameters.Units == UnitSystem.Metric ? []
        : Lumber.Names.Select(name => SectionReader.Read(name).Section!)
            .Where(s => s.NominalThickness is >= ThinnestBase and <= ThickestBase);

    private static Section? Least(CheckContext context, IEnumerable<Section> sections) => sections
        .Where(s => s.Width > context.Parameters.Frames.Channel.Depth)
        .OrderBy(s => s.Width * s.Thickness)
        .FirstOrDefault(s => Passes(context, s));

    private static string Lot(CheckContext context) => $"on sale of stock {context.Parameters.Frames.Base.Stock}, "
        + (context.Parameters.Units == UnitSystem.Metric ? "60 to 100 mm thick," : "3 in and 4 in thick,");

    private static bool Passes(CheckContext context, Section section)
    {
        var frames = context.Parameters.Frames;
        var parameters = context.Parameters with
        {
            Frames = frames with { Base = frames.Base with { Section = section, Flat = false } },
        };
        var trial = context with { Parameters = parameters, Layout = BridgeLayout.Lay(parameters, context.Rope) };

        // Another base moves everything above it: where that is no bridge any more, there is nothing to weigh.
        return LayoutFit.Check(trial.Layout).IsEmpty
            && BaseBending.Check(trial).Concat(BaseShear.Check(trial)).Concat(EndBase.Check(trial)).Concat(ChannelFaces.Check(trial)).All(
            c => c.Status == CheckStatus.Pass)
            && DeckBearing.Check(trial).All(c => c.Status != CheckStatus.Fail);
    }
}
