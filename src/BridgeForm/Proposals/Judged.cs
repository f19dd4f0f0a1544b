using System.Collections.Immutable;
using BridgeForm.Project;

namespace BridgeForm.Proposals;

/// <summary>A check, or a wish, that a design does not meet.</summary>
/// <param name="Id">Id of the check; <see cref="SlopeWish"/> or <see cref="WidthWish"/>.</param>
/// <param name="Ratio">Above 1; null where there is nothing to compare, or nothing is known.</param>
/// <param name="Text">What it says, for people.</param>
/// <param name="IsLook">Nothing fails, but the builder would have to see to it, and other designs need not.</param>
public sealed record Shortfall(string Id, double? Ratio, string Text, bool IsLook = false)
{
    /// <summary>Numbers and what would be right, where there is no ratio.</summary>
    public string Detail { get; init; } = "";

    /// <summary>Wood that no table has values for; empty where values are known.</summary>
    public string NoValues { get; init; } = "";

    /// <summary>What fails is too small; else too large.</summary>
    public bool IsTooSmall { get; init; }

    /// <summary>Id of the wish for a flat deck.</summary>
    public const string SlopeWish = "wish-slope";

    /// <summary>Id of the wish for room between the guards.</summary>
    public const string WidthWish = "wish-width";

    // Without a ratio, or by more than this, something fails by far.
    private const double ByFar = 3;

    // What only just fails counts as this much.
    private const double JustSo = 0.001;

    // What only has to be seen to counts no more than this. Own figure.
    private const double ALook = 0.3;

    /// <summary>How much is missing, 0 to <see cref="ByFar"/>; what only just fails counts too.</summary>
    public double Amount => IsLook ? Math.Min(Missing, ALook) : Missing;

    /// <summary>How much is missing, of what only has to be seen to as well.</summary>
    internal double Missing => Ratio is { } ratio && double.IsFinite(ratio) ? Math.Clamp(ratio - 1, JustSo, ByFar) : 1;
}

/// <summary>What people compare designs by. SI units.</summary>
/// <param name="Weight">Wood, hardware and both ropes between the supports, newtons.</param>
/// <param name="Slope">Steepest chord of the empty deck, rise over run.</param>
/// <param name="Drop">Furthest that a frame falls in any load case, metres.</param>
/// <param name="Clearance">Least room over the ground, metres; null where no ground is given.</param>
/// <param name="Pieces">Distinct pieces.</param>
/// <param name="Price">Of the boards; null without prices of all.</param>
public sealed record Figures(double Weight, double Slope, double Drop, double? Clearance, int Pieces, double? Price);

/// <summary>A design that was looked at: the whole model, all checks.</summary>
/// <param name="Design">What is written otherwise.</param>
/// <param name="Parameters">Null where the reader finds fault with it.</param>
/// <param name="Shortfalls">What fails, worst first; empty for a design that passes, or that cannot be built.</param>
/// <param name="Figures">Null where it cannot be built.</param>
/// <param name="Trouble">Why it cannot be read or built; null where it can.</param>
internal sealed record Judged(
    Design Design, BridgeParameters? Parameters, ImmutableArray<Shortfall> Shortfalls, Figures? Figures, string? Trouble)
{
    // More than all checks together come to.
    private const double NoBridge = 1e3;

    /// <summary>No check fails, no wood is without values, every wish is met, nothing is left to see to that need not be.</summary>
    public bool Passes => Figures is not null && Shortfalls.IsEmpty;

    /// <summary>How far it is from passing; 0 where it passes.</summary>
    public double Violation => Figures is null ? NoBridge : Shortfalls.Sum(s => s.Amount);
}
