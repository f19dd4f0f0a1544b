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
        Assert.Equal((width, depth), (print.BedWidth, print.BedDepth));
        Assert.Equal(0.0012, print.Thinnest, 1e-12);
    }

    [Theory]
    [InlineData("bed: 220 mm", "no size of a bed")]
    [InlineData("bed: 20 x 20 mm", "no size of a bed")]
    [InlineData("bed: 3 m x 220 mm", "no size of a bed")]
    [InlineData("bed: 220 x 220", "no size of a bed")]
    [InlineData("bed: -220 x 220 mm", "no size of a bed")]
    [InlineData("bed: 1 x 2 x 3 m", "no size of a bed")]
    [InlineData("scale: 2:1", "scale")]
    [InlineData("scale: 1:0.5", "out of range")]
    [InlineData("scale: 1:500", "allowed is 1:100 to 1:1")]
    [InlineData("scale: 0", "out of range")]
    [InlineData("thinnest: 230 mm", "out of range")]

    // 58 in are 1473.2 mm; the bed of 220 mm takes 210 mm: 7.02 times less, which is 1:8.
    [InlineData("scale: 1:5", "1:8")]

    // Rails of 1-1/2 in are 38.1 mm: at 1:20 1.905 mm, twice that 3.81 mm; 5 mm are twice the rail at 1:15.24.
    [InlineData("thinnest: 5 mm", "at most 3.8 mm, or a scale of at least 1:15")]
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

    private static string Text(string key) => Ground.Under(Bridges.Garden) + $"\nshop: {{ print: {{ {key} }} }}\n";
}
