using BridgeForm.Output.Drawing;
using BridgeForm.Output.ShopSheets;
using BridgeForm.Roles;
using BridgeForm.Stocking;

namespace BridgeForm.Tests.Stocking;

public sealed class UpkeepTests
{
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
