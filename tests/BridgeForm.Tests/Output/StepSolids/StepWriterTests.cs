using BridgeForm.Output.Part21;
using BridgeForm.Output.StepSolids;
using BridgeForm.Tests.Output.Samples;

namespace BridgeForm.Tests.Output.StepSolids;

public sealed class StepWriterTests
{
    private static readonly Lazy<Part21Reader> s_file = new(() => new Part21Reader(Bytes(SampleModel.Small)));

    internal static byte[] Bytes(BridgeModel model)
    {
        using var stream = new MemoryStream();
        StepWriter.Write(model, stream);
        return stream.ToArray();
    }

    [Fact]
    public void The_head_names_nobody_and_no_day()
    {
        Assert.StartsWith("ISO-10303-21;\nHEADER;\nFILE_DESCRIPTION(('Footbridge", s_file.Value.Text, StringComparison.Ordinal);
        Assert.Contains(
            "FILE_NAME('model.step','2000-01-01T00:00:00',(''),(''),'BridgeForm','BridgeForm','');\n", s_file.Value.Text,
            StringComparison.Ordinal);
        Assert.EndsWith("ENDSEC;\nEND-ISO-10303-21;\n", s_file.Value.Text, StringComparison.Ordinal);
    }

    [Fact]
    public void Every_reference_is_to_an_entity_before_it() => Assert.All(
        s_file.Value.Entities, e => Assert.All(Part21Reader.Uses(e.Value), used => Assert.InRange(used, 1, e.Key - 1)));

    [Fact]
    public void A_product_a_mark_and_an_instance_a_part()
    {
        var model = SampleModel.Small;
        var products = s_file.Value.Of("PRODUCT").Select(p => Part21Reader.Texts(p)[0]).ToList();
        string[] left = [.. Stretches("left")], right = [.. Stretches("right")];
        Assert.Equal(
            [.. model.Pieces.Select(p => p.Mark), .. left, "rope-left", .. right, "rope-right", model.Parameters.Name], products);
        var parts = s_file.Value.Of("NEXT_ASSEMBLY_USAGE_OCCURRENCE").Select(Part21Reader.Texts).ToList();
        Assert.Equal(
            [.. left, .. right, .. model.Pieces.SelectMany(p => p.Occurrences).Select(o => o.Id), "ropes/left", "ropes/right"],
            parts.Select(p => p[1]));

        IEnumerable<string> Stretches(string name) => Enumerable.Range(1, model.RopeLines[0].Points.Length - 1)
            .Select(i => $"ropes/{name}/{i}, ends square");
        Assert.Equal(parts.Count, parts.Select(p => p[0]).Distinct().Count());
        Assert.Equal(
            model.Pieces.Length + model.RopeLines.Sum(r => r.Points.Length - 1), s_file.Value.Of("MANIFOLD_SOLID_BREP").Count);
    }

    [Fact]
    public void Units_are_millimetres_and_kilograms_and_parts_tell_mass_and_wood()
    {
        Assert.Contains("(LENGTH_UNIT()NAMED_UNIT(*)SI_UNIT(.MILLI.,.METRE.))", s_file.Value.Entities.Values);
        var masses = s_file.Value.Of("MEASURE_REPRESENTATION_ITEM");
        Assert.Equal(SampleModel.Small.Pieces.Length + SampleModel.Small.RopeLines.Length, masses.Count);
        var mass = Numbers(masses[0], "MASS_MEASURE(");
        Assert.Equal(SampleModel.Small.Pieces[0].Mass, mass, 1e-8);
        Assert.Contains("DESCRIPTIVE_REPRESENTATION_ITEM('material name','southern-pine no1, treated')", s_file.Value.Entities.Values);
    }

    /// <summary>Such as a mark, or a rope: two products of one name, two identifiers.</summary>
    [Theory]
    [InlineData(null)]
    [InlineData("rope-left")]
    public void A_bridge_may_be_called_like_one_of_its_parts(string? part)
    {
        var name = part ?? StepCase.Whole.Pieces[0].Mark;
        var model = StepCase.Whole with { Parameters = StepCase.Whole.Parameters with { Name = name } };
        var products = new Part21Reader(Bytes(model)).Of("PRODUCT").Select(Part21Reader.Texts).ToList();
        Assert.Equal(products.Count, products.Select(p => p[0]).Distinct().Count());
        Assert.Equal(2, products.Count(p => p[1] == name));
        Assert.Equal(["assembly " + name, name], products[^1][..2]);
    }

    [Fact]
    public void Same_model_same_bytes_and_another_name_other_identifiers()
    {
        Assert.Equal(Bytes(SampleModel.Small), Bytes(SampleModel.Small));
        var named = SampleModel.Small with { Parameters = SampleModel.Parameters with { Name = "Another" } };
        Assert.Empty(Identifiers(s_file.Value).Intersect(Identifiers(new Part21Reader(Bytes(named)))));
    }

    /// <summary>Every digit of an identifier but the first carries six bits; the first has two, so that it is 0 to 3.</summary>
    [Fact]
    public void Identifiers_have_22_digits_of_128_bits() => Assert.All(Identifiers(s_file.Value), id =>
    {
        Assert.Equal(22, id.Length);
        Assert.InRange(id[0], '0', '3');
        Assert.All(id, c => Assert.True(char.IsAsciiLetterOrDigit(c) || c is '_' or '$', id));
    });

    [Theory]
    [InlineData("plain", "'plain'")]
    [InlineData("the owner's \\ path", "'the owner''s \\\\ path'")]
    [InlineData("Erle \u00fc", @"'Erle \X2\00FC\X0\'")]
    [InlineData("\U0001F332\n", @"'\X4\0001F332\X0\\X2\000A\X0\'")]
    public void Texts_are_written_in_ASCII(string text, string quoted) => Assert.Equal(quoted, Part21Text.Quoted(text));

    private static List<string> Identifiers(Part21Reader file) =>
        [.. file.Of("NEXT_ASSEMBLY_USAGE_OCCURRENCE").Select(u => Part21Reader.Texts(u)[0])];

    private static double Numbers(string entity, string before)
    {
        var from = entity.IndexOf(before, StringComparison.Ordinal) + before.Length;
        return double.Parse(entity[from..entity.IndexOf(')', from)], System.Globalization.CultureInfo.InvariantCulture);
    }
}
