using System.Collections.Immutable;
using BridgeForm.Frames;
using BridgeForm.Project;
using BridgeForm.Quantities;
using BridgeForm.Roles;
using BridgeForm.Solids;

namespace BridgeForm.Loads;

/// <summary>Surface on the upright plane along the bridge that a wind across it blows against.</summary>
/// <param name="Area">m².</param>
/// <param name="Moment">Area × its height, m³: over the ropes' axes, or over the landing where it says so.</param>
public readonly record struct SideSurface(double Area, double Moment)
{
    /// <summary>Sum.</summary>
    public static SideSurface operator +(SideSurface a, SideSurface b) => new(a.Area + b.Area, a.Moment + b.Moment);

    /// <summary>Difference.</summary>
    public static SideSurface operator -(SideSurface a, SideSurface b) => new(a.Area - b.Area, a.Moment - b.Moment);

    /// <summary>A share.</summary>
    public static SideSurface operator *(double k, SideSurface a) => new(k * a.Area, k * a.Moment);
}

/// <summary>An end frame with half of its bay.</summary>
/// <param name="Frame">Its name.</param>
/// <param name="OverLanding">Surface, its moment over the landing.</param>
/// <param name="Light">Weight at the low end of its wood's density, newtons.</param>
public sealed record EndSurface(string Frame, SideSurface OverLanding, double Light);

/// <summary>What a wind across the bridge blows against, frame by frame, supports included (0 there; see the ends).</summary>
/// <param name="Finished">Of the whole bridge but the ropes.</param>
/// <param name="Frames">Of frames alone, as they hang before there is a deck.</param>
/// <param name="LightFrames">Weight of these at the low end of their wood's density, newtons.</param>
/// <param name="LightFrameMoments">Weight × height of that, N·m.</param>
/// <param name="Ends">Both end frames, A first.</param>
internal sealed record SideSurfaces(
    ImmutableArray<SideSurface> Finished,
    ImmutableArray<SideSurface> Frames,
    ImmutableArray<double> LightFrames,
    ImmutableArray<double> LightFrameMoments,
    ImmutableArray<EndSurface> Ends)
{
    /// <summary>Nothing weighed.</summary>
    public static SideSurfaces None { get; } = new([], [], [], [], []);
}

/// <summary>
/// Solid outline of a bridge from the side. Rails, caps and posts count on both sides, for neither guard shelters the other; the
/// deck and the bases show one edge. A brace stands in line with its post and shows no more than it; rails and the deck's edge
/// hide what is behind or before them of the posts. Packers, a few millimetres high, are left out.
/// </summary>
internal sealed class SideSilhouette(BridgeLayout layout)
{
    private const int Guards = 2;

    private readonly FrameParameters _frames = layout.Parameters.Frames;
    private readonly double _deck = layout.Parameters.Deck.Thickness;

    /// <summary>
    /// Outline of one part, and of its twin on the other side: the box of its stock, seen across the bridge. Posts and the deck
    /// are counted whole elsewhere.
    /// </summary>
    public static SideSurface Of(Member part, FrameParameters frames, double height)
    {
        var seen = part.Role switch
        {
            Role.Post => 0,
            Role.Brace => Guards * Math.Max(0, 1 - (frames.Post.Section.Thickness / part.Shape.Thickness)),
            Role.Base => 1,
            _ => RoleTable.Of(part.Role).Section == DrawingSection.Guard ? Guards : 0,
        };
        return seen > 0 ? seen * Box(part, height) : default;
    }

    /// <summary>Both posts of a frame, from the base's top to their heads.</summary>
    public SideSurface Posts(int frame)
    {
        var high = _frames.Post.Length * Elementary.Cos(_frames.Post.Lean);
        return Guards * Strip(layout.Levels[frame].Top + (high / 2), high);
    }

    /// <summary>What rails and the deck's edge hide of them.</summary>
    public SideSurface PostsHidden(int frame)
    {
        var (lean, top, rail) = (_frames.Post.Lean, layout.Levels[frame].Top, layout.Parameters.Guard.Rail);
        var high = (rail.Width * Elementary.Cos(lean)) + (rail.Thickness * Elementary.Sin(lean));
        var hidden = Strip(top + (_deck / 2), _deck);
        foreach (var along in GuardRails.Heights(layout, frame))
        {
            hidden += Strip(top + (along * Elementary.Cos(lean)), high);
        }

        return Guards * hidden;
    }

    /// <summary>The deck's edge in a bay, whose ropes' chord has a slope.</summary>
    public SideSurface DeckEdge(int bay, double slope)
    {
        var (from, to) = (layout.Deck.Points[bay - 1], layout.Deck.Points[bay]);
        var middle = (from + to) / 2;
        var node = layout.Poses[bay].Node;
        var height = middle.Y - node.Y - (slope * (middle.X - node.X)) + (_deck / 2);
        var area = (to - from).Length * _deck;
        return new SideSurface(area, area * height);
    }

    /// <summary>An end frame with half its bay, brought to the landing's top, which is the underside of its base.</summary>
    public EndSurface End(int frame, SideSurface surface, double light) => new(
        layout.Poses[frame].Name,
        surface with { Moment = surface.Moment - (layout.Levels[frame].Bottom * surface.Area) },
        light);

    private SideSurface Strip(double middle, double high)
    {
        var area = high * _frames.Post.Section.Thickness;
        return new SideSurface(area, area * middle);
    }

    private static SideSurface Box(Member part, double height)
    {
        var (near, far) = part.Shape.LengthRange();
        var (width, thickness, place) = (part.Shape.Width, part.Shape.Thickness, part.Placement);
        var area = ((far - near) * ((width * Math.Abs(place.Z.Z)) + (thickness * Math.Abs(place.Y.Z))))
            + (width * thickness * Math.Abs(place.X.Z));
        return new SideSurface(area, area * height);
    }
}
