using BridgeForm.Quantities;
using BridgeForm.Roles;

namespace BridgeForm.Project.Definition;

/// <summary>Keys under <c>shop</c>, <c>treatment</c>, <c>holes</c> and the like.</summary>
internal static class ShopKeys
{
    public static KeySpec Shop => Define.Map(
        "shop",
        "Tools and paper",
        [
            Define.Map(
                "saw",
                "The mitre saw",
                [
                    Define.Quantity(QuantityKind.Angle, "mitre_limit", "Largest mitre it sets", "0 deg", "80 deg", "50 deg"),
                    Define.Quantity(QuantityKind.Angle, "bevel_limit", "Largest bevel it sets", "0 deg", "80 deg", "45 deg"),
                    Define.Length("kerf", "Width of its cut", "0 in", "1/2 in", "1/8 in", "3 mm"),
                ]).AllStarting(),
            Define.Length("router_bit", "Diameter of the router bit", "1/64 in", "2 in", "1/4 in", "6 mm").Starting(),
            Define.Length("tolerance", "Parts closer than this at every corner are cut alike", "0.01 mm", "6 mm", "0.5 mm").Starting(),
            (Define.Choice("paper", "Paper to draw on", "letter", "letter", "tabloid", "arch-d", "a4", "a3", "a1", "roll-24", "roll-36") with { MetricDefault = "a4" }).Starting(),
            Define.Length("trim", "Cut off each end of a stock board before use", "0 in", "12 in", "0 in", "0 mm"),
            Define.Length("offcut", "Shortest offcut worth keeping", "0 in", "20 ft", "12 in", "300 mm"),
            Define.Flag("share_cuts", "Neighbours on a board that are cut at the same angles share one cut", "false"),
            Define.Flag("tabs", "Leave holding tabs in board files", "false"),
        ]).Starting();

    public static KeySpec Treatment => Define.OptionalMap(
        "treatment",
        "Field preservative on cuts in treated wood",
        [
            Define.Whole("coats", "Number of coats", "1", "10", "2"),
            Define.Quantity(QuantityKind.Coverage, "coverage", "Area covered in one coat", "10 ft2/gal", "2000 ft2/gal", "100 ft2/gal", "2.5 m2/l"),
        ]);

    public static KeySpec Fasteners => Define.Named(
        "fasteners", "Fasteners by joint, counted for one joint", Define.Whole("", "Fasteners in one joint", "0", "1000")) with
    { Choices = RoleTable.JointNames };

    public static KeySpec Erection => Define.Choice(
        "erection", "Order in which frames are hung", "both-ends", "one-end", "both-ends");

    public static KeySpec Holes => Define.OptionalMap(
        "holes", "Holes of your own, in every member of a kind", [.. RoleTable.All.Where(r => r.TakesHoles).Select(HolesIn)]);

    private static KeySpec HolesIn(RoleFacts facts) => HolesIn(facts.Name, char.ToUpperInvariant(facts.Many[0]) + facts.Many[1..], facts.Axis == RoleAxis.Across
        ? "From the middle of the face; on the side up, on top and bottom towards A"
        : "From the middle of the face; on the wide face outward from the bridge's middle, so that left and right are mirror images; on top and bottom towards B");

    private static KeySpec HolesIn(string name, string description, string across) => Define.List(
        name,
        description,
        Define.Map(
            "",
            "A hole",
            [
                Define.Choice("face", "The face the bit enters; of a base, top and bottom as it lies", "wide", "wide", "top", "bottom"),
                Define.Length("from_end", "Along the piece from the long point of its foot (left end of a base)", "0 in", "40 ft", "3 in", "75 mm"),
                Define.Length("from_far_end", "Along the piece from the long point of its head (right end of a base), in place of from_end", "0 in", "40 ft"),
                Define.Length("across", across, "-12 in", "12 in", "0 in", "0 mm"),
                Define.Length("diameter", "Diameter", "1/16 in", "6 in").Needed("3/8 in", "10 mm"),
                Define.Length("depth", "Depth of a blind hole", "1/16 in", "24 in") with { DefaultNote = "through" },
            ]) with
        { OneOf = ["from_end", "from_far_end"] },
        0,
        100);
}
