using System.IO.Compression;
using System.Xml.Linq;
using BridgeForm.Output.ScaleModel;
using BridgeForm.Roles;
using BridgeForm.Tests.Output.StepSolids;

namespace BridgeForm.Tests.Output.ScaleModel;

public sealed class ThreeMfWriterTests
{
    public static TheoryData<string> Names => [.. PrintCases.Samples.Select(s => s.Name)];

    [Theory]
    [MemberData(nameof(Names))]
    public void The_file_keeps_the_specification_and_comes_out_the_same_twice(string name)
    {
        var model = PrintCases.Samples.Single(s => s.Name == name).Model;
        var file = PrintCases.Bytes(model, PrintPlan.Of(model));
        Assert.Equal([], ThreeMfRules.Broken(file).Said());
        Assert.Equal(file, PrintCases.Bytes(model, PrintPlan.Of(model)));
    }

    /// <summary>The rules find what is broken on purpose.</summary>
    [Theory]
    [InlineData("unit=\"millimeter\"", "unit=\"inch\"", "3.4 unit")]
    [InlineData("<build>", "<resources/><build>", "B schema: model holds")]
    [InlineData("<build>", "<build><items/>", "B schema: foreign element")]
    [InlineData("<build>", "<build>text", "B schema: build holds text")]
    [InlineData("<base name=", "<base finish=\"\" name=", "B schema: base has finish")]
    [InlineData("<component objectid=\"2\" />", "<component />", "B schema: component has no objectid")]
    [InlineData("type=\"model\"", "type=\"timber\"", "B schema: object has type")]
    [InlineData("id=\"2\" type=\"model\"", "id=\"2\" type=\"other\"", "3.4.3.1")]
    [InlineData("id=\"1\"", "id=\"0\"", "B schema: basematerials has id")]
    [InlineData("name=\"Application\"", "name=\"Printer\"", "3.4.1")]
    [InlineData("<triangle v1=\"0\"", "<triangle v1=\"1\"", "4.1")]
    [InlineData("<component objectid=\"2\" />", "<component objectid=\"9999\" />", "3.4 object")]
    [InlineData("1 0 0 0 1 0 0 0 1 5 5 0", "1 0 0 0 1 0 0 0 1 5 5", "B schema: item has transform")]
    [InlineData("1 0 0 0 1 0 0 0 1 5 5 0", "1 0 0 0 1 0 0 0 1 -5 5 0", "3.3")]
    [InlineData("displaycolor=\"#", "displaycolor=\"0x", "B schema: base has displaycolor")]
    public void What_is_broken_is_found(string from, string to, string clause)
    {
        var model = PrintCases.Samples.First().Model;
        var file = ThreeMfRules.Changed(PrintCases.Bytes(model, PrintPlan.Of(model)), text =>
        {
            var at = text.IndexOf(from, StringComparison.Ordinal);
            return string.Concat(text.AsSpan(0, at), to, text.AsSpan(at + from.Length));
        });
        Assert.Contains(ThreeMfRules.Broken(file), f => f.StartsWith(clause, StringComparison.Ordinal));
    }

    [Fact]
    public void Every_part_but_packers_is_printed_once()
    {
        foreach (var (_, model) in PrintCases.Samples)
        {
            var printed = PrintPlan.Of(model).Placed.SelectMany(p => p.Item.Bodies).Select(b => b.Name)
                .Where(n => PartId.Read(n) is not null).Order(StringComparer.Ordinal);
            var parts = model.Pieces.Where(p => p.Role != Role.Packer).SelectMany(p => p.Occurrences).Select(o => o.Id)
                .Order(StringComparer.Ordinal);
            Assert.Equal(parts, printed);
        }
    }

