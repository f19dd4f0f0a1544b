using BridgeForm.Materials;
using BridgeForm.Quantities;

namespace BridgeForm.Project.Reading;

/// <summary>Reads <c>ropes</c>.</summary>
internal static class RopeReader
{
    private const double ClipsEfficiency = 0.8;
    private const string ClipsSource = "80 % for clips (TM 5-3810-305-10 Table 4)";

    public static RopeParameters Read(FileValues v, RopeCatalogue ropes, FaultList faults)
    {
        var kind = v.Text("ropes.termination.kind");
        var efficiency = v.NumberOrNull("ropes.termination.efficiency");
        var assumed = efficiency is null && kind is "clips";
        return new RopeParameters
        {
            Rope = Rope(v, ropes, faults),
            Spacing = v.Number("ropes.spacing"),
            Sag = Sag(v),
            TerminationKind = kind,
            TerminationEfficiency = assumed ? ClipsEfficiency : efficiency,
            TerminationSource = v.TextOrNull("ropes.termination.source") ?? (assumed ? ClipsSource : null),
            SafetyFactor = v.Number("ropes.safety_factor"),
            MarkingTension = v.Number("ropes.marking_tension"),
            Stretch = v.Given("ropes.stretch") && v.Good("ropes.stretch")
                ? new ShareRange(v.Number("ropes.stretch.0"), v.Number("ropes.stretch.1"))
                : null,
        };
    }

    /// <summary>Sag in metres, whichever way it is written.</summary>
    public static double Sag(FileValues v) => v.Find("ropes.sag") is { Kind: QuantityKind.Share } share
        ? share.Number * v.Number("site.span")
        : v.Number("ropes.sag");

    private static RopeProperties Rope(FileValues v, RopeCatalogue ropes, FaultList faults)
    {
        if (v.Find("ropes.type.diameter") is not null)
        {
            return Own(v);
        }

        var key = v.Text("ropes.type");
        if (ropes.Find(key) is { } rope)
        {
            return rope;
        }

        faults.Add(v.Place("ropes.type"), Unknown(key, ropes));
        v.Set("ropes.type", v.Find("ropes.type")! with { Good = false });
        return StandIn;
    }

    private static string Unknown(string key, RopeCatalogue ropes)
    {
        var hint = NearestWord.Of(key, ropes.Keys) is { } nearest
            ? $"did you mean {nearest}?"
            : $"write one such as {ropes.Keys.FirstOrDefault()}, or a mapping with diameter, mass_per_length, breaking_strength, metallic_area and modulus";
        return $"{QuantityReader.Quote(key)} is not a rope of the built-in table; {hint}";
    }

    private static RopeProperties Own(FileValues v) => new()
    {
        Name = "own rope " + new QuantityText(v.Units).Size(v.Number("ropes.type.diameter")),
        Kind = RopeKind.Custom,
        Diameter = v.Number("ropes.type.diameter"),
        MassPerLength = v.Number("ropes.type.mass_per_length"),
        BreakingStrength = v.Number("ropes.type.breaking_strength"),
        MetallicArea = v.Number("ropes.type.metallic_area"),
        Modulus = v.Number("ropes.type.modulus"),
        Galvanized = v.Flag("ropes.type.galvanized"),
        Source = v.Text("ropes.type.source"),
    };

    // Stands in for a rope with a fault, so that the rest of the file can be read; it never leaves the reader.
    private static RopeProperties StandIn => new()
    {
        Name = "",
        Kind = RopeKind.Custom,
        Diameter = 0.01,
        MassPerLength = 1,
        BreakingStrength = 1,
        MetallicArea = 1,
        Modulus = 1,
        Galvanized = false,
        Source = "",
    };
}
