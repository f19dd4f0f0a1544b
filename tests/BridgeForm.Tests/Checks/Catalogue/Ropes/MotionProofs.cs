using BridgeForm.Checks;

namespace BridgeForm.Tests.Checks.Catalogue.Ropes;

/// <summary>Slopes under load, and how fast the bridge swings: one mass on two links.</summary>
internal static class MotionProofs
{
    private static readonly TwoLinks s_rope = new();

    // EUR 23984 EN (from memory): the critical range ends at 4.6 Hz. Sag of 6 in, loaded until the loaded bridge is that slow.
    [Proves("bounce-vertical", CheckStatus.Pass, Side.Within)]
    [Proves("bounce-vertical", CheckStatus.Warn, Side.Beyond)]
    public static Proof Bounce(double share) => Bouncing("private", share);

    [Proves("bounce-vertical", CheckStatus.Pass, Side.Within)]
    [Proves("bounce-vertical", CheckStatus.Engineer, Side.Beyond)]
    public static Proof Bounce_in_public(double share) => Bouncing("public", share);

    // 1.3 Hz (from memory). To the side one mass on two links is a pendulum as long as the sag; its mass stands above the ropes,
    // and a frame that rolls pulls it along: (K − ω²·m)·(R − ω²·J) = ω⁴·S², K = m·g / sag, R = k·s² / 2 − weight × height with k
    // of one rope, S = mass × height, J = mass × (height² + distance²).
    [Proves("sway-lateral", CheckStatus.Pass, Side.Within)]
    [Proves("sway-lateral", CheckStatus.Warn, Side.Beyond)]
    public static Proof Sway(double share) => Swaying("private", share);

    [Proves("sway-lateral", CheckStatus.Pass, Side.Within)]
    [Proves("sway-lateral", CheckStatus.Engineer, Side.Beyond)]
    public static Proof Sway_in_public(double share) => Swaying("public", share);

    // ADA 2010 405.2: 1 : 12. Under 60 psf on the hottest day, 100 °F against 60 °F, the middle frame hangs lower, and the end
    // frames' floors slope more; the end channels are made so deep that the deck falls as wanted over its 72 − 1.75 in.
    [Proves("deck-slope-loaded", CheckStatus.Pass, Side.Within)]
    [Proves("deck-slope-loaded", CheckStatus.Warn, Side.Beyond)]
    public static Proof Loaded_slope(double share)
    {
        var bridge = new TwoBays { Drop = 5, Ropes = ", stretch: [0 %, 0 %]" };
        for (var i = 0; i < 4; i++)
        {
            bridge = bridge with { Drop = bridge.Drop + (share / 12 * 70.25) - Fall(bridge) };
        }

        return new Proof(bridge.Check("deck-slope-loaded"), share / 12, 1.0 / 12) { Error = 1e-5 }.Saying("live-full-hot");
    }

    // Own figure: 1 : 2, or a stricter one of the file, here 12 %. The crowd of 60 psf loads all of it.
    [Proves("deck-slope-loaded", CheckStatus.Warn)]
    [Proves("deck-slope-loaded", CheckStatus.Fail, Side.Beyond)]
    public static Proof Loaded_slope_of_the_file(double share)
    {
        var bridge = new TwoBays { Drop = 8, More = "limits: { slope: 12 % }" };
        for (var i = 0; i < 4; i++)
        {
            bridge = bridge with { Drop = bridge.Drop + (share * 0.12 * 70.25) - Fall(bridge) };
        }

        return new Proof(bridge.Check("deck-slope-loaded"), share * 0.12, share > 1 ? 0.12 : 1.0 / 12) { Error = 1e-5 }
            .Saying("live-full-hot");
    }

    private static double Fall(TwoBays bridge)
    {
        var dead = TwoLinks.DeadLoad(bridge);
        const double Growth = 1 + (TwoLinks.Expansion * 40);
        var drop = s_rope.Drop(TwoLinks.Heavier(bridge, 60, 0.6, Growth), s_rope.Length(dead, bridge.Sag), Growth);
        return drop + (0.375 * ((1 / Math.Cos(Math.Atan(drop / 72))) - 1)) + bridge.Depth - bridge.EndDepth;
    }

    private static Proof Bouncing(string use, double share)
    {
        var bridge = new TwoBays { Use = use, Sag = 6, Drop = 6 };
        var dead = TwoLinks.DeadLoad(bridge);
        var length = s_rope.Length(dead, bridge.Sag);
        var (low, high) = (0.0, 1000.0);
        for (var i = 0; i < 100; i++)
        {
            var middle = (low + high) / 2;
            var load = TwoLinks.Heavier(bridge, middle, 0.6);
            (low, high) = s_rope.Bounce(load, s_rope.Drop(load, length), length) > 4.6 / share ? (middle, high) : (low, middle);
        }

        var loaded = bridge with { More = FormattableString.Invariant($"loads: {{ live: {low:0.########} psf }}") };
        return new Proof(loaded.Check("bounce-vertical"), 4.6 / share, 4.6) { Error = 1e-4 };
    }

    private static Proof Swaying(string use, double share)
    {
        var (low, high) = (1.0, 20.0);
        for (var i = 0; i < 60; i++)
        {
            var middle = (low + high) / 2;
            (low, high) = Sways(Plain(use, middle)) > 1.3 / share ? (middle, high) : (low, middle);
        }

        return new Proof(Plain(use, low).Check("sway-lateral"), 1.3 / share, 1.3) { Error = 1e-4 }.Saying("all to one side");
    }

    private static TwoBays Plain(string use, double sag) =>
        RollProofs.Loaded(46, "live: 0 psf, point: { force: 0 lbf }") with { Use = use, Sag = sag, Drop = sag };

    // Parts lie about 14 in from the middle: a tenth of that distance changes the frequency by a few millionths.
    private static double Sways(TwoBays bridge)
    {
        const double G = 386.0886;
        var (hanging, moment) = RollProofs.Dead(bridge);
        var length = s_rope.Length(hanging / 2, bridge.Sag);
        var own = 2 * s_rope.PerInch * length;
        var (mass, lever) = ((hanging + own) / G, moment / G);
        var turning = (hanging / G * ((moment / hanging * moment / hanging) + (14 * 14))) + (own / G * 23 * 23);
        var side = mass * G / bridge.Sag;
        var roll = (new TwoRopes(46, bridge.Sag, hanging, moment, 1).Stiffness(hanging / 2) * 46 * 46 / 2) - moment;

        // The lesser root of a·x² − b·x + c = 0 for x = ω².
        var (a, b, c) = ((mass * turning) - (lever * lever), (side * turning) + (roll * mass), side * roll);
        return Math.Sqrt((b - Math.Sqrt((b * b) - (4 * a * c))) / (2 * a)) / (2 * Math.PI);
    }
}
