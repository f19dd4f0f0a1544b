using BridgeForm.Frames;
using BridgeForm.Loads;
using BridgeForm.Roles;
using BridgeForm.Solids;

namespace BridgeForm.Tests.Loads;

/// <summary>Weights of frames and bays against every member's own solid, left and right, one by one.</summary>
public sealed class MemberWeightsTests
{
    // Closed forms and solids agree to round-off.
    private const double RoundOff = 1e-9;

    [Theory]
    [InlineData(Bridges.Garden, "holes: { post: [{ face: wide, from_end: 20 in, diameter: 1-1/2 in }], brace: [{ face: top, from_end: 10 "
        + "in, diameter: 1/2 in }] }")]
    [InlineData(Bridges.Inclined, "guard: { rails: { count: 3 } }")]
    [InlineData(Bridges.Inclined, "deck: { layout: across }")]
    public void Every_part_on_both_sides_is_weighed(string bridge, string more)
    {
        var parameters = Bridges.Read(bridge + "\n" + more + "\n");
        var layout = Bridges.Layout(parameters);
        var masses = BridgeMasses.Weigh(layout);
        for (var i = 0; i <= layout.Bays; i++)
        {
            var members = Members.Frame(layout, i).Members;
            Assert.Equal(2, members.Count(m => m.Role == Role.Post));
            Assert.Equal(
                parameters.Frames.HardwareMass + members.Where(m => m.Role != Role.Packer).Sum(Weighed), masses.Frames[i], RoundOff);
            Assert.Equal(members.Where(m => m.Role == Role.Packer).Sum(Weighed), masses.Packers[i], RoundOff);
        }

        for (var i = 1; i <= layout.Bays; i++)
        {
            var members = Members.Bay(layout, i).Members;
            Assert.Equal(2, members.Count(m => m.Role == Role.Cap));
            Assert.Equal(members.Sum(Weighed), masses.Bays[i - 1], RoundOff);
        }

        double Weighed(Member member) =>
            StockSolid.Build(member.Shape).OrNull!.Volume * parameters.Stock.Single(s => s.Name == member.Stock).Density.InService;
    }
}
