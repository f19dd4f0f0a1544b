using System.Globalization;
using System.Text.Json;
using BridgeForm.Tests.Output.Dxf;

namespace BridgeForm.Tests.Output.Referees;

/// <summary>Four readers of DXF see in each file what was put into it: ezdxf, dxf-parser, dxf, GDAL.</summary>
[Trait("Category", "Referee")]
public sealed class DxfRefereeTests
{
    public static TheoryData<string> Names => DxfSamples.Names;

    [Theory]
    [MemberData(nameof(Names))]
    public void Ezdxf_finds_nothing_to_mend_and_the_same_entities(string name) => Referee.OnFile(DxfSamples.Bytes(name), "a.dxf", path =>
    {
        var seen = JsonDocument.Parse(Referee.Ezdxf("dxf_audit.py", path)).RootElement;
        Assert.Equal("AC1015", seen.GetProperty("version").GetString());
        Assert.Empty(seen.GetProperty("errors").EnumerateArray());
        Assert.Empty(seen.GetProperty("fixes").EnumerateArray());
        Assert.Equal(IsMetric(name) ? 4 : 1, seen.GetProperty("units").GetInt32());
        Assert.Equal(Expected(name), Seen(seen.GetProperty("entities")));
        Assert.All(seen.GetProperty("contrast").EnumerateArray(), c => Assert.InRange(c.GetDouble(), 3, 21));
        double[] box = [.. seen.GetProperty("box").EnumerateArray().Select(v => v.GetDouble())];
        double[] extents = [.. seen.GetProperty("extents").EnumerateArray().Select(v => v.GetDouble())];
        const double roundOff = 1e-5; // ezdxf bends bulges into many short lines; the file has six decimals.
        Assert.True(
            extents[0] <= box[0] + roundOff && extents[1] <= box[1] + roundOff && extents[2] >= box[2] - roundOff
                && extents[3] >= box[3] - roundOff,
            $"{string.Join(' ', extents)} does not contain {string.Join(' ', box)}");
    });

    [Theory]
    [MemberData(nameof(Names))]
    public void Readers_for_the_browser_see_the_same_entities(string name) => Referee.OnFile(DxfSamples.Bytes(name), "a.dxf", path =>
    {
        var seen = JsonDocument.Parse(Referee.Node("dxf-readers.js", path)).RootElement;
        Assert.Equal(Expected(name), Seen(seen.GetProperty("parser")));
        Assert.Equal(Expected(name), Seen(seen.GetProperty("helper")));
        Assert.True(seen.GetProperty("closed").GetBoolean());
        Assert.Equal(IsMetric(name) ? 4 : 1, seen.GetProperty("helperInsUnits").GetInt32());
    });

    [Theory]
    [MemberData(nameof(Names))]
    public void Gdal_sees_as_many_features(string name) => Referee.OnFile(DxfSamples.Bytes(name), "a.dxf", path =>
    {
        var seen = Referee.Ogrinfo("-so", "-al", path);

        // Of a dimension it draws the block: seven lines and a text.
        var count = Expected(name).Sum(e => e.StartsWith("DIMENSION", StringComparison.Ordinal) ? 8 : 1);
        Assert.Contains(
            string.Create(CultureInfo.InvariantCulture, $"Feature Count: {count}\n"), seen, StringComparison.Ordinal);
    });

    private static bool IsMetric(string name) => name is "P1L-metric" or "every-kind";

    /// <summary>Type, layer and number of corners as our own parser reads them from the tags.</summary>
    private static List<string> Expected(string name) =>
        [.. new DxfFile(DxfSamples.Bytes(name)).Entities.Select(e => Line(e.Type, e.First(8), e.Type switch
        {
            "LINE" => 2,
            "LWPOLYLINE" => e.AllOf(10).Count(),
            _ => 0,
        }))];

    private static List<string> Seen(JsonElement entities) =>
        [.. entities.EnumerateArray().Select(e => Line(e[0].GetString()!, e[1].GetString()!, e[2].GetInt32()))];

    private static string Line(string type, string layer, int corners) =>
        string.Create(CultureInfo.InvariantCulture, $"{type} {layer} {corners}");
}
