using BridgeForm.Output.Brep;
using BridgeForm.Output.Part21;
using BridgeForm.Quantities;
using BridgeForm.Solids;

namespace BridgeForm.Output.StepSolids;

/// <summary>Writes bodies as manifold boundary representations (ISO 10303-42:2022, clause 5, from memory). Millimetres.</summary>
internal sealed class StepBodies(Part21File file)
{
    // Of a millimetre: corners of a face then lie in its plane to a hundredth of what modellers take as meeting, 1e-7 mm.
    private const int PlaceDecimals = 9;

    private readonly Dictionary<Vector3d, Ref> _directions = [];

    /// <summary>A body under a name.</summary>
    public Ref Solid(string name, ExactBody body)
    {
        Ref[] points = [.. body.Corners.Select(Point)];
        Ref[] corners = [.. points.Select(p => file.Add($"VERTEX_POINT('',{p})"))];
        Ref[] edges =
        [
            .. body.Edges.Select(e => file.Add(
                $"EDGE_CURVE('',{corners[e.From]},{corners[e.To]},{Curve(e, body, points)},.T.)")),
        ];
        Ref[] faces = [.. body.Faces.Select(f => Face(f, edges))];
        return file.Add($"MANIFOLD_SOLID_BREP({name},{file.Add($"CLOSED_SHELL('',{faces})")})");
    }

    /// <summary>A place with the directions of its Z and X axes.</summary>
    public Ref Axes(Vector3d origin, Vector3d z, Vector3d x) => Axes(Point(origin), z, x);

    private Ref Axes(Ref origin, Vector3d z, Vector3d x) =>
        file.Add($"AXIS2_PLACEMENT_3D('',{origin},{Direction(z)},{Direction(x)})");

    private Ref Curve(ExactEdge edge, ExactBody body, Ref[] points)
    {
        if (edge.Arc is not { } arc)
        {
            var way = Direction((body.Corners[edge.To] - body.Corners[edge.From]).Normalized());
            return file.Add($"LINE('',{points[edge.From]},{file.Add($"VECTOR('',{way},1.0)")})");
        }

        var place = Axes(arc.Center, arc.Normal, arc.Major);
        return arc.IsCircle
            ? file.Add($"CIRCLE('',{place},{Length(arc.LongRadius)})")
            : file.Add($"ELLIPSE('',{place},{Length(arc.LongRadius)},{Length(arc.ShortRadius)})");
    }

    private Ref Face(ExactFace face, Ref[] edges)
    {
        var bounds = face.Loops.Select((loop, i) =>
        {
            var uses = loop.Select(use => file.Add($"ORIENTED_EDGE('',*,*,{edges[use.Edge]},{use.Forward})")).ToList();
            var round = file.Add($"EDGE_LOOP('',{uses})");
            return i == 0 ? file.Add($"FACE_OUTER_BOUND('',{round},.T.)") : file.Add($"FACE_BOUND('',{round},.T.)");
        }).ToList();
        return face.Surface switch
        {
            Surface.Flat flat => file.Add($"ADVANCED_FACE('',{bounds},{Plane(flat)},.T.)"),

            // A cylinder's own normal points away from its axis, and a hole's wall looks at it.
            Surface.Round round => file.Add($"ADVANCED_FACE('',{bounds},{Cylinder(round)},{!round.IsHole})"),
            _ => throw new ArgumentOutOfRangeException(nameof(face), face.Surface, "No such surface."),
        };
    }

    private Ref Plane(Surface.Flat flat)
    {
        var normal = flat.Normal;
        var across = normal.Cross(Math.Abs(normal.X) < Math.Abs(normal.Y) ? Vector3d.UnitX : Vector3d.UnitY).Normalized();
        return file.Add($"PLANE('',{Axes(flat.Point, normal, across)})");
    }

    private Ref Cylinder(Surface.Round round) =>
        file.Add($"CYLINDRICAL_SURFACE('',{Axes(round.Point, round.Axis, round.Reference)},{Length(round.Radius)})");

    private Ref Point(Vector3d place)
    {
        var at = new Vector3d(Length(place.X), Length(place.Y), Length(place.Z));
        return file.Add($"CARTESIAN_POINT('',{at})");
    }

    private Ref Direction(Vector3d direction)
    {
        if (!_directions.TryGetValue(direction, out var known))
        {
            _directions[direction] = known = file.Add($"DIRECTION('',{direction})");
        }

        return known;
    }

    // Millimetres of metres.
    private static double Length(double metres) => Numbers.Rounded(metres / Rounding.Millimetre, PlaceDecimals);
}
