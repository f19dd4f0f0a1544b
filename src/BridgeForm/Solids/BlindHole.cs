using System.Collections.Immutable;
using System.Runtime.InteropServices;
using BridgeForm.Quantities;

namespace BridgeForm.Solids;

/// <summary>
/// A blind hole drilled where nothing else is near: the same body as taking its prism away by planes, vertex for vertex, put
/// together at once. What is not plainly clear of everything is left to the careful way.
/// </summary>
internal static class BlindHole
{
    // A tenth of a millimetre: far above the microns by which cutters are grown where faces would meet.
    private const double Clear = 1e-4;

    // Smaller bits, and shallower holes, nobody drills; their corners would lie near each other.
    private const double Smallest = 1e-3;

    private const int Sides = StockCutters.HoleSides;

    /// <summary>The solid with the hole in it, or null when that is not plain.</summary>
    /// <param name="solid">The stick, with what was cut out of it before.</param>
    /// <param name="drill">Where the hole is.</param>
    public static Solid? TryDrill(Solid solid, Drill drill)
    {
        if (drill.Depth < Smallest || drill.Radius < Smallest)
        {
            return null;
        }

        var entry = -1;
        for (var f = 0; f < solid.Faces.Length; f++)
        {
            if (!MayMeet(solid, solid.Faces[f], drill))
            {
                continue;
            }

            // Anything but the one face that the bit enters, and there by its middle, is for the careful way.
            if (entry >= 0 || !drill.Enters(solid.Faces[f].Plane) || !HoldsAllOf(solid, solid.Faces[f], drill))
            {
                return null;
            }

            entry = f;
        }

        return entry < 0 ? null : Drilled(solid, drill, entry);
    }

    // Boxes around the face and around the hole, a little larger.
    private static bool MayMeet(Solid solid, Face face, Drill drill)
    {
        var (min, max) = (drill.Local(solid.Vertices[face.Loops[0][0]]), drill.Local(solid.Vertices[face.Loops[0][0]]));
        foreach (var loop in face.Loops)
        {
            foreach (var v in loop)
            {
                var p = drill.Local(solid.Vertices[v]);
                min = new Vector3d(Math.Min(min.X, p.X), Math.Min(min.Y, p.Y), Math.Min(min.Z, p.Z));
                max = new Vector3d(Math.Max(max.X, p.X), Math.Max(max.Y, p.Y), Math.Max(max.Z, p.Z));
            }
        }

        var reach = drill.Radius + Clear;
        return min.X < reach && max.X > -reach && min.Y < reach && max.Y > -reach && min.Z < drill.Depth + Clear && max.Z > -Clear;
    }

    /// <summary>Whether the hole's rim lies inside the face, away from its edges.</summary>
    private static bool HoldsAllOf(Solid solid, Face face, Drill drill)
    {
        var reach = drill.Radius + Clear;
        var inside = false;
        foreach (var loop in face.Loops)
        {
            var a = drill.Local(solid.Vertices[loop[^1]]);
            foreach (var v in loop)
            {
                var b = drill.Local(solid.Vertices[v]);
                if (FromMiddle(a, b) <= reach)
                {
                    return false;
                }

                inside ^= (a.Y > 0) != (b.Y > 0) && a.X - (a.Y / (b.Y - a.Y) * (b.X - a.X)) > 0;
                a = b;
            }
        }

        return inside;
    }

    /// <summary>Distance of an edge from the hole's axis, metres.</summary>
    private static double FromMiddle(Vector3d a, Vector3d b)
    {
        var (x, y) = (b.X - a.X, b.Y - a.Y);
        var square = (x * x) + (y * y);
        var share = square > 0 ? Math.Clamp(-((a.X * x) + (a.Y * y)) / square, 0, 1) : 0;
        var (dx, dy) = (a.X + (share * x), a.Y + (share * y));
        return Math.Sqrt((dx * dx) + (dy * dy));
    }

    // Rim and bottom run from the first side's edge on: the rim as holes run, the bottom against it.
    private static Solid Drilled(Solid solid, Drill drill, int entry)
    {
        var old = solid.Vertices.Length;
        var points = new Vector3d[old + (2 * Sides)];
        solid.Vertices.CopyTo(points);
        var (rim, bottom) = (new int[Sides], new int[Sides]);
        for (var i = 0; i < Sides; i++)
        {
            (rim[i], bottom[i]) = (old + i, old + Sides + i);
            points[rim[i]] = drill.Corner(i, 0);
            points[bottom[i]] = drill.Corner(1 - i, drill.Depth);
        }

        var faces = new Face[solid.Faces.Length + Sides + 1];
        solid.Faces.CopyTo(faces);
        faces[entry] = faces[entry] with { Loops = faces[entry].Loops.Add(ImmutableCollectionsMarshal.AsImmutableArray(rim)) };
        var next = solid.Faces.Length;
        faces[next++] = new Face(drill.Planes[0].Flipped(), FaceOrigin.Hole, [ImmutableCollectionsMarshal.AsImmutableArray(bottom)]);
        for (var s = 0; s < Sides; s++)
        {
            var (from, to) = drill.Ends(StockCutters.SideOrder[s]);
            faces[next++] = new Face(
                drill.Planes[s + 1].Flipped(), FaceOrigin.Hole, [[rim[to], rim[from], bottom[Under(from)], bottom[Under(to)]]]);
        }

        return Packed(points, faces);
    }

