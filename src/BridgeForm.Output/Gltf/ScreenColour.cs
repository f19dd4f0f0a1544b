using BridgeForm.Quantities;

namespace BridgeForm.Output.Gltf;

/// <summary>A material's colour as a screen shows it, each share 0 to 1: for formats that do not reckon with light.</summary>
internal readonly record struct ScreenColour(double Red, double Green, double Blue)
{
    private const int Decimals = 3;

    /// <summary>The colour of a material.</summary>
    public static ScreenColour Of(GltfMaterial material) => new(Share(material.Red), Share(material.Green), Share(material.Blue));

    /// <summary>Of linear light, as sRGB has it above its short straight part (IEC 61966-2-1, from memory).</summary>
    private static double Share(double light) => Numbers.Rounded((1.055 * Elementary.Pow(light, 1 / 2.4)) - 0.055, Decimals);
}
