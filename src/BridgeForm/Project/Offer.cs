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
    public static Offer List(StockParameters stock, string section, ShopParameters shop, PriceList? prices)
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

/// <summary>What boards cost, as the user says.</summary>
/// <param name="Prices">In the order of the list.</param>
public sealed record PriceList(ImmutableArray<BoardPrice> Prices)
{
    /// <summary>The price of a board; null when the list has none. Metres.</summary>
    public double? Of(string stock, string section, double length) => Prices
        .FirstOrDefault(p => string.Equals(p.Stock, stock, StringComparison.Ordinal)
            && string.Equals(p.Section, section, StringComparison.Ordinal)
            && Math.Abs(p.Length - length) < Tolerances.PricedLength)
        ?.Price;

    /// <summary>Which of a stock's lengths on sale a length is; −1 for none.</summary>
    internal static int OnSale(StockParameters stock, double length)
    {
        for (var i = 0; i < stock.Lengths.Length; i++)
        {
            if (Math.Abs(stock.Lengths[i] - length) < Tolerances.PricedLength)
            {
                return i;
            }
        }

        return -1;
    }
}

/// <summary>The price of one board.</summary>
/// <param name="Stock">Name of the stock in the project file.</param>
/// <param name="Section">Name of the section, as <see cref="Materials.Section.Name"/>.</param>
/// <param name="Length">Length of the board, metres.</param>
/// <param name="Price">Price of one board; money without a name.</param>
public sealed record BoardPrice(string Stock, string Section, double Length, double Price);
