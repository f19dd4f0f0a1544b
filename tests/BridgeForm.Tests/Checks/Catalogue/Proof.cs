using BridgeForm.Checks;

namespace BridgeForm.Tests.Checks.Catalogue;

/// <summary>A check as the program gives it, and beside it what the case found by hand.</summary>
/// <param name="Check">As the program gives it.</param>
/// <param name="Demand">By hand, in the check's unit.</param>
/// <param name="Capacity">By hand, from the limit's source; null where nothing is compared.</param>
public sealed record Proof(CheckResult Check, double Demand, double? Capacity = null)
{
    /// <summary>How far the program's numbers may be from those by hand, as a share of them: what the hand's method leaves out.</summary>
    public double Error { get; init; } = 1e-9;

    /// <summary>The limit that the case lies beside, where the result names none.</summary>
    public double? Limit { get; init; }

    /// <summary>What the check's text must name: forces and lengths by hand, items, keys.</summary>
    public IReadOnlyList<string> Says { get; init; } = [];

    /// <summary>The same, naming something in its text.</summary>
    public Proof Saying(params string[] says) => this with { Says = says };
}
