using BridgeForm.Project.Files;
using CsCheck;

namespace BridgeForm.Tests.Stocking;

public class PriceReaderTests
{
    private static readonly System.Collections.Immutable.ImmutableArray<BridgeForm.Project.StockParameters> s_stock =
        Bridges.Read(Bridges.Garden).Stock;

    [Fact]
    public void Reads_columns_in_any_order()
    {
        var reading = Read("price,Stock,length,section\n6.48,treated,8 ft,2x4\n\"11\",cedar,\"12 ft\",1x4\n");
        Assert.Empty(reading.Lines);
        Assert.Equal(6.48, reading.List!.Of("treated", "2x4", 2.4384));
        Assert.Equal(11, reading.List.Of("cedar", "1x4", 12 * 0.3048));
        Assert.Null(reading.List.Of("treated", "2x4", 3.048));
    }

    [Theory]
    [InlineData("", "prices.csv:1:1: error: the price list is empty; its first line is stock,section,length,price")]
    [InlineData(
        "stock,section,price\n",
        "prices.csv:1:1: error: the first line must name the columns stock, section, length, price; length missing")]
    [InlineData(
        "stock,section,length,price\noak,2x4,8 ft,1\n", "prices.csv:2:1: error: the project has no stock 'oak'; it has treated, cedar")]
    [InlineData(
        "stock,section,length,price\ntreated,2x4,8 ft,free\n",
        "prices.csv:2:18: error: 'free' is not a price; write a number above 0 such as 6.48, without a sign of money")]
    [InlineData("stock,section,length,price\n\ntreated,2x4,8,1\n", "prices.csv:3:13: error: '8' has no unit")]
    [InlineData("stock,section,length,price\ntreated,2x4,9 ft,1\n", "prices.csv:2:13: error: stock treated is not on sale in '9 ft'")]
    [InlineData(
        "stock,section,length,price\ntreated,2x4,8 ft,1\ntreated,2x4,96 in,2\n", "prices.csv:3:1: error: this board has a price already")]
    [InlineData("stock,section,length,price\ntreated,2x4\n", "prices.csv:2:12: error: ")]
    public void Says_what_is_wrong_and_where(string text, string start)
    {
        var reading = Read(text);
        Assert.Null(reading.List);
        Assert.StartsWith(start, reading.Lines.First(), StringComparison.Ordinal);
    }

    [Fact]
    public void Tells_all_faults_in_one_run() =>
        Assert.Equal(3, Read("stock,section,length,price\noak,2x4,8 ft,1\ntreated,3x,8 ft,1\ntreated,2x4,8 ft,-1\n").Faults.Length);

    [Fact]
    public void Never_throws() => Gen.String[Gen.Char["stockectionlgthpr,\n\"48 ftx."], 0, 80].Sample(
        text => Assert.NotNull(Read("stock,section,length,price\n" + text)), iter: 500);

    private static PriceReading Read(string text) => PriceReader.Read(text, "prices.csv", s_stock);
}
