using BridgeForm.Quantities;

namespace BridgeForm.Project.Definition;

/// <summary>Keys under <c>site</c>.</summary>
internal static class SiteKeys
{
    private const string Coldest = "-60 F";
    private const string Hottest = "140 F";

    public static KeySpec Site => Define.Map(
        "site",
        "Supports and ground",
        [
            Define.Length("span", "Horizontal distance, support to support", "3 ft", "20000 ft").Needed("30 ft", "9 m").Starting(),
            Define.Length("rise", "Support B above support A; may be negative", "-7000 ft", "7000 ft", "0 ft", "0 m").Starting(),
            Temperature("reference_temperature", "Temperature at which the design shape holds", "60 F", "15 C").Starting(),
            Define.List("temperatures", "Other temperatures to look at, from the coldest to the hottest", Temperature("", "Temperature"), 0, 100)
                .Starting() with
            { Default = "[20 F, 100 F]", MetricDefault = "[-5 C, 40 C]" },
            Define.List("ground", "Ground line as points [x, y] from support A's rope axis, x growing", Point, 2, 1000),
            Define.Length("water", "Level of the highest water, from support A's rope axis; negative below it", "-7000 ft", "7000 ft"),
            Define.Length("freeboard", "Room to keep between the highest water and the bridge's lowest part", "0 ft", "300 ft"),
            Support("a", "Support A"),
            Support("b", "Support B"),
        ]).Starting();

    private static KeySpec Point => Define.List(
        "", "A point [x, y]", Define.Length("", "x or y", "-20000 ft", "20000 ft"), 2, 2);

    private static KeySpec Temperature(string name, string description, string? value = null, string? metric = null) =>
        Define.Quantity(QuantityKind.Temperature, name, description, Coldest, Hottest, value, metric);

    private static KeySpec Support(string name, string description) => Define.Map(
        name,
        description,
        [
            Define.OptionalMap(
                "backstay",
                "Rope from the support on to its anchor",
                [
                    Define.Length("length", "Length of the backstay", "1 in", "3000 ft").Needed("20 ft", "6 m"),
                    Define.Quantity(QuantityKind.Angle, "angle", "Angle of the backstay below the horizontal", "-80 deg", "89 deg").Needed("30 deg"),
                    Define.Choice("saddle", "Rope held on the saddle, or free to slide over it", "fixed", "fixed", "sliding"),
                ]),
            Define.OptionalMap(
                "landing",
                "The landing in front of the end frame",
                [
                    Define.Length("level", "Walking surface of the landing above the rope axis at the support", "-20 ft", "20 ft"),
                    Define.Length("gap", "Gap between landing and deck", "0 in", "3 ft"),
                ]),
        ]);
}
