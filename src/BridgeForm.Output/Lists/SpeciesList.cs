using System.Collections.Immutable;
using BridgeForm.Materials;
using BridgeForm.Quantities;

namespace BridgeForm.Output.Lists;

/// <summary>Built-in species: what they weigh, whether they last, how stamps write them.</summary>
internal static class SpeciesList
{
    private const double Pcf = Units.KilogramsPerPound / (Units.MetresPerFoot * Units.MetresPerFoot * Units.MetresPerFoot);

    private static readonly ImmutableArray<ListColumn> s_weights =
    [
        new("key", ColumnForm.Key), new("name", ColumnForm.Words), new("G"), new("dry"), new("outdoors"), new("treated"),
        new("heaviest"), new("durable", ColumnForm.Words), SourceLetters.Column,
    ];

    private static readonly ImmutableArray<ListColumn> s_words =
        [new("key", ColumnForm.Key), new("understood as stamped", ColumnForm.Words)];

    private static IEnumerable<Species> Species => SpeciesTable.All.OrderBy(s => s.Key, StringComparer.Ordinal);

    public static ReferenceList Make()
    {
        var sources = new SourceLetters();
        return new(
            "Species",
            [
                new("Specific gravity G and densities in lb/ft3 and kg/m3", s_weights, [.. Species.Select(s => Weights(s, sources))]),
                new(
                    "Words for them", s_words,
                    [.. Species.Select(s => (ImmutableArray<string>)[s.Key, string.Join(", ", StampedWords.OfSpecies(s.Key))])]),
            ],
            [
                "For the key stock.NAME.species; your own, and other numbers for these, go under species. Durable: cuts in its "
                    + "heartwood need no preservative.",
                "Densities by the formula of the NDS Supplement: dry at "
                    + FormattableString.Invariant($"{WoodDensity.DryMoisture} % moisture, outdoors untreated at ")
                    + FormattableString.Invariant($"{WoodDensity.OutdoorMoisture} %, treated at {WoodDensity.WetMoisture} %; ")
                    + "heaviest freshly treated, from memory.",
                .. sources.Lines(),
            ]);
    }

    private static ImmutableArray<string> Weights(Species species, SourceLetters sources)
    {
        var (plain, treated) = (WoodDensity.Of(species, treated: false), WoodDensity.Of(species, treated: true));
        return
        [
            species.Key,
            StampedWords.OfSpecies(species.Key).FirstOrDefault(species.Key),
            NumberText.Fixed(species.SpecificGravity, 2),
            Density(plain.Low),
            Density(plain.InService),
            Density(treated.InService),
            Density(treated.High),
            species.Durable ? "yes" : "no",
            sources.Of(species.Source),
        ];
    }

    private static string Density(double kilograms) =>
        $"{NumberText.Fixed(kilograms / Pcf, 1)}/{NumberText.Rounded(kilograms, 0)}";
}
