using BridgeForm.Project;

namespace BridgeForm;

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
        Stage.Shape or Stage.Layout or Stage.Members => Lengthwise(Verdict(now, before), before) with { Shop = before.Shop, PriceList = before.PriceList },
        Stage.Pieces or Stage.Contacts => Lengthwise(Verdict(now, before), before) with { PriceList = before.PriceList },
        Stage.Stock => Verdict(now, before),
        Stage.Ropework => now with
        {
            Shop = before.Shop,
            PriceList = before.PriceList,
            Limits = before.Limits,
            Species = before.Species,
            Values = before.Values,
            Treatment = before.Treatment,
            Fasteners = before.Fasteners,
        },
        Stage.Checks or Stage.Remedies => now with { PriceList = SameOffer(now.PriceList, before.PriceList) ? before.PriceList : now.PriceList },
        _ => throw new ArgumentOutOfRangeException(nameof(stage), stage, "No such stage."),
    };

    /// <summary>No stage looks at these: only files print them.</summary>
    private static BridgeParameters Anywhere(BridgeParameters now, BridgeParameters before) =>
        now with { Name = before.Name, Prices = before.Prices, Erection = before.Erection };

    /// <summary>Only checks and load cases look at these.</summary>
    private static BridgeParameters Verdict(BridgeParameters now, BridgeParameters before) => now with
    {
        Use = before.Use,
        Loads = before.Loads,
        Limits = before.Limits,
        Species = before.Species,
        Values = before.Values,
        Treatment = before.Treatment,
        Fasteners = before.Fasteners,
        Site = now.Site with
        {
            ReferenceTemperature = before.Site.ReferenceTemperature,
            Temperatures = before.Site.Temperatures,
            Ground = before.Site.Ground,
            Water = before.Site.Water,
            Freeboard = before.Site.Freeboard,
        },
    };

    /// <summary>Boards for sale are cut when the members are known.</summary>
    private static BridgeParameters Lengthwise(BridgeParameters now, BridgeParameters before) => now.Stock.Length != before.Stock.Length
        ? now
        : now with { Stock = Kept.Array([.. now.Stock.Select((s, i) => s with { Lengths = before.Stock[i].Lengths })], before.Stock) };

    /// <summary>The same boards have a price, whatever it is.</summary>
    private static bool SameOffer(PriceList? now, PriceList? before) =>
        (now, before) switch
        {
            (null, null) => true,
            ({ } n, { } b) => n.Prices.Select(p => p with { Price = 0 }).SequenceEqual(b.Prices.Select(p => p with { Price = 0 })),
            _ => false,
        };
}
