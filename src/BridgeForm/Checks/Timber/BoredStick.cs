using System.Collections.Immutable;
using BridgeForm.Frames;
using BridgeForm.Roles;
using BridgeForm.Solids;

namespace BridgeForm.Checks.Timber;

/// <summary>A part with holes of the user's own, in its own axes: X along the grain. Metres.</summary>
/// <param name="Part">Its id.</param>
/// <param name="Role">What it is for.</param>
/// <param name="Shape">The stick as cut.</param>
/// <param name="Own">The user's holes.</param>
/// <param name="Others">Holes that are not the user's: keepers' and those of joints.</param>
internal sealed record BoredStick(
    string Part, Role Role, CutStock Shape, ImmutableArray<HoleAxis> Own, ImmutableArray<(HoleAxis Axis, bool IsKeeper)> Others)
{
    /// <summary>Base, right post and right brace of a frame, as far as they have holes of the user's own.</summary>
    public static IEnumerable<BoredStick> OfFrame(BridgeLayout layout, int frame) =>
        ((Member[])[
            BaseMember.Cut(layout, frame), Uprights.Post(layout, frame, Side.Right), Uprights.Brace(layout, frame, Side.Right)])
        .Select(m => Of(m, layout.Parameters.Frames.Holes.Count(h => h.Part == m.Role)))
        .Where(s => s.Own.Length > 0);

    // A stick's own holes come after all others. Keepers' are blind, those of joints go through.
    private static BoredStick Of(Member member, int own)
    {
        var all = member.Shape.Holes.Select(h => HoleAxis.Of(member.Shape, h)).ToList();
        return new(
            member.Id, member.Role, member.Shape, [.. all.TakeLast(own)],
            [.. all.SkipLast(own).Zip(member.Shape.Holes, (axis, hole) => (axis, hole.Depth is not null))]);
    }

    /// <summary>Wood from every hole to ends, edges, channels and other holes.</summary>
    public IEnumerable<HoleMargin> Margins()
    {
        for (var i = 0; i < Own.Length; i++)
        {
            var hole = Own[i];
            foreach (var margin in ((IEnumerable<HoleMargin>)[.. Ends(hole), .. Edges(hole), .. Channels(hole)]))
            {
                yield return margin;
            }

            foreach (var other in Own.Skip(i + 1))
            {
                yield return Between(hole, other, "to another one");
            }

            foreach (var (other, isKeeper) in Others)
            {
                yield return Between(hole, other, isKeeper ? "to a keeper hole" : "to a bolt of a joint");
            }
        }
    }

    private IEnumerable<HoleMargin> Ends(HoleAxis hole)
    {
        var words = RoleTable.Of(Role).Ends;
        foreach (var (plane, name) in ((Plane, string)[])[(Shape.Near, words.ShopNear), (Shape.Far, words.ShopFar)])
        {
            var along = hole.Points.Min(p => (plane.XAt(p.Y, p.Z) - p.X) * Math.Sign(plane.Normal.X));
            var end = Margin(hole, along, MarginKind.End, $"along the grain to its {name}");
            var square = Margin(
                hole, hole.Points.Min(p => -plane.SignedDistance(p)), MarginKind.Edge, $"square to the slanting cut of its {name}");
            yield return end;

            // Of a steep cut it is what little wood stands over the hole that counts.
            if (square.Had / square.Full < end.Had / end.Full)
            {
                yield return square;
            }
        }
    }

    private IEnumerable<HoleMargin> Edges(HoleAxis hole)
    {
        var size = hole.IsAlongY ? Shape.Thickness : Shape.Width;
        yield return Margin(hole, (size / 2) - Math.Abs(hole.IsAlongY ? hole.Z.Low : hole.Y.Low), MarginKind.Edge, "to its edge");
    }

    private IEnumerable<HoleMargin> Channels(HoleAxis hole)
    {
        foreach (var channel in Shape.Channels)
        {
            // From the face that the channel is cut into, where its floor takes most.
            var inY = channel.Face == StockFace.MinusY;
            var (low, half, along) = inY ? (hole.Y.Low, Shape.Width / 2, Shape.Thickness) : (hole.Z.Low, Shape.Thickness / 2, Shape.Width);
            var above = low + half - channel.Depth - (Math.Abs(channel.FloorSlope) * along / 2);
            var beside = Math.Max(0, Math.Abs(hole.X - channel.Center) - (channel.Width / 2));
            var reach = hole.IsAlongY == inY ? 0 : hole.Diameter / 2;
            yield return above < reach
                ? Margin(hole, beside, MarginKind.End, "along the grain to a rope channel")
                : Margin(hole, Math.Sqrt((beside * beside) + (above * above)), MarginKind.Edge, "to a rope channel");
        }
    }

    private HoleMargin Between(HoleAxis one, HoleAxis other, string to) =>
        new(Part, Role, At(one), Math.Max(one.Diameter, other.Diameter), one.To(other), MarginKind.Hole, to);

    private HoleMargin Margin(HoleAxis hole, double had, MarginKind kind, string to) =>
        new(Part, Role, At(hole), hole.Diameter, Math.Max(0, had), kind, to);

    private double At(HoleAxis hole) => hole.X - Shape.LengthRange().Near;
}

/// <summary>The middle line of a hole, in its part's axes; along Y or along Z. Metres.</summary>
/// <param name="X">Along the grain.</param>
/// <param name="Y">Where it begins and ends.</param>
/// <param name="Z">Where it begins and ends.</param>
/// <param name="Diameter">Diameter.</param>
/// <param name="IsAlongY">It enters a narrow face, and runs along Y.</param>
internal sealed record HoleAxis(
    double X, (double Low, double High) Y, (double Low, double High) Z, double Diameter, bool IsAlongY)
{
    /// <summary>Both its ends.</summary>
    public ImmutableArray<Vector3d> Points => [new(X, Y.Low, Z.Low), new(X, Y.High, Z.High)];

    /// <summary>A hole of a stick.</summary>
    public static HoleAxis Of(CutStock stock, Hole hole)
    {
        var isAlongY = hole.Face is StockFace.MinusY or StockFace.PlusY;
        var half = (isAlongY ? stock.Width : stock.Thickness) / 2;
        var blind = hole.Depth is { } depth ? depth - half : half;
        var along = hole.Face is StockFace.MinusY or StockFace.MinusZ ? (-half, blind) : (-blind, half);
        var across = (hole.Across, hole.Across);
        return new(hole.X, isAlongY ? along : across, isAlongY ? across : along, hole.Diameter, isAlongY);
    }

    /// <summary>Shortest way from middle line to middle line; 0 where they cross.</summary>
    public double To(HoleAxis other)
    {
        var (x, y, z) = (X - other.X, Gap(Y, other.Y), Gap(Z, other.Z));
        return Math.Sqrt((x * x) + (y * y) + (z * z));
    }

    private static double Gap((double Low, double High) one, (double Low, double High) other) =>
        Math.Max(0, Math.Max(one.Low - other.High, other.Low - one.High));
}
