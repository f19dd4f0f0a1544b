using BridgeForm.Frames;
using BridgeForm.Solids;

namespace BridgeForm.Output.DrawingSet;

/// <summary>Lines of walking surface, caps and ground read off the layout. World x and y, metres.</summary>
internal static class Stations
{
    /// <summary>Height of the walking surface on the middle line at a frame.</summary>
    public static double DeckAt(BridgeLayout layout, int frame) =>
        Surface(layout.Deck, layout.Parameters.Deck.Thickness, Math.Max(1, frame), frame).Y;

    /// <summary>The walking surface in the middle of a bay (1 …), and the cap's top above it.</summary>
    public static (Vector3d Deck, double Cap) GuardInBay(BridgeLayout layout, int bay)
    {
        var deck = Middle(layout.Deck, layout.Parameters.Deck.Thickness, bay);
        var (from, to) = (Surface(layout.Caps, Cap(layout), bay, bay - 1), Surface(layout.Caps, Cap(layout), bay, bay));
        return (deck, from.Y + ((deck.X - from.X) / (to.X - from.X) * (to.Y - from.Y)));
    }

    /// <summary>Height of the ground line at x; null where none is given.</summary>
    public static double? GroundAt(BridgeLayout layout, double x)
    {
        var ground = layout.Parameters.Site.Ground;
        for (var i = 1; i < ground.Length; i++)
        {
            var (a, b) = (ground[i - 1], ground[i]);
            if (x >= a.X && x <= b.X && b.X > a.X)
            {
                return a.Y + ((x - a.X) / (b.X - a.X) * (b.Y - a.Y));
            }
        }

        return null;
    }

    private static double Cap(BridgeLayout layout) => layout.Parameters.Guard.Cap.Thickness;

    private static Vector3d Middle(BearingLine line, double thickness, int bay) =>
        0.5 * (Surface(line, thickness, bay, bay - 1) + Surface(line, thickness, bay, bay));

    private static Vector3d Surface(BearingLine line, double thickness, int bay, int frame) =>
        line.Points[frame] + (thickness * Vector3d.UnitZ.Cross(line.Direction(bay)));
}
