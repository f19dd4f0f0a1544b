using System.Globalization;
using BridgeForm.Checks;

namespace BridgeForm.Tests.Checks.Catalogue.Codes;

/// <summary>Values of the builder's own for wood, each just at and just above what no wood exceeds, in psi, as the check says it.</summary>
internal static class WoodValueProofs
{
    private static readonly (string Key, double Most)[] s_most =
    [
        ("bending", 5000), ("tension", 3500), ("shear", 500), ("compression_across", 2000), ("compression", 4000), ("modulus", 3.5e6),
        ("modulus_min", 1.8e6),
    ];

    [Proves("wood-values", CheckStatus.Pass)]
    public static Proof None() => new Proof(new TwoBays().Check("wood-values"), 0).Saying("no values of your own");

    [Proves("wood-values", CheckStatus.Pass)]
    public static Proof All_at_their_most() => new Proof(Own(_ => 1).Check("wood-values"), 0).Saying("one that some wood has");

    // A hundredth above, each by itself: one is counted, and named.
    [Proves("wood-values", CheckStatus.Fail)]
    public static Proof Bending() => One("bending");

    [Proves("wood-values", CheckStatus.Fail)]
    public static Proof Tension() => One("tension");

    [Proves("wood-values", CheckStatus.Fail)]
    public static Proof Shear() => One("shear");

    [Proves("wood-values", CheckStatus.Fail)]
    public static Proof Across() => One("compression_across");

    [Proves("wood-values", CheckStatus.Fail)]
    public static Proof Along() => One("compression");

    [Proves("wood-values", CheckStatus.Fail)]
    public static Proof Modulus() => One("modulus");

    [Proves("wood-values", CheckStatus.Fail)]
    public static Proof Least_modulus() => One("modulus_min");

    // Emin as high as E itself.
    [Proves("wood-values", CheckStatus.Fail)]
    public static Proof Least_modulus_of_the_modulus() => new Proof(
        Own(k => string.Equals(k, "modulus", StringComparison.Ordinal) ? 1.8 / 3.5 : 1).Check("wood-values"), 1)
        .Saying("modulus_min", "0.62");

    [Proves("wood-values", CheckStatus.Fail)]
    public static Proof All() => new Proof(Own(_ => 1.01).Check("wood-values"), s_most.Length).Saying("bending", "shear", "modulus_min");

    private static Proof One(string key) => new Proof(
        Own(k => string.Equals(k, key, StringComparison.Ordinal) ? 1.01 : 1).Check("wood-values"), 1).Saying($"2x4: {key} ");

    private static TwoBays Own(Func<string, double> times) => new()
    {
        More = "values: [{ species: southern-pine, grade: no1, size: 2x4, source: invented, "
            + string.Join(", ", s_most.Select(m => string.Create(CultureInfo.InvariantCulture, $"{m.Key}: {m.Most * times(m.Key):R} psi")))
            + " }]",
    };
}
