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

    private static Proof Leaning(string use, double tilt, double most)
    {
        var (low, high) = (14.0, 80.0);
        for (var i = 0; i < 60; i++)
        {
            var middle = (low + high) / 2;
            (low, high) = RollProofs.Ropes(middle, Psf, 1).Tilt > tilt ? (middle, high) : (low, middle);
        }

        var bridge = RollProofs.Loaded(
            low, FormattableString.Invariant($"live: 0 psf, point: {{ force: 0 lbf }}, eccentricity: 100 %, cases: [{{ id: crowd, live: {Psf} psf }}]")) with
        {
            Use = use,
        };
        var first = Math.Atan(RollProofs.Ropes(low, Psf, 1).FirstTilt) / Degree;
        return new Proof(bridge.Check("cross-slope"), tilt, Math.Tan(most * Degree)) { Error = 1e-4 }
            .Saying("case crowd", FormattableString.Invariant($"{first:0.0}° before the weights lean with the deck"));
    }

    // 300 lbf at the edge, 6 in from the posts' inner face; the share on its rope is 1 where it stands over it, and a little
    // more of itself leans out with the frame.
    [Proves("load-tips", CheckStatus.Pass, Side.Within)]
    [Proves("load-tips", CheckStatus.Warn, Side.Beyond)]
    public static Proof At_the_edge(double share)
    {
        var (low, high) = (12.0, 60.0);
        for (var i = 0; i < 60; i++)
        {
            var middle = (low + high) / 2;
            (low, high) = Share(middle) > share ? (middle, high) : (low, middle);
        }

        return new Proof(RollProofs.Loaded(low, Edge).Check("load-tips"), share, 1) { Error = 1e-4 }.Saying("point-edge-mid");
    }

    [Proves("keeper-uplift-load", CheckStatus.Engineer)]
    public static Proof Lifted_by_someone_at_the_edge()
    {
        var lighter = Light(20).Loads.Lighter;
        Assert.True(lighter < -10);
        return new Proof(RollProofs.Loaded(20, Edge).Check("keeper-uplift-load"), -TwoLinks.Newtons(lighter)) { Error = 1e-3 }
            .Saying("case point-edge-mid", "frame F01");
    }

    [Proves("keeper-uplift-load", CheckStatus.Engineer)]
    public static Proof Nothing_is_lifted_between_wide_ropes() =>
        new Proof(RollProofs.Loaded(46, Edge).Check("keeper-uplift-load"), 0).Saying("no case lifts a frame off a rope");

    // 5,000 lbf, so that a single frame turns over on ropes close together: even in the middle its roll factor is below 1.
    [Proves("load-tips", CheckStatus.Fail)]
    public static Proof Tips_right_over() => Over("load-tips", "it rolls over in case point-edge-mid");

    [Proves("keeper-uplift-load", CheckStatus.Fail)]
    public static Proof Nothing_holds_it_down() => Over("keeper-uplift-load", "it rolls over in case point-edge-mid");

    [Proves("cross-slope", CheckStatus.Fail)]
    public static Proof No_tilt_is_told_of_what_rolls_over() => Over("cross-slope", "it rolls over in case", "point-edge-mid");

    private const double Degree = Math.PI / 180;
    private const double Psf = 60;
    private const string Edge = "live: 0 psf, point: { force: 300 lbf, edge: 6 in }";

    private static double Share(double spacing)
    {
        var (on, aside) = (300.0, (RollProofs.Apart(spacing).Between / 2) - 6);
        var ropes = RollProofs.Ropes(spacing, 0, 0.5).With(on, aside, RollProofs.PeopleHigh);
        return 0.5 + ((aside + (RollProofs.PeopleHigh * ropes.Tilt)) / spacing);
    }

    // 0.6 of the own weight (ASCE 7 2.4.1, from memory) with wood at 30 in place of 40 lb/ft³ and 15 in place of 20; 3 lb of
    // hardware on the base's top stay.
    private static TwoRopes Light(double spacing)
    {
        var bridge = RollProofs.Apart(spacing);
        var (hanging, moment) = RollProofs.Dead(bridge);
        return new TwoRopes(spacing, bridge.Sag, 0.6 * ((0.75 * (hanging - 3)) + 3), 0.6 * ((0.75 * (moment - (3 * 5.25))) + (3 * 5.25)), 1) { Marked = hanging }
            .With(300, (bridge.Between / 2) - 6, RollProofs.PeopleHigh);
    }

    private static Proof Over(string id, params string[] says)
    {
        Assert.True(RollProofs.Ropes(12, 0, 0.5).With(5000, 0, RollProofs.PeopleHigh).Factor() < 1);
        var bridge = RollProofs.Loaded(12, "live: 0 psf, point: { force: 5000 lbf, edge: 6 in }");
        return new Proof(bridge.Check(id), 0).Saying(says);
    }
}
