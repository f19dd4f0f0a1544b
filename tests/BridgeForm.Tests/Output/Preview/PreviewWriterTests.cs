using System.Net;
using System.Text;
using System.Text.Json;
using System.Text.RegularExpressions;
using BridgeForm.Checks;
using BridgeForm.Output.Preview;
using BridgeForm.Roles;

namespace BridgeForm.Tests.Output.Preview;

public sealed partial class PreviewWriterTests
{
    private static readonly Lazy<BridgeModel> Garden = new(() => Bridges.Build(Bridges.Garden));

    [Fact]
    public void The_same_model_gives_the_same_bytes() =>
        Assert.Equal(Page(Garden.Value), Page(Bridges.Build(Bridges.Garden)));

    [Fact]
    public void Nothing_is_left_to_fill_in_and_nothing_is_fetched()
    {
        var page = Page(Garden.Value);
        Assert.DoesNotMatch(@"\{\{\w+\}\}", page);
        Assert.Contains(
            "default-src 'none'; script-src 'unsafe-inline'; style-src 'unsafe-inline'; img-src data: blob:", page,
            StringComparison.Ordinal);
        Assert.DoesNotMatch(@"<(link|iframe|object|embed|base)\b", Markup(page));
        Assert.DoesNotMatch(@"\b(src|href)=""[^""]", Markup(page));
    }

    [Fact]
    public void The_cautions_and_the_licence_of_the_drawing_library_are_in_the_page()
    {
        var page = Page(Garden.Value);
        Assert.Contains(Caution.Text, page, StringComparison.Ordinal);
        Assert.Contains("The MIT License", page, StringComparison.Ordinal);
        Assert.Contains("three.js authors", page, StringComparison.Ordinal);
    }

    [Fact]
    public void What_fails_stands_in_the_page_without_a_script()
    {
        var check = Garden.Value.Checks[0];
        string With(CheckStatus status) =>
            Markup(Page(Garden.Value with { Checks = [check with { Status = status, Title = "Boards & rails" }] }));
        Assert.Contains(
            """<p id="fails">Does not hold: boards &amp; rails. See the checks.</p>""", With(CheckStatus.Fail), StringComparison.Ordinal);
        Assert.Contains("""<p id="fails" hidden></p>""", With(CheckStatus.Pass), StringComparison.Ordinal);
    }

    // Four titles are named; of five, three and how many more, where there is little room.
    [Theory]
    [InlineData(4, "Does not hold: t0; t1; t2; t3. See the checks.")]
    [InlineData(
        5, "Does not hold: t0; t1; t2<span class=\"rest\">; t3; t4</span><span class=\"more\"> and 2 more</span>. See the checks.")]
    public void Many_titles_leave_room_for_the_bridge(int count, string line)
    {
        var check = Garden.Value.Checks[0];
        var model = Garden.Value with
        {
            Checks = [.. Enumerable.Range(0, count).Select(i => check with { Status = CheckStatus.Fail, Ratio = 2, Title = $"T{i}" })],
        };
        Assert.Contains($"<p id=\"fails\">{line}</p>", Markup(Page(model)), StringComparison.Ordinal);
        Assert.Equal(count, View(Page(model)).GetProperty("fails").GetArrayLength());
    }

    [Fact]
    public void A_check_in_the_page_names_its_parts()
    {
        var check = Garden.Value.Checks[0] with { Status = CheckStatus.Fail, Parts = ["B03/board-2", "ropes/right"] };
        var view = View(Page(Garden.Value with { Checks = [Garden.Value.Checks[0], check] }));
        Assert.Equal(
            ["B03/board-2", "ropes/right"], view.GetProperty("checks")[0].GetProperty("parts").EnumerateArray().Select(p => p.GetString()));
        Assert.Equal(0, view.GetProperty("checks")[1].GetProperty("parts").GetArrayLength());
    }

    [Fact]
    public void The_verdict_and_the_short_caution_stand_right_under_the_title() => Assert.Matches(
        @"<h1[^>]*>[^<]*</h1>\s*<p id=""verdict"">[A-Z][^<]*\.</p>\s*"
            + @"<p id=""caution-short"">Geometry, quantities and check values for preliminary work only\.</p>",
        Markup(Page(Garden.Value)));

    // The sentences that the terminal and the cover print, in the page as it is without a script.
    [Fact]
    public void Headlines_stand_above_the_picture()
    {
        var check = Garden.Value.Checks[0] with { Status = CheckStatus.Engineer, NotChecked = "2x4 oak no1" };
        var model = Bridges.Build(Bridges.Garden.Replace("spacing: 46 in", "spacing: 12 in", StringComparison.Ordinal));
        model = model with { Checks = [.. model.Checks, check] };
        var page = Page(model);
        var head = WebUtility.HtmlDecode(Markup(page)[..Markup(page).IndexOf("</header>", StringComparison.Ordinal)]);
        Assert.Contains(
            "Not looked at: " + Verdict.NotAskedText(model.Parameters), WebUtility.HtmlDecode(Markup(page)), StringComparison.Ordinal);
        foreach (var headline in Verdict.Headlines(model.Ropework, model.Wind, model.Parameters).Where(h => h.Label != Verdict.NotAsked))
        {
            Assert.Contains($"<strong>{headline.Label}:</strong> {PlainWords.Of(headline.Text)}.</li>", head, StringComparison.Ordinal);
        }

        Assert.Contains("<li class=\"danger\"><strong>Not upright:</strong> it rolls over in ", head, StringComparison.Ordinal);
        Assert.Contains($"<strong>Not checked:</strong> 2x4 oak no1 ({check.Id}): no table has values", head, StringComparison.Ordinal);
        Assert.Contains("<p id=\"verdict\">Do not build it so: ", head, StringComparison.Ordinal);
        Assert.Equal(
            ["Not upright", "Wind across it", "Pushed on a guard", "Not checked"],
            View(page).GetProperty("headlines").EnumerateArray().Select(h => h.GetProperty("label").GetString()));
    }

