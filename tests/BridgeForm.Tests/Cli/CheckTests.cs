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
        var (_, output, _) = CommandRun.Run("check", file);
        Assert.All(output.Split('\n'), line => Assert.True(line.Length <= 100, line));
        Assert.Contains("engineer", output, StringComparison.Ordinal);
        Assert.Equal(["bridge.yaml"], _run.Snapshot().Keys);
    }

    [Fact]
    public void A_failing_check_is_1_and_make_names_it_on_standard_error()
    {
        // A guard of 30 in is below any code's.
        var file = _run.Write("low.yaml", Bridges.Garden.Replace("length: 40 in", "length: 30 in", StringComparison.Ordinal));
        var (code, output, _) = CommandRun.Run("check", file, "--json", _run.Path("report.json"));
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
}
