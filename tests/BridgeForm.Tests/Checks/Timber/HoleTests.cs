using BridgeForm.Checks;
using BridgeForm.Checks.Timber;

namespace BridgeForm.Tests.Checks.Timber;

/// <summary>Holes in the checks of bases, posts and braces.</summary>
public sealed class HoleTests
{
    private const double Inch = 0.0254;

    // Keeper holes so near to the channels that they weaken the same section.
    private static string Thin => Bridges.Garden.Replace("section: 4x6", "section: 3x6", StringComparison.Ordinal)
        .Replace("  post:", Near + "  post:", StringComparison.Ordinal);

    private const string Near = "  keeper: { spread: 2-1/2 in }\n";

    private static string With(string part, string hole) => $"{Thin}\nholes: {{ {part}: [{{ {hole} }}] }}\n";

    // Channel 5/8 in deep in 2.5 x 5.5 in; keeper holes of 1/4 in, 2 in deep, 13/16 in from its walls and so within 4 · 1/4 in.
    // Left: 2.25 in broad for 1.375 in, 2.5 in for 3.5 in.
    [Fact]
    public void Keeper_holes_near_the_channel_are_out_of_its_section()
    {
        double low = 2.25 * 1.375, high = 2.5 * 3.5;
        var middle = ((low * 1.375 / 2) + (high * (1.375 + 1.75))) / (low + high);
        var inertia = (low * ((1.375 * 1.375 / 12) + Math.Pow(middle - (1.375 / 2), 2)))
            + (high * ((3.5 * 3.5 / 12) + Math.Pow(1.375 + 1.75 - middle, 2)));
        var modulus = inertia / Math.Max(middle, 4.875 - middle) * Math.Pow(Inch, 3);
        var section = BaseSection.Cut(Contexts.Of(Thin)).Channels().First().Section;
        Assert.Equal(modulus, section.Modulus, 1e-6 * modulus);
        var none = BaseSection.Cut(Contexts.Of(Thin.Replace(Near, "  keeper: { hole: 0 in }\n", StringComparison.Ordinal)))
            .Channels()
            .First().Section;
        Assert.Equal(2.5 * 4.875 * 4.875 / 6 * Math.Pow(Inch, 3), none.Modulus, 1e-12);
    }

    // From far off (3 in across) only the hole's own place knows it.
    [Fact]
    public void Keeper_holes_far_from_the_channel_count_where_they_are()
    {
        var wide = BaseSection.Cut(
            Contexts.Of(Thin.Replace(Near, "  keeper: { spread: 3-1/2 in }\n", StringComparison.Ordinal)));
        Assert.Equal(2.5 * 4.875 * 4.875 / 6 * Math.Pow(Inch, 3), wide.Channels().First().Section.Modulus, 1e-12);
        var own = wide.Beside(29 * Inch).Where(s => s.Section.IsCut).ToList();
        Assert.Equal(4, own.Select(s => Math.Round(s.From / Inch, 6)).Distinct().Count());
        Assert.All(own, s => Assert.True(s.Section.Modulus < 2.5 * 5.5 * 5.5 / 6 * Math.Pow(Inch, 3)));
    }

    [Theory]
    [InlineData("face: wide, from_end: 29 in, diameter: 1-3/4 in, across: 1 in", "base-bending")]
    [InlineData("face: bottom, from_end: 29 in, diameter: 3/4 in", "base-bending")]
    [InlineData("face: wide, from_end: 8 in, diameter: 1-3/4 in", "base-shear")]
    [InlineData("face: wide, from_end: 6 in, diameter: 1-3/4 in, across: 1 in", "base-channel-bending")]
    [InlineData("face: wide, from_end: 6 in, diameter: 1-3/4 in, across: 1 in", "base-channel-shear")]
    public void Holes_of_a_base_cost_strength(string hole, string id)
    {
        var (plain, drilled) = (Contexts.Check(Thin, id), Contexts.Check(With("base", hole), id));
        Assert.True(drilled.Ratio > plain.Ratio * 1.02, $"{plain.Ratio} {drilled.Ratio}: {drilled.Detail}");
        Assert.Contains("3.1.2", drilled.Source, StringComparison.Ordinal);
    }

    // The same hole on the other side costs the same, though people push only the right guard.
    [Theory]
    [InlineData("base-bending")]
    [InlineData("base-shear")]
    public void Holes_on_either_side_cost_the_same(string id) => Assert.Equal(
        Contexts.Check(With("base", "face: wide, from_end: 8 in, across: 1 in, diameter: 1-3/4 in"), id).Demand,
        Contexts.Check(With("base", "face: wide, from_far_end: 8 in, across: 1 in, diameter: 1-3/4 in"), id).Demand,
        1e-6);

