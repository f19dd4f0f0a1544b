using BridgeForm.Checks;

namespace BridgeForm.Tests.Checks.Catalogue.Ropes;

/// <summary>What holds the ropes' ends: clips, turnbuckles, shackles and their take-up.</summary>
internal static class EndsProofs
{
    private static readonly TwoLinks s_rope = new();

    // Calif. 8 CCR §8497 table 1: 3/4 in takes 4 clips, 18 in turned back, 130 ft·lbf; NAVEDTRA 14026 fig. 1-8: 6 diameters apart.
    [Proves("rope-termination", CheckStatus.Pass)]
    public static Proof Clips_on_wire_rope() =>
        new Proof(new TwoBays().Check("rope-termination"), 0).Saying("4 U-bolt clips", "4.5 in", "18 in", "130 ft·lbf");

    [Proves("rope-termination", CheckStatus.Pass)]
    public static Proof An_end_with_its_makers_efficiency() => new Proof(
        new TwoBays { Ropes = ", termination: { kind: socket, efficiency: 95 %, source: its maker (invented) }" }.Check("rope-termination"),
        0).Saying("95 %");

    // Common practice of rigging, no source: clips slip on the hard, smooth wires of a strand.
    [Proves("rope-termination", CheckStatus.Fail)]
    public static Proof Clips_on_strand() =>
        new Proof(new TwoBays { Rope = "strand-ehs-3/4" }.Check("rope-termination"), 0).Saying("strand");

    [Proves("rope-termination", CheckStatus.Engineer)]
    public static Proof An_end_that_nobody_vouches_for() => new Proof(
        new TwoBays { Ropes = ", termination: { kind: wedge-socket }" }.Check("rope-termination"),
        0).Saying("wedge-socket", "ropes.termination.efficiency");

    // FF-T-791b: the largest turnbuckle, 1-1/4 in, has a working load of 12,000 lbf.
    [Proves("turnbuckle-size", CheckStatus.Pass, Side.Within)]
    [Proves("turnbuckle-size", CheckStatus.Engineer, Side.Beyond)]
    public static Proof Turnbuckle(double share) => Pulled("turnbuckle-size", 12_000, share).Saying("1-1/4 in");

    // RR-C-271: 4.75 short tons for 3/4 in, 8.5 for the largest, 1 in.
    [Proves("shackle-size", CheckStatus.Pass, Side.Within)]
    public static Proof Shackle(double share) => Pulled("shackle-size", 9_500, share).Saying("3/4 in");

    [Proves("shackle-size", CheckStatus.Pass, Side.Within)]
    [Proves("shackle-size", CheckStatus.Engineer, Side.Beyond)]
    public static Proof Largest_shackle(double share) => Pulled("shackle-size", 17_000, share).Saying("1 in");

    // A pull a little above 9,500 lbf takes the next size, 7/8 in of 6.5 short tons.
    [Proves("shackle-size", CheckStatus.Pass)]
    public static Proof Next_shackle() =>
        Pulled("shackle-size", 9_500, 1.0005) with { Capacity = TwoLinks.Newtons(13_000) };

    // By plain marks new rope is never shorter than drawn: what it would pull set short is not asked of the turnbuckle.
    [Proves("turnbuckle-size", CheckStatus.Pass)]
    public static Proof Turnbuckle_by_plain_marks()
    {
        var bridge = new TwoBays { Ropes = ", stretch: [0 %, 0.2 %]" };
        var pull = Pull(bridge, 60, 1 - (40 * TwoLinks.Expansion));
        return new Proof(bridge.Check("turnbuckle-size"), TwoLinks.Newtons(pull), TwoLinks.Newtons(4_000)) { Error = 2e-5 }
            .Saying("3/4 in");
    }

    // New rope set short for its stretch pulls harder, and the turnbuckle is chosen for that.
    [Proves("turnbuckle-size", CheckStatus.Pass)]
    public static Proof Turnbuckle_for_new_rope()
    {
        var bridge = new TwoBays { Ropes = ", new: as-is, stretch: [0 %, 0.2 %]" };
        var pull = Pull(bridge, 60, (1 - (40 * TwoLinks.Expansion)) / 1.002);
        return new Proof(bridge.Check("turnbuckle-size"), TwoLinks.Newtons(pull), TwoLinks.Newtons(4_000)) { Error = 2e-5 }.Saying(
            $"{pull:0} lbf", "3/4 in");
    }

