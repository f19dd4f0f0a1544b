using BridgeForm.Checks;

namespace BridgeForm.Tests.Checks.Catalogue.Geometry;

/// <summary>
/// Depths of channels at their mouths. A 3/4 in rope: half its radius is 3/16 in; a base of 5-1/2 in: a quarter is 1-3/8 in.
/// </summary>
internal static class ChannelProofs
{
    private const double Shallow = 0.1875;
    private const double Deep = 1.375;

    // The middle frame's floor is level: the mouth is as deep as the middle.
    [Proves("channel-shallow-mouth", CheckStatus.Pass, Side.Within)]
    [Proves("channel-shallow-mouth", CheckStatus.Fail, Side.Beyond)]
    public static Proof Level_floor(double share) =>
        Of("channel-shallow-mouth", new TwoBays { Depth = Shallow / share }, Shallow / share, Shallow);

    [Proves("channel-shallow-mouth", CheckStatus.Pass, Side.Within)]
    [Proves("channel-shallow-mouth", CheckStatus.Fail, Side.Beyond)]
    public static Proof Sloped_floor(double share) =>
        Of("channel-shallow-mouth", Sloped((Shallow / share) + Change), Shallow / share, Shallow);

    // An end frame's floor follows its chord, 8 in in 72 in, over half of 3-1/2 in.
    [Proves("channel-shallow-mouth-end", CheckStatus.Pass, Side.Within)]
    [Proves("channel-shallow-mouth-end", CheckStatus.Fail, Side.Beyond)]
    public static Proof End_floor(double share) =>
        Of("channel-shallow-mouth-end", AtEnd((Shallow / share) + (1.75 * 8 / 72)), Shallow / share, Shallow);

    [Proves("channel-deep-mouth-end", CheckStatus.Pass, Side.Within)]
    [Proves("channel-deep-mouth-end", CheckStatus.Warn, Side.Beyond)]
    public static Proof Deep_end_floor(double share) =>
        Of("channel-deep-mouth-end", AtEnd((Deep * share) - (1.75 * 8 / 72)), Deep * share, Deep);

    // Half of 5-1/2 in, own figure.
    [Proves("channel-deep-mouth-end", CheckStatus.Fail, Side.Beyond)]
    public static Proof End_base_nearly_cut_through(double share) =>
        Of("channel-deep-mouth-end", AtEnd((2.75 * share) - (1.75 * 8 / 72)), 2.75 * share, 2.75).Saying("half of it 2.75 in");

    [Proves("channel-deep-mouth-end", CheckStatus.Warn)]
    public static Proof End_base_cut_half_through() =>
        Of("channel-deep-mouth-end", AtEnd((2.75 * 0.9995) - (1.75 * 8 / 72)), 2.75 * 0.9995, Deep);

    // Loaded by 1,000 psf the bases' net sections fail, and so does a mouth deeper than a quarter.
    [Proves("channel-deep-mouth", CheckStatus.Pass, Side.Within)]
    [Proves("channel-deep-mouth", CheckStatus.Fail, Side.Beyond)]
    public static Proof Deep_level_floor(double share) =>
        Of("channel-deep-mouth", new TwoBays { Depth = Deep * share, More = "loads: { live: 1000 psf }" }, Deep * share, Deep);

    [Proves("channel-deep-mouth", CheckStatus.Pass, Side.Within)]
    [Proves("channel-deep-mouth", CheckStatus.Fail, Side.Beyond)]
    public static Proof Deep_sloped_floor(double share) =>
        Of("channel-deep-mouth", Sloped((Deep * share) - Change) with { More = "loads: { live: 1000 psf }" }, Deep * share, Deep);

    // Hardly loaded they hold, and a mouth a little deeper than a quarter is let pass for them: a quarter is no limit then.
    [Proves("channel-deep-mouth", CheckStatus.Pass)]
    public static Proof Deep_floor_of_a_base_whose_net_section_holds() =>
        (
            Of(
                "channel-deep-mouth", new TwoBays { Depth = 1.4, More = "loads: { live: 5 psf, point: { force: 5 lbf } }" }, 1.4,
                Deep) with
            { Capacity = null })
            .Saying("net section passes");

