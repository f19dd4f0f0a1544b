using BridgeForm.Quantities;

namespace BridgeForm.Project.Definition;

/// <summary>Keys under <c>loads</c>.</summary>
internal static class LoadKeys
{
    private const string HeaviestArea = "1000 psf";
    private const string HeaviestPoint = "100000 lbf";

    public static KeySpec Loads => Define.Map(
        "loads",
        "Loads",
        [
            (Area("live", "Live load on the clear width between the posts' inner faces at the deck") with
            {
                DefaultNote = "private 60 psf (2.9 kPa; ASCE 7 walkways, from memory), public 90 psf (4.3 kPa; AASHTO pedestrian, from memory)",
                Example = "60 psf",
                MetricExample = "2.9 kPa",
            }).Starting(),
            Define.Map(
                "point",
                "Concentrated load on a square patch",
                [
                    Define.Quantity(QuantityKind.Force, "force", "The force", "0 lbf", HeaviestPoint, "300 lbf", "1.35 kN"),
                    Define.Length("patch", "Side of the patch", "1/2 in", "10 ft", "30 in", "750 mm"),
                    Define.Length("edge", "At the edge: distance of the load's resultant from the posts' inner face, for ropes and bases; boards spread it over the patch", "0 in", "10 ft", "6 in", "150 mm"),
                ]).AllStarting(),
            Define.Quantity(QuantityKind.Share, "eccentricity", "Share of the area load on one rope", "50 %", "100 %", "60 %").Starting(),
            Area("uplift", "Upward wind on the deck"),
            Area("snow", "Snow on the deck"),
            Define.List("cases", "Load cases of your own", Case, 0, 50),
        ]).Starting();

    private static KeySpec Case => Define.Map(
        "",
        "A load case",
        [
            Define.Text("id", "Its name in results").Needed("my-case"),
            Area("live", "Area load"),
            Define.Length("from", "Where the area load begins, from support A", "0 ft", "20000 ft") with { DefaultNote = "support A" },
            Define.Length("to", "Where the area load ends, from support A", "0 ft", "20000 ft") with { DefaultNote = "support B" },
            Define.Quantity(QuantityKind.Force, "force", "Concentrated load", "0 lbf", HeaviestPoint),
            Define.Length("at", "Place of the concentrated load, from support A", "0 ft", "20000 ft") with { DefaultNote = "mid-span" },
            Define.Quantity(QuantityKind.Temperature, "temperature", "Temperature", "-60 F", "140 F") with { DefaultNote = "the reference temperature" },
        ]);

    private static KeySpec Area(string name, string description) =>
        Define.Quantity(QuantityKind.Pressure, name, description, "0 psf", HeaviestArea);
}
