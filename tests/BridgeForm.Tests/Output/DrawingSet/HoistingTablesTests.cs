using System.Globalization;
using BridgeForm.Output.Drawing;
using BridgeForm.Output.DrawingSet;

namespace BridgeForm.Tests.Output.DrawingSet;

public sealed class HoistingTablesTests
{
    // Levels are written to the millimetre: two of them are off by half of one each at most.
    private const double Rounding = 1.001;

    /// <summary>A line of sight parallel to A–B lies as much higher at B as B does: 2 m on this bridge.</summary>
    [Fact]
    public void Levels_of_sight_differ_by_the_rise()
    {
        var model = Bridges.Build(Bridges.Inclined);
        var context = new DrawingContext(model, new BridgeShapes(model), new DrawingText(model.Parameters.Units), new SheetBox(0, 0, 1, 1));
        var tables = HoistingTables.Lay(context).Where(t => t.Title.StartsWith("Hoisting", StringComparison.Ordinal)).ToList();
        Assert.Single(tables);
        foreach (var table in tables)
        {
            var (sight, a, b) = (Column(table, "Sight below"), Column(table, "Level of sight at A"), Column(table, "Level of sight at B"));
            Assert.NotEmpty(table.Rows);
            Assert.All(table.Rows, row =>
            {
                Assert.InRange(Millimetres(row.Entries[b]) - Millimetres(row.Entries[a]), 2000 - Rounding, 2000 + Rounding);
                Assert.InRange(Millimetres(row.Entries[sight]) + Millimetres(row.Entries[a]), -Rounding, Rounding);
                Assert.True(Millimetres(row.Entries[a]) < 0, row.Entries[a]);
            });
        }
    }

    private static int Column(FlowTable table, string head) =>
        table.Columns.Index().Single(c => c.Item.Head.StartsWith(head, StringComparison.Ordinal)).Index;

    private static double Millimetres(string text) =>
        double.Parse(text.Replace(" mm", "", StringComparison.Ordinal).Replace('−', '-').TrimStart('+'), CultureInfo.InvariantCulture);
}
