using BridgeForm.Frames;
using BridgeForm.Project;
using BridgeForm.Roles;
using BridgeForm.Stocking;

namespace BridgeForm.Tests.Roles;

/// <summary>The table of roles is whole, and its facts agree with each other and with the bridges that are built.</summary>
public sealed class RoleTableTests
{
    [Fact]
    public void Every_role_stands_in_the_table_once()
    {
        Assert.Equal(Enum.GetValues<Role>(), RoleTable.All.Select(f => f.Role).Order());
        Assert.All(Enum.GetValues<Role>(), role => Assert.Equal(role, RoleTable.Of(role).Role));
    }

    [Fact]
    public void Letters_names_and_words_are_unlike_each_other()
    {
        Assert.Distinct(RoleTable.All.Select(f => f.Letter), StringComparer.Ordinal);
        Assert.Distinct(RoleTable.All.Select(f => f.Name), StringComparer.Ordinal);
        Assert.Distinct(RoleTable.All.Select(f => f.Words), StringComparer.Ordinal);
        Assert.Distinct(RoleTable.JointNames, StringComparer.Ordinal);
    }

    [Theory]
    [MemberData(nameof(EveryRole.All), MemberType = typeof(EveryRole))]
    public void Every_role_has_every_word(Role role)
    {
        var facts = RoleTable.Of(role);
        Assert.Equal(role.ToString().ToLowerInvariant(), facts.Name);
        Assert.Matches("^[A-Z]$", facts.Letter);
        Assert.Matches("^[A-Z].*[^.]$", facts.Words);
        var ends = facts.Ends;
        Assert.All((string[])[ends.Near, ends.Far, ends.Arrow, ends.ArrowTurned, ends.ShopNear, ends.ShopFar], Said);
        foreach (var faces in new[] { facts.Faces, facts.FlatFaces }.OfType<FaceWords>())
        {
            string[] ways = [
                faces.Opposite, faces.Plus(Side.Left), faces.Minus(Side.Left), faces.Plus(Side.Right), faces.Minus(Side.Right),
                faces.Plus(Side.None),
            ];
            Assert.All([faces.Drawn, .. ways], Said);
            Assert.NotEqual(faces.Plus(Side.Left), faces.Minus(Side.Left));
            Assert.Equal(faces.Mirrored, faces.Plus(Side.Left) == faces.Minus(Side.Right));
        }

        Assert.NotEmpty(facts.Joints);
        Assert.All(facts.Joints, j => Said(j.What));
        Assert.NotEmpty(facts.AddedIn);
        Assert.NotEqual(default, facts.Leaves);
    }

    /// <summary>Whoever puts parts up in the order of the table finds what carries them.</summary>
    [Fact]
    public void What_carries_stands_before_what_it_carries()
    {
        var order = RoleTable.All.Select(f => f.Role).ToList();
        foreach (var facts in RoleTable.All)
        {
            foreach (var carrier in facts.RestsOn.SelectMany(b => b.On).Select(RoleTable.Of))
            {
                Assert.True(order.IndexOf(carrier.Role) < order.IndexOf(facts.Role), $"{carrier.Name} under {facts.Name}");
                Assert.True(
                    carrier.AddedIn.Max() < facts.AddedIn.Min()
                        || (carrier.AddedIn.Max() == facts.AddedIn.Min() && carrier.Rank < facts.Rank),
                    $"{carrier.Name} goes up before {facts.Name}");
            }
        }
    }

    // By hand: rails, caps on posts, pickets on rails, posts on bases;
    // boards, stringers on bases or packers, these on bases; treads on stringers.
    [Theory]
    [InlineData(DrawingSection.Frame, "base post")]
    [InlineData(DrawingSection.Deck, "base packer stringer")]
    [InlineData(DrawingSection.Guard, "base post shim rail")]
    public void What_stands_under_a_section_is_found_down_to_the_ropes(DrawingSection section, string names) =>
        Assert.Equal(names, string.Join(' ', RoleTable.All.Where(f => RoleTable.IsUnder(f.Role, section)).Select(f => f.Name)));

