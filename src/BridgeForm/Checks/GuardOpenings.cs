using BridgeForm.Frames;
using BridgeForm.Solids;

namespace BridgeForm.Checks;

/// <summary>Clear distances between deck, rails and cap, square to them, bay by bay.</summary>
internal static class GuardOpenings
{
    // Openings come out of sums of fractions of an inch: a billionth of a metre is round-off, not room.
    private const double SphereSlack = 1e-9;

    /// <summary>The opening closest to what its code lets pass, or furthest beyond it.</summary>
    public static CheckResult Of(CheckContext context)
    {
        var worst = context.Bays.SelectMany(bay => InBay(context, bay)).MaxBy(o => o.Clear / o.Sphere);
        var words = context.People();

        // An opening exactly as wide as the sphere lets it pass.
        var passes = worst.Clear > worst.Sphere - SphereSlack;
        return new CheckResult(
            "guard-openings", "Openings in the guard", passes ? CheckStatus.Fail : CheckStatus.Pass,
            worst.Clear, worst.Sphere, "m", worst.Clear / worst.Sphere, worst.Source,
            $"widest in {worst.Where}: {words.Length(worst.Clear)} clear; no sphere of {words.Length(worst.Sphere)} may pass");
    }

    private static IEnumerable<(double Clear, double Sphere, string Source, string Where)> InBay(CheckContext context, int bay)
    {
        var layout = context.Layout;
        var members = Members.Bay(layout, bay).Members;
        var walked = members.Last(m => m.Role is Role.Board or Role.Tread);
        List<Member> ladder =
        [
            .. members.Where(m => m.Role == Role.Rail && m.Side == Side.Right),
            members.First(m => m.Role == Role.Cap && m.Side == Side.Right),
        ];
        var along = layout.Deck.Direction(bay);
        foreach (var frame in (int[])[bay - 1, bay])
        {
            for (var i = 0; i < ladder.Count; i++)
            {
                var across = Plane.Through(layout.Poses[frame].Node, along);
                var surface = layout.Deck.Points[frame]
                    + (layout.Parameters.Deck.Thickness * Vector3d.UnitZ.Cross(along));
                var below = i == 0 ? walked : ladder[i - 1];
                var clear = i == 0 ? AboveDeck(layout, walked, ladder[0], across) : CrossSections.Clear(below, ladder[i], across);
                var height = i == 0 ? 0 : CrossSections.Furthest(below, across, Vector3d.UnitY).Y - surface.Y;
                var (sphere, source) = Limits.Opening(layout.Parameters.Use, height);
                yield return (clear, sphere, source, $"{members[0].Owner} under {ladder[i].Id[4..]}");
            }
        }
    }

    /// <summary>
    /// Between the deck's outer edge and the lowest rail. Treads lie across the bay, so their ends are taken as an edge along it.
    /// </summary>
    private static double AboveDeck(BridgeLayout layout, Member walked, Member rail, Plane across)
    {
        if (walked.Role == Role.Board)
        {
            return CrossSections.Clear(walked, rail, across);
        }

        var edge = walked.Placement.ToWorld(
            new Vector3d(DeckWidth.Filled(layout.Parameters) / 2, 0, walked.Shape.Thickness / 2));
        var onPlane = edge - (across.SignedDistance(edge) * across.Normal);
        var lowest = CrossSections.Furthest(rail, across, -Vector3d.UnitY);
        return (lowest - onPlane).Length;
    }
}
