namespace BridgeForm.Stocking.Cutting;

/// <summary>How often the relaxation uses a pattern.</summary>
/// <param name="Pattern">The pattern.</param>
/// <param name="Amount">Boards cut by it, not a whole number.</param>
internal sealed record PatternUse(Pattern Pattern, double Amount);