    // Common practice, no source: a rope sunk deeper than its own 3/4 in is out of a flat strap's reach; a liner lifts it out.
    [Proves("keeper-strap-reach", CheckStatus.Pass, Side.Within)]
    [Proves("keeper-strap-reach", CheckStatus.Warn, Side.Beyond)]
    public static Proof Sunk_in_the_middle_base(double share) => Of(
        "keeper-strap-reach", new TwoBays { Depth = (0.75 * share) + 0.125, Drop = 8.1, Channel = ", liner: 1/8 in" }, 0.75 * share, 0.75);

    [Proves("keeper-strap-reach", CheckStatus.Pass, Side.Within)]
    [Proves("keeper-strap-reach", CheckStatus.Warn, Side.Beyond)]
    public static Proof Sunk_in_the_end_bases(double share) =>
        Of("keeper-strap-reach", AtEnd(0.75 * share), 0.75 * share, 0.75).Saying("in the end bases");

    // NDS 2018 Table 12.5.1E: 4 D = 1 in and 1.5 D = 3/8 in of wood beside holes of 1/4 in; channel 7/8 in.
    [Proves("keeper-hole-distance", CheckStatus.Pass, Side.Within)]
    [Proves("keeper-hole-distance", CheckStatus.Warn, Side.Beyond)]
    public static Proof Wood_beside_keeper_holes(double share) =>
        Of("keeper-hole-distance", Keepers(0.875 + 0.25 + (2 / share)), 1 / share, 1).Saying("4 D = 1 in", "keeper.spread of 3.125 in");

    [Proves("keeper-hole-distance", CheckStatus.Fail, Side.Beyond)]
    public static Proof Hardly_any_wood_beside_keeper_holes(double share) =>
        Of("keeper-hole-distance", Keepers(0.875 + 0.25 + (0.75 / share)), 0.375 / share, 0.375).Saying("1.5 D = 0.375 in");

    // (1-1/4 − 7/8 − 1/4) / 2 = 1/16 in.
    [Proves("keeper-hole-distance", CheckStatus.Fail)]
    public static Proof A_sixteenth_beside_keeper_holes() => Of("keeper-hole-distance", Keepers(1.25), 0.0625, 0.375);

    // Left out, the spread is channel width + 9 hole diameters: 4 D to either side of a channel of 1-3/4 in, exactly.
    [Proves("keeper-hole-distance", CheckStatus.Pass)]
    public static Proof Spread_left_out() =>
        Of("keeper-hole-distance", new TwoBays { Channel = ", clearance: 1 in" }, 1, 1).Saying("1.75 in of channel");

    // Own figure: 1/4 in to either side of a 3/4 in rope, and of one in liners of 1/8 in.
    [Proves("channel-clearance", CheckStatus.Pass, Side.Within)]
    [Proves("channel-clearance", CheckStatus.Warn, Side.Beyond)]
    public static Proof Room_beside_the_rope(double share) => Of(
        "channel-clearance", new TwoBays { Channel = FormattableString.Invariant($", clearance: {0.5 * share:R} in") }, 0.25 * share, 0.25);

    [Proves("channel-clearance", CheckStatus.Pass, Side.Within)]
    [Proves("channel-clearance", CheckStatus.Warn, Side.Beyond)]
    public static Proof Room_beside_the_liners(double share) => Of(
        "channel-clearance",
        new TwoBays { Drop = 8.125, Channel = FormattableString.Invariant($", liner: 1/8 in, width: {1 + (0.5 * share):R} in") },
        0.25 * share,
        0.25).Saying("2 × liner 0.125 in");

    // B 20 in above A and 8 in of sag, in equal level steps: chords of 2 in and 18 in in 72 in. A plumb frame's floor slopes
    // as their bisector does.
    private static double Change => 1.75 * Math.Tan((Math.Atan(2.0 / 72) + Math.Atan(18.0 / 72)) / 2);

    private static TwoBays Sloped(double depth) => new()
    {
        Depth = depth,
        Site = ", rise: 20 in",
        Frames = "stance: plumb\n  step: plan",
    };

    private static TwoBays AtEnd(double depth)
    {
        var bridge = new TwoBays();
        return bridge with { Drop = bridge.Drop + bridge.EndDepth - depth };
    }

    private static TwoBays Keepers(double spread) =>
        new() { Frames = FormattableString.Invariant($"keeper: {{ hole: 1/4 in, spread: {spread:R} in, depth: 2 in }}") };

    private static Proof Of(string id, TwoBays bridge, double depth, double? limit) =>
        new(bridge.Check(id), depth * TwoBays.Inch, limit * TwoBays.Inch);
}
