using BridgeForm.Solids;
using BridgeForm.Tests.Frames;
using BridgeForm.Tests.Output.Ifc;
using BridgeForm.Tests.Output.StepSolids;

namespace BridgeForm.Tests.Output;

/// <summary>Metal, size and mass of plates, bolts and ropes in files of solids, by hand.</summary>
public sealed class SteelInFilesTests
{
    private const double Inch = 0.0254;

    // Kilograms of a cubic metre of steel: common practice, no source.
    private const double Steel = 7850;

    private static readonly string s_joined =
        JointSteelTests.Text("square").Replace("span: 20 ft, rise: 2 ft", "span: 9 ft", StringComparison.Ordinal);

    private static readonly Lazy<BridgeModel> s_model = new(() => Bridges.Build(s_joined));

    [Theory]
    [InlineData("stainless", "stainless steel")]
    [InlineData("hot-dip-galvanized", "mild steel, hot-dip galvanized")]
    [InlineData(null, "steel, hot-dip galvanized or stainless")]
    public void Plates_and_bolts_are_of_the_metal_that_the_file_says(string? metal, string words)
    {
        var model = Bridges.Build(s_joined + (metal is null ? "" : $"\ntreatment: {{ fasteners: {metal} }}\n"));
        var step = new Part21Reader(StepWriterTests.Bytes(model));
        var names = step.Of("DESCRIPTIVE_REPRESENTATION_ITEM").Select(Part21Reader.Texts).Where(t => t[0] is "material name").ToList();
        Assert.Equal(model.Steel().Length, names.Count(t => t[1] == words));
        Assert.Equal(model.Steel().Length, names.Count(t => t[1].Contains("steel", StringComparison.Ordinal)));
        var ifc = new Part21Reader(IfcWriterTests.Bytes(model));
        var materials = ifc.Of("IFCMATERIAL").Select(m => Part21Reader.Texts(m)[0]);
        Assert.Equal([words, "steel wire rope, galvanized"], materials.Where(t => t.Contains("steel", StringComparison.Ordinal)));

        // In the list of hardware a row says one metal.
        var rows = model.Hardware().Where(h => h.Item.StartsWith("Plates", StringComparison.Ordinal)).ToList();
        Assert.Equal(3, rows.Count);
        Assert.All(rows, r => Assert.StartsWith(
            metal switch { "stainless" => "stainless steel, of at least", null => "mild steel, or stainless", _ => "mild steel, " }, r.Note,
            StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("rope-6x19-iwrc-eips-3/4", "steel wire rope, not galvanized")]
    [InlineData("rope-6x19-iwrc-eips-galvanized-3/4", "steel wire rope, galvanized")]
    public void A_rope_is_called_galvanized_where_it_is(string rope, string words)
    {
        var text = StepCase.Short("site: { span: 9 ft }");
        var model = Bridges.Build(text.Replace("rope-6x19-iwrc-eips-galvanized-3/4", rope, StringComparison.Ordinal));
        var (step, ifc) = (new Part21Reader(StepWriterTests.Bytes(model)), new Part21Reader(IfcWriterTests.Bytes(model)));
        Assert.Equal(2, step.Entities.Values.Count(e => e == $"DESCRIPTIVE_REPRESENTATION_ITEM('metal','{words}')"));
        Assert.Contains($"IFCMATERIAL('{words}',$,$)", ifc.Entities.Values);
        Assert.DoesNotContain(
            [.. step.Of("COLOUR_RGB"), .. ifc.Of("IFCSURFACESTYLE")], e => e.Contains("galvanized", StringComparison.Ordinal));
    }

    /// <summary>
    /// Bolts of 3/8 in through two plates of 1/4 in and a base of 3-1/2 in need 4 + 0.083 + 21/64 + 1/8 in: 5 in are sold. Their mass is
    /// that of 5 in of round bar, a head of 15/64 in and a nut of 21/64 in that measure 1.6 squares of the diameter, and a washer of 4.
    /// </summary>
    [Fact]
    public void A_bolt_has_its_size_and_mass()
    {
        const double D = 3.0 / 8 * Inch;
        var mass = Steel * D * D * ((Math.PI / 4 * 5) + (1.6 * (15.0 + 21) / 64) + (4 * 0.083)) * Inch;
        var ifc = new Part21Reader(IfcWriterTests.Bytes(s_model.Value));
        Assert.All(ifc.Of("IFCMECHANICALFASTENER"), b => Assert.Contains(",0.009525,0.127,.BOLT.)", b, StringComparison.Ordinal));
        Assert.Equal(mass, Mass(ifc, "bolt-post-foot"), 1e-9);
        Assert.Equal(mass, Step("bolt-post-foot", "mass with washer and nut"), 1e-9);
        Assert.Contains("DESCRIPTIVE_REPRESENTATION_ITEM('size','3/8 in x 5 in')", StepFile().Entities.Values);
    }

    [Fact]
    public void A_plate_has_its_size_and_mass()
    {
        var plate = s_model.Value.Steel().Single(s => s.Name is "plate-post-foot");
        var corners = plate.Bodies[0].ToSolid().Value.Vertices;
        double Size(Func<Vector3d, double> axis) => corners.Max(axis) - corners.Min(axis);
        var mass = Steel * Size(c => c.X) * Size(c => c.Y) * Size(c => c.Z);
        Assert.Equal(mass, Mass(new Part21Reader(IfcWriterTests.Bytes(s_model.Value)), "plate-post-foot"), 1e-9);
        Assert.Equal(mass, Step("plate-post-foot", "mass as bought, before its holes"), 1e-9);
    }

    /// <summary>
    /// Wire rope 6x19 of 3/4 in with a steel core weighs 1.04 lb/ft (from memory, as the rope table has it). The rope is a parabola of 9 ft
    /// and 6 % sag, L(1 + 8/3·0.06²), to a thousandth of its length.
    /// </summary>
    [Fact]
    public void A_rope_has_its_mass()
    {
        var model = StepCase.Whole;
        var length = 9 * (1 + (8.0 / 3 * 0.06 * 0.06));
        var mass = 1.04 * 0.45359237 * length;
        Assert.InRange(Mass(new Part21Reader(IfcWriterTests.Bytes(model)), "BridgeForm_Rope"), 0.997 * mass, 1.003 * mass);
        var step = new Part21Reader(StepWriterTests.Bytes(model));
        var found = Masses(step, "mass from support to support");
        Assert.Equal(2, found.Count);
        Assert.All(found, m => Assert.InRange(m, 0.997 * mass, 1.003 * mass));
    }

    private static Part21Reader StepFile() => new(StepWriterTests.Bytes(s_model.Value));

    // Properties come right after their product.
    private static double Step(string product, string property)
    {
        var file = StepFile();
        var at = file.Entities.Single(e => e.Value.StartsWith($"PRODUCT('{product}',", StringComparison.Ordinal)).Key;
        return Masses(file, property, at)[0];
    }

    private static List<double> Masses(Part21Reader file, string property, int from = 0) =>
    [
        .. file.Entities.Where(e => e.Key > from)
            .Where(e => e.Value.StartsWith($"PROPERTY_DEFINITION('{property}','mass'", StringComparison.Ordinal))
            .OrderBy(e => e.Key).Select(e => Number(file.Entities[e.Key - 1], "MASS_MEASURE(")),
    ];

    // Of the property set of that name, or of the one that tells that mark.
    private static double Mass(Part21Reader file, string name)
    {
        var set = file.Of("IFCPROPERTYSET").Select(s => (Text: s, Parts: Part21Reader.Uses(s).Select(u => file.Entities[u]).ToList()))
            .First(s => s.Text.Contains($"'{name}'", StringComparison.Ordinal)
                || s.Parts.Exists(p => p.StartsWith($"IFCPROPERTYSINGLEVALUE('Mark',$,IFCLABEL('{name}')", StringComparison.Ordinal)));
        return Number(set.Parts.Single(p => p.StartsWith("IFCPROPERTYSINGLEVALUE('Mass'", StringComparison.Ordinal)), "IFCMASSMEASURE(");
    }

    private static double Number(string entity, string before)
    {
        var from = entity.IndexOf(before, StringComparison.Ordinal) + before.Length;
        return double.Parse(entity[from..entity.IndexOf(')', from)], System.Globalization.CultureInfo.InvariantCulture);
    }
}
