using BridgeForm.Project;
using BridgeForm.Solids;

namespace BridgeForm.Frames;

/// <summary>Where the landing in front of an end frame lies. World axes, metres.</summary>
public static class LandingPlace
{
    /// <summary>What the file says of it.</summary>
    public static SupportParameters Support(BridgeLayout layout, int frame) =>
        frame == 0 ? layout.Parameters.Site.A : layout.Parameters.Site.B;

    /// <summary>y of its walking surface: as given, else flush with the deck's end.</summary>
    public static double Level(BridgeLayout layout, int frame) => Support(layout, frame).LandingLevel is { } level
        ? layout.Poses[frame].Node.Y + level
        : DeckEnd.Surface(layout, frame);

    /// <summary>x of its edge: the end of the deck, and its gap where one is given.</summary>
    public static double Edge(BridgeLayout layout, int frame) => layout.Poses[frame].Node.X
        + (Outward(frame) * (DeckEnd.Beyond(layout.Parameters) + (Support(layout, frame).LandingGap ?? 0)));

    /// <summary>Away from the bridge along x: −1 at A, +1 at B.</summary>
    public static int Outward(int frame) => frame == 0 ? -1 : 1;
}

/// <summary>
/// Landings and what carries their edges: made by others, shown so that people see where the bridge begins. No piece of this bridge:
/// in no cut list, and of no weight.
/// </summary>
public static class LandingStandIns
{
    // Sizes at which they can be told from each other, no design (own figures): boards of 2 in, a sill of 6 by 6 in, a ledger of 2 by 8.
    private const double Slab = 0.038;
    private const double Sill = 0.140;
    private const double LedgerThickness = 0.038;
    private const double LedgerDepth = 0.184;

    /// <summary>Of each landing whose depth is given: itself, and its sill or ledger.</summary>
    public static IEnumerable<StandIn> Lay(BridgeLayout layout)
    {
        foreach (var (frame, end) in ((int, string)[])[(0, "a"), (layout.Bays, "b")])
        {
            if (LandingPlace.Support(layout, frame) is not { LandingDepth: { } depth } support)
            {
                continue;
            }

            var level = LandingPlace.Level(layout, frame);
            yield return Box(layout, frame, end + "/landing", "Landing, by others", depth, level, Slab);
            if (support.LandingBearer is { } bearer)
            {
                var isSill = bearer == LandingBearer.Sill;
                yield return Box(
                    layout, frame, end + (isSill ? "/sill" : "/ledger"), isSill ? "Sill, by others" : "Ledger, by others",
                    Math.Min(depth, isSill ? Sill : LedgerThickness), level - Slab, isSill ? Sill : LedgerDepth);
            }
        }
    }

    /// <summary>From the landing's edge outwards and from a top downwards, as wide as the bases are long.</summary>
    private static StandIn Box(
        BridgeLayout layout, int frame, string id, string words, double depth, double top, double thickness)
    {
        var half = layout.Parameters.Frames.Base.Length / 2;
        var middle = LandingPlace.Edge(layout, frame) + (LandingPlace.Outward(frame) * depth / 2);
        return new StandIn(
            id,
            words,
            new CutStock(depth, thickness, new Plane(-Vector3d.UnitX, half), new Plane(Vector3d.UnitX, half)),
            Placement.FromLengthAndThickness(new Vector3d(middle, top - (thickness / 2), 0), Vector3d.UnitZ, Vector3d.UnitY));
    }
}
