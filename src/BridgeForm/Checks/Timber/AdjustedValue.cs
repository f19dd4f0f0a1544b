using System.Collections.Immutable;
using BridgeForm.Quantities;

namespace BridgeForm.Checks.Timber;

/// <summary>A factor on a design value.</summary>
/// <param name="Symbol">As in the NDS: <c>CM</c>.</param>
/// <param name="Value">Dimensionless.</param>
/// <param name="Why">Where it comes from.</param>
/// <param name="Slenderness">Slenderness over the greatest one allowed; above 1 the member has no value at all.</param>
internal sealed record Factor(string Symbol, double Value, string Why, double Slenderness = 0);

/// <summary>A reference design value with everything that adjusts it. Pascals.</summary>
/// <param name="Symbol">Of the reference value: <c>Fb</c>.</param>
/// <param name="Reference">From the table.</param>
/// <param name="Factors">Each with where it comes from.</param>
/// <param name="Source">Of the reference value.</param>
internal sealed record AdjustedValue(string Symbol, double Reference, ImmutableArray<Factor> Factors, string Source)
{
    /// <summary>What must be said of the reference value, after a space; empty for nothing.</summary>
    public string Note { get; init; } = "";

    /// <summary>Reference value times its factors.</summary>
    public double Value => Factors.Aggregate(Reference, (value, factor) => value * factor.Value);

    /// <summary>Slenderness over the greatest one allowed, the largest of its factors; above 1 there is no value.</summary>
    public double Slenderness => Factors.Select(f => f.Slenderness).DefaultIfEmpty(0).Max();

    /// <summary>With one more factor.</summary>
    public AdjustedValue Times(Factor factor) => this with { Factors = Factors.Add(factor) };

    /// <summary><c>Fb' = 1350 psi × CD 1.6 × CM 0.85 = 1836 psi</c>.</summary>
    public string Text(CheckWords words) =>
        $"{Symbol}' = {words.Stress(Reference)}"
        + string.Concat(Factors.Select(f => $" × {f.Symbol} {NumberText.By("0.0##", f.Value)}"))
        + $" = {words.Stress(Value)}{Note}";

    /// <summary>Where the value and each of its factors come from.</summary>
    public string Sources => $"{Symbol}: {Source}" + string.Concat(Factors.Select(f => $"; {f.Symbol} {f.Why}"));
}
