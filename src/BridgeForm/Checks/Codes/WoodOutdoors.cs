using BridgeForm.Pieces;
using BridgeForm.Roles;

namespace BridgeForm.Checks.Codes;

/// <summary>Whether the wood lasts in rain.</summary>
internal static class WoodOutdoors
{
    /// <summary>The check.</summary>
    public static DeclaredCheck Declared { get; } = new(
        "wood-outdoors",
        "Wood that lasts outdoors",
        "Counts the stocks in use that are neither treated nor of a naturally durable species (as treatment.csv tells them); none may be: "
            + "they rot, and every other check reckons with sound wood. Durable is heartwood alone; how much sapwood a board has, what "
            + "it was treated with and how it is kept dry is not in the project file.",
        "IRC R317.1: structural members exposed to the weather naturally durable or preservative-treated; durable heartwood: redwood, "
            + "cedars, black locust, black walnut, white oaks (a university's page on treated wood)",
        [CheckStatus.Pass, CheckStatus.Warn]);

    /// <summary>Names stocks with what is cut from them.</summary>
    public static CheckResult Check(CheckContext context)
    {
        var untreated = UntreatedStock.List(context.Pieces, context.Parameters.Stock);
        var rots = untreated.Where(s => !s.Durable).ToList();
        var durable = untreated.Where(s => s.Durable).ToList();
        var detail = rots.Count > 0
            ? $"{string.Join("; ", rots.Select(s => Named(context, s)))}: neither treated nor naturally durable; write treated: true and "
                + "buy it so, or take a durable species"
            : durable.Count > 0
                ? $"{string.Join("; ", durable.Select(s => Named(context, s)))}: naturally durable as heartwood, sapwood is not; all else "
                    + "treated"
                : "all stock in use is treated";
        return new CheckResult(
            Declared.Id, Declared.Title, rots.Count > 0 ? CheckStatus.Warn : CheckStatus.Pass, rots.Count, null, "count", null,
            Declared.Source, detail)
            .On(context.Cut(p => rots.Exists(s => string.Equals(s.Stock, p.Stock, StringComparison.Ordinal))));
    }

    private static string Named(CheckContext context, UntreatedStock stock)
    {
        var parts = RoleTable.All.Where(r => context.Pieces.Any(
            p => p.Role == r.Role && string.Equals(p.Stock, stock.Stock, StringComparison.Ordinal)));
        var species = context.Parameters.StockNamed(stock.Stock).Species;
        return $"stock {stock.Stock} ({species}) of {string.Join(", ", parts.Select(r => r.Many))}";
    }
}
