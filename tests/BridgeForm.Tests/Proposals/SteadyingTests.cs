using BridgeForm.Checks;
using BridgeForm.Project.Editing;
using BridgeForm.Proposals;

namespace BridgeForm.Tests.Proposals;

/// <summary>A design that passes on paper and fails when it is set out by a line of the tape off is moved to where it passes.</summary>
public sealed class SteadyingTests
{
    // Every check holds from 27-1/2 in to 28-5/16 in of the brace's foot, and up to 54-7/8 in between the ropes.
    private const string Edges = """
        name: Edges (invented)
        site:
          span: 24 ft
          a: { landing: { level: 5-11/16 in, gap: 1/4 in } }
          b: { landing: { level: 5-11/16 in, gap: 1/4 in } }
        ropes: { sag: 7 %, spacing: 54 in, type: rope-6x19-iwrc-eips-galvanized-5/8 }
        frames:
          base: { length: 60 in, section: 4x4 }
          brace: { foot: 27-3/4 in }
          post: { length: 39-1/2 in }
        guard: { cap: { section: 2x4 }, rails: { section: 1x6 } }
        deck: { grip: grit }
        treatment: { fasteners: hot-dip-galvanized }

        """;

    private const string Foot = "frames.brace.foot";
    private const string Spacing = "ropes.spacing";

    [Theory]
    [InlineData(Foot, 28.3125, 28.375)]
    [InlineData(Foot, 27.5, 27.4375)]
    [InlineData(Spacing, 54.875, 54.9375)]
    public void What_stands_on_an_edge_is_moved_off_it(string path, double inches, double fails)
    {
        Assert.Equal((true, false), (Passes(Edges, path, inches), Passes(Edges, path, fails)));
        var end = Inches(Steadied(Written(Edges, path, inches)), path);
        Assert.InRange(Math.Abs(end - inches), 1.0 / 16, 1.5);
        Assert.All((double[])[-0.125, 0, 0.125], off => Assert.True(Passes(Edges, path, end + off), $"{end} in, {off} in off"));
    }

    // Ropes moved nearer for their own edge take the channels to the braces' feet, which stood clear of them before.
    [Fact]
    public void What_is_moved_for_one_does_not_stand_on_an_edge_of_the_other()
    {
        var corner = Written(Written(Edges, Foot, 28.5625), Spacing, 54.875);
        Assert.True(Passes(corner, Foot, 28.4375) && Passes(corner, Foot, 28.6875));
        Assert.False(Passes(corner, Spacing, 55));
        var end = Steadied(corner);
        var text = Written(Written(Edges, Foot, Inches(end, Foot)), Spacing, Inches(end, Spacing));
        foreach (var path in (string[])[Foot, Spacing])
        {
            var at = Inches(end, path);
            Assert.All((double[])[-0.125, 0.125], off => Assert.True(Passes(text, path, at + off), $"{path} {at} in, {off} in off"));
        }
    }

    [Fact]
    public void What_stands_clear_stays() => Assert.Empty(Steadied(Edges).Design.Changes);

    [Fact]
    public void What_may_not_move_stays()
    {
        var edge = Written(Edges, Foot, 28.3125);
        Assert.Equal(Spacing, Assert.Single(Steadied(edge, Spacing).Design.Changes).Key);
        Assert.Empty(Steadied(edge, "frames.stance").Design.Changes);
    }

    private static Judged Steadied(string text, params string[] free)
    {
        var run = new SearchRun(
            SearchTests.Read(text), null, new SearchAsk { Free = free.Length > 0 ? [.. free] : Search.SiteKeys }, CancellationToken.None);
        var passing = run.Judge.Look(Design.AsWritten);
        Assert.True(passing.Passes);
        return run.Steady(passing);
    }

    private static double Inches(Judged judged, string path) =>
        (path is Foot ? judged.Parameters!.Frames.Brace.Foot : judged.Parameters!.Ropes.Spacing) / 0.0254;

    private static string Written(string text, string path, double inches) =>
        FileEdit.Set(text, path, inches.ToString("0.####", System.Globalization.CultureInfo.InvariantCulture) + " in").Text!;

    // By a whole new reading and build, without the search.
    private static bool Passes(string text, string path, double inches) => SearchTests.Model(Written(text, path, inches)).Checks
        .All(c => c.Status != CheckStatus.Fail && c.NotChecked is null);
}
