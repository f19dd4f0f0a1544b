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
/// <param name="Crosscut">Longest line it cuts along the blade, from the fence on.</param>
/// <param name="Height">Thickest wood it cuts through with the blade upright.</param>
/// <param name="Slides">The blade runs on rails; else it comes down in one place, and cuts a shorter line in thicker wood.</param>
/// <param name="Step">Smallest angle it is set by.</param>
public sealed record SawParameters(double Crosscut, double Height, bool Slides, double Step);

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
        "crosscut", "Longest line it cuts along the blade, from the fence on", "2 in", "4 ft", "12 in", "300 mm");

    public static KeySpec Height => Define.Length(
        "height", "Thickest wood it cuts through, blade upright", "1 in", "12 in", "3-5/8 in", "105 mm");

    public static KeySpec Slides => Define.Flag("sliding", "The blade runs on rails instead of coming down in one place", "true");

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

    public static SawParameters Read(FileValues v) => new(
        v.Number("shop.saw.crosscut"), v.Number("shop.saw.height"), v.Flag("shop.saw.sliding"), v.Number("shop.saw.step"));

    public static ShopTools ReadTools(FileValues v) => v.Items("shop.tools").Select(v.Text)
        .Select(word => s_tools.FirstOrDefault(t => string.Equals(t.Word, word, StringComparison.Ordinal)).Tool)
        .Aggregate(ShopTools.None, (all, tool) => all | tool);
}
