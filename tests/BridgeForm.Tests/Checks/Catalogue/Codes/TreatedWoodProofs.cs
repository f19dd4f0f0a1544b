using BridgeForm.Checks;

namespace BridgeForm.Tests.Checks.Catalogue.Codes;

/// <summary>Copper in treated wood beside zinc: yes or no, told as 1 or 0; and wood that rots, counted.</summary>
internal static class TreatedWoodProofs
{
    private const string Untreated =
        "stock: { treated: { species: southern-pine, grade: no1, lengths: [16 ft] }, cedar: { species: western-red-cedar, lengths: "
            + "[12 ft] } }";

    [Proves("copper-on-zinc", CheckStatus.Warn)]
    public static Proof Galvanised_rope_on_treated_wood() => new Proof(new TwoBays().Check("copper-on-zinc"), 1).Saying("channel.liner");

    [Proves("copper-on-zinc", CheckStatus.Pass)]
    public static Proof Lined() => new Proof(new TwoBays { Channel = ", liner: 1/8 in" }.Check("copper-on-zinc"), 0).Saying("0.125 in");

    [Proves("copper-on-zinc", CheckStatus.Pass)]
    public static Proof Bare_rope() =>
        new Proof(new TwoBays { Rope = "rope-6x19-iwrc-eips-3/4" }.Check("copper-on-zinc"), 0).Saying("not galvanized");

    [Proves("copper-on-zinc", CheckStatus.Pass)]
    public static Proof Untreated_bases() => new Proof(new TwoBays { More = Untreated }.Check("copper-on-zinc"), 0).Saying("not treated");

    [Proves("fasteners-in-treated-wood", CheckStatus.Warn)]
    public static Proof Treated_stock() => new Proof(new TwoBays().Check("fasteners-in-treated-wood"), 1).Saying("hot-dip", "treated");

    [Proves("fasteners-in-treated-wood", CheckStatus.Pass)]
    public static Proof No_treated_stock() =>
        new Proof(new TwoBays { More = Untreated }.Check("fasteners-in-treated-wood"), 0).Saying("no treated wood");

    // Rails and caps are of cedar here, whose heartwood lasts.
    [Proves("wood-outdoors", CheckStatus.Pass)]
    public static Proof Treated_or_durable() => new Proof(
        new TwoBays().Check("wood-outdoors"), 0).Saying("stock cedar (western-red-cedar) of rails, caps", "sapwood is not");

    [Proves("wood-outdoors", CheckStatus.Pass)]
    public static Proof All_treated() => new Proof(
        new TwoBays { More = Stock("southern-pine", "treated: true", "southern-pine", "treated: true") }.Check("wood-outdoors"),
        0).Saying("all stock in use is treated");

    [Proves("wood-outdoors", CheckStatus.Warn)]
    public static Proof Untreated_pine() => new Proof(new TwoBays { More = Untreated }.Check("wood-outdoors"), 1)
        .Saying("stock treated (southern-pine) of bases, posts, braces", "boards", "neither treated nor naturally durable");

    [Proves("wood-outdoors", CheckStatus.Warn)]
    public static Proof Untreated_pine_and_hem_fir() => new Proof(
        new TwoBays { More = Stock("southern-pine", "treated: false", "hem-fir", "treated: false") }.Check("wood-outdoors"),
        2).Saying("stock treated (southern-pine) of bases", "stock cedar (hem-fir) of rails, caps");

    // A stock that nothing is cut from rots nowhere.
    [Proves("wood-outdoors", CheckStatus.Pass)]
    public static Proof Untreated_stock_that_is_not_used() => new Proof(
        new TwoBays
        {
            More = Stock("southern-pine", "treated: true", "western-red-cedar", "treated: false")
                .Replace(" } }", " }, shed: { species: spruce-pine-fir, grade: no2, lengths: [12 ft] } }", StringComparison.Ordinal),
        }.Check("wood-outdoors"),
        0);

    private static string Stock(string bases, string basesTreated, string rails, string railsTreated) =>
        $"stock: {{ treated: {{ species: {bases}, grade: no1, {basesTreated}, lengths: [16 ft] }}, cedar: {{ species: {rails}, grade: no2, "
            + $"{railsTreated}, lengths: [12 ft] }} }}";
}
