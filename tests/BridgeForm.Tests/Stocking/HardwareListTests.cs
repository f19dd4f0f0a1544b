using System.Collections.Immutable;
using BridgeForm.Materials;
using BridgeForm.Quantities;
using BridgeForm.Roles;
using BridgeForm.Ropes;
using BridgeForm.Ropes.Fittings;
using BridgeForm.Stocking;

namespace BridgeForm.Tests.Stocking;

public class HardwareListTests
{
    // The file says of what all fasteners and keepers are; the list names no other metal.
    [Theory]
    [InlineData("stainless", "stainless", "galvanized")]
    [InlineData("hot-dip-galvanized", "hot-dip galvanized", "stainless")]
    public void The_metal_of_the_file_is_the_only_one(string key, string told, string never)
    {
        var list = Bridges.Build(Bridges.Garden + $"\ntreatment: {{ fasteners: {key} }}").Hardware();
        Assert.DoesNotContain(list, h => h.Note.Contains(never, StringComparison.Ordinal));
        Assert.Contains(list, h => h.Item is "Keeper straps" && h.Note.Contains(told, StringComparison.Ordinal));
        Assert.Contains(
            list, h => h.Item.StartsWith("Shackles", StringComparison.Ordinal) && h.Note.EndsWith(told, StringComparison.Ordinal));
    }

    // U-bolt clips slip on strand: no row buys them, and so no step and no caution tells how they are tightened.
    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public void Clips_are_bought_where_and_only_where_steps_and_cautions_tell_of_them(bool isStrand)
    {
        var strand = Bridges.Catalogue.Keys.First(
            k => Bridges.Catalogue.Find(k) is { Kind: RopeKind.Strand, Diameter: > 0.018 and < 0.026 });
        var model = Bridges.Build(isStrand
            ? Bridges.Garden.Replace("rope-6x19-iwrc-eips-galvanized-3/4", strand, StringComparison.Ordinal) : Bridges.Garden);
        var bought = model.Hardware().Any(h => h.Item is "Rope clips");
        Assert.Equal(!isStrand, bought);
        Assert.Equal(bought, model.Erection().Any(s => s.Text.Contains("clip", StringComparison.Ordinal)));
        Assert.Equal(bought, model.Ropework.Cautions.Any(c => c.StartsWith("Clips:", StringComparison.Ordinal)
            || c.StartsWith("Tighten clips", StringComparison.Ordinal)));
    }

    private static readonly Lazy<BridgeModel> s_garden = new(() => Bridges.Build(Bridges.Garden));

    [Fact]
    public void Joints_are_those_of_the_parts()
    {
        var model = s_garden.Value;
        var frames = model.Frames.Length;
        var bays = frames - 1;
        var joints = Joints.Count(model.Pieces).ToDictionary(j => j.Name, j => j.Count);
        Assert.Equal(2 * frames, joints["keeper"]);
        Assert.Equal(2 * frames, joints["post-foot"]);
        Assert.Equal(2 * frames, joints["brace-foot"]);
        Assert.Equal(2 * frames, joints["brace-head"]);
        Assert.Equal(2 * 2 * bays, joints["cap"]);
        Assert.Equal(2 * 2 * bays * model.Parameters.Guard.RailCount, joints["rail"]);
        Assert.DoesNotContain("tread", joints.Keys);
    }

    [Fact]
    public void Every_tread_is_fixed_to_every_stringer()
    {
        var model = Bridges.Build(
            Bridges.Garden + "\n" + "deck: { layout: across, board: { section: 2x6 }, stringer: { section: 2x6, count: 3 } }\n");
        var treads = model.Pieces.Where(p => p.Role == Role.Tread).Sum(p => p.Occurrences.Length);
        Assert.Equal(3 * treads, Joints.Count(model.Pieces).Single(j => j.Name is "tread").Count);
    }

    [Fact]
    public void Fasteners_are_counts_of_the_file_times_joints()
    {
        var model = s_garden.Value;
        var given = ImmutableSortedDictionary<string, int>.Empty.Add("post-foot", 4).Add("tread", 2);
        var list = (model with { Parameters = model.Parameters with { Fasteners = given } }).Hardware();
        Assert.Equal(4 * 2 * model.Frames.Length, list.Single(i => i.Item is "Fasteners, post-foot").Quantity);
        Assert.Null(list.Single(i => i.Item is "Fasteners, cap").Quantity);
        Assert.Contains("no such joint", list.Single(i => i.Item is "Fasteners, tread").Where, StringComparison.Ordinal);
    }

    // Three screws at either end of every rail; a cap that the file leaves open says its force, and no number.
    [Fact]
    public void Screws_are_counted_and_what_is_left_open_has_its_force()
    {
        var model = Bridges.Build(Bridges.Garden + "\njoints: { rail: { screw: no10, length: 3 in, count: 3 } }\n");
        var list = model.Hardware();
        var rails = model.Pieces.Where(p => p.Role == BridgeForm.Roles.Role.Rail).Sum(p => p.Occurrences.Length);
        Assert.Equal(6 * rails, list.Single(i => i.Item is "Screws, No. 10 wood screws 3 in, rail").Quantity);
        var cap = list.Single(i => i.Item is "Fasteners, cap");
        Assert.Null(cap.Quantity);
        Assert.StartsWith("by your engineer: 200 lbf (joint-cap); ", cap.Note, StringComparison.Ordinal);
    }

