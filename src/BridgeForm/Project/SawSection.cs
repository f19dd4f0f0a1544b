using BridgeForm.Project.Definition;
using BridgeForm.Project.Reading;
using BridgeForm.Quantities;

namespace BridgeForm.Project;

/// <summary>Tools that cut ends.</summary>
[Flags]
public enum ShopTools
{
    /// <summary>None but a hand saw.</summary>
    None = 0,

    /// <summary>The mitre saw of <see cref="SawParameters"/>.</summary>
    MitreSaw = 1,

    /// <summary>A hand-held circular saw.</summary>
    CircularSaw = 2,

    /// <summary>A table saw.</summary>
    TableSaw = 4,

    /// <summary>A band saw.</summary>
    BandSaw = 8,
}

/// <summary>How far the mitre saw reaches. Metres and radians.</summary>
/// <param name="Crosscut">Longest line it cuts along the blade on the table, from the fence on.</param>
/// <param name="Height">Thickest wood that goes under its head, cut through with the blade upright.</param>
/// <param name="Slides">The blade runs on rails; else it comes down in one place.</param>
/// <param name="Step">Smallest angle it is set by.</param>
public sealed record SawParameters(double Crosscut, double Height, bool Slides, double Step)
{
    /// <summary>Highest cut of the table saw.</summary>
    public double TableDepth { get; init; } = 0.079;

    /// <summary>Highest cut of the band saw.</summary>
    public double BandHeight { get; init; } = 0.150;
}

/// <summary>Keys of <c>shop.saw</c> beyond its limits, <c>shop.tools</c>, and how they are read.</summary>
internal static class SawSection
{
    private static readonly (string Word, ShopTools Tool)[] s_tools =
    [
        ("mitre-saw", ShopTools.MitreSaw),
        ("circular-saw", ShopTools.CircularSaw),
        ("table-saw", ShopTools.TableSaw),
        ("band-saw", ShopTools.BandSaw),
    ];

    // Sizes of a common sliding saw with a blade of 12 in or 305 mm, which goes through a post of 4x4 or of 95 x 95 mm with its head
    // bevelled. Common practice, no source.
    public static KeySpec Crosscut => Define.Length(
        "crosscut", "Longest line it cuts along the blade on the table, from the fence on; 8 in (200 mm) where it does not slide", "2 in",
        "4 ft", "12 in", "300 mm");

    public static KeySpec Height => Define.Length(
        "height", "Thickest wood that goes under its head and is cut through, blade upright", "1 in", "12 in", "3-5/8 in", "105 mm");

    public static KeySpec Slides => Define.Flag("sliding", "The blade runs on rails instead of coming down in one place", "true");

    // What a table saw with a blade of 10 in, or 254 mm, and a middling band saw reach. Common practice, no source.
    public static KeySpec TableDepth => Define.Length(
        "table_saw", "Highest cut of the table saw, blade upright", "1/2 in", "12 in", "3-1/8 in", "79 mm");

    public static KeySpec BandHeight => Define.Length("band_saw", "Highest cut of the band saw", "1 in", "24 in", "6 in", "150 mm");

    public static KeySpec Step => Define.Quantity(
        QuantityKind.Angle, "step", "Smallest angle it can be set by", "0.05 deg", "5 deg", "0.5 deg");

    public static KeySpec Tools => Define.List(
        "tools",
        "Tools at hand that cut ends; each cut is told with the first in this order that reaches: miter saw, circular saw, table saw, "
            + "band saw",
        Define.Choice("", "A tool", null, [.. s_tools.Select(t => t.Word)]) with { Example = "mitre-saw" },
        0,
        s_tools.Length) with
    { Default = "[mitre-saw, circular-saw]" };

    public static SawParameters Read(FileValues v)
    {
        var slides = v.Flag("shop.saw.sliding");
        var crosscut = slides || v.Given("shop.saw.crosscut") ? v.Number("shop.saw.crosscut")
            : v.Units == UnitSystem.Imperial ? 8 * Quantities.Units.MetresPerInch : 0.200;
        return new SawParameters(crosscut, v.Number("shop.saw.height"), slides, v.Number("shop.saw.step"))
        {
            TableDepth = v.Number("shop.table_saw"),
            BandHeight = v.Number("shop.band_saw"),
        };
    }

    public static ShopTools ReadTools(FileValues v) => v.Items("shop.tools").Select(v.Text)
        .Select(word => s_tools.FirstOrDefault(t => string.Equals(t.Word, word, StringComparison.Ordinal)).Tool)
        .Aggregate(ShopTools.None, (all, tool) => all | tool);
}
