using System.Collections.Immutable;
using BridgeForm.Materials;
using BridgeForm.Quantities;

namespace BridgeForm.Checks.Timber;

/// <summary>What a stick bears on a face pressed square to it.</summary>
/// <param name="Value">Pascals.</param>
/// <param name="Text">Symbol, factors, formula.</param>
/// <param name="Sources">Where values and factors come from.</param>
internal sealed record Bearing(double Value, string Text, string Sources)
{
    /// <summary>Source of the angle's formula.</summary>
    public const string Angle = "Hankinson's formula, NDS 3.10.3";

    /// <summary>Of a stick whose grain lies at an angle to the load, radians: 0 on its end, a right angle on its side.</summary>
    public static Bearing Reckon(CheckWords words, LumberValues values, double grain, LoadDuration load, string name)
    {
        var across = values.Across(load);
        if (Elementary.Cos(grain) < Square)
        {
            return new(across.Value, $"{name}: {across.Text(words)}", across.Sources);
        }

        // Fc*: every factor but CP.
        var along = values.Compression(load);
        double sin = Elementary.Sin(grain), cos = Elementary.Cos(grain);
        var value = along.Value * across.Value / ((along.Value * sin * sin) + (across.Value * cos * cos));
        var at = CheckWords.Angle(grain);
        return new(
            value,
            $"{name}: {along.Text(words).Replace("Fc'", "Fc*", StringComparison.Ordinal)}, {across.Text(words)}, at {at} to the grain "
            + $"Fθ' = Fc*·Fc⊥' / (Fc*·sin² {at} + Fc⊥'·cos² {at}) = {words.Stress(value)}",
            $"{Angle}; {along.Sources}; {across.Sources}");
    }

    /// <summary>Pressed wood of both sticks against the softer; for the engineer where one has no value.</summary>
    /// <param name="context">Of the bridge.</param>
    /// <param name="check">The check.</param>
    /// <param name="stress">Pascals.</param>
    /// <param name="how">How the stress comes about.</param>
    /// <param name="source">Of the load.</param>
    /// <param name="load">CD of the load, for what is pressed on its end; k_mod of a strength class either way.</param>
    /// <param name="sides">Both sticks.</param>
    public static CheckResult Check(
        CheckContext context, DeclaredCheck check, double stress, string how, string source, LoadDuration load,
        params ImmutableArray<BearingSide> sides)
    {
        var bearings = ImmutableArray.CreateBuilder<Bearing>();
        foreach (var side in sides)
        {
            if (LumberValues.Find(context.Parameters, side.Stock, side.Section) is not { } values)
            {
                return LumberValues.Missing(context.Parameters, side.Stock, side.Section).Result(check, stress, "Pa", source, how);
            }

            bearings.Add(Reckon(context.Words(), values, side.Grain, load, side.Name));
        }

        // What both say is said once: often they are of one wood.
        var texts = bearings.Select(b => b.Text).Distinct(StringComparer.Ordinal);
        return Outcome.AtMost(
            check,
            stress,
            bearings.Min(b => b.Value),
            "Pa",
            TimberWords.Once($"{source}; {string.Join("; ", bearings.Select(b => b.Sources))}"),
            $"{how}; {string.Join("; ", texts)}");
    }

    // Within a thousandth of a right angle the formula gives Fc⊥' itself.
    private const double Square = 1e-3;
}

/// <summary>One of two sticks that press on each other.</summary>
/// <param name="Name">In a person's words.</param>
/// <param name="Stock">Name of the stock.</param>
/// <param name="Section">Its section.</param>
/// <param name="Grain">Angle of its grain to the load, radians.</param>
internal sealed record BearingSide(string Name, string Stock, Section Section, double Grain)
{
    /// <summary>Pressed on its side.</summary>
    public static BearingSide Across(string name, string stock, Section section) => new(name, stock, section, Math.PI / 2);
}
