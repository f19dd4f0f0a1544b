using System.Globalization;
using BridgeForm.Output;
using BridgeForm.Output.Tables;
using BridgeForm.Pieces;
using BridgeForm.Roles;
using BridgeForm.Tests.Output.Samples;
using BridgeForm.Tests.Output.Templates;

namespace BridgeForm.Tests.Output.Tables;

public sealed class TableTests
{
    [Fact]
    public void Cut_list_has_a_row_for_each_piece_and_the_caution()
    {
        var rows = Read(CutList.Csv(SampleModel.Small, SampleUnits.Imperial));
        Assert.Equal(["Mark", "B1", "P1L", "R1", "D1", Caution.Text], rows.Select(r => r[0]));
        Assert.All(rows, r => Assert.Equal(rows[0].Count, r.Count));
    }

    [Fact]
    public void Cut_list_gives_lengths_twice_and_angles_to_a_tenth()
    {
        var rows = Read(CutList.Csv(SampleModel.Small, SampleUnits.Imperial));
        var post = rows[0].Zip(rows[2]).ToDictionary(p => p.First, p => p.Second, StringComparer.Ordinal);
        Assert.Equal("3", post["Quantity"]);
        Assert.Equal("post", post["Role"]);
        Assert.Equal("40 in", post["Blank length"]);
        Assert.Equal("1016.0", post["Blank length (mm)"]);
        Assert.Equal("8.0", post["Near mitre (deg)"]);
        Assert.Equal("0.0", post["Far mitre (deg)"]);
        Assert.Equal("F00-F02/post-left", post["Occurrences"]);
    }

    // docs/bridge.md, brace: long edge = height where it meets the post / cos β, short edge = long edge less the width times
    // (tan β + cot(α + β)); 28-1/4 in and 18-1/4 in from the middle, 8° against 12°, both 2x4.
    [Fact]
    public void Long_and_short_edge_of_a_brace_are_those_of_its_closed_form()
    {
        var rows = Read(CutList.Csv(TestPieces.Garden, SampleUnits.Imperial));
        var brace = rows[0].Zip(rows.First(r => r[2] is "brace")).ToDictionary(p => p.First, p => p.Second, StringComparer.Ordinal);
        var (lean, tilt) = (Bridges.Radians(8), Bridges.Radians(12));
        var height = ((28.25 - 18.25) - (3.5 / Math.Cos(lean))) / (Math.Tan(lean) + Math.Tan(tilt)) * 25.4;
        var edge = height / Math.Cos(tilt);
        Assert.Equal(edge, double.Parse(brace["Long edge (mm)"], CultureInfo.InvariantCulture), 0.051);
        Assert.Equal(
            edge - (3.5 * 25.4 * (Math.Tan(tilt) + (1 / Math.Tan(lean + tilt)))),
            double.Parse(brace["Short edge (mm)"], CultureInfo.InvariantCulture),
            0.051);
        Assert.True(double.Parse(brace["Blank length (mm)"], CultureInfo.InvariantCulture) > edge);
    }

    [Fact]
    public void Cut_out_of_reach_says_how_it_is_made()
    {
        var piece = SamplePieces.Post with
        {
            Far = new(1.22, 0, 0, InReach: false, Wedge: 0.35),
            Near = new(0, 1, 1, InReach: false, Wedge: 0) { Way = CutWay.CircularSaw },
        };
        var rows = Read(CutList.Csv(SampleModel.Small with { Pieces = [piece] }, SampleUnits.Imperial));
        var row = rows[0].Zip(rows[1]).ToDictionary(p => p.First, p => p.Second, StringComparer.Ordinal);
        Assert.Equal("saw with taper block", row["Far cut"]);
        Assert.Equal("20.1", row["Far wedge (deg)"]);
        Assert.Equal("circular saw along the template line, marked on and cut from both faces", row["Near cut"]);
    }

