using BridgeForm.Materials;
using BridgeForm.Project;
using BridgeForm.Roles;
using BridgeForm.Solids;

namespace BridgeForm.Frames;

/// <summary>What runs from base to base: boards lying flat, or stringers standing. X from A to B.</summary>
internal static class DeckBoards
{
    /// <summary>Boards of one bay, left first. Z is the upper face.</summary>
    public static IEnumerable<Member> Boards(BridgeLayout layout, int bay)
    {
        var deck = layout.Parameters.Deck;
        var count = DeckWidth.BoardCount(layout.Parameters);
        var width = DeckWidth.Filled(layout.Parameters);
        var up = Vector3d.UnitZ.Cross(layout.Deck.Direction(bay));
        for (var i = 0; i < count; i++)
        {
            var z = LongPart.Spread(i, count, width, deck.Board.Width);
            var id = new PartId(FramePoses.BayName(bay, layout.Bays), Role.Board, Side.None, i + 1);
            yield return Lengthwise(layout, bay, z, up, deck.Board, deck.Board.Thickness, id);
        }
    }

    /// <summary>Stringers of one bay, left first. Z to the right.</summary>
    public static IEnumerable<Member> Stringers(BridgeLayout layout, int bay, StringerParameters stringer)
    {
        var width = DeckWidth.Filled(layout.Parameters);
        for (var i = 0; i < stringer.Count; i++)
        {
            var z = LongPart.Spread(i, stringer.Count, width, stringer.Section.Thickness);
            var id = new PartId(FramePoses.BayName(bay, layout.Bays), Role.Stringer, Side.None, i + 1);
            yield return Lengthwise(layout, bay, z, Vector3d.UnitZ, stringer.Section, stringer.Section.Width, id);
        }
    }

    private static Member Lengthwise(
        BridgeLayout layout,
        int bay,
        double z,
        Vector3d face,
        Section section,
        double height,
        PartId id)
    {
        var along = layout.Deck.Direction(bay);
        var up = Vector3d.UnitZ.Cross(along);
        var origin = layout.Deck.Points[bay - 1] + (height / 2 * up) + new Vector3d(0, 0, z);
        var placement = Placement.FromLengthAndThickness(origin, along, face);
        var inset = layout.Parameters.Deck.ButtGap / 2;
        var overrun = DeckEnd.Beyond(layout.Parameters);
        var near = EndPlanes.AtStart(layout.Poses[bay - 1], inset, overrun);
        var far = EndPlanes.AtFinish(layout.Poses[bay], inset, overrun);
        var shape = LongPart.Shape(section, placement, near, far);
        return new Member(id, layout.Parameters.StockOf(id.Role), section.Name, placement, shape);
    }
}
