using BridgeForm.Quantities;

namespace BridgeForm.Project.Definition;

/// <summary>Keys under <c>frames</c>.</summary>
internal static class FrameKeys
{
    public static KeySpec Frames => Define.Map(
        "frames",
        "The frames that stand on the ropes",
        [
            Define.Length("spacing", "Largest distance between neighbouring frames", "4 in", "30 ft", "3 ft", "900 mm"),
            Define.Choice("step", "What is equal from frame to frame: the distance along the rope, or in plan", "rope", "rope", "plan"),
            Define.Choice("stance", "Frames square to the rope, or plumb", "square", "square", "plumb"),
            Base,
            Channel,
            Post,
            Brace,
            Keeper,
            Define.Quantity(QuantityKind.Mass, "hardware", "Fasteners and keepers of one frame, as mass on the ropes", "0 lb", "1000 lb", "3 lb", "1.4 kg"),
        ]).AllStarting();

    private static KeySpec Base => Define.Map(
        "base",
        "The beam across the ropes",
        [
            Define.Section("section", "Stands on its narrow side", "4x4", "89 x 89 mm"),
            Define.Flag("flat", "Lies on its wide side instead", "false"),
            Define.Length("length", "Overall length", "1 ft", "40 ft", "56 in", "1400 mm"),
            Stock,
        ]);

    private static KeySpec Channel => Define.Map(
        "channel",
        "The rope channels in the underside of a base",
        [
            Define.Length("clearance", "Channel wider than the rope (and two liners) by this much", "0 in", "2 in", "1/8 in", "3 mm"),
            Define.Length("width", "Width of the channel, in place of clearance", "1/16 in", "12 in") with
            { DefaultNote = "rope diameter + clearance + two liners", Example = "7/8 in", MetricExample = "22 mm" },
            Define.Length("depth", "Depth of the channel in the middle of the base", "1/16 in", "24 in", "5/8 in", "16 mm"),
            Define.Length("end_depth", "The same of the two end frames", "1/16 in", "24 in", "3/4 in", "19 mm"),
            Define.Length("liner", "Thickness of a liner between rope and wood; 0 for none", "0 in", "1 in", "0 in", "0 mm"),
        ]) with
    { OneOf = ["clearance", "width"] };

    private static KeySpec Post => Define.Map(
        "post",
        "The posts",
        [
            Define.Section("section", "Its wide face lies in the plane of the frame", "2x4", "38 x 89 mm"),
            Define.Length("length", "Length along the axis of the post", "6 in", "12 ft", "40 in", "1020 mm"),
            Define.Quantity(QuantityKind.Angle, "lean", "Lean outward, from square to the base", "0 deg", "44.9 deg", "8 deg"),
            Define.Length("foot", "From the middle of the base to the post's inner face", "1 in", "20 ft", "17-3/4 in", "450 mm"),
            Stock,
        ]);

    private static KeySpec Brace => Define.Map(
        "brace",
        "The braces outside the posts",
        [
            Define.Section("section", "Its wide face lies in the plane of the frame", "2x4", "38 x 89 mm"),
            Define.Quantity(QuantityKind.Angle, "lean", "Lean inward, from square to the base", "0 deg", "75 deg", "12 deg"),
            Define.Length("foot", "From the middle of the base to the brace's outer face", "1 in", "20 ft", "27-1/2 in", "695 mm"),
            Define.Length("length", "Long point to long point, in place of foot", "3 in", "12 ft") with { DefaultNote = "from foot", Example = "18 in", MetricExample = "460 mm" },
            Stock,
        ]) with
    { OneOf = ["foot", "length"] };

    private static KeySpec Keeper => Define.Map(
        "keeper",
        "Blind pilot holes from below for the strap that holds base to rope, two straddling each channel",
        [
            Define.Length("hole", "Diameter; 0 for no holes", "0 in", "2 in", "1/4 in", "6 mm"),
            Define.Length("spread", "Centre to centre across the channel", "1/4 in", "24 in") with
            { DefaultNote = "the larger of 2-1/2 in and channel width + 4 hole diameters", Example = "2-1/2 in", MetricExample = "64 mm" },
            Define.Length("depth", "Depth from the base's bottom face", "0 in", "24 in", "2 in", "50 mm"),
        ]);

    private static KeySpec Stock => Define.Text("stock", "Name of the stock it is cut from", "treated");
}
