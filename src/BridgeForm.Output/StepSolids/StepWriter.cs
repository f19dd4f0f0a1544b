using BridgeForm.Frames;
using BridgeForm.Output.Brep;
using BridgeForm.Output.Gltf;
using BridgeForm.Output.Part21;
using BridgeForm.Pieces;
using BridgeForm.Roles;
using BridgeForm.Ropes;
using BridgeForm.Solids;

namespace BridgeForm.Output.StepSolids;

/// <summary>
/// Writes the bridge as STEP, AP242: exact solids in millimetres, a product a mark in the piece's own axes, and an assembly with
/// every part in its place. Holes are cylinders.
/// </summary>
public static class StepWriter
{
    private const string Schema = "AP242_MANAGED_MODEL_BASED_3D_ENGINEERING_MIM_LF { 1 0 10303 442 1 1 4 }";

    /// <summary>Writes the file; the stream stays open. Same model, same bytes.</summary>
    public static void Write(BridgeModel model, Stream stream)
    {
        using var file = new Part21File(stream, "model.step", ["Footbridge: one product a mark, millimetres", Caution.Text], Schema);
        var bodies = new StepBodies(file);
        var products = new StepProducts(file, bodies);
        var colours = new StepColours(file);
        List<Ref> styled = [];
        List<(StepProduct Part, string Name, Placement Place)> parts = [];
        foreach (var piece in model.Pieces)
        {
            var solid = bodies.Solid(piece.Mark, RoundedSolid.Build(piece.Shape, piece.Solid));
            styled.Add(colours.Give(solid, GltfMaterials.Of(piece, model.Parameters)));
            var product = products.Part(piece.Mark, RoleTable.Of(piece.Role).Words, [solid]);
            Properties(products, product, model, piece);
            parts.AddRange(piece.Occurrences.Select(o => (product, o.Id, o.Placement)));
        }

        foreach (var rope in model.RopeLines)
        {
            Ref[] solids = [.. Stretches(rope).Select((s, i) => bodies.Solid($"{RopeIds.Of(rope.Name)}/{i + 1}, ends square", s))];
            styled.AddRange(solids.Select(s => colours.Give(s, GltfMaterials.Rope)));
            var product = products.Part($"rope-{rope.Name}", "Wire rope, a cylinder with square ends for each straight piece", solids);
            products.Text(product, "material property", "material name", model.Parameters.Ropes.Rope.Name);
            parts.Add((product, RopeIds.Of(rope.Name), Placement.Identity));
        }

        foreach (var steel in model.Steel())
        {
            Ref[] solids =
                [.. steel.Bodies.Select((b, i) => bodies.Solid($"{steel.Name}/{i + 1}", RoundedSolid.Build(b, b.ToSolid().OrNull!)))];
            styled.AddRange(solids.Select(s => colours.Give(s, GltfMaterials.Rope)));
            var product = products.Part(steel.Name, steel.Words, solids);
            products.Text(product, "material property", "material name", "mild steel, galvanized");
            parts.AddRange(steel.Places.Select(p => (product, p.Id, p.Place)));
        }

        void Add(StandIn shown, string name, int material)
        {
            var solid = bodies.Solid(shown.Id, RoundedSolid.Build(shown.Body, shown.Body.ToSolid().OrNull!));
            styled.Add(colours.Give(solid, material));
            parts.Add((products.Part(name, shown.Words, [solid]), name, shown.Place));
        }

        foreach (var landing in model.Landings())
        {
            Add(landing, StandIns.Landing(landing), GltfMaterials.Treated);
        }

        foreach (var net in model.Nets())
        {
            Add(net, net.Id, GltfMaterials.Rope);
        }

        products.Assembly(model.Parameters.Name, "Footbridge", parts);
        products.Colours(styled);
        file.End();
    }

    private static IEnumerable<ExactBody> Stretches(RopeLine rope) =>
        rope.Points.Zip(rope.Points.Skip(1), (from, to) => RopeBody.Build(from, to, rope.Radius));

    private static void Properties(StepProducts products, StepProduct product, BridgeModel model, Piece piece)
    {
        var stock = model.Parameters.StockNamed(piece.Stock);
        products.Text(product, "material property", "material name", WoodWords.Of(stock));
        products.Text(product, "section", "section", piece.Section);
        products.Mass(product, "mass at moisture in service", piece.Mass);
    }
}
