using System.Collections.Immutable;

namespace BridgeForm.Checks.Timber;

/// <summary>Bending of a base, beside its channels and at them.</summary>
internal static class BaseBending
{
    private const string Standard = "NDS 3.3 (ASD); NDS Supplement; factors named in the result";

    /// <summary>Beside the channels.</summary>
    public static DeclaredCheck Declared { get; } = new(
        "base-bending",
        "Bending of a base beside its channels",
        "fb = M / S of the full section, and at each hole of what it leaves, the heaviest interior base as a beam on two ropes with the "
            + "heaviest bay and what lies on the longest, loaded by the deck (dead, live, snow where given and three quarters of both "
            + "together, half of each, the point load whole in the middle and whole at loads.point.edge from the posts' inner face; a deck "
            + "of treads where its stringers stand), posts and braces (their weight, a push on one guard either way, a brace that is "
            + "pressed standing in the middle of its foot or on either edge of it), wood wet (for a push on the empty deck the lightest "
            + "frame and bay, dry, too), leaning as far as any frame does under people, snow or the point load, against Fb'. Holes "
            + "(keeper's and your own) take their full diameter out of the section as deep as they go; those nearer than four diameters "
            + "along the grain count together; S is that of the edge further from the middle of what is left.",
        $"{Standard}; {Holes}",
        [CheckStatus.Pass, CheckStatus.Fail, CheckStatus.Engineer]);

    /// <summary>At the channels.</summary>
    public static DeclaredCheck DeclaredNet { get; } = new(
        "base-channel-bending",
        "Bending of a base at a rope channel",
        "fb = M / S of what the channel leaves at its deep mouth, less the holes in it and within four diameters of its walls, the same "
            + "cases, at the rope and at both walls, against Fb'. The result says which face is in tension.",
        $"{Standard}; {Holes}",
        [CheckStatus.Pass, CheckStatus.Fail, CheckStatus.Engineer]);

    private const string Holes = $"holes: {DrilledHole.Rule}";

    /// <summary>Both; none for a bridge without interior frames.</summary>
    public static IEnumerable<CheckResult> Check(CheckContext context)
    {
        var cases = BaseCases.List(context);
        if (!cases.IsEmpty)
        {
            var section = BaseSection.Cut(context);
            yield return Check(context, Declared, section.Full, [.. section.Beside(context.Parameters.Frames.Base.Length / 2)], cases)
                .OnBase(context, BaseCases.Governing(context.Layout));
            yield return Check(context, DeclaredNet, section.Net, [.. section.Channels()], cases)
                .OnBase(context, section.Frame);
        }
    }

    /// <summary>The worst place of the worst case.</summary>
    /// <param name="context">The bridge.</param>
    /// <param name="declared">The check.</param>
    /// <param name="slender">What beam stability goes by.</param>
    /// <param name="stretches">Where, and what is left there.</param>
    /// <param name="cases">Loads.</param>
    public static CheckResult Check(
        CheckContext context,
        DeclaredCheck declared,
        RectangularSection slender,
        ImmutableArray<BaseStretch> stretches,
        IEnumerable<BaseCase> cases)
    {
        var words = context.Words();
        var values = BaseSection.Values(context);
        var worst = cases
            .SelectMany(c => stretches.SelectMany(s => c.Beam.Places(s.From, s.To).Select(z => new BaseEffect(c, s, z, c.Beam.Moment(z)))))
            .MaxBy(m => Math.Abs(m.Value) / m.Stretch.Section.Modulus / m.Case.Duration.Of(values))!;
        var (moment, section) = (Math.Abs(worst.Value), worst.Stretch.Section);
        var stress = moment / section.Modulus;
        var face = worst.Value > 0 ? "bottom" : "top";
        var result = WoodCheck.Stress(
            declared,
            words,
            stress,
            BaseSection.Bending(context, slender, worst.Case.Duration),
            $"{worst.Case.Name}: {face} in tension, {words.Length(Math.Abs(worst.At))} from the middle; "
            + $"{section.ModulusText(words, "the bottom")}; "
            + $"fb = {words.Moment(moment)} / {words.Modulus(section.Modulus)} = {words.Stress(stress)}",
            BaseSection.Missing(context));
        return result with { Source = worst.Stretch.Source(result.Source) };
    }
}

/// <summary>Moment or shear of a base at one place in one case.</summary>
/// <param name="Case">Its loads.</param>
/// <param name="Stretch">What is left of the base there.</param>
/// <param name="At">From the middle, metres.</param>
/// <param name="Value">Newton metres or newtons.</param>
/// <param name="BottomTension">The bottom is in tension somewhere in the stretch; only where it is asked for.</param>
internal sealed record BaseEffect(BaseCase Case, BaseStretch Stretch, double At, double Value, bool BottomTension = false);

