using BridgeForm.Frames;
using BridgeForm.Output.Gltf;
using BridgeForm.Output.Part21;
using BridgeForm.Roles;
using BridgeForm.Solids;

namespace BridgeForm.Output.Ifc;

/// <summary>
/// Writes the bridge as a building model, IFC4 ADD2 TC1 (ISO 16739-1:2018, from memory, proved by an outside reader in the tests):
/// metres, Z up; a site, a building, an assembly a frame and a bay, and the parts in them. Shapes have flat faces.
/// </summary>
public static class IfcWriter
{
    private const string View = "ViewDefinition [ReferenceView_V1.2]";

    /// <summary>Writes the file; the stream stays open. Same model, same bytes.</summary>
    public static void Write(BridgeModel model, Stream stream)
    {
        using var file = new Part21File(stream, "model.ifc", [View, $"Comment [{Caution.Text}]"], "IFC4");
        var shapes = new IfcShapes(file, model.Parameters.Site.North);
        var parts = new IfcParts(file, model.Parameters.Name);
        var place = shapes.Within(shapes.Ground);
        var building = Building(file, parts, shapes, model.Parameters.Name, place);
        var wood = Wood(model, shapes, parts, place);
        var steel = Steel(model, shapes, parts, place);
        var nets = model.Nets().ToLookup(
            n => PartId.OwnerOf(n.Id), n => Shown(n, n.Id, "NETTING", GltfMaterials.Netting), StringComparer.Ordinal);
        var frames = model.Frames.Select(f => f.Name).ToHashSet(StringComparer.Ordinal);
        List<Ref> contained = [];
        foreach (var group in model.Groups)
        {
            var assembly = parts.Assembly(group.Name, frames.Contains(group.Name) ? "FRAME" : "BAY", place);
            contained.Add(assembly);
            parts.Aggregate(group.Name, assembly, [.. group.MemberIds.Select(id => wood[id]), .. steel[group.Name], .. nets[group.Name]]);
        }

        contained.AddRange(Ropes(model, shapes, parts, place));
        contained.AddRange(model.Landings().Select(l => Shown(l, StandIns.Landing(l), "BY OTHERS", GltfMaterials.Treated)));
        if (contained.Count > 0)
        {
            file.Add($"IFCRELCONTAINEDINSPATIALSTRUCTURE({parts.Id("building/contents")},$,$,$,{contained},{building})");
        }

        file.End();

        Ref Shown(StandIn part, string id, string kind, int material) => parts.StandIn(
            id, part.Words, kind, shapes.Within(place, part.Place), shapes.Show(shapes.Solid(material, part.Body.ToSolid().Value)));
    }

    /// <summary>Project, site and building, one in the other.</summary>
    private static Ref Building(Part21File file, IfcParts parts, IfcShapes shapes, string name, Ref place)
    {
        Ref[] units =
        [
            file.Add($"IFCSIUNIT(*,.LENGTHUNIT.,$,.METRE.)"), file.Add($"IFCSIUNIT(*,.AREAUNIT.,$,.SQUARE_METRE.)"),
            file.Add($"IFCSIUNIT(*,.VOLUMEUNIT.,$,.CUBIC_METRE.)"), file.Add($"IFCSIUNIT(*,.PLANEANGLEUNIT.,$,.RADIAN.)"),
            file.Add($"IFCSIUNIT(*,.MASSUNIT.,.KILO.,.GRAM.)"),
        ];
        var measured = file.Add($"IFCUNITASSIGNMENT({units})");
        var project = file.Add($"IFCPROJECT({parts.Id("project")},$,{name},$,$,$,$,({shapes.Space}),{measured})");
        var site = file.Add($"IFCSITE({parts.Id("site")},$,'Site',$,$,{shapes.Ground},$,$,.ELEMENT.,$,$,$,$,$)");
        var building = file.Add($"IFCBUILDING({parts.Id("building")},$,{name},'Footbridge',$,{place},$,$,.ELEMENT.,$,$,$)");
        parts.Aggregate("project", project, [site]);
        parts.Aggregate("site", site, [building]);
        return building;
    }

    /// <summary>Wooden parts by their ids.</summary>
    private static Dictionary<string, Ref> Wood(BridgeModel model, IfcShapes shapes, IfcParts parts, Ref place)
    {
        var wood = new Dictionary<string, Ref>(StringComparer.Ordinal);
        foreach (var piece in model.Pieces)
        {
            var map = shapes.Solid(GltfMaterials.Of(piece, model.Parameters), piece.Solid);
            List<Ref> made = [];
            foreach (var (id, at) in piece.Occurrences)
            {
                made.Add(parts.Wood(id, piece, shapes.Within(place, at), shapes.Show(map)));
                wood.Add(id, made[^1]);
            }

            parts.Describe(piece, model.Parameters.StockNamed(piece.Stock), made);
        }

        return wood;
    }

    /// <summary>Plates and bolts of joints, by their frames.</summary>
    private static ILookup<string, Ref> Steel(BridgeModel model, IfcShapes shapes, IfcParts parts, Ref place)
    {
        List<(string Frame, Ref Part)> all = [];
        foreach (var steel in model.Steel())
        {
            var map = shapes.Solid(GltfMaterials.Rope, steel.Bodies.Select(b => b.ToSolid().Value));
            List<Ref> made = [];
            foreach (var (id, at) in steel.Places)
            {
                made.Add(parts.Steel(id, steel, shapes.Within(place, at), shapes.Show(map)));
                all.Add((PartId.OwnerOf(id), made[^1]));
            }

            parts.Describe(steel, SteelWords.Fasteners(model.Parameters.FastenerMetal), made);
        }

        return all.ToLookup(s => s.Frame, s => s.Part, StringComparer.Ordinal);
    }

    private static List<Ref> Ropes(BridgeModel model, IfcShapes shapes, IfcParts parts, Ref place)
    {
        List<Ref> ropes = [];
        foreach (var rope in model.RopeLines)
        {
            var shown = shapes.Show(shapes.Skin(RopeTube.Build(rope), GltfMaterials.Rope));
            ropes.Add(parts.Rope(rope.Name, shapes.Within(place, Placement.Identity), shown));
        }

        if (ropes.Count > 0)
        {
            parts.Describe(model.Parameters.Ropes, model.RopeMass, ropes);
        }

        return ropes;
    }
}
