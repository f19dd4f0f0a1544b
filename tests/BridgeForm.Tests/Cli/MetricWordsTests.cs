using System.Text.RegularExpressions;

namespace BridgeForm.Tests.Cli;

/// <summary>A file in metric units is answered in them: inches stand only in what a source says, or beside their millimetres.</summary>
public sealed partial class MetricWordsTests : IDisposable
{
    // Not all of it holds, so that remedies speak too; wood by EN 338 and EN 336, rope by EN 12385-4.
    private const string Text = """
        name: A path in millimetres (invented)
        units: metric
        use: private
        site:
          span: 9 m
          a: { landing: { level: 150 mm, gap: 10 mm } }
          b: { landing: { level: 150 mm, gap: 10 mm } }
        ropes: { type: rope-6x19-iwrc-1770-20-mm, spacing: 1200 mm, sag: 6 % }
        frames:
          spacing: 900 mm
          base: { section: 95 x 145 mm, length: 1500 mm }
          channel: { clearance: 14 mm, depth: 18 mm, end_depth: 20 mm }
          post: { section: 45 x 95 mm, length: 1020 mm, lean: 8 deg, foot: 470 mm }
          brace: { section: 45 x 95 mm, lean: 12 deg, foot: 745 mm }
        deck: { board: { section: 45 x 145 mm } }
        guard: { rails: { section: 22 x 95 mm, count: 6 }, cap: { section: 45 x 145 mm } }
        loads: { point: { force: 1.35 kN, patch: 800 mm, edge: 200 mm } }
        """;

    private readonly CommandRun _run = new();

    public void Dispose() => _run.Dispose();

    [Theory]
    [InlineData("private")]
    [InlineData("public")]
    public void Check_answers_in_metric(string use)
    {
        var file = _run.Write("path.yaml", Text.Replace("use: private", $"use: {use}", StringComparison.Ordinal));
        var (_, all, _) = CommandRun.Run("check", file, "--all");
        var (_, brief, _) = CommandRun.Run("check", file);
        Assert.Contains("45 x 145 mm", Spaces().Replace(all, " "), StringComparison.Ordinal);
        Assert.Equal([], Imperial(WithoutSources(all)));
        Assert.Equal([], Imperial(WithoutSources(brief)));
    }

    // The search finds what it looks for: the same bridge in inches is full of it.
    [Fact]
    public void A_file_in_inches_is_full_of_inches()
    {
        var file = _run.Write("path.yaml", Text.Replace("units: metric", "units: imperial", StringComparison.Ordinal));
        Assert.True(Imperial(WithoutSources(CommandRun.Run("check", file, "--all").Out)).Count > 100);
    }

    [Fact]
    public void Tables_count_no_board_feet()
    {
        CommandRun.Run("make", _run.Write("path.yaml", Text), "--only", "tables", "--quiet");
        var plan = File.ReadAllText(_run.Path("path-out/stock-plan.csv"));
        Assert.Contains("volume of boards by dressed size", plan, StringComparison.Ordinal);
        Assert.DoesNotContain("oard feet", plan, StringComparison.Ordinal);
        var at = Array.IndexOf(plan.Split('\n')[0].TrimStart('\uFEFF').Split(','), "Volume");
        Assert.EndsWith(
            " m3", plan.Split('\n').Single(l => l.StartsWith("load,", StringComparison.Ordinal)).Split(',')[at], StringComparison.Ordinal);
        var hardware = File.ReadAllText(_run.Path("path-out/hardware.csv"));
        Assert.Equal([], Imperial(hardware.Split('\n').Skip(1).Select(l => string.Join(',', l.Split(',').SkipLast(1)))));
    }

    // Width × thickness × length of what is bought, of the boards and not of the pieces.
    [Fact]
    public void The_volume_is_that_of_the_boards()
    {
        var model = Bridges.Build(Text);
        Assert.All(model.StockPlan.Jobs, j => Assert.Equal(
            j.Boards.Sum(b => b.Length) * Sides(j.Section), j.Volume, 1e-9));

        static double Sides(string section) => section.Split(' ') is [var a, "x", var b, "mm"]
            ? double.Parse(a, System.Globalization.CultureInfo.InvariantCulture)
                * double.Parse(b, System.Globalization.CultureInfo.InvariantCulture) / 1e6
            : throw new FormatException(section);
    }

    // "by:" tells a check's sources, over as many lines as it takes; what stands there is quoted.
    private static IEnumerable<string> WithoutSources(string text)
    {
        var isSource = false;
        foreach (var line in text.Split('\n'))
        {
            var isNew = line.Length > 0 && !line.StartsWith("                  ", StringComparison.Ordinal);
            isSource = line.TrimStart().StartsWith("by: ", StringComparison.Ordinal) || (isSource && !isNew && line.Trim().Length > 0);
            if (!isSource)
            {
                yield return line;
            }
        }
    }

    /// <summary>Quantities by the inch and pound, without those beside their metric ones: 914 mm (36 in), 200 lbf (890 N).</summary>
    private static List<string> Imperial(IEnumerable<string> lines)
    {
        var text = Both().Replace(Spaces().Replace(string.Join(' ', lines), " "), "");
        return [.. Quantity().Matches(text).Select(m => Around(text, m))];
    }

    private static string Around(string text, Match m) =>
        text[Math.Max(0, m.Index - 60)..Math.Min(text.Length, m.Index + m.Length + 30)];

    [GeneratedRegex(@"\s+", RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex Spaces();

    [GeneratedRegex(
        @"[\d./-]+ (mm|m|kN|N|kPa|MPa|kg) \([\d./-]+ (in|ft|lbf|psf|lb)\)|[\d./-]+ (lbf|plf|ft²|psf|in) \([\d.]+ (N|N/m|m²|kPa|mm)\)",
        RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex Both();

    // "2.37 in live-full" is a factor in a case of that name: an inch is followed by no letter.
    [GeneratedRegex(
        @"\d (lbf|lb|psf|psi|plf|ksi|ft|ft²|in²|in³|in⁴|in·lbf|ft·lbf|°F)(?![\w·])"
            + @"|\d in(?=[,;:.)]|$| (wide|deep|thick|apart|of|and|to|or|rope)\b)|board feet|\b\d+x\d+\b(?!-)",
        RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex Quantity();
}
