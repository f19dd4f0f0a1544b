using BridgeForm.Ropes;
using BridgeForm.Ropes.Pairs;

namespace BridgeForm.Loads;

/// <summary>Both ropes of a load case with what stands on them; left is the more heavily loaded one where loads lie to one side.</summary>
/// <param name="Rope">One rope at the temperature of the case.</param>
/// <param name="Spacing">Between the ropes, metres.</param>
/// <param name="Loads">What stands on both.</param>
/// <param name="Shape">Both ropes under it.</param>
internal sealed record PairCase(LoadCaseRequest Rope, double Spacing, PairLoads Loads, PairShape Shape)
{
    /// <summary>How many times as high the weights could stand; null when no frame hangs between the supports.</summary>
    public RollFactor? Roll() => RollFactor.Of(Rope, Spacing, Loads, Shape);
}
