using System.Globalization;
using System.Text.RegularExpressions;
using BridgeForm.Output.Drawing;
using BridgeForm.Output.ShopSheets;
using BridgeForm.Quantities;
using BridgeForm.Roles;
using BridgeForm.Stocking;

namespace BridgeForm.Tests.Stocking;

public sealed class UpkeepTests
{
    private static readonly TimeSpan s_patience = TimeSpan.FromSeconds(1);
    private static readonly Lazy<BridgeModel> s_garden = new(() => Bridges.Build(Bridges.Garden));

    // 29 CFR 1926.1413 (a)(2)(ii)(A)(3) and (B), of standing ropes: two broken wires in one lay, one at an end, 5 % of diameter.
    [Theory]
    [InlineData("more than two broken wires in one lay")]
    [InlineData("more than one broken wire in one lay at an end")]
    [InlineData("more than 5 % below nominal")]
    [InlineData("birdcage")]
    [InlineData("heat")]
    public void The_bridge_is_closed_by_what_the_rule_names(string words) =>
        Assert.Contains(UpkeepPlan.Close, c => c.Contains(words, StringComparison.Ordinal));

    // The load cases of the empty bridge, cold, as designed and hot, are among them; in between it hangs deeper the warmer it is.
    [Fact]
    public void Expected_sags_are_those_of_the_load_cases()
    {
        var model = s_garden.Value;
        var sags = UpkeepPlan.Sags(model.Parameters, model.Rope);
        double Case(string id) => model.Cases.Single(c => c.Id == id).Shape!.Sag;
        Assert.Equal(Case(LoadCaseIds.Cold), sags[0].Sag, 1e-7);
        Assert.Equal(Case(LoadCaseIds.Hot), sags[^1].Sag, 1e-7);
        Assert.Equal(
            model.Rope.Sag, sags.Single(s => Math.Abs(s.Temperature - model.Parameters.Site.ReferenceTemperature) < 1e-9).Sag, 1e-7);
        Assert.All(sags.Zip(sags.Skip(1)), pair => Assert.True(pair.First.Sag < pair.Second.Sag));
    }

    // Whole degrees of the file's units, at most ten steps, those of the file among them: by hand.
    [Theory]
    [InlineData("temperatures: [-5 C, 38 C], reference_temperature: 12 C", new[] { -5.0, 0, 5, 12, 15, 20, 25, 30, 35, 38 })]
    [InlineData(
        "temperatures: [0 F, 90 F], reference_temperature: 60 F",
        new[] { -17.778, -12.222, -6.667, -1.111, 4.444, 10, 15.556, 21.111, 26.667, 32.222 })]
    public void Sags_are_told_at_whole_degrees(string site, double[] wanted)
    {
        var units = site.Contains(" C", StringComparison.Ordinal) ? "metric" : "imperial";
        var model = Bridges.Build(Bridges.Garden.Replace("span: 30 ft", $"span: 30 ft, {site}", StringComparison.Ordinal)
            .Replace("units: imperial", $"units: {units}", StringComparison.Ordinal));
        var found = UpkeepPlan.Sags(model.Parameters, model.Rope).Select(s => s.Temperature).ToList();
        Assert.Equal(wanted.Length, found.Count);
        Assert.All(found.Zip(wanted), p => Assert.Equal(p.Second, p.First, 2e-3));
    }

    // What is said to whoever handles the ropes and what the owner's log asks for are one.
    [Fact]
    public void Ropes_and_clips_are_looked_at_as_often_as_the_log_says()
    {
        var model = s_garden.Value;
        var told = model.Ropework.Cautions.Where(c => c.Contains(" a year", StringComparison.Ordinal)).ToList();
        Assert.Equal(2, told.Count);
        Assert.All(told, c => Assert.Contains("twice a year", c, StringComparison.Ordinal));
        Assert.All(UpkeepPlan.Parts(model.Parameters).Where(p => p.Number is 2 or 3), p => Assert.Equal(2, p.Later.Length));
    }

    // 3/4 in = 0.75 in, of which 95 % are 0.7125 in: what a caliper must not read less of.
    [Fact]
    public void The_least_diameter_stands_as_a_figure_for_the_caliper()
    {
        var look = UpkeepPlan.Parts(s_garden.Value.Parameters).Single(p => p.Part is "ropes").Look;
        const string Pattern = "under (?<in>[0-9.]+) in closes the bridge";
        var told = Regex.Match(look, Pattern, RegexOptions.ExplicitCapture, s_patience).Groups["in"].Value;
        Assert.Equal(0.7125, double.Parse(told, CultureInfo.InvariantCulture), 6e-4);
    }

