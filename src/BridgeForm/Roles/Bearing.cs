using System.Collections.Immutable;

namespace BridgeForm.Roles;

/// <summary>Where the parts are that carry a part.</summary>
public enum BearingPlace
{
    /// <summary>In its own frame.</summary>
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

    /// <summary>On every part of a role in the bay.</summary>
    public static Bearing AcrossBay(Role on) => new(BearingPlace.WholeBay, [on]);
}
