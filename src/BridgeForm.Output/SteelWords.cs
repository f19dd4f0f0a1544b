using BridgeForm.Materials;
using BridgeForm.Project;

namespace BridgeForm.Output;

/// <summary>What steel is made of, for other programs' lists of materials.</summary>
internal static class SteelWords
{
    /// <summary>Plates and bolts: the metal that the file says, or both that treated wood bears.</summary>
    public static string Fasteners(FastenerMetal? metal) => metal switch
    {
        FastenerMetal.HotDipGalvanized => "mild steel, hot-dip galvanized",
        FastenerMetal.Stainless => "stainless steel",
        _ => "steel, hot-dip galvanized or stainless",
    };

    /// <summary>The ropes.</summary>
    public static string Of(RopeProperties rope) => rope.Galvanized ? "steel wire rope, galvanized" : "steel wire rope, not galvanized";
}
