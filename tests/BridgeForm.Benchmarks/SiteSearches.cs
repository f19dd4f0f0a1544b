using System.Globalization;
using BridgeForm.Checks;
using BridgeForm.Materials;
using BridgeForm.Project.Files;
using BridgeForm.Proposals;

namespace BridgeForm.Benchmarks;

/// <summary>The search over random sites: how many get a design, what the others are told, and how far from a full grid's best.</summary>
internal static class SiteSearches
{
    /// <summary>A site searched.</summary>
    public sealed record Searched(int Seed, SiteWish Wish, ProjectReading Reading, SearchResult Result, double Milliseconds);

    /// <summary>Searches for one seed.</summary>
    public static Searched Search(int seed)
    {
        var wish = SiteWishes.Of(seed);
        var reading = ProjectReader.Read(SiteFile.Text(wish), "site", RopeTable.Catalogue);
        if (reading.Parameters is null)
        {
            throw new InvalidOperationException($"Seed {seed}: " + string.Join("; ", reading.Lines));
        }

        var watch = System.Diagnostics.Stopwatch.StartNew();
        var result = Proposals.Search.Best(reading, prices: null, Ask());
        return new Searched(seed, wish, reading, result, watch.Elapsed.TotalMilliseconds);
    }

    /// <summary>What <c>start --span</c> asks for.</summary>
    public static SearchAsk Ask() => new() { Free = Proposals.Search.SiteKeys };

    /// <summary>Searches many sites; where nothing is found, the grid says whether something was to be found.</summary>
    public static int Print(int first, int count)
    {
        var (found, missed, broken, looked) = (0, 0, 0, new List<int>());
        var seeds = Enumerable.Range(first, count).AsParallel().AsOrdered().WithMergeOptions(ParallelMergeOptions.NotBuffered);
        foreach (var s in seeds.Select(Search))
        {
            looked.Add(s.Result.Looked);
            Console.Error.WriteLine(FormattableString.Invariant($"{s.Seed} {s.Result.Looked} looks, {s.Milliseconds:0} ms"));
            var about = $"{s.Seed}: {s.Wish.Span} rise {s.Wish.Rise} {s.Wish.Use} lumber [{string.Join(", ", s.Wish.Lumber)}]";
            if (!s.Result.Proposals.IsEmpty)
            {
                found++;
                broken += PassesAsWritten(s) ? 0 : 1;
                continue;
            }

            var grid = new SiteGrid(s.Reading);
            grid.Walk(GridAxes.Coarse(s.Reading));
            missed += grid.Passing > 0 ? 1 : 0;
            Console.WriteLine(about);
            Console.WriteLine(FormattableString.Invariant($"  none of {s.Result.Looked}; grid {grid.Passing} of {grid.Count} {grid.Best}"));
            foreach (var why in s.Result.Why)
            {
                Console.WriteLine("  - " + why);
            }
        }

        looked.Sort();
        Console.WriteLine(string.Create(
            CultureInfo.InvariantCulture,
            $"{count} sites: {found} with a design, {missed} without where the grid has one, {broken} that do not "
                + $"pass as written; designs looked at: median {looked[count / 2]}, most {looked[^1]}"));
        return missed + broken;
    }

    /// <summary>The search's best against the grid's, for so many sites.</summary>
    public static void Compare(int first, int count)
    {
        for (var seed = first; seed < first + count; seed++)
        {
            var s = Search(seed);
            var grid = new SiteGrid(s.Reading);
            grid.Walk(GridAxes.Around(s.Reading, s.Result.Proposals.FirstOrDefault()));
            var weight = s.Result.Proposals.FirstOrDefault()?.Figures.Weight ?? double.PositiveInfinity;
            Console.WriteLine(string.Create(
                CultureInfo.InvariantCulture,
                $"{seed}: {s.Wish.Span} rise {s.Wish.Rise} {s.Wish.Use}: search {weight:0} N of {s.Result.Looked}, "
                    + $"grid {grid.Lightest:0} N of {grid.Count} ({grid.Passing} pass): {weight / grid.Lightest:0.000}"));
            Console.WriteLine("   grid:   " + grid.Best);
            var changes = s.Result.Proposals.SelectMany(p => p.Changes).Select(c => $"{c.Path} {c.After}");
            Console.WriteLine("   search: " + string.Join(", ", changes));
        }
    }

    private static bool PassesAsWritten(Searched s)
    {
        var text = SiteFile.Finished(SiteFile.Text(s.Wish), s.Result.Proposals[0]);
        var reading = ProjectReader.Read(text, "site", RopeTable.Catalogue);
        if (reading.Parameters is { } p && new Rebuild().TryAnswer(p, CancellationToken.None, out var model, out _)
            && Verdict.IsClear(model.Checks))
        {
            return true;
        }

        Console.WriteLine($"{s.Seed}: the design that was found does not pass as it is written:\n{text}");
        return false;
    }
}
