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
    private const int LeastDesigns = 5000;

    /// <summary>5,000 designs and more, with steps the finer the fewer sections there are.</summary>
    public static IReadOnlyList<IReadOnlyList<KeyChange[]>> Around(ProjectReading site, Proposal? found) =>
        new[] { GridSteps.Plain, GridSteps.Fine, GridSteps.Finest }.Select(s => Axes(site, found, s))
            .First(axes => axes.Aggregate(1, (n, axis) => n * axis.Count) >= LeastDesigns);

    /// <summary>About a thousand designs: whether any passes.</summary>
    public static IReadOnlyList<IReadOnlyList<KeyChange[]>> Coarse(ProjectReading site) => Axes(site, found: null, GridSteps.Coarse);

    private static IReadOnlyList<IReadOnlyList<KeyChange[]>> Axes(ProjectReading site, Proposal? found, GridSteps steps)
    {
        var p = site.Parameters!;
        var isMetric = p.Units == Quantities.UnitSystem.Metric;
        var ropes = RopeTable.Groups.First(g => g.Ropes.Contains(p.Ropes.Rope)).Ropes;
        var at = ropes.IndexOf(found?.Model.Parameters.Ropes.Rope ?? p.Ropes.Rope);
        var apart = (found?.Model.Parameters.Ropes ?? p.Ropes).Spacing;
        var onSale = p.StockNamed(p.Frames.Base.Stock).Sections;
        string Length(double metres) => isMetric
            ? string.Create(CultureInfo.InvariantCulture, $"{Math.Round(metres * 100) * 10:0} mm")
            : string.Create(CultureInfo.InvariantCulture, $"{Math.Round(metres / 0.0254):0} in");
        IEnumerable<string> sections(double least, double most, double area) => onSale
            .Where(s => s.Thickness >= least && s.Thickness <= most && s.Width * s.Thickness <= area).Select(s => s.Name);
        return
        [
            One("ropes.type", ropes.Skip(Math.Max(0, Math.Min(at - 2, ropes.Length - steps.Ropes))).Take(steps.Ropes).Select(r => r.Name)),
            One("ropes.spacing", steps.Apart.Select(f => Length(apart * f))),
            One("ropes.sag", steps.Sags.Select(s => string.Create(CultureInfo.InvariantCulture, $"{s} %"))),
            One("frames.channel.depth", isMetric ? ["16 mm", "22 mm"] : ["5/8 in", "7/8 in"]),
            One("frames.spacing", steps.Bays.Select(Length)),
            One("frames.base.section", steps.IsCoarse
                ? onSale.Where(s => s.Thickness > 0.06).OrderByDescending(s => s.Thickness * s.Width).Select(s => s.Name).Skip(1).Take(2)
                : sections(0.06, 1, 0.0145)),
            One("guard.cap.section", steps.IsCoarse ? [p.Guard.Cap.Name] : sections(0.035, 0.05, 0.0066)),
            One("guard.rails.section", steps.IsCoarse ? [p.Guard.Rail.Name] : sections(0.018, 0.03, 0.0042)),
            One("deck.board.section", steps.IsCoarse ? [p.Deck.Board.Name] : sections(0.035, 0.05, 0.0086)
                .Where(s => IsWalkedOn(onSale, s))),
        ];
    }

    // Narrower ones make a deck of twice as many boards and gaps.
    private static bool IsWalkedOn(IEnumerable<Section> onSale, string name) =>
        onSale.First(s => string.Equals(s.Name, name, StringComparison.Ordinal)).Width > 0.13;

    private static IReadOnlyList<KeyChange[]> One(string path, IEnumerable<string> values) =>
        [.. values.Distinct(StringComparer.Ordinal).Select(v => new[] { new KeyChange(path, v) })];
}

/// <summary>How fine a grid is: ropes of the table, shares of the ropes' distance, sags in percent, metres between frames.</summary>
internal sealed record GridSteps(int Ropes, double[] Apart, double[] Sags, double[] Bays, bool IsCoarse = false)
{
    public static GridSteps Coarse { get; } = new(6, [1, 1.12, 1.25, 1.4], [4.5, 5.5, 6.5, 7.5, 9], [0.76, 0.9], IsCoarse: true);

    public static GridSteps Plain { get; } = new(4, [0.9, 1, 1.12, 1.25], [4.5, 5.5, 6.5, 7.5, 9], [0.76, 0.89, 1.04]);

    public static GridSteps Fine { get; } =
        Plain with { Apart = [0.85, 0.9, 0.95, 1, 1.06, 1.12, 1.25], Bays = [0.7, 0.76, 0.82, 0.89, 1.04] };

    public static GridSteps Finest { get; } = Fine with { Ropes = 5, Sags = [4.5, 5, 5.5, 6, 6.5, 7, 7.5, 8, 9] };
}
