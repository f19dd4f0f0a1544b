namespace BridgeForm.Stocking.Cutting;

/// <summary>What lies on a board.</summary>
/// <param name="Counts">Pieces of each length.</param>
/// <param name="Value">What they are worth together.</param>
internal sealed record Filling(int[] Counts, double Value);
