using BridgeForm.Checks;

namespace BridgeForm.Tests.Checks.Catalogue.Codes;

/// <summary>Guards just high enough and just too low.</summary>
internal static class GuardHeightProofs
{
    // IRC 2018 R312.1.2: 36 in; IBC 1015.3: 42 in.
    [Proves("guard-height", CheckStatus.Pass, Side.Within)]
    [Proves("guard-height", CheckStatus.Fail, Side.Beyond)]
    public static Proof Private(double share) => Of("private", 36, share);

    [Proves("guard-height", CheckStatus.Pass, Side.Within)]
    [Proves("guard-height", CheckStatus.Fail, Side.Beyond)]
    public static Proof Public(double share) => Of("public", 42, share);

    // The deck falls a little faster than the cap, and stands lifted on the end base, so that the guard is lowest where the
    // cap ends, at the outer face of the end post 0.75 in before the middle:
    // head + cap − lift − board − 0.75 × (difference of the falls).
    private static Proof Of(string use, double needed, double share)
    {
        var bridge = new TwoBays { Use = use, Rails = "[6 in, 12 in, 18 in, 24 in, 30 in]" };
        var besides = TwoBays.Upright(
            bridge.CapFall) - bridge.Lift - TwoBays.Upright(bridge.DeckFall) - (0.75 * (bridge.DeckFall - bridge.CapFall));
        var height = needed / share;
        var length = (height - besides) / Math.Cos(bridge.LeanRadians);
        return new Proof((bridge with { PostLength = length }).Check("guard-height"), height * TwoBays.Inch, needed * TwoBays.Inch);
    }
}