    // The file's turnbuckles of 1 in take in 2 in together; 0.1 in of stretch by the mile, 80 °F and 1 in either way ask for more.
    [Proves("rope-take-up", CheckStatus.Fail)]
    public static Proof Turnbuckles_too_short()
    {
        var proof = TakeUp(8, 12);
        return TakeUp(8, 2, ", ends: { turnbuckle: { take_up: 1 in } }") with { Demand = proof.Demand };
    }

    // Rope stretched before it was marked has only the weather and its making left: 80 °F of two links, 1 in either way.
    [Proves("rope-take-up", CheckStatus.Pass)]
    public static Proof Stretched_before()
    {
        var bridge = new TwoBays { Ropes = ", new: stretched-before" };
        var change = 2 * s_rope.Length(TwoLinks.DeadLoad(bridge), bridge.Sag) * 80 * TwoLinks.Expansion;
        return new Proof(bridge.Check("rope-take-up"), (2 + change) * TwoBays.Inch, 12 * TwoBays.Inch) { Error = 1e-6 };
    }

    // Set short for the mean of 0.1 % to 0.5 %, 0.2 % of two links is left either way.
    [Proves("rope-take-up", CheckStatus.Pass)]
    public static Proof Set_short_for_the_mean()
    {
        var bridge = new TwoBays { Ropes = ", new: as-is, stretch: [0.1 %, 0.5 %]" };
        var all = 2 * s_rope.Length(TwoLinks.DeadLoad(bridge), bridge.Sag);
        return new Proof(
            bridge.Check("rope-take-up"), (2 + (all * ((80 * TwoLinks.Expansion) + 0.004))) * TwoBays.Inch, 12 * TwoBays.Inch)
        { Error = 1e-6 }.Saying("half the difference");
    }

    // A backstay of 8 in, and a shackle and a turnbuckle that are 3 in and 17 in closed.
    [Proves("rope-take-up", CheckStatus.Fail)]
    public static Proof Chain_over_the_backstay()
    {
        const string Stay = "{ backstay: { length: 8 in, angle: 30 deg } }";
        var check = new TwoBays
        {
            Site = $", a: {Stay}, b: {Stay}",
            Ropes = ", ends: { turnbuckle: { take_up: 12 in, closed: 17 in, pitch: 1/10 in }, shackle: { length: 3 in } }",
        }.Check("rope-take-up");
        Assert.InRange(check.Demand, 20 * TwoBays.Inch, 32 * TwoBays.Inch);
        // The pull stretches 8 in of rope by a ten-thousandth.
        return new Proof(check, check.Demand, 8 * TwoBays.Inch) { Error = 1e-3 }.Saying("set the anchor further back");
    }

    // Two turnbuckles of the longest take-up on sale, 24 in (from memory), take in 48 in.
    [Proves("rope-take-up", CheckStatus.Pass, Side.Within)]
    [Proves("rope-take-up", CheckStatus.Engineer, Side.Beyond)]
    public static Proof Longest_take_up(double share)
    {
        var proof = TakeUp(48 * share, 48);
        return share < 1 ? proof : proof with { Capacity = null, Limit = proof.Capacity };
    }

    // A little more than two of 12 in take in asks for two of 18 in.
    [Proves("rope-take-up", CheckStatus.Pass, Side.Within)]
    public static Proof Middle_take_up(double share) => TakeUp(24 * share, 24);

    [Proves("rope-take-up", CheckStatus.Pass)]
    public static Proof Next_take_up() => TakeUp(24 * 1.0005, 36);

