using BridgeForm.Checks;

namespace BridgeForm.Tests.Checks.Catalogue.Codes;

/// <summary>Clear width against 36 in (ADA 2010 403.5.1, IRC R311.7.1).</summary>
internal static class WidthProofs
{
    [Proves("clear-width", CheckStatus.Pass, Side.Within)]
    [Proves("clear-width", CheckStatus.Warn, Side.Beyond)]
    public static Proof Private_between_low_rails(double share) => ByRail("private", share);

    [Proves("clear-width", CheckStatus.Pass, Side.Within)]
    [Proves("clear-width", CheckStatus.Fail, Side.Beyond)]
    public static Proof Public_between_low_rails(double share) => ByRail("public", share);

    // The lowest rail 12 in up, where the posts have leaned outward by more than the rail is thick: the posts are nearer.
    [Proves("clear-width", CheckStatus.Pass, Side.Within)]
    [Proves("clear-width", CheckStatus.Fail, Side.Beyond)]
    public static Proof Public_between_posts(double share)
    {
        var bridge = new TwoBays { Use = "public", Rails = "[12 in, 18 in]" };
        var foot = (36 / share / 2) - (1.5 * Math.Tan(bridge.LeanRadians));
        return Of(bridge with { Foot = foot }, share);
    }

    // Half the width to the lower inner edge of a rail 4 in up: the foot, the post's lean, less the rail's 3/4 in along its
    // normal and half its 3-1/2 in along its width, whose outward parts are −cos α / N and sin α·cos φ / N.
    private static Proof ByRail(string use, double share)
    {
        var bridge = new TwoBays { Use = use, Rails = "[4 in, 10 in, 16 in]" };
        var (sin, cos) = Math.SinCos(bridge.LeanRadians);
        var along = Math.Cos(Math.Atan(bridge.CapFall));
        var beyond = (4 * sin) - (0.75 * cos / bridge.RailNormal) - (1.75 * sin * along / bridge.RailNormal);
        return Of(bridge with { Foot = (36 / share / 2) - beyond }, share);
    }

    private static Proof Of(TwoBays bridge, double share) =>
        new(bridge.Check("clear-width"), 36 / share * TwoBays.Inch, 36 * TwoBays.Inch);
}
