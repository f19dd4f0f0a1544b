using System.Collections.Immutable;

namespace BridgeForm.Frames;

/// <summary>Names of the members of one frame or bay, in order.</summary>
/// <param name="Name"><c>F03</c> or <c>B03</c>.</param>
/// <param name="MemberIds">Ids of its members.</param>
public sealed record GroupIds(string Name, ImmutableArray<string> MemberIds);
