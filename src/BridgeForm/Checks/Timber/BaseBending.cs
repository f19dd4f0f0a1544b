namespace BridgeForm.Checks;

/// <summary>Bending of a base, beside its channels and at them.</summary>
internal static class BaseBending
{
    private const string Standard = "NDS 3.3 (ASD); NDS Supplement; factors named in the result";

    /// <summary>Full section.</summary>
    public static DeclaredCheck Declared { get; } = new(
        "base-bending",
        "Bending of a base beside its channels",
        "fb = M / S of the full section, the base of the longest interior bay as a beam on two ropes, loaded by the deck (dead, live, snow where given, half of either, point load; a deck of treads where its stringers stand), posts and braces (their weight, a push on one guard either way), against Fb'.",
        Standard,
        [CheckStatus.Pass, CheckStatus.Fail, CheckStatus.Engineer]);

    /// <summary>Net section.</summary>
    public static DeclaredCheck DeclaredNet { get; } = new(
        "base-channel-bending",
        "Bending of a base at a rope channel",
        "fb = M / S of what the channel leaves at its deep mouth, the same cases, at the rope and at both walls, against Fb'. The result says which face is in tension.",
        Standard,
        [CheckStatus.Pass, CheckStatus.Fail, CheckStatus.Engineer]);

    /// <summary>Both; none for a bridge without interior frames.</summary>
    public static IEnumerable<CheckResult> Of(CheckContext context)
    {
        var cases = BaseCases.Of(context);
        if (!cases.IsEmpty)
        {
            var section = BaseSection.Of(context);
            yield return Check(context, Declared, section.Full, section.Between(context.Parameters.Frames.Base.Length / 2), cases);
            yield return Check(context, DeclaredNet, section.Net, section.Channels, cases);
        }
    }

    private static CheckResult Check(
        CheckContext context,
        DeclaredCheck declared,
        RectangularSection section,
        IEnumerable<(double From, double To)> stretches,
        IEnumerable<BaseCase> cases)
    {
        var words = context.People();
        var worst = cases
            .SelectMany(c => stretches.SelectMany(s => c.Beam.Places(s.From, s.To)), (c, z) => (Case: c, At: z, Moment: c.Beam.Moment(z)))
            .MaxBy(m => Math.Abs(m.Moment) / m.Case.Duration.Factor);
        var stress = Math.Abs(worst.Moment) / section.Modulus;
        var face = worst.Moment > 0 ? "bottom" : "top";
        return WoodCheck.Stress(
            declared,
            words,
            stress,
            BaseSection.Bending(context, section, worst.Case.Duration),
            $"{worst.Case.Name}: {face} in tension, {words.Length(Math.Abs(worst.At))} from the middle; "
            + $"S = {words.Length(section.Breadth)} × ({words.Length(section.Depth)})² / 6 = {words.Modulus(section.Modulus)}; "
            + $"fb = {words.Moment(Math.Abs(worst.Moment))} / {words.Modulus(section.Modulus)} = {words.Stress(stress)}",
            BaseSection.Missing(context));
    }
}
