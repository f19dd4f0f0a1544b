using BridgeForm.Checks;

namespace BridgeForm.Tests.Checks.Catalogue.Codes;

/// <summary>Copper in treated wood beside zinc: yes or no, told as 1 or 0.</summary>
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
        new Proof(new TwoBays { Rope = "rope-6x19-iwrc-eips-3/4" }.Check("copper-on-zinc"), 0).Saying("not galvanised");

    [Proves("copper-on-zinc", CheckStatus.Pass)]
    public static Proof Untreated_bases() => new Proof(new TwoBays { More = Untreated }.Check("copper-on-zinc"), 0).Saying("not treated");

    [Proves("fasteners-in-treated-wood", CheckStatus.Warn)]
    public static Proof Treated_stock() => new Proof(new TwoBays().Check("fasteners-in-treated-wood"), 1).Saying("hot-dip", "treated");

    [Proves("fasteners-in-treated-wood", CheckStatus.Pass)]
    public static Proof No_treated_stock() =>
        new Proof(new TwoBays { More = Untreated }.Check("fasteners-in-treated-wood"), 0).Saying("no treated wood");
}
