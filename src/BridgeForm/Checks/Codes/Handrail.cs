using System.Collections.Immutable;
using BridgeForm.Project;
using BridgeForm.Quantities;
using BridgeForm.Roles;

namespace BridgeForm.Checks.Codes;

/// <summary>Whether anything that runs along the bridge can be a handrail, where the code asks for one.</summary>
internal static class Handrail
{
    /// <summary>The check.</summary>
    public static DeclaredCheck Declared { get; } = new(
        "handrail-height",
        "Height of a handrail",
        "On a public bridge whose deck is steeper than 1 : 20 and rises more than 6 in, and on a private one steeper than 1 : 12: "
            + "height above the deck, measured as the guard's, of the handrail (guard.handrail), or without one of the rail or cap "
            + "nearest to 34 to 38 in. Whether a hand can close around a rail or cap is not judged; of a handrail handrail-size and "
            + "handrail-clearance do.",
        $"{Limits.Handrail(BridgeUse.Public).Source}; {Limits.Handrail(BridgeUse.Private).Source}",
        [CheckStatus.Pass, CheckStatus.Warn]);

    /// <summary>A warning where no rail or cap runs at that height.</summary>
    public static CheckResult Check(CheckContext context)
    {
        var words = context.Words();
        var (low, high, source) = Limits.Handrail(context.Parameters.Use);
        var nearest = Nearest(context);
        var applies = Applies(context);
        var holds = nearest.Low >= low && nearest.High <= high;
        var isLow = nearest.Low < low;
        var missed = isLow ? nearest.Low : nearest.High;
        var detail = $"{nearest.Name}: top {words.Length(nearest.Low)} to {words.Length(nearest.High)} above the deck; a handrail has "
            + $"{words.InInches(low)} to {words.InInches(high)}"
            + (applies ? holds ? Judged(nearest) : Mended(nearest) : "; not asked for here");
        return new CheckResult(
            Declared.Id, Declared.Title, applies && !holds ? CheckStatus.Warn : CheckStatus.Pass,
            missed, missed < low ? low : high, "m", null, source, detail)
            .On(nearest.Parts(context, isLow));
    }

    private static string Judged(HandrailLine line) => line.Role == Role.Handrail
        ? "; whether a hand can close around it: handrail-size, handrail-clearance"
        : "; whether a hand can close around it is not looked at";

    private static string Mended(HandrailLine line) => line.Role == Role.Handrail
        ? ": write another guard.handrail.height"
        : ": fix a handrail to the posts";

    private static bool Applies(CheckContext context)
    {
        var slope = EndSlope.Steepest(context.Layout).Slope;
        return context.Parameters.Use == BridgeUse.Public
            ? slope > Limits.WalkingSurface && Rise(context) > Limits.RampRise
            : slope > Limits.Ramp.Slope;
    }

    /// <summary>Lowest to highest point of the deck.</summary>
    private static double Rise(CheckContext context) =>
        context.Layout.Deck.Points.Max(p => p.Y) - context.Layout.Deck.Points.Min(p => p.Y);

    private static HandrailLine Nearest(CheckContext context)
    {
        var layout = context.Layout;
        var deck = TopLine.Deck(layout);
        var (low, high, _) = Limits.Handrail(context.Parameters.Use);
        if (TopLine.Handrail(context).FirstOrDefault() is { } handrail)
        {
            return new HandrailLine(Role.Handrail, 0, [.. handrail.Above(deck, layout)]);
        }

        return TopLine.Rails(context)
            .Select((line, k) => new HandrailLine(Role.Rail, k + 1, [.. line.Above(deck, layout)]))
            .Append(new HandrailLine(Role.Cap, 0, [.. TopLine.Cap(layout).Above(deck, layout)]))
            .MinBy(r => Math.Max(low - r.Low, r.High - high))!;
    }
}

/// <summary>What a hand may follow along the bridge.</summary>
/// <param name="Role">Handrail, rail or cap.</param>
/// <param name="Rail">Which rail, 1 the lowest; 0 for the others.</param>
/// <param name="Heights">Of its top above the deck.</param>
internal sealed record HandrailLine(Role Role, int Rail, ImmutableArray<GuardPlace> Heights)
{
    /// <summary>In a person's words.</summary>
    public string Name => Rail > 0 ? $"rail {Rail}" : RoleTable.Of(Role).Name;

    /// <summary>Least height, metres.</summary>
    public double Low => Heights.Min(h => h.Height);

    /// <summary>Largest height, metres.</summary>
    public double High => Heights.Max(h => h.Height);

    /// <summary>Its parts at the frame where it is lowest, or highest.</summary>
    public IEnumerable<string> Parts(CheckContext context, bool isLow)
    {
        var at = Ties.FirstLargest(Heights, h => isLow ? -h.Height : h.Height)!.Frame;
        return Rail > 0
            ? context.MeetingAt(at, Role.Rail).Where(id => PartId.Read(id)!.Value.Number == Rail)
            : context.MeetingAt(at, Role);
    }
}