    // From mark to mark the rope is as long as it was marked and what its pull adds: T / EA of it, T between the level pull and the
    // largest. Ropes that have stretched by the mean hang as drawn; what then lies between the marks is longer by it.
    [Fact]
    public void Ropes_set_short_have_a_length_to_see_their_stretch_by()
    {
        var model = Bridges.Build(Bridges.Garden.Replace("sag: 6 %", "sag: 6 %, new: as-is", StringComparison.Ordinal));
        var (chosen, reference) = (model.Ropework.Chosen, model.Parameters.Site.ReferenceTemperature);
        SagAt At(double short1) => UpkeepPlan.Sags(model.Parameters, model.Rope, short1)
            .Single(s => Math.Abs(s.Temperature - reference) < 1e-9);
        var newly = At(chosen.Shorter - 1);
        var marked = chosen.Marks[^2].Unstressed - chosen.Marks[1].Unstressed;
        var (stiffness, pull) = (model.Rope.AxialStiffness, model.Stages()[^1].Tension);
        Assert.InRange((newly.BetweenMarks / marked) - 1, 0.9 * pull / stiffness, pull / stiffness);
        Assert.InRange((At(0).BetweenMarks / newly.BetweenMarks) - 1, chosen.Share * 0.9, chosen.Share);
        var words = string.Join(' ', UpkeepSheet.Draw(model).Pages
            .SelectMany(p => p.Content.Entities.OfType<SheetText>()).Select(t => t.Text));
        var pattern = $"middle of base F01 to that of base {model.Frames[^2].Name}, .*?newly set (?<new>[0-9.]+) in; "
            + "each 0.1 % of stretch is (?<each>[0-9.]+) in";
        var told = Regex.Match(words, pattern, RegexOptions.ExplicitCapture, s_patience);
        Assert.Equal(newly.BetweenMarks / 0.0254, double.Parse(told.Groups["new"].Value, CultureInfo.InvariantCulture), 0.01);
        Assert.Equal(newly.BetweenMarks / 25.4, double.Parse(told.Groups["each"].Value, CultureInfo.InvariantCulture), 1e-3);
    }

    // The last hold is for what hangs when everything does: the sag of the last stage.
    [Fact]
    public void The_last_hold_of_the_ropes_tells_the_sag()
    {
        var model = s_garden.Value;
        var sag = new QuantityText(model.Parameters.Units).Size(model.Stages()[^1].Sag);
        Assert.Contains(model.Erection(), s => s.IsHold && s.Text.Contains($"as newly set {sag} at 60 F", StringComparison.Ordinal));
    }

    // Initials and a date want 18 × 8 mm (own figures): every ruled cell of both logs has them.
    [Fact]
    public void Cells_of_the_logs_are_large_enough_to_write_in()
    {
        foreach (var book in new[] { UpkeepSheet.Draw(s_garden.Value), ErectionSheet.Draw(s_garden.Value) })
        {
            var cells = 0;
            foreach (var rules in book.Pages.Select(p => p.Content.Entities.OfType<SheetLine>()
                .Where(l => l.Layer == PageLayers.Dim && l.From.X == l.To.X).ToList()))
            {
                Assert.All(
                    rules.Where(r => Math.Abs(r.From.Y - r.To.Y) > 0.007), r => Assert.True(Math.Abs(r.From.Y - r.To.Y) > 0.008 - 1e-9));
                foreach (var row in rules.Where(r => Math.Abs(r.From.Y - r.To.Y) > 0.008 - 1e-9).GroupBy(r => (r.From.Y, r.To.Y)))
                {
                    var last = row.Select(r => r.From.X).Order().ToList();
                    cells += last.Count;
                    Assert.True(book.Title.Length > 0 && (last.Count < 2 || last[^1] - last[^2] > 0.018 - 1e-9));
                }
            }

            Assert.True(cells > 100, $"{book.Title}: {cells}");
        }
    }

    [Fact]
    public void The_log_goes_by_part_and_month_for_ten_years_and_is_signed_by_nobody()
    {
        var texts = UpkeepSheet.Draw(s_garden.Value).Pages
            .SelectMany(p => p.Content.Entities.OfType<SheetText>()).Select(t => t.Text).ToList();
        var parts = UpkeepPlan.Parts(s_garden.Value.Parameters);
        Assert.All(parts, p => Assert.Contains(texts, t => t.StartsWith($"{p.Number}. {p.Part}", StringComparison.Ordinal)));
        Assert.True(texts.Count(t => t is "Year 10") >= parts.Length);
        Assert.Equal(parts.Sum(p => p.FirstYear.Length + (9 * p.Later.Length)), texts.Count(t => t is "due"));
        Assert.Contains("Signature", texts);

        // 3/4 in clips: 130 ft·lbf (Calif. 8 CCR §8497 table 1).
        Assert.Contains(parts, p => p.Look.Contains("4 clips, 130 ft·lbf", StringComparison.Ordinal));
    }
}
