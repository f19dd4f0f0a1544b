using BridgeForm.Project.Definition;
using BridgeForm.Project.Reading;
using BridgeForm.Quantities;

namespace BridgeForm.Project;

/// <summary>Tools and paper. Metres and radians.</summary>
public sealed record ShopParameters
{
    /// <summary>Largest mitre the saw sets, radians.</summary>
    public required double MitreLimit { get; init; }

    /// <summary>Largest bevel the saw sets, radians.</summary>
    public required double BevelLimit { get; init; }

    /// <summary>How far the saw reaches.</summary>
    public required SawParameters Saw { get; init; }

    /// <summary>Tools that cut ends.</summary>
    public required ShopTools Tools { get; init; }

    /// <summary>How wood is held at a saw.</summary>
    public required HoldParameters Hold { get; init; }

    /// <summary>Width of the saw cut, metres.</summary>
    public required double Kerf { get; init; }

    /// <summary>Diameter of the bit in the hand-held router, metres.</summary>
    public required double RouterBit { get; init; }

    /// <summary>The router table.</summary>
    public required RouterParameters Router { get; init; }

    /// <summary>The model to print.</summary>
    public required PrintParameters Print { get; init; }

    /// <summary>Pieces closer than this at every corner are one piece, metres.</summary>
    public required double Tolerance { get; init; }

    /// <summary>Widest gap at a joint that a shared setting of the saw may leave, metres.</summary>
    public required double JointGap { get; init; }

    /// <summary>Paper name.</summary>
    public required string Paper { get; init; }

    /// <summary>Length cut off each end of a stock board before use, metres.</summary>
    public required double Trim { get; init; }

    /// <summary>Shortest offcut worth keeping, metres.</summary>
    public required double Offcut { get; init; }

    /// <summary>Neighbours on a board with equal mitre and bevel where they touch share one cut.</summary>
    public bool ShareCuts { get; init; }

    /// <summary>Leave holding tabs in board files.</summary>
    public required bool Tabs { get; init; }
}

/// <summary>Keys under <c>shop</c>, and how they are read.</summary>
internal static class ShopSection
{
    public static KeySpec Keys => Define.Map(
        "shop",
        "Tools and paper",
        [
            Define.Map(
                "saw",
                "The miter saw",
                [
                    Define.Quantity(QuantityKind.Angle, "mitre_limit", "Largest miter it sets", "0 deg", "80 deg", "50 deg").Starting(),
                    Define.Quantity(QuantityKind.Angle, "bevel_limit", "Largest bevel it sets", "0 deg", "80 deg", "45 deg").Starting(),
                    Define.Length("kerf", "Width of its cut", "0 in", "1/2 in", "1/8 in", "3 mm").Starting(),
                    SawSection.Crosscut,
                    SawSection.Height,
                    SawSection.Slides,
                    SawSection.Step,
                ]).Starting(),
            SawSection.Tools,
            SawSection.TableDepth,
            SawSection.BandHeight,
            Define.Length("router_bit", "Diameter of the router bit", "1/64 in", "2 in", "1/4 in", "6 mm").Starting(),
            RouterSection.Keys,
            PrintSection.Keys,
            Define.Length("tolerance", "Parts closer than this at every corner are cut alike", "0.01 mm", "6 mm", "0.5 mm").Starting(),
            Define.Length(
                "joint_gap", "Widest gap at a joint that a setting shared by like cuts may leave", "0 in", "1/4 in", "1/32 in", "1 mm"),
            (
                Define.Choice(
                    "paper", "Paper to draw on", "letter", "letter", "tabloid", "arch-d", "a4", "a3", "a1", "roll-24",
                    "roll-36") with { MetricDefault = "a4" })
                .Starting(),
            Define.Length("trim", "Cut off each end of a stock board before use", "0 in", "12 in", "1/2 in", "12 mm"),
            Define.Length("offcut", "Shortest offcut worth keeping", "0 in", "20 ft", "12 in", "300 mm"),
            Define.Flag("share_cuts", "Neighbors on a board that are cut at the same angles share one cut", "false"),
            Define.Flag("tabs", "Leave holding tabs in board files", "false"),
        ]).Starting();

    public static ShopParameters Read(FileValues v) => new()
    {
        MitreLimit = v.Number("shop.saw.mitre_limit"),
        BevelLimit = v.Number("shop.saw.bevel_limit"),
        Saw = SawSection.Read(v),
        Tools = SawSection.ReadTools(v),
        Hold = HoldParameters.For(v.Units),
        Kerf = v.Number("shop.saw.kerf"),
        RouterBit = v.Number("shop.router_bit"),
        Router = RouterSection.Read(v, v.Number("shop.router_bit")),
        Print = PrintSection.Read(v),
        Tolerance = v.Number("shop.tolerance"),
        JointGap = v.Number("shop.joint_gap"),
        Paper = v.Text("shop.paper"),
        Trim = v.Number("shop.trim"),
        Offcut = v.Number("shop.offcut"),
        ShareCuts = v.Flag("shop.share_cuts"),
        Tabs = v.Flag("shop.tabs"),
    };
}

/// <summary>Field treatment of cuts.</summary>
/// <param name="Coats">Number of coats.</param>
/// <param name="Coverage">Area one litre covers in one coat, m²/m³ (square metres per cubic metre).</param>
public sealed record TreatmentParameters(int Coats, double Coverage);

/// <summary>Of what fasteners and keepers in the wood are made.</summary>
public enum FastenerMetal
{
    /// <summary>Hot-dip zinc-coated steel.</summary>
    HotDipGalvanized,

    /// <summary>Stainless steel.</summary>
    Stainless,
}

/// <summary>Keys under <c>treatment</c>, and how they are read.</summary>
internal static class TreatmentSection
{
    public static KeySpec Keys => Define.OptionalMap(
        "treatment",
        "What treated wood asks for: field preservative on its cuts, and fasteners that it does not eat",
        [
            Define.Whole("coats", "Coats of field preservative", "1", "10", "2"),
            Define.Quantity(
                QuantityKind.Coverage, "coverage", "Area that field preservative covers in one coat", "10 ft2/gal", "2000 ft2/gal",
                "100 ft2/gal", "2.5 m2/l"),
            Define.Choice(
                Metal, "Of what all fasteners and keepers in treated wood are", null, "hot-dip-galvanized", "stainless").Starting(),
        ]).Starting();

    /// <summary>Field preservative; null where the file says nothing of it, though it may of fasteners.</summary>
    public static TreatmentParameters? Read(FileValues v)
    {
        var fastenersAlone = v.Given("treatment." + Metal) && !v.Given("treatment.coats") && !v.Given("treatment.coverage");
        return v.Given("treatment") && !fastenersAlone
            ? new TreatmentParameters(v.Whole("treatment.coats"), v.Number("treatment.coverage"))
            : null;
    }

    /// <summary>The metal of fasteners; null where the file does not say.</summary>
    public static FastenerMetal? ReadMetal(FileValues v) => v.TextOrNull("treatment." + Metal) switch
    {
        "hot-dip-galvanized" => FastenerMetal.HotDipGalvanized,
        "stainless" => FastenerMetal.Stainless,
        _ => null,
    };

    private const string Metal = "fasteners";
}
