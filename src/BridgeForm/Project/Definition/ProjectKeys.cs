namespace BridgeForm.Project.Definition;

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
            Define.Choice("use", "Sets guard height (36 in or 42 in), the opening under a 4 in sphere, and the live load", "private", "private", "public").Starting(),
            SiteKeys.Site,
            RopeKeys.Ropes,
            FrameKeys.Frames,
            DeckAndGuardKeys.Deck,
            DeckAndGuardKeys.Guard,
            LoadKeys.Loads,
            StockKeys.Stock,
            ShopKeys.Shop,
            Define.Text("prices", "File with your own prices, beside this one"),
            ShopKeys.Holes,
            StockKeys.Species,
            StockKeys.Values,
            ShopKeys.Treatment,
            ShopKeys.Fasteners,
            ShopKeys.Erection,
        ]);

    /// <summary>The definition of the value under a path such as <c>frames.post.length</c> or <c>guard.rails.heights.0</c>.</summary>
    internal static KeySpec At(string path) => path.Split('.').Aggregate(
        Root, (spec, name) => spec.Item ?? spec.Keys.First(k => string.Equals(k.Name, name, StringComparison.Ordinal)));
}
