using BridgeForm.Checks;

namespace BridgeForm.Tests.Checks.Catalogue.Ropes;

/// <summary>Whether every state of the ropes has a shape.</summary>
internal static class SolvedProofs
{
    // The 12 that every bridge has, people all along in the heat, on four quarters and across, and where a frame falls furthest,
    // tilts most and the deck is steepest; the point load stands at the one frame already.
    [Proves("cases-solved", CheckStatus.Pass)]
    public static Proof All_have_a_shape() => new Proof(new TwoBays().Check("cases-solved"), 0, 0).Saying("22 load cases");

    // Backstays of 500 ft over sliding saddles, 199 °F colder than marked: each takes in 6,000 × 199 × 6.5e-6 = 7.8 in of
    // rope, more than the 5.9 in of the first bay, and the sag has some 17 in to give. That is so in the two cold cases and in
    // the cold row of the hoisting table with frames; the bare rope has no frame that would reach the saddle.
    [Proves("cases-solved", CheckStatus.Fail)]
    public static Proof Frames_that_slide_onto_the_saddle()
    {
        const string Stay = "{ backstay: { length: 500 ft, angle: 20 deg, saddle: sliding } }";
        var bridge = new TwoBays
        {
            Site = $", a: {Stay}, b: {Stay}, reference_temperature: 139 F, temperatures: [-60 F, 140 F]",
            Rope = "strand-ehs-3/4",
            Sag = 35,
            Drop = 35,
            Frames = "stance: plumb",
            More = "loads: { live: 0 psf, point: { force: 0 lbf } }",
        };
        var context = TwoBays.ContextOf(bridge.Text.Replace("spacing: 74 in", "spacing: 6 in", StringComparison.Ordinal));
        return new Proof(Contexts.Check(context, "cases-solved"), 3, 0).Saying(
            "cold: The rope slides", "live-full-cold: ", "hoisting, frames at -60 F");
    }

    // The same rope at an even temperature, new and set short for 2.5 % of stretch: backstays of 22 ft give 264 × 0.025 / 1.025
    // = 6.4 in less, more than the first bay's 5.9 / 1.025. One fault for that end of the range; for its other end, nothing.
    [Proves("cases-solved", CheckStatus.Fail)]
    public static Proof New_rope_set_short_that_slides_onto_the_saddle()
    {
        const string Stay = "{ backstay: { length: 22 ft, angle: 20 deg, saddle: sliding } }";
        var bridge = new TwoBays
        {
            Site = $", a: {Stay}, b: {Stay}",
            Rope = "strand-ehs-3/4",
            Sag = 35,
            Drop = 35,
            Frames = "stance: plumb",
            Ropes = ", stretch: [0 %, 2.5 %]",
            More = "loads: { live: 0 psf, point: { force: 0 lbf } }",
        };
        var context = TwoBays.ContextOf(bridge.Text.Replace("spacing: 74 in", "spacing: 6 in", StringComparison.Ordinal));
        return new Proof(Contexts.Check(context, "cases-solved"), 1, 0).Saying("set short for 2.5 % of stretch: dead: The rope slides");
    }
}