    // Of strand no stretch is known: what the weather changes is told, between 20 °F and 100 °F, of two links of 72.44 in.
    [Proves("rope-take-up", CheckStatus.Engineer)]
    public static Proof Stretch_not_known()
    {
        var bridge = new TwoBays { Rope = "strand-ehs-3/4" };
        // 23,000 ksi × 0.58·d², 1.155 lb/ft (from memory).
        var rope = new TwoLinks { PerInch = 1.155 / 12, Stiffness = 23e6 * 0.58 * 0.75 * 0.75 };
        var change = 2 * rope.Length(TwoLinks.DeadLoad(bridge), bridge.Sag) * 80 * TwoLinks.Expansion;
        return new Proof(bridge.Check("rope-take-up"), change * TwoBays.Inch) { Error = 1e-6 }.Saying(
            "not known", FormattableString.Invariant($"{change:0.###} in"));
    }

    // Two bays have their one frame in the middle: nothing moves it.
    [Proves("end-bay-room", CheckStatus.Pass)]
    public static Proof Frame_in_the_middle() =>
        new(new TwoBays { Ropes = ", stretch: [0.1 %, 0.5 %]" }.Check("end-bay-room"), 0, TwoBays.Inch / 8);

    // Stretch × rope from the middle to the first frame; marks have tests of their own. Limit 1/8 in, an own figure.
    [Proves("end-bay-room", CheckStatus.Pass, Side.Within)]
    [Proves("end-bay-room", CheckStatus.Warn, Side.Beyond)]
    public static Proof Drawn_in(double share)
    {
        var marks = Contexts.Of(Bridges.Garden).Ropework.Marks;
        var reach = (marks[^1].Unstressed / 2) - marks[1].Unstressed;
        // 30 ft with a sag of 6 %: a parabola's rope is longer than its chord by (8/3)·(sag/span)² of it; eleven equal bays, of which
        // four and a half lie between.
        Assert.Equal(360 * (1 + (8.0 / 3 * 0.06 * 0.06)) * 4.5 / 11 * TwoBays.Inch, reach, 0.1 * TwoBays.Inch);
        var check = Contexts.Check(Stretching(Bridges.Garden, share / 8 * TwoBays.Inch / reach, ""), "end-bay-room");
        return new Proof(check, share / 8 * TwoBays.Inch, TwoBays.Inch / 8) { Error = 1e-8 }.Saying("F01");
    }

    // Set short for the mean, half of the range is left either way: from nothing up to x, x / 2.
    [Proves("end-bay-room", CheckStatus.Warn)]
    public static Proof Drawn_in_or_let_out()
    {
        var marks = Contexts.Of(Bridges.Garden).Ropework.Marks;
        var reach = (marks[^1].Unstressed / 2) - marks[1].Unstressed;
        var check = Contexts.Check(Stretching(Bridges.Garden, 0.005, ", new: as-is"), "end-bay-room");
        return new Proof(check, 0.0025 * reach, TwoBays.Inch / 8) { Error = 1e-8 }.Saying("or further from it");
    }

    [Proves("end-bay-room", CheckStatus.Engineer)]
    public static Proof Stretch_of_strand() =>
        new Proof(new TwoBays { Rope = "strand-ehs-3/4" }.Check("end-bay-room"), 0).Saying("not known");

    // 18 in turned back (8 CCR §8497 table 1) and 6 diameters of 3/4 in round the thimble; without backstays there are two links from
    // the support to the middle frame, less half of the base's 3-1/2 in.
    [Proves("rope-end-room", CheckStatus.Warn)]
    public static Proof Eye_under_the_end_frame()
    {
        var bridge = new TwoBays();
        var room = s_rope.Length(TwoLinks.DeadLoad(bridge), bridge.Sag) - 1.75;
        return new Proof(bridge.Check("rope-end-room"), 22.5 * TwoBays.Inch, room * TwoBays.Inch) { Error = 1e-6 }
            .Saying("A and B", "under the end frame");
    }

    // Bays of 19 in: clips reach under the first base.
    [Proves("rope-end-room", CheckStatus.Warn)]
    public static Proof Clips_in_the_first_channel()
    {
        var close = Bridges.Garden.Replace("spacing: 3 ft", "spacing: 20 in", StringComparison.Ordinal);
        var context = Contexts.Of(close);
        // Nineteen bays of equal length; a parabola's rope as above.
        var room = (360 * (1 + (8.0 / 3 * 0.06 * 0.06)) / 19) - 1.75;
        return new Proof(Contexts.Check(context, "rope-end-room"), 22.5 * TwoBays.Inch, room * TwoBays.Inch) { Error = 2e-3 }
            .Saying("in its channels too");
    }

