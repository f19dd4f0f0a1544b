using System.Collections.Immutable;
using BridgeForm.Quantities;

namespace BridgeForm.Output.ScaleModel;

/// <summary><c>scale-model.csv</c>: what lies on which plate, how large it is, and what is not to scale.</summary>
public static class ScaleModelTable
{
    private static readonly string[] Head =
        ["Plate", "Item", "Parts", "Length (mm)", "Width (mm)", "Height (mm)", "Not to scale"];

    /// <summary>The table as text.</summary>
    public static string Csv(BridgeModel model) => Csv(PrintPlan.Of(model));

    /// <summary>What is not as on the bridge, in sentences: what is printed thicker, what is left out, what does not fit the bed.</summary>
    public static ImmutableArray<string> Told(BridgeModel model) => PrintPlan.Of(model).Told;

    internal static string Csv(PrintPlan plan) => CsvText.Write(Head,
    [
        .. plan.Placed.Select(Row),
        .. plan.Told.Select(t => (IReadOnlyList<string>)["", "note", "", "", "", "", t]),
    ]);

    private static IReadOnlyList<string> Row(PlacedItem placed) =>
    [
        Numbers.Fixed(placed.Plate, 0), placed.Item.Name, Numbers.Fixed(placed.Item.Bodies.Length, 0),
        Size(placed.Size.X), Size(placed.Size.Y), Size(placed.Size.Z),
        string.Join("; ", placed.Item.Bodies.Where(b => b.Thicker.Length > 0)
            .GroupBy(b => b.Thicker, StringComparer.Ordinal).Select(g => $"{string.Join(", ", g.Select(b => b.Name))}: {g.Key}")),
    ];

    private static string Size(double metres) => Numbers.Fixed(metres / Rounding.Millimetre, 1);
}
