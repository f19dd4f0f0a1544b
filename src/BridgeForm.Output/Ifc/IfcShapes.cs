using System.Collections.Immutable;
using BridgeForm.Output.Brep;
using BridgeForm.Output.Gltf;
using BridgeForm.Output.Part21;
using BridgeForm.Solids;

namespace BridgeForm.Output.Ifc;

/// <summary>Shapes with flat faces, their colours, and how they stand in their places. Metres.</summary>
internal sealed class IfcShapes
{
    // A nanometre.
    private const int PlaceDecimals = 9;

    private readonly Part21File _file;
    private readonly Ref _body;
    private readonly Ref _origin;
    private readonly Ref _axes;
    private readonly Ref _asItIs;
    private readonly Dictionary<int, Ref> _styles = [];

    /// <summary>Writes what all shapes share: the axes, Z up, and the space they are in.</summary>
    /// <param name="file">Where to.</param>
    /// <param name="north">From the way A to B to north, clockwise as seen from above, radians; null where nobody said.</param>
    public IfcShapes(Part21File file, double? north)
    {
        _file = file;
        _origin = file.Add($"IFCCARTESIANPOINT({Vector3d.Zero})");
        _axes = Axes(Placement.Identity);
        Space = north is { } angle
            ? Bearing(file, _axes, angle)
            : file.Add($"IFCGEOMETRICREPRESENTATIONCONTEXT($,'Model',3,{Quantities.Tolerances.Corner},{_axes},$)");
        _body = file.Add($"IFCGEOMETRICREPRESENTATIONSUBCONTEXT('Body','Model',*,*,*,*,{Space},$,.MODEL_VIEW.,$)");
        _asItIs = file.Add($"IFCCARTESIANTRANSFORMATIONOPERATOR3D($,$,{_origin},$,$)");
        Ground = file.Add($"IFCLOCALPLACEMENT($,{_axes})");
    }

    // True north in the level plane, where y points to the left of the way from A to B.
    private static Ref Bearing(Part21File file, Ref axes, double clockwise)
    {
        var (sin, cos) = Quantities.Elementary.SinCos(clockwise);
        var north = file.Add($"IFCDIRECTION(({cos},{-sin}))");
        return file.Add($"IFCGEOMETRICREPRESENTATIONCONTEXT($,'Model',3,{Quantities.Tolerances.Corner},{axes},{north})");
    }

    /// <summary>The space of the model.</summary>
    public Ref Space { get; }

    /// <summary>The place of the site: the bridge's own origin, Z up.</summary>
    public Ref Ground { get; }

    /// <summary>The same place as another thing's, belonging to it.</summary>
    public Ref Within(Ref place) => _file.Add($"IFCLOCALPLACEMENT({place},{_axes})");

    /// <summary>A place within another thing's, in the bridge's axes.</summary>
    public Ref Within(Ref place, Placement at) => _file.Add($"IFCLOCALPLACEMENT({place},{Axes(Upright(at))})");

    /// <summary>Solids as polygons, to be shown many times as one thing: faces with holes keep them.</summary>
    public Ref Solid(int material, params IEnumerable<Solid> solids) => Map(
        [
            .. solids.Select(solid =>
            {
                var points = Points(solid.Vertices);
                Ref[] faces = [.. solid.Faces.SelectMany(f => FaceRegions.Of(solid, f)).Select(Polygon)];
                return _file.Add($"IFCPOLYGONALFACESET({points},.T.,{faces},$)");
            }),
        ],
        material);

    /// <summary>Triangles as one closed skin.</summary>
    public Ref Skin(TriangleMesh mesh, int material)
    {
        var places = mesh.Positions.Distinct().ToImmutableArray();
        var numbers = places.Select((p, i) => (p, i)).ToDictionary(x => x.p, x => x.i + 1);
        var triangles = mesh.Indices.Select(i => numbers[mesh.Positions[i]]).Chunk(3);
        return Map([_file.Add($"IFCTRIANGULATEDFACESET({Points(places)},$,.T.,{triangles},$)")], material);
    }

    /// <summary>One showing of a shape.</summary>
    public Ref Show(Ref map)
    {
        var item = _file.Add($"IFCMAPPEDITEM({map},{_asItIs})");
        var shown = _file.Add($"IFCSHAPEREPRESENTATION({_body},'Body','MappedRepresentation',({item}))");
        return _file.Add($"IFCPRODUCTDEFINITIONSHAPE($,$,({shown}))");
    }

    private Ref Points(ImmutableArray<Vector3d> places) => _file.Add($"IFCCARTESIANPOINTLIST3D({places.Select(Near)})");

    private static Vector3d Near(Vector3d place) =>
        new(Numbers.Rounded(place.X, PlaceDecimals), Numbers.Rounded(place.Y, PlaceDecimals), Numbers.Rounded(place.Z, PlaceDecimals));

    private Ref Polygon(ImmutableArray<ImmutableArray<int>> region)
    {
        var loops = region.Select(l => l.Select(v => v + 1));
        return region.Length == 1
            ? _file.Add($"IFCINDEXEDPOLYGONALFACE({loops.First()})")
            : _file.Add($"IFCINDEXEDPOLYGONALFACEWITHVOIDS({loops.First()},{loops.Skip(1)})");
    }

    private Ref Map(Ref[] skins, int material)
    {
        foreach (var skin in skins)
        {
            _file.Add($"IFCSTYLEDITEM({skin},({Style(material)}),$)");
        }

        var shape = _file.Add($"IFCSHAPEREPRESENTATION({_body},'Body','Tessellation',{skins})");
        return _file.Add($"IFCREPRESENTATIONMAP({_axes},{shape})");
    }

    private Ref Style(int material)
    {
        if (!_styles.TryGetValue(material, out var style))
        {
            var shown = ScreenColour.Of(GltfMaterials.All[material]);
            var colour = _file.Add($"IFCCOLOURRGB($,{shown.Red},{shown.Green},{shown.Blue})");
            var through = 1 - GltfMaterials.All[material].Opacity;
            var shading = through > 0
                ? _file.Add($"IFCSURFACESTYLESHADING({colour},{through})")
                : _file.Add($"IFCSURFACESTYLESHADING({colour},$)");
            style = _file.Add($"IFCSURFACESTYLE({GltfMaterials.All[material].Name},.BOTH.,({shading}))");
            _styles[material] = style;
        }

        return style;
    }

    private Ref Axes(Placement place)
    {
        var (z, x) = (_file.Add($"IFCDIRECTION({place.Z})"), _file.Add($"IFCDIRECTION({place.X})"));
        return _file.Add($"IFCAXIS2PLACEMENT3D({_file.Add($"IFCCARTESIANPOINT({Near(place.Origin)})")},{z},{x})");
    }

    /// <summary>The bridge has Y up and Z to the right; buildings have Z up.</summary>
    internal static Placement Upright(Placement at)
    {
        static Vector3d Turned(Vector3d v) => new(v.X, -v.Z, v.Y);
        return new Placement(Turned(at.Origin), Turned(at.X), Turned(at.Y), Turned(at.Z));
    }
}
