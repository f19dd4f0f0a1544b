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
    public static CheckResult Of(StockPlan plan, BridgeParameters parameters)
    {
        var words = new QuantityText(parameters.Units);
        var tooLong = plan.TooLong.OrderByDescending(p => p.BlankLength - p.Longest).ToList();
        if (tooLong.Count == 0)
        {
            var longest = plan.Boards.SelectMany(b => b.Pieces.Select(p => new { p.BlankLength, b.Length })).MaxBy(p => p.BlankLength);
            var (blank, board) = (longest?.BlankLength ?? 0, longest?.Length ?? 0);
            var usable = Math.Max(0, board - (2 * parameters.Shop.Trim));
            return new CheckResult(
                Declared.Id, Declared.Title, CheckStatus.Pass, blank, usable, "m",
                usable > 0 ? blank / usable : null, Source,
                $"all {plan.Boards.Sum(b => b.Pieces.Length)} pieces fit boards on sale; the longest, {words.Length(blank)}, is cut from {words.Length(board)}"
                + (parameters.Shop.Trim > 0 ? $", {words.Length(usable)} without its trim" : ""));
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