/// <summary>Shear along the grain of a base, beside its channels and at them.</summary>
internal static class BaseShear
{
    /// <summary>Full section.</summary>
    public static DeclaredCheck Declared { get; } = new(
        "base-shear",
        "Shear in a base beside its channels",
        "V against (2/3)·Fv'·b·d of the full section, and at each hole of what it leaves, the cases of base-bending. No load near a rope "
            + "is left out. A hole from above or below takes its diameter off b over the whole depth; one across parts d, and the parts h "
            + "carry Σh³/h² of the deepest.",
        $"NDS 3.4.2 (ASD); NDS Supplement; factors named in the result; {DrilledHole.Rule}",
        [CheckStatus.Pass, CheckStatus.Fail, CheckStatus.Engineer]);

    /// <summary>Net section.</summary>
    public static DeclaredCheck DeclaredNet { get; } = new(
        "base-channel-shear",
        "Shear in a base at a rope channel",
        "V against (2/3)·Fv'·b·dn of what the channel leaves, less the holes in it and near it as in base-shear; where the case puts the "
            + "bottom in tension at the channel, against the notch formula (2/3)·Fv'·b·dn·(dn/d)².",
        $"NDS 3.4.2 and 3.4.3.2 (ASD, from memory); NDS Supplement; factors named in the result; {DrilledHole.Rule}",
        [CheckStatus.Pass, CheckStatus.Fail, CheckStatus.Engineer]);

    /// <summary>Both; none for a bridge without interior frames.</summary>
    public static IEnumerable<CheckResult> Check(CheckContext context)
    {
        var cases = BaseCases.List(context);
        if (!cases.IsEmpty)
        {
            var section = BaseSection.Cut(context);
            yield return Full(context, Declared, section, cases)
                .OnBase(context, BaseCases.Governing(context.Layout));
            yield return Net(context, DeclaredNet, section, cases).OnBase(context, section.Frame);
        }
    }

    /// <summary>Beside the channels.</summary>
    public static CheckResult Full(CheckContext context, DeclaredCheck declared, BaseSection section, IEnumerable<BaseCase> cases)
    {
        var stretches = section.Beside(context.Parameters.Frames.Base.Length / 2).ToList();
        var values = BaseSection.Values(context);
        var worst = cases
            .SelectMany(
                c => stretches.SelectMany(s => c.Beam.Places(s.From, s.To).Select(z => new BaseEffect(c, s, z, Math.Abs(c.Beam.Shear(z))))))
            .MaxBy(v => v.Value / v.Case.Duration.Of(values) / v.Stretch.Section.ShearArea)!;
        var left = worst.Stretch.Section;
        return Check(
            context,
            declared,
            worst,
            "(2/3)·Fv'·b·d",
            Notches.Shear(1, left.ShearBreadth, left.ShearDepth),
            left.ShearText(context.Words(), "d"));
    }

    /// <summary>At the channels.</summary>
    public static CheckResult Net(CheckContext context, DeclaredCheck declared, BaseSection section, IEnumerable<BaseCase> cases)
    {
        var depth = section.Full.Depth;
        var stretches = section.Channels().ToList();
        var values = BaseSection.Values(context);
        var worst = cases
            .SelectMany(c => stretches.Select(s => AtChannel(c, s)))
            .MaxBy(v => v.Value / v.Case.Duration.Of(values) / Area(v.Stretch.Section, v.BottomTension))!;
        var words = context.Words();
        return Check(
            context,
            declared,
            worst,
            worst.BottomTension ? "bottom in tension: (2/3)·Fv'·b·dn·(dn/d)²" : "top in tension: (2/3)·Fv'·b·dn",
            Area(worst.Stretch.Section, worst.BottomTension),
            $"d = {words.Length(depth)}, {worst.Stretch.Section.ShearText(words, "dn")}");

        double Area(DrilledSection left, bool bottom) => bottom
            ? Notches.ShearAtTensionNotch(1, left.ShearBreadth, depth, left.ShearDepth)
            : Notches.Shear(1, left.ShearBreadth, left.ShearDepth);
    }

    /// <summary>Largest shear of a case at a channel, and whether it puts the bottom in tension anywhere there.</summary>
    private static BaseEffect AtChannel(BaseCase loads, BaseStretch stretch)
    {
        var places = loads.Beam.Places(stretch.From, stretch.To).ToList();
        var at = places.MaxBy(z => Math.Abs(loads.Beam.Shear(z)));
        return new BaseEffect(
            loads, stretch, at, Math.Abs(loads.Beam.Shear(at)), places.Exists(z => loads.Beam.Moment(z) > ChannelFaces.Nothing));
    }

    private static CheckResult Check(
        CheckContext context, DeclaredCheck declared, BaseEffect worst, string formula, double area, string sizes)
    {
        var words = context.Words();
        var (loads, stretch, at, shear, _) = worst;
        var text = $"{loads.Name}, {words.Length(Math.Abs(at))} from the middle: V = {words.Pounds(shear)}; {sizes}";
        var standard = declared.Source.Split(';')[0];
        if (BaseSection.Shear(context, loads.Duration) is not { } strength)
        {
            return BaseSection.Missing(context).Result(declared, shear, "N", stretch.Source(standard), text);
        }

        var capacity = strength.Value * area;
        return Outcome.AtMost(
            declared,
            shear,
            capacity,
            "N",
            stretch.Source($"{standard}; {strength.Sources}"),
            $"{text}; {strength.Text(words)}; {formula} = {words.Pounds(capacity)}");
    }
}
