using BridgeForm.Checks;

namespace BridgeForm.Tests.Checks.Catalogue.Codes;

/// <summary>Openings of guards: the rails of a side are parallel, so what is clear between two has a closed form.</summary>
internal static class OpeningProofs
{
    // IRC 2018 R312.1.3: no 4 in sphere.
    [Proves("guard-openings", CheckStatus.Pass, Side.Within)]
    [Proves("guard-openings", CheckStatus.Fail, Side.Beyond)]
    public static Proof Between_two_rails(double share)
    {
        var bridge = new TwoBays { PostLength = 23 };
        var second = 5 + Step(bridge, 4 * share);
        return Of(bridge with { Rails = Rails(5, second, second + 5.5) }, share, 4);
    }

    [Proves("guard-openings", CheckStatus.Pass, Side.Within)]
    [Proves("guard-openings", CheckStatus.Fail, Side.Beyond)]
    public static Proof Between_two_rails_of_a_public_guard(double share)
    {
        var bridge = new TwoBays { Use = "public", PostLength = 23 };
        var second = 5 + Step(bridge, 4 * share);
        return Of(bridge with { Rails = Rails(5, second, second + 5.5) }, share, 4);
    }

    // IBC 1015.4 exception 1 (from memory): 4-3/8 in where the opening begins 36 in above the deck; this one begins 37 in up.
    [Proves("guard-openings", CheckStatus.Pass, Side.Within)]
    [Proves("guard-openings", CheckStatus.Fail, Side.Beyond)]
    public static Proof High_up_on_a_public_guard(double share)
    {
        var bridge = new TwoBays { Use = "public", PostLength = 50 };
        return Of(bridge with { Rails = Rails(5, 11.5, 18, 24.5, 31, 37.5, 37.5 + Step(bridge, 4.375 * share)) }, share, 4.375);
    }

    // The same exception begins 36 in above the deck's surface, 1-1/2 in over the base: an opening that begins 35 in above it is
    // still for the 4 in sphere.
    [Proves("guard-openings", CheckStatus.Fail)]
    public static Proof Nearly_high_enough_on_a_public_guard(double share)
    {
        var bridge = new TwoBays { Use = "public", PostLength = 47 };
        return Of(bridge with { Rails = Rails(5, 11.5, 18, 24.5, 30, 34.75, 34.75 + Step(bridge, 4.2)) }, 1.05 * share, 4);
    }

    // A private guard lets no 4 in sphere pass, however high up: 4.2 in begins as high as above, and fails.
    [Proves("guard-openings", CheckStatus.Fail)]
    public static Proof High_up_on_a_private_guard(double share)
    {
        var bridge = new TwoBays { PostLength = 50 };
        return Of(bridge with { Rails = Rails(5, 11.5, 18, 24.5, 31, 37.5, 37.5 + Step(bridge, 4.2)) }, 1.05 * share, 4);
    }

    // Up along the post for so much clear between 3-1/2 in rails. The post runs along p = (0, cos α, sin α); of a step along
    // it sin φ·cos α goes along the rails, sin²φ·sin α·cos α / N through their thickness, and the rest is clear.
    private static double Step(TwoBays bridge, double clear)
    {
        var ((sin, cos), fall) = (Math.SinCos(bridge.LeanRadians), Math.Sin(Math.Atan(bridge.CapFall)));
        var (along, through) = (fall * cos, fall * fall * sin * cos / bridge.RailNormal);
        return (clear + 3.5) / Math.Sqrt(1 - (along * along) - (through * through));
    }

    private static string Rails(params double[] heights) =>
        "[" + string.Join(", ", heights.Select(h => FormattableString.Invariant($"{h:0.##########} in"))) + "]";

    // The cut is laid across the deck, which falls 0.003 more than the rails: 0.003² / 2 more is clear in it.
    private static Proof Of(TwoBays bridge, double share, double sphere) =>
        new(bridge.Check("guard-openings"), sphere * share * TwoBays.Inch, sphere * TwoBays.Inch) { Error = 1e-5 };
}
