using System.Globalization;
using BridgeForm.Checks;
using BridgeForm.Materials;
using BridgeForm.Project.Files;
using BridgeForm.Proposals;

namespace BridgeForm.Benchmarks;

/// <summary>
/// Every design of a full grid over a site, each built whole and judged by all its checks: what the search is held against. It knows
/// nothing of what helps a check. Designs pass where no check fails and nothing is left to see to that the search avoids too.
/// </summary>
internal sealed class SiteGrid(ProjectReading site)
{
    /// <summary>Designs in the grid, whether or not they can be built.</summary>
    public int Count { get; private set; }

    /// <summary>Designs that pass.</summary>
    public int Passing { get; private set; }

    /// <summary>Weight of the lightest that passes, newtons; infinite where none does.</summary>
    public double Lightest { get; private set; } = double.PositiveInfinity;

    /// <summary>What the lightest writes.</summary>
    public string Best { get; private set; } = "";

    /// <summary>Looks at all of them, side by side.</summary>
    /// <param name="axes">A key and the values to try, or several keys and their values together.</param>
    public void Walk(IReadOnlyList<IReadOnlyList<KeyChange[]>> axes)
    {
        var all = axes.Aggregate((IEnumerable<KeyChange[]>)[[]], (begun, axis) =>
            begun.SelectMany(b => axis.Select(a => b.Concat(a).ToArray())));
        var gate = new Lock();
        Parallel.ForEach(all, design =>
        {
            var weight = Weight(design);
            lock (gate)
            {
                Count++;
                Passing += double.IsFinite(weight) ? 1 : 0;
                if (weight < Lightest)
                {
                    (Lightest, Best) = (weight, string.Join(", ", design.Select(c => $"{c.Path} {c.Text}")));
                }
            }
        });
    }

    // Infinite for what does not pass.
    private double Weight(KeyChange[] design)
    {
        if (site.Changed(design).Parameters is not { } parameters
            || !new Rebuild().TryAnswer(parameters, CancellationToken.None, out var model, out _)
            || !Verdict.IsClear(model.Checks)
            || Avoided.Find(model).Any())
        {
            return double.PositiveInfinity;
        }

        var rope = model.Rope;
        return 2 * (rope.Loads.Sum() + (rope.WeightPerLength * rope.Segments.Sum(s => s.UnstressedLength)));
    }
}

/// <summary>The grid: sizes that a builder would try, coarser than those of the search in no axis that weighs much.</summary>
internal static class GridAxes
{
    /// <summary>Ropes, their distance and sag; frames apart; sections of bases, posts, rails and boards: 5,000 designs and more.</summary>
    public static IReadOnlyList<IReadOnlyList<KeyChange[]>> Around(ProjectReading site, Proposal? found)
    {
        var p = site.Parameters!;
        var isMetric = p.Units == Quantities.UnitSystem.Metric;
        var ropes = RopeTable.Groups.First(g => g.Ropes.Contains(p.Ropes.Rope)).Ropes;
        var at = ropes.IndexOf(found?.Model.Parameters.Ropes.Rope ?? p.Ropes.Rope);
        var apart = (found?.Model.Parameters.Ropes ?? p.Ropes).Spacing;
        var sections = p.StockNamed(p.Frames.Base.Stock).Sections;
        string Length(double metres) => isMetric
            ? string.Create(CultureInfo.InvariantCulture, $"{Math.Round(metres * 100) * 10:0} mm")
            : string.Create(CultureInfo.InvariantCulture, $"{Math.Round(metres / 0.0254):0} in");
        string[] named(params double[] thickWide) => [.. sections
            .Where(s => s.Thickness * 1000 >= thickWide[0] && s.Width * s.Thickness * 1e6 <= thickWide[1]).Select(s => s.Name)];
        return
        [
            One("ropes.type", ropes.Skip(Math.Max(0, at - 2)).Take(4).Select(r => r.Name)),
            One("ropes.spacing", new[] { 0.9, 1, 1.12, 1.25 }.Select(f => Length(apart * f))),
            One("ropes.sag", ["4.5 %", "5.5 %", "6.5 %", "7.5 %", "9 %"]),
            One("frames.channel.depth", isMetric ? ["16 mm", "22 mm"] : ["5/8 in", "7/8 in"]),
            One("frames.spacing", (isMetric ? new[] { 0.75, 0.9, 1.05 } : [0.76, 0.889, 1.04]).Select(Length)),
            One("frames.base.section", named(60, 14000)),
            One("guard.cap.section", isMetric ? ["45 x 95 mm", "45 x 145 mm"] : ["2x4", "2x6"]),
            One("guard.rails.section", isMetric ? ["22 x 145 mm", "28 x 145 mm"] : ["1x6", "5/4x6"]),
            One("deck.board.section", isMetric ? ["45 x 145 mm"] : ["2x6", "2x8"]),
        ];
    }

    private static IReadOnlyList<KeyChange[]> One(string path, IEnumerable<string> values) =>
        [.. values.Distinct(StringComparer.Ordinal).Select(v => new[] { new KeyChange(path, v) })];
}
