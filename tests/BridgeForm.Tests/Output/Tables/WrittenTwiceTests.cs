using System.Globalization;
using System.Text;
using System.Text.RegularExpressions;
using BridgeForm.Output.Kinds;

namespace BridgeForm.Tests.Output.Tables;

/// <summary>
/// Quantities that a table gives twice, for people and in SI: read back here, by the definitions of the units (NIST SP 811,
/// appendix B, from memory: 1 in = 25.4 mm, 1 lb = 0.45359237 kg, 1 lbf = 4.4482216152605 N, 1 US gal = 231 in³ = 128 fl oz),
/// they are the same.
/// </summary>
public sealed partial class WrittenTwiceTests
{
    // Milliseconds; a table's line takes none.
    private const int Patience = 10_000;

    private const double Inch = 25.4;
    private const double Gallon = 231 * 0.254 * 0.254 * 0.254;

    // Each unit of people: its size in the unit of the other column, and half of its last digit.
    private static readonly Dictionary<(string People, string Si), (double Size, double Half)> s_units = new()
    {
        [("lb", "kg")] = (0.45359237, 0.05),
        [("ft2", "cm2")] = (144 * 2.54 * 2.54, 0.005),
        [("gal", "l")] = (Gallon, 0.005),
        [("fl oz", "l")] = (Gallon / 128, 0.05),
        [("lbf", "kN")] = (4.4482216152605e-3, 0.5),
        [("lbf", "N")] = (4.4482216152605, 0.5),
        // Finer than a tape: hundredths of an inch.
        [("in", "mm")] = (25.4, 0.005),
        [("mm", "mm")] = (1, 0.5),
        [("m", "mm")] = (1000, 0.0005),
        [("kg", "kg")] = (1, 0.05),
        [("m2", "cm2")] = (1e4, 0.0005),
        [("l", "l")] = (1, 0.005),
        [("kN", "kN")] = (1, 0.005),
        [("kN", "N")] = (1000, 0.005),
    };

    [Theory]
    [InlineData(Bridges.Garden, 9)]
    [InlineData(Bridges.Inclined, 9)]
    public void Both_columns_say_the_same(string project, int units)
    {
        var seen = new HashSet<string>(StringComparer.Ordinal);
        foreach (var (name, rows) in Tables(Bridges.Build(project)))
        {
            foreach (var (people, si, unit) in Pairs(rows[0]))
            {
                foreach (var row in rows.Skip(1).Where(r => r.Count == rows[0].Count && (r[people].Length > 0 || r[si].Length > 0)))
                {
                    var (least, most) = Read(row[people], unit);
                    var value = double.Parse(row[si], CultureInfo.InvariantCulture);
                    var half = Half(row[si]);
                    Assert.True(value + half >= least
                        && value - half <= most, $"{name}: {rows[0][people]} '{row[people]}' beside {row[si]} {unit}");
                    seen.Add(row[people].TrimStart('-', '0', '1', '2', '3', '4', '5', '6', '7', '8', '9', '.', '/', ' ') + "/" + unit);
                }
            }
        }

        Assert.True(seen.Count >= units - 4, $"only {string.Join(' ', seen)}");
    }

    /// <summary>And they are the model's, multiplied out here.</summary>
    [Fact]
    public void Si_columns_are_the_model()
    {
        var model = Bridges.Build(Bridges.Garden);
        var tables = Tables(model);
        var cuts = tables["cut-list.csv"];
        foreach (var (row, piece) in cuts.Skip(1).Zip(model.Pieces))
        {
            Near(piece.BlankLength * 1e3, Cell(cuts, row, "Blank length (mm)"), 0.05);
            Near(piece.Mass, Cell(cuts, row, "Mass each (kg)"), 0.005);
            Near(piece.CutArea * 100 * 100, Cell(cuts, row, "Cut area each (cm2)"), 0.05);
        }

        var plan = tables["stock-plan.csv"];
        foreach (var (row, board) in plan.Skip(1).Where(r => r[0] == "board").Zip(model.StockPlan.Boards))
        {
            Near(board.Length * 1e3, Cell(plan, row, "Length bought (mm)"), 0.05);
            Near(board.Leftover * 1e3, Cell(plan, row, "Leftover (mm)"), 0.05);
            Near(board.Waste * 1e3, Cell(plan, row, "Waste (mm)"), 0.05);
            // Nothing of a board is lost: what is bought is pieces, leftover and waste.
            Near(
                board.Length * 1e3,
                (board.Pieces.Sum(p => p.BlankLength) * 1e3) + Cell(plan, row, "Leftover (mm)") + Cell(plan, row, "Waste (mm)"), 0.2);
        }

        foreach (var (row, job) in plan.Skip(1).Where(r => r[0] == "sum").Zip(model.StockPlan.Jobs))
        {
            Near(job.Boards.Sum(b => b.Length) * 1e3, Cell(plan, row, "Length bought (mm)"), 0.05);
            Near(job.Boards.Sum(b => b.Leftover) * 1e3, Cell(plan, row, "Leftover (mm)"), 0.05);
            Near(job.Boards.Sum(b => b.Waste) * 1e3, Cell(plan, row, "Waste (mm)"), 0.05);
            Near(job.Mass, Cell(plan, row, "Mass (kg)"), 0.05);
            Near(job.FreshMass, Cell(plan, row, "Mass, fresh from treatment (kg)"), 0.05);
        }

        var brushed = tables["treatment.csv"];
        foreach (var row in brushed.Skip(1).Where(r => r[0] == "piece"))
        {
            var piece = model.Pieces.Single(p => p.Mark == row[1]);
            Near(piece.ExposedCutArea * 100 * 100, Cell(brushed, row, "Cut area each (cm2)"), 0.05);
            Near(piece.ExposedCutArea * piece.Occurrences.Length * 100 * 100, Cell(brushed, row, "Cut area in all (cm2)"), 0.05);
        }
    }

