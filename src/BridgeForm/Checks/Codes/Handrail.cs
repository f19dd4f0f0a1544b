using BridgeForm.Project;
using BridgeForm.Solids;

namespace BridgeForm.Checks;

/// <summary>Whether anything that runs along the bridge can be a handrail, where the code asks for one.</summary>
internal static class Handrail
{
    /// <summary>The check.</summary>
    public static DeclaredCheck Declared { get; } = new(
        "handrail-height",
        "Height of a handrail",
        "On a public bridge whose deck is steeper than 1 : 20 and rises more than 6 in: height above the deck, vertical at each frame, of the rail or cap nearest to 34 to 38 in. Whether a hand can close around it is not judged.",
        Limits.Handrail.Source,
        [CheckStatus.Pass, CheckStatus.Warn]);

    /// <summary>A warning where no rail or cap runs at that height.</summary>
    public static CheckResult Of(CheckContext context)
    {
        var words = context.People();
        var (low, high, source) = Limits.Handrail;
        var (range, name) = Nearest(context);
        var rise = Rise(context);
        var applies = context.Parameters.Use == BridgeUse.Public
            && EndSlope.Steepest(context).Slope > Limits.WalkingSurface
            && rise > Limits.RampRise;
        var holds = range.Low >= low && range.High <= high;
        var missed = range.Low < low ? range.Low : range.High;
        var detail = $"{name}: top {words.Length(range.Low)} to {words.Length(range.High)} above the deck; a handrail has {words.Length(low)} to {words.Length(high)}"
            + (applies ? holds ? "" : ": fix a handrail to the posts" : "; not asked for here");
        return new CheckResult(
            Declared.Id, Declared.Title, applies && !holds ? CheckStatus.Warn : CheckStatus.Pass,
            missed, missed < low ? low : high, "m", null, source, detail);
    }

    /// <summary>Lowest to highest point of the deck.</summary>
    private static double Rise(CheckContext context) =>
        context.Layout.Deck.Points.Max(p => p.Y) - context.Layout.Deck.Points.Min(p => p.Y);

    private static ((double Low, double High) Range, string Name) Nearest(CheckContext context)
    {
        var parameters = context.Parameters;
        var cos = Math.Cos(parameters.Frames.Post.Lean);
        var half = parameters.Guard.Rail.Width / 2;
        var heights = Enumerable.Range(0, context.Layout.Bays + 1).Select(i => Tops(context, i, cos, half)).ToList();
        var (low, high, _) = Limits.Handrail;
        return Enumerable.Range(0, heights[0].Length)
            .Select(k => (Range: (heights.Min(h => h[k]), heights.Max(h => h[k])), Name: k + 1 == heights[0].Length ? "cap" : $"rail {k + 1}"))
            .MinBy(r => Math.Max(low - r.Range.Item1, r.Range.Item2 - high));
    }

    /// <summary>Tops of rails and cap above the deck's surface at a frame, vertical, lowest first.</summary>
    private static double[] Tops(CheckContext context, int frame, double cos, double half)
    {
        var layout = context.Layout;
        var pose = layout.Poses[frame];
        var up = pose.Up.Dot(Vector3d.UnitY);
        var deck = layout.Parameters.Deck.Thickness + layout.Deck.Lifts[frame];
        var cap = (layout.Parameters.Frames.Post.Length * cos) + layout.Caps.Lifts[frame] + layout.Parameters.Guard.Cap.Thickness;
        return
        [
            .. Frames.GuardRails.Heights(layout, frame).Select(h => (((h + half) * cos) - deck) / up),
            (cap - deck) / up,
        ];
    }
}
