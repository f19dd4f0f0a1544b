using BridgeForm.Frames;
using BridgeForm.Roles;

namespace BridgeForm.Checks.Timber;

/// <summary>A brace that is pressed or pulled by the push on its guard.</summary>
internal static class GuardBrace
{
    private const string Standard = "NDS 3.6.3, 3.7.1 (ASD)";

    /// <summary>The check.</summary>
    public static DeclaredCheck Declared { get; } = new(
        "guard-brace",
        "Guard brace",
        "The brace's axial force under the pushes of guard-post, by moments about the post's foot, against what it bears pressed (with "
            + "column stability over its long edge, about its thin side) and pulled. Of a brace with holes of your own the smallest area "
            + "counts that is left when the same is taken away on the other side of the axis.",
        $"{Standard}; {GuardPush.Source}; NDS Supplement; factors named in the result; {DrilledHole.Rule}",
        [CheckStatus.Pass, CheckStatus.Fail, CheckStatus.Engineer]);

    /// <summary>The worst push.</summary>
    public static CheckResult Check(CheckContext context)
    {
        var brace = context.Parameters.Frames.Brace;
        var values = LumberValues.Find(context.Parameters, brace.Stock, brace.Section);
        var missing = LumberValues.Missing(context.Parameters, brace.Stock, brace.Section);
        var area = Area(context);
        return GuardPush.List(context)
            .Select(push => Check(context, push, area, Allowed(values, brace, push.Force), missing))
            .MaxBy(c => c.Ratio ?? c.Demand)!;
    }

    /// <summary>Smallest area, m².</summary>
    private static double Area(CheckContext context)
    {
        var section = context.Parameters.Frames.Brace.Section;
        var whole = new RectangularSection(section.Thickness, section.Width);
        var holes = DrilledHole.List(Uprights.Brace(context.Layout, context.Layout.Bays / 2, Side.Right).Shape, flat: false);
        return holes
            .Select(hole => new DrilledSection(whole, [.. holes.Where(h => h.CountsWith(hole)).Select(h => h.Void)]).Concentric().Area)
            .Append(whole.Area)
            .Min();
    }

    private static AdjustedValue? Allowed(LumberValues? values, Project.BraceParameters brace, double push)
    {
        if (values is null || push < 0)
        {
            return values?.Tension(LoadDuration.Guard);
        }

        var plain = values.Compression(LoadDuration.Guard);
        return plain.Times(Stability.Column(brace.Length, brace.Section.Thickness, plain.Value, values.ModulusMin().Value));
    }

    private static CheckResult Check(CheckContext context, GuardPush push, double area, AdjustedValue? allowed, MissingValue missing)
    {
        var words = context.Words();
        var frame = GuardFrame.Build(context.Parameters);
        var force = Math.Abs(frame.Brace(push.Force));
        var stress = force / area;
        var whole = context.Parameters.Frames.Brace.Section.Width * context.Parameters.Frames.Brace.Section.Thickness;
        var result = WoodCheck.Stress(
            Declared,
            words,
            stress,
            allowed,
            $"{push.Name}: {(push.Force > 0 ? "pressed" : "pulled")}, {words.Pounds(Math.Abs(push.Force))} × {words.Length(frame.Top)} / "
                + $"{words.Length(frame.BraceArm)} = "
            + $"{words.Pounds(force)}; arm = ({words.Length(frame.BraceFoot)} − {words.Length(frame.PostFoot)}) × cos "
            + $"{CheckWords.Angle(frame.BraceLean)}; "
            + (area < whole ? $"{words.Area(whole)} less {words.Area(whole - area)} of holes and their mirror images; " : "")
            + $"{words.Pounds(force)} / {words.Area(area)} = {words.Stress(stress)}",
            missing);
        return area < whole ? result with { Source = $"{result.Source}; {DrilledHole.Rule}" } : result;
    }
}

/// <summary>What the joints of post and brace must hold when people push the guard.</summary>
internal static class GuardJoints
{
    private const string Source =
        $"statics of post and brace on their axes; {GuardPush.Source}; NDS 12.2: screws and nails pulled out of end grain do not count";

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

    /// <summary>All three, for an engineer.</summary>
    public static IEnumerable<CheckResult> Check(CheckContext context)
    {
        var words = context.Words();
        var frame = GuardFrame.Build(context.Parameters);
        var pushes = GuardPush.List(context).ToList();
        var most = pushes.Max(p => Math.Abs(p.Force));
        string Each(Func<GuardPush, string> text) => string.Join("; ", pushes.Select(p => $"{p.Name}: {text(p)}"));
        string Way(double force, string positive, string negative) =>
            $"{words.Pounds(Math.Abs(force))} {(force >= 0 ? positive : negative)}";

        yield return Outcome.ForEngineer(
            DeclaredFoot, frame.BraceDown(most), "N", Source,
            Each(p => $"{Way(frame.BraceDown(p.Force), "pulled up", "pressed down")}, "
                + $"{Way(p.Force - frame.BraceOut(p.Force), "pushed outward", "pushed inward")}")
            + ". Screws into end grain never count");
        yield return Outcome.ForEngineer(
            DeclaredBrace, frame.BraceDown(most), "N", Source,
            Each(p => $"{Way(frame.BraceDown(p.Force), "pressed down", "pulled up")}, "
                + $"{Way(frame.BraceOut(p.Force), "pushed outward", "pulled inward")}")
            + ". Screws into end grain never count");
        yield return Outcome.ForEngineer(
            DeclaredHead, Math.Abs(frame.Brace(most)), "N", Source,
            Each(p => $"{Way(frame.Brace(p.Force), "thrust", "pull")} along the brace, "
                + $"{words.Pounds(Math.Abs(frame.Brace(p.Force)) * Math.Cos(frame.Lean + frame.BraceLean))} of it along the post's face"));
    }

    private static DeclaredCheck Joint(string id, string title, string compares) => new(
        id,
        title,
        compares + " under the pushes of guard-post. The joint itself is for an engineer; screws into end grain never count.",
        Source,
        [CheckStatus.Engineer]);
}
