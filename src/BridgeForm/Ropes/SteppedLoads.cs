using System.Collections.Immutable;

namespace BridgeForm.Ropes;

/// <summary>
/// Loads that jump as the shape moves, because parts come by whole numbers: one tread more in a bay, a packer or none.
/// </summary>
/// <param name="Loads">Loads as in <see cref="DesignRequest.NodeLoads"/>, made with the steps that were asked for.</param>
/// <param name="Steps">
/// The whole numbers that go with these positions. Each is counted so that the smaller of two neighbouring values fits at
/// both sides of its threshold.
/// </param>
public readonly record struct SteppedLoads(ImmutableArray<double> Loads, ImmutableArray<int> Steps)
{
    /// <summary>Loads that are no numbers: nobody weighs any more, and the shape is given up.</summary>
    public static SteppedLoads GivenUp(int nodes, ImmutableArray<int> steps) => new([.. Enumerable.Repeat(double.NaN, nodes)], steps);
}
