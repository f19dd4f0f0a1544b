using BridgeForm.Output.Part21;
using BridgeForm.Quantities;
using BridgeForm.Solids;

namespace BridgeForm.Output.StepSolids;

/// <summary>A product, and the shape of it.</summary>
/// <param name="Definition">Its product_definition.</param>
/// <param name="Shape">Its shape representation.</param>
/// <param name="Origin">The axes of that.</param>
internal readonly record struct StepProduct(Ref Definition, Ref Shape, Ref Origin);

/// <summary>
/// Products, their properties, and how one stands in another (ISO 10303-242:2014, and the recommended practices for assemblies and
/// for properties that readers follow; from memory, proved by outside readers in the tests).
/// </summary>
internal sealed class StepProducts
{
    private const string Protocol = "ap242_managed_model_based_3d_engineering";

    private readonly string _bridge;
    private readonly HashSet<string> _ids = new(StringComparer.Ordinal);
    private readonly Part21File _file;
    private readonly StepBodies _bodies;
    private readonly Ref _productContext;
    private readonly Ref _definitionContext;
    private readonly Ref _context;
    private readonly Ref _kilogram;

    /// <summary>Writes what all products share: application, units, and how far apart places may lie that are one.</summary>
    public StepProducts(Part21File file, StepBodies bodies, string bridge)
    {
        (_file, _bodies, _bridge) = (file, bodies, bridge);
        var application = file.Add($"APPLICATION_CONTEXT('managed model based 3d engineering')");
        file.Add($"APPLICATION_PROTOCOL_DEFINITION('international standard',{Protocol},2014,{application})");
        _productContext = file.Add($"PRODUCT_CONTEXT('',{application},'mechanical')");
        _definitionContext = file.Add($"PRODUCT_DEFINITION_CONTEXT('part definition',{application},'design')");
        var length = file.Add($"(LENGTH_UNIT()NAMED_UNIT(*)SI_UNIT(.MILLI.,.METRE.))");
        var angle = file.Add($"(NAMED_UNIT(*)PLANE_ANGLE_UNIT()SI_UNIT($,.RADIAN.))");
        var solid = file.Add($"(NAMED_UNIT(*)SI_UNIT($,.STERADIAN.)SOLID_ANGLE_UNIT())");
        _kilogram = file.Add($"(MASS_UNIT()NAMED_UNIT(*)SI_UNIT(.KILO.,.GRAM.))");
        var near = Tolerances.Corner / Rounding.Millimetre;
        var apart = file.Add($"UNCERTAINTY_MEASURE_WITH_UNIT(LENGTH_MEASURE({near}),{length},'distance_accuracy_value','')");
        _context = file.Add($"(GEOMETRIC_REPRESENTATION_CONTEXT(3)GLOBAL_UNCERTAINTY_ASSIGNED_CONTEXT(({apart}))"
            + $"GLOBAL_UNIT_ASSIGNED_CONTEXT(({length},{angle},{solid}))REPRESENTATION_CONTEXT('',''))");
    }

    /// <summary>A part of one body.</summary>
    public StepProduct Part(string id, string description, Ref solid)
    {
        var origin = _bodies.Axes(Vector3d.Zero, Vector3d.UnitZ, Vector3d.UnitX);
        Ref[] items = [origin, solid];
        return Product(id, description, "part", _file.Add($"ADVANCED_BREP_SHAPE_REPRESENTATION({id},{items},{_context})"), origin);
    }

