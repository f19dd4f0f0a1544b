using System.Collections.Immutable;
using BridgeForm.Project.Definition;
using BridgeForm.Project.Reading;
using BridgeForm.Project.Reading.Faults;
using BridgeForm.Quantities;

namespace BridgeForm.Project;

/// <summary>Loads. Pascals, newtons, metres.</summary>
public sealed record LoadParameters
{
    /// <summary>Live load on the clear width, Pa.</summary>
    public required double Live { get; init; }

    /// <summary>Where <see cref="Live"/> comes from: the project file, or the default's source.</summary>
    public required string LiveSource { get; init; }

    /// <summary>
    /// Below this live load a bridge of that use fails, or gives a reason, Pa: 40 psf private, 60 psf public, own figures.
    /// </summary>
    public static double LeastLive(BridgeUse use) =>
        (use == BridgeUse.Public ? 60 : 40) * Units.PoundForce / (Units.MetresPerFoot * Units.MetresPerFoot);

    /// <summary>Why a live load below the floor is enough, as the user says; null: not given.</summary>
    public string? LowLiveReason { get; init; }

    /// <summary>Concentrated load, newtons.</summary>
    public required double PointForce { get; init; }

    /// <summary>The same, or a larger one of the user's own cases, newtons: what boards and bases must carry.</summary>
    public double LargestPoint => Cases.Select(c => c.PointForce).Append(PointForce).Max();

    /// <summary>Side of its square patch, metres.</summary>
    public required double PointPatch { get; init; }

    /// <summary>
    /// Distance of the load's resultant from the posts' inner face where it stands at the edge, metres; for ropes and bases.
    /// </summary>
    public required double PointEdge { get; init; }

    /// <summary>Share of the area load on the more heavily loaded rope, 0.5 to 1.</summary>
    public required double Eccentricity { get; init; }

    /// <summary>Upward wind on the deck, Pa; null when not given.</summary>
    public double? Uplift { get; init; }

    /// <summary>Snow, Pa; null when not given.</summary>
    public double? Snow { get; init; }

    /// <summary>Level wind across the bridge on its solid outline, Pa: allowable-stress level, gust and shape in it.</summary>
    public required double Wind { get; init; }

    /// <summary>Where <see cref="Wind"/> comes from: the project file's own words, or the default's source.</summary>
    public required string WindSource { get; init; }

    /// <summary>Where the default comes from.</summary>
    public const string DefaultWindSource = "default, not a site's wind: 20 psf (0.96 kPa), from memory";

    /// <summary>The user's own cases.</summary>
    public ImmutableArray<LoadCaseParameters> Cases { get; init; } = [];
}

/// <summary>Keys under <c>loads</c>, how they are read, what they must agree on.</summary>
internal static class LoadSection
{
    private const string HeaviestArea = "1000 psf";
    public const string HeaviestPoint = "100000 lbf";
    private const string Edge = "loads.point.edge";

    public static KeySpec Keys => Define.Map(
        "loads",
        "Loads",
        [
            (Area("live", "Live load on the clear width between the posts' inner faces at the deck") with
            {
                DefaultNote =
                    "private 60 psf (2.9 kPa; ASCE 7-16 Table 4.3-1, walkways), public 90 psf (4.3 kPa; AASHTO pedestrian, from memory)",
                Example = "60 psf",
                MetricExample = "2.9 kPa",
            }).Starting(),
            Define.Text("low_live_reason", "Why less live load than 40 psf (private) or 60 psf (public) is enough; without it less fails"),
            Define.Map(
                "point",
                "Concentrated load on a square patch",
                [
                    Define.Quantity(QuantityKind.Force, "force", "The force", "0 lbf", HeaviestPoint, "300 lbf", "1.35 kN"),
                    Define.Length("patch", "Side of the patch", "1/2 in", "10 ft", "30 in", "750 mm"),
                    Define.Length("edge", "At the edge: distance of the load's resultant from the posts' inner face, for ropes and bases; "
                        + "boards spread it over the patch", "0 in", "10 ft", "6 in", "150 mm"),
                ]).AllStarting(),
            Define.Quantity(QuantityKind.Share, "eccentricity", "Share of the area load on one rope", "55 %", "100 %", "60 %").Starting(),
            Area("uplift", "Upward wind on the deck"),
            Area("snow", "Snow on the deck"),
            Define.OptionalMap(
                "wind",
                "Level wind across the bridge, on the solid outline of both guards, the deck's edge, bases and ropes; left out: 20 psf "
                    + "(0.96 kPa), from memory, not a site's wind",
                [
                    Define.Quantity(
                        QuantityKind.Pressure, "pressure", "Allowable-stress level, gust and shape included: it is never multiplied by 0.6 "
                            + "again", "1 psf", "200 psf").Needed("20 psf", "0.96 kPa"),
                    Define.Text("source", "Where the number comes from").Needed("letter of the site's engineer"),
                ]),
            Define.List("cases", "Load cases of your own", LoadCaseSection.Keys, 0, 50),
        ]).Starting();

    public static LoadParameters Read(FileValues v, BridgeUse use)
    {
        var live = v.NumberOrNull("loads.live");
        var (standard, source) = Standard(v.Units, use);
        return new LoadParameters
        {
            Live = live ?? standard,
            LiveSource = live is null ? source : "the project file",
            LowLiveReason = v.TextOrNull("loads.low_live_reason"),
            PointForce = v.Number("loads.point.force"),
            PointPatch = v.Number("loads.point.patch"),
            PointEdge = v.Number("loads.point.edge"),
            Eccentricity = v.Number("loads.eccentricity"),
            Uplift = v.NumberOrNull("loads.uplift"),
            Snow = v.NumberOrNull("loads.snow"),
            Wind = v.NumberOrNull("loads.wind.pressure")
                ?? QuantityReader.Read(QuantityKind.Pressure, v.Units == UnitSystem.Metric ? "0.96 kPa" : "20 psf").Value,
            WindSource = v.TextOrNull("loads.wind.source") ?? LoadParameters.DefaultWindSource,
            Cases = [.. v.Items("loads.cases").Select(p => LoadCaseSection.Read(v, p))],
        };
    }

    /// <summary>A point load at the edge stands on its own side of the bridge.</summary>
    public static void Check(CheckedFile f)
    {
        if (!f.Values.Given(Edge)
            || !f.Good(Edge, "frames.post.foot", "frames.post.lean", "deck.layout", "deck.board.section", "deck.stringer"))
        {
            return;
        }

        var half = DeckWidth.BetweenPosts(f.Parameters) / 2;
        if (f.Parameters.Loads.PointEdge > half + Tolerances.RoundOff)
        {
            f.Stop(FaultCode.EdgeBeyondMiddle, Edge, $"edge: '{f.Written(Edge)}' from the posts' inner face lies beyond the middle of the "
                + $"deck; from there to the middle are {f.AtMost(half)}");
        }
    }

    public static KeySpec Area(string name, string description) =>
        Define.Quantity(QuantityKind.Pressure, name, description, "0 psf", HeaviestArea);

    private static (double Pascals, string Source) Standard(UnitSystem units, BridgeUse use)
    {
        var (imperial, metric, source) = use == BridgeUse.Public
            ? ("90 psf", "4.3 kPa", "public: AASHTO pedestrian 90 psf, from memory")
            : ("60 psf", "2.9 kPa", "private: ASCE 7-16 Table 4.3-1, walkways 60 psf");
        return (QuantityReader.Read(QuantityKind.Pressure, units == UnitSystem.Metric ? metric : imperial).Value, source);
    }
}
