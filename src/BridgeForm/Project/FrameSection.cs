using System.Collections.Immutable;
using BridgeForm.Materials;
using BridgeForm.Project.Definition;
using BridgeForm.Project.Reading;
using BridgeForm.Quantities;

namespace BridgeForm.Project;

/// <summary>Frames and their steps along the ropes.</summary>
public sealed record FrameParameters
{
    /// <summary>Largest spacing of frames, metres.</summary>
    public required double Spacing { get; init; }

    /// <summary>
    /// Number of bays where it is settled, as of a bridge whose parts are cut; no key of the file. Null to take the least that keeps
    /// <see cref="Spacing"/>.
    /// </summary>
    public int? Bays { get; init; }

    /// <summary>Equal steps along the rope's chords, or in plan.</summary>
    public required FrameStep Step { get; init; }

    /// <summary>Square to the rope, or plumb.</summary>
    public required Stance Stance { get; init; }

    /// <summary>The beam across the ropes.</summary>
    public required BaseParameters Base { get; init; }

    /// <summary>Rope channels of a base.</summary>
    public required ChannelParameters Channel { get; init; }

    /// <summary>Posts.</summary>
    public required PostParameters Post { get; init; }

    /// <summary>Braces.</summary>
    public required BraceParameters Brace { get; init; }

    /// <summary>Holes for the keeper straps.</summary>
    public required KeeperParameters Keeper { get; init; }

    /// <summary>Mass of fasteners and keepers of one frame, and of the plates and bolts of its joints, kilograms.</summary>
    public double HardwareMass => LooseMass + JointMass;

    /// <summary>Of these what the file says under <c>frames.hardware</c>, kilograms.</summary>
    public required double LooseMass { get; init; }

    /// <summary>Of these the plates and bolts of joints, as they are described, kilograms.</summary>
    public double JointMass { get; init; }

    /// <summary>The user's own holes.</summary>
    public ImmutableArray<HoleParameters> Holes { get; init; } = [];

    /// <summary>Joints that the file describes, each alike on all frames; the others are for an engineer.</summary>
    public ImmutableArray<JointParameters> Joints { get; init; } = [];

    /// <summary>The joint at a place; null where the file describes none.</summary>
    public JointParameters? JointAt(JointPlace place) => Joints.FirstOrDefault(j => j.Place == place);
}

/// <summary>What is equal from frame to frame.</summary>
public enum FrameStep
{
    /// <summary>Straight distances between neighbouring nodes.</summary>
    Rope,

    /// <summary>Horizontal distances.</summary>
    Plan,
}

/// <summary>How frames stand.</summary>
public enum Stance
{
    /// <summary>Square to the rope.</summary>
    Square,

    /// <summary>Upright.</summary>
    Plumb,
}

/// <summary>The base: a stick across the bridge.</summary>
/// <param name="Section">Its section.</param>
/// <param name="Flat">Lies on its wide side instead of standing on the narrow one.</param>
/// <param name="Length">Metres.</param>
/// <param name="Stock">Name of the stock.</param>
public sealed record BaseParameters(Section Section, bool Flat, double Length, string Stock)
{
    /// <summary>Size square to the deck (b), metres.</summary>
    public double Depth => Flat ? Section.Thickness : Section.Width;

    /// <summary>Size along the bridge (b_t), metres.</summary>
    public double Along => Flat ? Section.Width : Section.Thickness;
}

/// <summary>Keys under <c>frames</c>, and how they are read.</summary>
internal static class FrameSection
{
    public static KeySpec Keys => Define.Map(
        "frames",
        "The frames that stand on the ropes",
        [
            Define.Length("spacing", "Largest spacing of frames", "4 in", "30 ft", "34 in", "850 mm"),
            Define.Choice("step", "What is equal from frame to frame: the distance along the rope, or in plan", "rope", "rope", "plan"),
            Define.Choice("stance", "Frames square to the rope, or plumb", "square", "square", "plumb"),
            BaseKeys,
            ChannelSection.Keys,
            UprightSection.PostKeys,
            UprightSection.BraceKeys,
            ChannelSection.KeeperKeys,
            Define.Quantity(QuantityKind.Mass, "hardware", "Fasteners and keepers of one frame, as mass "
                + "on the ropes; plates and bolts of joints are added", "0 lb", "1000 lb", "3 lb", "1.4 kg"),
        ]).AllStarting();

    public static FrameParameters Read(FileValues v, RopeProperties rope)
    {
        var channel = ChannelSection.Read(v, rope);
        var post = UprightSection.Post(v);
        var frames = new FrameParameters
        {
            Spacing = v.Number("frames.spacing"),
            Step = v.Text("frames.step") is "plan" ? FrameStep.Plan : FrameStep.Rope,
            Stance = v.Text("frames.stance") is "plumb" ? Stance.Plumb : Stance.Square,
            Base = new BaseParameters(
                v.Section("frames.base.section"), v.Flag("frames.base.flat"), v.Number("frames.base.length"), v.Text("frames.base.stock")),
            Channel = channel,
            Post = post,
            Brace = UprightSection.Brace(v, post),
            Keeper = ChannelSection.Keeper(v, channel),
            LooseMass = v.Number("frames.hardware"),
            Holes = HoleSection.Read(v),
        };
        var joints = JointSection.Read(v, frames);
        return frames with
        {
            Joints = joints,
            JointMass = joints.Sum(j => j.Plates is { } plates ? 2 * plates.Steel(frames, j.Place) : 0),
        };
    }

    private static KeySpec BaseKeys => Define.Map(
        "base",
        "The beam across the ropes",
        [
            Define.Section("section", "Stands on its narrow side", "4x6", "95 x 170 mm"),
            Define.Flag("flat", "Lies on its wide side instead", "false"),
            Define.Length("length", "Overall length", "1 ft", "40 ft").ByRule(
                "ropes.spacing",
                "ropes.spacing and 14 in (350 mm), and 1 in (25 mm) more than the braces' feet need; up to a whole inch (10 mm)",
                "72 in", "1820 mm"),
            Define.StockName("treated"),
        ]);
}
