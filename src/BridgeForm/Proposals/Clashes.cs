using System.Collections.Immutable;
using BridgeForm.Checks;
using BridgeForm.Project;
using BridgeForm.Project.Files;
using BridgeForm.Quantities;

namespace BridgeForm.Proposals;

/// <summary>Wishes and limits of one's own that cannot be met together with the rest: each is named.</summary>
internal static class Clashes
{
    // Ropes that sag at all are steeper at an end by more than this share.
    private const double OnTheLine = 1.001;

    /// <summary>Which wish of the search stands in the way, with what is to be had without it; nothing where none does.</summary>
    public static IEnumerable<string> OfWishes(ProjectReading reading, PriceList? prices, SearchAsk ask, CancellationToken token)
    {
        if (ask.MostSlope is { } most)
        {
            var run = new SearchRun(reading, prices, ask with { MostSlope = null, Prefer = Preference.Flat }, token);
            if (run.Pass(run.OnSale()) is { Passes: true } without)
            {
                yield return $"It is the wish for a deck no steeper than {CheckWords.Slope(most)} that cannot be met: the flattest "
                    + $"that was found to pass without it is {CheckWords.Slope(run.Best(without, Preference.Flat).Figures!.Slope)}.";
                yield break;
            }
        }

        if (ask.LeastWidth is not null)
        {
            var run = new SearchRun(reading, prices, ask with { LeastWidth = null }, token);
            if (run.Pass(run.OnSale()).Passes)
            {
                yield return "It is the wish for so much width between the guards that cannot be met: without it a design passes.";
            }
        }
    }

    /// <summary>
    /// Which limit that the file sets by itself stands in the way, where a design passes with the program's own; nothing where none does.
    /// </summary>
    public static IEnumerable<string> OfLimits(ProjectReading reading, PriceList? prices, SearchAsk ask, CancellationToken token)
    {
        foreach (var (key, own) in OwnLimits(reading.Parameters!).Where(l => reading.Values!.Given(l.Path)))
        {
            var run = new SearchRun(reading, prices, ask, token);
            if (run.Pass(run.Judge.Look(Design.AsWritten.With([new KeyChange(key, own)]))) is { Passes: true } without)
            {
                yield return $"It is {key} {reading.Values!.Find(key)!.Text} that cannot be met: with {own} in its place, the program's "
                    + $"own limit, a design passes, {CheckWords.Slope(without.Figures!.Slope)} at its steepest when empty.";
            }
        }
    }

    private static ImmutableArray<KeyChange> OwnLimits(BridgeParameters p) =>
    [
        new("limits.slope", QuantityText.Share(LimitParameters.SlopeFails)),
        new("limits.roll", NumberText.Rounded(LimitParameters.RollFails, 2)),
        new("limits.cross_slope", NumberText.Rounded(LimitParameters.TiltFails(p.Use) * 180 / Math.PI, 2) + " deg"),
    ];

    /// <summary>A wish that no deck meets, which is steeper somewhere than the line from support to support; null where none is.</summary>
    public static string? Impossible(ProjectReading reading, SearchAsk ask)
    {
        var site = reading.Parameters!.Site;
        var line = Math.Abs(site.Rise) / site.Span;
        return ask.MostSlope < line * (1 - Tolerances.SameLimit) || (ask.MostSlope is { } most && line > 0 && most <= line * OnTheLine)
            ? $"An empty deck no steeper than {CheckWords.Slope(ask.MostSlope!.Value)} and this rise clash: from support to support "
                + $"it is {CheckWords.Slope(line)} already, and what hangs is steeper at one end at any sag."
            : null;
    }
}