    // Of the bottom's corners the one under a corner of the rim.
    private static int Under(int corner) => (1 - corner + Sides) % Sides;

    /// <summary>Vertices in the order in which faces use them, as every solid has them.</summary>
    private static Solid Packed(Vector3d[] points, Face[] faces)
    {
        var numbers = new int[points.Length];
        var vertices = new Vector3d[points.Length];
        var used = 0;
        for (var f = 0; f < faces.Length; f++)
        {
            var loops = new ImmutableArray<int>[faces[f].Loops.Length];
            for (var l = 0; l < loops.Length; l++)
            {
                var loop = faces[f].Loops[l].AsSpan();
                var moved = new int[loop.Length];
                for (var i = 0; i < moved.Length; i++)
                {
                    ref var number = ref numbers[loop[i]];
                    if (number == 0)
                    {
                        vertices[used] = points[loop[i]];
                        number = ++used;
                    }

                    moved[i] = number - 1;
                }

                loops[l] = ImmutableCollectionsMarshal.AsImmutableArray(moved);
            }

            faces[f] = faces[f] with { Loops = ImmutableCollectionsMarshal.AsImmutableArray(loops) };
        }

        return new Solid(ImmutableCollectionsMarshal.AsImmutableArray(vertices), ImmutableCollectionsMarshal.AsImmutableArray(faces));
    }
}

/// <summary>A blind hole in a stick's own axes.</summary>
internal sealed class Drill
{
    private const int Sides = StockCutters.HoleSides;

    private readonly Vector3d _axis;
    private readonly Vector3d _outward;
    private readonly Vector3d _across;
    private readonly double _half;
    private readonly bool _rimGoesUp;

    /// <summary>Of a hole with a depth.</summary>
    /// <param name="planes">The prism's: its bottom, then its sides in the order of <see cref="StockCutters.SideOrder"/>.</param>
    /// <param name="hole">Where it is drilled.</param>
    /// <param name="axes">Out of the face, across it, and how far the face lies from the stick's axis, metres.</param>
    public Drill(ImmutableArray<Plane> planes, Hole hole, (Vector3d Outward, Vector3d Across, double Half) axes)
    {
        (Planes, Depth) = (planes, hole.Depth!.Value);
        (_outward, _across, _half) = axes;
        _axis = new Vector3d(hole.X, 0, 0) + (hole.Across * _across);
        Radius = StockCutters.Apothem(hole.Diameter / 2) / Elementary.Cos(Math.PI / Sides);

        // Holes run clockwise seen from outside; angles grow from X to across.
        _rimGoesUp = Vector3d.UnitX.Cross(_across).Dot(_outward) < 0;
    }

    /// <summary>Bottom and sides, their normals out of the hole.</summary>
    public ImmutableArray<Plane> Planes { get; }

    /// <summary>Metres.</summary>
    public double Depth { get; }

    /// <summary>Of the prism's corners, metres.</summary>
    public double Radius { get; }

    /// <summary>A point from the hole's axis: along the stick, across it, and down into the wood, metres.</summary>
    public Vector3d Local(Vector3d p) => new(p.X - _axis.X, (p - _axis).Dot(_across), _half - p.Dot(_outward));

    /// <summary>Whether the bit enters a face of this plane.</summary>
    public bool Enters(Plane plane) =>
        (plane.Normal - _outward).Length < Tolerances.Parallel && Math.Abs(plane.Offset - _half) < Tolerances.RoundOff;

    /// <summary>A corner, counted along the rim from the first side's edge, so deep in the wood.</summary>
    public Vector3d Corner(int i, double depth)
    {
        var (sin, cos) = Elementary.SinCos(Math.PI / Sides * (_rimGoesUp ? (2 * i) - 1 : 1 - (2 * i)));
        return _axis + ((_half - depth) * _outward) + (Radius * cos * Vector3d.UnitX) + (Radius * sin * _across);
    }

    /// <summary>The rim's corners at the ends of a side's edge, as the rim runs.</summary>
    public (int From, int To) Ends(int side)
    {
        var from = _rimGoesUp ? side : (Sides - side) % Sides;
        return (from, (from + 1) % Sides);
    }
}
