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

    // A sag does not tell how much of the stretch has come; turned by the wrong answer the ropes are drawn far too tight.
    [Fact]
    public void Ropes_set_short_with_frames_on_need_the_stretch_that_was_seen()
    {
        var asIs = Bridges.Garden.Replace("sag: 6 %", "sag: 6 %, new: as-is", StringComparison.Ordinal);
        const string Hangs = "as_built: { stage: complete, temperature: 60 F, sag: { left: 21.6 in, right: 21.6 in }";
        var (code, _, error) = CommandRun.Run("correct", _run.Write("bridge.yaml", $"{asIs}\n{Hangs} }}\n"));
        Assert.Equal(ExitCode.WrongInput, code);
        Assert.Contains("stretch: 0.2 %", error, StringComparison.Ordinal);

        // All of the mean has come: it hangs as drawn, and nothing is turned.
        var (_, output, told) = CommandRun.Run("correct", _run.Write("come.yaml", $"{asIs}\n{Hangs}, stretch: 0.313 % }}\n"));
        Assert.Empty(told);
        Assert.Matches(@"left +none +none", output);
    }

    // Half a foot between both ropes' sags tilts the finished bridge far beyond what cross-slope allows under load.
    [Fact]
    public void Ropes_of_very_unlike_length_are_1_and_nobody_steps_on_it()
    {
        var tilted = Bridges.Garden + "\nas_built: { stage: complete, temperature: 60 F, sag: { left: 14 in, right: 29 in } }\n";
        var (code, output, error) = CommandRun.Run("correct", _run.Write("bridge.yaml", tilted));
        Assert.True(code == ExitCode.CheckFails, error);
        Assert.Contains("KEEP OFF", output, StringComparison.Ordinal);
        Assert.Contains("was not looked at", output, StringComparison.Ordinal);
    }

    // With nothing turned there may be no bridge to check: that is no reason to walk on it.
    [Fact]
    public void What_hangs_so_that_nothing_can_be_checked_is_off_limits_too()
    {
        var read = BridgeForm.Project.Files.ProjectReader.Read(
            Bridges.Garden + "\nas_built: { stage: complete, temperature: 60 F, sag: { left: 20 in, right: 21 in } }\n", "b.yaml",
            BridgeForm.Materials.RopeTable.Catalogue).Parameters!;
        Assert.True(Correcting.TryFind(read, works => Array.ForEach(works, w => w()), out var found, out _));
        Assert.False((found with { AsItIs = found.AsItIs, ChangesAsItIs = [] }).IsOffLimits);
        Assert.True((found with { AsItIs = null }).IsOffLimits);
        Assert.True((found with { NoneAsItIs = "it rolls over" }).IsOffLimits);
        Assert.True((found with { NoneAfter = "it rolls over" }).FailsAfter);
        // The file's own limit, where it is stricter: half a degree.
        var strict = found.Parameters with { Limits = found.Parameters.Limits with { CrossSlope = Math.PI / 360 } };
        Assert.Equal(Math.PI / 360, (found with { Parameters = strict }).MostTilt, 1e-12);
        Assert.Equal(8 * Math.PI / 180, found.MostTilt, 1e-12);
    }

    [Fact]
    public void Check_says_that_what_was_measured_is_in_no_check()
    {
        var file = _run.Write(
            "bridge.yaml", Bridges.Garden + "\nas_built: { temperature: 50 F, sag: { left: 20 in, right: 19 in } }\n");
        var (_, output, error) = CommandRun.Run("check", file);
        Assert.Contains("AS BUILT: ", output + error, StringComparison.Ordinal);
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
