using BridgeForm.Roles;

namespace BridgeForm.Checks.Timber;

/// <summary>A post pushed at its top: shear below the brace, where it holds the brace's thrust against its foot.</summary>
internal static class GuardPostShear
{
    private const string Standard = "beam theory: 1.5·V / (b·d) of a rectangle (ASD)";

    /// <summary>The check.</summary>
    public static DeclaredCheck Declared { get; } = new(
        "guard-post-shear",
        "Guard post in shear below its brace",
        "The pushes of guard-post on one post: V square to the post, below the brace push × (top − axes) / axes × cos lean, where axes is "
            + "the height at which the brace's force meets the post's axis (in the middle of the contact and at its lower edge, the "
            + "worse), above it push × cos lean; fv = 1.5·V / (b·d) against Fv'; at every hole of your own the same with what the "
            + "holes leave, as base-shear takes it.",
        $"{Standard}; {GuardPush.Source}; NDS Supplement; factors named in the result; {DrilledHole.Rule}",
        [CheckStatus.Pass, CheckStatus.Fail, CheckStatus.Engineer]);

    /// <summary>The worst push.</summary>
    public static CheckResult Check(CheckContext context)
    {
        var (post, words) = (context.Parameters.Frames.Post, context.Words());
        var worst = GuardPush.WithWind(context.Layout, context.Parameters)
            .SelectMany(push => push.Places(context.Parameters).SelectMany(
                frame => PostPlace.Sections(context).Select(place => (push, frame, place, V: place.Shear(frame, push.Force)))))
            .MaxBy(p => p.V / p.place.Section.ShearArea);
        var (shear, section) = (worst.V, worst.place.Section);
        var stress = 1.5 * shear / section.ShearArea;
        var text = $"{worst.push.Name}, resultant {worst.frame.Where}, on the post's axis at {words.Length(worst.frame.Axes)}: V = "
            + $"{words.Pounds(shear)}{worst.place.Where(words)}; {section.ShearText(words, "d")}; fv = 1.5·V / (b·d) = "
            + words.Stress(stress);
        if (LumberValues.Find(context.Parameters, post.Stock, post.Section) is not { } values)
        {
            return LumberValues.Missing(context.Parameters, post.Stock, post.Section).Result(
                Declared, stress, "Pa", Declared.Source, text).On(context.InFrame(worst.push.Frame, Role.Post));
        }

        var allowed = values.Shear(LoadDuration.Guard);
        return Outcome.AtMost(
            Declared, stress, allowed.Value, "Pa",
            $"{Standard}; {GuardPush.Source}; {allowed.Sources}" + (section.IsCut ? $"; {DrilledHole.Rule}" : ""),
            $"{text}; {allowed.Text(words)}").On(context.InFrame(worst.push.Frame, Role.Post));
    }
}