    // Narrow face, 3/8 in of 1-1/2 in right through, where the brace meets the post: three quarters of S are left. The foot's
    // long point lies 1.75 · tan 8° = 0.246 in before the axis' end: 8-1/2 in from it is n = 8.17 in, the brace's lower edge.
    [Fact]
    public void A_hole_where_the_post_bends_most()
    {
        var plain = Contexts.Check(Thin, "guard-post");
        var drilled = Contexts.Check(With("post", "face: top, from_end: 8-1/2 in, diameter: 3/8 in"), "guard-post");
        Assert.InRange(drilled.Demand / plain.Demand, 1.30, 1.36);
        Assert.Contains("at the hole from", drilled.Detail, StringComparison.Ordinal);
        Assert.Contains("S = 1.125 in × (3.5 in)² / 6 = 2.297 in³", drilled.Detail, StringComparison.Ordinal);
        Assert.Contains("3.1.2", drilled.Source, StringComparison.Ordinal);
    }

    // 1/2 in through the wide face, 1 in off the axis: 1.5 x 2.5 in and 1.5 x 0.5 in are left. Middle (3.75·1.25 + 0.75·3.25)/4.5
    // = 1.583 in, I = 1.953 + 3.75·0.333² + 0.016 + 0.75·1.667² = 4.469 in⁴, S = I/1.917 = 2.332 in³.
    [Fact]
    public void A_hole_off_the_axis_by_hand()
    {
        var check = Contexts.Check(With("post", "face: wide, across: 1 in, from_end: 9 in, diameter: 1/2 in"), "guard-post");
        Assert.Contains("I = Σ(b·h³/12 + b·h·y²) = 4.469 in⁴, S = I / 1.917 in = 2.332 in³", check.Detail, StringComparison.Ordinal);
        Assert.Contains("on 3.75 in²", check.Detail, StringComparison.Ordinal);
    }

    // Two feet up the moment is 200 · (41.1 − 24) in·lbf, half of that at the brace: a hole there costs nothing.
    [Fact]
    public void A_hole_far_up_the_post_costs_nothing() =>
        Assert.Equal(
            Contexts.Check(Thin, "guard-post").Demand,
            Contexts.Check(With("post", "face: wide, from_end: 24 in, diameter: 1/2 in"), "guard-post").Demand,
            1e-9);

    // Through the narrow face 1/2 in of 1-1/2 in goes: area and S × 2/3, both parts × 1.5.
    [Fact]
    public void Hole_through_a_braces_narrow_face() => Assert.Equal(
        1.5 * Contexts.Check(Thin, "guard-brace").Demand,
        Contexts.Check(With("brace", "face: top, from_end: 10 in, diameter: 1/2 in"), "guard-brace").Demand,
        1e-3);

    // Through the wide one 1/2 in, 1 in off the axis, and for the axial force its mirror image: 5.25 − 2·0.75 in²; S as of the post.
    [Fact]
    public void Hole_through_a_braces_wide_face()
    {
        var check = Contexts.Check(With("brace", "face: wide, from_end: 10 in, across: 1 in, diameter: 1/2 in"), "guard-brace");
        Assert.Contains("/ 3.75 in²", check.Detail, StringComparison.Ordinal);
        Assert.Contains("S = I / 1.917 in = 2.332 in³", check.Detail, StringComparison.Ordinal);
        Assert.True(check.Demand > 1.3 * Contexts.Check(Thin, "guard-brace").Demand);
    }

    // IRC R502.8.1: d/3; of 3-1/2 in 1.167 in.
    [Theory]
    [InlineData("1-1/8 in", CheckStatus.Pass)]
    [InlineData("1-1/4 in", CheckStatus.Fail)]
    public void Size_of_holes(string diameter, CheckStatus expected) => Assert.Equal(
        expected, Contexts.Status(With("post", $"face: wide, from_end: 20 in, diameter: {diameter}"), "hole-size"));

    // A channel on the pulled side is at most d/3 wide: 1.833 in of 5-1/2 in.
    [Theory]
    [InlineData("1.8 in", CheckStatus.Pass)]
    [InlineData("1.9 in", CheckStatus.Fail)]
    public void A_wide_channel_on_the_pulled_side(string width, CheckStatus expected)
    {
        var text = Thin.Replace("clearance: 1/8 in", "width: " + width, StringComparison.Ordinal);
        Assert.Equal(expected, Contexts.Status(text, "base-channel-notch"));
    }
}
