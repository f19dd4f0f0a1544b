using BridgeForm.Pieces;
using BridgeForm.Project;
using BridgeForm.Quantities;

namespace BridgeForm.Checks;

/// <summary>Whether every piece can be cut from a board on sale.</summary>
internal static class StockLengthCheck
{
    private const string Source = "BridgeForm's own rule: a piece is cut from one board (docs/shop.md)";

    // The longest of them: whoever has boards for these has boards for the others.
    private const int MostNamed = 20;

    /// <summary>The check.</summary>
    public static DeclaredCheck Declared { get; } = new(
        "stock-length",
        "Pieces against boards on sale",
        "Every piece's blank length against the longest board of its stock, less the trim.",
        Source,
        [CheckStatus.Pass, CheckStatus.Fail]);

    /// <summary>Fails when a piece is longer than the longest board of its stock, less the trim; names the longest of these.</summary>
    public static CheckResult Check(CheckContext context)
    {
        var (pieces, parameters) = (context.Pieces, context.Parameters);
        var words = new QuantityText(parameters.Units);
        var offers = pieces.Select(p => (p.Stock, p.Section)).Distinct()
            .ToDictionary(k => k, k => Offer.List(parameters.StockNamed(k.Stock), k.Section, parameters.Shop, parameters.PriceList));
        var blanks = pieces.Select(p => (Piece: p, Offer: offers[(p.Stock, p.Section)])).ToList();
        var tooLong =
            blanks.Where(b => !b.Offer.Gives(b.Piece.BlankLength)).OrderByDescending(b => b.Piece.BlankLength - b.Offer.Longest).ToList();
        return tooLong.Count > 0
            ? Fails(tooLong, words)
            : Passes(pieces.Sum(p => p.Occurrences.Length), blanks.MaxBy(b => b.Piece.BlankLength / b.Offer.Longest), parameters, words);
    }

    private static CheckResult Passes(int count, (Piece Piece, Offer Offer) closest, BridgeParameters parameters, QuantityText words)
    {
        var (blank, usable) = (closest.Piece.BlankLength, closest.Offer.Longest);
        return new CheckResult(
            Declared.Id, Declared.Title, CheckStatus.Pass, blank, usable, "m", blank / usable, Source,
            $"all {count} pieces fit boards on sale; closest is {closest.Piece.Mark}, {words.Length(blank)} from a board of "
                + $"{words.Length(closest.Offer.Lengths[^1])}"
            + (parameters.Shop.Trim > 0 ? $", {words.Length(usable)} without its trim" : ""))
            .On(closest.Piece.Occurrences.Select(o => o.Id));
    }

    private static CheckResult Fails(List<(Piece Piece, Offer Offer)> tooLong, QuantityText words)
    {
        var (worst, longest) = (tooLong[0].Piece.BlankLength, tooLong[0].Offer.Longest);
        var named = tooLong.Take(MostNamed).Select(b =>
            $"{b.Piece.Mark} ({b.Piece.Occurrences.Length} off) needs {words.Length(b.Piece.BlankLength)}, the longest board gives "
                + $"{words.Length(b.Offer.Longest)}");
        var more = tooLong.Count > MostNamed ? FormattableString.Invariant($"; and {tooLong.Count - MostNamed} more marks") : "";
        return new CheckResult(
            Declared.Id, Declared.Title, CheckStatus.Fail, worst, longest, "m",
            longest > 0 ? worst / longest : null, Source,
            string.Join("; ", named)
                + more + ": add longer boards to the stock's lengths, or shorten the piece; they are in no stock plan")
            .On(tooLong.SelectMany(b => b.Piece.Occurrences).Select(o => o.Id));
    }
}
