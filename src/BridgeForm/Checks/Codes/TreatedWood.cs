using BridgeForm.Frames;
using BridgeForm.Project;
using BridgeForm.Roles;

namespace BridgeForm.Checks.Codes;

/// <summary>Copper in treated wood and the zinc of ropes and fasteners.</summary>
internal static class TreatedWood
{
    private const string ZincSource = "common practice, no source: copper-based preservatives corrode zinc";
    private const string FastenerSource =
        "IRC R317.3: fasteners in preservative-treated wood of hot-dip zinc-coated steel (ASTM A153) or stainless steel";

    /// <summary>Rope in its channel.</summary>
    public static DeclaredCheck DeclaredZinc { get; } = new(
        "copper-on-zinc",
        "Copper-treated wood on a galvanized rope",
        "A galvanized rope in a treated base needs a liner that is not metal (channel.liner) and eased mouths.",
        ZincSource,
        [CheckStatus.Pass, CheckStatus.Warn]);

    /// <summary>Fasteners.</summary>
    public static DeclaredCheck DeclaredFasteners { get; } = new(
        "fasteners-in-treated-wood",
        "Fasteners in treated wood",
        "Whether any stock in use is treated: its fasteners must be hot-dip galvanized or stainless. Holds where the file says which "
            + "(treatment.fasteners); else it is a reminder.",
        FastenerSource,
        [CheckStatus.Pass, CheckStatus.Warn]);

    /// <summary>Both.</summary>
    public static IEnumerable<CheckResult> Check(CheckContext context)
    {
        var parameters = context.Parameters;
        var channel = parameters.Frames.Channel;
        var treated = parameters.StockNamed(parameters.Frames.Base.Stock).Treated;
        var bare = parameters.Ropes.Rope.Galvanized && treated && channel.Liner <= 0;
        yield return Say(
            DeclaredZinc, bare, ZincSource,
            (parameters.Ropes.Rope.Galvanized, treated, channel.Liner > 0) switch
            {
                (true, true, false) =>
                    "galvanized rope in treated bases without a liner: set channel.liner (no metal) and ease the channel's mouths",
                (true, true, true) => $"galvanized rope in treated bases, lined with {context.Words().Length(channel.Liner)}",
                (false, _, _) => "the rope is not galvanized",
                _ => "the bases are not treated",
            }).On([.. context.Cut(p => p.Role == Role.Base), .. RopeIds.Both]);
        var names = parameters.Stock.Where(s => s.Treated && Uses(context.Layout, s.Name)).Select(s => s.Name).ToList();
        yield return Say(
            DeclaredFasteners, names.Count > 0 && parameters.FastenerMetal is null, FastenerSource,
            names.Count > 0 ? Metal(parameters.FastenerMetal, string.Join(", ", names)) : "no treated wood in use")
            .On(context.Cut(p => names.Contains(p.Stock, StringComparer.Ordinal)));
    }

    private const string AllOfThem = "keepers, screws, bolts, nuts and washers alike";

    private static string Metal(FastenerMetal? metal, string stock) => metal switch
    {
        FastenerMetal.HotDipGalvanized => $"hot-dip galvanized in {stock}, as the file says: {AllOfThem}",
        FastenerMetal.Stainless => $"stainless in {stock}, as the file says: {AllOfThem}",
        _ => $"hot-dip galvanized or stainless in {stock}; treatment.fasteners says which",
    };

    // Of the parts that a project chooses wood for, a bridge may stand without packers and shims alone.
    private static bool Uses(BridgeLayout layout, string stock) => RoleTable.All
        .Where(f => f.Role != Role.Packer || layout.Steps.Packers.Contains(true))
        .Where(f => f.Role != Role.Shim || layout.Steps.Shims.Contains(true))
        .Any(f => string.Equals(layout.Parameters.FindStock(f.Role), stock, StringComparison.Ordinal));

    private static CheckResult Say(DeclaredCheck check, bool warn, string source, string detail) => new(
        check.Id, check.Title, warn ? CheckStatus.Warn : CheckStatus.Pass, warn ? 1 : 0, null, "count", null, source, detail);
}
