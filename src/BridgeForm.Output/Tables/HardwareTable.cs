using System.Globalization;
using BridgeForm.Stocking;

namespace BridgeForm.Output.Tables;

/// <summary><c>hardware.csv</c>: everything to buy that is not wood.</summary>
public static class HardwareTable
{
    private static readonly string[] Head = ["Item", "Quantity", "Where", "Note", "Source"];

    /// <summary>The table as text; an empty quantity is one that the project file does not give.</summary>
    public static string Csv(BridgeModel model) => CsvText.Of(Head, model.Hardware().Select(Row));

    private static IReadOnlyList<string> Row(HardwareItem item) =>
        [CsvText.Users(item.Item), item.Quantity?.ToString(CultureInfo.InvariantCulture) ?? string.Empty, CsvText.Users(item.Where), CsvText.Users(item.Note), CsvText.Users(item.Source)];
}
