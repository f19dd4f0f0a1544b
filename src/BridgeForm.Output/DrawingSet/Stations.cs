using BridgeForm.Frames;
using BridgeForm.Output.Drawing;
using BridgeForm.Solids;

namespace BridgeForm.Output.DrawingSet;

/// <summary>Lines of walking surface, caps and ground read off the layout. World x and y, metres.</summary>
internal static class Stations
{
    /// <summary>
    /// Height of the walking surface on the middle line straight above a frame's node, the frame's station. A frame that
    /// leans has its joint of the boards to one side of it: there the surface is that of the one bay or the other.
    /// </summary>
    public static double DeckAt(BridgeLayout layout, int frame) => TopAt(layout, layout.Deck, layout.Parameters.Deck.Thickness, frame);

    /// <summary>Height of the cap's top there.</summary>
    public static double CapAt(BridgeLayout layout, int frame) => TopAt(layout, layout.Caps, layout.Parameters.Guard.Cap.Thickness, frame);

    /// <summary>Station and levels of every frame.</summary>
    public static FlowTable Table(DrawingContext context)
    {
        var (poses, text) = (context.Layout.Poses, context.Text);
        return new FlowTable(
            "Stations and levels",
            "Stations level from A; levels above the rope's axis at A; bridge complete and empty.",
            [
                new("Frame"), new("Station", Figures: true), new("Rope axis", Figures: true), new("Walking surface", Figures: true),
                new("Slope", Figures: true),
            ],
            [
                .. poses.Select((p, i) => new FlowRow(
                [
                    p.Name, text.Length(p.Node.X), text.Level(p.Node.Y), text.Level(DeckAt(context.Layout, i)),
                    DrawingText.Angle(p.Slope),
                ])),
            ]);
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

    private static double TopAt(BridgeLayout layout, BearingLine line, double thickness, int frame)
    {
        var x = layout.Poses[frame].Node.X;
        var (before, after) = (Math.Max(1, frame), Math.Min(layout.Bays, frame + 1));
        double At(int bay) => HeightAt(line, thickness, bay, x);

        // The tops of two bays meet in their joint; to either side the surface is the higher of them in a hollow, the lower on a crest.
        var hollow = line.Direction(after).Y >= line.Direction(before).Y;
        return hollow ? Math.Max(At(before), At(after)) : Math.Min(At(before), At(after));
    }

    /// <summary>Height of a bay's top over a station, the straight line carried on beyond its ends.</summary>
    private static double HeightAt(BearingLine line, double thickness, int bay, double x)
    {
        var (from, to) = (Surface(line, thickness, bay, bay - 1), Surface(line, thickness, bay, bay));
        return from.Y + ((x - from.X) / (to.X - from.X) * (to.Y - from.Y));
    }

    private static Vector3d Surface(BearingLine line, double thickness, int bay, int frame) =>
        line.Points[frame] + (thickness * Vector3d.UnitZ.Cross(line.Direction(bay)));
}
