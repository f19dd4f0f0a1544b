using System.Collections.Immutable;
using BridgeForm.Quantities;

namespace BridgeForm.Project;

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
