using BridgeForm.Output.Ifc;
using BridgeForm.Solids;
using BridgeForm.Tests.Output.Samples;
using BridgeForm.Tests.Output.StepSolids;

namespace BridgeForm.Tests.Output.Ifc;

public sealed class IfcWriterTests
{
    private static readonly Lazy<Part21Reader> s_file = new(() => new Part21Reader(Bytes(SampleModel.Small)));

    internal static byte[] Bytes(BridgeModel model)
    {
        using var stream = new MemoryStream();
        IfcWriter.Write(model, stream);
        return stream.ToArray();
    }

    [Fact]
    public void The_head_tells_schema_and_view_and_no_day()
    {
        Assert.Contains("FILE_DESCRIPTION(('ViewDefinition [ReferenceView_V1.2]','Comment [", s_file.Value.Text, StringComparison.Ordinal);
        Assert.Contains("FILE_SCHEMA(('IFC4'));\n", s_file.Value.Text, StringComparison.Ordinal);
        Assert.Contains("FILE_NAME('model.ifc','2000-01-01T00:00:00',(''),(''),", s_file.Value.Text, StringComparison.Ordinal);
        Assert.Empty(s_file.Value.Of("IFCOWNERHISTORY"));
    }

    [Fact]
    public void Every_reference_is_to_an_entity_before_it() => Assert.All(
        s_file.Value.Entities, e => Assert.All(Part21Reader.Uses(e.Value), used => Assert.InRange(used, 1, e.Key - 1)));

    [Fact]
    public void Identifiers_are_all_different_and_stay_when_a_part_is_added()
    {
        var ids = Identifiers(s_file.Value);
        Assert.Equal(ids.Count, ids.Distinct().Count());
        var longer = Identifiers(new Part21Reader(Bytes(SampleModel.WithBays(3, extraParts: 0))));
        Assert.Empty(ids.Except(longer));
    }

    [Fact]
    public void A_model_without_ropes_or_groups_is_a_file_too() => Assert.EndsWith(
        "END-ISO-10303-21;\n", new Part21Reader(Bytes(SampleModel.Small with { Pieces = [], Groups = [], RopeLines = [] })).Text,
        StringComparison.Ordinal);

    /// <summary>Y up becomes Z up by a quarter turn about X: what pointed to the right, +Z, then points to −Y.</summary>
    [Fact]
    public void The_bridge_stands_upright_where_z_is_up()
    {
        var turned = IfcShapes.Upright(Placement.Identity with { Origin = new Vector3d(1, 2, 3) });
        Assert.Equal(new Vector3d(1, -3, 2), turned.Origin);
        Assert.Equal(Vector3d.UnitZ, turned.Y);
        Assert.Equal(turned.Z, turned.X.Cross(turned.Y));
    }

    /// <summary>
    /// North 30 degrees to the right of the way from A to B, which is x; y points to the left: (cos 30, −sin 30). At −90 degrees it is
    /// straight to the left.
    /// </summary>
    [Theory]
    [InlineData("30 deg", 0.866025403784, -0.5)]
    [InlineData("-90 deg", 0, 1)]
    public void True_north_lies_in_the_level_plane(string angle, double x, double y)
    {
        var model = Bridges.Build(StepCase.Short($"site: {{ span: 9 ft, north: {angle} }}"));
        var file = new Part21Reader(Bytes(model));
        var context = Assert.Single(file.Of("IFCGEOMETRICREPRESENTATIONCONTEXT"));
        var north = file.Entities[Part21Reader.Uses(context).Last()];
        Assert.StartsWith("IFCDIRECTION((", north, StringComparison.Ordinal);
        var numbers = north["IFCDIRECTION((".Length..^2].Split(',')
            .Select(n => double.Parse(n, System.Globalization.CultureInfo.InvariantCulture)).ToList();
        Assert.Equal(2, numbers.Count);
        Assert.Equal(x, numbers[0], 1e-11);
        Assert.Equal(y, numbers[1], 1e-11);
        Assert.EndsWith(",$)", Assert.Single(s_file.Value.Of("IFCGEOMETRICREPRESENTATIONCONTEXT")), StringComparison.Ordinal);
    }

    // Whatever has one begins with it.
    private static List<string> Identifiers(Part21Reader file) =>
    [
        .. file.Entities.Values.Where(e => e.Contains("('", StringComparison.Ordinal)).Select(e => Part21Reader.Texts(e)[0])
            .Where(t => t.Length == 22),
    ];
}
