using BridgeForm.Project;
using BridgeForm.Roles;

namespace BridgeForm.Tests.Project;

/// <summary>Every further key is read, checked and kept.</summary>
public sealed class OptionalKeyTests
{
    internal const string Full = """
        name: Everything
        site:
          span: 30 ft
          ground: [[0 ft, -3 ft], [15 ft, -9 ft], [30 ft, -2 ft]]
          water: -7 ft
          a: { backstay: { length: 20 ft, angle: 30 deg, saddle: sliding }, landing: { level: 4 in, gap: 1 in } }
          b: { backstay: { length: 25 ft, angle: 35 deg } }
        ropes:
          type: { diameter: 3/4 in, mass_per_length: 1.04 lb/ft, breaking_strength: 235 kN, metallic_area: 0.27 in2, modulus: 100 GPa }
          marking_tension: 500 lbf
          stretch: [0.25 %, 0.5 %]
          termination: { kind: socket }
        frames:
          base: { section: 4x6, flat: true }
          post: { section: 2x4 }
          brace: { length: 18 in }
          channel: { liner: 1/16 in }
        deck:
          layout: across
          board: { section: 5/4x6 }
          stringer: { section: 2x6, count: 3, stock: treated }
        guard: { rails: { heights: [13 in, 22 in] } }
        holes:
          base: [{ face: bottom, from_end: 4 in, diameter: 3/8 in }]
          post: [{ from_far_end: 3 in, diameter: 10 mm, depth: 1 in }]
        loads:
          uplift: 10 psf
          snow: 30 psf
          cases: [{ id: herd, live: 80 psf, from: 5 ft, to: 20 ft, temperature: 0 F }, { id: barrow, force: 400 lbf, at: 7 ft }]
        species:
          alder: { specific_gravity: 0.41, durable: false, source: own weighing, density: { low: 400 kg/m3, high: 700 kg/m3 } }
        values:
          - { species: alder, grade: no1, size: 2x6, bending: 700 psi, tension: 400 psi, shear: 120 psi, compression_across: 300 psi, compression: 600 psi, modulus: 1.1 GPa, source: grading report }
        stock:
          treated: { species: southern-pine, treated: true, incised: true, lengths: [12 ft, 8 ft], density: { low: 500 kg/m3, in_service: 600 kg/m3, high: 900 kg/m3 } }
          cedar: { species: alder, lengths: [8 ft] }
        treatment: { coats: 3, coverage: 200 ft2/gal }
        fasteners: { post-foot: 4, cap: 2 }
        shop: { trim: 1/2 in, offcut: 18 in, tabs: true }
        erection: one-end
        """;

    private readonly BridgeParameters p = Examples.Good(Full);

    [Fact]
    public void Site_and_ropes()
    {
        Assert.Equal((4.572, -2.7432), (p.Site.Ground[1].X, p.Site.Ground[1].Y));
        Assert.Equal(-2.1336, p.Site.Water!.Value, 12);
        Assert.Equal((true, false), (p.Site.A.Backstay!.Sliding, p.Site.B.Backstay!.Sliding));
        Assert.Equal(30 * Math.PI / 180, p.Site.A.Backstay.Angle, 12);
        Assert.Equal((0.1016, 0.0254), (p.Site.A.LandingLevel!.Value, p.Site.A.LandingGap!.Value));
        Assert.Null(p.Site.B.LandingLevel);
        Assert.Equal((0.01905, 235e3, 1e11), (p.Ropes.Rope.Diameter, p.Ropes.Rope.BreakingStrength, p.Ropes.Rope.Modulus));
        Assert.Equal(new ShareRange(0.0025, 0.005), p.Ropes.Stretch);
        Assert.Null(p.Ropes.TerminationEfficiency);
        Assert.Equal(2224.11, p.Ropes.MarkingTension, 2);
    }

    [Fact]
    public void Frames_deck_and_guard()
    {
        Assert.Equal((0.0889, 0.1397), (Math.Round(p.Frames.Base.Depth, 9), Math.Round(p.Frames.Base.Along, 9)));
        // 3/4 in rope + 1/8 in clearance + two liners of 1/16 in
        Assert.Equal(0.0254, p.Frames.Channel.Width, 12);
        // 1 in + 9 holes of 1/4 in
        Assert.Equal(0.08255, p.Frames.Keeper.Spread, 12);
        Assert.Equal(0.4572, p.Frames.Brace.Length, 12);
        // The foot gives the length back: n_o = L cos β with the formula for n_o in docs/bridge.md, Braces.
        Assert.Equal(p.Frames.Brace.Length, BraceGeometry.FromFoot(p.Frames.Post, p.Frames.Brace.Lean, p.Frames.Brace.Foot).LongEdge, 12);
        Assert.Equal((DeckLayout.Across, 3), (p.Deck.Layout, p.Deck.Stringer!.Count));
        Assert.Equal(6.5 * 0.0254, p.Deck.Thickness, 12);
        Assert.Equal([0.3302, 0.5588], p.Guard.RailHeights.Select(h => Math.Round(h, 9)));
        Assert.Equal(2, p.Guard.RailCount);
        Assert.Equal([Role.Base, Role.Post], p.Frames.Holes.Select(h => h.Part));
        Assert.Equal((true, 0.0254), (p.Frames.Holes[1].FromFarEnd, p.Frames.Holes[1].Depth!.Value));
    }

