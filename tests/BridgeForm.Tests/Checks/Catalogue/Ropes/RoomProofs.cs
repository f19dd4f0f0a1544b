using BridgeForm.Checks;

namespace BridgeForm.Tests.Checks.Catalogue.Ropes;

/// <summary>
/// Room under the lowest part: the middle frame of a rope that has stretched by 0.5 % for good (Wire Rope Users Manual, from
/// memory) under 60 psf, 60 % of it on one rope, on the hottest day: 100 °F against 60 °F.
/// </summary>
internal static class RoomProofs
{
    private static readonly TwoLinks s_rope = new();

    // A channel 5/8 in deep ends 1/4 in below the rope's axis: the rope's underside, 3/8 in below it, is the lowest.
    [Proves("ground-clearance", CheckStatus.Pass, Side.Within)]
    public static Proof Just_over_the_ground() => Ground(new TwoBays(), 0.375, 0.02);

    [Proves("ground-clearance", CheckStatus.Fail, Side.Beyond)]
    public static Proof Just_in_the_ground() => Ground(new TwoBays(), 0.375, -0.02).Saying("too low");

    // Under the middle third alone, far enough down: it holds there, and nothing is known of the rest.
    [Proves("ground-clearance", CheckStatus.Warn)]
    public static Proof Ground_given_in_part()
    {
        var bridge = new TwoBays { Site = ", ground: [[4 ft, -40 in], [8 ft, -40 in]]" };
        return new Proof(bridge.Check("ground-clearance"), (40 - Lowest(new TwoBays()) - 0.375) * TwoBays.Inch, 0) { Error = 0.01 }
            .Saying("given from 48 in to 96 in: not looked at elsewhere");
    }

    // All of it beyond B: nothing was looked at, and that is said.
    [Proves("ground-clearance", CheckStatus.Warn)]
    public static Proof Ground_given_elsewhere() =>
        new Proof(new TwoBays { Site = ", ground: [[20 ft, -40 in], [30 ft, -40 in]]" }.Check("ground-clearance"), 0)
            .Saying("nothing was looked at");

    // One 1-1/2 in deep with a liner of 1/4 in: base 1.5 − 0.375 − 0.25 = 0.875 in below the axis, on a frame that tilts by θ
    // × cos θ; its end lies (58 − 46) / 2 = 6 in beyond the lower rope, and lower by 6 in × sin θ.
    [Proves("ground-clearance", CheckStatus.Pass, Side.Within)]
    public static Proof Lined_base_just_over_the_ground() => Ground(Lined, LinedEnd, 0.02);

    [Proves("ground-clearance", CheckStatus.Fail, Side.Beyond)]
    public static Proof Lined_base_just_in_the_ground() => Ground(Lined, LinedEnd, -0.02);

    // One reading alone, 40 in down in the middle: looked at there, like a line of them.
    [Proves("ground-clearance", CheckStatus.Warn)]
    public static Proof Ground_at_one_place() =>
        new Proof(
            new TwoBays { Site = ", survey: { out: [[0 ft, 5 ft], [6 ft, 8 ft 4 in], [12 ft, 5 ft]] }" }.Check("ground-clearance"),
            (40 - Lowest(new TwoBays()) - 0.375) * TwoBays.Inch, 0)
        { Error = 0.01 }
            .Saying("given at 72 in alone: not looked at elsewhere");

    [Proves("ground-clearance", CheckStatus.Fail)]
    public static Proof A_rock_at_one_place() =>
        new Proof(
            new TwoBays { Site = ", survey: { out: [[0 ft, 5 ft], [6 ft, 4 ft 2 in], [12 ft, 5 ft]] }" }.Check("ground-clearance"),
            (-10 - Lowest(new TwoBays()) - 0.375) * TwoBays.Inch, 0)
        { Error = 0.01 }
            .Saying("too low");

