using BridgeForm.Project;
using BridgeForm.Roles;
using BridgeForm.Solids;

namespace BridgeForm.Frames;

/// <summary>Caps, flat on the posts' heads. X from A to B, Z the upper face.</summary>
internal static class GuardCaps
{
    /// <summary>The cap of one side of a bay, centred on the heads' centre lines.</summary>
    public static Member Lay(BridgeLayout layout, int bay, Side side)
    {
        var guard = layout.Parameters.Guard;
        var post = layout.Parameters.Frames.Post;
        var along = layout.Caps.Direction(bay);
        var up = Vector3d.UnitZ.Cross(along);
        var origin = layout.Caps.Points[bay - 1]
            + (guard.Cap.Thickness / 2 * up)
            + new Vector3d(0, 0, side.Sign() * Uprights.AxisHead(post));
        var placement = Placement.FromLengthAndThickness(origin, along, up);
        var overrun = post.Section.Thickness / 2;
        var shape = LongPart.Shape(
            guard.Cap,
            placement,
            EndPlanes.AtStart(layout.Poses[bay - 1], 0, overrun),
            EndPlanes.AtFinish(layout.Poses[bay], 0, overrun));
        return new Member(
            new PartId(FramePoses.BayName(bay, layout.Bays), Role.Cap, side),
            layout.Parameters.StockOf(Role.Cap),
            guard.Cap.Name,
            placement,
            shape);
    }
}
