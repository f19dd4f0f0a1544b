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
        "fb = M / S of the full section, and at each hole of what it leaves, the base of the longest interior bay as a beam on two ropes, loaded by the deck (dead, live, snow where given and three quarters of both together, half of each, the point load whole in the middle and whole at loads.point.edge from the posts' inner face; a deck of treads where its stringers stand), posts and braces (their weight, a push on one guard either way), against Fb'. Holes (keeper's and your own) take their full diameter out of the section as deep as they go; those nearer than four diameters along the grain count together; S is that of the edge further from the middle of what is left.",
        $"{Standard}; {Holes}",
        [CheckStatus.Pass, CheckStatus.Fail, CheckStatus.Engineer]);

    /// <summary>At the channels.</summary>
    public static DeclaredCheck DeclaredNet { get; } = new(
        "base-channel-bending",
        "Bending of a base at a rope channel",
        "fb = M / S of what the channel leaves at its deep mouth, less the holes in it and within four diameters of its walls, the same cases, at the rope and at both walls, against Fb'. The result says which face is in tension.",
        $"{Standard}; {Holes}",
        [CheckStatus.Pass, CheckStatus.Fail, CheckStatus.Engineer]);

    private const string Holes = $"holes: {DrilledHole.Rule}";

    /// <summary>Both; none for a bridge without interior frames.</summary>
    public static IEnumerable<CheckResult> Of(CheckContext context)
    {
        var cases = BaseCases.Of(context);
        if (!cases.IsEmpty)
        {
            var section = BaseSection.Of(context);
            yield return Check(context, Declared, section.Full, [.. section.Beside(context.Parameters.Frames.Base.Length / 2)], cases);
            yield return Check(context, DeclaredNet, section.Net, [.. section.Channels()], cases);
        }
    }

    /// <param name="context">The bridge.</param>
    /// <param name="declared">The check.</param>
    /// <param name="slender">What beam stability goes by.</param>
    /// <param name="stretches">Where, and what is left there.</param>
    /// <param name="cases">Loads.</param>
    private static CheckResult Check(
        CheckContext context,
        DeclaredCheck declared,
        RectangularSection slender,
        ImmutableArray<BaseStretch> stretches,
        IEnumerable<BaseCase> cases)
    {
        var words = context.People();
        var worst = cases
            .SelectMany(c => stretches.SelectMany(s => c.Beam.Places(s.From, s.To).Select(z => new BaseEffect(c, s, z, c.Beam.Moment(z)))))
            .MaxBy(m => Math.Abs(m.Value) / m.Stretch.Section.Modulus / m.Case.Duration.Factor)!;
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
