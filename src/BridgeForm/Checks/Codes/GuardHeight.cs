using BridgeForm.Frames;
using BridgeForm.Project;
using BridgeForm.Quantities;

namespace BridgeForm.Checks.Codes;

/// <summary>Height of the guard: vertical, from the deck's surface at its middle line to the cap's top, where it is least.</summary>
internal static class GuardHeight
{
    /// <summary>The check.</summary>
    public static DeclaredCheck Declared { get; } = new(
        "guard-height",
        "Guard height above the deck",
        "Vertical height from the deck's surface at its middle line to the cap's top, where it is least, against 36 in private, "
            + "42 in public.",
        "IRC 2018 R312.1.2; IBC 1015.3",
        [CheckStatus.Pass, CheckStatus.Fail]);

    /// <summary>The least height of all bays against the code's.</summary>
    public static CheckResult Check(CheckContext context)
    {
        var least = GuardPlace.Least(context.Layout);
        var (needed, source) = Limits.GuardHeight(context.Parameters.Use);
        var words = context.Words();
        return Outcome.AtLeast(
            Declared, least.Height, needed, "m", source,
            $"least in {least.Frame}: {words.Length(least.Height)}, needed {words.InInches(needed)}");
    }
}

/// <summary>
/// The guard's height, the one that check, page and drawings tell: vertical, from the deck's surface at its middle line to
/// the cap's top. World axes, metres.
/// </summary>
/// <param name="X">Where along the bridge.</param>
/// <param name="Deck">Level of the deck's surface.</param>
/// <param name="Cap">Level of the cap's top.</param>
/// <param name="Frame">The frame there.</param>
public sealed record GuardPlace(double X, double Deck, double Cap, string Frame)
{
    /// <summary>The height.</summary>
    public double Height => Cap - Deck;

    /// <summary>Where it is least.</summary>
    public static GuardPlace Least(BridgeLayout layout) =>
        Ties.FirstLeast(TopLine.Cap(layout).Above(TopLine.Deck(layout), layout), p => p.Height)!;
}

/// <summary>Whether anything that runs along the bridge can be a handrail, where the code asks for one.</summary>
internal static class Handrail
{
    /// <summary>The check.</summary>
    public static DeclaredCheck Declared { get; } = new(
        "handrail-height",
        "Height of a handrail",
        "On a public bridge whose deck is steeper than 1 : 20 and rises more than 6 in, and on a private one steeper than 1 : 12: height "
            + "above the deck, measured as the guard's, of the rail or cap nearest to 34 to 38 in. Whether a hand can close around it is "
            + "not judged.",
        $"{Limits.Handrail(BridgeUse.Public).Source}; {Limits.Handrail(BridgeUse.Private).Source}",
        [CheckStatus.Pass, CheckStatus.Warn]);

    /// <summary>A warning where no rail or cap runs at that height.</summary>
    public static CheckResult Check(CheckContext context)
    {
        var words = context.Words();
        var (low, high, source) = Limits.Handrail(context.Parameters.Use);
        var (range, name) = Nearest(context);
        var applies = Applies(context);
        var holds = range.Low >= low && range.High <= high;
        var missed = range.Low < low ? range.Low : range.High;
        var detail = $"{name}: top {words.Length(range.Low)} to {words.Length(range.High)} above the deck; a handrail has "
            + $"{words.InInches(low)} to {words.InInches(high)}"
            + (applies ? holds ? "; whether a hand can close around it is "
            + "not looked at" : ": fix a handrail to the posts" : "; not asked for here");
        return new CheckResult(
            Declared.Id, Declared.Title, applies && !holds ? CheckStatus.Warn : CheckStatus.Pass,
            missed, missed < low ? low : high, "m", null, source, detail);
    }

    private static bool Applies(CheckContext context)
    {
        var slope = EndSlope.Steepest(context).Slope;
        return context.Parameters.Use == BridgeUse.Public
            ? slope > Limits.WalkingSurface && Rise(context) > Limits.RampRise
            : slope > Limits.Ramp.Slope;
    }

    /// <summary>Lowest to highest point of the deck.</summary>
    private static double Rise(CheckContext context) =>
        context.Layout.Deck.Points.Max(p => p.Y) - context.Layout.Deck.Points.Min(p => p.Y);

    private static ((double Low, double High) Range, string Name) Nearest(CheckContext context)
    {
        var layout = context.Layout;
        var deck = TopLine.Deck(layout);
        var (low, high, _) = Limits.Handrail(context.Parameters.Use);
        return TopLine.Rails(context)
            .Select((line, k) => (Line: line, Name: $"rail {k + 1}"))
            .Append((Line: TopLine.Cap(layout), Name: "cap"))
            .Select(part => (Range: Range(part.Line, deck, layout), part.Name))
            .MinBy(r => Math.Max(low - r.Range.Low, r.Range.High - high));
    }

    private static (double Low, double High) Range(TopLine line, TopLine deck, Frames.BridgeLayout layout)
    {
        var heights = line.Above(deck, layout).Select(h => h.Height).ToList();
        return (heights.Min(), heights.Max());
    }
}
