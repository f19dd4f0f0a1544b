using BridgeForm.Checks.Geometry;
using BridgeForm.Frames;
using BridgeForm.Project;
using BridgeForm.Quantities;
using BridgeForm.Roles;
using BridgeForm.Solids;

namespace BridgeForm.Checks.Codes;

/// <summary>
/// Largest ball that passes between deck and bottom rail, between rails, and between top rail and cap: these run side by
/// side, so it is the distance of their outlines in a cut across the bay, taken where the bay's parts are furthest apart,
/// at its frames and, at an end frame, where they run on to the post's far side.
/// </summary>
internal static class GuardOpenings
{
    private const string Source = "IRC 2018 R312.1.3; IBC 1015.4 (from memory)";

    /// <summary>The check.</summary>
    public static DeclaredCheck Declared { get; } = new(
        "guard-openings",
        "Openings in the guard",
        "Largest sphere that passes between the deck's edge and the bottom rail, between rails, between pickets and at the "
            + "posts beside them, or through a mesh of the net (of cord: a circle of the mesh's girth, 4/π of its side), and under "
            + "the cap, bay by bay up to the guards' ends, against 4 in "
            + "(4-3/8 in from 36 in up on a public bridge). From an end frame to the landing's own guard it "
            + "does not look: guard-at-landing.",
        Source,
        [CheckStatus.Pass, CheckStatus.Fail]);

    /// <summary>The opening closest to what its code lets pass, or furthest beyond it.</summary>
    public static CheckResult Check(CheckContext context)
    {
        var openings = context.Bays.SelectMany(
            bay => InBay(context, bay).Concat(BetweenPickets(context.Layout, bay)).Concat(ThroughNet(context.Layout, bay)));
        var worst = Ties.FirstLargest(openings, o => o.Clear / o.Sphere)!;
        var words = context.Words();
        return new CheckResult(
            Declared.Id, Declared.Title, Status(worst.Clear, worst.Sphere),
            worst.Clear, worst.Sphere, "m", Ratio(worst.Clear, worst.Sphere), worst.Source,
            $"widest in {worst.Where}: {words.Length(worst.Clear)} clear; no sphere of {words.InInches(worst.Sphere)} may pass; between "
                + "the end frames and the landings' guards it is not looked at (guard-at-landing)")
            .On([.. Beside(context, worst.Bay, worst.Below), .. CheckParts.OnBothSides(worst.Above)]);
    }

    /// <summary>A sphere exactly as wide as the opening passes through it.</summary>
    public static CheckStatus Status(double clear, double sphere) =>
        Ratio(clear, sphere) > 1 ? CheckStatus.Fail : CheckStatus.Pass;

    /// <summary>Opening over sphere, above 1 where it passes: a sphere passes an opening of its own size.</summary>
    public static double Ratio(double clear, double sphere) =>
        clear > sphere - Tolerances.RoundOff ? Math.Max(clear / sphere, sphere / (sphere - Tolerances.RoundOff)) : clear / sphere;

    private sealed record Opening(double Clear, double Sphere, string Source, string Where, int Bay, Member Below, string Above);

    /// <summary>What bounds an opening from below, on both sides: a rail, or the deck's outermost boards, stringers or treads.</summary>
    private static IEnumerable<string> Beside(CheckContext context, int bay, Member below) => below.Role switch
    {
        Role.Rail or Role.Picket => CheckParts.OnBothSides(below.Id),
        Role.Stringer => context.Walked(bay),
        var role => context.InBay(bay, role).ToList() is [var first, .., var last] ? [first, last] : [below.Id],
    };

