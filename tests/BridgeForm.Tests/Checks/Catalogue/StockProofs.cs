using BridgeForm.Checks;

namespace BridgeForm.Tests.Checks.Catalogue;

/// <summary>Pieces against boards on sale.</summary>
internal static class StockProofs
{
    // Posts 40 in from the middle, so that a base, square at both ends, is 2 × (40 + 10.75) = 101.5 in long and the longest
    // piece. Its board loses 1/2 in of trim at each end.
    [Proves("stock-length", CheckStatus.Pass, Side.Within)]
    [Proves("stock-length", CheckStatus.Fail, Side.Beyond)]
    public static Proof Base_from_one_board(double share)
    {
        var board = FormattableString.Invariant($"{(101.5 / share) + 1:0.##########} in");
        var bridge = new TwoBays
        {
            Foot = 40,
            Deck = "deck: { count: auto }",
            More = "shop: { trim: 1/2 in }\nstock: { treated: { species: southern-pine, grade: no1, treated: true, lengths: [4 ft, " + board
                + "] }, cedar: { species: western-red-cedar, grade: no2, lengths: [8 ft] } }",
        };
        var check = Bridges.Build(bridge.Text).Checks.Single(c => c.Id == "stock-length");
        return new Proof(check, 101.5 * TwoBays.Inch, 101.5 / share * TwoBays.Inch);
    }
}
