using System.Globalization;
using BridgeForm.Output.Drawing;
using BridgeForm.Output.Dxf;

namespace BridgeForm.Tests.Output.Dxf;

/// <summary>Dimensions, dashes and weights of lines, after the published DXF reference of AC1015 (from memory).</summary>
public sealed class DxfDimensionTests
{
    [Fact]
    public void A_profile_has_true_dimensions_with_their_look_in_a_block()
    {
        var file = new DxfFile(DxfSamples.Bytes("P1L"));
        var dimensions = file.Entities.Where(e => string.Equals(e.Type, "DIMENSION", StringComparison.Ordinal)).ToList();
        Assert.Equal(["39.5081 in", "40 in", "3.5 in"], dimensions.Select(d => d.First(1)));
        Assert.Equal([39.508107, 40.0, 3.5], dimensions.Select(d => double.Parse(d.First(42), CultureInfo.InvariantCulture)));
        var blocks = file.Records.Where(r => string.Equals(r.Type, "BLOCK", StringComparison.Ordinal)).Select(r => r.First(2)).ToList();
        Assert.All(dimensions, d => Assert.Contains(d.First(2), blocks));
        Assert.All(dimensions, d => Assert.Equal("DIM", d.First(8)));
    }

    /// <summary>The line of a length of 1 m lies 0.3 m above its points, and so does the end of it that the file names.</summary>
    [Fact]
    public void The_dimension_line_ends_beside_the_second_point()
    {
        var block = new DimensionBlock(
            new SheetDimension("DIM", new(0, 1), new(1, 1), new(0.4, 1.3), 0.02, "x"), "*D1", 64,
            DimensionLines.Draw(new SheetDimension("DIM", new(0, 1), new(1, 1), new(0.4, 1.3), 0.02, "x")));
        Assert.Equal(1, block.LineEnd.X, 1e-12);
        Assert.Equal(1.3, block.LineEnd.Y, 1e-12);
    }

    [Fact]
    public void Edges_on_the_far_face_are_dashed_and_layers_have_weights()
    {
        var layers = new DxfFile(DxfSamples.Bytes("P1L")).Records
            .Where(r => string.Equals(r.Type, "LAYER", StringComparison.Ordinal)).ToDictionary(r => r.First(2), StringComparer.Ordinal);
        Assert.Equal("DASHED", layers["BEVEL"].First(6));
        Assert.Equal("Continuous", layers["OUTLINE"].First(6));
        Assert.Equal("35", layers["OUTLINE"].First(370));
        Assert.Equal("18", layers["BEVEL"].First(370));
        Assert.Equal("13", layers["DIM"].First(370));
    }
}
