using System.Collections.Immutable;

namespace BridgeForm.Project;

/// <summary>Names of joints under <c>fasteners</c> in the project file.</summary>
public static class JointNames
{
    /// <summary>Strap to base, at a channel.</summary>
    public const string Keeper = "keeper";

    /// <summary>Post to base.</summary>
    public const string PostFoot = "post-foot";

    /// <summary>Brace to base.</summary>
    public const string BraceFoot = "brace-foot";

    /// <summary>Brace to post.</summary>
    public const string BraceHead = "brace-head";

    /// <summary>Packer to base.</summary>
    public const string Packer = "packer";

    /// <summary>Deck board to base.</summary>
    public const string BoardEnd = "board-end";

    /// <summary>Stringer to base.</summary>
    public const string StringerEnd = "stringer-end";

    /// <summary>Tread to stringer.</summary>
    public const string Tread = "tread";

    /// <summary>Rail to post.</summary>
    public const string Rail = "rail";

    /// <summary>Cap to post.</summary>
    public const string Cap = "cap";

    /// <summary>All of them; a bridge has those that its parts make.</summary>
    public static ImmutableArray<string> All { get; } =
        [Keeper, PostFoot, BraceFoot, BraceHead, Packer, BoardEnd, StringerEnd, Tread, Rail, Cap];
}
