using BridgeForm.Quantities;

namespace BridgeForm.Project.Reading;

/// <summary>Reads <c>loads</c>.</summary>
internal static class LoadReader
{
    public static LoadParameters Read(FileValues v, BridgeUse use)
    {
        var live = v.NumberOrNull("loads.live");
        var (standard, source) = Standard(v.Units, use);
        return new LoadParameters
        {
            Live = live ?? standard,
            LiveSource = live is null ? source : "the project file",
            PointForce = v.Number("loads.point.force"),
            PointPatch = v.Number("loads.point.patch"),
            PointEdge = v.Number("loads.point.edge"),
            Eccentricity = v.Number("loads.eccentricity"),
            Uplift = v.NumberOrNull("loads.uplift"),
            Snow = v.NumberOrNull("loads.snow"),
            Cases = [.. v.Items("loads.cases").Select(p => Case(v, p))],
        };
    }

    private static (double Pascals, string Source) Standard(UnitSystem units, BridgeUse use)
    {
        var (imperial, metric, source) = use == BridgeUse.Public
            ? ("90 psf", "4.3 kPa", "public: AASHTO pedestrian 90 psf, from memory")
            : ("60 psf", "2.9 kPa", "private: ASCE 7 walkways 60 psf, from memory");
        return (QuantityReader.Read(QuantityKind.Pressure, units == UnitSystem.Metric ? metric : imperial).Value, source);
    }

    private static LoadCaseParameters Case(FileValues v, string path) => new()
    {
        Id = v.Text(path + ".id"),
        Live = v.NumberOrNull(path + ".live") ?? 0,
        From = v.NumberOrNull(path + ".from"),
        To = v.NumberOrNull(path + ".to"),
        PointForce = v.NumberOrNull(path + ".force") ?? 0,
        PointAt = v.NumberOrNull(path + ".at"),
        Temperature = v.NumberOrNull(path + ".temperature"),
    };
}
