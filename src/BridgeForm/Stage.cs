using System.Collections.Immutable;
using BridgeForm.Project;

namespace BridgeForm;

/// <summary>Stages of the pipe, in the order in which one thread takes them. All but the last two are the answer.</summary>
public enum Stage
{
    /// <summary>Design state of the ropes.</summary>
    Shape,

    /// <summary>Where frames, deck and caps lie.</summary>
    Layout,

    /// <summary>Every member where it lies.</summary>
    Members,

    /// <summary>Distinct pieces, cut as solids.</summary>
    Pieces,

    /// <summary>Masses, load cases, hoisting, marks.</summary>
    Ropework,

    /// <summary>A wind across the bridge.</summary>
    Wind,

    /// <summary>Every pair of parts near each other.</summary>
    Contacts,

    /// <summary>The verdict.</summary>
    Checks,

    /// <summary>Boards to buy.</summary>
    Stock,

    /// <summary>What would pass where a check fails.</summary>
    Remedies,
}

/// <summary>What of a stage's result does not hang on its type.</summary>
/// <param name="stage">The stage.</param>
internal abstract class StageResult(Stage stage)
{
    /// <summary>The stage.</summary>
    public Stage Stage => stage;

    /// <summary>It was worked out since <see cref="Begin"/>.</summary>
    public bool IsAnew { get; protected set; }

    /// <summary>A new call begins.</summary>
    public void Begin() => IsAnew = false;
}

/// <summary>The result of a stage, kept with the parameters that it was worked out for.</summary>
/// <param name="stage">The stage.</param>
internal sealed class StageResult<T>(Stage stage) : StageResult(stage)
{
    private BridgeParameters? _for;
    private T? _value;

    /// <summary>The result of the last call.</summary>
    public T Value => _value!;

    /// <summary>Whether the result is that of these parameters.</summary>
    public bool Holds(BridgeParameters parameters) => _for is { } known && StageInputs.AreSame(Stage, known, parameters);

    /// <summary>The result for these parameters: the one there is, where the stage looks at nothing that changed.</summary>
    public T For(BridgeParameters parameters, Func<T> make)
    {
        if (!Holds(parameters))
        {
            _for = null; // Nothing is kept of a work that is broken off.
            (_value, IsAnew) = (make(), true);
        }

        _for = parameters;
        return _value!;
    }
}

/// <summary>
/// What of the parameters each stage, and all stages before it, look at: the rest may change without anything being worked out
/// anew. Who lets a stage look at more takes it out here; two hundred random changes in the tests find what was forgotten.
/// </summary>
internal static class StageInputs
{
    /// <summary>Whether a stage finds nothing changed.</summary>
    /// <param name="stage">The stage.</param>
    /// <param name="before">Parameters for which it was worked out.</param>
    /// <param name="now">Parameters, what did not change taken from <paramref name="before"/> (<see cref="KeptParameters"/>).</param>
    public static bool AreSame(Stage stage, BridgeParameters before, BridgeParameters now) =>
        Unseen(stage, Anywhere(now, before), before) == before;

    private static BridgeParameters Unseen(Stage stage, BridgeParameters now, BridgeParameters before) => stage switch
    {
        Stage.Shape or Stage.Layout or Stage.Members =>
            Lengthwise(Verdict(now, before), before) with { Shop = before.Shop, PriceList = before.PriceList },
        Stage.Pieces or Stage.Contacts => Lengthwise(Verdict(now, before), before) with { PriceList = before.PriceList },
        Stage.Wind => Lengthwise(Verdict(now, before), before) with
        {
            Shop = before.Shop,
            PriceList = before.PriceList,
            Loads = before.Loads with { Wind = now.Loads.Wind },
            Use = now.Use,
            Site = now.Site with { Ground = before.Site.Ground, Water = before.Site.Water, Freeboard = before.Site.Freeboard },
        },
        Stage.Stock => Verdict(now, before),
        Stage.Ropework => now with
        {
            Saddle = before.Saddle,
            Loads = now.Loads with { Wind = before.Loads.Wind, WindSource = before.Loads.WindSource },
            Shop = before.Shop,
            PriceList = before.PriceList,
            Limits = before.Limits,
            Species = before.Species,
            Values = before.Values,
            Treatment = before.Treatment,
            FastenerMetal = before.FastenerMetal,
            Deck = now.Deck with { Grip = before.Deck.Grip },
            Fasteners = before.Fasteners,
            HeldJoints = before.HeldJoints,
            Ropes = now.Ropes with { OnSale = before.Ropes.OnSale },
            Stock = WithSections(now, before),
        },
        Stage.Checks or Stage.Remedies =>
            now with { PriceList = SameOffer(now.PriceList, before.PriceList) ? before.PriceList : now.PriceList },
        _ => throw new ArgumentOutOfRangeException(nameof(stage), stage, "No such stage."),
    };

    /// <summary>No stage looks at these: only files print them.</summary>
    private static BridgeParameters Anywhere(BridgeParameters now, BridgeParameters before) =>
        now with
        {
            Name = before.Name,
            Prices = before.Prices,
            Erection = before.Erection,
            Chosen = before.Chosen,
            AsBuilt = before.AsBuilt,
            Quote = before.Quote,
            Sheets = before.Sheets,
            Site = now.Site with
            {
                Survey = before.Site.Survey,
                North = before.Site.North,
                A = now.Site.A with { Kind = before.Site.A.Kind },
                B = now.Site.B with { Kind = before.Site.B.Kind },
            },
        };

