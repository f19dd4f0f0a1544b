using BridgeForm.Cli.Streams;

namespace BridgeForm.Tests.Cli;

/// <summary>Wood that no table has values for is told, and does not pass for sound.</summary>
public sealed class NotCheckedTests : IDisposable
{
    // Every check that can fail holds; of white oak no table has values.
    private const string Oak = """
        name: Oak rails (invented)
        units: imperial
        site: { span: 30 ft }
        ropes: { type: rope-6x19-iwrc-eips-galvanized-3/4, spacing: 46 in, sag: 6.3 % }
        frames:
          spacing: 3 ft
          base: { section: 3x6, length: 58 in }
          channel: { clearance: 1/8 in, depth: 5/8 in, end_depth: 3/4 in }
          post: { section: 3x4, length: 40 in, lean: 8 deg, foot: 18-1/4 in }
          brace: { section: 2x4, lean: 12 deg, foot: 28-1/4 in }
        guard: { rails: { section: 2x4, count: 6, stock: oak }, cap: { section: 2x6, stock: treated } }
        stock:
          treated: { species: southern-pine, grade: no1, treated: true, lengths: [8 ft, 10 ft, 12 ft, 16 ft] }
          oak: { species: white-oak, grade: no1, lengths: [8 ft, 12 ft] }
        """;

    private const string Told = "not checked: 2x4 white-oak no1 (rail-bending): no table has values; give your own under values";

    private readonly CommandRun _run = new();

    public void Dispose() => _run.Dispose();

    [Fact]
    public void Check_says_so_and_ends_with_1()
    {
        var file = _run.Write("oak.yaml", Oak);
        var (code, output, _) = CommandRun.Run("check", file, "--json", _run.Path("report.json"), "--all");
        Assert.Equal(ExitCode.CheckFails, code);
        Assert.DoesNotContain("FAILS", output, StringComparison.Ordinal);
        Assert.Contains(Told, output, StringComparison.Ordinal);
        Assert.Contains("\"not_checked\": \"2x4 white-oak no1\"", File.ReadAllText(_run.Path("report.json")), StringComparison.Ordinal);
        var (quietCode, quiet, _) = CommandRun.Run("check", file, "--quiet");
        Assert.Equal((ExitCode.CheckFails, Told), (quietCode, quiet.Trim()));
    }

    // An engineer's line that states a number is no missing value.
    [Fact]
    public void With_values_it_ends_with_0()
    {
        const string Values = "values: [{ species: white-oak, grade: No. 1, size: 2x4, bending: 1200 psi, tension: 700 psi, shear: 200 "
            + "psi, compression_across: 700 psi, compression: 900 psi, modulus: 1200000 psi, source: invented }]\n";
        var (code, output, _) = CommandRun.Run("check", _run.Write("oak.yaml", Oak + "\n" + Values), "--all");
        Assert.Equal(ExitCode.Done, code);
        Assert.DoesNotContain("not checked", output, StringComparison.Ordinal);
        Assert.Contains("engineer", output, StringComparison.Ordinal);
    }

    [Fact]
    public void Make_says_so_on_standard_error()
    {
        var (code, _, error) = CommandRun.Run("make", _run.Write("oak.yaml", Oak), "--only", "report", "--quiet");
        Assert.Equal(ExitCode.Done, code);
        Assert.Contains(Told, error, StringComparison.Ordinal);
    }
}
