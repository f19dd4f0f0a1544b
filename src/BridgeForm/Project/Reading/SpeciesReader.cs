using System.Collections.Immutable;
using BridgeForm.Materials;

namespace BridgeForm.Project.Reading;

/// <summary>Reads <c>species</c> and <c>values</c>: the user's own table values.</summary>
internal static class SpeciesReader
{
    public static ImmutableArray<Species> Species(FileValues v) => [.. v.Names("species").Select(key => One(v, key))];

    public static ImmutableArray<DesignValue> Values(FileValues v) => [.. v.Items("values").Select(path => Row(v, path))];

    /// <summary>A density mapping over the species' own densities; those, when it is left out.</summary>
    public static DensityRange Density(FileValues v, string path, DensityRange natural)
    {
        if (v.NumberOrNull(path + ".low") is not { } low || v.NumberOrNull(path + ".high") is not { } high || high < low)
        {
            return natural;
        }

        var inService = v.NumberOrNull(path + ".in_service") ?? Math.Clamp(natural.InService, low, high);
        return new DensityRange(low, inService, high, v.Text(path + ".source"));
    }

    private static Species One(FileValues v, string key)
    {
        var path = "species." + key;
        var species = new Species(key, v.Number(path + ".specific_gravity"), v.Flag(path + ".durable"), v.Text(path + ".source"));
        return v.Given(path + ".density")
            ? species with { OwnDensity = Density(v, path + ".density", WoodDensity.Of(species, treated: false)) }
            : species;
    }

    private static DesignValue Row(FileValues v, string path) => new()
    {
        Species = v.Text(path + ".species"),
        Grade = v.Text(path + ".grade"),
        Size = v.Text(path + ".size"),
        Bending = v.Number(path + ".bending"),
        Tension = v.Number(path + ".tension"),
        Shear = v.Number(path + ".shear"),
        CompressionAcross = v.Number(path + ".compression_across"),
        Compression = v.Number(path + ".compression"),
        Modulus = v.Number(path + ".modulus"),
        ModulusMin = v.NumberOrNull(path + ".modulus_min"),
        Wet = v.Flag(path + ".wet"),
        SizeAdjusted = v.Flag(path + ".size_adjusted"),
        Source = v.Text(path + ".source"),
    };
}
