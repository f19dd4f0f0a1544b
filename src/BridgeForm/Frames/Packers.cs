using BridgeForm.Materials;
using BridgeForm.Project;
using BridgeForm.Quantities;
using BridgeForm.Roles;
using BridgeForm.Solids;

namespace BridgeForm.Frames;

/// <summary>
/// Tapered pieces across the deck where the boards stand clear of a base. X from left to right, Z the upper face.
/// </summary>
internal static class Packers
{
    /// <summary>
    /// The packer of one frame; null where there is none (<see cref="BridgeLayout.Steps"/>). It fills the gap from
    /// where this is as high as the tolerance (a thinner edge cannot be sawn) to the base's high edge.
    /// </summary>
    public static Member? Lay(BridgeLayout layout, int frame)
    {
        var (height, slope) = Underside(layout, frame);
        return layout.Steps.Packers[frame] && Reach(layout, height, slope) is var (low, high)
            ? Cut(layout, frame, height, slope, low, high)
            : null;
    }

    /// <summary>
    /// Whether the boards are lifted by more than the seating tolerance where they bear: at the middle, or for a board that
    /// rises where it begins, half a butt gap away; and there is room for a packer under them. Boards that fall away to both
    /// sides rest on both edges of the base: between these and the plane under both there is none.
    /// </summary>
    public static bool StandsClear(BridgeLayout layout, int frame)
    {
        var (before, after) = Slopes(layout, frame);
        var lift = layout.Deck.Lifts[frame];
        var rise = Math.Max(0, Math.Max(after, -before));
        var (height, slope) = Underside(layout, frame);
        return lift > 0
            && lift + (rise * layout.Parameters.Deck.ButtGap / 2) > Tolerances.Seating
            && Reach(layout, height, slope) is not null;
    }

    /// <summary>
    /// Where along t the plane under the boards is as high as the tolerance, and the base's high edge, where it is higher; null
    /// where it is not, or nothing that can be sawn lies between them.
    /// </summary>
    private static (double Low, double High)? Reach(BridgeLayout layout, double height, double slope)
    {
        var half = layout.Parameters.Frames.Base.Along / 2;
        var tallest = height + (Math.Abs(slope) * half);

        // The boards rest on the base somewhere, so the plane comes down to the tolerance before the other edge; a level plane
        // lies on the base.
        var reach = (tallest - Tolerances.Seating) / Math.Abs(slope);
        if (!(tallest > Tolerances.Seating && reach > Tolerances.ShortestEdge))
        {
            return null;
        }

        var high = Math.CopySign(half, slope);
        return (high - Math.CopySign(reach, slope), high);
    }

    /// <summary>Slopes of the boards before and after a frame in its axes; at an end frame those of its one bay.</summary>
    private static (double Before, double After) Slopes(BridgeLayout layout, int frame)
    {
        var pose = layout.Poses[frame];
        var points = layout.Deck.Points;
        var last = layout.Bays;
        return (
            BearingLine.SlopeIn(pose, points[Math.Max(0, frame - 1)], points[Math.Max(1, frame)]),
            BearingLine.SlopeIn(pose, points[Math.Min(last - 1, frame)], points[Math.Min(last, frame + 1)]));
    }

    /// <summary>
    /// The plane under the boards in the frame's axes, as height above the base's top at t = 0 and slope: at an end frame the
    /// boards' own undersides, else midway between the two bays' and nowhere above either.
    /// </summary>
    private static (double Height, double Slope) Underside(BridgeLayout layout, int frame)
    {
        var half = layout.Parameters.Frames.Base.Along / 2;
        var (before, after) = Slopes(layout, frame);
        return (layout.Deck.Lifts[frame] - Math.Max(0, (before - after) / 2 * half), (after + before) / 2);
    }

    private static Member Cut(BridgeLayout layout, int frame, double height, double slope, double low, double high)
    {
        var pose = layout.Poses[frame];
        var top = layout.Levels[frame].Top;
        var section = PackerStock.Section(layout.Parameters, height + (slope * high), Math.Abs(high - low));

        // The stick's factory edge lies along the high side; the taper and the low side are ripped.
        var middle = high - Math.CopySign(section.Width / 2, slope);
        var placement = Placement.FromLengthAndThickness(
            pose.At(middle, top + (section.Thickness / 2), 0), Vector3d.UnitZ, pose.Up);
        var taper = Plane.Through(pose.At(0, top + height, 0), pose.Direction(-slope, 1, 0));
        var lowSide = Plane.Through(pose.At(low, 0, 0), -Math.CopySign(1, slope) * pose.Along);
        var length = DeckWidth.Filled(layout.Parameters) / 2;
        var shape = new CutStock(
            section.Width, section.Thickness, new Plane(-Vector3d.UnitX, length), new Plane(Vector3d.UnitX, length))
        {
            Rips = [placement.ToLocal(taper), placement.ToLocal(lowSide)],
        };
        return new Member(
            new PartId(pose.Name, Role.Packer),
            layout.Parameters.StockOf(Role.Packer),
            section.Name,
            placement,
            shape);
    }
}

/// <summary>Which stick packers are ripped from.</summary>
internal static class PackerStock
{
    /// <summary>
    /// The smallest of the project's own sections that a packer of this height and width can be ripped from; when none is
    /// large enough, a stick of exactly the needed size, named by it. Metres.
    /// </summary>
    public static Section Section(BridgeParameters parameters, double height, double width)
    {
        var frames = parameters.Frames;
        Section?[] own =
        [
            frames.Base.Section, frames.Post.Section, frames.Brace.Section, parameters.Deck.Board,
            parameters.Deck.Stringer?.Section,
        ];
        return own
            .OfType<Section>()
            .Where(s => s.Thickness >= height && s.Width >= width)
            .MinBy(s => s.Width * s.Thickness)
            ?? MadeToMeasure(parameters.Units, height, width);
    }

    // Named as people of the project would write it; the step is what a tape shows.
    private static Section MadeToMeasure(UnitSystem units, double height, double width)
    {
        var text = new QuantityText(units);
        var step = Rounding.Step(units);
        var (thickness, across) = (Rounding.Up(height, step), Rounding.Up(width, step));
        var (large, small) = across > thickness ? (across, thickness) : (thickness, across);
        var first = text.Size(small);
        return new Section($"{first[..first.IndexOf(' ', StringComparison.Ordinal)]} x {text.Size(large)}", across, thickness);
    }
}
