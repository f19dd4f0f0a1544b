using BridgeForm.Frames;
using BridgeForm.Output.Brep;
using BridgeForm.Output.Gltf;
using BridgeForm.Output.Part21;
using BridgeForm.Quantities;
using BridgeForm.Roles;
using BridgeForm.Ropes;
using BridgeForm.Solids;

namespace BridgeForm.Output.StepSolids;

/// <summary>The products of a bridge with their bodies, colours and properties, and where each stands.</summary>
internal sealed class StepParts
{
    private const string Material = "material property";
    private const string MaterialName = "material name";

    // In the order of a bolt's bodies.
    private static readonly string[] s_bolt = ["Head", "Shank", "Nut", "End of the shank"];

    private readonly BridgeModel _model;
    private readonly StepBodies _bodies;
    private readonly StepProducts _products;
    private readonly StepColours _colours;
    private readonly List<Ref> _styled = [];
    private readonly List<(StepProduct Part, string Name, Placement Place)> _parts = [];

    /// <summary>None yet.</summary>
    public StepParts(Part21File file, BridgeModel model)
    {
        _model = model;
        _bodies = new StepBodies(file);
        _products = new StepProducts(file, _bodies, model.Parameters.Name);
        _colours = new StepColours(file);
    }

    /// <summary>A product a mark.</summary>
    public void Wood()
    {
        foreach (var piece in _model.Pieces)
        {
            var solid = Body(piece.Mark, RoundedSolid.Build(piece.Shape, piece.Solid), GltfMaterials.Of(piece, _model.Parameters));
            var product = _products.Part(piece.Mark, RoleTable.Of(piece.Role).Words, solid);
            _products.Text(product, Material, MaterialName, WoodWords.Of(_model.Parameters.StockNamed(piece.Stock)));
            _products.Text(product, "section", "section", piece.Section);
            _products.Mass(product, "mass at moisture in service", piece.Mass);
            _parts.AddRange(piece.Occurrences.Select(o => (product, o.Id, o.Placement)));
        }
    }

    /// <summary>A product a rope, of one for each straight piece. What runs on to anchors is not in the model, nor in its mass.</summary>
    public void Ropes()
    {
        var properties = _model.Parameters.Ropes.Rope;
        foreach (var rope in _model.RopeLines)
        {
            var product = _products.Together(
                $"rope-{rope.Name}",
                "Wire rope, a cylinder with square ends for each straight piece",
                [.. Stretches(rope).Select((s, i) => Straight($"{RopeIds.Of(rope.Name)}/{i + 1}, ends square", s))]);
            _products.Text(product, Material, MaterialName, properties.Name);
            _products.Text(product, "metal", "metal", SteelWords.Of(properties));
            _products.Mass(product, "mass from support to support", _model.RopeMass);
            _parts.Add((product, RopeIds.Of(rope.Name), Placement.Identity));
        }

        (string, string, Ref) Straight(string name, ExactBody body) =>
            (name, "Straight piece of wire rope", Body(name, body, GltfMaterials.Rope));
    }

    /// <summary>A product a plate; a bolt of its bodies.</summary>
    public void Steel()
    {
        var words = new QuantityText(_model.Parameters.Units);
        foreach (var steel in _model.Steel())
        {
            Ref[] bodies = [.. steel.Bodies.Select((b, i) => Body($"{steel.Name}/{i + 1}", Rounded(b), GltfMaterials.Rope))];
            var product = steel.IsBolt
                ? _products.Together(steel.Name, steel.Words, [.. bodies.Select((b, i) => ($"{steel.Name}/{i + 1}", s_bolt[i], b))])
                : _products.Part(steel.Name, steel.Words, bodies[0]);
            var size = $"{words.Size(steel.Size.Width)} x {words.Size(steel.Size.Length)}";
            _products.Text(product, Material, MaterialName, SteelWords.Fasteners(_model.Parameters.FastenerMetal));
            _products.Text(product, "size", "size", steel.IsBolt ? size : $"{size} x {words.Size(steel.Size.Thickness)}");
            _products.Mass(product, steel.IsBolt ? "mass with washer and nut" : "mass as bought, before its holes", steel.Mass);
            _parts.AddRange(steel.Places.Select(p => (product, p.Id, p.Place)));
        }
    }

    /// <summary>What is shown beside the bridge's own parts.</summary>
    public void Beside()
    {
        foreach (var landing in _model.Landings())
        {
            Add(landing, StandIns.Landing(landing), GltfMaterials.Treated);
        }

        foreach (var net in _model.Nets())
        {
            Add(net, net.Id, GltfMaterials.Netting);
        }

        void Add(StandIn shown, string name, int material)
        {
            var body = Body(shown.Id, Rounded(shown.Body), material);
            _parts.Add((_products.Part(name, shown.Words, body), name, shown.Place));
        }
    }

    /// <summary>Everything in its place, and all colours.</summary>
    public void End()
    {
        _products.Assembly(_model.Parameters.Name, "Footbridge", "", _parts);
        _products.Colours(_styled);
    }

    private Ref Body(string name, ExactBody body, int material)
    {
        var solid = _bodies.Solid(name, body);
        _styled.Add(_colours.Give(solid, material));
        return solid;
    }

    private static ExactBody Rounded(CutStock shape) => RoundedSolid.Build(shape, shape.ToSolid().OrNull!);

    private static IEnumerable<ExactBody> Stretches(RopeLine rope) =>
        rope.Points.Zip(rope.Points.Skip(1), (from, to) => RopeBody.Build(from, to, rope.Radius));
}
