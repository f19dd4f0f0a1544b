using BridgeForm.Roles;

namespace BridgeForm.Tests.Roles;

/// <summary>Ids of parts say owner, role, side and number.</summary>
public sealed class PartIdTests
{
    [Theory]
    [InlineData("F03/base", "F03", Role.Base, Side.None, 0)]
    [InlineData("F103/post-left", "F103", Role.Post, Side.Left, 0)]
    [InlineData("B05/board-12", "B05", Role.Board, Side.None, 12)]
    [InlineData("B05/rail-right-2", "B05", Role.Rail, Side.Right, 2)]
    public void An_id_is_written_and_read(string id, string owner, Role role, Side side, int number)
    {
        Assert.Equal(new PartId(owner, role, side, number), PartId.Read(id));
        Assert.Equal(id, new PartId(owner, role, side, number).ToString());
        Assert.Equal(owner, PartId.OwnerOf(id));
    }

    [Theory]
    [InlineData("ropes/left")]
    [InlineData("base")]
    [InlineData("F03/ladder")]
    [InlineData("F03/basement")]
    [InlineData("F03/post-middle")]
    [InlineData("B05/board-")]
    public void What_is_no_part_is_read_as_none(string id) => Assert.Null(PartId.Read(id));

    [Fact]
    public void Every_part_of_a_bridge_has_an_id_that_tells_what_it_is() =>
        Assert.All(EveryRole.Models.SelectMany(m => m.Pieces), piece => Assert.All(piece.Occurrences, place =>
        {
            var id = PartId.Read(place.Id)!.Value;
            Assert.Equal((piece.Role, place.Side, place.Id), (id.Role, id.Side, id.ToString()));
        }));
}
