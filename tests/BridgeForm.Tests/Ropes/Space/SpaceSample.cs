using BridgeForm.Ropes;
using BridgeForm.Ropes.Space;

namespace BridgeForm.Tests.Ropes.Space;

/// <summary>A bridge for the wind.</summary>
internal sealed record SpaceSample(RopeShape Calm, LoadCaseRequest Rope, double Spacing, SpaceLoads Loads)
{
    public SpaceResult? Find() => SpaceSolver.Find(Rope, Spacing, Loads, Calm);

    /// <summary>All wind there is: on what stands on the ropes, and on both ropes.</summary>
    public double Force => Loads.Winds.Sum() + (2 * Loads.WindOnRope * Rope.UnstressedLengths.Sum());
}
