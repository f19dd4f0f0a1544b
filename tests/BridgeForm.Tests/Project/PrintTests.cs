using BridgeForm.Project;
using BridgeForm.Project.Files;

namespace BridgeForm.Tests.Project;

/// <summary><c>shop.print</c>: what is read, what is refused with what would be right, what is chosen where nothing is written.</summary>
public sealed class PrintTests
{
    [Theory]
    [InlineData("bed: 220 x 220 mm", 0.22, 0.22)]
    [InlineData("bed: 25 cm x 300 mm", 0.25, 0.3)]
    [InlineData("bed: 8x10 in", 0.2032, 0.254)]
    [InlineData("scale: 1:25", 0.22, 0.22)]
    public void A_bed_is_two_lengths(string key, double width, double depth)
    {
        var print = Print(key);
        Assert.Equal(width, print.BedWidth, 1e-12);
        Assert.Equal(depth, print.BedDepth, 1e-12);
        Assert.Equal(0.0012, print.Thinnest, 1e-12);
    }

    [Theory]
    [InlineData("bed: 220 mm", "no size of a bed")]
    [InlineData("bed: 20 x 20 mm", "no size of a bed")]
    [InlineData("bed: 3 m x 220 mm", "no size of a bed")]
    [InlineData("bed: 220 x 220", "no size of a bed")]
    [InlineData("bed: -220 x 220 mm", "no size of a bed")]
    [InlineData("bed: 1 x 2 x 3 m", "no size of a bed")]
    [InlineData("scale: 2:1", "'2:1' is not a scale; write one such as 1:20")]
    [InlineData("scale: 20", "'20' is not a scale; write one such as 1:20")]
    [InlineData("scale: 1/20", "'1/20' is not a scale; write one such as 1:20")]
    [InlineData("scale: 1:0", "'1:0' is not a scale; write one such as 1:20")]
    [InlineData("scale: nan", "'nan' is not a scale; write one such as 1:20")]
    [InlineData("scale: 1:0.5", "out of range")]
    [InlineData("scale: 1:500", "allowed is 1:100 to 1:1")]
    [InlineData("scale: 0", "write one such as 1:20")]
    [InlineData("thinnest: 230 mm", "out of range")]

    // 58 in are 1473.2 mm; the bed of 220 mm takes 210 mm: 7.02 times less, which is 1:8.
    [InlineData("scale: 1:5", "1:8")]

    // Rails of 1 in are 25.4 mm: at 1:20 1.27 mm, twice that 2.54 mm; 5 mm are twice the rail at 1:10.16.
    [InlineData("thinnest: 5 mm", "at most 2.5 mm, or a scale of at least 1:10")]
    public void What_is_wrong_is_told_with_what_is_right(string key, string words)
    {
        var fault = Assert.Single(ProjectReader.Read(Text(key), "bridge.yaml", Bridges.Catalogue).Faults);
        Assert.Contains(words, fault.Message, StringComparison.Ordinal);
    }

    /// <summary>1:20 where it fits; a frame of 6 m takes 1:32 (187.5 mm), at 1:25 it would be 240 mm.</summary>
    [Theory]
    [InlineData("58 in", 20)]
    [InlineData("236 in", 32)]
    public void The_scale_follows_the_frame(string length, int scale)
    {
        var parameters = Bridges.Read(Bridges.Garden);
        var frames = parameters.Frames;
        var metres = QuantityOf(length);
        Assert.Equal(
            1.0 / scale, PrintFit.Scale(parameters with { Frames = frames with { Base = frames.Base with { Length = metres } } }), 1e-12);
    }

    private static double QuantityOf(string length) =>
        BridgeForm.Quantities.QuantityReader.Read(BridgeForm.Quantities.QuantityKind.Length, length).Value;

    private static PrintParameters Print(string key) =>
        ProjectReader.Read(Text(key), "bridge.yaml", Bridges.Catalogue).Parameters!.Shop.Print;

    private static string Text(string key) => Bridges.Garden + $"\nshop: {{ print: {{ {key} }} }}\n";
}
