using System.Collections.Immutable;
using BridgeForm.Materials;
using BridgeForm.Project.Definition;
using BridgeForm.Project.Reading;
using BridgeForm.Project.Reading.Faults;
using BridgeForm.Quantities;

namespace BridgeForm.Project;

/// <summary>The two ropes and how they are made fast.</summary>
public sealed record RopeParameters
{
    /// <summary>The rope itself.</summary>
    public required RopeProperties Rope { get; init; }

    /// <summary>Distance between the two ropes' axes, metres.</summary>
    public required double Spacing { get; init; }

    /// <summary>Sag at mid-span in the design state, metres below the line A–B.</summary>
    public required double Sag { get; init; }

    /// <summary>Kind of termination, as written: <c>clips</c>, <c>socket</c>, …</summary>
    public required string TerminationKind { get; init; }

    /// <summary>Share of the rope's strength the termination keeps, 0 to 1; null: not given.</summary>
    public required double? TerminationEfficiency { get; init; }

    /// <summary>Where the efficiency comes from, as the user says; null: not given.</summary>
    public string? TerminationSource { get; init; }

    /// <summary>Breaking strength over largest allowed tension.</summary>
    public required double SafetyFactor { get; init; }

    /// <summary>Tension at which the rope is laid out and marked, newtons; 0: unstressed.</summary>
    public double MarkingTension { get; init; }

    /// <summary>Constructional stretch as a share of length, low and high; null: by the rope's kind.</summary>
    public ShareRange? Stretch { get; init; }

    /// <summary>The turnbuckles at its ends.</summary>
    public TurnbuckleParameters Turnbuckle { get; init; } = new(Pitch: null, TakeUp: null, Closed: null);

    /// <summary>Inside length of the shackles at its ends, metres; null: by the table.</summary>
    public double? ShackleLength { get; init; }

    /// <summary>What new rope is marked and set for.</summary>
    public NewRopeWay New { get; init; }

    /// <summary>Keys of the ropes that can be had; empty: all of the table.</summary>
    public ImmutableArray<string> OnSale { get; init; } = [];
}

/// <summary>What is done about the stretch of new rope: which marks the crew works by.</summary>
public enum NewRopeWay
{
    /// <summary>Plain marks; the turnbuckles take the stretch out as it comes.</summary>
    DrawnIn,

    /// <summary>Plain marks, on rope that was stretched before it was marked.</summary>
    StretchedBefore,

    /// <summary>Marks shortened by the mean of the stretch to come.</summary>
    AsIs,
}

/// <summary>A range of shares (0.005 is half a per cent).</summary>
public readonly record struct ShareRange(double Low, double High);

/// <summary>Keys under <c>ropes</c>, how they are read, what they must agree on.</summary>
internal static class RopeSection
{
    private const double ClipsEfficiency = 0.8;
    private const string ClipsSource = "80 % for clips (TM 5-3810-305-10 Table 4)";

    public static KeySpec Keys => Define.Map(
        "ropes",
        "The two ropes",
        [
            RopeTypeSection.Keys.Starting(),
            Define.Length("spacing", "Distance between the axes of the two ropes", "4 in", "40 ft").ByRule(
                "the span",
                "49 in (1245 mm; public 3 in, 75 mm more), and 3/10 in for each foot of the span (25 mm for each meter); where that is "
                    + "less, so much that the ropes lie under the middle of the braces' feet, and beside the plates that joints puts there "
                    + "(1-1/4 in, 32 mm, and four diameters of their holes out from the outermost bolt in the base); at most 96 in "
                    + "(2440 mm), and where frames.base.length is given 14 in (350 mm) less than it; to a whole inch (10 mm)",
                "58 in", "1470 mm").Starting(),
            SagKey.Starting(),
            TerminationKeys.Starting(),
            RopeEndSection.Keys,
            Define.Choice(
                "new",
                "What is done about the stretch of new rope: drawn-in, plain marks and the turnbuckles take it out; stretched-before, "
                    + "plain marks on rope that was stretched before; as-is, marks set short for the mean of it",
                "drawn-in", "drawn-in", "stretched-before", "as-is"),
            Define.Number("safety_factor", "Breaking strength over the largest tension allowed", "1", "20", "5").Starting(),
            Define.Quantity(QuantityKind.Force, "marking_tension", "Tension under which the ropes are laid "
                + "out and marked", "0 lbf", "200000 lbf", "0 lbf", "0 kN"),
            Define.List(
                "stretch",
                "Constructional stretch as a range [low, high]",
                Define.Quantity(QuantityKind.Share, "", "Share of length", "0 %", "3 %"),
                2,
                2) with
            { DefaultNote = "by the kind of rope" },
            Define.List("on_sale", "Ropes that can be had, by their keys", Define.Text("", "Key of the built-in table"), 1, 200) with
            {
                DefaultNote = "all of the built-in table",
                Example = "[rope-6x19-iwrc-eips-galvanized-3/4]",
                MetricExample = "[rope-6x19-iwrc-1770-16-mm]",
            },
        ]).Starting();

