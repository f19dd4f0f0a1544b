using BridgeForm.Project;
using BridgeForm.Roles;
using BridgeForm.Solids;

namespace BridgeForm.Frames;

/// <summary>Holes for the bolts of joints, along the bridge right through; each side the mirror image of the other.</summary>
internal static class JointHoles
{
    /// <summary>Of a base: X to the right, its height in the axes of the piece.</summary>
    public static IEnumerable<Hole> OfBase(FrameParameters frames)
    {
        var made = frames.Base;
        foreach (var layout in Layouts(frames).Where(l => l.Place != JointPlace.BraceHead))
        {
            // A standing base has Z towards A and Y up, a flat one Y towards B and Z up.
            var face = made.Flat ? StockFace.PlusY : StockFace.PlusZ;
            foreach (var sign in (double[])[-1, 1])
            {
                foreach (var bolt in layout.Carrier)
                {
                    yield return new Hole(face, sign * bolt.Z, bolt.N + (made.Depth / 2), layout.Plates.Carrier.Hole, null);
                }
            }
        }
    }

    /// <summary>Of a post or brace: X along its axis from the base's top, Y outward on the right and inward on the left.</summary>
    public static IEnumerable<Hole> OfStrut(FrameParameters frames, Role role, Side side)
    {
        var foot = role == Role.Post ? JointPlace.PostFoot : JointPlace.BraceFoot;
        foreach (var layout in Layouts(frames))
        {
            var isStrut = layout.Place == foot || (role == Role.Brace && layout.Place == JointPlace.BraceHead);
            var bolts = isStrut ? layout.Strut : role == Role.Post && layout.Place == JointPlace.BraceHead ? layout.Carrier : [];
            var hole = (isStrut ? layout.Plates.Strut : layout.Plates.Carrier).Hole;

            // Any plates do: only where the axis begins, and how it leans, is asked for.
            var axis = PlateLayout.Build(frames, foot, layout.Plates);
            foreach (var bolt in bolts)
            {
                var outward = -bolt.From(axis.Meets, axis.Across) * side.Sign();
                yield return new Hole(StockFace.PlusZ, bolt.From(axis.Meets, axis.Along), outward, hole, null);
            }
        }
    }

    /// <summary>Layouts of all joints with plates.</summary>
    public static IEnumerable<PlateLayout> Layouts(FrameParameters frames) => frames.Joints
        .Where(j => j.Plates is not null)
        .Select(j => PlateLayout.Build(frames, j.Place, j.Plates!));
}