    /// <summary>What parts stand in, each in its place, under the name of that place.</summary>
    /// <param name="id">Its name.</param>
    /// <param name="description">In a person's words.</param>
    /// <param name="path">Where in the model it is, for the identifiers of its parts; empty for the whole bridge.</param>
    /// <param name="parts">What stands in it.</param>
    public StepProduct Assembly(
        string id, string description, string path, IReadOnlyCollection<(StepProduct Part, string Name, Placement Place)> parts)
    {
        var origin = _bodies.Axes(Vector3d.Zero, Vector3d.UnitZ, Vector3d.UnitX);
        Ref[] places = [.. parts.Select(p => _bodies.Axes(p.Place.Origin, p.Place.Z, p.Place.X))];
        Ref[] items = [origin, .. places];
        var whole = Product(id, description, "assembly", _file.Add($"SHAPE_REPRESENTATION({id},{items},{_context})"), origin);
        foreach (var ((part, name, _), place) in parts.Zip(places))
        {
            Instance(whole, part, ModelPath.Identifier(_bridge, path + name), name, place);
        }

        return whole;
    }

    /// <summary>
    /// A part of several bodies, each a product of its own, so that readers which know colours of products alone show them.
    /// </summary>
    public StepProduct Together(string id, string description, IReadOnlyCollection<(string Name, string Description, Ref Solid)> bodies) =>
        Assembly(id, description, id + "/", [.. bodies.Select(b => (Part(b.Name, b.Description, b.Solid), b.Name, Placement.Identity))]);

    /// <summary>A property of a product that is a text.</summary>
    public void Text(StepProduct product, string property, string name, string text) =>
        Property(product, property, name, _file.Add($"DESCRIPTIVE_REPRESENTATION_ITEM({name},{text})"));

    /// <summary>A product's mass, kilograms.</summary>
    public void Mass(StepProduct product, string what, double mass) => Property(
        product, what, "mass", _file.Add($"MEASURE_REPRESENTATION_ITEM('mass',MASS_MEASURE({mass}),{_kilogram})"));

    /// <summary>The colours of all bodies.</summary>
    public void Colours(IReadOnlyCollection<Ref> styled) =>
        _file.Add($"MECHANICAL_DESIGN_GEOMETRIC_PRESENTATION_REPRESENTATION('',{styled},{_context})");

    private StepProduct Product(string id, string description, string category, Ref shape, Ref origin)
    {
        // A bridge may be called like one of its parts, which come before it.
        var own = id;
        while (!_ids.Add(own))
        {
            own = $"{category} {own}";
        }

        var product = _file.Add($"PRODUCT({own},{id},{description},({_productContext}))");
        _file.Add($"PRODUCT_RELATED_PRODUCT_CATEGORY({category},$,({product}))");
        var formation = _file.Add($"PRODUCT_DEFINITION_FORMATION('','',{product})");
        var definition = _file.Add($"PRODUCT_DEFINITION('design','',{formation},{_definitionContext})");
        var defined = _file.Add($"PRODUCT_DEFINITION_SHAPE('','',{definition})");
        _file.Add($"SHAPE_DEFINITION_REPRESENTATION({defined},{shape})");
        return new StepProduct(definition, shape, origin);
    }

    private void Instance(StepProduct whole, StepProduct part, string id, string name, Ref place)
    {
        var use = _file.Add($"NEXT_ASSEMBLY_USAGE_OCCURRENCE({id},{name},'',{whole.Definition},{part.Definition},{name})");
        var shape = _file.Add($"PRODUCT_DEFINITION_SHAPE('placement','',{use})");
        var move = _file.Add($"ITEM_DEFINED_TRANSFORMATION('','',{part.Origin},{place})");
        var relation = _file.Add($"(REPRESENTATION_RELATIONSHIP('','',{part.Shape},{whole.Shape})"
            + $"REPRESENTATION_RELATIONSHIP_WITH_TRANSFORMATION({move})SHAPE_REPRESENTATION_RELATIONSHIP())");
        _file.Add($"CONTEXT_DEPENDENT_SHAPE_REPRESENTATION({relation},{shape})");
    }

    private void Property(StepProduct product, string property, string name, Ref item)
    {
        var definition = _file.Add($"PROPERTY_DEFINITION({property},{name},{product.Definition})");
        var representation = _file.Add($"REPRESENTATION({name},({item}),{_context})");
        _file.Add($"PROPERTY_DEFINITION_REPRESENTATION({definition},{representation})");
    }
}
