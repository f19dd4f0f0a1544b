using System.Collections.Immutable;
using BridgeForm.Connections;
using BridgeForm.Project;
using BridgeForm.Quantities;
using BridgeForm.Roles;
using BridgeForm.Solids;

namespace BridgeForm.Frames;

/// <summary>A distinct steel part of joints: a plate, or a bolt with its head, washer and nut on.</summary>
/// <param name="Name">Such as <c>plate-post-foot</c>.</param>
/// <param name="Words">In a person's words.</param>
/// <param name="Mass">Of one as it is bought, a bolt with its washer and nut, kilograms.</param>
/// <param name="Size">How large it is.</param>
/// <param name="Bodies">Its solids, in its own axes; they touch and do not overlap.</param>
/// <param name="Places">Where it is, by ids such as <c>F03/plate-post-foot-right-b</c>.</param>
public sealed record SteelPart(
    string Name, string Words, double Mass, SteelSize Size, ImmutableArray<CutStock> Bodies,
    ImmutableArray<(string Id, Placement Place)> Places)
{
    /// <summary>Else a plate.</summary>
    public bool IsBolt => Bodies.Length > 1;
}

/// <summary>Size of a plate; of a bolt its length under the head, and twice its diameter. Metres.</summary>
/// <param name="Length">The longest.</param>
/// <param name="Width">Across.</param>
/// <param name="Thickness">The thinnest.</param>
public readonly record struct SteelSize(double Length, double Width, double Thickness);

/// <summary>Plates and bolts of the joints that the project file describes, where they lie.</summary>
public static class JointSteel
{
    // Hex heads and nuts are half as wide again as their bolt across the flats (ASME B18.2.1, from memory).
    private const double AcrossFlats = 1.5;

    /// <summary>All of them; none where the file describes no joint of plates.</summary>
    /// <param name="parameters">The bridge.</param>
    /// <param name="poses">Its frames.</param>
    public static ImmutableArray<SteelPart> Lay(BridgeParameters parameters, ImmutableArray<FramePose> poses) =>
    [
        .. JointHoles.Layouts(parameters.Frames)
            .SelectMany(layout => (SteelPart[])[Plate(parameters, poses, layout), .. Bolts(parameters, poses, layout)]),
    ];

    /// <summary>
    /// A plate in its own axes: X along the strut, away from its cut, Y across, Z outward on the face towards B, right side.
    /// </summary>
    public static CutStock PlateShape(PlateLayout layout)
    {
        var plates = layout.Plates;
        var half = plates.Length / 2;
        return new CutStock(
            plates.Width, plates.Thickness, new Plane(-Vector3d.UnitX, half), new Plane(Vector3d.UnitX, half))
        {
            Holes =
            [
                .. layout.Bolts.Select(b => new Hole(
                    StockFace.PlusZ, b.Place.From(layout.Middle, layout.Along), -b.Place.From(layout.Middle, layout.Across),
                    b.Pattern.Hole, null)),
            ],
        };
    }

    /// <summary>Corners of every plate of a frame, in the middle of the frame's thickness; one for the two on both faces.</summary>
    public static IEnumerable<ImmutableArray<Vector3d>> Outlines(BridgeParameters parameters, FramePose pose) =>
        JointHoles.Layouts(parameters.Frames).SelectMany(layout => Sides.Both.Select(
            side => layout.Corners.Select(c => At(parameters, pose, c, side, 0)).ToImmutableArray()));

    private static SteelPart Plate(BridgeParameters parameters, ImmutableArray<FramePose> poses, PlateLayout layout)
    {
        var name = JointSection.NameOf(layout.Place);
        var off = (Thickness(parameters, layout) + layout.Plates.Thickness) / 2;
        (int Sign, string Name)[] faces = [(1, "b"), (-1, "a")];
        var places = poses.SelectMany(pose => Sides.Both.SelectMany(_ => faces, (side, face) =>
        {
            var origin = At(parameters, pose, layout.Middle, side, face.Sign * off);
            var along = pose.Direction(0, layout.Along.N, side.Sign() * layout.Along.Z);

            // Turned over on the left, so that left is the mirror image of right; holes go through, so that either face may lie out.
            var thickness = side.Sign() * pose.Along;
            return ($"{pose.Name}/plate-{name}-{Word(side)}-{face.Name}", Placement.FromLengthAndThickness(origin, along, thickness));
        }));
        var plates = layout.Plates;
        return new(
            $"plate-{name}", "Steel plate of a joint", plates.PlateMass, new(plates.Length, plates.Width, plates.Thickness),
            [PlateShape(layout)], [.. places]);
    }

