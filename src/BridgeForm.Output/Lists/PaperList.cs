using System.Collections.Immutable;
using BridgeForm.Output.Drawing;
using BridgeForm.Project;
using BridgeForm.Project.Definition;
using BridgeForm.Quantities;

namespace BridgeForm.Output.Lists;

/// <summary>Sizes of paper.</summary>
internal static class PaperList
{
    private static readonly ImmutableArray<ListColumn> s_columns =
        [new("key", ColumnForm.Key), new("in"), new("mm"), new("", ColumnForm.Words)];

    private static KeySpec Key =>
        ProjectKeys.Root.Keys.Single(k => k.Name is "shop").Keys.Single(k => k.Name is "paper");

    public static ReferenceList Make() => new(
        "Papers",
        [new("", s_columns, [.. Key.Choices.Select(name => Row(Paper.Named(name)))])],
        [
            $"For the key shop.paper; left out it is {Key.DefaultIn(UnitSystem.Imperial)}, with units: metric "
                + $"{Key.DefaultIn(UnitSystem.Metric)}. {NumberText.Rounded(Paper.Margin / Units.MetresPerInch, 2)} in "
                + $"({NumberText.Rounded(Paper.Margin * 1000, 1)} mm) stay white on every side.",
            Paper.Source + ".",
        ]);

    private static ImmutableArray<string> Row(Paper paper) =>
    [
        paper.Name,
        Sides(paper, metres => NumberText.Rounded(metres / Units.MetresPerInch, 2)),
        Sides(paper, metres => NumberText.Rounded(metres * 1000, 1)),
        paper.IsRoll ? "a roll: pages as long as they need, to the second size" : "",
    ];

    private static string Sides(Paper paper, Func<double, string> of) => $"{of(paper.Width)} x {of(paper.Height)}";
}
