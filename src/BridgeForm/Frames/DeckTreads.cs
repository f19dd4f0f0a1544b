using BridgeForm.Project;
using BridgeForm.Roles;
using BridgeForm.Solids;

namespace BridgeForm.Frames;

/// <summary>Treads across the bridge on the stringers' tops. X from left to right, Z the upper face.</summary>
internal static class DeckTreads
{
    /// <summary>Treads of one bay, from A on; none lies across a frame's mid-plane.</summary>
    public static IEnumerable<Member> Lay(BridgeLayout layout, int bay, StringerParameters stringer)
    {
        var deck = layout.Parameters.Deck;
        var middles = Middles(layout, bay, stringer);
        var along = layout.Deck.Direction(bay);
        var up = Vector3d.UnitZ.Cross(along);
        var half = DeckWidth.Filled(layout.Parameters) / 2;
        var height = stringer.Section.Width + (deck.Board.Thickness / 2);
        for (var i = 0; i < middles.Length; i++)
        {
            var origin = layout.Deck.Points[bay - 1] + (middles[i] * along) + (height * up);
            yield return new Member(
                new PartId(FramePoses.BayName(bay, layout.Bays), Role.Tread, Side.None, i + 1),
                layout.Parameters.StockOf(Role.Tread),
                deck.Board.Name,
                Placement.FromLengthAndThickness(origin, Vector3d.UnitZ, up),
                new CutStock(
                    deck.Board.Width,
                    deck.Board.Thickness,
                    new Plane(-Vector3d.UnitX, half),
                    new Plane(Vector3d.UnitX, half)));
        }
    }

    /// <summary>Middles of a bay's treads, metres from its start along the deck.</summary>
    public static double[] Middles(BridgeLayout layout, int bay, StringerParameters stringer)
    {
        var (start, finish) = Room(layout, bay, stringer.Section.Width);
        var middles = new double[layout.Steps.Treads[bay - 1]];
        var pitch = (finish - start) / middles.Length;
        for (var i = 0; i < middles.Length; i++)
        {
            middles[i] = start + ((i + 0.5) * pitch);
        }

        return middles;
    }

    /// <summary>Treads of a bay: as given, or the largest number that keeps the least gap on this very shape.</summary>
    public static int Count(BridgeLayout layout, int bay, StringerParameters stringer) =>
        layout.Parameters.Deck.Count ?? Most(layout, bay, stringer);

    /// <summary>The largest number of treads, at least 0, that keep the least gap between each other and to the next bay's.</summary>
    public static int Most(BridgeLayout layout, int bay, StringerParameters stringer)
    {
        var deck = layout.Parameters.Deck;
        return DeckWidth.LargestCount(Length(layout, bay, stringer) - deck.Gap, deck.Board.Width, deck.Gap);
    }

    /// <summary>Length of a bay that treads may fill, metres.</summary>
    public static double Length(BridgeLayout layout, int bay, StringerParameters stringer)
    {
        var (start, finish) = Room(layout, bay, stringer.Section.Width);
        return finish - start;
    }

    /// <summary>
    /// Gap between neighbouring treads of a bay, metres; negative when they do not fit. A bay without a tread is one gap from
    /// end to end.
    /// </summary>
    public static double Gap(BridgeLayout layout, int bay, StringerParameters stringer)
    {
        var length = Length(layout, bay, stringer);
        var count = layout.Steps.Treads[bay - 1];
        return count == 0 ? length : (length / count) - layout.Parameters.Deck.Board.Width;
    }

    /// <summary>
    /// Stretch of a bay's line that treads may fill, metres from its start: between the planes that end it, where these come
    /// closest to each other over the treads' thickness.
    /// </summary>
    private static (double Start, double Finish) Room(BridgeLayout layout, int bay, double height)
    {
        var along = layout.Deck.Direction(bay);
        var up = Vector3d.UnitZ.Cross(along);
        var overrun = DeckEnd.Beyond(layout.Parameters);
        var near = EndPlanes.AtStart(layout.Poses[bay - 1], 0, overrun);
        var far = EndPlanes.AtFinish(layout.Poses[bay], 0, overrun);
        var bottom = layout.Deck.Points[bay - 1] + (height * up);
        var top = bottom + (layout.Parameters.Deck.Board.Thickness * up);
        return (
            Math.Max(near.LineParameter(bottom, along), near.LineParameter(top, along)),
            Math.Min(far.LineParameter(bottom, along), far.LineParameter(top, along)));
    }
}
