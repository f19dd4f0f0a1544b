using BridgeForm.Checks;

namespace BridgeForm.Tests.Checks.Catalogue.Ropes;

/// <summary>
/// Tilt of the deck, loads outside the ropes, and what they lift: a single frame that leans with the weights on it, by hand
/// (<see cref="TwoRopes"/>). Own figures: private, look above 5°, fails above 8°; public 3° and 5°.
/// </summary>
internal static class TiltProofs
{
    // A crowd of 60 psf, all of it on one rope, and nobody else; the ropes so far apart that the frame leans as wanted.
    [Proves("cross-slope", CheckStatus.Warn, Side.Within)]
    [Proves("cross-slope", CheckStatus.Fail, Side.Beyond)]
    public static Proof Beside_8_degrees(double share) => Leaning("private", Math.Tan(8 * Degree) * share, 8);

    [Proves("cross-slope", CheckStatus.Warn, Side.Within)]
    [Proves("cross-slope", CheckStatus.Fail, Side.Beyond)]
    public static Proof Beside_5_degrees_in_public(double share) => Leaning("public", Math.Tan(5 * Degree) * share, 5);

    [Proves("cross-slope", CheckStatus.Pass)]
    public static Proof Just_below_5_degrees() => Leaning("private", Math.Tan(5 * Degree) * 0.9995, 8);

    [Proves("cross-slope", CheckStatus.Warn)]
    public static Proof Just_above_5_degrees() => Leaning("private", Math.Tan(5 * Degree) * 1.0005, 8);

    [Proves("cross-slope", CheckStatus.Pass)]
    public static Proof Just_below_3_degrees_in_public() => Leaning("public", Math.Tan(3 * Degree) * 0.9995, 5);

    [Proves("cross-slope", CheckStatus.Warn)]
    public static Proof Just_above_3_degrees_in_public() => Leaning("public", Math.Tan(3 * Degree) * 1.0005, 5);

    private const double Degree = Math.PI / 180;

    private static readonly TwoBays s_bridge = RollProofs.Apart(46);

    private static Proof Leaning(string use, double tilt, double most)
    {
        const string Loads = "loads: { live: 60 psf, point: { force: 0 lbf } }";
        var (low, high) = (14.0, 80.0);
        for (var i = 0; i < 60; i++)
        {
            var middle = (low + high) / 2;
            (low, high) = RollProofs.Ropes(middle, Psf, 1).Tilt > tilt ? (middle, high) : (low, middle);
        }

        var bridge = s_bridge with
        {
            Use = use,
            Spacing = low,
            More = s_bridge.More.Replace(
                Loads,
                FormattableString.Invariant($"loads: {{ live: 0 psf, point: {{ force: 0 lbf }}, eccentricity: 100 %, cases: [{{ id: crowd, live: {Psf} psf }}] }}"),
                StringComparison.Ordinal),
        };
        var first = Math.Atan(RollProofs.Ropes(low, Psf, 1).FirstTilt) / Degree;
        return new Proof(bridge.Check("cross-slope"), tilt, Math.Tan(most * Degree)) { Error = 1e-4 }
            .Saying("case crowd", FormattableString.Invariant($"{first:0.0}° before the weights lean with the deck"));
    }

    private const double Psf = 60;
}
