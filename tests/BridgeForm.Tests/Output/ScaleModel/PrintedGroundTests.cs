using System.Globalization;
using System.Text.RegularExpressions;
using BridgeForm.Output.ScaleModel;
using BridgeForm.Tests.Output.StepSolids;

namespace BridgeForm.Tests.Output.ScaleModel;

/// <summary>Where the file's ground would stand in the bridge it is lowered, and by how much is told.</summary>
public sealed partial class PrintedGroundTests
{
    private const double Foot = 0.3048;

    /// <summary>
    /// Level ground a foot above the supports: what is told is that foot less the lowest place of the printed walls between the
    /// landings; there the lowest that hangs is 2 mm of the bed above them, 40 mm at 1:20.
    /// </summary>
    [Fact]
    public void Ground_above_the_ropes_is_lowered_and_told()
    {
        var model = Bridges.Build(StepCase.Short("site: { span: 30 ft, ground: [[-5 ft, 1 ft], [35 ft, 1 ft]] }"));
        var plan = PrintPlan.Of(model);
        var bodies = plan.Placed.ToLookup(p => p.Item.Name.Split(' ')[0], p => p.Item.Bodies);
        var middle = 15 * Foot;
        var hanging = bodies.Where(g => g.Key is "rope" or ['F', ..]).SelectMany(g => g).SelectMany(b => b).SelectMany(b => b.Points)
            .Where(p => Math.Abs(p.X - middle) < 2 * Foot).Min(p => p.Y);
        var walls = bodies["ground"].SelectMany(b => b).Where(b => b.Name.StartsWith("wall", StringComparison.Ordinal)).ToList();
        var floor = walls.SelectMany(w => w.Points).Min(p => p.Y);
        var lowest = walls.SelectMany(w => w.Points).Where(p => p.Y > floor + 1e-9).Min(p => p.Y);

        var told = Assert.Single(plan.Told, t => t.StartsWith("Where the ground reaches", StringComparison.Ordinal));
        Assert.Equal((Foot - lowest) * 50, Number(told), 0.0051);
        Assert.EndsWith("its check ground-clearance says: fails", told, StringComparison.Ordinal);
        Assert.InRange(hanging - lowest, 0.0399, 0.045);
        Assert.Contains("The ground line is that of the project file, lowered where the bridge would stand in it", plan.Told);

        // The end frames stand on the landing, lower than the ground is: from their undersides up to the foot.
        var under = bodies["F00"].SelectMany(b => b).SelectMany(b => b.Points).Min(p => p.Y);
        var landings = Assert.Single(plan.Told, t => t.StartsWith("At the landings", StringComparison.Ordinal));
        Assert.Equal((Foot - under) * 50, Number(landings), 0.0051);
    }

    /// <summary>Ten feet down nothing is lowered, and nothing is said of it.</summary>
    [Fact]
    public void Ground_far_below_stays_and_is_not_told()
    {
        var model = Bridges.Build(StepCase.Short("site: { span: 30 ft, ground: [[0 ft, -3 ft], [30 ft, -3 ft]] }"));
        var told = PrintPlan.Of(model).Told;
        Assert.Contains("The ground line is that of the project file", told);
        Assert.DoesNotContain(told, t => t.Contains("lowered", StringComparison.Ordinal));
    }

    private static double Number(string told) =>
        double.Parse(Millimetres().Match(told).Groups["mm"].Value, CultureInfo.InvariantCulture);

    [GeneratedRegex("up to (?<mm>[0-9.]+) mm", RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex Millimetres();
}
