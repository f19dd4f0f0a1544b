using System.Collections.Immutable;
using BridgeForm.Frames;
using BridgeForm.Quantities;
using BridgeForm.Roles;

namespace BridgeForm.Checks.Timber;

/// <summary>A brace that is pressed or pulled by the push on its guard.</summary>
internal static class GuardBrace
{
    private const string Standard = "NDS 3.6.3, 3.7.1, 3.9.1, 3.9.2 (ASD); secant formula of columns loaded off their axis";

    /// <summary>The check.</summary>
    public static DeclaredCheck Declared { get; } = new(
        "guard-brace",
        "Guard brace",
        "The brace's axial force under the pushes of guard-post, by moments about the post's foot, at most 1: in the middle of its contact "
            + "with the post, on its axis, fc/Fc' (with column stability over its long edge, about its thin side) or ft/Ft'; at the lower "
            + "edge of the contact, half its width off the axis at the head, pressed (fc/Fc')² + fb·sec(π/2·√(fc/FcE)) / Fb', "
            + "as if so far off at both ends, pulled ft/Ft' + fb/Fb'; the worse counts. Of a brace with holes of your own each is "
            + "looked at with what they leave; the axial force counts on the area left when the same is taken away on the other side of "
            + "the axis.",
        $"{Standard}; {GuardPush.Source}; NDS Supplement; factors named in the result; {DrilledHole.Rule}",
        [CheckStatus.Pass, CheckStatus.Fail, CheckStatus.Engineer]);

    /// <summary>The worst push, place and section.</summary>
    public static CheckResult Check(CheckContext context)
    {
        var brace = context.Parameters.Frames.Brace;
        var sections = Sections(context);
        var cases = GuardPush.WithWind(context.Layout, context.Parameters)
            .SelectMany(push => push.Places(context.Parameters).SelectMany(
                frame => sections.Select(section => new BraceCase(push, frame, section))))
            .ToList();
        if (LumberValues.Find(context.Parameters, brace.Stock, brace.Section) is { } values)
        {
            return cases.Select(c => Check(context, values, c)).MaxBy(c => c.Demand)!;
        }

        var worst = cases.MaxBy(c => c.Stress)!;
        return LumberValues.Missing(context.Parameters, brace.Stock, brace.Section).Result(
            Declared, worst.Stress, "Pa", Declared.Source, worst.Text(context.Words())).On(context.InFrame(worst.Push.Frame, Role.Brace));
    }

    /// <summary>The whole one first, then at every hole.</summary>
    private static ImmutableArray<DrilledSection> Sections(CheckContext context)
    {
        var section = context.Parameters.Frames.Brace.Section;
        var whole = new RectangularSection(section.Thickness, section.Width);
        var holes = DrilledHole.List(Uprights.Brace(context.Layout, context.Layout.Bays / 2, Side.Right).Shape, flat: false);
        return
        [
            new(whole, []),
            .. holes.Select(hole => new DrilledSection(whole, [.. holes.Where(h => h.CountsWith(hole)).Select(h => h.Void)])),
        ];
    }

    private static CheckResult Check(CheckContext context, LumberValues values, BraceCase loads)
    {
        var (words, length) = (context.Words(), context.Parameters.Frames.Brace.Length);
        var (section, modulus) = (loads.Section.Whole, values.ModulusMin(LoadDuration.Guard).Value);
        var plain = values.Compression(LoadDuration.Guard);
        var axial = loads.IsPressed
            ? plain.Times(Stability.Column(length, section.Breadth, plain.Value, modulus))
            : values.Tension(LoadDuration.Guard);
        var level = values.Bending(LoadDuration.Guard, flat: false);
        var bends = level.Times(Stability.Beam(section, length, cantilever: false, level.Value, modulus));
        var slender = Math.Max(axial.Slenderness, loads.Frame.OffAxis > 0 ? bends.Slenderness : 0);
        var buckling = loads.IsPressed ? Stability.Buckling(length, section.Depth, modulus) : double.PositiveInfinity;
        var (ratio, text) = slender > 1
            ? (slender, WoodCheck.TooSlender(axial.Slenderness > 1 ? axial : bends))
            : loads.Frame.OffAxis > 0 ? OffAxis(words, loads, axial, bends, buckling) : OnAxis(words, loads, axial);
        return Outcome.AtMost(
            Declared,
            ratio,
            1,
            "1",
            $"{Standard}; {(slender > 1 ? WoodCheck.Slender + "; " : "")}{GuardPush.Source}; "
                + TimberWords.Once($"{axial.Sources}; {bends.Sources}") + (loads.Section.IsCut ? $"; {DrilledHole.Rule}" : ""),
            $"{loads.Text(words)}; {axial.Text(words)}; {text}").On(context.InFrame(loads.Push.Frame, Role.Brace));
    }

