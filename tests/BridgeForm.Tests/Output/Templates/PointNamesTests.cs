using BridgeForm.Output;
using BridgeForm.Output.Drawing;
using BridgeForm.Output.Templates;
using BridgeForm.Quantities;

namespace BridgeForm.Tests.Output.Templates;

/// <summary>On a template the names of long and short point stand clear of the dimension between them.</summary>
public sealed class PointNamesTests
{
    [Fact]
    public void No_witness_line_runs_through_a_points_name()
    {
        var model = Bridges.Build(Bridges.Inclined);
        var units = DisplayUnits.For(UnitSystem.Imperial);
        var contents = model.Pieces.SelectMany(p => TemplateSet.Draw(model, p, units, TemplateChoice.Everything).Pages)
            .SelectMany(p => p.Content.Entities.OfType<SheetWindow>()).Select(w => w.Content.Entities).ToList();
        var named = 0;
        foreach (var entities in contents)
        {
            var lines = LinesAbout.Gather(entities.OfType<SheetDimension>().SelectMany(d => DimensionLines.Turned(d)));
            var texts = entities.OfType<SheetText>().Where(
                t => t.Text.StartsWith("short point", StringComparison.Ordinal)
                    || t.Text.StartsWith("long point", StringComparison.Ordinal));
            foreach (var text in texts)
            {
                named++;
                Assert.False(lines.Cross(text, 0), text.Text);
            }
        }

        Assert.True(named > 10);
    }
}
