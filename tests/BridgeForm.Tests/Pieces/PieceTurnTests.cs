using BridgeForm.Frames;
using BridgeForm.Pieces;
using BridgeForm.Roles;
using BridgeForm.Solids;
using BridgeForm.Tests.Samples;

namespace BridgeForm.Tests.Pieces;

/// <summary>An occurrence knows which way its piece lies.</summary>
public class PieceTurnTests
{
    private const string Across = "\ndeck: { layout: across, board: { section: 2x6 }, stringer: { section: 2x6, count: 3 } }\n";

    // Rails of a square section may stand a quarter turned.
    private const string SquareRails = "\nguard: { rails: { section: 40 x 40 mm, count: 5 } }\nshop: { tolerance: 4 mm }\n";

    public static TheoryData<string> Texts => [Bridges.Garden, Bridges.Inclined, Bridges.Garden + Across, Bridges.Inclined + SquareRails];

    [Theory]
    [MemberData(nameof(Texts))]
    public void Turned_means_that_the_near_end_lies_at_the_roles_far_end(string text)
    {
        var parameters = Bridges.Read(text);
        var model = Bridges.Build(parameters);
        var members = Members.Lay(BridgeLayout.Lay(parameters, model.Rope)).SelectMany(g => g.Members).ToDictionary(
            m => m.Id, StringComparer.Ordinal);
        var turned = 0;
        foreach (var (piece, place) in model.Pieces.SelectMany(p => p.Occurrences.Select(o => (p, o))))
        {
            var member = members[place.Id];
            var (low, high) = member.Shape.LengthRange();
            var near = place.Placement.ToWorld(Vector3d.Zero);
            var toNear = (near - member.Placement.ToWorld(new Vector3d(low, 0, 0))).Length;
            var toFar = (near - member.Placement.ToWorld(new Vector3d(high, 0, 0))).Length;
            Assert.Equal(toFar < toNear, place.Turned);
            Assert.Equal(member.Side, place.Side);
            var face = place.Turn.Face switch
            {
                FaceTurn.Same => member.Placement.Z,
                FaceTurn.Opposite => -member.Placement.Z,
                FaceTurn.PlusY => member.Placement.Y,
                _ => -member.Placement.Y,
            };
            Assert.Equal(1, face.Dot(place.Placement.Z), 1e-9);
            turned += place.Turned ? 1 : 0;
        }

        Assert.True(turned > 0, "Nothing stands turned: the bridge does not try what this test is about.");
    }

    [Fact]
    public void The_demos_bay_and_base_at_B_are_those_at_A_turned()
    {
        var model = new Sample("alder-dell").Build();
        var turned = model.Pieces.SelectMany(p => p.Occurrences).Where(o => o.Turned).Select(o => o.Id).Order(StringComparer.Ordinal);
        var last = model.Groups.Single(g => g.Name == "B11").MemberIds;
        Assert.Equal(last.Append("F11/base").Append("F11/packer").Order(StringComparer.Ordinal), turned);
    }

    [Fact]
    public void A_loaded_base_of_a_bridge_on_a_slope_stands_turned()
    {
        var model = new Sample("fern-rise").Build();
        Assert.Contains(
            model.Pieces.Where(p => p.Role == Role.Base).SelectMany(p => p.Occurrences),
            o => o.Turned && model.Frames.Any(f => !f.IsEnd && o.Id == f.Name + "/base"));
    }

    [Fact]
    public void What_agrees_as_it_is_counts_as_neither_turned_nor_rolled_over()
    {
        var model = Bridges.Build(Bridges.Garden);
        Assert.All(model.Pieces, p => Assert.Equal(PieceTurn.None, p.Occurrences[0].Turn));

        // All bases on the ropes of a level bridge with square frames are alike from either end.
        var bases = model.Pieces.Single(p => p.Occurrences.Any(o => o.Id == "F03/base"));
        Assert.All(bases.Occurrences, o => Assert.Equal(PieceTurn.None, o.Turn));
    }
}
