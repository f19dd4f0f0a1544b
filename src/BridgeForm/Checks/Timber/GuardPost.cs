using BridgeForm.Project;

namespace BridgeForm.Checks;

/// <summary>A post pushed at its top: bending at the brace, with the pull or thrust below it.</summary>
internal static class GuardPost
{
    private const string Standard = "NDS 3.9.1, 3.9.2, 3.7.1 (ASD, from memory)";

    /// <summary>The check.</summary>
    public static DeclaredCheck Declared { get; } = new(
        "guard-post",
        "Guard post at its brace",
        "200 lbf at the cap's top, outward and inward, on a public bridge 50 plf as well, each by itself, all on one post: bending by push × (top − contact) plus the axial force below the brace (pulled: ft/Ft' + fb/Fb'; pressed: (fc/Fc')² + fb/(Fb'(1 − fc/FcE)), and fc below FcE), at most 1. Post pinned at its foot, brace pinned at both ends. The brace's force, pressed or pulled, is taken on the post's outer face in the middle of the brace's contact, on its axis, and at the lower edge of the contact should the cut not lie tight; the worse counts.",
        $"{Standard}; {GuardPush.Source}; NDS Supplement; factors named in the result",
        [CheckStatus.Pass, CheckStatus.Fail, CheckStatus.Engineer]);

    /// <summary>The worst push.</summary>
    public static CheckResult Of(CheckContext context)
    {
        var post = context.Parameters.Frames.Post;
        var values = LumberValues.Find(context.Parameters, post.Stock, post.Section);
        if (values is not null)
        {
            return GuardPush.Of(context)
                .SelectMany(push => GuardFrame.Places(context.Parameters).Select(frame => Check(context, values, post, push, frame)))
                .MaxBy(c => c.Demand)!;
        }

        var words = context.People();
        var worst = GuardPush.Of(context).MaxBy(p => p.Force);
        var moment = GuardFrame.Places(context.Parameters).Max(f => f.PostMoment(worst.Force));
        return Outcome.ForEngineer(
            Declared, 0, "1", Declared.Source,
            $"{worst.Name}: M = {words.Moment(moment)}, fb = {words.Stress(moment / Bends(post).Modulus)}; {LumberValues.Missing(context.Parameters, post.Stock, post.Section)}");
    }

    private static RectangularSection Bends(PostParameters post) => new(post.Section.Thickness, post.Section.Width);

    private static CheckResult Check(CheckContext context, LumberValues values, PostParameters post, GuardPush push, GuardFrame frame)
    {
        var words = context.People();
        var (section, pull) = (Bends(post), frame.PostPull(push.Force));
        var moment = frame.PostMoment(push.Force);
        var bending = moment / section.Modulus;
        var plain = values.Bending(LoadDuration.Guard, flat: false);
        var free = (frame.Top - frame.Contact) / Math.Cos(frame.Lean);
        var allowed = plain.Times(Stability.Beam(section, free, cantilever: true, plain.Value, values.ModulusMin().Value));
        var axial = pull > 0
            ? Pulled(words, values, section, pull, bending, allowed)
            : Pressed(words, values, section, -pull, frame.Contact / Math.Cos(frame.Lean), bending, allowed);
        return Outcome.AtMost(
            Declared,
            Math.Max(axial.Ratio, allowed.Slenderness > 1 ? allowed.Slenderness : 0),
            1,
            "1",
            $"{Standard}; {(allowed.Slenderness > 1 ? WoodCheck.Slender + "; " : "")}{GuardPush.Source}; {Once(allowed.Sources, axial.Sources)}",
            $"{push.Name}, {words.Length(frame.Top)} above the base, resultant {frame.Where}, at {words.Length(frame.Contact)}: M = {words.Pounds(Math.Abs(push.Force))} × "
            + $"{words.Length(frame.Top - frame.Contact)} = {words.Moment(moment)}; fb = M / {words.Modulus(section.Modulus)} = {words.Stress(bending)}; "
            + $"{allowed.Text(words)}; {axial.Text}"
            + (allowed.Slenderness > 1 ? $"; {WoodCheck.TooSlender(allowed)}" : ""));
    }

    /// <summary>Two lists of sources with what both say said once.</summary>
    private static string Once(string first, string second) =>
        string.Join("; ", first.Split("; ").Concat(second.Split("; ")).Distinct(StringComparer.Ordinal));

    private static (double Ratio, string Text, string Sources) Pulled(
        CheckWords words, LumberValues values, RectangularSection section, double pull, double bending, AdjustedValue allowed)
    {
        var tension = values.Tension(LoadDuration.Guard);
        var stress = pull / section.Area;
        var ratio = (stress / tension.Value) + (bending / allowed.Value);
        return (
            ratio,
            $"pulled below the brace by {words.Pounds(pull)}: ft = {words.Stress(stress)}, {tension.Text(words)}; "
            + $"{words.Stress(stress)} / {words.Stress(tension.Value)} + {words.Stress(bending)} / {words.Stress(allowed.Value)} = {TimberWords.Ratio(ratio)}",
            tension.Sources);
    }

    /// <summary>
    /// NDS 3.9.2 for bending about one axis; where fc reaches FcE the quotient means nothing and fc/FcE, at least 1, is told.
    /// </summary>
    public static (double Ratio, string Text, string Sources) Pressed(
        CheckWords words, LumberValues values, RectangularSection section, double press, double length, double bending, AdjustedValue allowed)
    {
        var modulus = values.ModulusMin().Value;
        var plain = values.Compression(LoadDuration.Guard);
        var compression = plain.Times(Stability.Column(length, section.Breadth, plain.Value, modulus));
        var buckling = Stability.Buckling(length, section.Depth, modulus);
        var stress = press / section.Area;
        if (compression.Slenderness > 1)
        {
            return (compression.Slenderness, $"pressed below the brace by {words.Pounds(press)}: {WoodCheck.TooSlender(compression)}", $"{compression.Sources}; {WoodCheck.Slender}");
        }

        if (stress >= buckling)
        {
            // 1 − fc/FcE is nothing or negative: the post bows out whatever bends it (NDS 3.9.2: fc < FcE1).
            return (
                stress / buckling,
                $"pressed below the brace by {words.Pounds(press)}: fc = {words.Stress(stress)} is not below FcE = {words.Stress(buckling)}: fc / FcE = {TimberWords.Ratio(stress / buckling)}",
                compression.Sources);
        }

        var share = stress / compression.Value;
        var ratio = (share * share) + (bending / (allowed.Value * (1 - (stress / buckling))));
        return (
            ratio,
            $"pressed below the brace by {words.Pounds(press)}: fc = {words.Stress(stress)}, {compression.Text(words)}, FcE = {words.Stress(buckling)}; "
            + $"({words.Stress(stress)} / {words.Stress(compression.Value)})² + {words.Stress(bending)} / ({words.Stress(allowed.Value)} × (1 − {words.Stress(stress)} / {words.Stress(buckling)})) = {TimberWords.Ratio(ratio)}",
            compression.Sources);
    }
}
