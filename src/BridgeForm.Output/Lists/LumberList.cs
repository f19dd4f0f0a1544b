using System.Collections.Immutable;
using BridgeForm.Materials;
using BridgeForm.Quantities;

namespace BridgeForm.Output.Lists;

/// <summary>Nominal sizes of lumber and what they measure.</summary>
internal static class LumberList
{
    private static readonly ImmutableArray<ListColumn> s_columns =
        [new("size", ColumnForm.Key), new("dry, in"), new("dry, mm"), new("green, in"), new("green, mm")];

    public static ReferenceList Make() => new(
        "Lumber",
        [
            new("Nominal sizes", s_columns, [.. Lumber.Names.Select(Row)]),
            new(
                "On sale where stock.NAME.sections is left out",
                [new("units", ColumnForm.Key), new("sections", ColumnForm.Words)],
                [
                    ["imperial", string.Join(", ", CommonSections.Imperial)],
                    ["metric", string.Join(", ", CommonSections.Metric)],
                ]),
        ],
        [
            "For every key section; written with green behind it, as 6x6 green, it is the green size. Any other actual size is written "
                + "with its unit: 38 x 89 mm.",
            Lumber.Source + ".",
            $"On sale: {CommonSections.Source}.",
        ]);

    private static ImmutableArray<string> Row(string name)
    {
        var (dry, green) = (Read(name), Read(name + " green"));
        return [name, Inches(dry), Millimetres(dry), Inches(green), Millimetres(green)];
    }

    private static Section Read(string text) => SectionReader.Read(text).Section!;

    private static string Inches(Section s) => $"{LengthText.InchFigure(s.Thickness)} x {LengthText.InchFigure(s.Width)}";

    private static string Millimetres(Section s) =>
        $"{NumberText.Rounded(s.Thickness * 1000, 1)} x {NumberText.Rounded(s.Width * 1000, 1)}";
}