    [Fact]
    public void Rope_marks_stand_in_order_of_frames_to_a_sixteenth()
    {
        var rows = Read(RopeMarkTable.Csv(SampleModel.Small, SampleUnits.Imperial));
        Assert.Equal(
            ["F01", "35.4331 in", "900.0", "-0.7874 in", "-20.0", "0.00", "35.5 in", "901.7", "35.5 in", "902.1", "", ""], rows[2]);
        Assert.Equal(Caution.Text, rows[^1][0]);
    }

    [Fact]
    public void Ends_and_lengths_to_cut_follow_where_they_are_known_with_what_riggers_must_know()
    {
        var model = Bridges.Build(Bridges.Garden);
        var rows = Read(RopeMarkTable.Csv(model, SampleUnits.Imperial));
        var tape = rows[0].IndexOf("Tape from the first eye, at marking tension (mm)");
        Assert.Equal("0.0", rows.Single(r => r[0] is "eye A")[tape]);
        Assert.Equal(rows.Single(r => r[0] is "F11")[7], rows.Single(r => r[0] is "eye B")[tape]);
        Assert.Contains(rows, r => r[0].Contains("whips back", StringComparison.Ordinal));
        Assert.All(rows, r => Assert.Equal(rows[0].Count, r.Count));
        Assert.Contains(
            rows,
            r => r[0] is "Cut length of one rope"
                && r[7] == (model.Ropework.Cut!.Length!.Value * 1000).ToString("F1", System.Globalization.CultureInfo.InvariantCulture));
    }

    [Fact]
    public void Hoisting_table_has_every_stage_and_temperature_of_the_marks_that_were_chosen()
    {
        static List<List<string>> Rows(string text) => Read(
            HoistingSheet.Csv(
                Bridges.Build(text), SampleUnits.Imperial,
                t => t.ToString("F0", System.Globalization.CultureInfo.InvariantCulture)));
        var rows = Rows(Bridges.Garden);
        Assert.Equal(2 * 3, rows.Count(r => r[0] is "bare" or "frames"));
        Assert.Equal("bare", rows[1][0]);
        Assert.Equal("set to the plain marks", rows[1][1]);
        Assert.Contains(rows, r => r[0].Contains("Nobody stands under a rope", StringComparison.Ordinal));

        // Set short for the mean of 0.125 % to 0.5 %: flatter than by the plain marks.
        var shorter = Rows(Bridges.Garden.Replace("sag: 6 %", "sag: 6 %, new: as-is", StringComparison.Ordinal));
        Assert.Contains("0.31 %", shorter[1][1], StringComparison.Ordinal);
        Assert.True(Millimetres(shorter[1][5]) < Millimetres(rows[1][5]) - 10);
        // Level supports: the line of sight lies as far down as the rope sags.
        Assert.Equal(rows[1][5], rows[1][7]);
    }

    /// <summary>
    /// A sight line runs parallel to A–B, as far below the rope's point at either support; heights count from A's. B lies 2 m
    /// higher than A, so its mark lies 2 m higher, too; bare rope, near a parabola, is touched where its sag is measured.
    /// </summary>
    [Theory]
    [InlineData("2 m", 2000)]
    [InlineData("-1 m", -1000)]
    public void Sight_lines_are_marked_at_both_supports(string rise, double millimetres)
    {
        var rows = Read(HoistingSheet.Csv(
            Bridges.Build(Bridges.Inclined.Replace("rise: 2 m", "rise: " + rise, StringComparison.Ordinal)),
            SampleUnits.Metric,
            t => t.ToString("F0", System.Globalization.CultureInfo.InvariantCulture)));
        static double Value(string cell) => double.Parse(cell, System.Globalization.CultureInfo.InvariantCulture);
        var bare = rows.Where(r => r[0] == "bare").ToList();
        Assert.NotEmpty(bare);
        Assert.All(bare, r =>
        {
            Assert.Equal(-Value(r[5]), Value(r[9]), 5.0);
            Assert.Equal(millimetres - Value(r[5]), Value(r[11]), 5.0);
            Assert.Equal(-Value(r[7]), Value(r[9]), 0.1);
        });
    }