    private static IEnumerable<Opening> InBay(CheckContext context, int bay)
    {
        var layout = context.Layout;
        var ladder = Ladder(layout, bay);
        var along = layout.Deck.Direction(bay);
        var surface = layout.Deck.Points[bay] + (layout.Parameters.Deck.Thickness * Vector3d.UnitZ.Cross(along));
        foreach (var place in Ends(layout, bay))
        {
            var across = Plane.Through(place, along);
            for (var i = 1; i < ladder.Count; i++)
            {
                var (below, above) = (ladder[i - 1], ladder[i]);
                if ((layout.Parameters.Guard.Pickets is not null && below.Role == above.Role)
                    || (layout.Parameters.Guard.Net is not null && above.Role == Role.Cap))
                {
                    continue;
                }

                var clear = CrossSections.Clear(below, above, across);
                var from = CrossSections.Furthest(below, across, Vector3d.UnitY);
                var height = i == 1 ? 0 : from.Y - (surface + (across.LineParameter(surface, along) * along)).Y;
                var (sphere, source) = Limits.Opening(layout.Parameters.Use, height);
                yield return new Opening(
                    clear, sphere, source, $"{FramePoses.BayName(bay, layout.Bays)} under {above.Name}", bay, below, above.Id);
            }
        }
    }

    private static IEnumerable<Opening> BetweenPickets(BridgeLayout layout, int bay)
    {
        var (sphere, source) = Limits.Opening(layout.Parameters.Use, 0);
        return PicketGaps.InBay(layout, bay).Select(gap => new Opening(
            gap.Clear, sphere, source, $"{FramePoses.BayName(bay, layout.Bays)} between {gap.From.Name} and {gap.To.Name}", bay, gap.From,
            gap.To.Id));
    }

    private static IEnumerable<Opening> ThroughNet(BridgeLayout layout, int bay)
    {
        if (layout.Parameters.Guard.Net is { } net)
        {
            var (sphere, source) = Limits.Opening(layout.Parameters.Use, 0);
            var rail = GuardRails.Lay(layout, bay, Side.Right).First();
            var mesh = net.IsStiff ? "a mesh of the net" : "a mesh of the net, which gives until it is round";
            yield return new Opening(
                net.Passes, sphere, source, $"{FramePoses.BayName(bay, layout.Bays)} through {mesh}", bay, rail,
                GuardCaps.Lay(layout, bay, Side.Right).Id);
        }
    }

    /// <summary>Deck's edge, rails from below, cap: of the right side.</summary>
    public static List<Member> Ladder(BridgeLayout layout, int bay) =>
    [
        Edge(layout, bay),
        .. GuardRails.Lay(layout, bay, Side.Right),
        GuardCaps.Lay(layout, bay, Side.Right),
    ];

    /// <summary>The outermost board; of a deck of treads, the strip that their ends line up to.</summary>
    private static Member Edge(BridgeLayout layout, int bay)
    {
        if (layout.Parameters.Deck.Stringer is not { } stringer)
        {
            return DeckBoards.Boards(layout, bay).Last();
        }

        var board = DeckBoards.Stringers(layout, bay, stringer).Last();
        var deck = layout.Parameters.Deck;
        var strip = deck.Board.Thickness;
        var up = Vector3d.UnitZ.Cross(layout.Deck.Direction(bay));
        var middle = layout.Deck.Points[bay - 1] + ((stringer.Section.Width + (strip / 2)) * up)
            + new Vector3d(0, 0, (DeckWidth.Filled(layout.Parameters) - strip) / 2);
        var placement = Placement.FromLengthAndThickness(middle, layout.Deck.Direction(bay), up);
        return board with { Placement = placement, Shape = new CutStock(strip, strip, board.Shape.Near, board.Shape.Far) };
    }

    /// <summary>
    /// Where a cut across the bay first and last meets its deck or its cap: the frames lean, and at an end frame the parts
    /// run on. Between them the parts are straight, so that the widest place is one of the two.
    /// </summary>
    private static IEnumerable<Vector3d> Ends(BridgeLayout layout, int bay)
    {
        var overrun = layout.Parameters.Frames.Post.Section.Thickness / 2;
        var along = layout.Deck.Direction(bay);
        var (near, far) = (layout.Poses[bay - 1], layout.Poses[bay]);
        var first = near.IsEnd ? layout.Caps.Points[bay - 1] - (overrun * near.Along) : layout.Caps.Points[bay - 1];
        var last = far.IsEnd ? layout.Caps.Points[bay] + (overrun * far.Along) : layout.Caps.Points[bay];
        yield return along.Dot(first) < along.Dot(near.Node) ? first : near.Node;
        yield return along.Dot(last) > along.Dot(far.Node) ? last : far.Node;
    }
}
