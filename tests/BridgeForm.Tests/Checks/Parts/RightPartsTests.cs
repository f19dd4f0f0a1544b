using System.Collections.Immutable;
using BridgeForm.Checks;
using BridgeForm.Checks.Register;
using BridgeForm.Contacts;
using BridgeForm.Frames;
using BridgeForm.Pieces;
using BridgeForm.Solids;
using BridgeForm.Tests.Checks.Catalogue;

namespace BridgeForm.Tests.Checks.Parts;

/// <summary>
/// Which part a check names, on bridges whose worst place is known by hand. Ids are written out here as docs/outputs.md says
/// them: 30 ft in bays of 3 ft in plan has frames F00 to F10 and bays B01 to B10.
/// </summary>
public sealed class RightPartsTests
{
    // Equal steps in plan. The rope's chord climbs 5 in 30, its sag of 6 % adds 4 × 0.06 × (1 − 1/10) of it in the last bay and takes
    // as much off in the first: 1 : 2.6 beside the higher bank, 1 : 20 beside the other. The steepest bay is the longest, 3 ft / cos.
    private static readonly ImmutableArray<(string Check, string ToB, string ToA)> s_steep =
    [
        ("deck-slope", Boards("B10"), Boards("B01")),
        ("deck-grip", Boards("B10"), Boards("B01")),
        ("deck-slope-loaded", Boards("B10"), Boards("B01")),
        ("board-bending-area", Boards("B10"), Boards("B01")),
        ("board-shear", Boards("B10"), Boards("B01")),
        ("board-bearing", Boards("B10"), Boards("B01")),
        ("rail-bending", Rails("B10"), Rails("B01")),
        ("cap-bending-level", "B10/cap-left B10/cap-right", "B01/cap-left B01/cap-right"),

        // Of the two frames of the longest bay one hangs on the ropes.
        ("base-bending", "F09/base", "F01/base"),
        ("rope-bearing", "F09/base", "F01/base"),
        ("keeper-uplift-wind", "F09/base", "F01/base"),

        // What slides along the rope is weight × sine of its slope.
        ("keeper-slip", "F09/base", "F01/base"),

        // End frames stand upright: their channels' floors slope as the rope does there.
        ("channel-deep-mouth-end", "F10/base", "F00/base"),
        ("channel-shallow-mouth-end", "F10/base", "F00/base"),
        ("end-base-bending", "F10/base", "F00/base"),
        ("end-base-shear", "F10/base", "F00/base"),

        // The lighter end has the shorter bay; the wind has more of the longer one.
        ("end-frame-down", "F00/base", "F10/base"),
        ("end-frame-along", "F00/base", "F10/base"),
        ("wind-end-frame", "F10/base", "F00/base"),
    ];

    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public void One_end_is_steeper(bool towardsB)
    {
        var parts = Named(Garden("rise: " + (towardsB ? "5 ft" : "-5 ft")) + "\nloads: { uplift: 100 psf }\n");
        Assert.All(s_steep, s => Assert.Equal((s.Check, towardsB ? s.ToB : s.ToA), (s.Check, parts[s.Check])));
    }

    // 50 plf × 5 ft / cos is more than 200 lbf: it is the posts beside the longest bay that are pushed most, on a public bridge. On a
    // private one 200 lbf come to any post.
    [Theory]
    [InlineData("public", "F05")]
    [InlineData("private", "F00")]
    public void A_line_of_people_pushes_the_posts_of_the_longest_bay_most(string use, string frame)
    {
        var parts = Named(Garden("rise: 5 ft").Replace("spacing: 3 ft", "spacing: 5 ft", StringComparison.Ordinal)
            .Replace("private", use, StringComparison.Ordinal));
        var (post, brace) = ($"{frame}/post-left {frame}/post-right", $"{frame}/brace-left {frame}/brace-right");
        Assert.Equal(post, parts["guard-post"]);
        Assert.Equal(post, parts["guard-post-shear"]);
        Assert.Equal(post, parts["guard-post-along"]);
        Assert.Equal(brace, parts["guard-brace"]);
        Assert.Equal($"{brace} {frame}/base", parts["guard-joint-brace-foot"]);
        Assert.Equal($"{brace} {post}", parts["guard-bearing-brace-head"]);
    }

    // 1/2 in is the limit; an end without a gap is looked for after one that is too wide, and before one that holds.
    [Theory]
    [InlineData("a: { landing: { level: 30 in, gap: 3/4 in } }, b: { landing: { level: 7 in, gap: 1/4 in } }", "F00/base", "F00/base")]
    [InlineData("a: { landing: { level: 7 in, gap: 1/4 in } }, b: { landing: { level: 30 in, gap: 3/4 in } }", "F10/base", "F10/base")]
    [InlineData("a: { landing: { level: 30 in, gap: 3/4 in } }", "F00/base", "F00/base")]
    [InlineData("a: { landing: { level: 30 in, gap: 1/4 in } }", "F00/base", "F10/base")]
    [InlineData("b: { landing: { level: 30 in, gap: 1/4 in } }", "F10/base", "F00/base")]
    public void One_landing_is_wrong(string ends, string step, string gap)
    {
        var parts = Named(Garden(ends));
        Assert.Equal((step, gap), (parts["landing-step"], parts["landing-gap"]));
    }

    // A rock under the frame that stands 6 ft from A, and one beside the end base at B, which is 1-3/4 in from its frame's middle.
    [Theory]
    [InlineData("[0 ft, -10 ft], [5.9 ft, -10 ft], [6 ft, -2 ft], [6.1 ft, -10 ft], [30 ft, -10 ft]", "F02/base")]
    [InlineData("[0 ft, -10 ft], [29.5 ft, -10 ft], [29.8 ft, -1 ft], [30 ft, -1 ft]", "F10/base")]
    public void A_rock_under_the_bridge(string ground, string part) =>
        Assert.Equal(part, Named(Garden($"ground: [{ground}]"))["ground-clearance"]);

