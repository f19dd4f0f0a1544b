using System.Collections.Immutable;
using BridgeForm.Frames;
using BridgeForm.Project;
using BridgeForm.Quantities;
using BridgeForm.Roles;

namespace BridgeForm.Checks.Timber;

/// <summary>A post pushed at its top: bending at the brace, with the pull or thrust below it.</summary>
internal static class GuardPost
{
    private const string Standard = "NDS 3.9.1, 3.9.2, 3.7.1 (ASD)";

    /// <summary>The check.</summary>
    public static DeclaredCheck Declared { get; } = new(
        "guard-post",
        "Guard post at its brace",
        "200 lbf at the cap's top, outward and inward, on a public bridge 50 plf as well, each by itself, all on one post: bending by push "
            + "× (top − contact) plus the axial force below the brace (pulled: ft/Ft' + fb/Fb'; pressed: (fc/Fc')² + fb/(Fb'(1 − fc/FcE)), "
            + "and fc below FcE), at most 1. Post pinned at its foot, brace pinned at both ends. The brace's force, pressed or pulled, is "
            + "taken on the post's outer face in the middle of the brace's contact, on its axis, and at the lower edge of the contact "
            + "should the cut not lie tight; the worse counts. At every hole of your own the same with what the holes leave: S of the edge "
            + "further from the middle of what is left, and for the axial force the area that is left when the same is taken away on the "
            + "other side of the axis. For a push along the bridge see guard-post-along.",
        $"{Standard}; {GuardPush.Source}; NDS Supplement; factors named in the result; {DrilledHole.Rule}",
        [CheckStatus.Pass, CheckStatus.Fail, CheckStatus.Engineer]);

    /// <summary>The worst push.</summary>
    public static CheckResult Check(CheckContext context)
    {
        var post = context.Parameters.Frames.Post;
        var values = LumberValues.Find(context.Parameters, post.Stock, post.Section);
        if (values is not null)
        {
            var sections = PostPlace.Sections(context);
            return GuardPush.WithWind(context.Layout, context.Parameters)
                .SelectMany(push => push.Places(context.Parameters).SelectMany(frame => sections.Select(
                    place => Check(context, values, post, push, frame, place))))
                .MaxBy(c => c.Demand)!;
        }

        var words = context.Words();
        var worst = GuardPush.List(context).MaxBy(p => p.Force)!;
        var moment = GuardFrame.Places(context.Parameters).Max(f => f.PostMoment(worst.Force));
        return LumberValues.Missing(context.Parameters, post.Stock, post.Section).Result(
            Declared, 0, "1", Declared.Source,
            $"{worst.Name}: M = {words.Moment(moment)}, fb = {words.Stress(moment / Bends(post).Modulus)}")
            .On(context.InFrame(worst.Frame, Role.Post));
    }

    /// <summary>Section of a post as it bends.</summary>
    public static RectangularSection Bends(PostParameters post) => new(post.Section.Thickness, post.Section.Width);

    private static CheckResult Check(
        CheckContext context, LumberValues values, PostParameters post, GuardPush push, GuardFrame frame, PostPlace place)
    {
        var words = context.Words();
        var (section, pull) = (Bends(post), frame.PostPull(push.Force));
        var moment = place.Moment(frame, push.Force);
        var bending = moment / place.Section.Modulus;
        var plain = values.Bending(LoadDuration.Guard, flat: false);
        var free = (frame.Top - frame.Contact) / Elementary.Cos(frame.Lean);
        var modulus = values.ModulusMin(LoadDuration.Guard).Value;
        var allowed = plain.Times(Stability.Beam(section, free, cantilever: true, plain.Value, modulus));
        var area = place.Section.Concentric().Area;
        var axial = pull > 0
            ? Pulled(words, values, area, pull, bending, allowed)
            : Pressed(words, values, section, area, -pull, frame.Contact / Elementary.Cos(frame.Lean), bending, allowed);
        return Outcome.AtMost(
            Declared,
            Math.Max(axial.Ratio, allowed.Slenderness > 1 ? allowed.Slenderness : 0),
            1,
            "1",
            $"{Standard}; {(allowed.Slenderness > 1 ? WoodCheck.Slender + "; " : "")}{GuardPush.Source}; "
                + $"{TimberWords.Once($"{allowed.Sources}; {axial.Sources}")}"
            + (place.Section.IsCut ? $"; {DrilledHole.Rule}" : ""),
            $"{push.Name}, {words.Length(frame.Top)} above the base, resultant {frame.Where}, at {words.Length(frame.Contact)}: "
            + $"{place.Text(words, frame, push.Force)}; fb = M / {words.Modulus(place.Section.Modulus)} = {words.Stress(bending)}; "
            + $"{allowed.Text(words)}; {axial.Text}"
            + (allowed.Slenderness > 1 ? $"; {WoodCheck.TooSlender(allowed)}" : "")).On(context.InFrame(push.Frame, Role.Post));
    }