    /// <summary>Only checks and load cases look at these.</summary>
    private static BridgeParameters Verdict(BridgeParameters now, BridgeParameters before) => now with
    {
        Use = before.Use,
        Saddle = before.Saddle,
        Loads = before.Loads,
        Limits = before.Limits,
        Species = before.Species,
        Values = before.Values,
        Treatment = before.Treatment,
        FastenerMetal = before.FastenerMetal,
        Deck = now.Deck with { Grip = before.Deck.Grip },
        Fasteners = before.Fasteners,
        HeldJoints = before.HeldJoints,
        Ropes = WithEnds(now.Ropes, before.Ropes),
        Stock = WithSections(now, before),
        Site = now.Site with
        {
            ReferenceTemperature = before.Site.ReferenceTemperature,
            Temperatures = before.Site.Temperatures,
            Ground = before.Site.Ground,
            Water = before.Site.Water,
            Freeboard = before.Site.Freeboard,
        },
    };

    /// <summary>What hangs on the ropes' ends, and how new rope is marked, moves nothing.</summary>
    private static RopeParameters WithEnds(RopeParameters now, RopeParameters before) => now with
    {
        OnSale = before.OnSale,
        Turnbuckle = before.Turnbuckle,
        ShackleLength = before.ShackleLength,
        New = before.New,
    };

    /// <summary>Which sections are on sale only a check asks.</summary>
    private static ImmutableArray<StockParameters> WithSections(BridgeParameters now, BridgeParameters before) =>
        now.Stock.Length != before.Stock.Length
            ? now.Stock
            : Kept.Array([.. now.Stock.Select((s, i) => s with { Sections = before.Stock[i].Sections })], before.Stock);

    /// <summary>Boards for sale are cut when the members are known.</summary>
    private static BridgeParameters Lengthwise(BridgeParameters now, BridgeParameters before) => now.Stock.Length != before.Stock.Length
        ? now
        : now with
        {
            Stock = Kept.Array(
                [.. now.Stock.Select((s, i) => s with { Lengths = before.Stock[i].Lengths, Spare = before.Stock[i].Spare })], before.Stock),
        };

    /// <summary>The same boards have a price, whatever it is.</summary>
    private static bool SameOffer(PriceList? now, PriceList? before) =>
        (now, before) switch
        {
            (null, null) => true,
            ({ } n, { } b) => n.Prices.Select(p => p with { Price = 0 }).SequenceEqual(b.Prices.Select(p => p with { Price = 0 })),
            _ => false,
        };
}

/// <summary>One step of a build.</summary>
/// <param name="Stage">What was worked on.</param>
/// <param name="Model">
/// After <see cref="Stage.Pieces"/> the bridge without load cases and checks; after the last step the whole answer; else null.
/// </param>
/// <param name="Fault">Why it cannot be built; then no step follows.</param>
public sealed record BuildStep(Stage Stage, BridgeModel? Model, BridgeFault? Fault);

/// <summary>
/// Runs works that do not hang on each other and returns when all are done. Given by the caller: the model itself starts no
/// thread and waits for none. A work may throw; what is thrown then is for the runner to choose.
/// </summary>
/// <param name="works">In the order in which one thread takes them.</param>
public delegate void SideBySide(params Action[] works);

/// <summary>
/// Lists of equal values are made the same list, so that records that hold them are equal by their values: an immutable array
/// is equal to another only when both are one.
/// </summary>
internal static class KeptParameters
{
    /// <summary>The parameters, with each list that did not change taken from those before.</summary>
    public static BridgeParameters Keep(BridgeParameters now, BridgeParameters before) => now with
    {
        Site = now.Site with
        {
            Temperatures = Kept.Array(now.Site.Temperatures, before.Site.Temperatures),
            Ground = Kept.Array(now.Site.Ground, before.Site.Ground),
            Survey = (now.Site.Survey, before.Site.Survey) is ({ } fresh, { } known) && fresh.Out.SequenceEqual(known.Out)
                ? fresh with { Out = known.Out }
                : now.Site.Survey,
        },
        Frames = now.Frames with
        {
            Holes = Kept.Array(now.Frames.Holes, before.Frames.Holes),
            Joints = Kept.Array(now.Frames.Joints, before.Frames.Joints),
        },
        Guard = now.Guard with { RailHeights = Kept.Array(now.Guard.RailHeights, before.Guard.RailHeights) },
        Loads = now.Loads with { Cases = Kept.Array(now.Loads.Cases, before.Loads.Cases) },
        Stock = Kept.Array(
            [
                .. now.Stock
                    .Select((s, i) => i < before.Stock.Length ? Same(s, before.Stock[i]) : s),
            ],
            before.Stock),
        Ropes = now.Ropes with { OnSale = Kept.Array(now.Ropes.OnSale, before.Ropes.OnSale) },
        PriceList = (now.PriceList, before.PriceList) is ({ } list, { } old) && list.Prices.SequenceEqual(old.Prices) ? old : now.PriceList,
        Fasteners = now.Fasteners.SequenceEqual(before.Fasteners) ? before.Fasteners : now.Fasteners,
        HeldJoints = Kept.Array(now.HeldJoints, before.HeldJoints),
        Species = Kept.Array(now.Species, before.Species),
        Values = Kept.Array(now.Values, before.Values),
        Shop = now.Shop with
        {
            Router = now.Shop.Router with { Bits = Kept.Array(now.Shop.Router.Bits, before.Shop.Router.Bits) },
        },
    };

    private static StockParameters Same(StockParameters now, StockParameters before) => now with
    {
        Lengths = Kept.Array(now.Lengths, before.Lengths),
        Sections = Kept.Array(now.Sections, before.Sections),
    };
}

/// <summary>One list for equal values.</summary>
internal static class Kept
{
    /// <summary>The list before, when the new one has the same values.</summary>
    public static ImmutableArray<T> Array<T>(ImmutableArray<T> now, ImmutableArray<T> before) =>
        now.SequenceEqual(before) ? before : now;
}
