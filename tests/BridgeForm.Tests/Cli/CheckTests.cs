using System.Text.Json;

namespace BridgeForm.Tests.Cli;

public sealed class CheckTests : IDisposable
{
    private readonly CommandRun _run = new();

    public void Dispose() => _run.Dispose();

    [Fact]
    public void Check_prints_within_100_columns_and_writes_nothing()
    {
        var file = _run.Write("bridge.yaml", Bridges.Inclined);
        var (_, output, _) = CommandRun.Run("check", file, "--all");
        Assert.All(output.Split('\n'), line => Assert.True(line.Length <= 100, line));
        Assert.Contains("engineer", output, StringComparison.Ordinal);
        Assert.Equal(["bridge.yaml"], _run.Snapshot().Keys);
    }

    [Fact]
    public void A_failing_check_is_1_and_make_names_it_on_standard_error()
    {
        // A guard of 30 in is below any code's.
        var file = _run.Write("low.yaml", Bridges.Garden.Replace("length: 40 in", "length: 30 in", StringComparison.Ordinal));
        var (code, output, _) = CommandRun.Run("check", file, "--json", _run.Path("report.json"), "--all");
        Assert.Equal(1, code);
        Assert.Contains("FAILS", output, StringComparison.Ordinal);
        using var report = JsonDocument.Parse(File.ReadAllBytes(_run.Path("report.json")));
        Assert.Contains(
            report.RootElement.GetProperty("checks").EnumerateArray(),
            c => c.GetProperty("id").GetString() == "guard-height" && c.GetProperty("status").GetString() == "fail");
        var (made, _, error) = CommandRun.Run("make", file);
        Assert.Equal(0, made);
        Assert.Contains("guard-height", error, StringComparison.Ordinal);
        Assert.Contains("guard-height", File.ReadAllText(_run.Path("low-out/profiles/B1.dxf")), StringComparison.Ordinal);
    }

    // Ropes 12 in apart: the section turns over under every load. That is a failing check, not a shape that is not found or a
    // defect, and no tilt is told; everything can still be made.
    [Fact]
    public void A_section_that_rolls_over_is_1_and_has_no_tilt()
    {
        var file = _run.Write("narrow.yaml", Bridges.Garden.Replace("spacing: 46 in", "spacing: 12 in", StringComparison.Ordinal));
        var (code, output, _) = CommandRun.Run("check", file, "--json", _run.Path("report.json"), "--all");
        Assert.Equal(1, code);
        var flat = string.Join(' ', output.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries));
        Assert.Matches(@"live-full .* rolls over\r?\n", output);
        Assert.Contains("It rolls over in", output, StringComparison.Ordinal);

        // Said before anything else that fails, in the table of the worst cases, and no walker's comfort is promised.
        Assert.Matches(@"NOT UPRIGHT: it rolls over in (\d+) of \d+ load cases, the empty bridge among them", flat);
        Assert.True(output.IndexOf("NOT UPRIGHT", StringComparison.Ordinal) < output.IndexOf("FAILS  ", StringComparison.Ordinal));
        Assert.Matches(@"cross slope +dead: .*; it rolls over\r?\n", output);
        Assert.Contains("no comfort is told of it", flat, StringComparison.Ordinal);
        Assert.DoesNotContain("comfort class", flat, StringComparison.Ordinal);
        using var report = JsonDocument.Parse(File.ReadAllBytes(_run.Path("report.json")));
        var full = report.RootElement.GetProperty("cases").EnumerateArray().Single(c => c.GetProperty("id").GetString() == "live-full");
        Assert.Equal(JsonValueKind.Null, full.GetProperty("cross_slope_deg").ValueKind);
        Assert.True(full.GetProperty("cross_slope_first_order_deg").GetDouble() > 0);
        Assert.True(full.GetProperty("rolls_over").GetBoolean());
        Assert.Contains(
            report.RootElement.GetProperty("ropes").GetProperty("roll").EnumerateArray(),
            r => r.GetProperty("rolls_over").GetBoolean() && r.GetProperty("height_factor").GetDouble() < 1);
        var (made, _, error) = CommandRun.Run("make", file, "--only", "preview,drawings,report");
        Assert.Equal(0, made);
        Assert.Contains("roll", error, StringComparison.Ordinal);
        Assert.Contains("IT ROLLS OVER", File.ReadAllText(_run.Path("narrow-out/preview.html")), StringComparison.Ordinal);
    }
}
