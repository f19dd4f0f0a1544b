using BridgeForm.Project;
using BridgeForm.Quantities;
using BridgeForm.Roles;

namespace BridgeForm.Checks.Timber;

/// <summary>What the joints of post and brace must hold when people push the guard.</summary>
internal static class GuardJoints
{
    private const string Source =
        $"statics of post and brace, the brace's force at the lower edge of its head and on an edge of its foot; {GuardPush.Source}; "
            + "NDS 12.2: screws and nails pulled out of end grain do not count";

    /// <summary>Foot of the post.</summary>
    public static DeclaredCheck DeclaredFoot { get; } = Joint(
        "guard-joint-post-foot", "Joint of post and base", "Pull (or thrust) square to the base and push along it at the post's foot");

    /// <summary>Foot of the brace.</summary>
    public static DeclaredCheck DeclaredBrace { get; } = Joint(
        "guard-joint-brace-foot", "Joint of brace and base", "Pull and thrust square to the base and push along it at the brace's foot");

    /// <summary>Head of the brace.</summary>
    public static DeclaredCheck DeclaredHead { get; } = Joint(
        "guard-joint-brace-head", "Joint of brace and post",
        "Pull and thrust along the brace, and the part of it along the post's face, at the brace's head");

    /// <summary>All three: reckoned where the project file describes the joint, else for an engineer.</summary>
    public static IEnumerable<CheckResult> Check(CheckContext context) => Stated(context).Zip(
        Enum.GetValues<JointPlace>(), (stated, place) => JointCheck.Find(context, place, stated));

    private static IEnumerable<CheckResult> Stated(CheckContext context)
    {
        var words = context.Words();
        var pushes = GuardPush.WithWind(context.Layout, context.Parameters).ToList();
        var worst = pushes.Where(p => p.Force > 0).MaxBy(p => Down(p))!;
        string Each(Func<GuardPush, string> text) => string.Join("; ", pushes.Select(p => $"{p.Name}: {text(p)}"));
        string Way(double force, string positive, string negative) =>
            $"{words.Pounds(Math.Abs(force))} {(force >= 0 ? positive : negative)}";

        // Wherever a pressed brace bears on the post and stands on the base; each force by itself.
        double Most(GuardPush push, Func<GuardFrame, double> of) => (push.Force > 0
            ? push.OnBase(context.Parameters) : [push.On(GuardFrame.AtLowerEdge(context.Parameters))]).Select(of).MaxBy(Math.Abs);
        double Down(GuardPush push) => Most(push, f => f.BraceDown(push.Force));

        yield return Outcome.ForEngineer(
            DeclaredFoot, Down(worst), "N", Source,
            Each(p => $"{Way(Down(p), "pulled up", "pressed down")}, "
                + $"{Way(Most(p, f => p.Force - f.BraceOut(p.Force)), "pushed outward", "pushed inward")}")
            + ". Screws into end grain never count").On(context.InFrame(worst.Frame, Role.Post, Role.Base));
        yield return Outcome.ForEngineer(
            DeclaredBrace, Down(worst), "N", Source,
            Each(p => $"{Way(Down(p), "pressed down", "pulled up")}, "
                + $"{Way(Most(p, f => f.BraceOut(p.Force)), "pushed outward", "pulled inward")}")
            + ". Screws into end grain never count").On(context.InFrame(worst.Frame, Role.Brace, Role.Base));
        yield return Outcome.ForEngineer(
            DeclaredHead, Math.Abs(Most(worst, f => f.Brace(worst.Force))), "N", Source,
            Each(p => $"{Way(Most(p, f => f.Brace(p.Force)), "thrust", "pull")} along the brace, "
                + $"{words.Pounds(Math.Abs(Most(p, f => f.Brace(p.Force) * Elementary.Cos(f.Lean + f.BraceLean))))} of it along "
                + "the post's face"))
            .On(context.InFrame(worst.Frame, Role.Brace, Role.Post));
    }

    private static DeclaredCheck Joint(string id, string title, string compares) => new(
        id,
        title,
        compares + " under the pushes of guard-post, the brace's force at the lower edge of its contact with the post and on an edge of "
            + "its foot, where each is largest should the cuts not lie tight. Screws into end grain never count. Without the joint under "
            + "joints it is for an engineer. "
            + JointCheck.Compares,
        $"{Source}; {JointCheck.Source}",
        [CheckStatus.Pass, CheckStatus.Fail, CheckStatus.Engineer]);
}
