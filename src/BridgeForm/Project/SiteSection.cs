using System.Collections.Immutable;
using BridgeForm.Project.Definition;
using BridgeForm.Project.Reading;
using BridgeForm.Project.Reading.Faults;
using BridgeForm.Quantities;

namespace BridgeForm.Project;

/// <summary>Supports and what lies under the bridge. Metres, degrees Celsius.</summary>
public sealed record SiteParameters
{
    /// <summary>Horizontal distance between the supports, metres.</summary>
    public required double Span { get; init; }

    /// <summary>Support B above support A, metres; negative when lower.</summary>
    public required double Rise { get; init; }

    /// <summary>Temperature at which the design shape holds, °C.</summary>
    public required double ReferenceTemperature { get; init; }

    /// <summary>Other temperatures to look at, °C, lowest first.</summary>
    public required ImmutableArray<double> Temperatures { get; init; }

    /// <summary>Ground line from A to B as (x, y) in metres in world axes; empty when not given.</summary>
    public ImmutableArray<GroundPoint> Ground { get; init; } = [];

    /// <summary>What was read on site; null when span and rise stand in the file themselves.</summary>
    public SurveyParameters? Survey { get; init; }

    /// <summary>Level of the highest water, y in metres; null when not given.</summary>
    public double? Water { get; init; }

    /// <summary>Room to keep over the highest water, metres; null when not given.</summary>
    public double? Freeboard { get; init; }

    /// <summary>
    /// From the way A to B to north, clockwise as seen from above, radians; null: not given.
    /// </summary>
    public double? North { get; init; }

    /// <summary>Support A.</summary>
    public SupportParameters A { get; init; } = new();

    /// <summary>Support B.</summary>
    public SupportParameters B { get; init; } = new();
}

/// <summary>A point of the ground line, metres, world axes.</summary>
public readonly record struct GroundPoint(double X, double Y);

/// <summary>What a support is, as far as it is drawn.</summary>
public enum SupportKind
{
    /// <summary>A post, or two, with a footing.</summary>
    Post,

    /// <summary>The trunk of a tree.</summary>
    Tree,

    /// <summary>A platform on posts.</summary>
    Platform,

    /// <summary>A block of masonry or concrete in the bank.</summary>
    Abutment,
}

/// <summary>What carries the edge of a landing, as far as it is drawn.</summary>
public enum LandingBearer
{
    /// <summary>A timber on the ground.</summary>
    Sill,

    /// <summary>A board on edge, fixed to what stands behind it.</summary>
    Ledger,
}

/// <summary>What stands behind one support.</summary>
public sealed record SupportParameters
{
    /// <summary>What it is; null: not given.</summary>
    public SupportKind? Kind { get; init; }

    /// <summary>Rope from support to anchor; null when the rope ends at the support.</summary>
    public BackstayParameters? Backstay { get; init; }

    /// <summary>
    /// Level of the landing's walking surface above the support's rope axis, metres; null: flush with the end frame's deck.
    /// </summary>
    public double? LandingLevel { get; init; }

    /// <summary>Gap between landing and deck, metres; null when not given.</summary>
    public double? LandingGap { get; init; }

    /// <summary>How far the landing reaches from its edge away from the bridge, metres; null when not given.</summary>
    public double? LandingDepth { get; init; }

    /// <summary>What carries its edge, made by others; null when not given.</summary>
    public LandingBearer? LandingBearer { get; init; }
}

/// <summary>Rope from a support to its anchor.</summary>
/// <param name="Length">Metres.</param>
/// <param name="Angle">Below the horizontal, radians.</param>
/// <param name="Sliding">The rope slides over the saddle; false: it is held there.</param>
public sealed record BackstayParameters(double Length, double Angle, bool Sliding);

/// <summary>Keys under <c>site</c>, how they are read, what they must agree on.</summary>
internal static class SiteSection
{
    private const string Coldest = "-60 F";
    private const string Hottest = "140 F";

    public static KeySpec Keys => Define.Map(
        "site",
        "Supports and ground",
        [
            Define.Length("span", "Horizontal distance, support to support", "3 ft", "20000 ft").Needed("30 ft", "9 m").Starting() with
            { Instead = "survey" },
            Define.Length("rise", "Support B above support A; may be negative", "-7000 ft", "7000 ft", "0 ft", "0 m").Starting(),
            Temperature("reference_temperature", "Temperature at which the design shape holds", "60 F", "15 C").Starting(),
            Define.List(
                "temperatures", "Other temperatures to look at, from the coldest to the hottest", Temperature("", "Temperature"), 0, 100)
                .Starting() with
            { Default = "[20 F, 100 F]", MetricDefault = "[-5 C, 40 C]" },
            Define.List("ground", "Ground line as points [x, y] from support A's rope axis, x growing", Point, 2, 1000),
            Define.Length("water", "Level of the highest water, from support A's rope axis; negative below it", "-7000 ft", "7000 ft"),
            Define.Length("freeboard", "Room to keep between the highest water and the bridge's lowest part", "0 ft", "300 ft"),
            Define.Quantity(
                QuantityKind.Angle, "north", "From the way A to B to north, clockwise as seen from above", "-360 deg", "360 deg"),
            SurveySection.Keys,
            SupportKeys("a", "Support A"),
            SupportKeys("b", "Support B"),
        ]).Starting();