    // Level, 12 ft by the readings, by the tape more; level both ways.
    [Proves("survey-agreement", CheckStatus.Pass, Side.Within)]
    [Proves("survey-agreement", CheckStatus.Warn, Side.Beyond)]
    public static Proof Tape(double share) => new Proof(
        new TwoBays { Site = FormattableString.Invariant($", survey: {{ {Level}, back: [4 ft, 4 ft], tape: {144 + (share / 4)} in }}") }
            .Check("survey-agreement"),
        share / 4 * TwoBays.Inch, TwoBays.Inch / 4)
    { Error = 1e-6 }.Saying("differ by");

    [Proves("survey-agreement", CheckStatus.Warn)]
    public static Proof Not_levelled_back() => new Proof(
        new TwoBays { Site = $", survey: {{ {Level}, tape: 12 ft }}" }.Check("survey-agreement"), 0, TwoBays.Inch / 4)
        .Saying("not leveled back");

    [Proves("survey-agreement", CheckStatus.Warn)]
    public static Proof Not_taped() => new Proof(
        new TwoBays { Site = $", survey: {{ {Level}, back: [4 ft, 4 ft] }}" }.Check("survey-agreement"), 0, TwoBays.Inch / 4)
        .Saying("no tape");

    private const string Level = "out: [[0 ft, 5 ft], [12 ft, 5 ft]]";

    [Proves("water-clearance", CheckStatus.Pass, Side.Within)]
    [Proves("water-clearance", CheckStatus.Fail, Side.Beyond)]
    public static Proof Freeboard(double share) => Water(6 / share, ", freeboard: 6 in", 6);

    [Proves("water-clearance", CheckStatus.Engineer)]
    public static Proof Above_water_without_a_freeboard() => Water(0.02, "", null).Saying("0.02 in", "site.freeboard");

    [Proves("water-clearance", CheckStatus.Fail)]
    public static Proof In_the_water_without_a_freeboard() => Water(-0.02, "", null).Saying("0.02 in too low");

    private static TwoBays Lined => new() { Depth = 1.5, Channel = ", liner: 1/4 in" };

    private const double Growth = 1.005 * (1 + (TwoLinks.Expansion * 40));

    private static double LinedEnd
    {
        get
        {
            var total = (2 * TwoLinks.DeadLoad(Lined)) + TwoLinks.AreaLoad(Lined, 60, 1);
            var lower = Lowest(Lined);
            var upper = Drop(Lined, total - TwoLinks.Heavier(Lined, 60, 0.6, Growth));
            var tilt = Math.Atan((lower - upper) / Lined.Spacing);
            return (0.875 * Math.Cos(tilt)) + (6 * Math.Sin(tilt));
        }
    }

    private static double Lowest(TwoBays bridge) => Drop(bridge, TwoLinks.Heavier(bridge, 60, 0.6, Growth));

    private static double Drop(TwoBays bridge, double load) =>
        s_rope.Drop(load, s_rope.Length(TwoLinks.DeadLoad(bridge), bridge.Sag), Growth);

    private static Proof Ground(TwoBays bridge, double below, double room)
    {
        var y = -(Lowest(bridge) + below + room);
        var site = FormattableString.Invariant($", ground: [[0 ft, {y:0.##########} in], [12 ft, {y:0.##########} in]]");
        // A ten-thousandth of an inch of the two hundredths is what the hand's rope is off.
        return new Proof((bridge with { Site = site }).Check("ground-clearance"), room * TwoBays.Inch, 0) { Error = 0.01 }.Saying(
            "live-full-hot", "0.5 %");
    }

    private static Proof Water(double room, string more, double? freeboard)
    {
        var bridge = Lined;
        var site = FormattableString.Invariant($", water: {-(Lowest(bridge) + LinedEnd + room):0.##########} in{more}");
        return new Proof((bridge with { Site = site }).Check("water-clearance"), room * TwoBays.Inch, freeboard * TwoBays.Inch)
        {
            Error = freeboard is null ? 0.01 : 5e-5,
        };
    }
}
