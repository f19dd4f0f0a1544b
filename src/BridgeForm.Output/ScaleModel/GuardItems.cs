using BridgeForm.Quantities;
using BridgeForm.Roles;
using BridgeForm.Solids;

namespace BridgeForm.Output.ScaleModel;

/// <summary>
/// The guard of a side of a bay in one piece, lying on the faces that meet the posts: rails, pickets, and where there are several
/// rails a strip at each end that hides before the post. Rails that lie in no plane, between posts that lean differently, are sticks.
/// </summary>
internal static class GuardItems
{
    // Of what one bay has of a post's face.
    private const double ShareOfFace = 0.9;

    // Rails of a panel may lie so much above the bed: about a layer, which the first line bridges. Common practice, no source.
    private const double Flat = 0.3e-3;

    /// <summary>One item a side and bay.</summary>
    public static IEnumerable<PrintItem> All(PrintSource source) =>
        source.Bays.SelectMany(bay => new[] { Side.Left, Side.Right }.SelectMany(side => Guard(source, bay, side)));

    private static IEnumerable<PrintItem> Guard(PrintSource source, string bay, Side side)
    {
        var rails = source.Of(bay, Role.Rail).Where(p => p.Id.Side == side).ToList();
        if (rails.Count == 0)
        {
            yield break;
        }

        var inward = (side == Side.Left ? 1 : -1) * Vector3d.UnitZ;
        var shaped = rails.Select(r => OverDeck(source, bay, source.Take(r).ThickEnoughBothWays(inward))).ToList();
        var middle = shaped[shaped.Count / 2];
        var (along, face) = (middle.Place.X.X < 0 ? -middle.Place.X : middle.Place.X, middle.Place.DirectionToWorld(middle.Face(inward)));
        var lying = new Placement(middle.Place.Origin, along, face.Cross(along), face);
        var lowest = shaped.Select(r => r.Points().Min(p => lying.ToLocal(p).Z)).ToList();
        var upright = source.Of(bay, Role.Picket).Where(p => p.Id.Side == side).ToList();
        if (lowest.Max() - lowest.Min() > source.Rules.OnBed(Flat))
        {
            foreach (var (part, rail) in rails.Zip(shaped))
            {
                yield return StickItems.Lying(rail, inward, StickItems.Name(bay, part));
            }

            foreach (var part in upright)
            {
                yield return StickItems.Flat(source, part, inward, StickItems.Name(bay, part));
            }

            yield break;
        }

        var pickets = upright
            .Select(p => source.Take(p).ThickEnoughBothWays(inward).Grown(-inward, source.Rules.Join).Body());
        yield return new PrintItem(
            $"{bay} guard {(side == Side.Left ? "left" : "right")}", PrintKind.Guard, lying,
            [.. shaped.Select(r => r.Body()), .. Strips(source, shaped, lying), .. pickets]);
    }

    // A rail right over the deck or its cleats goes up with their surface, along the posts; one that reaches below it lies beside it.
    private static PrintPart OverDeck(PrintSource source, string bay, PrintPart rail)
    {
        var up = rail.Place.DirectionToWorld(rail.Face(Vector3d.UnitY));
        var by = 0.0;
        foreach (var (surface, raised) in DeckItems.Surfaces(source, bay))
        {
            var under = rail.Points().Min(surface.SignedDistance);
            by = under < -Tolerances.Corner || under >= raised ? by : Math.Max(by, (raised - under) / up.Dot(surface.Normal));
        }

        return by > 0 ? rail.Moved(by * up) : rail;
    }

    private static IEnumerable<PrintBody> Strips(PrintSource source, List<PrintPart> rails, Placement lying)
    {
        if (rails.Count < 2)
        {
            yield break;
        }

        var corners = rails.Select(r => r.Points().Select(lying.ToLocal).ToList()).OrderBy(c => c.Average(p => p.Y)).ToList();
        var bottom = corners.Max(c => c.Min(p => p.Z));
        foreach (var sign in new[] { -1, 1 })
        {
            // From the middle of the lowest rail's end to that of the highest one's, a little inside.
            var (low, high) = (End(corners[0], sign), End(corners[^1], sign));
            var width = Math.Max(source.Rules.Thinnest, ShareOfFace * source.Model.Parameters.Frames.Post.Section.Thickness / 2);
            var along = (high - low).Normalized();
            var across = Vector3d.UnitZ.Cross(along);
            var inside = (Math.Sign(across.X) == sign ? -1 : 1) * ((width / 2) + source.Rules.Join);
            var axes = lying.Then(new Placement(low + (inside * across), along, across, Vector3d.UnitZ));
            yield return PrintBody.Box(
                "strip that joins the rails",
                rails[0].Body().Material,
                new Vector3d(0, -width / 2, bottom),
                new Vector3d((high - low).Length, width / 2, bottom + source.Rules.Thinnest),
                axes);
        }
    }

    // Middle of a rail's end, its shorter edge counting; in the plane of the bed.
    private static Vector3d End(List<Vector3d> rail, int sign)
    {
        var half = (rail.Min(p => p.X) + rail.Max(p => p.X)) / 2;
        var end = rail.Where(p => sign * (p.X - half) > 0).ToList();
        return new Vector3d(end.Average(p => p.X), end.Average(p => p.Y), 0);
    }
}
