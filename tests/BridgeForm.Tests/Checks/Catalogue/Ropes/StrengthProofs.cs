using BridgeForm.Checks;

namespace BridgeForm.Tests.Checks.Catalogue.Ropes;

/// <summary>Largest tension against strength. The worst case is the full live load at the lowest temperature, 40 °F colder.</summary>
internal static class StrengthProofs
{
    // 29.4 short tons less 10 % for zinc (from memory), 80 % for clips (TM 5-3810-305-10 table 4).
    private const double Held = 58_800 * 0.9 * 0.8;

    private static readonly TwoLinks s_rope = new();

    // 60 psf (ASCE 7 walkways, from memory), 60 % of it on one rope.
    [Proves("rope-strength", CheckStatus.Pass, Side.Within)]
    [Proves("rope-strength", CheckStatus.Fail, Side.Beyond)]
    public static Proof Marked_rope(double share)
    {
        var pull = Pull(new TwoBays(), 60, 0.6, 1 - (40 * TwoLinks.Expansion));
        var bridge = WithFactor(Held * share / pull);
        return Pounds(bridge.Check("rope-strength"), pull, pull / share).Saying("live-full-cold");
    }

    // A public bridge carries 90 psf (AASHTO pedestrian, from memory), and 70 % of it may be on one rope.
    [Proves("rope-strength", CheckStatus.Pass, Side.Within)]
    [Proves("rope-strength", CheckStatus.Fail, Side.Beyond)]
    public static Proof Public_load_of_its_own_eccentricity(double share)
    {
        var bridge = new TwoBays { Use = "public", More = "loads: { eccentricity: 70 % }" };
        var pull = Pull(bridge, 90, 0.7, 1 - (40 * TwoLinks.Expansion));
        return Pounds((bridge with { Ropes = Factor(Held * share / pull) }).Check("rope-strength"), pull, pull / share);
    }

    [Proves("rope-strength", CheckStatus.Engineer)]
    public static Proof Ends_of_unknown_efficiency()
    {
        var pull = Pull(new TwoBays(), 60, 0.6, 1 - (40 * TwoLinks.Expansion));
        var bridge = new TwoBays { Ropes = ", termination: { kind: wedge-socket }" };
        return Pounds(bridge.Check("rope-strength"), pull, null).Saying($"{pull:0} lbf", "ropes.termination.efficiency");
    }

    // No end keeps more than all of the strength: 58,800 · 0.9 over the factor.
    [Proves("rope-strength", CheckStatus.Engineer)]
    [Proves("rope-strength", CheckStatus.Fail, Side.Beyond)]
    public static Proof Too_much_for_ends_of_any_efficiency(double share)
    {
        var pull = Pull(new TwoBays(), 60, 0.6, 1 - (40 * TwoLinks.Expansion));
        var factor = 58_800 * 0.9 * (share > 1 ? share : 0.999) / pull;
        var bridge = new TwoBays
        {
            Ropes = FormattableString.Invariant($", safety_factor: {factor:0.############}, termination: {{ kind: wedge-socket }}"),
        };
        return Pounds(bridge.Check("rope-strength"), pull, share > 1 ? pull / share : null).Saying("ropes.termination.efficiency");
    }

    // New rope set short for 0.5 % of stretch (Wire Rope Users Manual, from memory), before it has come.
    [Proves("rope-strength-new", CheckStatus.Pass, Side.Within)]
    [Proves("rope-strength-new", CheckStatus.Warn, Side.Beyond)]
    public static Proof New_rope(double share)
    {
        var pull = Pull(new TwoBays(), 60, 0.6, (1 - (40 * TwoLinks.Expansion)) / 1.005);
        return Pounds(WithFactor(Held * share / pull).Check("rope-strength-new"), pull, pull / share).Saying("0.5 %", "live-full-cold");
    }

    // Who chose marks that are set short has no plain marks to go back to: the same figure fails.
    [Proves("rope-strength-new", CheckStatus.Pass, Side.Within)]
    [Proves("rope-strength-new", CheckStatus.Fail, Side.Beyond)]
    public static Proof New_rope_set_short_by_the_file(double share)
    {
        var pull = Pull(new TwoBays(), 60, 0.6, (1 - (40 * TwoLinks.Expansion)) / 1.005);
        var bridge = new TwoBays { Ropes = Factor(Held * share / pull) + ", new: as-is" };
        return Pounds(bridge.Check("rope-strength-new"), pull, pull / share).Saying("0.5 %", "live-full-cold");
    }

    // Less than a third of what the ends hold of it is left: 58,800 · 0.9 times an efficiency of their own.
    [Proves("rope-strength-new", CheckStatus.Fail, Side.Beyond)]
    public static Proof New_rope_below_a_factor_of_three(double share)
    {
        var pull = Pull(new TwoBays(), 60, 0.6, (1 - (40 * TwoLinks.Expansion)) / 1.005);
        var efficiency = 3 * pull / share / (58_800 * 0.9);
        var bridge = new TwoBays
        {
            Ropes = FormattableString.Invariant(
                $", termination: {{ kind: wedge-socket, efficiency: {efficiency * 100:0.############} %, source: test }}"),
        };
        return Pounds(bridge.Check("rope-strength-new"), pull, pull / share).Saying("live-full-cold", "do not set the ropes so");
    }

    [Proves("rope-strength-new", CheckStatus.Engineer)]
    public static Proof New_rope_with_ends_of_unknown_efficiency()
    {
        var pull = Pull(new TwoBays(), 60, 0.6, (1 - (40 * TwoLinks.Expansion)) / 1.005);
        var bridge = new TwoBays { Ropes = ", termination: { kind: wedge-socket }" };
        return Pounds(bridge.Check("rope-strength-new"), pull, null).Saying($"{pull:0} lbf");
    }

    private static TwoBays WithFactor(double factor) => new() { Ropes = Factor(factor) };

    private static string Factor(double factor) => FormattableString.Invariant($", safety_factor: {factor:0.############}");

    private static double Pull(TwoBays bridge, double psf, double share, double growth)
    {
        var dead = TwoLinks.DeadLoad(bridge);
        var (load, length) = (TwoLinks.Heavier(bridge, psf, share, growth), s_rope.Length(dead, bridge.Sag));
        return s_rope.Tension(load, s_rope.Drop(load, length, growth), length);
    }

    private static Proof Pounds(CheckResult check, double pull, double? allowed) =>
        new(check, TwoLinks.Newtons(pull), allowed is { } a ? TwoLinks.Newtons(a) : null) { Error = 2e-5 };
}
