using BridgeForm.Benchmarks;
using BridgeForm.Checks;
using BridgeForm.Project.Files;
using BridgeForm.Proposals;
using BridgeForm.Quantities;

namespace BridgeForm.Tests.Proposals;

/// <summary>
/// Sites of the random list: all that the search once found designs for, and the lightest of a small grid, looked at one by one.
/// tests/sites.sh does five hundred of them, and grids of more than five thousand designs.
/// </summary>
public sealed class SiteTests
{
    private const double AsLight = 1.05;

    // Eight of at most 8 m (26 ft): a long one takes as much time as ten of these.
    public static TheoryData<int> Seeds =>
        [.. Enumerable.Range(101, 200).Where(s => Span(s) <= 8).Take(Minutes.Cases(8, 40))];

    private static double Span(int seed) => QuantityReader.Read(QuantityKind.Length, SiteWishes.Of(seed).Span).Value;

    [Theory]
    [MemberData(nameof(Seeds))]
    public void A_site_gets_a_design_or_the_check_that_is_in_the_way(int seed)
    {
        var searched = SiteSearches.Search(seed);
        if (searched.Result.Proposals.IsEmpty)
        {
            const string Nearest = @"\([a-z-]+\): (in the nearest design it is \d|it fails in the nearest design)";
            Assert.All(searched.Result.Why, w => Assert.Matches(Nearest, w));
            Assert.NotEmpty(searched.Result.Why);
            return;
        }

        var text = SiteFile.Finished(SiteFile.Text(searched.Wish), searched.Result.Proposals[0]);
        var checks = SearchTests.Model(text).Checks;
        Assert.Empty(checks.Where(c => c.Status == CheckStatus.Fail).Select(c => c.Id));
        Assert.Empty(checks.Select(c => c.NotChecked).OfType<string>());
        string[] said = ["copper-on-zinc", "landing-step", "landing-gap", "deck-grip", "fasteners-in-treated-wood", "section-on-sale"];
        Assert.Empty(checks.Where(c => c.Status == CheckStatus.Warn && said.Contains(c.Id, StringComparer.Ordinal)).Select(c => c.Id));
    }

    [Fact]
    public void No_design_of_a_small_grid_is_lighter_by_a_twentieth()
    {
        var site = SearchTests.Read(SiteFile.Text(new SiteWish("25 ft")));
        var found = Assert.Single(Search.Best(site, null, SiteSearches.Ask()).Proposals);
        var grid = new SiteGrid(site);
        grid.Walk(
        [
            Axis("ropes.type", "rope-6x19-iwrc-eips-galvanized-5/8", "rope-6x19-iwrc-eips-galvanized-3/4"),
            Axis("ropes.spacing", "58 in", "60 in"),
            Axis("ropes.sag", "5.5 %", "7 %", "8.5 %"),
            Axis("frames.spacing", "30-1/4 in", "34 in", "39 in"),
            Axis("frames.base.section", "4x4", "4x6"),
            Axis("guard.rails.section", "1x6", "5/4x6"),
            Axis("guard.cap.section", "2x4", "2x6"),
        ]);
        Assert.True(grid.Passing > 5, grid.Passing.ToString(System.Globalization.CultureInfo.InvariantCulture));
        Assert.InRange(found.Figures.Weight, 0, AsLight * grid.Lightest);
    }

    private static IReadOnlyList<KeyChange[]> Axis(string path, params string[] values) =>
        [.. values.Select(v => new[] { new KeyChange(path, v) })];
}
