namespace BridgeForm.Project.Reading.Faults;

/// <summary>Faults of a price list; sections and lengths in it are those of any value.</summary>
internal static class PriceFaults
{
    public static FaultGroup Group { get; } = new(
        "The price list",
        [
            new(
                FaultCode.PricesEmpty,
                "prices-empty",
                "A price list without a line.",
                "Begin it with `stock,section,length,price`."),
            new(
                FaultCode.PriceColumns,
                "price-columns",
                "A first line that does not name all four columns.",
                "Name `stock`, `section`, `length` and `price`, in any order."),
            new(
                FaultCode.PriceStock,
                "price-unknown-stock",
                "A price for a stock that the project does not have.",
                "Take a name under `stock`, or take the line out."),
            new(
                FaultCode.PriceLength,
                "price-length-not-on-sale",
                "A price for a length in which the stock is not on sale.",
                "Add the length to `stock.NAME.lengths`, or take the line out."),
            new(
                FaultCode.BadPrice,
                "bad-price",
                "A price that is no number above 0.",
                "Write a number such as `6.48`, without a sign of money."),
            new(FaultCode.PriceTwice, "price-twice", "Two prices for one board.", "Take one of the two lines out."),
        ]);
}