    [Fact]
    public void A_reader_of_this_test_reads_lengths_of_the_trade()
    {
        Assert.Equal(Inch * ((2 * 12) + 8.25), Middle("2 ft 8-1/4 in"), 9);
        Assert.Equal(-Inch * 7.1875, Middle("-7-3/16 in"), 9);
        Assert.Equal(Inch * 0.75, Middle("3/4 in"), 9);
        Assert.Equal(Inch * 120, Middle("10 ft"), 9);
    }

    private static double Middle(string text) => Read(text, "mm") is var (least, most) ? (least + most) / 2 : double.NaN;

    private static void Near(double wanted, double read, double within) =>
        Assert.InRange(read, wanted - within - 1e-9, wanted + within + 1e-9);

    private static double Cell(List<List<string>> table, List<string> row, string head) =>
        double.Parse(row[table[0].IndexOf(head)], CultureInfo.InvariantCulture);

    private static IEnumerable<(int People, int Si, string Unit)> Pairs(List<string> head)
    {
        for (var si = 0; si < head.Count; si++)
        {
            if (Bracketed().Match(head[si]) is { Success: true } match && head.IndexOf(match.Groups[1].Value) is var people and >= 0
                && match.Groups[2].Value != "C")
            {
                yield return (people, si, match.Groups[2].Value);
            }
        }
    }

    /// <summary>The least and the most that the text may stand for, in the unit of the other column.</summary>
    private static (double Least, double Most) Read(string text, string unit)
    {
        if (Imperial().Match(text) is { Success: true } m && unit == "mm")
        {
            double Number(int group) => m.Groups[group].Success ? double.Parse(m.Groups[group].Value, CultureInfo.InvariantCulture) : 0;
            var inches = (Number(2) * 12) + Number(3) + (m.Groups[4].Success ? Number(4) / Number(5) : 0);
            var value = (m.Groups[1].Success ? -1 : 1) * inches * Inch;
            return (value - (Inch / 32), value + (Inch / 32));
        }

        var space = text.IndexOf(' ', StringComparison.Ordinal);
        var (size, half) = s_units[(text[(space + 1)..], unit)];
        var number = double.Parse(text[..space], CultureInfo.InvariantCulture);
        return ((number - half) * size, (number + half) * size);
    }

    private static double Half(string text) =>
        0.5000001 * Math.Pow(10, text.IndexOf('.', StringComparison.Ordinal) is var dot and >= 0 ? dot + 1 - text.Length : 0);

    private static Dictionary<string, List<List<string>>> Tables(BridgeModel model)
    {
        var memory = new MemorySink();
        OutputKinds.Listing(() => []).Single(k => k.Word == "tables").Make(model, memory);
        return memory.Files.Where(f => f.Key.EndsWith(".csv", StringComparison.Ordinal))
            .ToDictionary(f => f.Key, f => Rows(Encoding.UTF8.GetString(f.Value).TrimStart('\uFEFF')), StringComparer.Ordinal);
    }

    private static List<List<string>> Rows(string text) =>
        [
            .. text.Split('\n', StringSplitOptions.RemoveEmptyEntries)
                .Select(line => Field().Matches(line.TrimEnd('\r')).Select(m => m.Groups[1].Value.Trim('"')).ToList()),
        ];

    [GeneratedRegex(@"^(?<1>.*) \((?<2>[A-Za-z0-9]+)\)$", RegexOptions.ExplicitCapture, Patience)]
    private static partial Regex Bracketed();

    [GeneratedRegex(
        @"^(?<1>-)?(?:(?<2>\d+) ft ?)?(?:(?:(?<3>\d+)(?:-(?=\d))?)?(?:(?<4>\d+)/(?<5>\d+))? in)?$", RegexOptions.ExplicitCapture, Patience)]
    private static partial Regex Imperial();

    // A field ends at a comma or at the line's end; one that begins with a quotation mark may hold commas.
    [GeneratedRegex("(?<=^|,)(?<1>\"[^\"]*(?:\"\"[^\"]*)*\"|[^,]*)", RegexOptions.ExplicitCapture, Patience)]
    private static partial Regex Field();
}