    // Rolls over: no tilt is told. Stands: the tilt of the case, to a tenth of a degree.
    [Fact]
    public void A_load_says_how_far_it_tilts_the_deck()
    {
        var words = new BridgeForm.Quantities.QuantityText(BridgeForm.Quantities.UnitSystem.Imperial);
        var load = Garden.Value.Cases.Single(c => c.Id == "live-side");
        Assert.Contains(
            " It tilts to one side by up to 3.4°. ", CaseWords.Write(load with { CrossSlope = 3.41 * Math.PI / 180 }, words),
            StringComparison.Ordinal);
        Assert.Contains(
            " It does not tilt to one side. ", CaseWords.Write(load with { CrossSlope = 0.04 * Math.PI / 180 }, words),
            StringComparison.Ordinal);
        Assert.StartsWith(
            "IT ROLLS OVER: ", CaseWords.Write(load with { CrossSlope = null, RollsOver = true }, words), StringComparison.Ordinal);
    }

    [Fact]
    public void A_name_with_markup_in_it_stays_text()
    {
        const string Name = "</script><img src=x onerror=alert(1)> & \"Co\"";
        var model = Garden.Value with { Parameters = Garden.Value.Parameters with { Name = Name } };
        var page = Page(model);
        Assert.DoesNotContain("<img src=x", page, StringComparison.Ordinal);
        Assert.Equal(Name, View(page).GetProperty("name").GetString());
    }

    [Fact]
    public void Every_occurrence_of_the_model_is_in_the_glb_and_every_piece_in_the_view()
    {
        var page = Page(Garden.Value);
        var bytes = Convert.FromBase64String(Between(page, "id=\"model\">"));
        Assert.Equal("glTF"u8.ToArray(), bytes[..4]);
        var pieces = View(page).GetProperty("pieces").EnumerateArray().ToList();
        Assert.Equal(Garden.Value.Pieces.Select(p => p.Mark), pieces.Select(p => p.GetProperty("mark").GetString()));
        Assert.Equal(Garden.Value.Pieces.Select(p => p.Occurrences.Length), pieces.Select(p => p.GetProperty("quantity").GetInt32()));
    }

    [Theory]
    [InlineData("Garden", "30 ft 0 in")]
    [InlineData("Inclined", "12 m")]
    public void The_length_stands_in_the_page_without_a_script(string bridge, string length)
    {
        var page = Page(Bridges.Build(string.Equals(bridge, "Garden", StringComparison.Ordinal) ? Bridges.Garden : Bridges.Inclined));
        Assert.Contains($"<dd>{length}</dd>", Markup(page), StringComparison.Ordinal);
    }

    [Fact]
    public void Levels_of_the_landings_meet_the_end_bases()
    {
        var view = View(Page(Bridges.Build(Bridges.Inclined)));
        var frames = view.GetProperty("frames").EnumerateArray().ToList();
        var landings = view.GetProperty("landings").EnumerateArray().ToList();
        foreach (var (frame, landing) in new[] { (frames[0], landings[0]), (frames[^1], landings[1]) })
        {
            var bottom = frame.GetProperty("y").GetDouble() + frame.GetProperty("bottom").GetDouble();
            Assert.Equal(bottom, landing.GetProperty("top").GetDouble(), 5);
        }

        // Channel 34 mm deep at its middle: its floor touches the top of a rope of 3/4 in that passes at the end slope.
        var slope = Bridges.Build(Bridges.Inclined).Frames[0].Slope;
        Assert.Equal((0.009525 / Math.Cos(slope)) - 0.034, frames[0].GetProperty("bottom").GetDouble(), 5);
    }

    /// <summary>A landing without a level lies flush with the boards as they are cut, at their upper edge where they end.</summary>
    [Fact]
    public void A_landing_without_a_level_is_flush_with_the_end_of_the_deck()
    {
        const double halfBase = 1.75 * 0.0254;
        var ends =
            from piece in Garden.Value.Pieces
            where piece.Role == Role.Board
            from place in piece.Occurrences
            where place.Id.StartsWith("B01/", StringComparison.Ordinal)
            from corner in piece.Solid.Vertices.Select(place.Placement.ToWorld)
            where Math.Abs(corner.X + halfBase) < 1e-3
            select corner.Y;
        Assert.Equal(ends.Max(), View(Page(Garden.Value)).GetProperty("landings")[0].GetProperty("walk").GetDouble(), 5);
    }

    /// <summary>The page without its scripts, style and comments.</summary>
    private static string Markup(string page) => NotMarkup().Replace(page, string.Empty);

    private static string Page(BridgeModel model)
    {
        using var stream = new MemoryStream();
        PreviewWriter.Write(model, solid => solid.Triangulate(), stream);
        return Encoding.UTF8.GetString(stream.ToArray());
    }

    private static JsonElement View(string page) => JsonDocument.Parse(Between(page, "id=\"view\">")).RootElement;

    private static string Between(string page, string start)
    {
        var from = page.IndexOf(start, StringComparison.Ordinal) + start.Length;
        return page[from..page.IndexOf("</script>", from, StringComparison.Ordinal)];
    }

    [GeneratedRegex("<script[^>]*>.*?</script>|<style>.*?</style>|<!--.*?-->", RegexOptions.Singleline | RegexOptions.NonBacktracking)]
    private static partial Regex NotMarkup();
}
