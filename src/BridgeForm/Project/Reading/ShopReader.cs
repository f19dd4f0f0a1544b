namespace BridgeForm.Project.Reading;

/// <summary>Reads <c>shop</c> and <c>treatment</c>.</summary>
internal static class ShopReader
{
    public static ShopParameters Read(FileValues v) => new()
    {
        MitreLimit = v.Number("shop.saw.mitre_limit"),
        BevelLimit = v.Number("shop.saw.bevel_limit"),
        Kerf = v.Number("shop.saw.kerf"),
        RouterBit = v.Number("shop.router_bit"),
        Tolerance = v.Number("shop.tolerance"),
        Paper = v.Text("shop.paper"),
        Trim = v.Number("shop.trim"),
        Offcut = v.Number("shop.offcut"),
        ShareCuts = v.Flag("shop.share_cuts"),
        Tabs = v.Flag("shop.tabs"),
    };

    public static TreatmentParameters? Treatment(FileValues v) => v.Given("treatment")
        ? new TreatmentParameters(v.Whole("treatment.coats"), v.Number("treatment.coverage"))
        : null;
}