    // Level supports: mid-span hangs lowest.
    [Fact]
    public void Water_comes_to_the_middle_first() => Assert.Equal("F05/base", Named(Garden("water: -5 ft"))["water-clearance"]);

    // One frame on the ropes: whatever is about such a frame is about this one.
    [Fact]
    public void The_only_frame_on_the_ropes()
    {
        var parts = AllChecks.Run(new TwoBays { More = "loads: { uplift: 100 psf }" }.Context).ToDictionary(c => c.Id, Text);
        string[] ids =
        [
            "base-bending", "base-channel-bending", "base-shear", "base-channel-shear", "base-channel-notch", "rope-bearing",
            "keeper-uplift-guard", "keeper-uplift-wind", "keeper-slip", "cross-slope", "load-tips",
            "channel-deep-mouth", "channel-shallow-mouth", "wind-keeper",
        ];
        Assert.All(ids, id => Assert.Equal((id, "F01/base"), (id, parts[id])));
        Assert.Equal("F01/post-left F01/post-right", parts["guard-line-load"]);
        Assert.Equal("B01/cap-left B01/cap-right B02/cap-left B02/cap-right", parts["joint-room"]);
        Assert.Equal("ropes/left ropes/right", parts["rope-strength"]);
    }

    // 30 ft and the sag take 11 bays of 3 ft along the rope. Boards of 4.5 ft: posts of 40 in and what spans 3 ft
    // fit, bases of 58 in do not. The yard has no 4x6.
    [Fact]
    public void What_cannot_be_bought()
    {
        var parts = Named(Bridges.Garden + "\nstock:\n  treated: { species: southern-pine, grade: no1, treated: true, lengths: [4.5 ft], "
            + "sections: [2x4, 2x6] }\n  cedar: { species: western-red-cedar, grade: no2, treated: false, lengths: [8 ft] }\n");
        var bases = Enumerable.Range(0, 12).Select(i => $"F{i:00}/base").ToList();
        Assert.Equal(bases, parts["stock-length"].Split(' ').Order(StringComparer.Ordinal));
        Assert.Equal(bases, parts["section-on-sale"].Split(' ').Order(StringComparer.Ordinal));
    }

    // An inch from its end a hole of a brace has less wood than 3.5 diameters; frames are alike, and both sides.
    [Fact]
    public void Holes_name_the_first_frame_and_both_sides()
    {
        var parts = Named(Bridges.Garden + "\nholes: { brace: [{ face: top, from_end: 1 in, diameter: 1/2 in }] }\n");
        Assert.Equal("F00/brace-left F00/brace-right", parts["hole-distance"]);
    }

    // 5 mm up: clear of its base by these, and as deep in the caps that lie on it; both caps are as steep.
    [Fact]
    public void A_post_that_is_drawn_too_high()
    {
        var checks = Moved("F05/post-left", new Vector3d(0, 0.005, 0));
        Assert.Equal("F05/post-left F05/base", Text(checks.Single(c => c.Id is "parts-bear")));
        Assert.Matches("^B0[56]/cap-left F05/post-left$", Text(checks.Single(c => c.Id is "parts-overlap")));
    }

    // The left rope a thumb's width aside runs through the walls of its channels, of which each base has some.
    [Fact]
    public void A_rope_that_is_drawn_aside()
    {
        var context = Contexts.Of(Bridges.Garden);
        var ropes = RopeRuns.Draw(context.Parameters, context.Rope);
        var aside = ropes[0] with { Points = [.. ropes[0].Points.Select(p => p + new Vector3d(0, 0, -0.02))] };
        var off = context with { Contacts = ContactSweep.Sweep(context.Layout, context.Pieces, [aside, ropes[1]]) };
        Assert.Matches("^ropes/left F[0-9]{2}/base$", Text(Contexts.Check(off, "rope-in-channels")));
    }

    private static ImmutableArray<CheckResult> Moved(string id, Vector3d by)
    {
        var context = Contexts.Of(Bridges.Garden);
        ImmutableArray<Piece> pieces =
        [
            .. context.Pieces.Select(p => p with
            {
                Occurrences = [.. p.Occurrences.Select(
                    o => o.Id == id ? o with { Placement = o.Placement with { Origin = o.Placement.Origin + by } } : o)],
            }),
        ];
        var lines = RopeRuns.Draw(context.Parameters, context.Rope);
        return AllChecks.Run(context with { Contacts = ContactSweep.Sweep(context.Layout, pieces, lines) });
    }

    private static string Garden(string site) => Bridges.Garden
        .Replace("span: 30 ft", "span: 30 ft, " + site, StringComparison.Ordinal)
        .Replace("spacing: 3 ft", "spacing: 3 ft\n  step: plan", StringComparison.Ordinal);

    private static Dictionary<string, string> Named(string text) =>
        AllChecks.Run(Contexts.Of(text)).ToDictionary(c => c.Id, Text, StringComparer.Ordinal);

    private static string Text(CheckResult check) => string.Join(' ', check.Parts);

    // 36-1/2 in between the posts' feet takes six boards of 5-1/2 in.
    private static string Boards(string bay) => string.Join(' ', Enumerable.Range(1, 6).Select(i => $"{bay}/board-{i}"));

    private static string Rails(string bay) => string.Join(
        ' ', ((string[])["left", "right"]).SelectMany(side => Enumerable.Range(1, 6).Select(i => $"{bay}/rail-{side}-{i}")));
}
