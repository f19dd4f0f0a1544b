using BridgeForm.Materials;
using BridgeForm.Pieces;
using BridgeForm.Roles;

namespace BridgeForm.Checks.Codes;

/// <summary>Whether wood and rope can be bought in the sizes that the project asks for.</summary>
internal static class OnSale
{
    private const string Yard = "stock.NAME.sections of the project file, else sections that yards commonly keep";

    /// <summary>Lumber.</summary>
    public static DeclaredCheck Declared { get; } = new(
        "section-on-sale",
        "Sections on sale",
        "Counts sections of a stock in use that are not in its list of sections on sale, by dressed sizes; none should be: they are sawn "
            + "to order. Without a list of your own the sections that yards commonly keep count ('bridgeform list lumber').",
        $"{Yard}: {CommonSections.Source}",
        [CheckStatus.Pass, CheckStatus.Warn]);

    /// <summary>Ropes.</summary>
    public static DeclaredCheck DeclaredRope { get; } = new(
        "rope-on-sale",
        "Rope on sale",
        "Whether the rope is among ropes.on_sale; without that list every rope of the table is, and a rope of your own always.",
        "ropes.on_sale of the project file",
        [CheckStatus.Pass, CheckStatus.Warn]);

    /// <summary>Names each section with its stock, what is cut from it, and the cure.</summary>
    public static CheckResult Sections(CheckContext context)
    {
        bool IsMissing(Piece p) =>
            SectionReader.Read(p.Section).Section is { } section && !context.Parameters.StockNamed(p.Stock).Sells(section);
        var missing = context.Pieces.Where(IsMissing)
            .GroupBy(p => (p.Stock, p.Section))
            .Select(g => $"{g.Key.Section} of stock {g.Key.Stock} ({Parts(g.Select(p => p.Role))}): list it under "
                + $"stock.{g.Key.Stock}.sections if your yard sells it, or take one of {Listed(context, g.Key.Stock)}")
            .ToList();
        return new CheckResult(
            Declared.Id, Declared.Title, missing.Count > 0 ? CheckStatus.Warn : CheckStatus.Pass, missing.Count, null, "count", null,
            Yard, missing.Count > 0 ? string.Join("; ", missing) : "every section is in its stock's list")
            .On(context.Cut(IsMissing));
    }

    /// <summary>The rope against the list.</summary>
    public static CheckResult Rope(CheckContext context)
    {
        var ropes = context.Parameters.Ropes;
        var own = ropes.Rope.Kind == RopeKind.Custom;
        var sold = own || ropes.OnSale.IsEmpty || ropes.OnSale.Contains(ropes.Rope.Name, StringComparer.Ordinal);
        var detail = own ? "a rope of your own"
            : sold ? $"{ropes.Rope.Name} is on sale"
            : $"{ropes.Rope.Name} is not under ropes.on_sale: list it there if it can be had, or take one of "
                + string.Join(", ", ropes.OnSale);
        return new CheckResult(
            DeclaredRope.Id, DeclaredRope.Title, sold ? CheckStatus.Pass : CheckStatus.Warn, sold ? 0 : 1, null, "count", null,
            DeclaredRope.Source, detail).On(RopeIds.Both);
    }

    private static string Parts(IEnumerable<Role> roles) =>
        string.Join(", ", roles.Distinct().Order().Select(r => RoleTable.Of(r).Many));

    private static string Listed(CheckContext context, string stock) =>
        string.Join(", ", context.Parameters.StockNamed(stock).Sections.Select(s => s.Name));
}
