using BridgeForm.Checks;

namespace BridgeForm.Tests.Checks.Catalogue.Ropes;

/// <summary>
/// Whether the section stays upright: a single frame on two ropes of two links each. Sag, pull, stiffness and heights by hand,
/// for a case of its own, 60 psf all along, 60 % of it on one rope: inches and pounds. Below 2 it fails, below 3 it is worth a
/// look (own figures).
/// </summary>
internal static class RollProofs
{
    private static readonly TwoBays s_bridge = new()
    {
        More = """
            loads: { live: 0 psf, point: { force: 0 lbf }, cases: [{ id: crowd, live: 60 psf }] }
            stock:
              treated: { species: southern-pine, treated: true, lengths: [16 ft], density: { low: 30 lb/ft3, in_service: 40 lb/ft3, high: 50 lb/ft3 } }
              cedar: { species: western-red-cedar, lengths: [16 ft], density: { low: 15 lb/ft3, in_service: 20 lb/ft3, high: 25 lb/ft3 } }
            """,
    };

    [Proves("roll", CheckStatus.Warn, Side.Within)]
    [Proves("roll", CheckStatus.Fail, Side.Beyond)]
    public static Proof Beside_2(double share) => Of(2 / share, 2, "needed 2", "in case crowd", "A licensed engineer decides.");

    [Proves("roll", CheckStatus.Warn)]
    public static Proof Just_below_3() => Of(3 * 0.9995, 2, "comfortable 3", "not how many times as heavy they could be");

    [Proves("roll", CheckStatus.Pass)]
    public static Proof Just_above_3() => Of(3 * 1.0005, 2, "A licensed engineer decides.");

    // One bay of 144 in: no frame hangs between the supports.
    [Proves("roll", CheckStatus.Engineer)]
    public static Proof Without_a_hanging_frame() => new Proof(Contexts.Check(OneBay, "roll"), 0).Saying("no frame hangs");

    [Proves("bounce-vertical", CheckStatus.Engineer)]
    public static Proof Bounce_without_a_hanging_frame() =>
        new Proof(Contexts.Check(OneBay, "bounce-vertical"), 0, 4.6).Saying("no frame hangs");

    [Proves("sway-lateral", CheckStatus.Engineer)]
    public static Proof Sway_without_a_hanging_frame() =>
        new Proof(Contexts.Check(OneBay, "sway-lateral"), 0, 1.3).Saying("no frame hangs");

    [Proves("keeper-slip", CheckStatus.Engineer)]
    public static Proof Keepers_without_a_hanging_frame() => new Proof(Contexts.Check(OneBay, "keeper-slip"), 0).Saying("no frame hangs");

    private static CheckContext OneBay =>
        TwoBays.ContextOf(new TwoBays().Text.Replace("spacing: 74 in", "spacing: 144.5 in", StringComparison.Ordinal));

    /// <summary>That bridge with its ropes so far apart.</summary>
    public static TwoBays Apart(double spacing) => s_bridge with { Spacing = spacing };

    /// <summary>The same with other loads.</summary>
    public static TwoBays Loaded(double spacing, string loads) => Apart(spacing) with
    {
        More = s_bridge.More
            .Replace("live: 0 psf, point: { force: 0 lbf }, cases: [{ id: crowd, live: 60 psf }]", loads, StringComparison.Ordinal),
    };

    /// <summary>Both ropes of it by hand under so many psf all along, a share of it on one rope.</summary>
    public static TwoRopes Ropes(double spacing, double psf, double share)
    {
        var ((hanging, moment), people) = (Dead(s_bridge), psf / 144 * s_bridge.Between * 72);
        return new TwoRopes(spacing, s_bridge.Sag, hanging, moment, 1).With(people, (share - 0.5) * spacing, PeopleHigh);
    }

    // Base's top 5.25 in over the rope, boards 1.5 in, and 1.0 m: common practice, no source.
    public const double PeopleHigh = 5.25 + 1.5 + (1 / TwoBays.Inch);

    private static Proof Of(double factor, double needed, params string[] says)
    {
        var (low, high) = (10.0, 200.0);
        for (var i = 0; i < 60; i++)
        {
            var middle = (low + high) / 2;
            (low, high) = Ropes(middle, 60, 0.6).Factor() < factor ? (middle, high) : (low, middle);
        }

        return new Proof(Apart(low).Check("roll"), factor, needed) { Error = 1e-4 }.Saying(says);
    }

    // What hangs on the ropes: the middle frame and, of both bays together, as much as one bay; each part at the middle of its
    // stick over the rope's chord, which falls 8 in in 72 in to the middle frame. Base's top 5.25 in over the rope there.
    public static (double Hanging, double Moment) Dead(TwoBays bridge)
    {
        var (post, brace) = (bridge.LeanRadians, 12 * Math.PI / 180);
        var longEdge = (10 - (3.5 / Math.Cos(post))) / (Math.Tan(post) + Math.Tan(brace)) / Math.Cos(brace);
        var shortEdge = longEdge - (3.5 * (Math.Tan(brace) + (1 / Math.Tan(post + brace))));
        var (deck, guard) = (TwoBays.Upright(bridge.DeckFall, 1), TwoBays.Upright(bridge.CapFall, 1));
        // Boards from 1.75 in before the support to 1/16 in before the middle frame, rails and caps from 0.75 in before it.
        var (board, rail) = ((72 - 1.75 - 0.0625) / 2, (72 - 0.75) / 2);
        List<(double Weight, double Height)> parts =
        [
            (40 / 1728.0 * ((3.5 * 5.5 * 58) - (2 * 0.875 * 0.625 * 3.5) - (4 * Math.PI / 4 / 16 * 2)), 5.25 - 2.75),
            (40 / 1728.0 * 2 * 1.5 * 3.5 * 24, 5.25 + (12 * Math.Cos(post))),
            (40 / 1728.0 * 1.5 * 3.5 * (longEdge + shortEdge), 5.25 + (longEdge / 2 * Math.Cos(brace)) - (1.75 * Math.Sin(brace))),
            (3, 5.25),
            (
                40 / 1728.0 * 6 * 1.5 * 5.5 * (72 + 1.75 - 0.0625) * deck,
                bridge.EndTop + bridge.Lift + (0.75 * deck) + Over(bridge, bridge.DeckFall, board)),
            (
                20 / 1728.0 * 2 * 1.5 * 5.5 * 72.75 * guard,
                bridge.EndTop + (24 * Math.Cos(post)) + (0.75 * guard) + Over(bridge, bridge.CapFall, rail)),
        ];
        foreach (var up in (double[])[6, 12, 18])
        {
            var middle = bridge.EndTop + (up * Math.Cos(post)) + (0.375 * Math.Sin(post) / bridge.RailNormal);
            parts.Add((20 / 1728.0 * 2 * 0.75 * 3.5 * 72.75 * guard, middle + Over(bridge, bridge.CapFall, rail)));
        }

        return (parts.Sum(p => p.Weight), parts.Sum(p => p.Weight * p.Height));
    }

    // Further along, a part has fallen, and the chord too.
    private static double Over(TwoBays bridge, double fall, double x) => (bridge.Sag / 72 * x) - (fall * x);
}
