using BridgeForm.Quantities;
using BridgeForm.Roles;

namespace BridgeForm.Checks.Timber;

/// <summary>Wood pressed where post and brace stand on the base and where the brace meets the post.</summary>
internal static class GuardBearing
{
    private const string Compares =
        "under the pushes of guard-post, on the whole of the contact (one stick's width along its cut by the thinner one's thickness; "
            + "holes not taken off, bearing area factor 1.0), "
        + "against the softer of both: Fc⊥' of wood pressed on its side, of wood pressed on its end Fc*·Fc⊥' / (Fc*·sin²θ + Fc⊥'·cos²θ), θ "
        + "between the contact's normal and the grain, Fc* without column stability. What slides along the contact is for the joint.";

    /// <summary>Foot of the post.</summary>
    public static DeclaredCheck DeclaredPostFoot { get; } = Declare(
        "guard-bearing-post-foot", "Post bearing on the base",
        "What presses the post's foot square to the base, and the weight of the guard on it,");

    /// <summary>Foot of the brace.</summary>
    public static DeclaredCheck DeclaredBraceFoot { get; } = Declare(
        "guard-bearing-brace-foot", "Brace bearing on the base", "What presses the brace's foot square to the base, and its weight,");

    /// <summary>Head of the brace.</summary>
    public static DeclaredCheck DeclaredBraceHead { get; } = Declare(
        "guard-bearing-brace-head", "Brace bearing on the post", "The part of the brace's thrust that is square to the post's face, "
            + "the larger of that in the middle of the contact and that at its lower edge should the cut not lie tight,");

    /// <summary>All three, the worst push of each.</summary>
    public static IEnumerable<CheckResult> Check(CheckContext context)
    {
        var frames = context.Parameters.Frames;
        var (post, brace, made) = (frames.Post, frames.Brace, frames.Base);
        var frame = GuardFrame.Build(context.Parameters);
        var weights = FrameWeights.Heaviest(context);
        var turn = post.Lean + brace.Lean;
        var onBase = BearingSide.Across("base", made.Stock, made.Section);

        yield return Check(
            context, DeclaredPostFoot,
            p => Math.Max(0, -p.On(frame).BraceDown(p.Force)), weights.Guard,
            (post.Section.Width / Elementary.Cos(post.Lean), Math.Min(post.Section.Thickness, made.Along)),
            [onBase, new("post", post.Stock, post.Section, post.Lean)], Role.Post, Role.Base);
        yield return Check(
            context, DeclaredBraceFoot,
            p => Math.Max(0, p.On(frame).BraceDown(p.Force)), weights.Brace,
            (brace.Section.Width / Elementary.Cos(brace.Lean), Math.Min(brace.Section.Thickness, made.Along)),
            [onBase, new("brace", brace.Stock, brace.Section, brace.Lean)], Role.Brace, Role.Base);
        yield return Check(
            context, DeclaredBraceHead,
            p => p.Places(context.Parameters).Max(f => Math.Max(0, f.Brace(p.Force) * Elementary.Sin(f.Lean + f.BraceLean))), 0,
            (brace.Section.Width / Elementary.Sin(turn), Math.Min(brace.Section.Thickness, post.Section.Thickness)),
            [BearingSide.Across("post", post.Stock, post.Section), new("brace", brace.Stock, brace.Section, (Math.PI / 2) - turn)],
            Role.Brace, Role.Post);
    }

    private static CheckResult Check(
        CheckContext context, DeclaredCheck declared, Func<GuardPush, double> press, double weight, (double Length, double Breadth) contact,
        BearingSide[] sides, params Role[] pressing)
    {
        var words = context.Words();
        var worst = GuardPush.WithWind(context.Layout, context.Parameters).MaxBy(press)!;
        var pressed = press(worst);
        var stress = (pressed + weight) / (contact.Length * contact.Breadth);
        var force = weight > 0 ? $"({words.Pounds(pressed)} + {words.Pounds(weight)} dead)" : words.Pounds(pressed);
        return Bearing.Check(
            context, declared, stress,
            $"{worst.Name}: {force} / ({words.Length(contact.Length)} × {words.Length(contact.Breadth)}) = {words.Stress(stress)}",
            GuardPush.Source, LoadDuration.Guard, [.. sides]).On(context.InFrame(worst.Frame, pressing));
    }

    private static DeclaredCheck Declare(string id, string title, string what) => new(
        id,
        title,
        $"{what} {Compares}",
        $"{Bearing.Angle}; {GuardPush.Source}; NDS Supplement; factors named in the result",
        [CheckStatus.Pass, CheckStatus.Fail, CheckStatus.Engineer]);
}
