using System.Collections.Immutable;
using BridgeForm.Materials;
using BridgeForm.Project.Definition;
using BridgeForm.Project.Reading;
using BridgeForm.Quantities;
using BridgeForm.Roles;

namespace BridgeForm.Project;

/// <summary>Who walks on the bridge; sets guard height, opening and live load.</summary>
public enum BridgeUse
{
    /// <summary>One household and its guests.</summary>
    Private,

    /// <summary>Anybody.</summary>
    Public,
}

/// <summary>
/// A project file, read and checked: SI units throughout (metres, newtons, pascals, kilograms, radians, degrees Celsius
/// for temperatures), every default filled in.
/// </summary>
public sealed record BridgeParameters
{
    /// <summary>Name for titles.</summary>
    public required string Name { get; init; }

    /// <summary>Units of printed matter.</summary>
    public required UnitSystem Units { get; init; }

    /// <summary>Private or public.</summary>
    public required BridgeUse Use { get; init; }

    /// <summary>Supports and ground.</summary>
    public required SiteParameters Site { get; init; }

    /// <summary>The two ropes.</summary>
    public required RopeParameters Ropes { get; init; }

    /// <summary>Saddles.</summary>
    public SaddleParameters Saddle { get; init; } = new(Radius: null);

    /// <summary>Frames.</summary>
    public required FrameParameters Frames { get; init; }

    /// <summary>Deck.</summary>
    public required DeckParameters Deck { get; init; }

    /// <summary>Rails and cap.</summary>
    public required GuardParameters Guard { get; init; }

    /// <summary>Loads.</summary>
    public required LoadParameters Loads { get; init; }

    /// <summary>Stricter limits of the builder's own.</summary>
    public LimitParameters Limits { get; init; } = new();

    /// <summary>Lumber by name, in the file's order.</summary>
    public required ImmutableArray<StockParameters> Stock { get; init; }

    /// <summary>Saw, router, tolerance, paper.</summary>
    public required ShopParameters Shop { get; init; }

    /// <summary>Path of the user's price list as written; null when there is none.</summary>
    public string? Prices { get; init; }

    /// <summary>The price list at <see cref="Prices"/>, read at the edge and put in; null without one.</summary>
    public PriceList? PriceList { get; init; }

    /// <summary>Values that rules chose for keys that the file leaves out, in the order of its sections.</summary>
    public ImmutableArray<ChosenDefault> Chosen { get; init; } = [];

    /// <summary>Field treatment of cuts; null when the file says nothing.</summary>
    public TreatmentParameters? Treatment { get; init; }

    /// <summary>Of what fasteners and keepers in treated wood are; null when the file does not say.</summary>
    public FastenerMetal? FastenerMetal { get; init; }

    /// <summary>Fasteners of one joint, by joint, as the user counts them.</summary>
    public ImmutableSortedDictionary<string, int> Fasteners { get; init; } = ImmutableSortedDictionary<string, int>.Empty;

    /// <summary>Joints of deck and guard that the file describes, in the order of their keys.</summary>
    public ImmutableArray<HeldJoint> HeldJoints { get; init; } = [];

    /// <summary>Order in which frames are hung.</summary>
    public ErectionOrder Erection { get; init; } = ErectionOrder.BothEnds;

    /// <summary>What a quote is made with.</summary>
    public QuoteParameters Quote { get; init; } = new();

    /// <summary>What the title block of the drawings says.</summary>
    public SheetParameters Sheets { get; init; } = new();

    /// <summary>What was measured of the ropes as they hang; null when nothing was. Only <c>correct</c> reckons with it.</summary>
    public AsBuiltParameters? AsBuilt { get; init; }

    /// <summary>The user's own species, in the file's order; they go before the built-in ones.</summary>
    public ImmutableArray<Species> Species { get; init; } = [];

    /// <summary>The user's own design values; they go before the built-in ones.</summary>
    public ImmutableArray<DesignValue> Values { get; init; } = [];

    /// <summary>
    /// The stock of that name. Throws <see cref="KeyNotFoundException"/> when there is none; the reader has checked all names.
    /// </summary>
    public StockParameters StockNamed(string name) =>
        Stock.FirstOrDefault(s => string.Equals(s.Name, name, StringComparison.Ordinal))
        ?? throw new KeyNotFoundException(name);
}

/// <summary>Order in which frames are hung.</summary>
public enum ErectionOrder
{
    /// <summary>From both supports towards the middle.</summary>
    BothEnds,

    /// <summary>From support A on.</summary>
    OneEnd,
}

/// <summary>The whole project file: one definition that the reader, schema, starter file and reference page share.</summary>
public static class ProjectKeys
{
    /// <summary>Largest project file, bytes (and characters of its text).</summary>
    public const int LargestFile = 1_000_000;

