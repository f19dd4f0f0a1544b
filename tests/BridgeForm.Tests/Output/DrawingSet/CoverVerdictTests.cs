using BridgeForm.Checks;
using BridgeForm.Loads;
using BridgeForm.Output.Drawing;
using BridgeForm.Output.DrawingSet;
using BridgeForm.Quantities;
using BridgeForm.Tests.Output.Templates;
using BridgeForm.Tests.Samples;

namespace BridgeForm.Tests.Output.DrawingSet;

/// <summary>What the cover says of the checks.</summary>
public sealed class CoverVerdictTests
{
    private static readonly Lazy<BridgeModel> Dell = new(() => new Sample("alder-dell").Build());

    [Fact]
    public void A_cover_says_how_many_points_are_open_the_largest_tilt_and_the_least_roll_factor()
    {
        var model = Dell.Value;
        int Count(CheckStatus status) => model.Checks.Count(c => c.Status == status);
        var words = Words(model);
        Assert.Contains(
            FormattableString.Invariant($"Checks {Count(CheckStatus.Warn)} to review, ")
                + FormattableString.Invariant($"{Count(CheckStatus.Engineer)} for an engineer, {Count(CheckStatus.Pass)} hold"),
            words, StringComparison.Ordinal);

        // The check compares the tangent of the same tilt.
        var tilt = Math.Atan(model.Checks.Single(c => c.Id == "cross-slope").Demand) * 180 / Math.PI;
        Assert.Contains(FormattableString.Invariant($"Largest cross slope {tilt:F1} deg: "), words, StringComparison.Ordinal);
        double Down(double factor) => Math.Floor(factor * 100) / 100;
        var roll = model.Checks.Single(c => c.Id == "roll");
        var least = model.Ropework.Roll.Min(r => r.Factor?.Value ?? double.PositiveInfinity);
        Assert.Contains(
            FormattableString.Invariant($"Least roll factor {Down(roll.Demand):F2} where {roll.Capacity} is needed; ")
                + FormattableString.Invariant($"least of all {Down(least):F2}: "),
            words, StringComparison.Ordinal);
        Assert.DoesNotContain("must not be built", words, StringComparison.Ordinal);
    }

    [Fact]
    public void A_section_that_rolls_over_has_no_tilt_on_the_cover()
    {
        var words = Words(Bridges.Build(Bridges.Garden.Replace("spacing: 46 in", "spacing: 12 in", StringComparison.Ordinal)));
        Assert.Contains("Largest cross slope it rolls over: ", words, StringComparison.Ordinal);
        Assert.Contains("Not upright it rolls over in ", words, StringComparison.Ordinal);
        Assert.Contains("It must not be built so: ", words, StringComparison.Ordinal);
        Assert.Contains("Section stays upright on its ropes (roll)", words, StringComparison.Ordinal);
    }

    // However many fail: all that is said has room, and what has none is counted.
    [Theory]
    [InlineData(1)]
    [InlineData(6)]
    [InlineData(20)]
    [InlineData(60)]
    public void Titles_of_what_fails_stand_on_the_cover_and_on_nothing_else(int failing)
    {
        var model = Dell.Value with
        {
            Checks = [.. Dell.Value.Checks.Select((c, i) => i < failing ? c with { Status = CheckStatus.Fail, Ratio = 2 } : c)],
        };
        var page = DrawingSheets.Draw(model).Pages[0].Content;
        var words = Words(model);
        var titled = model.Checks.Take(failing).Count(c => words.Contains($"{c.Title} ({c.Id})", StringComparison.Ordinal));
        if (failing <= 6)
        {
            Assert.Equal(failing, titled);
        }
        else
        {
            // So many ids below leave little room, or none.
            var more = FormattableString.Invariant($"; and {failing - titled} more: see the checks.");
            Assert.Contains(titled > 0 ? more : "do not hold See the checks.", words, StringComparison.Ordinal);
        }

        var texts = PlacedTexts.Of(page).ToList();
        Assert.All(texts, t => Assert.True(t.Box.MinY > 0, t.Text));
        Assert.All(texts, t => Assert.Equal([t.Text], texts.Where(o => o.Box.Overlaps(t.Box)).Select(o => o.Text)));
    }

    // By hand: a backstay at 60 deg is pulled by H / cos 60 deg = 2 H, more than any rope between the supports; without one there
    // is none to speak of.
    [Fact]
    public void The_largest_pull_is_said_to_be_of_what_it_is_of()
    {
        var words = new QuantityText(UnitSystem.Imperial);
        Assert.EndsWith(
            "one rope: new rope set short for its stretch", CoverVerdict.Pull(AsIs(Bridges.Garden), words), StringComparison.Ordinal);
        var stayed = AsIs(Bridges.Garden.Replace(
            "span: 30 ft", "span: 30 ft, a: { backstay: { length: 20 ft, angle: 60 deg } }", StringComparison.Ordinal));
        Assert.EndsWith(", backstays in it", CoverVerdict.Pull(stayed, words), StringComparison.Ordinal);
        Assert.EndsWith("one rope: in its backstay", CoverVerdict.Pull(stayed with { Stretch = [] }, words), StringComparison.Ordinal);
        // By plain marks, which the bundled bridge has, new rope is never set short.
        Assert.Equal("", CoverVerdict.Pull(Dell.Value.Ropework, words));

        static RopeWork AsIs(string file) =>
            Bridges.Build(file.Replace("sag: 6 %", "sag: 6 %, new: as-is", StringComparison.Ordinal)).Ropework;
    }

    private static string Words(BridgeModel model) =>
        string.Join(' ', DrawingSheets.Draw(model).Pages[0].Content.Entities.OfType<SheetText>().Select(t => t.Text));
}
