using System.Collections.Immutable;
using BridgeForm.Roles;
using BridgeForm.Solids;

namespace BridgeForm.Frames;

/// <summary>One wooden part where it lies: a stick of stock, its cuts, and its place in the world.</summary>
/// <param name="Id">Stable readable name, such as <c>F03/post-left</c> or <c>B05/board-2</c>.</param>
/// <param name="Role">What it is for.</param>
/// <param name="Side">Side of the bridge.</param>
/// <param name="Stock">Name of the stock it is cut from, as in the project file.</param>
/// <param name="Section">Name of the section, such as <c>2x4</c>.</param>
/// <param name="Placement">The piece's axes in the world.</param>
/// <param name="Shape">Stock and cuts, in the piece's axes.</param>
public sealed record Member(
    string Id, Role Role, Side Side, string Stock, string Section, Placement Placement, CutStock Shape)
{
    /// <summary>A member of an id, which tells its role and side.</summary>
    public Member(PartId id, string stock, string section, Placement placement, CutStock shape)
        : this(id.ToString(), id.Role, id.Side, stock, section, placement, shape)
    {
    }

    /// <summary>Name of the frame or bay it belongs to: the id up to the slash.</summary>
    public string Owner => PartId.OwnerOf(Id);

    /// <summary>Its name within its frame or bay: the id behind the slash, however many figures the number before it has.</summary>
    public string Name => Id[(Owner.Length + 1)..];
}

/// <summary>A frame, or the bay between two frames, with its members in order.</summary>
/// <param name="Name">Frame <c>F00</c> stands at support A; bay <c>B01</c> lies between <c>F00</c> and <c>F01</c>.</param>
/// <param name="Members">Members, left before right.</param>
public sealed record MemberGroup(string Name, ImmutableArray<Member> Members);

/// <summary>The two sides of the bridge, and as signs of z.</summary>
internal static class Sides
{
    /// <summary>Left before right.</summary>
    public static ImmutableArray<Side> Both { get; } = [Side.Left, Side.Right];

    /// <summary>The left alone, for which the right is a mirror image.</summary>
    public static ImmutableArray<Side> Left { get; } = [Side.Left];

    /// <summary>−1 on the left, +1 on the right.</summary>
    public static double Sign(this Side side) => side == Side.Left ? -1 : 1;
}

/// <summary>Names of the members of one frame or bay, in order.</summary>
/// <param name="Name"><c>F03</c> or <c>B03</c>.</param>
/// <param name="MemberIds">Ids of its members.</param>
public sealed record GroupIds(string Name, ImmutableArray<string> MemberIds);
