using System.Collections.Immutable;
using BridgeForm.Materials;
using BridgeForm.Quantities;

namespace BridgeForm.Output.Lists;

/// <summary>Grades: the words for them, which species have them, and the values that checks use.</summary>
internal static class GradeList
{
    private static readonly ImmutableArray<ListColumn> s_words =
        [new("key", ColumnForm.Key), new("understood as stamped", ColumnForm.Words)];

    private static readonly ImmutableArray<ListColumn> s_values =
    [
        new("grade", ColumnForm.Key), new("size", ColumnForm.Words), new("Fb"), new("Ft"), new("Fv"), new("Fc⊥"), new("Fc"), new("E"),
        new("Emin"), SourceLetters.Column,
    ];

    public static ReferenceList Make()
    {
        var sources = new SourceLetters();
        var species = SpeciesTable.All.Select(s => s.Key).Order(StringComparer.Ordinal).ToList();
        return new(
            "Grades",
            [
                new("Words for them", s_words, [.. StampedWords.Grades.Select(g => (ImmutableArray<string>)[g, Words(g)])]),
                Having(species),
                .. species.Where(s => Rows(s).Any()).Select(s => new ListTable(
                    $"{s}: psi/MPa; E and Emin ksi/GPa", s_values, [.. Rows(s).Select(r => Row(r, sources))])),
            ],
            [
                $"For the key stock.NAME.grade. What a stamp may add changes nothing: {string.Join(", ", StampedWords.Besides)}. Values "
                    + "of your own, and of other grades, go under values and before these.",
                "C18, C24, C30, D30: strength classes of EN 338, for any softwood (C) or hardwood (D) that is so stamped; characteristic "
                    + "values, Emin their E0,05. A check lowers them by kmod/(1.3·1.5), shear by kcr 0.67 besides, and says so.",
                "dimension: 2 to 4 in thick, before the size factor; 2x4 to 2x12: by width, with the size factor in it; beams, posts, "
                    + "timbers: 5 in and thicker; any: every section; wet: for wet service already; boards below 2 in count as no3. "
                    + "Bending Fb, tension Ft, shear Fv, compression across Fc⊥ and along Fc.",
                .. sources.Lines(),
            ]);
    }

    private static ListTable Having(IEnumerable<string> species) => new(
        "Species that have them",
        [new("species", ColumnForm.Key), .. StampedWords.Grades.Select(g => new ListColumn(g, ColumnForm.Words))],
        [
            .. species.Select(s => (ImmutableArray<string>)
            [
                s,
                .. StampedWords.Grades.Select(g => Rows(s).Any(r => IsGrade(r, g)) ? "yes" : "-"),
            ]),
        ]);

    // The table's own order within a grade: lumber by its width, then timbers.
    private static IEnumerable<DesignValue> Rows(string species) => DesignValues.All
        .Where(r => string.Equals(r.Species, species, StringComparison.Ordinal))
        .OrderBy(r => StampedWords.Grades.IndexOf(r.Grade));

    private static bool IsGrade(DesignValue row, string grade) => string.Equals(row.Grade, grade, StringComparison.Ordinal);

    private static string Words(string grade) => string.Join(", ", StampedWords.OfGrade(grade));

    private static ImmutableArray<string> Row(DesignValue row, SourceLetters sources) =>
    [
        row.Grade,
        row.Wet ? $"{row.Size}, wet" : row.Size,
        Strength(row.Bending),
        Strength(row.Tension),
        Strength(row.Shear),
        Strength(row.CompressionAcross),
        Strength(row.Compression),
        Modulus(row.Modulus),
        row.ModulusMin is { } least ? Modulus(least) : "-",
        sources.Of(row.Source),
    ];

    private static string Strength(double pascals) =>
        $"{NumberText.Rounded(pascals / Stress.Psi, 0)}/{NumberText.Fixed(pascals / 1e6, 1)}";

    private static string Modulus(double pascals) =>
        $"{NumberText.Rounded(pascals / Stress.Ksi, 0)}/{NumberText.Fixed(pascals / 1e9, 1)}";
}
