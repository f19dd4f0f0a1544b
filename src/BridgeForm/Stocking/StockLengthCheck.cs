using BridgeForm.Checks;
using BridgeForm.Project;
using BridgeForm.Quantities;

namespace BridgeForm.Stocking;

/// <summary>Whether every piece can be cut from a board on sale.</summary>
internal static class StockLengthCheck
{
    private const string Source = "BridgeForm's own rule: a piece is cut from one board (docs/shop.md)";

    /// <summary>The check.</summary>
    public static DeclaredCheck Declared { get; } = new(
        "stock-length",
        "Pieces against boards on sale",
        "Every piece's blank length against the longest board of its stock, less the trim.",
        Source,
        [CheckStatus.Pass, CheckStatus.Fail]);

    /// <summary>Fails when a piece is longer than the longest board of its stock, less the trim; names each such piece.</summary>
    public static CheckResult Of(StockPlan plan, UnitSystem units)
    {
        var words = new QuantityText(units);
        var tooLong = plan.TooLong.OrderByDescending(p => p.BlankLength - p.Longest).ToList();
        if (tooLong.Count == 0)
        {
            var pieces = plan.Boards.SelectMany(b => b.Pieces, (b, p) => (p.BlankLength, b.Length)).ToList();
            var longest = pieces.DefaultIfEmpty().MaxBy(p => p.BlankLength);
            return new CheckResult(
                Declared.Id, Declared.Title, CheckStatus.Pass, longest.BlankLength, longest.Length, "m",
                longest.Length > 0 ? longest.BlankLength / longest.Length : null, Source,
                $"all {pieces.Count} pieces fit boards on sale; the longest, {words.Length(longest.BlankLength)}, is cut from {words.Length(longest.Length)}");
        }

        var worst = tooLong[0];
        var named = tooLong.Select(p =>
            $"{p.Mark} ({p.Quantity} off) needs {words.Length(p.BlankLength)}, the longest board gives {words.Length(p.Longest)}");
        return new CheckResult(
            Declared.Id, Declared.Title, CheckStatus.Fail, worst.BlankLength, worst.Longest, "m",
            worst.Longest > 0 ? worst.BlankLength / worst.Longest : null, Source,
            string.Join("; ", named) + ": add longer boards to the stock's lengths, or shorten the piece; they are in no stock plan");
    }
}
