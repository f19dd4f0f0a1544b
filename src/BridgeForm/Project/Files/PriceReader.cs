using System.Collections.Immutable;
using System.Globalization;
using BridgeForm.Materials;
using BridgeForm.Project.Reading;
using BridgeForm.Project.Reading.Faults;
using BridgeForm.Quantities;

namespace BridgeForm.Project.Files;

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
        var faults = new FaultList();
        var prices = ImmutableArray.CreateBuilder<BoardPrice>();
        var priced = new HashSet<(string Stock, string Section, int Length)>();
        int[]? places = null;
        var number = 0;
        foreach (var line in text.TrimStart('\uFEFF').ReplaceLineEndings("\n").Split('\n'))
        {
            number++;
            if (faults.Full)
            {
                break;
            }

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
                AddOnce(prices, priced, price, number, faults);
            }
        }

        if (places is null && !faults.Any)
        {
            faults.Add(FaultCode.PricesEmpty, Place.Start, "the price list is empty; its first line is stock,section,length,price");
        }

        return new PriceReading(fileName, faults.Any ? null : new PriceList(prices.ToImmutable()), faults.InOrder());
    }

    private static int[]? Places(ImmutableArray<PriceField> head, int line, FaultList faults)
    {
        var places = Columns
            .Select(
                c => Enumerable.Range(0, head.Length).FirstOrDefault(
                    i => string.Equals(head[i].Text, c, StringComparison.OrdinalIgnoreCase), -1))
            .ToArray();
        var missing = Columns.Where((_, i) => places[i] < 0).ToList();
        if (missing.Count == 0)
        {
            return places;
        }

        faults.Add(
            FaultCode.PriceColumns, new Place(line, 1),
            $"the first line must name the columns {string.Join(", ", Columns)}; {string.Join(", ", missing)} missing");
        return null;
    }

    /// <summary>The price of a line's board and which of its stock's lengths it is; null, with faults, when the line is wrong.</summary>
    private static (BoardPrice Price, int Length)? Price(
        PriceLine line, ImmutableArray<StockParameters> stocks, FaultList faults)
    {
        var isRight = true;
        void Fault(FaultCode code, PriceField at, string message)
        {
            isRight = false;
            faults.Add(code, new Place(line.Number, at.Column), message);
        }

        var (name, section, length, price) = (line[0], line[1], line[2], line[3]);
        var stock = stocks.FirstOrDefault(s => string.Equals(s.Name, name.Text, StringComparison.Ordinal));
        if (stock is null)
        {
            Fault(FaultCode.PriceStock, name, $"the project has no stock {QuantityReader.Quote(name.Text)}; it has "
                + $"{string.Join(", ", stocks.Select(s => s.Name))}");
        }

        var sectionRead = RoundSection.Read(section.Text) is { } round ? new(round, null) : SectionReader.Read(section.Text);
        var lengthRead = QuantityReader.Read(QuantityKind.Length, length.Text);
        AddIf(FaultCode.NotSection, sectionRead.Problem, section);
        AddIf(FaultCode.NotQuantity, lengthRead.Problem, length);
        var onSale = stock is not null && lengthRead.IsRead ? PriceList.OnSale(stock, lengthRead.Value) : -1;
        if (stock is not null && lengthRead.IsRead && onSale < 0)
        {
            Fault(FaultCode.PriceLength, length, $"stock {stock.Name} is not on sale in {QuantityReader.Quote(length.Text)}; add the "
                + $"length to stock.{stock.Name}.lengths or take this line out");
        }

        if (!double.TryParse(price.Text, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var money)
            || money is not (> 0 and <= LargestPrice))
        {
            Fault(FaultCode.BadPrice, price, $"{QuantityReader.Quote(price.Text)} is not a price; write a number above 0 such as 6.48, "
                + $"without a sign of money");
        }

        return isRight ? (new BoardPrice(stock!.Name, sectionRead.Section!.Name, lengthRead.Value, money), onSale) : null;

        void AddIf(FaultCode code, string? problem, PriceField at)
        {
            if (problem is not null)
            {
                Fault(code, at, problem);
            }
        }
    }

    private static void AddOnce(
        ImmutableArray<BoardPrice>.Builder prices,
        HashSet<(string Stock, string Section, int Length)> priced,
        (BoardPrice Price, int Length) board,
        int line,
        FaultList faults)
    {
        var (price, length) = board;
        if (priced.Add((price.Stock, price.Section, length)))
        {
            prices.Add(price);
        }
        else
        {
            faults.Add(FaultCode.PriceTwice, new Place(line, 1), "this board has a price already; take one of the two lines out");
        }
    }
}

/// <summary>A price list, read: its prices, or everything that is wrong with it.</summary>
/// <param name="FileName">Name of the file, for messages.</param>
/// <param name="List">Null when there are faults.</param>
/// <param name="Faults">In the order of the file.</param>
public sealed record PriceReading(string FileName, PriceList? List, ImmutableArray<ProjectFault> Faults)
{
    /// <summary>One line a fault, as printed on standard error.</summary>
    public IEnumerable<string> Lines => Faults.Select(f => f.In(FileName));
}
