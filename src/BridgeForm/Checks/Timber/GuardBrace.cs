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
        "The brace's axial force under the pushes of guard-post, by moments about the post's foot, against what it bears pressed (with column stability over its long edge, about its thin side) and pulled. Of a brace with holes of your own the smallest area counts that is left when the same is taken away on the other side of the axis.",
        $"{Standard}; {GuardPush.Source}; NDS Supplement; factors named in the result; {DrilledHole.Rule}",
        [CheckStatus.Pass, CheckStatus.Fail, CheckStatus.Engineer]);

    /// <summary>The worst push.</summary>
    public static CheckResult Of(CheckContext context)
    {
        var brace = context.Parameters.Frames.Brace;
        var values = LumberValues.Find(context.Parameters, brace.Stock, brace.Section);
        var missing = LumberValues.Missing(context.Parameters, brace.Stock, brace.Section);
        var area = Area(context);
        return GuardPush.Of(context)
            .Select(push => Check(context, push, area, Allowed(values, brace, push.Force), missing))
            .MaxBy(c => c.Ratio ?? c.Demand)!;
    }

    /// <summary>Smallest area, m².</summary>
    private static double Area(CheckContext context)
    {
        var section = context.Parameters.Frames.Brace.Section;
        var whole = new RectangularSection(section.Thickness, section.Width);
        var holes = DrilledHole.Of(Uprights.Brace(context.Layout, context.Layout.Bays / 2, Side.Right).Shape, flat: false);
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
        var words = context.People();
        var frame = GuardFrame.Of(context.Parameters);
        var force = Math.Abs(frame.Brace(push.Force));
        var stress = force / area;
        var whole = context.Parameters.Frames.Brace.Section.Width * context.Parameters.Frames.Brace.Section.Thickness;
        var result = WoodCheck.Stress(
            Declared,
            words,
            stress,
            allowed,
            $"{push.Name}: {(push.Force > 0 ? "pressed" : "pulled")}, {words.Pounds(Math.Abs(push.Force))} × {words.Length(frame.Top)} / {words.Length(frame.BraceArm)} = "
            + $"{words.Pounds(force)}; arm = ({words.Length(frame.BraceFoot)} − {words.Length(frame.PostFoot)}) × cos {CheckWords.Angle(frame.BraceLean)}; "
            + (area < whole ? $"{words.Area(whole)} less {words.Area(whole - area)} of holes and their mirror images; " : "")
            + $"{words.Pounds(force)} / {words.Area(area)} = {words.Stress(stress)}",
            missing);
        return area < whole ? result with { Source = $"{result.Source}; {DrilledHole.Rule}" } : result;
    }
}