    // One part for bolts of one size; the carrier's apart where they are of another.
    private static IEnumerable<SteelPart> Bolts(
        BridgeParameters parameters, ImmutableArray<FramePose> poses, PlateLayout layout) => layout.Bolts
        .Select((bolt, i) => (bolt.Place, bolt.Pattern.Bolt, Number: i + 1, IsCarrier: i >= layout.Strut.Length))
        .GroupBy(b => b.Bolt)
        .Select(group => Bolt(parameters, poses, layout, group.Key, group.First().IsCarrier, [.. group.Select(b => (b.Place, b.Number))]));

    private static SteelPart Bolt(
        BridgeParameters parameters, ImmutableArray<FramePose> poses, PlateLayout layout, double diameter, bool isCarrier,
        ImmutableArray<(PlanePoint Place, int Number)> bolts)
    {
        var name = JointSection.NameOf(layout.Place);
        var (wood, plate) = (Thickness(parameters, layout), layout.Plates.Thickness);
        var places = poses.SelectMany(pose => Sides.Both.SelectMany(side => bolts.Select(bolt => (
            $"{pose.Name}/bolt-{name}-{Word(side)}-{NumberText.By("0", bolt.Number)}",
            Placement.FromLengthAndThickness(At(parameters, pose, bolt.Place, side, 0), pose.Along, pose.Up)))));
        var size = BoltSizes.Find(diameter)!;
        return new(
            $"bolt-{name}{(isCarrier ? "-carrier" : "")}", "Bolt with washer and nut", PlateJoint.BoltMass(size, wood, plate),
            new(BoltSizes.Fit(size, wood, plate).Length, size.Diameter, size.Diameter), Bodies(size, wood, plate), [.. places]);
    }

    /// <summary>Head towards A, nut towards B; X along the bolt, 0 in the middle of its grip.</summary>
    private static ImmutableArray<CutStock> Bodies(BoltSize size, double wood, double plate)
    {
        var (d, face, fit) = (size.Diameter, (wood / 2) + plate, BoltSizes.Fit(size, wood, plate));
        var nut = face + (fit.Washers * size.Washer);
        var tip = fit.Length - face;
        return
        [
            Hexagon(-face - size.Head, -face, d * AcrossFlats),
            Shank(-face, nut, d),
            Hexagon(nut, nut + size.Nut, d * AcrossFlats),
            Shank(nut + size.Nut, tip, d),
        ];
    }

    private static CutStock Hexagon(double from, double to, double flats)
    {
        var corner = flats / Math.Sqrt(3);
        return Bar(from, to, flats, 2 * corner) with { Rips = Rips(flats / 2, 0.5, Math.Sqrt(0.75)) };
    }

    // Where faces are flat an octagon around the circle.
    private static CutStock Shank(double from, double to, double width) =>
        Bar(from, to, width, width) with { IsRound = true, Rips = Rips(width / 2, Math.Sqrt(0.5), Math.Sqrt(0.5)) };

    private static CutStock Bar(double from, double to, double width, double thickness) =>
        new(width, thickness, new Plane(-Vector3d.UnitX, -from), new Plane(Vector3d.UnitX, to));

    private static ImmutableArray<Plane> Rips(double offset, double y, double z) =>
    [
        new(new Vector3d(0, y, z), offset), new(new Vector3d(0, -y, z), offset), new(new Vector3d(0, -y, -z), offset),
        new(new Vector3d(0, y, -z), offset),
    ];

    private static double Thickness(BridgeParameters parameters, PlateLayout layout) =>
        JointSticks.Of(parameters.Frames, layout.Place).Carrier.Thickness;

    private static Vector3d At(BridgeParameters parameters, FramePose pose, PlanePoint place, Side side, double along)
    {
        var frames = parameters.Frames;
        var top = BaseLevels.Find(frames, parameters.Ropes.Rope.Radius, pose, frames.Stance).Top;
        return pose.At(along, top + place.N, side.Sign() * place.Z);
    }

    private static string Word(Side side) => side == Side.Left ? "left" : "right";
}
