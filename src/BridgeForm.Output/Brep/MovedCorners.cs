using BridgeForm.Quantities;
using BridgeForm.Solids;

namespace BridgeForm.Output.Brep;

/// <summary>Where the solid's corners lie once its holes are round.</summary>
internal static class MovedCorners
{
    // Of the radius. Corners of the prism stand 0.3 % outside the circle; one that moves further is one where prism and circle
    // graze an edge, each in its own way.
    private const double Furthest = 0.1;

    /// <summary>
    /// Places of all corners; null for those between two sides of one wall, which are corners no more. A hole is made flat where a
    /// corner's place is not plain.
    /// </summary>
    public static Vector3d?[] Find(HoleWalls walls, HashSet<int> flat)
    {
        var faces = new List<int>?[walls.Solid.Vertices.Length];
        for (var f = 0; f < walls.Faces.Length; f++)
        {
            foreach (var v in walls.Faces[f].Loops.SelectMany(l => l))
            {
                (faces[v] ??= []).Add(f);
            }
        }

        return [.. faces.Select((around, v) => Place(walls, walls.Solid.Vertices[v], around ?? [], flat))];
    }

    private static Vector3d? Place(HoleWalls walls, Vector3d place, List<int> faces, HashSet<int> flat)
    {
        var holes = faces.Where(f => !walls.IsFlat(f)).Select(walls.HoleOf).Distinct().ToList();
        if (holes.Count == 0)
        {
            return place;
        }

        var planes = Distinct(faces.Where(walls.IsFlat).Select(f => walls.Faces[f].Plane));
        var isOnSeam = faces.Where(f => !walls.IsFlat(f)).Select(walls.HalfOf).Distinct().Count() == 2;
        if (holes.Count == 1 && planes.Count == 1 && !isOnSeam)
        {
            return null;
        }

        var hole = walls.Holes[holes[0]];
        var moved = (holes.Count, planes.Count, isOnSeam) switch
        {
            (1, 1, true) => hole.SeamOn(planes[0], place),
            (1, >= 2, false) => hole.WallOn(planes[0], planes[1], place),
            _ => null,
        };
        if (moved is not { } at || (at - place).Length > Furthest * hole.Radius
            || planes.Exists(p => Math.Abs(p.SignedDistance(at)) > Tolerances.Planarity))
        {
            flat.UnionWith(holes);
            return place;
        }

        return at;
    }

    private static List<Plane> Distinct(IEnumerable<Plane> planes)
    {
        var distinct = new List<Plane>();
        foreach (var plane in planes)
        {
            if (!distinct.Exists(p => (p.Normal - plane.Normal).Length < Tolerances.Parallel))
            {
                distinct.Add(plane);
            }
        }

        return distinct;
    }
}
