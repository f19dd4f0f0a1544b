using BridgeForm.Frames;
using BridgeForm.Quantities;
using BridgeForm.Roles;

namespace BridgeForm.Checks.Timber;

/// <summary>A post pushed along the bridge, where no brace helps it: bending about its other axis.</summary>
internal static class GuardPostAlong
{
    private const string Standard = "NDS 3.3 (ASD)";

    /// <summary>The check.</summary>
    public static DeclaredCheck Declared { get; } = new(
        "guard-post-along",
        "Guard post pushed along the bridge",
        "The largest push of guard-post along the bridge on one post alone, held stiffly on its base: fb = push × height / S about the "
            + "axis across its thickness, at the base and at every hole of your own with what it leaves, against Fb'. Above it to review: "
            + "the post needs others, through caps and rails that are fixed to both. Below it an engineer still judges the joint at its "
            + "foot, and what keeps the base from turning on its ropes.",
        $"{Standard}; {GuardPush.Source}; NDS Supplement; factors named in the result; {DrilledHole.Rule}",
        [CheckStatus.Warn, CheckStatus.Engineer]);

    /// <summary>The largest push.</summary>
    public static CheckResult Check(CheckContext context)
    {
        var (post, words) = (context.Parameters.Frames.Post, context.Words());
        var push = GuardPush.List(context).MaxBy(p => Math.Abs(p.Force))!;
        var top = GuardFrame.Build(context.Parameters).Top;
        var worst = Places(context).MaxBy(p => (top - p.From) / p.Section.Modulus)!;
        var stress = push.Force * (top - worst.From) / worst.Section.Modulus;
        var text = $"{words.Pounds(push.Force)} along the bridge {words.Length(top - worst.From)} above "
            + (worst.From > 0 ? $"the hole at {words.Length(worst.From)}" : "the base")
            + $": M = {words.Moment(push.Force * (top - worst.From))}; {worst.Section.ModulusText(words, "its side")}; "
            + $"fb = {words.Stress(stress)}";
        if (LumberValues.Find(context.Parameters, post.Stock, post.Section) is not { } values)
        {
            return LumberValues.Missing(context.Parameters, post.Stock, post.Section).Result(
                Declared, stress, "Pa", Declared.Source, text).On(context.InFrame(push.Frame, Role.Post));
        }

        var allowed = values.Bending(LoadDuration.Guard, flat: true);
        var compared = Outcome.AtMost(
            Declared, stress, allowed.Value, "Pa",
            $"{Standard}; {GuardPush.Source}; {allowed.Sources}" + (worst.Section.IsCut ? $"; {DrilledHole.Rule}" : ""),
            $"{text}; {allowed.Text(words)}; one post alone, stiff on its base",
            CheckStatus.Warn).On(context.InFrame(push.Frame, Role.Post));
        return compared.Status == CheckStatus.Pass ? compared with { Status = CheckStatus.Engineer } : compared;
    }

    // Where it stands on the base, and its holes; metres up from the base.
    private static IEnumerable<(double From, DrilledSection Section)> Places(CheckContext context)
    {
        var post = context.Parameters.Frames.Post;
        var whole = new RectangularSection(post.Section.Width, post.Section.Thickness);
        var holes = DrilledHole.List(Uprights.Post(context.Layout, context.Layout.Bays / 2, Side.Right).Shape, flat: true);
        return
        [
            (0, new(whole, [])),
            .. holes.Select(hole => (
                Math.Max(0, hole.From * Elementary.Cos(post.Lean)),
                new DrilledSection(whole, [.. holes.Where(h => h.CountsWith(hole)).Select(h => h.Void)]))),
        ];
    }
}
