using System.Collections.Immutable;
using BridgeForm.Checks.Timber;
using BridgeForm.Materials;
using BridgeForm.Quantities;

namespace BridgeForm.Checks.Codes;

/// <summary>Design values of the user's own that no wood has.</summary>
internal static class WoodValues
{
    private const double Psi = Units.PoundForce / (Units.MetresPerInch * Units.MetresPerInch);

    // About twice what the strongest class of hardwood of EN 338, D70, may carry outdoors (from memory), in round numbers. Above them a
    // breaking strength was written for an allowable stress, or another unit was meant.
    private static readonly ImmutableArray<(string Key, Func<DesignValue, double> Of, double Most)> s_most =
    [
        ("bending", v => v.Bending, 5000 * Psi),
        ("tension", v => v.Tension, 3500 * Psi),
        ("shear", v => v.Shear, 500 * Psi),
        ("compression_across", v => v.CompressionAcross, 2000 * Psi),
        ("compression", v => v.Compression, 4000 * Psi),
        ("modulus", v => v.Modulus, 3.5e6 * Psi),
        ("modulus_min", v => v.ModulusMin ?? 0, 1.8e6 * Psi),
    ];

    // Emin = E·(1 − 1.645·COV)·1.03 / 1.66 (NDS appendix D, from memory), and COV is at least nothing.
    private const double MostOfModulus = 1.03 / 1.66;

    /// <summary>The check.</summary>
    public static DeclaredCheck Declared { get; } = new(
        "wood-values",
        "Values of your own that no wood has",
        "Counts the values under values that are beyond any wood, none may be: Fb above 5,000 psi, Ft 3,500 psi, Fv 500 psi, Fc across "
            + "the grain 2,000 psi and along it 4,000 psi, E 3,500,000 psi, Emin 1,800,000 psi or 0.62 of E. Allowable stresses are asked "
            + "for; breaking strengths are several times as high. A value below these may still be too high for its wood: mild-inputs.",
        "own figures: about twice the allowable values of the strongest hardwood class",
        [CheckStatus.Pass, CheckStatus.Fail]);

    /// <summary>Fails where there is any.</summary>
    public static CheckResult Check(CheckContext context)
    {
        var words = context.Words();
        string[] beyond =
        [
            .. from row in context.Parameters.Values
               where row.ModulusMin > MostOfModulus * row.Modulus * (1 + Tolerances.SameLimit)
               select $"values for {row.Species} {row.Grade}, {row.Size}: modulus_min {words.Stress(row.ModulusMin!.Value)} above 0.62 × "
                   + $"modulus {words.Stress(row.Modulus)}",
            .. from row in context.Parameters.Values
               from most in s_most
               where most.Of(row) > most.Most * (1 + Tolerances.SameLimit)
               select $"values for {row.Species} {row.Grade}, {row.Size}: {most.Key} {words.Stress(most.Of(row))} above "
                   + words.Stress(most.Most),
        ];
        return new CheckResult(
            Declared.Id, Declared.Title, beyond.Length > 0 ? CheckStatus.Fail : CheckStatus.Pass, beyond.Length, null, "count", null,
            Declared.Source,
            beyond.Length > 0
                ? $"{string.Join("; ", beyond)}: no wood has that; write allowable stresses of its grade, and look at their units"
                : context.Parameters.Values.IsEmpty ? "no values of your own" : "every value of your own is one that some wood has");
    }
}
