using BridgeForm.Solids;

namespace BridgeForm.Output.Brep;

/// <summary>A straight stretch of rope as a cylinder, its ends square to it.</summary>
internal static class RopeBody
{
    /// <summary>The cylinder about the line from one point to another, which must not run along Z.</summary>
    public static ExactBody Build(Vector3d from, Vector3d to, double radius)
    {
        var axis = (to - from).Normalized();
        var across = axis.Cross(Vector3d.UnitZ).Normalized();
        return RoundBody.Between(from, axis, across, radius, Plane.Through(from, -axis), Plane.Through(to, axis));
    }
}
