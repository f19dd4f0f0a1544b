namespace BridgeForm.Mutation;

/// <summary>What became of a place.</summary>
/// <param name="Number">Its number in the mutated model.</param>
/// <param name="Site">The place.</param>
/// <param name="Listed">The survivor it was listed as; null for one drawn by lot.</param>
/// <param name="KilledBy">Test that failed, or how the run ended; null when every test passed.</param>
/// <param name="Reaching">How many classes of tests reach it.</param>
internal sealed record Result(int Number, Site Site, Listed? Listed, string? KilledBy, int Reaching)
{
    /// <summary>Why nothing can tell it apart; null when nobody has shown that.</summary>
    public string? Equivalent { get; init; }

    public bool IsSurvivor => KilledBy is null && Equivalent is null;
}
