namespace BridgeForm.Roles;

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
