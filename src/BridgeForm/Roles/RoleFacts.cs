using System.Collections.Immutable;

namespace BridgeForm.Roles;

/// <summary>Everything that is plainly so of every part of a role.</summary>
public sealed record RoleFacts
{
    /// <summary>The role.</summary>
    public required Role Role { get; init; }

    /// <summary>First letter of its marks.</summary>
    public required string Letter { get; init; }

    /// <summary>As files, ids and people name one of them: lower case.</summary>
    public required string Name { get; init; }

    /// <summary>As people read it on paper, page and terminal; ids and files keep the name.</summary>
    public string Printed { get => field ?? Name; init; }

    /// <summary>As people name several.</summary>
    public string Many => Printed + "s";

    /// <summary>What it does, in plain words.</summary>
    public required string Words { get; init; }

    /// <summary>What chooses its wood.</summary>
    public required WoodKey Wood { get; init; }

    /// <summary>Joints it makes, in the order in which they are listed.</summary>
    public required ImmutableArray<RoleJoint> Joints { get; init; }

    /// <summary>What carries it; empty for what hangs on the ropes or stands on a landing.</summary>
    public required ImmutableArray<Bearing> RestsOn { get; init; }

    /// <summary>Lies on what people walk on, and carries nobody: what is under it is no less on top.</summary>
    public bool LiesOnTop { get; init; }

    /// <summary>Hangs on the ropes, which lie in its channels and touch no other wood.</summary>
    public bool LiesOnRopes => RestsOn.IsEmpty && !StandsOnLanding;

    /// <summary>Stands on a landing beside the end frame: neither ropes nor end frame carry it, and it holds neither down.</summary>
    public bool StandsOnLanding { get; init; }

    /// <summary>Works in which it is added: one, or one for end frames and one for frames that hang.</summary>
    public required ImmutableArray<AssemblyWork> AddedIn { get; init; }

    /// <summary>Within a work, what carries goes before what it carries: lower first.</summary>
    public required int Rank { get; init; }

    /// <summary>Which way it runs.</summary>
    public required RoleAxis Axis { get; init; }

    /// <summary>Words for its ends.</summary>
    public EndWords Ends => EndWords.For(Axis);

    /// <summary>Which way its faces look.</summary>
    public required FaceWords Faces { get; init; }

    /// <summary>Which way they look where it lies flat instead of standing; null where its way of lying is no choice.</summary>
    public FaceWords? FlatFaces { get; init; }

    /// <summary>The builder may ask for holes of his own in it.</summary>
    public bool TakesHoles { get; init; }

    /// <summary>Share of an interior frame's load to which its weight counts.</summary>
    public required WeightShare Share { get; init; }

    /// <summary>Section of the drawing set that shows it.</summary>
    public required DrawingSection Section { get; init; }

    /// <summary>How far it leaves its place when its frame is taken apart.</summary>
    public required Leaving Leaves { get; init; }

    /// <summary>What programs for buildings call it.</summary>
    public required BuildingPart Building { get; init; }
}

/// <summary>Kinds of parts that programs for buildings know.</summary>
public enum BuildingPart
{
    /// <summary>A beam that others stand on.</summary>
    Beam,

    /// <summary>One of several beams side by side.</summary>
    Joist,

    /// <summary>An upright.</summary>
    Post,

    /// <summary>A slanting strut.</summary>
    Brace,

    /// <summary>Any other stick.</summary>
    Member,

    /// <summary>What is flat and walked on.</summary>
    Plate,
}

/// <summary>Shares of the weight that an interior frame carries.</summary>
public enum WeightShare
{
    /// <summary>What presses on the base from between the posts.</summary>
    Deck,

    /// <summary>What the posts bring to the base.</summary>
    Guard,

    /// <summary>What the braces' feet bring to the base.</summary>
    Brace,

    /// <summary>The base itself.</summary>
    Base,
}

/// <summary>Sections of the drawing set.</summary>
public enum DrawingSection
{
    /// <summary>A frame, square to its plane.</summary>
    Frame,

    /// <summary>The deck of a bay, from above.</summary>
    Deck,

    /// <summary>The guard of a bay, from the deck.</summary>
    Guard,
}

/// <summary>A move out of a frame that is taken apart, metres.</summary>
/// <param name="Along">Along the bridge, from the frame into its bay.</param>
/// <param name="Up">Upwards, square to the frame's axis.</param>
/// <param name="Out">Outwards from the bridge's middle, of parts that stand on a side.</param>
public readonly record struct Leaving(double Along, double Up, double Out);

/// <summary>How many joints of a kind a part makes.</summary>
public enum JointCount
{
    /// <summary>One.</summary>
    Each,

    /// <summary>One at each of its two ends.</summary>
    EachEnd,

    /// <summary>One with each part of its bay that carries it.</summary>
    EachCarrier,

    /// <summary>One at each channel.</summary>
    EachChannel,
}

/// <summary>A kind of joint that parts of a role make with what carries or holds them.</summary>
/// <param name="Name">As under <c>fasteners</c> in the project file: <c>post-foot</c>.</param>
/// <param name="What">In a person's words.</param>
/// <param name="Count">How many a part makes.</param>
public sealed record RoleJoint(string Name, string What, JointCount Count);

/// <summary>Where the parts are that carry a part.</summary>
public enum BearingPlace
{
    /// <summary>In its own frame, or its own bay.</summary>
    Frame,

    /// <summary>In the frames at both ends of its bay.</summary>
    BothFrames,

    /// <summary>All over its bay: it rests on every one of them.</summary>
    WholeBay,
}

/// <summary>What a part rests on: at each place it must touch a part of one of these roles.</summary>
/// <param name="Place">Where they are.</param>
/// <param name="On">Roles of which one is enough. One that stands on both sides carries on its own side.</param>
public sealed record Bearing(BearingPlace Place, ImmutableArray<Role> On)
{
    /// <summary>On parts of the same frame.</summary>
    public static Bearing InFrame(Role on) => new(BearingPlace.Frame, [on]);

    /// <summary>On either role, in the frames at both ends of the bay.</summary>
    public static Bearing AtBothEnds(params ImmutableArray<Role> on) => new(BearingPlace.BothFrames, on);

    /// <summary>Held by brackets of metal clear of a role, in the frames at both ends of the bay: wood touches no wood.</summary>
    public static Bearing OnBrackets(Role on) => AtBothEnds(on) with { IsClear = true };

    /// <summary>What lies between is metal: the part stands clear of what carries it.</summary>
    public bool IsClear { get; init; }

    /// <summary>On every part of a role in the bay.</summary>
    public static Bearing AcrossBay(Role on) => new(BearingPlace.WholeBay, [on]);
}
