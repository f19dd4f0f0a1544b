using BridgeForm.Checks;

namespace BridgeForm.Tests.Checks.Catalogue.Ropes;

/// <summary>
/// How far the joints of the guards close and open: over the one frame of two bays both chords turn by as much, so a joint so high
/// over the ropes moves by height × 2·(atan(fall / 72) − atan(8 / 72)), with the fall below the guard's own place. By hand.
/// </summary>
internal static class JointProofs
{
    private const double Degree = Math.PI / 180;

    // A post's centre line at its head: 18.25 in at the base, half of 3.5 in along the lean, 24 in of lean.
    private static readonly double s_aside = 18.25 + (1.75 / Math.Cos(8 * Degree)) + (24 * Math.Sin(8 * Degree));

    // Base's top 5.25 in over the rope; the head's centre 24 in along the post; cap and boards 1-1/2 in.
    private static readonly double s_cap = 5.25 + (24 * Math.Cos(8 * Degree)) + 1.5;
    private const double Deck = 5.25 + 1.5;

    // A rope that stretches easily and whose growth is not known (invented), 60 psf all along, 70 % of it on one rope: the guard
    // outside that rope falls furthest, and the other one rises.
    [Proves("joint-room", CheckStatus.Engineer)]
    public static Proof People_to_one_side()
    {
        var bridge = RollProofs.Loaded(
            46, "live: 0 psf, point: { force: 0 lbf }, eccentricity: 70 %, cases: [{ id: crowd, live: 60 psf }]") with
        {
            Rope = "{ diameter: 3/4 in, mass_per_length: 1.04 lb/ft, breaking_strength: 10000 lbf, metallic_area: 0.05 in2, modulus: 4400 "
                + "ksi, source: invented }",
            Ropes = ", stretch: [0 %, 0 %]",
            Site = ", temperatures: [59 F, 61 F]",
        };
        var ropes = RollProofs.Ropes(46, 60, 0.7) with { Rope = new TwoLinks { Stiffness = 4.4e6 * 0.05 } };
        var (heavier, lighter) = (Fall(ropes, ropes.Loads.Heavier), Fall(ropes, ropes.Loads.Lighter));
        var low = ((heavier + lighter) / 2) + ((heavier - lighter) * s_aside / 46);
        Assert.True(low > heavier && heavier > lighter);
        return new Proof(bridge.Check("joint-room"), s_cap * Turn(low) * TwoBays.Inch) { Error = 2e-4 }.Saying(
            "F01, case crowd", $"{Inches(s_cap * Turn(low))} (at", $"surface {Inches(Deck * Turn(low))} and");
    }

    // Nobody on it: heat lets both ropes down, cold pulls them up, 60 °F apart from 60 °F.
    [Proves("joint-room", CheckStatus.Engineer)]
    public static Proof Heat_and_cold()
    {
        var bridge = RollProofs.Loaded(46, "live: 0 psf, point: { force: 0 lbf }") with { Site = ", temperatures: [-60 F, 140 F]" };
        var (hot, cold) = (Grown(bridge, 80), Grown(bridge, -120));
        return new Proof(bridge.Check("joint-room"), s_cap * Turn(hot) * TwoBays.Inch) { Error = 2e-3 }.Saying(
            "case hot", "case cold", $"open by up to {Inches(-s_cap * Turn(cold))} (at",
            $"surface {Inches(Deck * Turn(hot))} and {Inches(-Deck * Turn(cold))};");
    }

    // One bay of 144 in: nothing meets between the supports.
    [Proves("joint-room", CheckStatus.Engineer)]
    public static Proof Without_a_joint() => new Proof(
        Contexts.Check(
            TwoBays.ContextOf(new TwoBays().Text.Replace("spacing: 74 in", "spacing: 144.5 in", StringComparison.Ordinal)), "joint-room"),
        0).Saying("no frame between the supports");

    private static double Turn(double fall) => 2 * (Math.Atan(fall / 72) - Math.Atan(8.0 / 72));

    private static double Fall(TwoRopes ropes, double load) =>
        ropes.Rope.Drop(load, ropes.Rope.Length(ropes.Hanging / 2, ropes.Sag));

    private static double Grown(TwoBays bridge, double degrees)
    {
        var (rope, dead) = (new TwoLinks(), TwoLinks.DeadLoad(bridge));
        return rope.Drop(dead, rope.Length(dead, bridge.Sag), 1 + (TwoLinks.Expansion * degrees));
    }

    // As lengths are printed.
    private static string Inches(double length) => FormattableString.Invariant($"{length:0.###} in");
}