    public static SiteParameters Read(FileValues v) => new()
    {
        Span = v.Number("site.span"),
        Rise = v.Number("site.rise"),
        ReferenceTemperature = v.Number("site.reference_temperature"),
        Temperatures = [.. v.Items("site.temperatures").Select(v.Number).Order()],
        Survey = SurveySection.Read(v),
        Ground = v.Given("site.ground") || SurveySection.Read(v) is not { } survey
            ? [.. v.Items("site.ground").Where(p => v.Good(p)).Select(p => new GroundPoint(v.Number(p + ".0"), v.Number(p + ".1")))]
            : survey.Ground,
        Water = v.NumberOrNull("site.water"),
        Freeboard = v.NumberOrNull("site.freeboard"),
        North = v.NumberOrNull("site.north"),
        A = Support(v, "site.a"),
        B = Support(v, "site.b"),
    };

    /// <summary>The bridge is looked at colder and hotter than it was designed; the ground line runs from A to B.</summary>
    public static void Check(CheckedFile f)
    {
        ColderAndHotter(f);
        Bearers(f);
        var last = double.NegativeInfinity;
        foreach (var point in f.Values.Items("site.ground").Where(p => f.Good(p)))
        {
            var x = f.Values.Number(point + ".0");
            if (x <= last)
            {
                f.Stop(FaultCode.GroundOutOfOrder, point + ".0", $"ground: '{f.Written(point + ".0")}' does not lie beyond the point "
                    + "before it; list points from A towards B");
            }

            last = x;
        }
    }

    // A sill or ledger is drawn under a landing, whose depth says how much of it there is.
    private static void Bearers(CheckedFile f)
    {
        foreach (var landing in (string[])["site.a.landing", "site.b.landing"])
        {
            var (bearer, depth) = (landing + ".bearer", landing + ".depth");
            if (f.Values.Given(bearer) && !f.Values.Given(depth) && f.Good(landing, bearer))
            {
                f.Stop(FaultCode.BearerWithoutLanding, bearer, $"bearer: '{f.Written(bearer)}' carries a landing that is not drawn without "
                    + $"its depth; write {depth}, or take the bearer out");
            }
        }
    }

    private static void ColderAndHotter(CheckedFile f)
    {
        const string Reference = "site.reference_temperature", Others = "site.temperatures";
        var paths = f.Values.Items(Others).ToList();
        if (!f.Good(Reference, Others) || paths.Exists(p => !f.Good(p)))
        {
            return;
        }

        var site = f.Parameters.Site;
        var colder = site.Temperatures.Any(t => t < site.ReferenceTemperature);
        var hotter = site.Temperatures.Any(t => t > site.ReferenceTemperature);
        if (!colder || !hotter)
        {
            var lacks = !colder && !hotter ? "colder and none hotter" : !colder ? "colder" : "hotter";
            f.Stop(
                FaultCode.TemperaturesOneSided,
                Others,
                $"temperatures: none is {lacks} than the reference temperature '{f.Written(Reference)}'; give at least one colder, where "
                    + "the ropes pull hardest, and one hotter, where they hang lowest",
                Reference);
        }
    }

    private static KeySpec Point => Define.List(
        "", "A point [x, y]", Define.Length("", "x or y", "-20000 ft", "20000 ft"), 2, 2);

    private static KeySpec Temperature(string name, string description, string? value = null, string? metric = null) =>
        Define.Quantity(QuantityKind.Temperature, name, description, Coldest, Hottest, value, metric);

    private static KeySpec SupportKeys(string name, string description) => Define.Map(
        name,
        description,
        [
            Define.Choice(
                "support", "What stands there, made by others; the drawings show it as such", null,
                "post", "tree", "platform", "abutment"),
            Define.OptionalMap(
                "backstay",
                "Rope from the support on to its anchor",
                [
                    Define.Length("length", "Length of the backstay", "1 in", "3000 ft").Needed("20 ft", "6 m"),
                    Define.Quantity(QuantityKind.Angle, "angle", "Angle of the backstay below the horizontal", "-80 deg", "89 deg")
                        .Needed("30 deg"),
                    Define.Choice("saddle", "Rope held on the saddle, or free to slide over it", "fixed", "fixed", "sliding"),
                ]),
            Define.OptionalMap(
                "landing",
                "The landing in front of the end frame",
                [
                    Define.Length(
                        "level", "Walking surface of the landing above the rope axis at the support", "-20 ft", "20 ft").Starting(),
                    Define.Length("gap", "Gap between landing and deck", "0 in", "3 ft").Starting(),
                    Define.Length(
                        "depth", "How far it reaches from its edge away from the bridge; model and drawings then show it", "1 ft",
                        "100 ft"),
                    Define.Choice("bearer", "What carries its edge, made by others; with depth only", null, "sill", "ledger"),
                ]).Starting(),
        ]).Starting();

    private static SupportParameters Support(FileValues v, string path) => new()
    {
        Kind = v.TextOrNull(path + ".support") switch
        {
            "post" => SupportKind.Post,
            "tree" => SupportKind.Tree,
            "platform" => SupportKind.Platform,
            "abutment" => SupportKind.Abutment,
            _ => null,
        },
        Backstay = v.NumberOrNull(path + ".backstay.length") is { } length
            ? new BackstayParameters(length, v.Number(path + ".backstay.angle"), v.Text(path + ".backstay.saddle") is "sliding")
            : null,
        LandingLevel = v.NumberOrNull(path + ".landing.level"),
        LandingGap = v.NumberOrNull(path + ".landing.gap"),
        LandingDepth = v.NumberOrNull(path + ".landing.depth"),
        LandingBearer = v.TextOrNull(path + ".landing.bearer") switch
        {
            "sill" => LandingBearer.Sill,
            "ledger" => LandingBearer.Ledger,
            _ => null,
        },
    };
}
