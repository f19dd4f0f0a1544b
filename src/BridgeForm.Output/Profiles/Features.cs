using System.Collections.Immutable;
using BridgeForm.Output.Drawing;
using BridgeForm.Quantities;
using BridgeForm.Solids;

namespace BridgeForm.Output.Profiles;

/// <summary>Channels and holes of one long face, drawn as seen from outside that face.</summary>
/// <param name="Units">Units of the labels.</param>
/// <param name="Move">From the piece's X and the face's cross axis to the page.</param>
internal sealed record Features(DisplayUnits Units, Func<SheetPoint, SheetPoint> Move)
{
    /// <summary>How far layout lines run past the edge of the wood, so that they are told from the pocket's own sides. Metres.</summary>
    private const double Overrun = 0.003;

    /// <summary>Pocket, centre line, and a knife line half the width to either side.</summary>
    /// <param name="channel">The channel.</param>
    /// <param name="face">The face it is cut into, a convex polygon.</param>
    /// <param name="side">Words for where it is cut from, put after its depth.</param>
    public ViewDrawing Of(Channel channel, ImmutableArray<SheetPoint> face, string side)
    {
        var (low, high) = (channel.Center - (channel.Width / 2), channel.Center + (channel.Width / 2));
        var mouth = StickFace.Between(face, low, high);
        var (bottom, top) = (mouth.Min(p => p.Y) - Overrun, mouth.Max(p => p.Y) + Overrun);
        SheetEntity Line(double x) => new SheetLine(
            ProfileLayers.Mark, Move(new SheetPoint(x, bottom)), Move(new SheetPoint(x, top)));

        var pocket = new SheetPolyline(ProfileLayers.Channel, [.. mouth.Select(Move).Select(p => new SheetVertex(p.X, p.Y))], true);
        var label = new Label(ProfileLayers.Channel, Move(new SheetPoint(low, 0)).X, Words(channel, side));
        return new ViewDrawing([pocket, Line(channel.Center), Line(low), Line(high)], [label]);
    }

    /// <summary>A circle and a label.</summary>
    /// <param name="hole">The hole.</param>
    /// <param name="across">Its place along the face's cross axis as the page has it.</param>
    /// <param name="side">Words for where it is drilled from, put after its depth.</param>
    public ViewDrawing Of(Hole hole, double across, string side)
    {
        var depth = hole.Depth is { } deep ? $"{Units.Length(deep)} deep" : "through";
        var center = Move(new SheetPoint(hole.X, across));
        return new ViewDrawing(
            [new SheetCircle(ProfileLayers.Drill, center, hole.Diameter / 2)],
            [new Label(ProfileLayers.Drill, center.X, $"⌀ {Units.Length(hole.Diameter)} {depth}{side}, at {Units.Length(hole.X)}")]);
    }

    private string Words(Channel channel, string side)
    {
        var slope = Elementary.Atan(channel.FloorSlope);
        var floor = Math.Abs(slope) > Tolerances.InPage ? $", floor {Numbers.DegreeText(slope)}" : string.Empty;
        return $"Channel {Units.Length(channel.Width)} wide, {Units.Length(channel.Depth)} deep{floor}{side}, center "
            + $"{Units.Length(channel.Center)} from the left end";
    }
}

/// <summary>Layers of a piece's drawing.</summary>
public static class ProfileLayers
{
    /// <summary>Cut through, square to the face.</summary>
    public const string Outline = "OUTLINE";

    /// <summary>Edges on the far face where the cut is not square.</summary>
    public const string Bevel = "BEVEL";

    /// <summary>Pockets.</summary>
    public const string Channel = "CHANNEL";

    /// <summary>Holes.</summary>
    public const string Drill = "DRILL";

    /// <summary>Layout lines.</summary>
    public const string Mark = "MARK";

    /// <summary>Notes.</summary>
    public const string Text = "TEXT";

    /// <summary>Dimensions.</summary>
    public const string Dim = "DIM";

    /// <summary>All of them.</summary>
    public static ImmutableArray<SheetLayer> All { get; } =
    [
        new(Outline, LayerPurpose.Cut),
        new(Bevel, LayerPurpose.FarEdge),
        new(Channel, LayerPurpose.Pocket),
        new(Drill, LayerPurpose.Drill),
        new(Mark, LayerPurpose.Layout),
        new(Text, LayerPurpose.Note),
        new(Dim, LayerPurpose.Dimension),
    ];
}
