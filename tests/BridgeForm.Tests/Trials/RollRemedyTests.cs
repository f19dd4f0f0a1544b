using BridgeForm.Checks;
using BridgeForm.Tests.Checks;

namespace BridgeForm.Tests.Trials;

/// <summary>What is told to cure a section that turns over does cure it, and one step less does not.</summary>
public sealed class RollRemedyTests
{
    private const double Sixteenth = 0.0254 / 16;

    [Fact]
    public void Ropes_so_far_apart_stay_upright_and_a_step_less_do_not()
    {
        var model = Bridges.Build(Narrow);
        var wider = model.Remedies.First(
            r => r is { CheckId: "roll", Length: not null } && r.Text.Contains("ropes.spacing", StringComparison.Ordinal));
        Assert.False(Fails(Spaced(wider.Length!.Value)));
        Assert.True(Fails(Spaced(wider.Length.Value - Sixteenth)));
        Assert.Contains(model.Remedies, r => r.CheckId is "roll" && r.Text.Contains("not modeled", StringComparison.Ordinal));
    }

    // Halves against each other: less sag, and never a larger rope.
    [Fact]
    public void Less_sag_keeps_halves_from_rolling_against_each_other()
    {
        var model = Bridges.Build(Narrow);
        var flatter = model.Remedies.Single(
            r => r is { CheckId: "roll", Length: not null } && r.Text.Contains("with a sag of", StringComparison.Ordinal));
        Assert.True(flatter.Length < model.Parameters.Ropes.Sag);
        Assert.False(Fails(Sagging(flatter.Length!.Value)));
        Assert.True(Fails(Sagging(flatter.Length.Value + (2 * Sixteenth))));
        Assert.DoesNotContain(model.Remedies, r => r is { CheckId: "roll", Rope: not null });
    }

    // All to one side: a larger rope, and never less sag.
    [Fact]
    public void A_larger_rope_keeps_all_from_rolling_to_one_side()
    {
        var model = Bridges.Build(Taut);
        Assert.True(model.Ropework.Roll.MinBy(r => r.Factor!.Value)!.Factor!.IsToOneSide);
        var larger = model.Remedies.Single(r => r.CheckId is "roll" && r.Text.Contains("rope of this make", StringComparison.Ordinal));
        Assert.DoesNotContain(model.Remedies, r => r.CheckId is "roll" && r.Text.Contains("with a sag of", StringComparison.Ordinal));
        Assert.False(Fails(Taut.Replace("rope-6x19-iwrc-eips-3/8", larger.Rope, StringComparison.Ordinal)));

        // The next smaller rope of the table.
        Assert.Equal("rope-6x19-iwrc-eips-1-1/8", larger.Rope);
        Assert.True(Fails(Taut.Replace("rope-6x19-iwrc-eips-3/8", "rope-6x19-iwrc-eips-1", StringComparison.Ordinal)));
    }

    private static string Narrow => Bridges.Garden.Replace("spacing: 46 in", "spacing: 38 in", StringComparison.Ordinal);

    private static string Taut => Bridges.Garden
        .Replace("rope-6x19-iwrc-eips-galvanized-3/4", "rope-6x19-iwrc-eips-3/8", StringComparison.Ordinal)
        .Replace("sag: 6 %", "sag: 2 %, stretch: [0 %, 0 %]", StringComparison.Ordinal)
        .Replace("spacing: 46 in", "spacing: 30 in", StringComparison.Ordinal);

    private static string Spaced(double spacing) => Narrow
        .Replace("spacing: 38 in", FormattableString.Invariant($"spacing: {spacing / 0.0254:0.####} in"), StringComparison.Ordinal)
        .Replace(
            "length: 58 in", FormattableString.Invariant($"length: {58 + (spacing / 0.0254) - 38:0.####} in"), StringComparison.Ordinal);

    private static string Sagging(double sag) =>
        Narrow.Replace("sag: 6 %", FormattableString.Invariant($"sag: {sag / 0.0254:0.####} in"), StringComparison.Ordinal);

    private static bool Fails(string text) => Contexts.Check(text, "roll").Status == CheckStatus.Fail;
}
