using BridgeForm.Project;
using BridgeForm.Quantities;
using BridgeForm.Roles;
using BridgeForm.Solids;

namespace BridgeForm.Frames;

/// <summary>Rails on the posts' inner faces. X from A to B, Z the inward face.</summary>
internal static class GuardRails
{
    /// <summary>Rails of one side of a bay, lowest first.</summary>
    public static IEnumerable<Member> Lay(BridgeLayout layout, int bay, Side side)
    {
        var guard = layout.Parameters.Guard;
        var from = Heights(layout, bay - 1);
        var to = Heights(layout, bay);
        for (var i = 0; i < from.Length; i++)
        {
            var id = new PartId(FramePoses.BayName(bay, layout.Bays), Role.Rail, side, i + 1);
            yield return Rail(layout, guard, bay, side, from[i], to[i], id);
        }
    }

    /// <summary>
    /// Heights of the rails' centre lines at a frame, up along the post from the base's top, metres: as given, with equal
    /// gaps between the deck's surface and the post's head, or those two that carry pickets, or that one that carries a net.
    /// </summary>
    public static double[] Heights(BridgeLayout layout, int frame)
    {
        var guard = layout.Parameters.Guard;
        if (!guard.RailHeights.IsEmpty)
        {
            return [.. guard.RailHeights];
        }

        var post = layout.Parameters.Frames.Post;
        var deck = DeckAlongPost(layout, frame);
        var width = guard.Rail.Width;
        if (guard.Pickets is { } pickets)
        {
            var off = pickets.Gap + (width / 2);
            return [deck + off, post.Length - off];
        }

        if (guard.Net is { } net)
        {
            return [deck + net.Bottom + (width / 2)];
        }

        var gap = (post.Length - deck - (guard.RailCount * width)) / (guard.RailCount + 1);
        var heights = new double[guard.RailCount];
        for (var i = 0; i < heights.Length; i++)
        {
            heights[i] = deck + ((i + 1) * gap) + ((i + 0.5) * width);
        }

        return heights;
    }

    /// <summary>From the base's top up along the post to the level of the deck's surface, metres.</summary>
    public static double DeckAlongPost(BridgeLayout layout, int frame) =>
        (layout.Parameters.Deck.Thickness + layout.Deck.Lifts[frame]) / Elementary.Cos(layout.Parameters.Frames.Post.Lean);

    private static Member Rail(
        BridgeLayout layout, GuardParameters guard, int bay, Side side, double fromHeight, double toHeight, PartId id)
    {
        var from = PostFace.Lay(layout, bay - 1, side, fromHeight);
        var to = PostFace.Lay(layout, bay, side, toHeight);
        var along = (to.Point - from.Point).Normalized();
        var mean = from.Inward + to.Inward;
        var inward = (mean - (mean.Dot(along) * along)).Normalized();
        var onFace = Placement.FromLengthAndThickness(from.Point, along, inward);
        var push = Math.Max(
            Entering(layout, bay - 1, onFace, from, guard.Rail.Width),
            Entering(layout, bay, onFace, to, guard.Rail.Width));
        var placement = onFace with
        {
            Origin = from.Point + ((Math.Max(0, push - Tolerances.Seating) + (guard.Rail.Thickness / 2)) * inward),
        };
        var overrun = layout.Parameters.Frames.Post.Section.Thickness / 2;
        var shape = LongPart.Shape(
            guard.Rail,
            placement,
            EndPlanes.AtStart(layout.Poses[bay - 1], 0, overrun),
            EndPlanes.AtFinish(layout.Poses[bay], 0, overrun));
        return new Member(id, layout.Parameters.StockOf(Role.Rail), guard.Rail.Name, placement, shape);
    }

    /// <summary>How far the rail's outer face, laid on the posts, enters the post of one frame, metres; 0 when it does not.</summary>
    private static double Entering(BridgeLayout layout, int frame, Placement rail, PostFace post, double width)
    {
        var pose = layout.Poses[frame];
        var half = layout.Parameters.Frames.Post.Section.Thickness / 2;
        var isStart = rail.X.Dot(post.Point - rail.Origin) < half;
        double nearSide = pose.IsEnd || !isStart ? -half : 0, farSide = pose.IsEnd || isStart ? half : 0;
        var deepest = 0.0;
        foreach (var y in (ReadOnlySpan<double>)[-width / 2, width / 2])
        {
            var edge = rail.ToWorld(new Vector3d(0, y, 0));
            foreach (var t in (ReadOnlySpan<double>)[nearSide, farSide])
            {
                var across = Plane.Through(pose.At(t, 0, 0), pose.Along);
                var point = edge + (across.LineParameter(edge, rail.X) * rail.X);
                deepest = Math.Max(deepest, -post.Inward.Dot(point - post.Point));
            }
        }

        return deepest;
    }
}