    /// <summary>Most frames a bridge may have.</summary>
    public const int MostFrames = 50_000;

    /// <summary>The mapping at the top of the file.</summary>
    public static KeySpec Root { get; } = Define.Map(
        "",
        "A footbridge on two ropes",
        [
            Define.Text("name", "Name for titles").Needed("My footbridge").Starting(),
            Define.Choice("units", "Units that people read in printed matter", "imperial", "imperial", "metric").Starting(),
            Define.Choice("use", "Sets guard height (36 in or 42 in: 914 or 1067 mm), the opening under a 4 in (102 mm) sphere, and "
                + "the live load", "private", "private", "public").Starting(),
            SiteSection.Keys,
            RopeSection.Keys,
            SaddleSection.Keys,
            FrameSection.Keys,
            DeckSection.Keys,
            GuardSection.Keys,
            LoadSection.Keys,
            LimitSection.Keys,
            StockSection.Keys,
            ShopSection.Keys,
            Define.Text("prices", "File with your own prices, beside this one"),
            HoleSection.Keys,
            JointSection.Keys,
            SpeciesSection.Keys,
            ValuesSection.Keys,
            TreatmentSection.Keys,
            Fasteners,
            Erection,
            QuoteSection.Keys,
            SheetsSection.Keys,
            AsBuiltSection.Keys,
        ]);

    /// <summary>The definition of the value under a path such as <c>frames.post.length</c> or <c>guard.rails.heights.0</c>.</summary>
    internal static KeySpec At(string path) => path.Split('.').Aggregate(
        Root, (spec, name) => spec.Item ?? spec.Keys.First(k => string.Equals(k.Name, name, StringComparison.Ordinal)));

    private static KeySpec Fasteners => Define.Named(
        "fasteners", "Fasteners by joint, counted for one joint", Define.Whole("", "Fasteners in one joint", "0", "1000")) with
    { Choices = RoleTable.JointNames };

    private static KeySpec Erection => Define.Choice(
        "erection", "Order in which frames are hung", "both-ends", "one-end", "both-ends");
}

/// <summary>Parameters of the whole bridge from the file's values, and what they must agree on among themselves.</summary>
internal static class WholeFile
{
    /// <summary>Puts the sections' parameters together.</summary>
    public static BridgeParameters Read(FileValues v, RopeCatalogue ropes, FaultList faults)
    {
        var use = v.Text("use") is "public" ? BridgeUse.Public : BridgeUse.Private;
        var rope = RopeSection.Read(v, ropes, faults);
        var species = SpeciesSection.Read(v);
        return new BridgeParameters
        {
            Name = v.Text("name"),
            Units = v.Units,
            Use = use,
            Site = SiteSection.Read(v),
            Ropes = rope,
            Saddle = SaddleSection.Read(v),
            Frames = FrameSection.Read(v, rope.Rope),
            Deck = DeckSection.Read(v),
            Guard = GuardSection.Read(v),
            Loads = LoadSection.Read(v, use),
            Limits = LimitSection.Read(v),
            Stock = StockSection.Read(v, species, faults),
            Shop = ShopSection.Read(v),
            Prices = v.TextOrNull("prices"),
            Treatment = TreatmentSection.Read(v),
            FastenerMetal = TreatmentSection.ReadMetal(v),
            Fasteners = v.Names("fasteners").ToImmutableSortedDictionary(n => n, n => v.Whole("fasteners." + n), StringComparer.Ordinal),
            HeldJoints = HeldSection.Read(v),
            Erection = v.Text("erection") is "one-end" ? ErectionOrder.OneEnd : ErectionOrder.BothEnds,
            Quote = QuoteSection.Read(v),
            Sheets = SheetsSection.Read(v),
            AsBuilt = AsBuiltSection.Read(v),
            Species = species,
            Values = ValuesSection.Read(v),
        };
    }

    /// <summary>Faults of how the file's values go together: what could not be built or computed at all.</summary>
    public static void Check(CheckedFile f)
    {
        SpanRules.Check(f);
        ChannelSection.Check(f);
        UprightSection.Check(f);
        DeckSection.Check(f);
        GuardSection.Check(f);
        StockSection.Check(f);
        DensitySection.Check(f);
        ValuesSection.Check(f);
        HoleSection.Check(f);
        JointRules.Check(f);
        HeldSection.Check(f);
        SurveySection.Check(f);
        SiteSection.Check(f);
        RopeSection.Check(f);
        LoadCaseSection.Check(f);
        LoadSection.Check(f);
        LimitSection.Check(f);
        QuoteSection.Check(f);
        SheetsSection.Check(f);
        PrintSection.Check(f);
        AsBuiltSection.Check(f);
    }
}
