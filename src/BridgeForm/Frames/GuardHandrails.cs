using BridgeForm.Project;
using BridgeForm.Quantities;
using BridgeForm.Roles;
using BridgeForm.Solids;

namespace BridgeForm.Frames;

/// <summary>
/// Handrails, clear of the rails on brackets from the posts, upright whatever the posts' lean. X from A to B, Z the inward face.
/// </summary>
internal static class GuardHandrails
{
    /// <summary>The handrail of one side of a bay; none where the file asks for none.</summary>
    public static IEnumerable<Member> Lay(BridgeLayout layout, int bay, Side side)
    {
        if (layout.Parameters.Guard.Handrail is not { } handrail)
        {
            yield break;
        }

        var (from, to) = (Middle(layout, handrail, bay - 1, side), Middle(layout, handrail, bay, side));
        var along = (to - from).Normalized();
        var inward = new Vector3d(0, 0, -side.Sign());
        var placement = Placement.FromLengthAndThickness(from, along, (inward - (inward.Dot(along) * along)).Normalized());
        var overrun = layout.Parameters.Frames.Post.Section.Thickness / 2;
        var near = EndPlanes.AtStart(layout.Poses[bay - 1], 0, overrun);
        var far = EndPlanes.AtFinish(layout.Poses[bay], 0, overrun);
        yield return new Member(
            new PartId(FramePoses.BayName(bay, layout.Bays), Role.Handrail, side),
            layout.Parameters.StockOf(Role.Handrail),
            handrail.Section.Name,
            placement,
            handrail.IsRound
                ? RoundStock.Cut(handrail.Section.Width, placement.ToLocal(near), placement.ToLocal(far))
                : LongPart.Shape(handrail.Section, placement, near, far));
    }

    /// <summary>
    /// Its middle line at a frame. The face behind leans out as it rises: what is nearest to it is the outer edge of the underside, of
    /// a round one the point towards it.
    /// </summary>
    private static Vector3d Middle(BridgeLayout layout, HandrailParameters handrail, int frame, Side side)
    {
        var post = layout.Parameters.Frames.Post;
        var (sin, cos) = Elementary.SinCos(post.Lean);
        var over = layout.Parameters.Deck.Thickness + layout.Deck.Lifts[frame] + handrail.Middle;
        var clear = GuardPickets.Behind(layout.Parameters.Guard) + handrail.Gap;
        var (half, tall) = (handrail.Section.Thickness / 2, handrail.Section.Width / 2);
        var inset = handrail.IsRound ? (clear + half) / cos : (clear / cos) + half + (tall * sin / cos);
        return layout.Poses[frame].At(
            0, layout.Levels[frame].Top + over, side.Sign() * (post.Foot + (over * sin / cos) - inset));
    }
}
