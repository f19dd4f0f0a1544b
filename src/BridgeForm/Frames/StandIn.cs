using BridgeForm.Solids;

namespace BridgeForm.Frames;

/// <summary>
/// Something shown so that people see where it is, which is no piece of this bridge: in no cut list. What of it weighs is reckoned
/// where it hangs, not from its body.
/// </summary>
/// <param name="Id">Such as <c>a/sill</c> or <c>B03/net-left</c>.</param>
/// <param name="Words">In a person's words.</param>
/// <param name="Body">Its solid, in its own axes.</param>
/// <param name="Place">Its axes in the world.</param>
public sealed record StandIn(string Id, string Words, CutStock Body, Placement Place);
