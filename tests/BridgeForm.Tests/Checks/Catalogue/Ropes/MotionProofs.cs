using BridgeForm.Checks;

namespace BridgeForm.Tests.Checks.Catalogue.Ropes;

/// <summary>Slopes under load, and how fast the bridge swings: one mass on two links.</summary>
internal static class MotionProofs
{
    private static readonly TwoLinks s_rope = new();

    // AASHTO Guide Specifications 2009 (from memory): 3 Hz. Sag of 6 in, loaded until the loaded bridge is that slow.
    [Proves("bounce-vertical", CheckStatus.Pass, Side.Within)]
    [Proves("bounce-vertical", CheckStatus.Warn, Side.Beyond)]
    public static Proof Bounce(double share) => Bouncing("private", share);

    [Proves("bounce-vertical", CheckStatus.Pass, Side.Within)]
    [Proves("bounce-vertical", CheckStatus.Engineer, Side.Beyond)]
    public static Proof Bounce_in_public(double share) => Bouncing("public", share);

    // 1.3 Hz (from memory). To the side one mass on two links is a pendulum as long as the sag: f = √(g / sag) / 2π.
    [Proves("sway-lateral", CheckStatus.Pass, Side.Within)]
    [Proves("sway-lateral", CheckStatus.Warn, Side.Beyond)]
    public static Proof Sway(double share) => Swaying("private", share);

    [Proves("sway-lateral", CheckStatus.Pass, Side.Within)]
    [Proves("sway-lateral", CheckStatus.Engineer, Side.Beyond)]
    public static Proof Sway_in_public(double share) => Swaying("public", share);

    // ADA 2010 405.2: 1 : 12. Under 60 psf the middle frame hangs lower, and the end frames' floors slope more; the end
    // channels are made so deep that the deck falls as wanted over its 72 − 1.75 in.
    [Proves("deck-slope-loaded", CheckStatus.Pass, Side.Within)]
    [Proves("deck-slope-loaded", CheckStatus.Warn, Side.Beyond)]
    public static Proof Loaded_slope(double share)
    {
        var bridge = new TwoBays { Drop = 5 };
        for (var i = 0; i < 4; i++)
            bridge = bridge with { Drop = bridge.Drop + (share / 12 * 70.25) - Fall(bridge) };
        return new Proof(bridge.Check("deck-slope-loaded"), share / 12, 1.0 / 12) { Error = 1e-6 }.Saying("live-full");
    }

    // ADA 2010 405.3: 1 : 48. A crowd all on one rope; the ropes as far apart as 48 times the difference of their falls.
    [Proves("cross-slope", CheckStatus.Pass, Side.Within)]
    [Proves("cross-slope", CheckStatus.Warn, Side.Beyond)]
    public static Proof Tilted(double share)
    {
        var bridge = new TwoBays
        {
            Spacing = 40,
            More = "loads: { live: 0 psf, point: { force: 0 lbf }, eccentricity: 100 %, cases: [{ id: crowd, live: 60 psf }] }",
        };
        for (var i = 0; i < 3; i++)
            bridge = bridge with { Spacing = Lower(bridge) * 48 / share };
        return new Proof(bridge.Check("cross-slope"), share / 48, 1.0 / 48) { Error = 1e-5 }
            .Saying("case crowd", FormattableString.Invariant($"one rope {Lower(bridge):0.###} in lower"));
    }

    // The crowd's share beyond a half: 75 % on one rope and 25 % on the other.
    [Proves("cross-slope", CheckStatus.Pass)]
    public static Proof Tilted_by_a_part_of_the_load()
    {
        var bridge = new TwoBays
        {
            Spacing = 60,
            Foot = 25.5,
            More = "loads: { live: 0 psf, point: { force: 0 lbf }, eccentricity: 75 %, cases: [{ id: crowd, live: 40 psf }] }",
        };
        var dead = TwoLinks.DeadLoad(bridge);
        var length = s_rope.Length(dead, bridge.Sag);
        var lower = s_rope.Drop(dead + TwoLinks.AreaLoad(bridge, 40, 0.75), length) - s_rope.Drop(dead + TwoLinks.AreaLoad(bridge, 40, 0.25), length);
        return new Proof(bridge.Check("cross-slope"), lower / 60, 1.0 / 48) { Error = 1e-5 };
    }

    private static double Lower(TwoBays bridge)
    {
        var dead = TwoLinks.DeadLoad(bridge);
        return s_rope.Drop(dead + TwoLinks.AreaLoad(bridge, 60, 1), s_rope.Length(dead, bridge.Sag)) - bridge.Sag;
    }

    private static double Fall(TwoBays bridge)
    {
        var dead = TwoLinks.DeadLoad(bridge);
        var drop = s_rope.Drop(dead + TwoLinks.AreaLoad(bridge, 60, 0.6), s_rope.Length(dead, bridge.Sag));
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
            var load = dead + TwoLinks.AreaLoad(bridge, middle, 0.6);
            (low, high) = s_rope.Bounce(load, s_rope.Drop(load, length), length) > 3 / share ? (middle, high) : (low, middle);
        }

        var loaded = bridge with { More = FormattableString.Invariant($"loads: {{ live: {low:0.########} psf }}") };
        return new Proof(loaded.Check("bounce-vertical"), 3 / share, 3) { Error = 1e-4 };
    }

    private static Proof Swaying(string use, double share)
    {
        var sag = 386.0886 / Math.Pow(2 * Math.PI * 1.3 / share, 2);
        var bridge = new TwoBays { Use = use, Sag = sag, Drop = sag, More = "loads: { live: 0 psf }" };
        return new Proof(bridge.Check("sway-lateral"), 1.3 / share, 1.3) { Error = 2e-5 };
    }
}
