using System.Collections.Immutable;
using BridgeForm.Materials;
using BridgeForm.Project.Definition;
using BridgeForm.Project.Reading;
using BridgeForm.Project.Reading.Faults;
using BridgeForm.Quantities;

namespace BridgeForm.Project;

/// <summary>Keys under <c>species</c>, and how they are read.</summary>
internal static class SpeciesSection
{
    public static KeySpec Keys => Define.Named(
        "species",
        "Species of your own, or other numbers for a built-in one",
        Define.Map(
            "",
            "A species",
            [
                Define.Number("specific_gravity", "Specific gravity, oven-dry weight and volume", "0.1", "1.4").Needed("0.5"),
                Define.Flag("durable", "Naturally durable: its cuts need no preservative", "false"),
                DensitySection.Keys,
                Define.Text("source", "Where the numbers come from").Needed("my own weighing"),
            ]));

    public static ImmutableArray<Species> Read(FileValues v) => [.. v.Names("species").Select(key => One(v, key))];

    private static Species One(FileValues v, string key)
    {
        var path = "species." + key;
        var species = new Species(key, v.Number(path + ".specific_gravity"), v.Flag(path + ".durable"), v.Text(path + ".source"));
        return v.Given(path + ".density")
            ? species with { OwnDensity = DensitySection.Read(v, path + ".density", WoodDensity.Of(species, treated: false)) }
            : species;
    }
}

/// <summary>Keys of a mapping <c>density</c> under <c>stock</c> and <c>species</c>, how they are read, and their order.</summary>
internal static class DensitySection
{
    public static KeySpec Keys => Define.OptionalMap(
        "density",
        "Densities in place of those of the species",
        [
            DensityOf("low", "Dry").Needed("33 lb/ft3", "530 kg/m3"),
            DensityOf("in_service", "At moisture in service") with { DefaultNote = "the species' own, kept between low and high" },
            DensityOf("high", "Freshly treated or green").Needed("55 lb/ft3", "880 kg/m3"),
            Define.Text("source", "Where the numbers come from", "the project file"),
        ]);

    /// <summary>A density mapping over the species' own densities; those, when it is left out.</summary>
    public static DensityRange Read(FileValues v, string path, DensityRange natural)
    {
        if (v.NumberOrNull(path + ".low") is not { } low || v.NumberOrNull(path + ".high") is not { } high || high < low)
        {
            return natural;
        }

        var inService = v.NumberOrNull(path + ".in_service") ?? Math.Clamp(natural.InService, low, high);
        return new DensityRange(low, inService, high, v.Text(path + ".source"));
    }

    /// <summary>Low, in service and high in that order.</summary>
    public static void Check(CheckedFile f)
    {
        foreach (var item in f.Values.Items("stock").Concat(f.Values.Items("species")))
        {
            Check(f, item + ".density");
        }
    }

    private static void Check(CheckedFile f, string path)
    {
        var (low, inService, high) = (path + ".low", path + ".in_service", path + ".high");
        if (f.Values.NumberOrNull(low) is not { } least || f.Values.NumberOrNull(high) is not { } most)
        {
            return;
        }

        if (most < least)
        {
            f.Stop(FaultCode.DensityReversed, high, $"high: '{f.Written(high)}' is less than low, '{f.Written(low)}'");
        }
        else if (f.Values.NumberOrNull(inService) is { } middle && (middle < least || middle > most))
        {
            f.Stop(FaultCode.DensityOutside, inService, $"in_service: '{f.Written(inService)}' must lie between low and high, "
                + $"'{f.Written(low)}' to '{f.Written(high)}'");
        }
    }

    private static KeySpec DensityOf(string name, string description) =>
        Define.Quantity(QuantityKind.Density, name, description, "5 lb/ft3", "100 lb/ft3");
}