    // How many hold a joint is no default and no example: a number that is seen there is a number that is used.
    [Fact]
    public void No_number_of_fasteners_is_suggested()
    {
        var asked = s_garden.Value.Hardware().Where(i => i.Item.StartsWith("Fasteners, ", StringComparison.Ordinal)).ToList();
        Assert.Equal(8, asked.Count); // keeper, post-foot, brace-foot, brace-head, packer, board-end, rail, cap
        Assert.All(asked, i =>
        {
            Assert.Null(i.Quantity);
            Assert.Contains(": N } into the project file, N from your engineer", i.Note, StringComparison.Ordinal);
            Assert.DoesNotMatch("[0-9]", i.Note);
        });
    }

    // California 8 CCR 8497, table 1: 3/4 in takes 4 clips; four rope ends.
    [Fact]
    public void Clips_and_thimbles_for_four_rope_ends()
    {
        var list = s_garden.Value.Hardware();
        Assert.Equal(16, list.Single(i => i.Item is "Rope clips").Quantity);
        Assert.Equal(4, list.Single(i => i.Item is "Thimbles").Quantity);
    }

    // NAVEDTRA 14026: n = 3 D + 1 rounded up, D in inches, is never above the table by more than the one clip that old editions add.
    [Fact]
    public void Clip_table_rises_with_the_rope()
    {
        Assert.All(WireRopeClip.All.Zip(WireRopeClip.All.Skip(1)), p =>
        {
            Assert.True(p.First.Diameter < p.Second.Diameter);
            Assert.True(p.First.Count <= p.Second.Count && p.First.TurnBack <= p.Second.TurnBack && p.First.Torque <= p.Second.Torque);
        });
        Assert.All(WireRopeClip.All, r =>
        {
            var byFormula = Math.Ceiling((3 * r.Diameter / 0.0254) + 1);
            Assert.InRange(r.Count, byFormula - 1, byFormula + 2);
        });
    }

    // By hand: 8 CCR 8497 table 1 turns back 18 in of 3/4 in rope, 6 diameters go round the thimble, at both ends.
    [Fact]
    public void Rope_is_bought_with_both_its_ends()
    {
        var model = s_garden.Value;
        var rope = model.Hardware().Single(i => i.Item.StartsWith("Rope rope-", StringComparison.Ordinal));
        Assert.Equal(model.Rope.UnstressedLength() + (2 * (18 + 4.5) * 0.0254), model.Ropework.Cut!.Length!.Value, 1e-9);
        Assert.StartsWith(
            new QuantityText(model.Parameters.Units).Length(model.Ropework.Cut!.Length!.Value), rope.Where, StringComparison.Ordinal);
    }

    // What the checks choose is what is bought: one at each end of each of two ropes.
    [Fact]
    public void Turnbuckles_and_shackles_are_those_of_the_checks()
    {
        var model = s_garden.Value;
        var list = model.Hardware();
        foreach (var (item, check) in new[] { ("Turnbuckles", "turnbuckle-size"), ("Shackles", "shackle-size") })
        {
            var line = list.Single(i => i.Item.StartsWith(item, StringComparison.Ordinal));
            Assert.Equal(4, line.Quantity);
            var size = line.Item.Split(' ');
            if (size.Length > 1)
            {
                Assert.StartsWith(
                    "size " + size[1] + " in is the smallest", model.Checks.Single(c => c.Id == check).Detail, StringComparison.Ordinal);
            }
            else
            {
                Assert.Equal(BridgeForm.Checks.CheckStatus.Engineer, model.Checks.Single(c => c.Id == check).Status);
            }
        }

        Assert.Contains(list, i => i.Item.StartsWith("Shackles ", StringComparison.Ordinal));
    }

    [Fact]
    public void Strand_gets_no_clips()
    {
        var strand = Bridges.Build(
            Bridges.Garden.Replace("rope-6x19-iwrc-eips-galvanized-3/4", "strand-ehs-3/4", StringComparison.Ordinal));
        Assert.DoesNotContain(strand.Hardware(), i => i.Item is "Rope clips" or "Thimbles");
        Assert.Contains(strand.Hardware(), i => i.Item is "Rope ends" && i.Note.Contains("slip on strand", StringComparison.Ordinal));
    }

    [Fact]
    public void Other_rope_ends_get_no_clips()
    {
        var model = s_garden.Value;
        var sockets =
            model with { Parameters = model.Parameters with { Ropes = model.Parameters.Ropes with { TerminationKind = "poured-socket" } } };
        Assert.DoesNotContain(sockets.Hardware(), i => i.Item is "Rope clips" or "Thimbles");
        Assert.Contains(sockets.Hardware(), i => i.Item is "Rope ends, poured-socket" && i.Quantity == 4);
    }
}
