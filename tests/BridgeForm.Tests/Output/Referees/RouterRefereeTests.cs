using System.Globalization;
using System.Text.Json;
using BridgeForm.Tests.Output.Router;

namespace BridgeForm.Tests.Output.Referees;

/// <summary>Four readers of DXF see in each router and board file what was put into it: ezdxf, dxf-parser, dxf, GDAL.</summary>
[Trait("Category", "Referee")]
public sealed class RouterRefereeTests
{
    public static TheoryData<string> Names => RouterFiles.Names;

    [Theory]
    [MemberData(nameof(Names))]
    public void Readers_see_the_same_entities_and_nothing_to_mend(string name) => Referee.OnFile(RouterFiles.All[name], "a.dxf", path =>
    {
        var expected = Expected(name);
        var ezdxf = JsonDocument.Parse(Referee.Ezdxf("dxf_audit.py", path)).RootElement;
        Assert.Empty(ezdxf.GetProperty("errors").EnumerateArray());
        Assert.Empty(ezdxf.GetProperty("fixes").EnumerateArray());
        Assert.Equal(name.StartsWith("metric", StringComparison.Ordinal) ? 4 : 1, ezdxf.GetProperty("units").GetInt32());
        Assert.Equal(expected, Seen(ezdxf.GetProperty("entities")));

        var browser = JsonDocument.Parse(Referee.Node("dxf-readers.js", path)).RootElement;
        Assert.Equal(expected, Seen(browser.GetProperty("parser")));
        Assert.Equal(expected, Seen(browser.GetProperty("helper")));
        Assert.Equal(!RouterFiles.File(name).Entities.Any(e => e.First(8) is "ENGRAVE"), browser.GetProperty("closed").GetBoolean());
        Assert.All(ezdxf.GetProperty("contrast").EnumerateArray(), c => Assert.InRange(c.GetDouble(), 3, 21));
        Assert.NotEmpty(ezdxf.GetProperty("contrast").EnumerateArray());

        Assert.Contains(
            string.Create(CultureInfo.InvariantCulture, $"Feature Count: {expected.Count}\n"), Referee.Ogrinfo("-so", "-al", path),
            StringComparison.Ordinal);
    });

    private static List<string> Expected(string name) =>
        [.. RouterFiles.File(name).Entities.Select(e => Line(e.Type, e.First(8), e.Type is "LWPOLYLINE" ? e.AllOf(10).Count() : 0))];

    private static List<string> Seen(JsonElement entities) =>
        [.. entities.EnumerateArray().Select(e => Line(e[0].GetString()!, e[1].GetString()!, e[2].GetInt32()))];

    private static string Line(string type, string layer, int corners) =>
        string.Create(CultureInfo.InvariantCulture, $"{type} {layer} {corners}");
}
