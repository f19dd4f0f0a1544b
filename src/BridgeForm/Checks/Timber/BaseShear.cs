namespace BridgeForm.Checks.Timber;

/// <summary>Shear along the grain of a base, beside its channels and at them.</summary>
internal static class BaseShear
{
    /// <summary>Full section.</summary>
    public static DeclaredCheck Declared { get; } = new(
        "base-shear",
        "Shear in a base beside its channels",
        "V against (2/3)·Fv'·b·d of the full section, and at each hole of what it leaves, the cases of base-bending. No load near a rope is left out. A hole from above or below takes its diameter off b over the whole depth; one across parts d, and the parts h carry Σh³/h² of the deepest.",
        $"NDS 3.4.2 (ASD); NDS Supplement; factors named in the result; {DrilledHole.Rule}",
        [CheckStatus.Pass, CheckStatus.Fail, CheckStatus.Engineer]);

    /// <summary>Net section.</summary>
    public static DeclaredCheck DeclaredNet { get; } = new(
        "base-channel-shear",
        "Shear in a base at a rope channel",
        "V against (2/3)·Fv'·b·dn of what the channel leaves, less the holes in it and near it as in base-shear; where the case puts the bottom in tension at the channel, against the notch formula (2/3)·Fv'·b·dn·(dn/d)².",
        $"NDS 3.4.2 and 3.4.3.2 (ASD, from memory); NDS Supplement; factors named in the result; {DrilledHole.Rule}",
        [CheckStatus.Pass, CheckStatus.Fail, CheckStatus.Engineer]);

    /// <summary>Both; none for a bridge without interior frames.</summary>
    public static IEnumerable<CheckResult> Of(CheckContext context)
    {
        var cases = BaseCases.Of(context);
        if (!cases.IsEmpty)
        {
            var section = BaseSection.Of(context);
            yield return Full(context, section, cases);
            yield return Net(context, section, cases);
        }
    }

    private static CheckResult Full(CheckContext context, BaseSection section, IEnumerable<BaseCase> cases)
    {
        var stretches = section.Beside(context.Parameters.Frames.Base.Length / 2).ToList();
        var worst = cases
            .SelectMany(c => stretches.SelectMany(s => c.Beam.Places(s.From, s.To).Select(z => new BaseEffect(c, s, z, Math.Abs(c.Beam.Shear(z))))))
            .MaxBy(v => v.Value / v.Case.Duration.Factor / v.Stretch.Section.ShearArea)!;
        var left = worst.Stretch.Section;
        return Check(
            context,
            Declared,
            worst,
            "(2/3)·Fv'·b·d",
            Notches.Shear(1, left.ShearBreadth, left.ShearDepth),
            left.ShearText(context.People(), "d"));
    }

    private static CheckResult Net(CheckContext context, BaseSection section, IEnumerable<BaseCase> cases)
    {
        var depth = section.Full.Depth;
        var stretches = section.Channels().ToList();
        var worst = cases
            .SelectMany(c => stretches.Select(s => AtChannel(c, s)))
            .MaxBy(v => v.Value / v.Case.Duration.Factor / Area(v.Stretch.Section, v.BottomTension))!;
        var words = context.People();
        return Check(
            context,
            DeclaredNet,
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
        return new BaseEffect(loads, stretch, at, Math.Abs(loads.Beam.Shear(at)), places.Exists(z => loads.Beam.Moment(z) > ChannelFaces.Nothing));
    }

    private static CheckResult Check(
        CheckContext context, DeclaredCheck declared, BaseEffect worst, string formula, double area, string sizes)
    {
        var words = context.People();
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
