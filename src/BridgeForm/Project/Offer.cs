using System.Collections.Immutable;
using BridgeForm.Quantities;

namespace BridgeForm.Project;

/// <summary>Boards of one stock and section on sale, shortest first.</summary>
/// <param name="Stock">The stock.</param>
/// <param name="Lengths">Lengths, metres.</param>
/// <param name="Usable">What is left of each when both ends are trimmed, metres.</param>
/// <param name="Costs">What one costs: its price, or its length when there is no price.</param>
/// <param name="ByPrice">Costs are prices.</param>
public sealed record Offer(
    StockParameters Stock,
    ImmutableArray<double> Lengths,
    ImmutableArray<double> Usable,
    ImmutableArray<double> Costs,
    bool ByPrice)
{
    /// <summary>The longest blank that a board on sale gives, metres; 0 where none is on sale.</summary>
    public double Longest => Usable.Length > 0 ? Usable[^1] : 0;

    /// <summary>Whether a board on sale gives a blank of this length, metres.</summary>
    public bool Gives(double blank) => blank <= Longest + Tolerances.RoundOff;

    /// <summary>
    /// The boards on sale. Where the list has a price for any length of this stock and section, lengths without one are not
    /// offered: nobody knows what they cost.
    /// </summary>
    public static Offer Of(StockParameters stock, string section, ShopParameters shop, PriceList? prices)
    {
        var priced = stock.Lengths
            .Select(length => new { Length = length, Price = prices?.Of(stock.Name, section, length) })
            .Where(b => b.Length - (2 * shop.Trim) > Tolerances.ShortestBoard)
            .OrderBy(b => b.Length)
            .ToList();
        var byPrice = priced.Exists(b => b.Price is not null);
        var offered = byPrice ? priced.Where(b => b.Price is not null).ToList() : priced;
        return new Offer(
            stock,
            [.. offered.Select(b => b.Length)],
            [.. offered.Select(b => b.Length - (2 * shop.Trim))],
            [.. offered.Select(b => b.Price ?? b.Length)],
            byPrice);
    }
}
