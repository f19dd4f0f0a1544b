using System.Collections.Immutable;
using System.Text;
using System.Text.Json;
using BridgeForm.Output.Report;
using BridgeForm.Roles;
using BridgeForm.Tests.Output.Samples;

namespace BridgeForm.Tests.Output.Report;

public sealed class ReportWriterTests
{
    private static readonly ImmutableArray<string> Files = ["model.glb", "profiles/P1L.dxf"];

    [Theory]
    [InlineData("", "format version name caution ropes nodes pieces cases checks stock files")]
    [InlineData("ropes", "bays chord design_horizontal design_max_tension stressed_length unstressed_length end_slopes_deg hoisting")]
    [InlineData("ropes/hoisting/0", "stage temperature_c sag horizontal")]
    [InlineData("nodes/0", "frame x y slope_deg mark load")]
    [InlineData("pieces/0", "mark role quantity stock section width thickness blank_length volume mass exposed_cut_area ends channels "
        + "holes routable occurrences")]
    [InlineData("pieces/0/ends/1", "mitre_deg bevel_deg edge_deg in_reach wedge_deg")]
    [InlineData("pieces/0/channels/0", "center width depth floor_slope_deg")]
    [InlineData("pieces/0/holes/0", "face x across diameter depth")]
    [InlineData("cases/0", "id horizontal max_tension sag move_down_mid reactions nodes")]
    [InlineData("checks/0", "id title status demand capacity unit ratio source detail parts")]
    public void Keys_that_others_rely_on_are_there(string path, string keys)
    {
        var element = At(path);
        Assert.All(keys.Split(' '), key => Assert.True(element.TryGetProperty(key, out _), key));
    }

    [Theory]
    [InlineData("format", "\"bridgeform-report\"")]
    [InlineData("version", "1")]
    [InlineData("ropes/bays", "2")]
    [InlineData("ropes/unstressed_length", "1.8034")]
    [InlineData("pieces/1/ends/0/mitre_deg", "8")]
    [InlineData("pieces/1/width", "0.0889")]
    [InlineData("pieces/1/occurrences/2", "\"F02/post-left\"")]
    [InlineData("pieces/0/channels/0/center", "0.1524")]
    [InlineData("pieces/0/holes/0/face", "\"-y\"")]
    [InlineData("cases/0/reactions/a/1", "2.5")]
    [InlineData("cases/1/sag", "null")]
    [InlineData("cases/1/failure", "\"no equilibrium found\"")]
    [InlineData("checks/0/status", "\"fail\"")]
    [InlineData("checks/0/parts/0", "\"ropes/left\"")]
    [InlineData("checks/0/parts/1", "\"F01/base\"")]
    [InlineData("checks/1/parts", "[]")]
    [InlineData("checks/1/status", "\"engineer\"")]
    [InlineData("checks/1/capacity", "null")]
    [InlineData("files/1", "\"profiles/P1L.dxf\"")]
    public void Values_come_through(string path, string expected) => Assert.Equal(expected, At(path).GetRawText());

    [Fact]
    public void End_slopes_fall_and_rise()
    {
        var slopes = At("ropes/end_slopes_deg");
        Assert.Equal(-Math.Atan(0.02 / 0.9) * 180 / Math.PI, slopes[0].GetDouble(), 9);
        Assert.Equal(slopes[0].GetDouble(), -slopes[1].GetDouble(), 9);
    }

    [Fact]
    public void Caution_is_word_for_word() => Assert.Equal(Caution.Text, At("caution").GetString());

    [Fact]
    public void Same_model_gives_the_same_bytes_with_lf_and_no_negative_zero()
    {
        var bytes = Bytes();
        Assert.Equal(bytes, Bytes());
        var text = Encoding.UTF8.GetString(bytes);
        Assert.DoesNotContain('\r', text);
        Assert.DoesNotMatch("-0[,\\s\\]]", text);
    }

    private static byte[] Bytes()
    {
        using var stream = new MemoryStream();
        ReportWriter.Write(SampleModel.Small, () => Files, stream);
        return stream.ToArray();
    }

    private static JsonElement At(string path)
    {
        var element = JsonDocument.Parse(Bytes()).RootElement;
        foreach (var step in path.Split('/', StringSplitOptions.RemoveEmptyEntries))
        {
            element = int.TryParse(step, out var index) ? element[index] : element.GetProperty(step);
        }

        return element;
    }
}
