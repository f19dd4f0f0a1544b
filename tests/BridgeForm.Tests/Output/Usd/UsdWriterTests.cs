using System.IO.Compression;
using System.Text;
using BridgeForm.Output.Usd;
using BridgeForm.Tests.Output.Samples;

namespace BridgeForm.Tests.Output.Usd;

public sealed class UsdWriterTests
{
    internal static byte[] Bytes(BridgeModel model)
    {
        using var stream = new MemoryStream();
        UsdWriter.Write(model, stream);
        return stream.ToArray();
    }

    /// <summary>The check value of CRC-32, of the nine digits, as it is published everywhere.</summary>
    [Fact]
    public void The_checksum_has_its_check_value() => Assert.Equal(0xCBF43926, UsdzPackage.Checksum("123456789"u8));

    /// <summary>.NET's own reader of archives checks the sum as it reads.</summary>
    [Theory]
    [InlineData("a.usda")]
    [InlineData("a name of another length.usda")]
    public void A_package_is_an_archive_whose_file_is_stored_at_a_multiple_of_64(string name)
    {
        var content = Encoding.ASCII.GetBytes("#usda 1.0\n" + new string('x', 1000));
        using var stream = new MemoryStream();
        UsdzPackage.Write(stream, name, content);
        using var archive = new ZipArchive(new MemoryStream(stream.ToArray()));
        var entry = Assert.Single(archive.Entries);
        Assert.Equal(name, entry.FullName);
        Assert.Equal(entry.Length, entry.CompressedLength);
        Assert.Equal(1980, entry.LastWriteTime.Year);
        using var opened = entry.Open();
        using var read = new MemoryStream();
        opened.CopyTo(read);
        Assert.Equal(content, read.ToArray());
        Assert.Equal(0, stream.ToArray().AsSpan().IndexOf(content) % 64);
    }

    [Fact]
    public void The_layer_tells_metres_and_which_way_is_up_and_every_part()
    {
        var text = Encoding.UTF8.GetString(Bytes(SampleModel.Small));
        Assert.Contains("    metersPerUnit = 1\n    upAxis = \"Y\"\n)\n", text, StringComparison.Ordinal);
        Assert.All(SampleModel.Small.Pieces.SelectMany(p => p.Occurrences), o => Assert.Contains(
            $"string id = \"{o.Id}\"\n", text, StringComparison.Ordinal));
        Assert.Equal(Bytes(SampleModel.Small), Bytes(SampleModel.Small));
    }

    [Theory]
    [InlineData("post-left", "post_left")]
    [InlineData("treated wood, silver", "treated_wood__silver")]
    public void Names_have_letters_digits_and_underscores(string text, string name) => Assert.Equal(name, UsdText.Name(text));

    [Fact]
    public void Texts_keep_their_quotes() => Assert.Equal("\"a \\\"b\\\" \\\\ \\n\"", UsdText.Quoted("a \"b\" \\ \n"));
}
