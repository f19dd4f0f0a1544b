using BridgeForm.Roles;

namespace BridgeForm.Output;

/// <summary>Roles as files and people name them.</summary>
internal static class RoleName
{
    /// <summary>Lower-case name: <c>base</c>, <c>post</c>, …</summary>
    public static string Of(Role role) => role switch
    {
        Role.Base => "base",
        Role.Post => "post",
        Role.Brace => "brace",
        Role.Board => "board",
        Role.Rail => "rail",
        Role.Cap => "cap",
        Role.Stringer => "stringer",
        Role.Tread => "tread",
        Role.Packer => "packer",
        _ => throw new ArgumentOutOfRangeException(nameof(role), role, "No such role."),
    };
}
