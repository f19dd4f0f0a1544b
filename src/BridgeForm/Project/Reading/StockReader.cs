using System.Collections.Immutable;
using BridgeForm.Materials;
using BridgeForm.Quantities;

namespace BridgeForm.Project.Reading;

/// <summary>Reads <c>stock</c>.</summary>
internal static class StockReader
{
    public static ImmutableArray<StockParameters> Read(FileValues v, ImmutableArray<Species> own, FaultList faults) =>
        [.. v.Names("stock").Select(name => One(v, name, own, faults))];

    private static StockParameters One(FileValues v, string name, ImmutableArray<Species> own, FaultList faults)
    {
        var path = "stock." + name;
        var species = SpeciesOf(v, path + ".species", own, faults);
        var treated = v.Flag(path + ".treated");
        return new StockParameters
        {
            Name = name,
            Species = species.Key,
            Grade = v.Text(path + ".grade"),
            Treated = treated,
            Durable = species.Durable,
            Incised = v.Flag(path + ".incised"),
            Lengths = [.. v.Items(path + ".lengths").Select(v.Number).Order()],
            Density = SpeciesReader.Density(v, path + ".density", WoodDensity.Of(species, treated)),
        };
    }

    private static Species SpeciesOf(FileValues v, string path, ImmutableArray<Species> own, FaultList faults)
    {
        var key = v.Text(path);
        var found = own.FirstOrDefault(s => string.Equals(s.Key, key, StringComparison.Ordinal)) ?? SpeciesTable.Find(key);
        if (found is not null)
        {
            return found;
        }

        var known = own.Concat(SpeciesTable.All).Select(s => s.Key).Distinct(StringComparer.Ordinal).ToList();
        var hint = NearestWord.Of(key, known) is { } nearest ? $"did you mean {nearest}?" : $"known are {string.Join(", ", known)}";
        faults.Add(v.Place(path), $"{QuantityReader.Quote(key)} is not a species; {hint} Your own go under species:");
        return SpeciesTable.All[0];
    }
}