    private static (double Ratio, string Text) OnAxis(CheckWords words, BraceCase loads, AdjustedValue axial)
    {
        var ratio = loads.Stress / axial.Value;
        return (ratio, $"{words.Stress(loads.Stress)} / {words.Stress(axial.Value)} = {TimberWords.Ratio(ratio)}");
    }

    private static (double Ratio, string Text) OffAxis(
        CheckWords words, BraceCase loads, AdjustedValue axial, AdjustedValue bends, double buckling)
    {
        var share = loads.Stress / buckling;
        if (share >= 1)
        {
            // The secant has no end: the brace bows out whatever bends it.
            return (share, $"fc is not below FcE = {words.Stress(buckling)}: fc / FcE = {TimberWords.Ratio(share)}");
        }

        var (moment, modulus) = (loads.Force * loads.Frame.OffAxis, loads.Section.Modulus);
        var bending = moment / modulus;
        var part = loads.Stress / axial.Value;
        var secant = 1 / Elementary.Cos(Math.PI / 2 * Math.Sqrt(share));
        var ratio = (loads.IsPressed ? part * part : part) + (bending * secant / bends.Value);
        var sum = loads.IsPressed
            ? $"FcE = {words.Stress(buckling)}, sec(π/2·√({words.Stress(loads.Stress)} / {words.Stress(buckling)})) = "
                + $"{TimberWords.Ratio(secant)}; ({words.Stress(loads.Stress)} / {words.Stress(axial.Value)})² + {words.Stress(bending)} × "
                + $"{TimberWords.Ratio(secant)} / {words.Stress(bends.Value)}"
            : $"{words.Stress(loads.Stress)} / {words.Stress(axial.Value)} + {words.Stress(bending)} / {words.Stress(bends.Value)}";
        return (
            ratio,
            $"off the axis by {words.Length(loads.Frame.OffAxis)}: {loads.Section.ModulusText(words, "the inner face")}, fb = "
                + $"{words.Moment(moment)} / {words.Modulus(modulus)} = {words.Stress(bending)}, {bends.Text(words)}; {sum} = "
                + TimberWords.Ratio(ratio));
    }
}

/// <summary>A brace under one push, its force at one place of its head, at one section.</summary>
/// <param name="Push">On the guard.</param>
/// <param name="Frame">With the resultant in the middle of the contact or at its lower edge.</param>
/// <param name="Section">What is left of it there.</param>
internal sealed record BraceCase(GuardPush Push, GuardFrame Frame, DrilledSection Section)
{
    /// <summary>Newtons, without a sign.</summary>
    public double Force { get; } = Math.Abs(Frame.Brace(Push.Force));

    /// <summary>Pressed by a push outward, pulled by one inward.</summary>
    public bool IsPressed => Push.Force > 0;

    /// <summary>fc or ft, pascals.</summary>
    public double Stress => Force / Area;

    private double Area { get; } = Section.Concentric().Area;

    /// <summary>The force by its lever, and the stress.</summary>
    public string Text(CheckWords words)
    {
        var whole = Section.Whole.Area;
        var less = Area < whole ? $"{words.Area(whole)} less {words.Area(whole - Area)} of holes and their mirror images; " : "";
        return $"{Push.Name}: {(IsPressed ? "pressed" : "pulled")}, resultant {Frame.Where}: {words.Pounds(Math.Abs(Push.Force))} × "
            + $"{words.Length(Frame.Top)} / {words.Length(Frame.BraceArm)} = {words.Pounds(Force)}; arm = "
            + $"({words.Length(Frame.BraceFoot)} − {words.Length(Frame.PostFoot)}) × cos {CheckWords.Angle(Frame.BraceLean)}; {less}"
            + $"{words.Pounds(Force)} / {words.Area(Area)} = {words.Stress(Stress)}";
    }
}
