using BridgeForm.Cli.Streams;
using BridgeForm.Cli.Text;

namespace BridgeForm.Tests.Cli;

public sealed class CorrectTests : IDisposable
{
    private readonly CommandRun _run = new();

    public void Dispose() => _run.Dispose();

    [Fact]
    public void Turns_marks_and_checks_in_100_columns_and_nothing_is_written()
    {
        var file = _run.Write(
            "bridge.yaml", Bridges.Garden + "\nas_built: { temperature: 50 F, sag: { left: 20 in, right: 19 in } }\n");
        var (code, output, error) = CommandRun.Run("correct", file);
        Assert.True(code == ExitCode.Done, error + output);
        Assert.All(output.Split('\n'), line => Assert.True(line.Length <= 100, line));
        Assert.Matches(@"left +(take in|let out) \d", output);
        Assert.Contains("MARKS that follow", output, StringComparison.Ordinal);
        Assert.Contains("F11", output, StringComparison.Ordinal);
        Assert.Contains("if nothing is turned", output, StringComparison.Ordinal);
        Assert.Equal(["bridge.yaml"], _run.Snapshot().Keys);
    }

    [Fact]
    public void With_frames_on_levels_are_told_in_place_of_marks()
    {
        var file = _run.Write(
            "bridge.yaml",
            Bridges.Inclined.Replace("sag: 5 %", "sag: 5 %, ends: { turnbuckle: { pitch: 4 mm } }", StringComparison.Ordinal)
                + "\nas_built: { stage: frames, temperature: 10 C, sag: { left: 560 mm, right: 570 mm } }\n");
        var (_, output, error) = CommandRun.Run("correct", file);
        Assert.Empty(error);
        Assert.All(output.Split('\n'), line => Assert.True(line.Length <= 100, line));
        Assert.Contains("LEVELS that follow", output, StringComparison.Ordinal);
        Assert.DoesNotContain("MARKS", output, StringComparison.Ordinal);
    }

    [Fact]
    public void A_file_without_measures_is_2_and_says_what_to_write()
    {
        var (code, _, error) = CommandRun.Run("correct", _run.Write("bridge.yaml", Bridges.Garden));
        Assert.Equal(ExitCode.WrongInput, code);
        Assert.Contains("as_built: {", error, StringComparison.Ordinal);
    }

    // Feet for inches: both values are told, and where.
    [Fact]
    public void A_sag_that_no_rope_of_this_bridge_has_is_2_with_both_values()
    {
        var file = _run.Write(
            "bridge.yaml", Bridges.Garden + "\nas_built: { temperature: 50 F, sag: { left: 20 in, right: 20 ft } }\n");
        var (code, _, error) = CommandRun.Run("correct", file);
        Assert.Equal(ExitCode.WrongInput, code);
        Assert.Contains("'20 ft'", error, StringComparison.Ordinal);
        Assert.Contains("'6 %'", error, StringComparison.Ordinal);
        Assert.Contains("[as-built-other-rope]", error, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(0, "none")]
    [InlineData(-19, "take in 3-1/6")]
    [InlineData(18, "let out 3")]
    [InlineData(5, "let out 5/6")]
    [InlineData(-3, "take in 1/2")]
    public void Turns_in_flats(int flats, string words) => Assert.Equal(words, CorrectText.InFlats(flats));
}