    [Fact]
    public void Items_lie_on_their_plates_and_apart()
    {
        foreach (var (name, model) in PrintCases.Samples.Concat(PrintCases.Random()))
        {
            var plan = PrintPlan.Of(model);
            if (plan.Told.Any(t => t.StartsWith("Larger", StringComparison.Ordinal)))
            {
                continue;
            }

            Assert.All(plan.Placed, p => Assert.True(
                p.X >= 0.005 && p.Y >= 0.005 && p.X + p.Size.X <= plan.Bed.Width - 0.0049 && p.Y + p.Size.Y <= plan.Bed.Depth - 0.0049,
                $"{name}: {p.Item.Name}"));
            foreach (var plate in plan.Placed.GroupBy(p => p.Plate))
            {
                PlacedItem[] items = [.. plate];
                for (var i = 0; i < items.Length; i++)
                {
                    Assert.DoesNotContain(items.Skip(i + 1), o => Overlap(items[i], o));
                }
            }

            Assert.Equal(Enumerable.Range(1, plan.Plates), plan.Placed.Select(p => p.Plate).Distinct());
        }
    }

    /// <summary>The rope of 3/4 in is 19.05 mm, at 1:20 0.95 mm; boards of 1-1/2 in are 1.905 mm, and are printed so.</summary>
    [Fact]
    public void What_is_too_thin_is_printed_as_thick_as_asked_for_and_told()
    {
        var model = PrintCases.Samples.First().Model;
        var plan = PrintPlan.Of(model);
        Assert.Contains("Thicker than to scale: rope: 0.95 mm printed 1.20 mm square (22 pieces)", plan.Told);
        Assert.DoesNotContain(plan.Told, t => t.Contains("rail", StringComparison.Ordinal));
        var thick = PrintPlan.Of(model.At(1 / 20.0, thinnest: 0.0025));
        Assert.Contains("Thicker than to scale: rail: 1.91 mm printed 2.50 mm (132 pieces)", thick.Told);
        Assert.Contains(thick.Placed, p => p.Item.Name is "B05 cap left" && Math.Abs(p.Size.Z - 0.0025) < 1e-9);
        Assert.Contains("rope left 1, F00 to F05", ScaleModelTable.Csv(plan), StringComparison.Ordinal);
    }

    /// <summary>A net is cut from no stick, and a landing is by others: neither is printed, and both are told of.</summary>
    [Theory]
    [InlineData("netted", "Left out: netting")]
    [InlineData("joined", "Left out: landings")]
    public void What_is_left_out_is_told(string name, string words)
    {
        var told = ScaleModelTable.Told(StepCase.Others.Single(c => c.Name == name).Model);
        Assert.Contains(told, t => t.StartsWith(words, StringComparison.Ordinal));
        Assert.DoesNotContain(
            ScaleModelTable.Told(PrintCases.Samples.First().Model), t => t.StartsWith(words, StringComparison.Ordinal));
    }

    /// <summary>A bed of 120 mm takes 110 mm: of 41.8 mm a bay two at a time; nothing on it is longer.</summary>
    [Fact]
    public void Long_things_are_cut_to_the_bed()
    {
        var plan = PrintPlan.Of(PrintCases.Samples.First().Model.At(1 / 20.0, bed: 0.12));
        Assert.Equal(12, plan.Placed.Count(p => p.Item.Name.StartsWith("rope", StringComparison.Ordinal)));
        Assert.All(plan.Placed, p => Assert.True(Math.Max(p.Size.X, p.Size.Y) <= 0.11 + 1e-9, p.Item.Name));
        Assert.DoesNotContain(plan.Told, t => t.StartsWith("Larger", StringComparison.Ordinal));
    }

    /// <summary>A bridge in the night is U+1F309, two code units of UTF-16; a control character is in no XML.</summary>
    [Fact]
    public void A_title_keeps_every_character_that_XML_has()
    {
        var model = PrintCases.Samples.First().Model;
        var named = model with { Parameters = model.Parameters with { Name = "\u6A4B \U0001F309\u0001 & <b>" } };
        using var archive = new ZipArchive(new MemoryStream(PrintCases.Bytes(named, PrintPlan.Of(named))));
        using var part = archive.GetEntry("3D/3dmodel.model")!.Open();
        var title = XDocument.Load(part).Root!.Elements().Single(e => (string?)e.Attribute("name") is "Title").Value;
        Assert.Equal("\u6A4B \U0001F309 & <b>, 1:20", title);
    }

    private static bool Overlap(PlacedItem a, PlacedItem b) =>
        a.X < b.X + b.Size.X && b.X < a.X + a.Size.X && a.Y < b.Y + b.Size.Y && b.Y < a.Y + a.Size.Y;
}
