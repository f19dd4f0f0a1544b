using BridgeForm.Checks;

namespace BridgeForm.Tests.Checks.Catalogue.Ropes;

/// <summary>
/// A rope of 3/4 in over a saddle: 58,800 lbf less a tenth for zinc, times what the bend leaves of it by rigging catalogues
/// (D/d 20 : 91 %, 10 : 86 %, 4 : 75 %, 1 : 50 %), over the safety factor.
/// </summary>
internal static class SaddleProofs
{
    private const double Strength = 58_800 * 0.9;

    private static readonly TwoLinks s_rope = new();

    private const double Cold = 1 - (40 * TwoLinks.Expansion);

    // Radius 7-1/2 in: D/d = 15/0.75 = 20.
    [Proves("saddle-bend", CheckStatus.Pass, Side.Within)]
    [Proves("saddle-bend", CheckStatus.Fail, Side.Beyond)]
    public static Proof Twenty(double share) => Bent("7.5 in", 0.91, share).Saying("D/d = 2 × 7.5 in / 0.75 in = 20: 91 % left");

    // A hair less falls to the next sharper bend of the table, 15: 89 %.
    [Proves("saddle-bend", CheckStatus.Fail, Side.Beyond)]
    public static Proof Below_twenty(double share) => Bent("7.49 in", 0.89, share);

    // 3/8 in, half the rope's diameter: D/d = 1.
    [Proves("saddle-bend", CheckStatus.Pass, Side.Within)]
    public static Proof One(double share) => Bent("3/8 in", 0.50, share);

    [Proves("saddle-bend", CheckStatus.Fail)]
    public static Proof Sharper_than_the_table()
    {
        var proof = Bent("0.374 in", 0, 0.1);
        return (proof with { Capacity = 0 }).Saying("sharper than any bend of the table");
    }

    [Proves("saddle-bend", CheckStatus.Engineer)]
    public static Proof No_radius() => new Proof(
        new TwoBays().Check("saddle-bend"),
        TwoLinks.Newtons(Pull(new TwoBays())))
    { Error = 2e-5 }.Saying("saddle.radius is not given", $"{Pull(new TwoBays()):0} lbf");

    [Proves("saddle-bend", CheckStatus.Engineer)]
    public static Proof Strand()
    {
        var check = new TwoBays { Rope = "strand-ehs-3/4", More = "saddle: { radius: 7.5 in }" }.Check("saddle-bend");
        return new Proof(check, check.Demand).Saying("D/d = 2 × 7.5 in / 0.75 in = 20", "the table is for wire rope");
    }

    // Nor does any other rope bend sharper than its own diameter.
    [Proves("saddle-bend", CheckStatus.Fail)]
    public static Proof Strand_sharper_than_the_table()
    {
        var check = new TwoBays { Rope = "strand-ehs-3/4", More = "saddle: { radius: 1/8 in }" }.Check("saddle-bend");
        return new Proof(check, check.Demand, 0).Saying("sharper than any bend of the table");
    }

    private static Proof Bent(string radius, double left, double share)
    {
        var bridge = new TwoBays { More = $"saddle: {{ radius: {radius} }}" };
        var pull = Pull(bridge);
        var factor = left > 0 ? Strength * left * share / pull : 5;
        var check = (bridge with { Ropes = FormattableString.Invariant($", safety_factor: {factor:0.############}") }).Check("saddle-bend");
        return new Proof(check, TwoLinks.Newtons(pull), TwoLinks.Newtons(pull / share)) { Error = 2e-5 };
    }

    // 60 psf, 60 % of it on one rope, 40 °F colder than marked.
    private static double Pull(TwoBays bridge)
    {
        var dead = TwoLinks.DeadLoad(bridge);
        var (load, length) = (TwoLinks.Heavier(bridge, 60, 0.6, Cold), s_rope.Length(dead, bridge.Sag));
        return s_rope.Tension(load, s_rope.Drop(load, length, Cold), length);
    }
}
