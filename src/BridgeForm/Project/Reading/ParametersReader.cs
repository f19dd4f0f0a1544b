using System.Collections.Immutable;
using BridgeForm.Materials;

namespace BridgeForm.Project.Reading;

/// <summary>Puts the parameters of the whole bridge together from the file's values.</summary>
internal static class ParametersReader
{
    public static BridgeParameters Read(FileValues v, RopeCatalogue ropes, FaultList faults)
    {
        var use = v.Text("use") is "public" ? BridgeUse.Public : BridgeUse.Private;
        var rope = RopeReader.Read(v, ropes, faults);
        var species = SpeciesReader.Species(v);
        return new BridgeParameters
        {
            Name = v.Text("name"),
            Units = v.Units,
            Use = use,
            Site = SiteReader.Read(v),
            Ropes = rope,
            Frames = FrameReader.Read(v, rope.Rope),
            Deck = DeckReader.Read(v),
            Guard = GuardReader.Read(v),
            Loads = LoadReader.Read(v, use),
            Stock = StockReader.Read(v, species, faults),
            Shop = ShopReader.Read(v),
            Prices = v.TextOrNull("prices"),
            Treatment = ShopReader.Treatment(v),
            Fasteners = v.Names("fasteners").ToImmutableSortedDictionary(n => n, n => v.Whole("fasteners." + n), StringComparer.Ordinal),
            Erection = v.Text("erection") is "one-end" ? ErectionOrder.OneEnd : ErectionOrder.BothEnds,
            Species = species,
            Values = SpeciesReader.Values(v),
        };
    }
}