    // Whatever has a column in millimetres, kilograms, kilonewtons or square centimetres has one in the project's units before it.
    [Fact]
    public void Every_metric_column_stands_beside_one_in_the_units_of_the_project()
    {
        var model = Bridges.Build(Bridges.Garden);
        foreach (var csv in (string[])[
            CutList.Csv(model, SampleUnits.Imperial), TreatmentTable.Csv(model, SampleUnits.Imperial),
            StockPlanTable.Csv(model, SampleUnits.Imperial),
            HoistingSheet.Csv(model, SampleUnits.Imperial, t => "60 F"), KeeperTable.Csv(model),
            RopeMarkTable.Csv(model, SampleUnits.Imperial)])
        {
            var rows = Read(csv);
            Assert.All(rows, r => Assert.Equal(rows[0].Count, r.Count));
            for (var i = 0; i < rows[0].Count; i++)
            {
                if (rows[0][i].Split(" (") is [var name, "mm)" or "kg)" or "kN)" or "N)" or "cm2)" or "l)" or "C)"])
                {
                    Assert.Equal(name, rows[0][i - 1]);
                    Assert.All(rows.Skip(1).Where(r => r[i].Length > 0), r => Assert.Matches(" (in|ft|lb|lbf|ft2|gal|oz|F)$", r[i - 1]));
                }
            }
        }
    }

    // 1 kN is 224.81 lbf (NIST SP 811: 1 lbf = 4.448222 N); 0.294 kN are 66 lbf.
    [Fact]
    public void Pulls_are_told_in_pounds_too()
    {
        var rows = Read(HoistingSheet.Csv(Bridges.Build(Bridges.Garden), SampleUnits.Imperial, t => "60 F"));
        var at = rows[0].IndexOf("Largest tension of one rope (kN)");
        var kilonewtons = double.Parse(rows[1][at], System.Globalization.CultureInfo.InvariantCulture);
        var pounds = double.Parse(rows[1][at - 1].Split(' ')[0], System.Globalization.CultureInfo.InvariantCulture);
        Assert.Equal(kilonewtons * 1000 / 4.448222, pounds, 0.7);
    }

    [Theory]
    [InlineData("F01/post-left F02/post-left F03/post-left", "F01-F03/post-left")]
    [InlineData("F01/post-left F03/post-left F04/post-left", "F01 F03-F04/post-left")]
    [InlineData("F01/post-left F01/post-right F02/post-left F02/post-right", "F01-F02/post-left; F01-F02/post-right")]
    [InlineData("B99/board-1 B100/board-1", "B99-B100/board-1")]
    public void Occurrences_are_shortened_to_runs(string ids, string expected) =>
        Assert.Equal(expected, OccurrenceRanges.Write(ids.Split(' ')));

    private static double Millimetres(string cell) => double.Parse(cell, System.Globalization.CultureInfo.InvariantCulture);

    /// <summary>A reader of RFC 4180 with LF line ends.</summary>
    internal static List<List<string>> Read(string text)
    {
        Assert.EndsWith("\n", text, StringComparison.Ordinal);
        var rows = new List<List<string>> { new() };
        for (var at = 0; at < text.Length; at++)
        {
            var end = at;
            var quoted = text[at] == '"';
            if (quoted)
            {
                do
                {
                    end = text.IndexOf('"', end + 1) + 1;
                }
                while (end < text.Length && text[end] == '"');
            }
            else
            {
                end = text.IndexOfAny([',', '\n'], at);
            }

            var field = text[at..end];
            rows[^1].Add(quoted ? field[1..^1].Replace("\"\"", "\"", StringComparison.Ordinal) : field);
            Assert.Contains(text[end], ",\n");
            if (text[end] == '\n' && end + 1 < text.Length)
            {
                rows.Add([]);
            }

            at = end;
        }

        return rows;
    }

    [Fact]
    public void Quotes_and_commas_survive()
    {
        var rows = Read(CsvText.Write(["a", "b"], [["x, \"y\"", "z"]]));
        Assert.Equal(["x, \"y\"", "z"], rows[1]);
    }
}
