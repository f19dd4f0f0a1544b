using BridgeForm.Checks.Geometry;
using BridgeForm.Frames;
using BridgeForm.Roles;
using BridgeForm.Solids;

namespace BridgeForm.Checks.Codes;

/// <summary>A gap that a ball may find beside a picket.</summary>
/// <param name="From">A picket.</param>
/// <param name="To">The next one, or a post.</param>
/// <param name="Clear">Metres.</param>
internal sealed record PicketGap(Member From, Member To, double Clear)
{
    /// <summary>
    /// Between two sticks that stand up, at the lower or the upper rail, where it is wider: they turn evenly, so that it is widest at
    /// one of them.
    /// </summary>
    public static PicketGap Between(Member from, Member to)
    {
        var (near, far) = (from.Shape.Near.XAt(0, 0), from.Shape.Far.XAt(0, 0));
        var clear = Math.Max(At(near), At(far));
        return new PicketGap(from, to, clear);

        double At(double x) => CrossSections.Clear(
            from, to, Plane.Through(from.Placement.ToWorld(new Vector3d(x, 0, 0)), from.Placement.X));
    }
}

/// <summary>Gaps beside pickets: between neighbours, past the posts of a frame to the next bay's, and at an end frame.</summary>
public static class PicketGaps
{
    /// <summary>The widest of a bay and of the frame towards B, metres; null where there are no pickets.</summary>
    public static double? Widest(BridgeLayout layout, int bay) =>
        InBay(layout, bay).Select(g => (double?)g.Clear).DefaultIfEmpty(null).Max();

    /// <summary>Those of a bay and of the frame towards B, of the right side; none where there are no pickets.</summary>
    internal static IEnumerable<PicketGap> InBay(BridgeLayout layout, int bay)
    {
        Member[] pickets = [.. GuardPickets.Lay(layout, bay, Side.Right)];
        if (pickets.Length == 0)
        {
            return [];
        }

        IEnumerable<PicketGap> gaps = pickets.Zip(pickets.Skip(1), PicketGap.Between);
        if (bay == 1)
        {
            gaps = gaps.Append(PicketGap.Between(pickets[0], Uprights.Post(layout, 0, Side.Right)));
        }

        return gaps.Append(Past(layout, bay, pickets[^1]));
    }

    // The post stands behind the rails: a ball between two pickets must pass it on one side or the other.
    private static PicketGap Past(BridgeLayout layout, int bay, Member last)
    {
        var post = Uprights.Post(layout, bay, Side.Right);
        var before = PicketGap.Between(last, post);
        if (bay == layout.Bays)
        {
            return before;
        }

        var next = GuardPickets.Lay(layout, bay + 1, Side.Right).First();
        var (across, behind) = (PicketGap.Between(last, next), PicketGap.Between(next, post));
        var past = behind.Clear > before.Clear ? behind : before;
        return past.Clear < across.Clear ? past : across;
    }
}
