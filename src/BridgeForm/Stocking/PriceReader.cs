using System.Collections.Immutable;
using System.Globalization;
using BridgeForm.Materials;
using BridgeForm.Project;
using BridgeForm.Quantities;

namespace BridgeForm.Stocking;

/// <summary>
/// Reads a price list: comma-separated text whose first line names the columns <c>stock</c>, <c>section</c>, <c>length</c>
/// and <c>price</c> in any order, and one line a board: <c>treated,2x4,8 ft,6.48</c>.
/// </summary>
public static class PriceReader
{
    private const double LargestPrice = 1e6;
    private static readonly string[] Columns = ["stock", "section", "length", "price"];

    /// <summary>Reads the text; never throws on any text.</summary>
    /// <param name="text">The whole file.</param>
    /// <param name="fileName">Its name, for messages only.</param>
    /// <param name="stocks">Stocks of the project, with the lengths on sale.</param>
    public static PriceReading Read(string text, string fileName, ImmutableArray<StockParameters> stocks)
    {
        var faults = ImmutableArray.CreateBuilder<ProjectFault>();
        var prices = ImmutableArray.CreateBuilder<BoardPrice>();
        int[]? places = null;
        var number = 0;
        foreach (var line in text.TrimStart('\uFEFF').ReplaceLineEndings("\n").Split('\n'))
        {
            number++;
            if (line.AsSpan().Trim().IsEmpty)
            {
                continue;
            }

            var fields = PriceLine.Split(line);
            if (places is null)
            {
                places = Places(fields, number, faults);
                if (places is null)
                {
                    break;
                }
            }
            else if (Price(new PriceLine(number, fields, places), stocks, faults) is { } price)
            {
                AddOnce(prices, price, number, faults);
            }
        }

        if (places is null && faults.Count == 0)
        {
            faults.Add(new ProjectFault(1, 1, "the price list is empty; its first line is stock,section,length,price"));
        }

        return new PriceReading(
            fileName, faults.Count == 0 ? new PriceList(prices.ToImmutable()) : null, faults.ToImmutable());
    }

    private static int[]? Places(ImmutableArray<PriceField> head, int line, ImmutableArray<ProjectFault>.Builder faults)
    {
        var places = Columns
            .Select(c => Enumerable.Range(0, head.Length).FirstOrDefault(i => string.Equals(head[i].Text, c, StringComparison.OrdinalIgnoreCase), -1))
            .ToArray();
        var missing = Columns.Where((_, i) => places[i] < 0).ToList();
        if (missing.Count == 0)
        {
            return places;
        }

        faults.Add(new ProjectFault(
            line, 1, $"the first line must name the columns {string.Join(", ", Columns)}; {string.Join(", ", missing)} missing"));
        return null;
    }

    private static BoardPrice? Price(
        PriceLine line, ImmutableArray<StockParameters> stocks, ImmutableArray<ProjectFault>.Builder faults)
    {
        var before = faults.Count;
        void Fault(PriceField at, string message) => faults.Add(new ProjectFault(line.Number, at.Column, message));

        var (name, section, length, price) = (line[0], line[1], line[2], line[3]);
        var stock = stocks.FirstOrDefault(s => string.Equals(s.Name, name.Text, StringComparison.Ordinal));
        if (stock is null)
        {
            Fault(name, $"the project has no stock {QuantityReader.Quote(name.Text)}; it has {string.Join(", ", stocks.Select(s => s.Name))}");
        }

        var sectionRead = SectionReader.Read(section.Text);
        var lengthRead = QuantityReader.Read(QuantityKind.Length, length.Text);
        AddIf(sectionRead.Problem, section);
        AddIf(lengthRead.Problem, length);
        if (stock is not null && lengthRead.IsRead && !PriceList.IsOnSale(stock, lengthRead.Value))
        {
            Fault(length, $"stock {stock.Name} is not on sale in {QuantityReader.Quote(length.Text)}; add the length to stock.{stock.Name}.lengths or take this line out");
        }

        if (!double.TryParse(price.Text, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var money)
            || money is not (> 0 and <= LargestPrice))
        {
            Fault(price, $"{QuantityReader.Quote(price.Text)} is not a price; write a number above 0 such as 6.48, without a sign of money");
        }

        return faults.Count > before ? null : new BoardPrice(stock!.Name, sectionRead.Section!.Name, lengthRead.Value, money);

        void AddIf(string? problem, PriceField at)
        {
            if (problem is not null)
            {
                Fault(at, problem);
            }
        }
    }

    private static void AddOnce(
        ImmutableArray<BoardPrice>.Builder prices, BoardPrice price, int line, ImmutableArray<ProjectFault>.Builder faults)
    {
        if (new PriceList(prices.ToImmutable()).Of(price.Stock, price.Section, price.Length) is not null)
        {
            faults.Add(new ProjectFault(line, 1, "this board has a price already; take one of the two lines out"));
            return;
        }

        prices.Add(price);
    }
}