    [Fact]
    public void Loads_stock_and_the_rest()
    {
        Assert.Equal(478.8026, p.Loads.Uplift!.Value, 4);
        Assert.Equal("herd, barrow", string.Join(", ", p.Loads.Cases.Select(c => c.Id)));
        Assert.Equal(2.1336, p.Loads.Cases[1].PointAt!.Value, 12);
        Assert.Equal(
            (500, 600, 900),
            (p.StockNamed("treated").Density.Low, p.StockNamed("treated").Density.InService, p.StockNamed("treated").Density.High));
        Assert.True(p.StockNamed("treated").Incised);
        Assert.Equal((400, 700), (p.StockNamed("cedar").Density.Low, p.StockNamed("cedar").Density.High));
        Assert.InRange(p.StockNamed("cedar").Density.InService, 400, 700);
        Assert.Equal([2.4384, 3.6576], p.StockNamed("treated").Lengths.Select(l => Math.Round(l, 9)));
        Assert.Equal(1.1e9, Assert.Single(p.Values).Modulus, 3);
        Assert.Equal((3, 4908.477), (p.Treatment!.Coats, Math.Round(p.Treatment.Coverage, 3)));
        Assert.Equal(4, p.Fasteners["post-foot"]);
        Assert.Equal((0.0127, true), (p.Shop.Trim, p.Shop.Tabs));
        Assert.Equal(ErectionOrder.OneEnd, p.Erection);
    }

    [Theory]
    [InlineData("[15 ft, -9 ft]", "[0 ft, -9 ft]", "does not lie beyond the point before it")]
    [InlineData("[15 ft, -9 ft]", "[15 ft]", "this list has 1 entries; it takes 2")]
    [InlineData("[0.25 %, 0.5 %]", "[0.5 %, 0.25 %]", "swap its two shares")]
    [InlineData("id: herd", "id: live-full", "names another load case already; write an id of its own, such as 'live-full-2'")]
    [InlineData("id: herd", "id: live-snow", "names another load case already")]
    [InlineData("id: herd", "id: snow", "names another load case already")]
    [InlineData("id: herd", "id: Dead", "names another load case already")]
    [InlineData("id: barrow", "id: herd", "names another load case already")]
    [InlineData("at: 7 ft", "at: 37 ft", "lies beyond support B")]
    [InlineData("to: 20 ft", "to: 4 ft", "must be nearer to A")]
    [InlineData("modulus: 100 GPa }", "}", "ropes.type.modulus is missing")]
    [InlineData("layout: across", "layout: along", "boards that run along need no stringers")]
    [InlineData("count: 3", "count: 30", "30 stringers do not fit")]
    [InlineData("in_service: 600 kg/m3", "in_service: 400 kg/m3", "must lie between low and high")]
    [InlineData("high: 700 kg/m3", "high: 300 kg/m3", "is less than low")]
    [InlineData("size: 2x6, bending", "size: huge, bending", "is not a size")]
    [InlineData("size: 2x6, bending", "size: beam, bending", "did you mean beams? write dimension")]
    [InlineData("- { species: alder", "- { species: adler", "did you mean alder?")]
    [InlineData("from_end: 4 in", "from_end: 40 ft", "the hole is not inside the base")]
    [InlineData("depth: 1 in }", "depth: 2 in }", "goes through the post")]
    [InlineData("length: 18 in", "length: 3 in", "its inner edge would be cut away")]
    [InlineData("coats: 3", "coats: 0", "is not a whole number from 1 to 10")]
    [InlineData("post-foot: 4", "post.foot: 4", "is not a name")]
    public void Checked(string old, string replacement, string says)
    {
        Assert.Equal(2, Full.Split(old).Length);
        var faults = Examples.Read(Full.Replace(old, replacement, StringComparison.Ordinal)).Faults;
        Assert.Contains(says, Assert.Single(faults).Message, StringComparison.Ordinal);
    }
}
