using System.Collections.Immutable;
using BridgeForm.Solids;

namespace BridgeForm.Output.Brep;

/// <summary>A face of a solid may have several outer loops; files want one a face.</summary>
internal static class FaceRegions
{
    /// <summary>The face's parts: of each its outer loop, then its holes, as vertex indices.</summary>
    public static IEnumerable<ImmutableArray<ImmutableArray<int>>> Of(Solid solid, Face face)
    {
        if (face.Loops.Length == 1)
        {
            return [face.Loops];
        }

        var flat = new FlatLoops(solid, face);
        var outer = face.Loops.Where(flat.IsOuter).ToList();
        var holes = face.Loops.Where(l => !flat.IsOuter(l)).ToLookup(h => outer.Count == 1 ? 0 : flat.AroundOf(h, outer));
        return outer.Select((loop, i) => ImmutableArray.Create(loop).AddRange(holes[i]));
    }

    /// <summary>A face's loops in its own plane.</summary>
    private sealed class FlatLoops
    {
        private readonly Solid _solid;
        private readonly Vector3d _across;
        private readonly Vector3d _up;

        public FlatLoops(Solid solid, Face face)
        {
            _solid = solid;
            var normal = face.Plane.Normal;
            _across = normal.Cross(Math.Abs(normal.X) < Math.Abs(normal.Y) ? Vector3d.UnitX : Vector3d.UnitY).Normalized();
            _up = normal.Cross(_across);
        }

        public bool IsOuter(ImmutableArray<int> loop)
        {
            var area = 0.0;
            var (px, py) = At(loop[^1]);
            foreach (var v in loop)
            {
                var (x, y) = At(v);
                area += (px * y) - (x * py);
                (px, py) = (x, y);
            }

            return area > 0;
        }

        /// <summary>
        /// Index of the outer loop around a hole. Loops may touch at a corner, so the middle of an edge is looked
        /// for.
        /// </summary>
        public int AroundOf(ImmutableArray<int> hole, List<ImmutableArray<int>> outer)
        {
            var ((ax, ay), (bx, by)) = (At(hole[0]), At(hole[1]));
            var around = outer.FindIndex(loop => Contains(loop, (ax + bx) / 2, (ay + by) / 2));
            return around >= 0 ? around : throw new InvalidOperationException("A hole of a face lies in none of its outer loops.");
        }

        private bool Contains(ImmutableArray<int> loop, double x, double y)
        {
            var inside = false;
            var (px, py) = At(loop[^1]);
            foreach (var v in loop)
            {
                var (vx, vy) = At(v);
                inside ^= (py > y) != (vy > y) && x < px + ((y - py) / (vy - py) * (vx - px));
                (px, py) = (vx, vy);
            }

            return inside;
        }

        private (double X, double Y) At(int vertex) => (_solid.Vertices[vertex].Dot(_across), _solid.Vertices[vertex].Dot(_up));
    }
}
