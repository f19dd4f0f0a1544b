using BridgeForm.Project;
using BridgeForm.Solids;

namespace BridgeForm.Frames;

/// <summary>Where the deck ends at a support: flush with the outer face of the end frame's base. Metres.</summary>
public static class DeckEnd
{
    /// <summary>From an end frame's node, along the frame, to where its base and the deck on it end.</summary>
    public static double Beyond(BridgeParameters parameters) => parameters.Frames.Base.Along / 2;

    /// <summary>World y of the deck's surface where it ends on an end frame.</summary>
    public static double Surface(BridgeLayout layout, int frame)
    {
        var along = layout.Deck.Direction(Math.Max(1, frame));
        var top = layout.Deck.Points[frame] + (layout.Parameters.Deck.Thickness * Vector3d.UnitZ.Cross(along));
        var beyond = Beyond(layout.Parameters);
        var pose = layout.Poses[frame];
        var end = Plane.Through(pose.At(frame == 0 ? -beyond : beyond, 0, 0), pose.Along);
        return (top + (end.LineParameter(top, along) * along)).Y;
    }
}
