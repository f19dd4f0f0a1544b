using System.Collections.Immutable;
using BridgeForm.Solids;

namespace BridgeForm.Ropes;

/// <summary>The axis of one rope as a line through points close enough together to be drawn as a curve.</summary>
/// <param name="Name"><c>left</c> (negative z) or <c>right</c>.</param>
/// <param name="Radius">Radius of the rope, metres.</param>
/// <param name="Points">Two or more points from A to B, world axes, metres.</param>
public sealed record RopeLine(string Name, double Radius, ImmutableArray<Vector3d> Points);
