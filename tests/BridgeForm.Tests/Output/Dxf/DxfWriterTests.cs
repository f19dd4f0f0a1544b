using System.Globalization;
using BridgeForm.Output.Drawing;
using BridgeForm.Output.Dxf;
using BridgeForm.Output.Profiles;
using BridgeForm.Quantities;

namespace BridgeForm.Tests.Output.Dxf;

/// <summary>Structure after the published DXF reference of AC1015 (from memory); outside readers judge the same files elsewhere.</summary>
public sealed class DxfWriterTests
{
    public static TheoryData<string> Names => DxfSamples.Names;

    [Theory]
    [MemberData(nameof(Names))]
    public void Handles_are_unique_and_owners_exist(string name)
    {
        var file = new DxfFile(DxfSamples.Bytes(name));
        var handles = file.Records.Where(r => r.Type is not ("SECTION" or "ENDSEC" or "ENDTAB" or "EOF"))
            .Select(r => r.First(string.Equals(r.Type, "DIMSTYLE", StringComparison.Ordinal) ? 105 : 5)).ToList();
        Assert.Equal(handles.Count, handles.Distinct(StringComparer.Ordinal).Count());
        var owners = file.Records.SelectMany(r => r.AllOf(330).Concat(r.AllOf(350))).Distinct(StringComparer.Ordinal);
        Assert.All(owners, o => Assert.Contains(o, handles.Append("0")));
        var seed = Handle(file.Header("$HANDSEED")[0]);
        Assert.All(handles, h => Assert.True(Handle(h) < seed));
        Assert.Equal("EOF", file.Records[^1].Type);
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void Layers_are_declared_and_used_by_name(string name)
    {
        var file = new DxfFile(DxfSamples.Bytes(name));
        var declared = file.Records.Where(r => string.Equals(r.Type, "LAYER", StringComparison.Ordinal)).Select(r => r.First(2)).ToList();
        Assert.Equal("0", declared[0]);
        Assert.All(file.Entities, e => Assert.Contains(e.First(8), declared[1..]));
    }

    [Fact]
    public void Tables_blocks_and_sections_that_readers_need_are_there()
    {
        var file = new DxfFile(DxfSamples.Bytes("P1L"));
        Assert.Equal(
            ["HEADER", "CLASSES", "TABLES", "BLOCKS", "ENTITIES", "OBJECTS"],
            file.Records.Where(r => string.Equals(r.Type, "SECTION", StringComparison.Ordinal)).Select(r => r.First(2)));
        Assert.Equal(
            ["APPID", "BLOCK_RECORD", "DIMSTYLE", "LAYER", "LTYPE", "STYLE", "UCS", "VIEW", "VPORT"],
            file.Records.Where(r => string.Equals(r.Type, "TABLE", StringComparison.Ordinal)).Select(r => r.First(2)).Order(
                StringComparer.Ordinal));
        Assert.Equal(
            ["*Model_Space", "*Paper_Space", "*D1", "*D2", "*D3"],
            file.Records.Where(r => string.Equals(r.Type, "BLOCK", StringComparison.Ordinal)).Select(r => r.First(2)));
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void Every_entity_lies_within_the_extents(string name)
    {
        var file = new DxfFile(DxfSamples.Bytes(name));
        double[] low = [.. file.Header("$EXTMIN").Select(Number)];
        double[] high = [.. file.Header("$EXTMAX").Select(Number)];
        foreach (var entity in file.Entities)
        {
            var reach = string.Equals(entity.Type, "CIRCLE", StringComparison.Ordinal) ? entity.Number(40) : 0;
            Assert.All(entity.Numbers(10).Concat(entity.Numbers(11)), x => Assert.InRange(x, low[0] + reach, high[0] - reach));
            Assert.All(entity.Numbers(20).Concat(entity.Numbers(21)), y => Assert.InRange(y, low[1] + reach, high[1] - reach));
        }
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void No_entity_is_doubled_or_without_length(string name)
    {
        var file = new DxfFile(DxfSamples.Bytes(name));
        var shapes = file.Entities.Select(e => e.Type + string.Join('|', e.Tags.Where(t => t.Code != 5))).ToList();
        Assert.Equal(shapes.Count, shapes.Distinct(StringComparer.Ordinal).Count());
        foreach (var line in file.Entities.Where(e => string.Equals(e.Type, "LINE", StringComparison.Ordinal)))
        {
            Assert.True(Math.Abs(line.Number(10) - line.Number(11)) + Math.Abs(line.Number(20) - line.Number(21)) > 1e-3);
        }
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void Polylines_are_closed_with_as_many_corners_as_they_say(string name)
    {
        foreach (
            var polyline in new DxfFile(DxfSamples.Bytes(name)).Entities.Where(
                e => string.Equals(e.Type, "LWPOLYLINE", StringComparison.Ordinal)))
        {
            var corners = polyline.Numbers(10).Zip(polyline.Numbers(20)).ToList();
            Assert.Equal(polyline.First(90), corners.Count.ToString(CultureInfo.InvariantCulture));
            Assert.Equal("1", polyline.First(70));
            Assert.All(corners.Zip(corners.Skip(1).Append(corners[0])), p => Assert.NotEqual(p.First, p.Second));
        }
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void Numbers_have_neither_exponent_nor_negative_zero(string name)
    {
        var numbers = new DxfFile(DxfSamples.Bytes(name)).Tags.Where(t => t.Code is >= 10 and < 60 or >= 140 and < 148).Select(
            t => t.Value);
        Assert.All(numbers, n => Assert.Matches("^(?!-0(\\.0+)?$)-?[0-9]+\\.[0-9]+$", n));
    }

    [Theory]
    [InlineData("P1L", "1", "0", 40.0)]
    [InlineData("P1L-metric", "4", "1", 1016.0)]
    public void Unit_is_stated_and_used(string name, string insunits, string measurement, double length)
    {
        var file = new DxfFile(DxfSamples.Bytes(name));
        Assert.Equal(insunits, file.Header("$INSUNITS")[0]);
        Assert.Equal(measurement, file.Header("$MEASUREMENT")[0]);
        var outline = file.Entities.First(e => string.Equals(e.First(8), ProfileLayers.Outline, StringComparison.Ordinal));
        Assert.Equal(length, outline.Numbers(10).Max(), 5);
        Assert.Equal(0, outline.Numbers(10).Min(), 5);
    }

    // A line from 2, 1 m to 4, 7 m: what a reader shows first lies around 3, 4 m and is 6 m high.
    [Fact]
    public void View_is_centred_on_what_is_drawn()
    {
        var sheet = DxfSamples.EveryKind with { Entities = [new SheetLine("OUTLINE", new(2, 1), new(4, 7))] };
        using var stream = new MemoryStream();
        DxfWriter.Write(sheet, UnitSystem.Metric, stream);
        var view = new DxfFile(stream.ToArray()).Records.Single(
            r => string.Equals(r.Type, "VPORT", StringComparison.Ordinal));
        double Of(int code) => double.Parse(view.Tags.Single(t => t.Code == code).Value, System.Globalization.CultureInfo.InvariantCulture);
        Assert.Equal((3000.0, 4000.0), (Of(12), Of(22)));
        Assert.InRange(Of(40), 6000, 6600);
    }

    [Fact]
    public void Text_is_ascii_with_the_escapes_of_the_format()
    {
        var text = new DxfFile(DxfSamples.Bytes("every-kind")).Entities.First(e => string.Equals(e.Type, "TEXT", StringComparison.Ordinal));
        Assert.Equal("8%%d %%c %%p \\U+00BD W\\U+00FCrfel ", text.First(1));
    }

    [Fact]
    public void Same_sheet_gives_the_same_bytes_in_every_culture()
    {
        var before = CultureInfo.CurrentCulture;
        var expected = DxfSamples.Bytes("B1");
        var german = (CultureInfo)CultureInfo.InvariantCulture.Clone();
        german.NumberFormat.NumberDecimalSeparator = ",";
        CultureInfo.CurrentCulture = german;
        try
        {
            Assert.Equal(expected, DxfSamples.Bytes("B1"));
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
        }
    }

    [Fact]
    public void A_number_that_is_not_finite_is_refused()
    {
        var sheet = DxfSamples.EveryKind with { Entities = [new SheetCircle("OUTLINE", new SheetPoint(0, 0), double.NaN)] };
        Assert.Throws<ArgumentOutOfRangeException>(() => DxfWriter.Write(sheet, UnitSystem.Metric, Stream.Null));
    }

    private static int Handle(string hex) => int.Parse(hex, NumberStyles.HexNumber, CultureInfo.InvariantCulture);

    private static double Number(string text) => double.Parse(text, CultureInfo.InvariantCulture);
}
