using System.Collections.Immutable;
using BridgeForm.Frames;
using BridgeForm.Output.Drawing;
using BridgeForm.Project;
using BridgeForm.Quantities;
using BridgeForm.Roles;

namespace BridgeForm.Output.Profiles;

/// <summary>
/// The drawing of a joint's plate at true size, for a laser or a hand drill: outline and holes, the end nearest to the carrier on the
/// left, as it lies on the face towards B on the bridge's right.
/// </summary>
public static class PlateSheet
{
    private const double Space = 0.012;

    /// <summary>Names of the files and their drawings, one a kind of plate.</summary>
    /// <param name="parameters">The bridge.</param>
    /// <param name="units">How lengths are written.</param>
    public static ImmutableArray<(string Name, Sheet Sheet)> All(BridgeParameters parameters, DisplayUnits units) =>
    [
        .. parameters.Frames.Joints.Where(j => j.Plates is not null).Select(j => (
            $"plate-{j.Name}", Draw(j.Name, PlateLayout.Build(parameters.Frames, j.Place, j.Plates!), units))),
    ];

    private static Sheet Draw(string name, PlateLayout layout, DisplayUnits units)
    {
        var plates = layout.Plates;
        var (length, width) = (plates.Length, plates.Width);
        var holes = JointSteel.PlateShape(layout).Holes
            .Select(h => (Center: new SheetPoint(h.X + (length / 2), h.Across + (width / 2)), Radius: h.Diameter / 2))
            .ToList();
        var sizes = ((BoltPattern[])[plates.Strut, plates.Carrier]).DistinctBy(p => p.Bolt)
            .Select(p => $"holes {units.Length(p.Hole)} for bolts of {units.Length(p.Bolt)}").ToList();
        string[] notes =
        [
            $"plate-{name}, {units.Length(width)} x {units.Length(length)} x {units.Length(plates.Thickness)}",
            .. sizes.SkipLast(1),
            sizes[^1] + ", from the lower left corner:",
            .. holes.Select(h => $"{units.Length(h.Center.X)} right, {units.Length(h.Center.Y)} up"
                + (sizes.Count > 1 ? $", {units.Length(2 * h.Radius)} wide" : "")),
            "Alike on both faces and sides, turned over",
            units.System == UnitSystem.Imperial ? "Units: inches" : "Units: millimeters",
            Caution.Text,
        ];
        return new Sheet(
            $"plate-{name}",
            ProfileLayers.All,
            [
                new SheetPolyline(
                    ProfileLayers.Outline, [new(0, 0), new(length, 0), new(length, width), new(0, width)], Closed: true),
                .. holes.Select(h => new SheetCircle(ProfileLayers.Drill, h.Center, h.Radius)),
                .. LabelRows.Column(ProfileLayers.Text, notes, -Space).Texts,
            ]);
    }
}