    // Shackle 3 in, turnbuckle 17 in closed and 12 in of take-up: 32 in open, and 22-1/2 in of end, so a backstay of 54-1/2 in.
    [Proves("rope-end-room", CheckStatus.Pass, Side.Within)]
    [Proves("rope-end-room", CheckStatus.Fail, Side.Beyond)]
    public static Proof End_behind_the_saddle(double share)
    {
        var room = 22.5 / share;
        var stay = FormattableString.Invariant($"{{ backstay: {{ length: {32 + room:0.########} in, angle: 30 deg }} }}");
        var check = new TwoBays
        {
            Site = $", a: {stay}, b: {stay}",
            Ropes = ", ends: { turnbuckle: { take_up: 12 in, closed: 17 in, pitch: 1/10 in }, shackle: { length: 3 in } }",
        }.Check("rope-end-room");
        // The pull stretches the backstay by a ten-thousandth or two.
        return new Proof(check, 22.5 * TwoBays.Inch, room * TwoBays.Inch) { Error = 5e-4 }.Saying("behind the saddle");
    }

    [Proves("rope-end-room", CheckStatus.Engineer)]
    public static Proof End_of_no_table() => new Proof(
        new TwoBays { Ropes = ", termination: { kind: socket, efficiency: 95 %, source: its maker (invented) }" }.Check("rope-end-room"),
        0).Saying("in no table");

    private static string Stretching(string text, double most, string more) => text.Replace(
        "sag: 6 %", FormattableString.Invariant($"sag: 6 %, stretch: [0 %, {most * 100:0.##########} %]{more}"),
        StringComparison.Ordinal);

    // Rope between its ends: two links and two backstays of 150 ft, which a pull of H / cos 30° stretches. Its stretch is
    // chosen for what is wanted, less 80 °F of expansion and 1 in either way for a rope as made.
    private static Proof TakeUp(double wanted, double twoTakeIn, string ropes = "")
    {
        const string Stays = ", a: { backstay: { length: 150 ft, angle: 30 deg } }, b: { backstay: { length: 150 ft, angle: 30 deg } }";
        var bridge = new TwoBays { Site = Stays };
        var dead = TwoLinks.DeadLoad(bridge);
        var length = s_rope.Length(dead, bridge.Sag);
        var stay = 1800 / (1 + (s_rope.Level(dead, bridge.Sag, length) / Math.Cos(Math.PI / 6) / s_rope.Stiffness));
        var all = (2 * length) + (2 * stay);
        var stretch = (((wanted - 2) / all) - (80 * TwoLinks.Expansion)) * 100;
        var stretched = bridge with { Ropes = FormattableString.Invariant($", stretch: [0.1 %, {stretch:0.##########} %]{ropes}") };
        return new Proof(stretched.Check("rope-take-up"), wanted * TwoBays.Inch, twoTakeIn * TwoBays.Inch) { Error = 1e-6 };
    }

    // Live load so high that the rope pulls as hard as wanted, by halves.
    private static Proof Pulled(string id, double workingLoad, double share)
    {
        var bridge = new TwoBays { Ropes = ", stretch: [0 %, 0 %]" };
        var (low, high) = (0.0, 1000.0);
        for (var i = 0; i < 100; i++)
        {
            var middle = (low + high) / 2;
            (low, high) = Pull(bridge, middle, 1 - (40 * TwoLinks.Expansion)) < workingLoad * share ? (middle, high) : (low, middle);
        }

        var loaded = bridge with { More = FormattableString.Invariant($"loads: {{ live: {low:0.########} psf }}") };
        return new Proof(loaded.Check(id), TwoLinks.Newtons(workingLoad * share), TwoLinks.Newtons(workingLoad)) { Error = 2e-5 };
    }

    private static double Pull(TwoBays bridge, double psf, double growth)
    {
        var dead = TwoLinks.DeadLoad(bridge);
        var (load, length) = (TwoLinks.Heavier(bridge, psf, 0.6, growth), s_rope.Length(dead, bridge.Sag));
        return s_rope.Tension(load, s_rope.Drop(load, length, growth), length);
    }
}