    /// <summary>The keys that people write under <c>fasteners</c>: none is lost or renamed by a change of the table.</summary>
    [Fact]
    public void Every_joint_named_under_fasteners_occurs_in_a_bridge()
    {
        string[] written =
        [
            "keeper", "post-foot", "brace-foot", "brace-head", "packer", "shim", "board-end", "stringer-end", "tread", "rail", "cap",
            "picket", "handrail", "cleat", "newel",
        ];
        Assert.Equal(written, RoleTable.JointNames);
        Assert.Equal(
            written.Order(StringComparer.Ordinal),
            EveryRole.Models.SelectMany(m => Joints.Count(m.Pieces)).Select(j => j.Name).Distinct(StringComparer.Ordinal).Order(
                StringComparer.Ordinal));
    }

    /// <summary>A stock of its own under every key that chooses wood: each part is cut from that of its key.</summary>
    [Theory]
    [InlineData(Role.Base, "bases")]
    [InlineData(Role.Post, "posts")]
    [InlineData(Role.Brace, "braces")]
    [InlineData(Role.Packer, "stringers")]
    [InlineData(Role.Stringer, "stringers")]
    [InlineData(Role.Tread, "boards")]
    [InlineData(Role.Rail, "rails")]
    [InlineData(Role.Cap, "caps")]
    [InlineData(Role.Handrail, "handrails")]
    [InlineData(Role.Cleat, "cleats")]
    [InlineData(Role.Newel, "newels")]
    public void Wood_is_chosen_where_the_table_says(Role role, string stock)
    {
        var text = Bridges.Inclined
            .Replace(Bridges.MetricPine, "", StringComparison.Ordinal)
            .Replace("length: 1500 mm }", "length: 1500 mm, stock: bases }", StringComparison.Ordinal)
            .Replace("foot: 470 mm }", "foot: 470 mm, stock: posts }", StringComparison.Ordinal)
            .Replace("foot: 725 mm }", "foot: 725 mm, stock: braces }", StringComparison.Ordinal)
            + "\ndeck: { layout: across, board: { section: 38 x 140 mm, stock: boards }, stringer: { section: 38 x 140 mm, count: 3, "
            + "stock: stringers }, grip: cleats, cleats: { section: 19 x 89 mm, stock: cleats } }"
            + "\nguard: { rails: { section: 19 x 89 mm, count: 6, stock: rails }, cap: { section: 38 x 140 mm, stock: caps }, "
            + "handrail: { height: 700 mm, stock: handrails }, newels: { stock: newels } }\nstock:\n"
            + string.Concat(Stocks.Select(name =>
                $"  {name}: {{ species: western-red-cedar, treated: {(name == "stringers" ? "true" : "false")}, lengths: [3 m] }}\n"));
        var layout = Bridges.Layout(Bridges.Read(text));
        var members = Members.Lay(layout).SelectMany(g => g.Members).Where(m => m.Role == role).ToList();
        Assert.NotEmpty(members);
        Assert.All(members, m => Assert.Equal(stock, m.Stock));
        Assert.Equal(stock, layout.Parameters.FindStock(role));
    }

    private static readonly string[] Stocks =
        ["bases", "posts", "braces", "boards", "stringers", "rails", "caps", "handrails", "cleats", "newels"];

    [Fact]
    public void Nothing_chooses_wood_for_stringers_that_a_deck_has_not() =>
        Assert.Null(Bridges.Read(Bridges.Garden).FindStock(Role.Stringer));

    /// <summary>The roles that take holes are the keys under <c>holes</c>, and no others are.</summary>
    [Theory]
    [MemberData(nameof(EveryRole.All), MemberType = typeof(EveryRole))]
    public void Holes_may_be_asked_for_where_the_table_says(Role role)
    {
        var text = Bridges.Garden + $"\nholes: {{ {RoleTable.Of(role).Name}: [{{ diameter: 1/4 in, from_end: 6 in }}] }}\n";
        if (RoleTable.Of(role).TakesHoles)
        {
            Assert.Equal(role, Assert.Single(Bridges.Read(text).Frames.Holes).Part);
        }
        else
        {
            Assert.Throws<InvalidOperationException>(() => Bridges.Read(text));
        }
    }

    private static void Said(string words) => Assert.False(string.IsNullOrWhiteSpace(words));
}
