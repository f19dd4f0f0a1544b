using BridgeForm.Roles;

namespace BridgeForm.Pieces;

/// <summary>First letter of a mark, by role.</summary>
public static class MarkLetters
{
    /// <summary>B for bases, P posts, K braces (knees), D deck boards, R rails, C caps, S stringers, T treads, W packers (wedge-shaped).</summary>
    public static string Of(Role role) => role switch
    {
        Role.Base => "B",
        Role.Post => "P",
        Role.Brace => "K",
        Role.Board => "D",
        Role.Rail => "R",
        Role.Cap => "C",
        Role.Stringer => "S",
        Role.Tread => "T",
        Role.Packer => "W",
        _ => throw new ArgumentOutOfRangeException(nameof(role)),
    };
}
