namespace BridgeForm.Checks;

/// <summary>Shear along the grain of a base, beside its channels and at them.</summary>
internal static class BaseShear
{
    /// <summary>Full section.</summary>
    public static DeclaredCheck Declared { get; } = new(
        "base-shear",
        "Shear in a base beside its channels",
        "V against (2/3)·Fv'·b·d of the full section, the cases of base-bending. No load near a rope is left out.",
        "NDS 3.4.2 (ASD); NDS Supplement; factors named in the result",
        [CheckStatus.Pass, CheckStatus.Fail, CheckStatus.Engineer]);

    /// <summary>Net section.</summary>
    public static DeclaredCheck DeclaredNet { get; } = new(
        "base-channel-shear",
        "Shear in a base at a rope channel",
        "V against (2/3)·Fv'·b·dn of what the channel leaves; where the case puts the bottom in tension at the channel, against the notch formula (2/3)·Fv'·b·dn·(dn/d)².",
        "NDS 3.4.2 and 3.4.3.2 (ASD, from memory); NDS Supplement; factors named in the result",
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
        var stretches = section.Between(context.Parameters.Frames.Base.Length / 2);
        var worst = cases
            .SelectMany(c => stretches.SelectMany(s => c.Beam.Places(s.From, s.To)), (c, z) => (Case: c, At: z, Shear: Math.Abs(c.Beam.Shear(z))))
            .MaxBy(v => v.Shear / v.Case.Duration.Factor);
        var (breadth, depth) = section.Full;
        return Check(
            context, Declared, worst.Case, worst.At, worst.Shear, "(2/3)·Fv'·b·d", 2.0 / 3 * breadth * depth, $"b = {context.People().Length(breadth)}, d = {context.People().Length(depth)}");
    }

    private static CheckResult Net(CheckContext context, BaseSection section, IEnumerable<BaseCase> cases)
    {
        var (breadth, depth) = section.Full;
        var left = section.Net.Depth;
        var worst = cases
            .SelectMany(c => section.Channels.Select(s => AtChannel(c, s.From, s.To)))
            .MaxBy(v => v.Shear / v.Case.Duration.Factor / Area(v.BottomTension));
        var words = context.People();
        return Check(
            context,
            DeclaredNet,
            worst.Case,
            worst.At,
            worst.Shear,
            worst.BottomTension ? "bottom in tension: (2/3)·Fv'·b·dn·(dn/d)²" : "top in tension: (2/3)·Fv'·b·dn",
            Area(worst.BottomTension),
            $"b = {words.Length(breadth)}, d = {words.Length(depth)}, dn = {words.Length(left)}");

        double Area(bool bottom) => bottom
            ? Notches.ShearAtTensionNotch(1, breadth, depth, left)
            : Notches.Shear(1, breadth, left);
    }

    /// <summary>Largest shear of a case at a channel, and whether it puts the bottom in tension anywhere there.</summary>
    private static (BaseCase Case, double At, double Shear, bool BottomTension) AtChannel(BaseCase loads, double from, double to)
    {
        var places = loads.Beam.Places(from, to).ToList();
        var at = places.MaxBy(z => Math.Abs(loads.Beam.Shear(z)));
        return (loads, at, Math.Abs(loads.Beam.Shear(at)), places.Exists(z => loads.Beam.Moment(z) > ChannelFaces.Nothing));
    }

    private static CheckResult Check(
        CheckContext context, DeclaredCheck declared, BaseCase loads, double at, double shear, string formula, double area, string sizes)
    {
        var words = context.People();
        var text = $"{loads.Name}, {words.Length(Math.Abs(at))} from the middle: V = {words.Pounds(shear)}; {sizes}";
        if (BaseSection.Shear(context, loads.Duration) is not { } strength)
        {
            return Outcome.ForEngineer(declared, shear, "N", declared.Source, $"{text}; {BaseSection.Missing(context)}");
        }

        var capacity = strength.Value * area;
        return Outcome.AtMost(
            declared,
            shear,
            capacity,
            "N",
            $"{declared.Source.Split(';')[0]}; {strength.Sources}",
            $"{text}; {strength.Text(words)}; {formula} = {words.Pounds(capacity)}");
    }
}