    private static (double Ratio, string Text, string Sources) Pulled(
        CheckWords words, LumberValues values, double area, double pull, double bending, AdjustedValue allowed)
    {
        var tension = values.Tension(LoadDuration.Guard);
        var stress = pull / area;
        var ratio = (stress / tension.Value) + (bending / allowed.Value);
        return (
            ratio,
            $"pulled below the brace by {words.Pounds(pull)} on {words.Area(area)}: ft = {words.Stress(stress)}, {tension.Text(words)}; "
            + $"{words.Stress(stress)} / {words.Stress(tension.Value)} + {words.Stress(bending)} / {words.Stress(allowed.Value)} = "
            + $"{TimberWords.Ratio(ratio)}",
            tension.Sources);
    }

    /// <summary>
    /// NDS 3.9.2 for bending about one axis; where fc reaches FcE the quotient means nothing and fc/FcE, at least 1, is told.
    /// </summary>
    public static (double Ratio, string Text, string Sources) Pressed(
        CheckWords words, LumberValues values, RectangularSection section, double area, double press, double length, double bending,
        AdjustedValue allowed)
    {
        var modulus = values.ModulusMin(LoadDuration.Guard).Value;
        var plain = values.Compression(LoadDuration.Guard);
        var compression = plain.Times(Stability.Column(length, section.Breadth, plain.Value, modulus));
        var buckling = Stability.Buckling(length, section.Depth, modulus);
        var stress = press / area;
        if (compression.Slenderness > 1)
        {
            return (compression.Slenderness, $"pressed below the brace by {words.Pounds(press)}: "
                + $"{WoodCheck.TooSlender(compression)}", $"{compression.Sources}; {WoodCheck.Slender}");
        }

        if (stress >= buckling)
        {
            // 1 − fc/FcE is nothing or negative: the post bows out whatever bends it (NDS 3.9.2: fc < FcE1).
            return (
                stress / buckling,
                $"pressed below the brace by {words.Pounds(press)} on {words.Area(area)}: fc = {words.Stress(stress)} is not below FcE = "
                    + $"{words.Stress(buckling)}: fc / FcE = {TimberWords.Ratio(stress / buckling)}",
                compression.Sources);
        }

        var share = stress / compression.Value;
        var ratio = (share * share) + (bending / (allowed.Value * (1 - (stress / buckling))));
        return (
            ratio,
            $"pressed below the brace by {words.Pounds(press)} on {words.Area(area)}: fc = {words.Stress(stress)}, "
                + $"{compression.Text(words)}, FcE = {words.Stress(buckling)}; "
            + $"({words.Stress(stress)} / {words.Stress(compression.Value)})² + {words.Stress(bending)} / ({words.Stress(allowed.Value)} × "
            + $"(1 − {words.Stress(stress)} / {words.Stress(buckling)})) = {TimberWords.Ratio(ratio)}",
            compression.Sources);
    }
}

/// <summary>A place of a post that is looked at: where the brace meets it, or a hole.</summary>
/// <param name="From">n where the hole begins, metres; null for the whole section where the brace meets the post.</param>
/// <param name="To">n where it ends.</param>
/// <param name="Section">What is left there.</param>
internal sealed record PostPlace(double? From, double To, DrilledSection Section)
{
    /// <summary>
    /// The whole section first, then every hole. Holes are those of a post in the middle of the bridge; heads of upright
    /// frames are cut a few millimetres otherwise.
    /// </summary>
    public static ImmutableArray<PostPlace> Sections(CheckContext context)
    {
        var post = context.Parameters.Frames.Post;
        var whole = GuardPost.Bends(post);
        var holes = DrilledHole.List(Uprights.Post(context.Layout, context.Layout.Bays / 2, Side.Right).Shape, flat: false);
        var cos = Elementary.Cos(post.Lean);
        return
        [
            new(null, 0, new(whole, [])),
            .. holes.Select(hole => new PostPlace(
                hole.From * cos, hole.To * cos, new(whole, [.. holes.Where(h => h.CountsWith(hole)).Select(h => h.Void)]))),
        ];
    }

    /// <summary>Largest bending there, N·m.</summary>
    public double Moment(GuardFrame frame, double push) =>
        From is { } from ? frame.PostMoment(push, from, To) : frame.PostMoment(push);

    /// <summary>Largest shear there, square to the post, newtons.</summary>
    public double Shear(GuardFrame frame, double push) =>
        From is { } from ? frame.PostShear(push, from, To) : frame.PostShear(push);

    /// <summary>Where a hole is; begins with a comma, empty for the whole section.</summary>
    public string Where(CheckWords words) => From is { } from ? $", at the hole from {words.Length(from)} to {words.Length(To)}" : "";

    /// <summary>The moment with its lever, and what is left of the section.</summary>
    public string Text(CheckWords words, GuardFrame frame, double push)
    {
        var moment = Moment(frame, push);
        var lever = moment / Math.Abs(push);
        var product = $"M = {words.Pounds(Math.Abs(push))} × {words.Length(lever)} = {words.Moment(moment)}";
        if (From is not { } from)
        {
            return product;
        }

        var how = from > frame.Contact || (from <= frame.Contact && frame.Contact <= To)
            ? "below the top"
            : $"= (top − {words.Length(frame.Axes)}) × {words.Length(To)} / {words.Length(frame.Axes)}, axes meeting at "
                + $"{words.Length(frame.Axes)}";
        return $"at the hole from {words.Length(from)} to {words.Length(To)}: {product}, lever {how}; "
            + $"{Section.ModulusText(words, "the inner face")}";
    }
}
