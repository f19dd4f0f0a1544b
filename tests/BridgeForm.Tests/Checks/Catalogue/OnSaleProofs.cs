using BridgeForm.Checks;

namespace BridgeForm.Tests.Checks.Catalogue;

/// <summary>Sections and ropes that can be had, or not.</summary>
internal static class OnSaleProofs
{
    private const string Pine = "stock: { treated: { species: southern-pine, grade: no1, treated: true, lengths: [16 ft]";
    private const string Cedar = "cedar: { species: western-red-cedar, grade: no2, lengths: [16 ft]";

    // Sections of TwoBays: 4x6, 2x4, 2x6, 1x4; yards keep all of them.
    [Proves("section-on-sale", CheckStatus.Pass)]
    public static Proof Common_sections() => new Proof(new TwoBays().Check("section-on-sale"), 0).Saying("every section");

    // The same by their dressed sizes, in a list of the file's own.
    [Proves("section-on-sale", CheckStatus.Pass)]
    public static Proof Own_list_in_millimetres() => new Proof(
        new TwoBays { More = $"{Pine}, sections: [89 x 140 mm, 38 x 89 mm, 38 x 140 mm] }}, {Cedar}, sections: [1x4, 2x6] }} }}" }
            .Check("section-on-sale"),
        0);

    // The file's list stands in place of the common one: 4x6 and 2x4 of the treated are not in it, bases, posts, braces and boards.
    [Proves("section-on-sale", CheckStatus.Warn)]
    public static Proof Not_in_the_list() => new Proof(
        new TwoBays { More = $"{Pine}, sections: [2x6] }}, {Cedar} }} }}" }.Check("section-on-sale"), 2)
        .Saying("4x6 of stock treated (bases)", "2x4 of stock treated (posts, braces", "list it under stock.treated.sections",
            "one of 2x6");

    [Proves("rope-on-sale", CheckStatus.Pass)]
    public static Proof Any_of_the_table() => new(new TwoBays().Check("rope-on-sale"), 0);

    [Proves("rope-on-sale", CheckStatus.Pass)]
    public static Proof In_the_list() => new(
        new TwoBays { Ropes = ", on_sale: [strand-ehs-1/2, rope-6x19-iwrc-eips-galvanized-3/4]" }.Check("rope-on-sale"), 0);

    [Proves("rope-on-sale", CheckStatus.Warn)]
    public static Proof Another_in_the_list() => new Proof(
        new TwoBays { Ropes = ", on_sale: [rope-6x19-iwrc-1770-20-mm]" }.Check("rope-on-sale"), 1)
        .Saying("rope-6x19-iwrc-eips-galvanized-3/4 is not under ropes.on_sale", "rope-6x19-iwrc-1770-20-mm");

    // Nobody sells it but to who described it.
    [Proves("rope-on-sale", CheckStatus.Pass)]
    public static Proof A_rope_of_its_own() => new Proof(
        new TwoBays
        {
            Rope = "{ diameter: 3/4 in, mass_per_length: 1.04 lb/ft, breaking_strength: 52900 lbf, metallic_area: 0.27 in2, "
                + "modulus: 13500 ksi }",
            Ropes = ", on_sale: [rope-6x19-iwrc-1770-20-mm]",
        }.Check("rope-on-sale"),
        0).Saying("your own");
}
