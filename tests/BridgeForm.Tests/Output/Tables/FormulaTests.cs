using System.Globalization;
using System.Text;
using System.Text.RegularExpressions;
using BridgeForm.Output;
using BridgeForm.Tests.Cli;

namespace BridgeForm.Tests.Output.Tables;

/// <summary>
/// No cell is a formula to a spreadsheet, whatever the user's texts begin with; what begins one is as OWASP's page on CSV
/// injection lists it: = + - @ tab and carriage return.
/// </summary>
public sealed partial class FormulaTests : IDisposable
{
    private const string Hostile = """
        name: "=1+1"
        units: imperial
        site: { span: 8 ft, temperatures: [-20 F, 100 F] }
        ropes:
          type: { diameter: 3/4 in, mass_per_length: 1.04 lb/ft, breaking_strength: 58800 lbf, metallic_area: 0.27 in2, modulus: 15000 ksi, source: "=cmd|'/C calc'!A0" }
          termination: { kind: clips, efficiency: 80 %, source: "-2+3" }
        frames: { spacing: 3 ft, base: { section: 3x6, stock: -1-1x }, post: { section: 3x4, stock: "-7" }, brace: { stock: "-7" } }
        deck: { board: { section: 2x6, stock: "-7" } }
        guard: { rails: { stock: "-7" }, cap: { stock: "-7" } }
        loads: { cases: [{ id: "=1+1", live: 20 psf }, { id: "@SUM(1)", live: 10 psf }, { id: "+5", live: 10 psf }, { id: "-9", live: 10 psf }] }
        stock:
          "-1-1x": { species: southern-pine, grade: no1, treated: true, lengths: [8 ft, 16 ft] }
          "-7": { species: southern-pine, grade: "=2+2", lengths: [8 ft, 16 ft] }
        values:
          - { species: southern-pine, grade: "=2+2", size: dimension, bending: 1000 psi, tension: 600 psi, shear: 175 psi, compression_across: 565 psi, compression: 1400 psi, modulus: 1400000 psi, source: "=3+3" }
        """;

    private readonly CommandRun _run = new();

    public void Dispose() => _run.Dispose();

    [Fact]
    public void No_cell_begins_a_formula_and_numbers_stay_numbers()
    {
        var cells = Cells(Hostile);
        Assert.DoesNotContain(cells, c => c is ['=' or '+' or '@' or '\t' or '\r', ..]);
        Assert.All(cells.Where(c => c.StartsWith('-')), c => Assert.Matches(OurNumber(), c));
        foreach (var text in (string[])["-1-1x", "-7", "=1+1", "@SUM(1)", "+5", "-9"])
        {
            Assert.Contains("'" + text, cells);
            Assert.DoesNotContain(text, cells);
        }

        Assert.Contains(cells, c => double.TryParse(c, NumberStyles.Float, CultureInfo.InvariantCulture, out var n) && n < 0);
        Assert.DoesNotContain(
            cells, c => c is ['\'', ..] && double.TryParse(c.AsSpan(1), NumberStyles.Float, CultureInfo.InvariantCulture, out _)
            && c is not ("'-7" or "'+5" or "'-9"));
    }

    [Theory]
    [InlineData("-12.5", "-12.5")]
    [InlineData("-3 ft 4-1/2 in", "-3 ft 4-1/2 in")]
    [InlineData("-1/16 in", "-1/16 in")]
    [InlineData("-14 lbf", "-14 lbf")]
    [InlineData("-", "'-")]
    [InlineData("--1", "'--1")]
    [InlineData("-1-1", "'-1-1")]
    [InlineData("-1+cmd|' /C calc'!A0", "'-1+cmd|' /C calc'!A0")]
    [InlineData("-1 in+1", "'-1 in+1")]
    [InlineData("+1", "'+1")]
    [InlineData("\t=1", "'\t=1")]
    [InlineData("\r=1", "\"'\r=1\"")]
    [InlineData("@a", "'@a")]
    [InlineData("=\"a\"", "\"'=\"\"a\"\"\"")]
    [InlineData("a=1", "a=1")]
    public void A_cell_of_unknown_origin_is_looked_at(string cell, string written) =>
        Assert.Equal("head\n" + written + "\n", CsvText.Write(["head"], [[cell]])[..(6 + written.Length)]);

    [Theory]
    [InlineData("a,b\n", "612C620A")]
    [InlineData("é\n", "EFBBBFC3A90A")] // the mark as RFC 3629, section 6, gives it
    public void More_than_ascii_carries_the_mark(string text, string bytes) =>
        Assert.Equal(bytes, Convert.ToHexString(CsvText.Bytes(text)));

    [Fact]
    public void Every_table_with_more_than_ascii_carries_the_mark()
    {
        Cells(Hostile.Replace("-7", "-7 é", StringComparison.Ordinal));
        var tables = Directory.GetFiles(_run.Path("out"), "*.csv").Select(File.ReadAllBytes).ToList();
        Assert.Equal(10, tables.Count);
        Assert.All(tables, t => Assert.Equal(t.Any(b => b > 127), t.AsSpan().StartsWith(Encoding.UTF8.Preamble)));
        Assert.Contains(tables, t => t.AsSpan().StartsWith(Encoding.UTF8.Preamble));
    }

    private List<string> Cells(string project)
    {
        var (code, _, error) = CommandRun.Run("make", _run.Write("a.yaml", project), "--only", "tables", "-o", _run.Path("out"));
        Assert.True(code == 0, error);
        return [.. Directory.GetFiles(_run.Path("out"), "*.csv").SelectMany(f => TableTests.Read(File.ReadAllText(f))).SelectMany(r => r)];
    }

    [GeneratedRegex(
        @"^-(\d+(\.\d+)?|(\d+ ft )?(\d+-)?\d+(/\d+)? (in|ft|mm|m|lbf|N|kN|lb|kg|F|C)|\d+\.\d+ (in|mm|m|kN))$",
        RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex OurNumber();
}
