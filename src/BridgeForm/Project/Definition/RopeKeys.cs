using BridgeForm.Quantities;

namespace BridgeForm.Project.Definition;

/// <summary>Keys under <c>ropes</c>.</summary>
internal static class RopeKeys
{
    public static KeySpec Ropes => Define.Map(
        "ropes",
        "The two ropes",
        [
            Type.Starting(),
            Define.Length("spacing", "Distance between the axes of the two ropes", "4 in", "40 ft", "44 in", "1100 mm").Starting(),
            Sag.Starting(),
            Termination.Starting(),
            Define.Number("safety_factor", "Breaking strength over the largest tension allowed", "1", "20", "5").Starting(),
            Define.Quantity(QuantityKind.Force, "marking_tension", "Tension under which the ropes are laid out and marked", "0 lbf", "200000 lbf", "0 lbf", "0 kN"),
            Define.List(
                "stretch",
                "Constructional stretch as a range [low, high]",
                Define.Quantity(QuantityKind.Share, "", "Share of length", "0 %", "3 %"),
                2,
                2) with
            { DefaultNote = "by the kind of rope" },
        ]).Starting();

    private static KeySpec Type => new("type", KeyShape.Value, "Key of the built-in table, or a mapping that describes a rope")
    {
        Type = ValueForm.Rope,
        Default = "rope-6x19-iwrc-eips-galvanized-3/4",
        Keys =
        [
            Define.Length("diameter", "Nominal diameter", "1/16 in", "6 in").Needed("3/4 in", "19 mm"),
            Define.Quantity(QuantityKind.MassPerLength, "mass_per_length", "Mass per length", "0.001 lb/ft", "100 lb/ft").Needed("1.04 lb/ft", "1.55 kg/m"),
            Define.Quantity(QuantityKind.Force, "breaking_strength", "Minimum breaking strength of the rope", "50 lbf", "5000000 lbf").Needed("52900 lbf", "235 kN"),
            Define.Quantity(QuantityKind.Area, "metallic_area", "Area of the wires", "0.0005 in2", "30 in2").Needed("0.27 in2", "175 mm2"),
            Define.Quantity(QuantityKind.Stress, "modulus", "Modulus of the rope, not of its steel", "1000 ksi", "32000 ksi").Needed("15000 ksi", "100 GPa"),
            Define.Flag("galvanized", "Zinc coated", "false"),
            Define.Text("source", "Where these numbers come from", "the project file"),
        ],
    };

    private static KeySpec Sag => new("sag", KeyShape.Value, "Sag at mid-span of the finished empty bridge: a share of the span, or a length")
    {
        Type = ValueForm.Quantity,
        Kinds = [QuantityKind.Share, QuantityKind.Length],
        RangeInWords = "0.05 % to 30 % of the span",
        Default = "6 %",
    };

    private static KeySpec Termination => Define.Map(
        "termination",
        "How the ropes' ends are made fast",
        [
            Define.Choice(
                "kind",
                "Kind of end",
                "clips",
                "clips",
                "socket",
                "poured-socket",
                "swaged-socket",
                "wedge-socket",
                "sleeve",
                "splice",
                "other").Starting(),
            (Define.Quantity(QuantityKind.Share, "efficiency", "Share of the rope's strength that the end keeps", "10 %", "100 %") with
            {
                DefaultNote = "80 % for clips; otherwise none",
                Example = "80 %",
            }).Starting(),
            Define.Text("source", "Where the efficiency comes from"),
        ]);
}