    public static RopeParameters Read(FileValues v, RopeCatalogue ropes, FaultList faults)
    {
        var kind = v.Text("ropes.termination.kind");
        var efficiency = v.NumberOrNull("ropes.termination.efficiency");
        var assumed = efficiency is null && kind is "clips";
        return new RopeParameters
        {
            Rope = RopeTypeSection.Read(v, ropes, faults),
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
            Turnbuckle = RopeEndSection.ReadTurnbuckle(v),
            ShackleLength = v.NumberOrNull("ropes.ends.shackle.length"),
            New = v.Text("ropes.new") switch
            {
                "stretched-before" => NewRopeWay.StretchedBefore,
                "as-is" => NewRopeWay.AsIs,
                _ => NewRopeWay.DrawnIn,
            },
            OnSale = OnSale(v, ropes, faults),
        };
    }

    private static ImmutableArray<string> OnSale(FileValues v, RopeCatalogue ropes, FaultList faults)
    {
        var items = v.Items("ropes.on_sale").Where(item => v.Good(item)).ToList();
        foreach (var item in items.Where(item => ropes.Find(v.Text(item)) is null))
        {
            faults.Add(FaultCode.UnknownRope, v.Place(item), RopeHint.Message(v.Text(item), ropes));
        }

        return [.. items.Select(v.Text).Where(key => ropes.Find(key) is not null)];
    }

    /// <summary>Sag in metres, whichever way it is written.</summary>
    public static double Sag(FileValues v) => v.Find("ropes.sag") is { Kind: QuantityKind.Share } share
        ? share.Number * v.Number("site.span")
        : v.Number("ropes.sag");

    /// <summary>The range of stretch runs from low to high; clips hold no more than they do; a rope's numbers fit each other.</summary>
    public static void Check(CheckedFile f)
    {
        const string Efficiency = "ropes.termination.efficiency";
        if (f.Good("ropes.termination.kind", Efficiency) && f.Parameters.Ropes.TerminationKind is "clips"
            && f.Values.NumberOrNull(Efficiency) > ClipsEfficiency + Tolerances.RoundOff)
        {
            f.Stop(FaultCode.ClipsHoldLess, Efficiency, $"efficiency: '{f.Written(Efficiency)}' is more than clips hold; at most 80 % (TM "
                + "5-3810-305-10 Table 4)");
        }

        if (f.Good("ropes.new", "ropes.type", "ropes.stretch") && f.Parameters.Ropes is { New: NewRopeWay.AsIs, Stretch: null } ropes
            && ropes.Rope.Kind != RopeKind.WireRope)
        {
            f.Stop(FaultCode.StretchNotKnown, "ropes.new", "new: as-is marks the rope short for its stretch, and how far this kind "
                + "stretches is not known; write ropes.stretch as its maker says, or new: drawn-in");
        }

        RopeTypeSection.Check(f);
        RopeTypeSection.CheckArea(f);
        RopeTypeSection.CheckMass(f);
        RopeTypeSection.CheckLightness(f);
        RopeTypeSection.CheckModulus(f);
        if (f.Values.NumberOrNull("ropes.stretch.0") > f.Values.NumberOrNull("ropes.stretch.1"))
        {
            f.Stop(FaultCode.StretchReversed, "ropes.stretch.1", "stretch: the range runs from low to high; swap its two shares");
        }
    }

    private static KeySpec SagKey =>
        (new KeySpec("sag", KeyShape.Value, "Sag at mid-span of the finished empty bridge: a share of the span, or a length")
        {
            Type = ValueForm.Quantity,
            Kinds = [QuantityKind.Share, QuantityKind.Length],
            RangeInWords = "0.05 % to 30 % of the span",
        }).ByRule(
            "ropes.spacing",
            "3.06 in (77.7 mm) over ropes.spacing, to 0.1 %, so that ropes further apart hang flatter; 3 % to 8 % of the span", "6 %");

    private static KeySpec TerminationKeys => Define.Map(
        "termination",
        "How the ropes' ends are made fast",
        [
            Define.Choice(
                "kind",
                "Kind of end",
                "clips",
                "clips",
                "socket",
                "poured-socket",
                "swaged-socket",
                "wedge-socket",
                "sleeve",
                "splice",
                "other").Starting(),
            (Define.Quantity(QuantityKind.Share, "efficiency", "Share of the rope's strength that the end keeps", "10 %", "100 %") with
            {
                DefaultNote = "80 % for clips; otherwise none",
                Example = "80 %",
            }).Starting(),
            Define.Text("source", "Where the efficiency comes from"),
        ]);
}
