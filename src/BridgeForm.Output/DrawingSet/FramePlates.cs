using System.Globalization;
using BridgeForm.Frames;
using BridgeForm.Output.Drawing;
using BridgeForm.Project;
using BridgeForm.Quantities;
using BridgeForm.Roles;

namespace BridgeForm.Output.DrawingSet;

/// <summary>Steel plates of a frame's joints: their outlines in the frame's view, and how their bolts are set out.</summary>
internal static class FramePlates
{
    /// <summary>Outlines of all plates; those on the face that is looked at lie on those behind.</summary>
    public static void Draw(DrawingContext context, Canvas canvas, ViewMap map, FrameDrawing drawing, int frame)
    {
        var pose = context.Layout.Poses[frame];
        foreach (var corners in JointSteel.Outlines(context.Layout.Parameters, pose))
        {
            canvas.Add(new SheetPolyline(
                PageLayers.Layout,
                [.. corners.Select(drawing.Of).Select(map.Of).Select(p => new SheetVertex(p.X, p.Y))],
                Closed: true));
        }
    }

    /// <summary>How bolts and plates are set out; null where the file describes no plates.</summary>
    public static FlowTable? Table(DrawingContext context)
    {
        var frames = context.Layout.Parameters.Frames;
        var plated = frames.Joints.Where(j => j.Plates is not null).ToList();
        return plated.Count == 0
            ? null
            : new FlowTable(
                "Joints of posts and braces: plates and bolts",
                "Alike left and right, as mirror images, and on both faces. Bolts of the part that ends in the joint lie along its axis, "
                    + "from its cut on; those of the part it ends on in lines along that, their middle from where the axis, drawn on, "
                    + "meets its face. Plates: profiles/. A licensed engineer confirms each joint.",
                [new("Joint"), new("Plate"), new("Bolts in the part that ends"), new("Bolts in the part it ends on")],
                [.. plated.Select(j => Row(j, context.Text))]);
    }

    private static FlowRow Row(JointParameters joint, DrawingText text)
    {
        var plates = joint.Plates!;
        var isHead = joint.Place == JointPlace.BraceHead;
        var (strut, carrier) = (joint.Place == JointPlace.PostFoot ? Role.Post : Role.Brace, isHead ? Role.Post : Role.Base);
        var shift = Math.Abs(plates.Shift) < Tolerances.Seating
            ? "on the axis"
            : $"{text.Size(Math.Abs(plates.Shift))} {Way(isHead, plates.Shift > 0)} the axis";
        return new(
        [
            joint.Name,
            $"{text.Size(plates.Width)} x {text.Size(plates.Length)} x {text.Size(plates.Thickness)}",
            $"{Bolts(plates.Strut, strut, text)}; first {text.Size(plates.End)} from the cut",
            $"{Bolts(plates.Carrier, carrier, text)}; middle {text.Size(plates.Depth)} from the face, {shift}",
        ]);
    }

    private static string Way(bool isHead, bool isPositive) =>
        isHead ? isPositive ? "above" : "below" : isPositive ? "outward of" : "inward of";

    private static string Bolts(BoltPattern bolts, Role role, DrawingText text) => string.Create(
        CultureInfo.InvariantCulture,
        $"{RoleTable.Of(role).Printed}: {bolts.Total} of {text.Size(bolts.Bolt)}, holes {text.Size(bolts.Hole)}; {bolts.Count} in a line, ")
        + $"{text.Size(bolts.Spacing)} apart" + (bolts.Lines > 1 ? $"; two lines {text.Size(bolts.Apart)} apart" : "");
}
