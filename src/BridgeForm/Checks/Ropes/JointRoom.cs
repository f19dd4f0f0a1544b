using BridgeForm.Frames;
using BridgeForm.Loads;
using BridgeForm.Quantities;
using BridgeForm.Roles;
using BridgeForm.Ropes;

namespace BridgeForm.Checks.Ropes;

/// <summary>
/// How far the joints of caps, rails and deck close and open as the ropes move: the parts of two bays meet over a frame, and where
/// the chords of its bays turn by a further angle there, points at a height over the ropes come nearer by angle × height.
/// </summary>
internal static class JointRoom
{
    private const string Source =
        "geometry: turn of the two chords × height over the ropes; how guards are joined is for a licensed engineer";

    /// <summary>What it states.</summary>
    public static DeclaredCheck Declared { get; } = new(
        "joint-room",
        "Room that the joints of caps, rails and deck need",
        "How far the parts of neighboring bays come nearer, or move apart, over any frame in any case with a deck, stretched rope among "
            + "them: in the upright plane of either guard, frames straight from rope to rope and beyond, further turn of the two chords × "
            + "height over the ropes, at the cap's top and at the deck's surface. All shapes, "
            + "tilts and forces are computed as if the joints gave way so far; parts are cut to butt tight on the empty bridge. Wood that "
            + "butts tight presses instead: the guards then carry some of the load, which nothing here computes. Only stated.",
        Source,
        [CheckStatus.Engineer]);

    /// <summary>Always for an engineer: the most that a joint closes and opens.</summary>
    public static CheckResult Check(CheckContext context)
    {
        var layout = context.Layout;
        var heads = Uprights.AxisHead(layout.Parameters.Frames.Post);
        var cap = Moves(context, CapHeight, heads);
        var deck = Moves(context, DeckHeight, heads);
        var words = context.Words();
        if (cap.Closing is not { } closing || cap.Opening is not { } opening || deck.Closing is not { } near || deck.Opening is not { } far)
        {
            return Outcome.ForEngineer(
                Declared, 0, "m", Source, "no frame between the supports, or no case with a shape: how far joints move is not known");
        }

        return Outcome.ForEngineer(
            Declared, Math.Max(0, closing.By), "m", Source,
            $"joints of the caps close by up to {words.Length(Math.Max(0, closing.By))} (at {closing.Frame}, case {closing.Case}) and open "
                + $"by up to {words.Length(Math.Max(0, -opening.By))} (at {opening.Frame}, case {opening.Case}); at the deck's surface "
                + $"{words.Length(Math.Max(0, near.By))} and {words.Length(Math.Max(0, -far.By))}; rails lie between. The pieces butt "
                + "tight as cut. Joints that cannot give way so far press: the bridge is stiffer then, and guards, their fasteners and "
                + "posts carry forces that are not computed here. A hand between ends that close is pinched. "
                + Cure(layout.Parameters.Frames.Post.Section.Thickness, Math.Max(closing.By, -opening.By), words))
            .On(context.MeetingAt(closing.Frame, Role.Cap));
    }

    // A cap lies on half of a post's thickness: of that a third is all that a gap or a slot may take (own figure).
    private static string Cure(double post, double moves, CheckWords words) => moves <= post / 6
        ? "Either leave the room (each cap and rail fixed at one post, free to slide at the other), or have an engineer design guards "
            + "that press"
        : $"More than {words.Length(post / 6)} of room cannot be left: caps and rails would lose the half of a post that they lie on. An "
            + "engineer designs joints that take it up, or guards that press";

    /// <summary>A joint's move: metres, positive where it closes.</summary>
    private sealed record Move(double By, string Frame, string Case);

    private static (Move? Closing, Move? Opening) Moves(CheckContext context, Func<BridgeLayout, int, double> height, double aside)
    {
        var built = Turns([.. context.Rope.Nodes]);
        var all = context.Cases.Concat(context.Ropework.Grown)
            .Where(c => c is { Shape: not null, Lighter: not null, RollsOver: false, Id: not LoadCaseIds.ErectHalf })
            .SelectMany(c => Sides(c, aside / context.Parameters.Ropes.Spacing)
                .SelectMany(nodes => Turns(nodes).Select((turn, i) => new Move(
                    (turn - built[i]) * height(context.Layout, i + 1), context.Layout.Poses[i + 1].Name, c.Id))))
            .ToList();
        return (Ties.FirstLargest(all, m => m.By), Ties.FirstLargest(all, m => -m.By));
    }

    // Where the guard of either side stands, frames straight from rope to rope and beyond.
    private static IEnumerable<RopePoint[]> Sides(LoadCaseResult of, double share)
    {
        var (a, b) = (of.Shape!.Nodes, of.Lighter!.Nodes);
        return ((double[])[share, -share]).Select(s => a.Select((p, i) => new RopePoint(
            ((p.X + b[i].X) / 2) + (s * (p.X - b[i].X)), ((p.Y + b[i].Y) / 2) + (s * (p.Y - b[i].Y)))).ToArray());
    }

    // Radians, positive where the bays after and before rise away from the frame between them.
    private static double[] Turns(RopePoint[] nodes) =>
        [.. Enumerable.Range(1, nodes.Length - 2).Select(i => RopeCurve.Turn(nodes, i))];

    private static double CapHeight(BridgeLayout layout, int frame) =>
        Over(layout, layout.Caps, frame) + layout.Parameters.Guard.Cap.Thickness;

    private static double DeckHeight(BridgeLayout layout, int frame) =>
        Over(layout, layout.Deck, frame) + layout.Parameters.Deck.Thickness;

    private static double Over(BridgeLayout layout, BearingLine line, int frame) =>
        layout.Poses[frame].Up.Dot(line.Points[frame] - layout.Poses[frame].Node);
}
