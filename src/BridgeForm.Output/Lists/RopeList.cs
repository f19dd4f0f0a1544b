using System.Collections.Immutable;
using BridgeForm.Materials;
using BridgeForm.Quantities;

namespace BridgeForm.Output.Lists;

/// <summary>Ropes of the built-in table, make by make.</summary>
internal static class RopeList
{
    private const double SquareInch = Units.MetresPerInch * Units.MetresPerInch;

    private static readonly ImmutableArray<ListColumn> s_columns =
    [
        new("key", ColumnForm.Key), new("in"), new("mm"), new("lbf"), new("kN"), new("in2"), new("mm2"), new("lb/ft"), new("kg/m"),
        SourceLetters.Column,
    ];

    public static ReferenceList Make()
    {
        var sources = new SourceLetters();
        var tables = RopeTable.Groups.Select(g => Table(g, sources)).ToImmutableArray();
        return new(
            "Ropes",
            tables,
            [
                "Diameter in in and mm, least breaking strength in lbf and kN, area of the wires in in2 and mm2, mass in lb/ft and kg/m. "
                    + "For the key ropes.type; a rope of your own is a mapping there.",
                .. sources.Lines(),
            ]);
    }

    private static ListTable Table(RopeGroup group, SourceLetters sources)
    {
        var modulus = group.Ropes[0].Modulus;
        return new(
            $"{group.Words}; modulus {NumberText.Rounded(modulus / Stress.Ksi, 0)} ksi, {NumberText.Rounded(modulus / 1e9, 1)} GPa",
            s_columns,
            [.. group.Ropes.Select(r => Row(r, sources))]);
    }

    private static ImmutableArray<string> Row(RopeProperties rope, SourceLetters sources) =>
    [
        rope.Name,
        LengthText.InchFigure(rope.Diameter),
        NumberText.Fixed(rope.Diameter * 1000, 1),
        NumberText.Rounded(rope.BreakingStrength / Units.PoundForce, 0),
        NumberText.Fixed(rope.BreakingStrength / 1000, 1),
        NumberText.Fixed(rope.MetallicArea / SquareInch, 4),
        NumberText.Fixed(rope.MetallicArea * 1e6, 1),
        NumberText.Fixed(rope.MassPerLength / Units.KilogramsPerPound * Units.MetresPerFoot, 3),
        NumberText.Fixed(rope.MassPerLength, 3),
        sources.Of(rope.Source),
    ];
}

/// <summary>Stresses of tables, in pascals.</summary>
internal static class Stress
{
    /// <summary>A pound-force on a square inch.</summary>
    public const double Psi = Units.PoundForce / (Units.MetresPerInch * Units.MetresPerInch);

    /// <summary>A thousand of them.</summary>
    public const double Ksi = 1000 * Psi;
}
