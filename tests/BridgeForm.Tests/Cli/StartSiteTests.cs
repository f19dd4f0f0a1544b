using BridgeForm.Cli.Streams;

namespace BridgeForm.Tests.Cli;

/// <summary><c>start FILE --span L</c>: a passing file for a site, or why there is none, and nothing written then.</summary>
public sealed class StartSiteTests : IDisposable
{
    private readonly CommandRun _run = new();

    public void Dispose() => _run.Dispose();

    [Theory]
    [InlineData("18 ft", "2 ft", "private", "imperial")]
    [InlineData("6 m", "-0.4 m", "public", "metric")]
    public void A_site_gets_a_short_file_that_passes(string span, string rise, string use, string units)
    {
        var file = _run.Path("site.yaml");
        var (code, text, error) = CommandRun.Run("start", file, "--span", span, "--rise", rise, "--use", use);
        Assert.Equal((ExitCode.Done, ""), (code, error));
        Assert.Contains("designs looked at", text, StringComparison.Ordinal);
        var written = File.ReadAllText(file);
        Assert.Contains($"units: {units}\nuse: {use}\nsite:\n  span: {span}\n  rise: {rise}\n", written, StringComparison.Ordinal);
        Assert.Contains("People stand on this", written, StringComparison.Ordinal);
        Assert.InRange(written.Split('\n').Length, 15, 60);
        var (checkedCode, screen, _) = CommandRun.Run("check", file);
        Assert.Equal(ExitCode.Done, checkedCode);
        Assert.DoesNotContain("landing-step", screen, StringComparison.Ordinal);
    }

    [Fact]
    public void The_ground_and_the_yard_are_taken_over()
    {
        var ground = _run.Write("ground.csv", "x,y\n0 ft,-1 ft\n9 ft,-8 ft\n18 ft,-2 ft\n");
        var file = _run.Path("site.yaml");
        var (code, _, error) = CommandRun.Run(
            "start", file, "--span", "18 ft", "--ground", ground, "--lumber", "2x4,2x6,2x8,4x4,4x6,1x6", "--prefer", "flat");
        Assert.Equal((ExitCode.Done, ""), (code, error));
        var written = File.ReadAllText(file);
        Assert.Contains("    - [9 ft, -8 ft]\n", written, StringComparison.Ordinal);
        Assert.Contains("    sections: [2x4, 2x6, 2x8, 4x4, 4x6, 1x6]\n", written, StringComparison.Ordinal);
        Assert.DoesNotContain("5/4x6", written.Split('\n').Where(l => !l.Contains('#', StringComparison.Ordinal)));
        Assert.Equal(ExitCode.Done, CommandRun.Run("check", file).Code);
    }

    // Two inches of a board cost a cent here and a thousand dollars there: what is cheapest turns round, and the file names the list.
    [Fact]
    public void The_cheapest_by_a_price_list()
    {
        var rows = new[] { "2x4", "2x6", "2x8", "2x10", "2x12", "4x4", "4x6", "6x6", "1x4", "1x6", "5/4x6" }
            .SelectMany(s => new[] { "treated", "cedar" }.SelectMany(w => new[] { "8 ft", "10 ft", "12 ft" }
                .Select(l => $"{w},{s},{l},{(s is "1x6" ? 9 : 1000)}")));
        Directory.CreateDirectory(_run.Path("lists"));
        var prices = _run.Write(Path.Combine("lists", "it's.csv"), "stock,section,length,price\n" + string.Join('\n', rows) + "\n");
        var file = _run.Path("site.yaml");
        var (code, _, error) = CommandRun.Run("start", file, "--span", "12 ft", "--prices", prices, "--prefer", "cheap");
        Assert.Equal((ExitCode.Done, ""), (code, error));
        var written = File.ReadAllText(file);
        Assert.Contains("prices: 'lists/it''s.csv'\n", written, StringComparison.Ordinal);
        Assert.Contains("section: 1x6", written, StringComparison.Ordinal);
        Assert.Equal(ExitCode.Done, CommandRun.Run("check", file).Code);
    }

    // An editor finds the schema where the first line says.
    [Fact]
    public void The_schema_lies_beside_the_file()
    {
        var file = _run.Path("site.yaml");
        Assert.Equal(ExitCode.Done, CommandRun.Run("start", file, "--span", "12 ft").Code);
        Assert.StartsWith("# yaml-language-server: $schema=project-file.schema.json\n", File.ReadAllText(file), StringComparison.Ordinal);
        Assert.True(File.Exists(_run.Path("project-file.schema.json")));
        // What to measure before anything is cut.
        Assert.True(File.Exists(_run.Path("survey.pdf")));
    }

    [Theory]
    [InlineData("start", "F", "--span", "18 ft", "--prefer", "cheap")]
    [InlineData("start", "F", "--rise", "2 ft")]
    [InlineData("start", "F", "--span", "18")]
    [InlineData("start", "F", "--span", "18 ft", "--slope", "12")]
    [InlineData("start", "F", "--span", "18 ft", "--lumber", ",")]
    [InlineData("start", "F", "--span", "18 ft", "--lumber", "2x99")]
    [InlineData("start", "F", "--span", "18 ft", "--rise", "12 ft")]
    [InlineData("start", "F", "--span", "18 ft", "--ground", "G")]
    public void What_cannot_be_asked_is_told_and_nothing_is_written(params string[] arguments)
    {
        var ground = _run.Write("ground.csv", "0 ft\n");
        var file = _run.Path("site.yaml");
        var (code, _, error) = CommandRun.Run([.. arguments.Select(a => a is "F" ? file : a is "G" ? ground : a)]);
        Assert.Equal(ExitCode.WrongInput, code);
        Assert.NotEmpty(error);
        Assert.False(File.Exists(file));
    }

    [Fact]
    public void A_deck_flatter_than_any_rope_hangs_is_told_with_the_check_in_the_way()
    {
        var file = _run.Path("site.yaml");
        var (code, _, error) = CommandRun.Run("start", file, "--span", "26 ft", "--slope", "1:60");
        Assert.Equal(ExitCode.CheckFails, code);
        Assert.Contains("wish-slope", error, StringComparison.Ordinal);
        Assert.False(File.Exists(file));
    }

    [Fact]
    public void A_file_that_is_there_is_not_written_over_before_anything_is_looked_for()
    {
        var file = _run.Write("site.yaml", "mine");
        Assert.Equal(ExitCode.FileTrouble, CommandRun.Run("start", file, "--span", "18 ft").Code);
        Assert.Equal("mine", File.ReadAllText(file));
    }
}
